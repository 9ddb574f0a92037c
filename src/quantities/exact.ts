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

/** Below this magnitude a double may have lost digits; no load or length comes near it, but zero does. */
const LEAST_ROUGH = 1e-200;

/** Standard gravity in base steps of acceleration: a mass step times this is a force step (1e-13 N). */
const GRAVITY_STEPS = 980_665;

/** -1, 0 or 1 as the left sum is below, equal to or above the right one. Rated loads may mix mass and force units. */
export function compareExactSums(left: readonly ExactTerm[], right: readonly ExactTerm[]): -1 | 0 | 1 {
  checkOneDimension(left, right);
  const a = roughSum(left);
  const b = roughSum(right);
  if (Math.abs(a.sum - b.sum) > CLEAR_GAP * (a.size + b.size)) return order(a.sum, b.sum);
  const terms = [...left.map((term) => bigTerm(term, 1n)), ...right.map((term) => bigTerm(term, -1n))];
  const lowest = terms.reduce((least, { exponent }) => Math.min(least, exponent), 0);
  let difference = 0n;
  for (const { digits, exponent } of terms) difference += digits * 10n ** BigInt(exponent - lowest);
  return order(difference, 0n);
}

/** -1, 0 or 1 as one quantity is below, equal to or above another of the same kind, decided exactly; not for C beside F. */
export function compareExact(left: QuantityLike, right: QuantityLike): -1 | 0 | 1 {
  if (left.unit === right.unit) return order(left.value, right.value);
  return compareExactSums([{ quantity: left }], [{ quantity: right }]);
}

function order(left: number | bigint, right: number | bigint): -1 | 0 | 1 {
  return left < right ? -1 : left > right ? 1 : 0;
}

/** How many whole steps it takes to cover a length, any fraction counting as one: exact ceil(length / step). */
export function stepsToCover(length: QuantityLike, step: QuantityLike): number {
  if (!(step.value > 0)) fail('NOT_POSITIVE', 'step', 'a step above zero', step.value, 'Give the length of one step.');
  if (!(length.value >= 0)) fail('NEGATIVE', 'length', 'a length of zero or more', length.value, 'Check the sign.');
  checkOneDimension([{ quantity: length }], [{ quantity: step }]);
  const wholeNumbers = Number.isInteger(length.value) && Number.isInteger(step.value) && Math.abs(length.value) < 1e9;
  if (length.unit === step.unit && wholeNumbers) return Math.ceil(length.value / step.value); // exact as it stands
  const quotient = (length.value * stepsOf(length.unit)) / (step.value * stepsOf(step.unit));
  const nearest = Math.round(quotient);
  if (Math.abs(quotient - nearest) > CLEAR_GAP * Math.max(1, quotient)) return Math.ceil(quotient);
  const atNearest = compareExactSums([{ quantity: length }], [{ quantity: step, times: [nearest] }]);
  return atNearest > 0 ? nearest + 1 : nearest;
}

/** demand / capacity as a number that never contradicts the exact comparison: 1 exactly when they are equal; null without capacity. */
export function utilizationOf(demand: readonly ExactTerm[], capacity: readonly ExactTerm[]): number | null {
  const bottom = roughSum(capacity).sum;
  if (bottom <= 0) return null;
  const ratio = roughSum(demand).sum / bottom;
  if (!Number.isFinite(ratio)) fail('NOT_FINITE', '', 'loads of a possible size', ratio, 'Check the numbers given.');
  return agreeing(ratio, compareExactSums(demand, capacity));
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
  if (Math.abs(utilization - 1) > CLEAR_GAP) return { fits: utilization < 1, utilization };
  const order = exact();
  return { fits: order <= 0, utilization: agreeing(utilization, order) };
}

/** A ratio on the side of 1 that the exact order says, by one double where rounding put it elsewhere. */
function agreeing(ratio: number, order: -1 | 0 | 1): number {
  if (order === 0) return 1;
  return order < 0 ? Math.min(ratio, 1 - Number.EPSILON / 2) : Math.max(ratio, 1 + Number.EPSILON);
}

/** Base steps in one of a unit, exact; a mass counts as the force it weighs. */
function stepsOf(unit: Unit): number {
  const { dimension, steps } = UNITS[unit];
  if (steps === 0) fail('WRONG_KIND', '', 'a unit with an exact factor', unit, 'Give the angle in deg.');
  return dimension === 'mass' ? steps * GRAVITY_STEPS : steps;
}

/** The sum in doubles, and the size of its terms; an infinite size where a double lost digits or overflowed. */
function roughSum(terms: readonly ExactTerm[]): { sum: number; size: number } {
  let sum = 0;
  let size = 0;
  for (const { quantity, times = [] } of terms) {
    let value = quantity.value * stepsOf(quantity.unit);
    size += sizeOf(value);
    for (const factor of times) {
      value *= factor;
      size += sizeOf(value);
    }
    sum += value;
  }
  return { sum, size };
}

function sizeOf(value: number): number {
  const magnitude = Math.abs(value);
  return magnitude > LEAST_ROUGH ? magnitude : Number.POSITIVE_INFINITY;
}

/** A sum mixes mass with force, and no other dimensions. */
function checkOneDimension(left: readonly ExactTerm[], right: readonly ExactTerm[]): void {
  let common: string | undefined;
  for (const terms of [left, right]) {
    for (const { quantity } of terms) {
      const { dimension } = UNITS[quantity.unit];
      const kind = dimension === 'mass' ? 'force' : dimension;
      common ??= kind;
      if (kind !== common) {
        fail('WRONG_KIND', '', common, `${quantity.value} ${quantity.unit}`, 'Give quantities of one kind.');
      }
    }
  }
}

/** A term in base steps, as digits · 10^exponent. */
function bigTerm({ quantity, times = [] }: ExactTerm, sign: bigint): { digits: bigint; exponent: number } {
  let digits = sign * BigInt(stepsOf(quantity.unit));
  let exponent = 0;
  for (const factor of [quantity.value, ...times]) {
    const decimal = decimalOf(factor);
    digits *= BigInt(decimal.digits);
    exponent += decimal.exponent;
  }
  return { digits, exponent };
}
