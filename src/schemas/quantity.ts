import * as z from 'zod';
import { checkOneOf } from '../input-checks.js';
import { checkSign } from '../quantities/parse.js';
import type { QuantityInput } from '../quantities/quantity.js';
import { readFromZero, readPositive, readQuantity } from '../quantities/read.js';
import { type Kind, kinds, unitsOfKind } from '../quantities/units.js';
import { build, type Fault, fault, faultOf, withFaults } from './fields.js';
import { textPattern } from './text-pattern.js';

/** What {@link quantitySchema} may be told beside the kind. */
export interface QuantitySchemaOptions {
  /** True for a field whose value must be above zero. */
  readonly positive?: boolean;
  /** True for a field whose value may be zero and not below. */
  readonly fromZero?: boolean;
}

/**
 * The schema of a field of a kind: `{ value, unit }` or strict text. It accepts what the library's own reader
 * accepts and says the reader's own code for what it refuses.
 *
 * @param kind `'length'`, `'mass'`, `'force'`, `'ratedLoad'`, `'speed'`, ...
 * @param options `positive`: refuse zero and below; `fromZero`: refuse what is below zero
 * @throws RiggingError `UNKNOWN_VALUE` for an unknown kind
 * @example
 * quantitySchema('mass').safeParse('3940 lb').success
 * // => true
 * @example
 * const check = checkJson(quantitySchema('mass'), '3,940 lb');
 * if (!check.ok) console.log(check.issues[0].code);
 * // => AMBIGUOUS_NUMBER
 */
export function quantitySchema<K extends Kind>(
  kind: K,
  options: QuantitySchemaOptions = {},
): z.ZodType<QuantityInput<K>, QuantityInput<K>> {
  checkOneOf(kind, kinds(), 'kind');
  const positive = options.positive === true;
  const fromZero = options.fromZero === true;
  const sign = positive ? 'positive' : canBeNegative(kind) && !fromZero ? 'any' : 'zero or more';
  const units = unitsOfKind(kind);
  const value = sign === 'positive' ? z.number().positive() : sign === 'any' ? z.number() : z.number().nonnegative();
  const text = z
    .string()
    .max(64)
    .regex(textPattern(kind, units, sign));
  const both = z.union([z.strictObject({ value: silent(value), unit: silent(z.enum(units)) }), silent(text)]);
  const read = (input: unknown) =>
    positive
      ? readPositive(input, kind, '')
      : (fromZero && readFromZero(input, kind, '')) || readQuantity(input, kind, '');
  const faults = (input: unknown) => faultOf(() => read(input));
  // The reader decides; zod's own findings are for JSON Schema, but for the fields that the reader does not look at.
  const schema = withFaults(
    both,
    (_, issue) => (issue.code === 'unrecognized_keys' ? extraFields(issue.keys as string[]) : []),
    faults,
  );
  // zod sees text; the type is as narrow as the fields of the library are.
  return schema as unknown as z.ZodType<QuantityInput<K>, QuantityInput<K>>;
}

export const mass = /* @__PURE__ */ build(() => quantitySchema('mass', { positive: true }));
export const length = /* @__PURE__ */ build(() => quantitySchema('length', { positive: true }));
export const force = /* @__PURE__ */ build(() => quantitySchema('force', { positive: true }));
export const ratedLoad = /* @__PURE__ */ build(() => quantitySchema('ratedLoad', { positive: true }));

/** A point of the plan: three lengths, each of either sign. */
export const point = /* @__PURE__ */ build(() => {
  const coordinate = quantitySchema('length');
  return withFaults(z.tuple([coordinate, coordinate, coordinate]), (value) => [
    fault('MISSING_FIELD', 'a point [x, y, z] of three lengths', value, "Write ['-6 ft', '40 in', '0 in']."),
  ]);
});

/** A schema that leaves it to the whole it is part of to say what is wrong with a value of the right type. */
function silent<S extends z.ZodType>(schema: S): S {
  return withFaults(schema, (_, issue) => (issue.code === 'invalid_type' ? undefined : []));
}

function extraFields(keys: readonly string[]): readonly Fault[] {
  return keys.map((key) => fault('UNKNOWN_FIELD', 'a field of a quantity: value, unit', key, 'Leave it out.', [key]));
}

/** A quantity that a reader of the library narrows further, such as an angle short of a right one. */
export function quantityThat<K extends Kind>(kind: K, read: (input: unknown) => unknown) {
  return withFaults(
    quantitySchema(kind),
    () => undefined,
    // what the quantity is itself refused for is said already
    (input) => (faultOf(() => readQuantity(input, kind, '')).length > 0 ? [] : faultOf(() => read(input))),
  );
}

function canBeNegative(kind: Kind): boolean {
  try {
    checkSign(-1, kind, '');
    return true;
  } catch {
    return false;
  }
}

/** What text of a kind looks like, for a reader of a JSON Schema. */
export function describeKind(kind: Kind): string {
  const units = unitsOfKind(kind);
  return `{ value, unit } or text such as '3 ${units[0]}'; units: ${units.join(', ')}`;
}
