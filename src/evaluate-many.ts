import { fail, RiggingError } from './errors.js';

/** What came of one row: its result, or why it could not be computed. */
export type Evaluated<Result> =
  | { readonly index: number; readonly ok: true; readonly result: Result }
  | { readonly index: number; readonly ok: false; readonly error: RiggingError };

/**
 * Runs a calculation over many rows, one at a time: a generator that takes the next row only when the next outcome is
 * asked for and keeps none of them. A row that cannot be computed is reported with its index, and the rest goes on.
 *
 * Only a {@link RiggingError} is an outcome. Any other error is a fault of the program, not of a row, and is thrown.
 *
 * @param rows a list, a generator, or an async iterable such as a file read line by line; async rows give an async generator
 * @param evaluate what is done with a row, and which row it is, from 0; with async rows it may be async itself
 * @throws RiggingError `NOT_ITERABLE` when the rows cannot be gone through, `UNKNOWN_VALUE` when `evaluate` is no function
 * @validity any number of rows; give the calculation `working: false` where only the answer counts
 * @source none of its own
 * @example
 * const rows = [{ size: '3/8', length: '20 ft' }, { size: '3/8', length: '20' }];
 * [...evaluateMany(rows, (row) => chainMass(row as never).mass)].map(({ ok }) => ok)
 * // => [ true, false ]
 */
export function evaluateMany<Row, Result>(
  rows: Iterable<Row>,
  evaluate: (row: Row, index: number) => Result,
): Generator<Evaluated<Result>, void, undefined>;
export function evaluateMany<Row, Result>(
  rows: AsyncIterable<Row>,
  evaluate: (row: Row, index: number) => Result | PromiseLike<Result>,
): AsyncGenerator<Evaluated<Result>, void, undefined>;
export function evaluateMany<Row, Result>(
  rows: Iterable<Row> | AsyncIterable<Row>,
  evaluate: (row: Row, index: number) => Result,
) {
  if (typeof evaluate !== 'function') {
    fail('UNKNOWN_VALUE', 'evaluate', 'a function of one row', evaluate, 'Give what is to be done with each row.');
  }
  const given: unknown = rows;
  if (typeof given === 'object' && given !== null) {
    const { [Symbol.asyncIterator]: async, [Symbol.iterator]: sync } = given as Partial<
      AsyncIterable<Row> & Iterable<Row>
    >;
    if (typeof async === 'function') return overAsync(given as AsyncIterable<Row>, evaluate);
    if (typeof sync === 'function') return over(given as Iterable<Row>, evaluate);
  }
  return fail('NOT_ITERABLE', 'rows', 'a list, or another iterable of rows', rows, 'Give the rows one after another.');
}

function* over<Row, Result>(
  rows: Iterable<Row>,
  evaluate: (row: Row, index: number) => Result,
): Generator<Evaluated<Result>, void, undefined> {
  let index = 0;
  for (const row of rows) yield outcomeOf(row, index++, evaluate);
}

async function* overAsync<Row, Result>(
  rows: AsyncIterable<Row>,
  evaluate: (row: Row, index: number) => Result | PromiseLike<Result>,
): AsyncGenerator<Evaluated<Result>, void, undefined> {
  let index = 0;
  for await (const row of rows) {
    const at = index++;
    let outcome: Evaluated<Result>;
    try {
      outcome = { index: at, ok: true, result: await evaluate(row, at) };
    } catch (error) {
      outcome = failed(at, error);
    }
    yield outcome;
  }
}

function outcomeOf<Row, Result>(
  row: Row,
  index: number,
  evaluate: (row: Row, index: number) => Result,
): Evaluated<Result> {
  try {
    return { index, ok: true, result: evaluate(row, index) };
  } catch (error) {
    return failed(index, error);
  }
}

function failed(index: number, error: unknown): Evaluated<never> {
  if (!(error instanceof RiggingError)) throw error;
  return { index, ok: false, error };
}
