import { fail } from '../errors.js';
import { Quantity, type QuantityLike } from './quantity.js';
import { readAny } from './read.js';
import { isUnit, UNITS, type Unit, unitsOfKind } from './units.js';

/**
 * The number of a quantity in another unit of the same dimension.
 *
 * value · from / to, with both factors whole numbers of the same base step, so nothing is rounded but the last digit.
 */
export function valueIn(quantity: QuantityLike, unit: Unit): number {
  const { value, unit: from } = quantity;
  if (from === unit) return value;
  const source = UNITS[from];
  const target = UNITS[unit];
  if (source.dimension !== target.dimension) {
    return fail(
      'WRONG_KIND',
      '',
      target.dimension,
      `${value} ${from}`,
      `A unit of ${source.dimension} does not convert to ${unit}; mass becomes force with weightOf(mass).`,
    );
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
      'A vertical slope has no percent grade.',
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
  if (!isUnit(unit))
    return fail('UNKNOWN_UNIT', 'unit', 'a unit of this library', unit, `Write one of: ${unitsOfKind()}.`);
  return new Quantity(valueIn(readAny(from, 'from'), unit), unit);
}
