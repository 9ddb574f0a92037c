import { fail } from '../errors.js';
import { valueIn } from './convert.js';
import { compareExact, compareExactSums, type ExactTerm } from './exact.js';
import { Quantity, type QuantityLike } from './quantity.js';
import { ratedLoadIn } from './rated.js';
import { readAny } from './read.js';
import { type MassUnit, UNITS, type Unit } from './units.js';

/**
 * Adds quantities of one dimension; the result is in the unit of the first.
 *
 * @throws RiggingError `WRONG_KIND` when the dimensions differ or for a temperature in C or F, `EMPTY_LIST`
 * without arguments, `NOT_A_QUANTITY`, `NOT_FINITE`
 * @example
 * add(ft(10), inches(6))
 * // => 10.5 ft
 */
export function add<U extends Unit>(first: QuantityLike<U>, ...others: readonly QuantityLike[]): Quantity<U> {
  if (first === undefined) return fail('EMPTY_LIST', '', 'at least one quantity', first, 'Give the quantities to add.');
  const start = withTrueZero(readAny<U>(first, 'first'));
  let total = start.value;
  for (const [index, other] of others.entries())
    total += valueIn(sameDimension(start, other, `others[${index}]`), start.unit);
  return new Quantity(total, start.unit);
}

/**
 * Subtracts one quantity from another; the result is in the unit of the first.
 *
 * @throws RiggingError `WRONG_KIND` when the dimensions differ or for a temperature in C or F, `NOT_A_QUANTITY`, `NOT_FINITE`
 * @example
 * subtract(ft(10), inches(6))
 * // => 9.5 ft
 */
export function subtract<U extends Unit>(from: QuantityLike<U>, amount: QuantityLike): Quantity<U> {
  const start = withTrueZero(readAny<U>(from, 'from'));
  return new Quantity(start.value - valueIn(sameDimension(start, amount, 'amount'), start.unit), start.unit);
}

/**
 * Multiplies a quantity by a plain number.
 *
 * @throws RiggingError `NOT_FINITE` when the factor or the result is not a finite number, `WRONG_KIND` for a
 * temperature in C or F, `NOT_A_QUANTITY`
 * @example
 * scale(lb(3150), 4)
 * // => 12600 lb
 */
export function scale<U extends Unit>(amount: QuantityLike<U>, factor: number): Quantity<U> {
  const { value, unit } = withTrueZero(readAny<U>(amount, 'amount'));
  if (!Number.isFinite(factor)) fail('NOT_FINITE', 'factor', 'a finite number', factor, 'Give a plain number.');
  return new Quantity(value * factor, unit);
}

/**
 * Compares two quantities of one dimension exactly: each number counts as the decimal it shows and the unit
 * factors are exact, so 3.048 m equals 10 ft. Only rad and percent-grade have no exact factor; beside another
 * unit they are compared in degrees, in double precision.
 *
 * @returns -1, 0 or 1 as the first is below, equal to or above the second
 * @throws RiggingError `WRONG_KIND` when the dimensions differ, `NOT_A_QUANTITY`, `NOT_FINITE`
 * @example
 * compare(m(3.048), ft(10))
 * // => 0
 */
export function compare(first: QuantityLike, second: QuantityLike): -1 | 0 | 1 {
  const a = readAny(first, 'first');
  const b = sameDimension(a, second, 'second');
  if (a.unit !== b.unit && (UNITS[a.unit].steps === 0 || UNITS[b.unit].steps === 0)) {
    const gap = valueIn(a, 'deg') - valueIn(b, 'deg');
    return gap < 0 ? -1 : gap > 0 ? 1 : 0;
  }
  return a.unit === b.unit ? compareExact(a, b) : compareExactSums(fromZeroF(a), fromZeroF(b));
}

/** 0 C is 32 F: beside another scale, C counts from there. */
function fromZeroF(quantity: Quantity): ExactTerm[] {
  return quantity.unit === 'C' ? [{ quantity }, { quantity: { value: 32, unit: 'F' } }] : [{ quantity }];
}

/**
 * The force with which standard gravity pulls a mass: F = m · g, with g = 9.80665 m/s². One pound of mass
 * weighs one pound-force, one kilogram one kilogram-force; nothing in this library crosses between mass and
 * force without this step.
 *
 * @param mass a mass in any unit
 * @returns newtons for kg and t, pounds-force for lb and tons
 * @throws RiggingError `WRONG_KIND` when it is not a mass, `NOT_A_QUANTITY`, `NOT_FINITE`
 * @source standard gravity: CGPM 1901
 * @example
 * weightOf(lb(4000))
 * // => 4000 lbf
 * @example
 * weightOf(kg(100))
 * // => 980.665 N
 */
export function weightOf(mass: QuantityLike<MassUnit>): Quantity<'N' | 'lbf'> {
  const { value, unit } = readAny(mass, 'mass');
  if (UNITS[unit].dimension !== 'mass') {
    return fail('WRONG_KIND', 'mass', 'a mass', `${value} ${unit}`, 'Give kg, t, lb, short-ton or long-ton.');
  }
  return ratedLoadIn({ value, unit }, unit === 'kg' || unit === 't' ? 'N' : 'lbf');
}

function sameDimension(first: QuantityLike, input: unknown, path: string): Quantity {
  const second = readAny(input, path);
  if (UNITS[first.unit].dimension !== UNITS[second.unit].dimension) {
    fail(
      'WRONG_KIND',
      path,
      `the same kind as ${first.value} ${first.unit}`,
      `${second}`,
      'Mass becomes force with weightOf(mass).',
    );
  }
  return second;
}

/** 20 C plus 10 C is not 30 C in any sense that F would agree with. */
function withTrueZero<U extends Unit>(quantity: Quantity<U>): Quantity<U> {
  if (UNITS[quantity.unit].dimension === 'temperature') {
    fail('WRONG_KIND', '', 'a quantity with a true zero', `${quantity}`, 'Temperatures do not add or multiply.');
  }
  return quantity;
}
