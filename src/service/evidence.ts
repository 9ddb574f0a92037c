import { fail } from '../errors.js';
import { compare } from '../quantities/arithmetic.js';
import { valueIn } from '../quantities/convert.js';
import { compareExactSums, type ExactTerm } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import type { Unit } from '../quantities/units.js';
import type { StepValue } from '../working/step.js';

/** A measured value as its source counts it, which can be compared with a limit exactly. */
export interface Evidence {
  /** In the unit of the criterion. */
  readonly measured: number;
  /** `at least`: the value asked for is this or more, so that it can remove and cannot clear. */
  readonly bound: 'equal' | 'at least';
  /** -1, 0 or 1 as the value is below, at or above a limit. */
  against(limit: number): -1 | 0 | 1;
  /** For a growth: whether it is more than a length. */
  exceeds?(length: QuantityLike | undefined): boolean;
  /** For a growth: whether a length is more than 0.5 % of the length when new, too coarse to tell growth from none. */
  isCoarse?(length: QuantityLike): boolean;
  readonly expression: string;
  readonly values: Readonly<Record<string, StepValue>>;
}

/** Lengths that no chain has would overflow; nothing hands on an infinity. */
export function finite(value: number): number {
  return Number.isFinite(value)
    ? value
    : fail('NOT_FINITE', 'measurements', 'measurements of a possible size', value, 'Check the numbers and units.');
}

const term = (quantity: QuantityLike, ...times: number[]): ExactTerm => ({ quantity, times });

/** So many times a length when new, as a length now is longer: 100 · (now − new) / new, in percent of a base. */
export function growth(
  now: QuantityLike,
  whenNew: QuantityLike,
  options: {
    /** How many times `whenNew` the length now was when new. */
    readonly times?: number;
    /** What the percentage is of; left out: of the length when new. */
    readonly base?: QuantityLike;
    /** A length that the growth is taken without: so many times the wear, wire less diameter. */
    readonly without?: { readonly wire: QuantityLike; readonly diameter: QuantityLike; readonly times: number };
    readonly bound?: Evidence['bound'];
    readonly expression: string;
    readonly values: Evidence['values'];
  },
): Evidence {
  const { times = 1, base, without, bound = 'equal', expression, values } = options;
  const unit = now.unit;
  const length = (quantity: QuantityLike) => valueIn(quantity, unit);
  const worn = without === undefined ? 0 : without.times * (length(without.wire) - length(without.diameter));
  const of = base === undefined ? times * length(whenNew) : length(base);
  const longer = [term(now, 100), ...(without ? [term(without.diameter, 100, without.times)] : [])];
  const before = [term(whenNew, 100, times), ...(without ? [term(without.wire, 100, without.times)] : [])];
  return {
    measured: finite((100 * (length(now) - times * length(whenNew) - worn)) / of),
    bound,
    against: (limit) =>
      compareExactSums(longer, [...before, base === undefined ? term(whenNew, times, limit) : term(base, limit)]),
    exceeds: (least) => compareExactSums(longer, [...before, ...(least === undefined ? [] : [term(least, 100)])]) > 0,
    isCoarse: (uncertainty) => compareExactSums([term(uncertainty, 100)], [term(whenNew, times, COARSE_PERCENT)]) > 0,
    expression,
    values,
  };
}

/** An uncertainty above this share of a length hides growth: a steel tape and a caliper do far better. */
const COARSE_PERCENT = 0.5;

/** Growth that is more than the uncertainty, or that an uncertainty is too coarse to call none. */
export function mayHaveGrown({ exceeds, isCoarse }: Evidence, uncertainty: QuantityLike | undefined): boolean {
  const isLost = uncertainty !== undefined && isCoarse?.(uncertainty) === true;
  return exceeds?.(isLost ? undefined : uncertainty) === true;
}

/** What is lost of a thickness, in percent of what it was: 100 · (d − least) / d; with two readings, of their mean. */
export function loss(nominal: QuantityLike, readings: readonly QuantityLike[], bound: Evidence['bound']): Evidence {
  const { remaining, terms } = meanOf(readings, nominal);
  const n = readings.length;
  return {
    measured: finite(100 - remaining),
    bound,
    against: (limit) => compareExactSums([term(nominal, 100, n)], [...terms, term(nominal, limit, n)]),
    ...named(nominal, readings, n === 1 ? '100 · (d − d1) / d' : '100 · (d − (d1 + d2) / 2) / d'),
  };
}

/** The mean of readings in percent of a nominal diameter. */
export function share(nominal: QuantityLike, readings: readonly QuantityLike[], bound: Evidence['bound']): Evidence {
  const { remaining, terms } = meanOf(readings, nominal);
  return {
    measured: finite(remaining),
    bound,
    against: (limit) => compareExactSums(terms, [term(nominal, limit, readings.length)]),
    ...named(nominal, readings, '100 · (d1 + d2) / 2 / d'),
  };
}

function meanOf(readings: readonly QuantityLike[], nominal: QuantityLike) {
  const sum = readings.reduce((total, reading) => total + valueIn(reading, nominal.unit), 0);
  return {
    remaining: (100 * sum) / (readings.length * nominal.value),
    terms: readings.map((reading) => term(reading, 100)),
  };
}

function named(nominal: QuantityLike, readings: readonly QuantityLike[], expression: string) {
  const values: Record<string, StepValue> = { d: nominal };
  for (const [index, reading] of readings.entries()) values[`d${index + 1}`] = reading;
  return { expression, values };
}

/** Something measured as it stands: a diameter, a depth, an angle, a temperature. */
export function plain(measured: QuantityLike, unit: Unit, expression: string): Evidence {
  return {
    measured: finite(valueIn(measured, unit)),
    bound: 'equal',
    against: (limit) => compare(measured, { value: limit, unit }),
    expression,
    values: { [expression]: measured },
  };
}

/** One length less another. */
export function difference(
  larger: QuantityLike,
  smaller: QuantityLike,
  unit: Unit,
  expression: string,
  values: Evidence['values'],
): Evidence {
  return {
    measured: finite(valueIn(larger, unit) - valueIn(smaller, unit)),
    bound: 'equal',
    against: (limit) => compareExactSums([term(larger)], [term(smaller), term({ value: limit, unit })]),
    expression,
    values,
  };
}

/** A length in percent of another. */
export function percentOf(
  part: QuantityLike,
  whole: QuantityLike,
  expression: string,
  values: Evidence['values'],
): Evidence {
  return {
    measured: finite((100 * valueIn(part, whole.unit)) / whole.value),
    bound: 'equal',
    against: (limit) => compareExactSums([term(part, 100)], [term(whole, limit)]),
    expression,
    values,
  };
}

/** A number that is counted. */
export function counted(count: number, expression: string): Evidence {
  return {
    measured: count,
    bound: 'equal',
    against: (limit) => (count < limit ? -1 : count > limit ? 1 : 0),
    expression,
    values: { [expression]: count },
  };
}
