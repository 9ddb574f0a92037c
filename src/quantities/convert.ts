import { fail } from '../errors.js';
import { knownUnit, Quantity, type QuantityLike } from './quantity.js';
import { readAny } from './read.js';
import { UNITS, type Unit } from './units.js';

/**
 * A quantity in another unit whose factor is a whole number of the same base step: not an angle, not a temperature.
 *
 * value · from / to, so nothing is rounded but the last digit.
 */
export function inUnit<U extends Unit>({ value, unit: from }: QuantityLike, unit: U): Quantity<U> {
  return new Quantity(from === (unit as Unit) ? value : (value * UNITS[from].steps) / UNITS[unit].steps, unit);
}

/** The number of a quantity in any other unit of the same dimension. */
export function valueIn({ value, unit: from }: QuantityLike, unit: Unit): number {
  if (from === unit) return value;
  const source = UNITS[from];
  const target = UNITS[unit];
  if (source.dimension !== target.dimension) {
    return fail('WRONG_KIND', '', target.dimension, `${value} ${from}`, 'Mass becomes force with weightOf(mass).');
  }
  if (from === 'C') return (value * 9) / 5 + 32;
  if (from === 'F') return ((value - 32) * 5) / 9;
  if (source.dimension === 'angle') return angleIn(value, from, unit);
  return (value * source.steps) / target.steps;
}

/** One degree in radians: pi / 180. */
const DEGREE = 0.017453292519943295;

/** The conversions that are not a factor of whole numbers: radians, and a slope given as rise over run. */
function angleIn(value: number, from: Unit, to: Unit): number {
  const radians = from === 'percent-grade' ? Math.atan(value / 100) : from === 'deg' ? value * DEGREE : value;
  if (to === 'rad') return radians;
  if (to === 'deg') return radians / DEGREE;
  if (!(Math.abs(radians) < Math.PI / 2 - 1e-9)) {
    return fail(
      'IMPOSSIBLE_GEOMETRY',
      '',
      'a slope short of vertical',
      `${value} ${from}`,
      'A vertical slope has none.',
    );
  }
  return Math.tan(radians) * 100;
}

/**
 * Converts a quantity to another unit of its dimension.
 *
 * @param from a quantity or bare `{ value, unit }`
 * @param unit the unit wanted
 * @throws RiggingError `WRONG_KIND` across dimensions (mass to force needs gravity: see {@link weightOf}),
 * `UNKNOWN_UNIT`, `NOT_A_QUANTITY`, `NOT_FINITE`, `IMPOSSIBLE_GEOMETRY` for a vertical percent-grade
 * @source factors: international yard and pound agreement 1959; CGPM 1901 (standard gravity); SI
 * @example
 * convert(lb(3150), 'kg')
 * // => 1428.8159655 kg
 */
export function convert<U extends Unit>(from: QuantityLike, unit: U): Quantity<U> {
  return new Quantity(valueIn(readAny(from, 'from'), knownUnit(unit)), unit);
}
