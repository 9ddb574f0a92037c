import { fail } from '../errors.js';
import { checkObject } from '../input-checks.js';
import { rowOf } from '../tables/rating-table.js';

/** Reads a plain number from `least` to `most`, such as a coefficient; the remedy says what it counts. */
export function readNumber(value: unknown, path: string, least: number, most: number, remedy: string): number {
  const expected = `a number from ${least} to ${most}`;
  if (value === undefined) fail('MISSING_FIELD', path, expected, value, remedy);
  if (typeof value !== 'number' || !Number.isFinite(value)) fail('NOT_FINITE', path, expected, value, remedy);
  if (value < least) {
    fail(value < 0 ? 'NEGATIVE' : value === 0 ? 'NOT_POSITIVE' : 'UNKNOWN_VALUE', path, expected, value, remedy);
  }
  if (value > most) fail('TOO_LARGE', path, expected, value, remedy);
  return value;
}

/** The same above zero. */
export function readAboveZero(value: unknown, path: string, most: number, remedy: string): number {
  const read = readNumber(value, path, 0, most, remedy);
  return read > 0 ? read : fail('NOT_POSITIVE', path, 'a number above zero', read, remedy);
}

/** The one field that is given of several that exclude each other. */
export function readChoice<Name extends string>(input: unknown, names: readonly Name[], path: string): Name {
  const expected = `one of { ${names.join(' }, { ')} }`;
  checkObject(input, path, expected);
  const given = names.filter((name) => (input as Readonly<Record<string, unknown>>)[name] !== undefined);
  const [one] = given;
  if (one === undefined) return fail('MISSING_FIELD', path, expected, undefined, 'Give one of them.');
  if (given.length > 1) fail('CONFLICTING_FIELDS', path, expected, given.join(' and '), 'Give one of them.');
  return one;
}

/** The row of a name; one that is not there is refused with the names that are. */
export function listed<Row>(rows: { readonly [name: string]: Row }, name: unknown, path: string): Row {
  const row = rowOf(rows, name as string);
  return row ?? fail('NO_VALUE_IN_TABLE', path, Object.keys(rows).join(', '), name, 'The table has no other rows.');
}
