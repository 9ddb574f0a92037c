// Wrong input of every sort, and what a call may answer to it: a result without NaN, or a RiggingError.
import fc from 'fast-check';
import { expect } from 'vitest';
import { RiggingError } from '../../src/errors.js';

/** Values that go through JSON: what a form or a file can hold. */
export const jsonGarbage: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    true,
    false,
    0,
    -1,
    1e308,
    5e-324,
    '',
    ' ',
    '5',
    '-5 lb',
    '0 lb',
    '1,000 lb',
    '3 ton',
    '5 ft',
    '1e400 lb',
    {},
    [],
    [[]],
    [null],
  ),
  fc.constantFrom<unknown>(
    '__proto__',
    'constructor',
    'toString',
    'x'.repeat(5000),
    '\u0000',
    'NaN lb',
    { value: 5 },
    { unit: 'lb' },
    { value: '5', unit: 'lb' },
    { value: 5, unit: '__proto__' },
  ),
  fc.constantFrom<unknown>(
    { value: 1e308, unit: 'long-ton' },
    { value: 5, unit: 'C' },
    { value: 5e-324, unit: 'mm' },
    { value: 1e308, unit: 'kN' },
    { verdict: 'pass' },
    { workingLoadLimit: null },
    { length: 2 },
  ),
  fc.jsonValue(),
);

/** Values of any type at all. */
export const anyGarbage: fc.Arbitrary<unknown> = fc.oneof(
  jsonGarbage,
  fc.constantFrom<unknown>(
    undefined,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Symbol('x'),
    5n,
    () => 5,
    new Date(0),
    new Map(),
    /x/,
    { value: Number.NaN, unit: 'lb' },
    Object.create(null),
    new Array(3),
  ),
  fc.constantFrom<unknown>(
    [Symbol('x')],
    { toString: null },
    { valueOf: 5, toString: 5 },
    Object.create({ inherited: true }),
  ),
  fc.anything({
    withBigInt: true,
    withDate: true,
    withMap: true,
    withNullPrototype: true,
    withSet: true,
    withSparseArray: true,
    withObjectString: true,
  }),
);

/** Every place in a value, as lists of keys. */
function placesOf(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, item]) => placesOf(item, [...path, key]))];
}

function put(value: unknown, path: readonly string[], item: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return item;
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value) && !/^\d+$/.test(key)) return value; // spoiled before: there is no such place any more
  const copy = Array.isArray(value) ? [...value] : { ...value };
  (copy as Record<string, unknown>)[key] = put((value as Record<string, unknown>)[key], rest, item);
  return copy;
}

/** A good value with garbage in one to three of its places. */
export function spoiled(good: unknown, garbage: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  const places = placesOf(good);
  return fc
    .array(fc.tuple(fc.nat(places.length - 1), garbage), { minLength: 1, maxLength: 3 })
    .map((spots) => spots.reduce<unknown>((value, [at, item]) => put(value, places[at] ?? [], item), good));
}

/** Numbers in a result that are none; the echo of the input is the caller's own. */
function brokenNumbers(value: unknown, path: string): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, item]) =>
    path === 'result' && key === 'inputs' ? [] : brokenNumbers(item, `${path}.${key}`),
  );
}

const inherited = () =>
  JSON.stringify(
    [Object.prototype, Array.prototype, String.prototype, Number.prototype].map((each) =>
      Reflect.ownKeys(each).map(String),
    ),
  );
const before = inherited();

/** A call gives a result without NaN or infinity, or throws a RiggingError with all its fields; and it changes no prototype. */
export function givesResultOrIssue(call: () => unknown): void {
  try {
    const result = call();
    expect(typeof result === 'object' && result !== null).toBe(true);
    expect(brokenNumbers(result, 'result')).toEqual([]);
  } catch (error) {
    if (!(error instanceof RiggingError)) throw error;
    for (const field of [error.code, error.expected, error.received, error.remedy]) expect(field).not.toBe('');
    expect(error.message.length).toBeLessThan(2000);
  }
  expect(inherited()).toBe(before);
}
