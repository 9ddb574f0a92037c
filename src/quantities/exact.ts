import { fail } from '../errors.js';
import { decimalOf } from './decimal.js';
import type { QuantityLike } from './quantity.js';
import { UNITS, type Unit } from './units.js';

/**
 * Exact comparison, for thresholds of law and tables. A number counts as the shortest decimal that names it
 * (3.048 is 3.048, not the binary fraction beside it), and the unit factors are whole numbers, so both sides
 * are exact integers: 3.048 m equals 10 ft, with no tolerance anywhere.
 *
 * Callers have read their quantities (see read.ts); the units here are known and the values finite.
 */

/** One term of an exact sum: a quantity, multiplied by plain decimal numbers. */
export interface ExactTerm {
  readonly quantity: QuantityLike;
  readonly times?: readonly number[];
}

/** Beyond this relative gap, rounding in double arithmetic of up to 10,000 terms cannot change which side is larger. */
const CLEAR_GAP = 1e-11;

/** Standard gravity in base steps of acceleration: a mass step times this is a force step (1e-13 N). */
const GRAVITY_STEPS = 980_665n;

/** -1, 0 or 1 as the left sum is below, equal to or above the right one. Rated loads may mix mass and force units. */
export function compareExactSums(left: readonly ExactTerm[], right: readonly ExactTerm[]): -1 | 0 | 1 {
  const terms = [...left.map((term) => bigTerm(term, 1n)), ...right.map((term) => bigTerm(term, -1n))];
  const lowest = Math.min(0, ...terms.map(({ exponent }) => exponent));
  let difference = 0n;
  for (const { digits, exponent, dimension } of terms) {
    if (dimension !== terms[0]?.dimension) {
      fail('WRONG_KIND', '', `${terms[0]?.dimension}`, dimension, 'Give quantities of one kind.');
    }
    difference += digits * 10n ** BigInt(exponent - lowest);
  }
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

/** -1, 0 or 1 as one quantity is below, equal to or above another of the same kind, decided exactly. */
export function compareExact(left: QuantityLike, right: QuantityLike): -1 | 0 | 1 {
  if (left.unit === right.unit) return left.value < right.value ? -1 : left.value > right.value ? 1 : 0;
  return compareExactSums([{ quantity: left }], [{ quantity: right }]);
}

/** How many whole steps it takes to cover a length, any fraction counting as one: exact ceil(length / step). */
export function stepsToCover(length: QuantityLike, step: QuantityLike): number {
  if (!(step.value > 0)) fail('NOT_POSITIVE', 'step', 'a step above zero', step.value, 'Check the step.');
  if (!(length.value >= 0)) fail('NEGATIVE', 'length', 'a length of zero or more', length.value, 'Check the sign.');
  if (length.unit === step.unit && Number.isInteger(length.value) && Number.isInteger(step.value)) {
    return Math.ceil(length.value / step.value); // exact as it stands
  }
  const quotient = (length.value * UNITS[length.unit].steps) / (step.value * UNITS[step.unit].steps);
  const near = Math.round(quotient);
  if (Math.abs(quotient - near) > CLEAR_GAP * Math.max(1, quotient)) return Math.ceil(quotient);
  return compareExactSums([{ quantity: length }], [{ quantity: step, times: [near] }]) > 0 ? near + 1 : near;
}

/** A ratio and whether it stays at or below 1. */
export interface Ratio {
  readonly fits: boolean;
  /** demand / capacity; null without capacity. */
  readonly utilization: number | null;
}

/**
 * demand / capacity from two numbers in one unit. Where they are so close that rounding could decide, the exact
 * comparison does, and the ratio never contradicts it: 1 exactly when they are equal.
 */
export function ratioOf(demand: number, capacity: number, exact: () => -1 | 0 | 1): Ratio {
  if (capacity === 0) return { fits: demand === 0, utilization: null };
  const utilization = demand / capacity;
  if (!Number.isFinite(utilization))
    fail('NOT_FINITE', '', 'loads of a possible size', utilization, 'Check the numbers.');
  if (Math.abs(utilization - 1) > CLEAR_GAP) return { fits: utilization < 1, utilization };
  const order = exact();
  if (order === 0) return { fits: true, utilization: 1 };
  return order < 0
    ? { fits: true, utilization: Math.min(utilization, 1 - Number.EPSILON / 2) }
    : { fits: false, utilization: Math.max(utilization, 1 + Number.EPSILON) };
}

/** A term in base steps, as digits · 10^exponent; a mass counts as the force it weighs. */
function bigTerm(
  { quantity: { value, unit }, times = [] }: ExactTerm,
  sign: bigint,
): { digits: bigint; exponent: number; dimension: string } {
  const { steps, dimension } = UNITS[unit];
  const isMass = dimension === 'mass';
  let digits = sign * wholeSteps(unit, steps) * (isMass ? GRAVITY_STEPS : 1n);
  let exponent = 0;
  for (const factor of [value, ...times]) {
    const decimal = decimalOf(factor);
    digits *= BigInt(decimal.digits);
    exponent += decimal.exponent;
  }
  return { digits, exponent, dimension: isMass ? 'force' : dimension };
}

function wholeSteps(unit: Unit, steps: number): bigint {
  return steps > 0
    ? BigInt(steps)
    : fail('WRONG_KIND', '', 'a unit with an exact factor', unit, 'Give the angle in deg.');
}
