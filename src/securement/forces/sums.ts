import { fail } from '../../errors.js';
import { decimalProduct } from '../../quantities/decimal.js';
import type { ExactTerm } from '../../quantities/exact.js';
import { Quantity, type QuantityLike } from '../../quantities/quantity.js';
import { ratedLoadIn } from '../../quantities/rated.js';
import { UNITS, type UnitSystem } from '../../quantities/units.js';

/**
 * A sum of loads, each with what it is multiplied by: where rounding could decide a comparison, the decimals themselves
 * do. A share of a run that is a decimal, of 3-4-5, counts as that decimal. In a sum of moments one of the factors is a
 * lever in meters.
 */
export type Sum = readonly ExactTerm[];

/** A mass under the gravity that a code writes down, in m/s², as the decimals they are: not the load that it is elsewhere. */
export const weightUnder = (gravity: number, mass: QuantityLike): Sum => [
  { quantity: { value: decimalIn(mass, 'kg'), unit: 'N' }, times: [gravity] },
];

/** Every term of a sum multiplied by numbers. */
export const times = (sum: Sum, ...by: readonly number[]): Sum =>
  sum.map((term) => ({ quantity: term.quantity, times: [...(term.times ?? []), ...by] }));

/** Units that a sum of loads is shown in. */
export type SumUnit = 'N' | 'kN' | 'lbf' | 'kg' | 'lb';

/** A sum in a unit, in moments that unit times meters; infinite where nothing bounds it. */
export const totalOf = (sum: Sum, unit: SumUnit = 'N'): number =>
  sum.reduce(
    (total, { quantity, times: by = [] }) =>
      total + by.reduce((product, factor) => product * factor, valueIn(quantity, unit)),
    0,
  );

const valueIn = (load: QuantityLike, unit: SumUnit): number =>
  Number.isFinite(load.value) ? ratedLoadIn(load, unit).value : load.value;

/** A sum that is known, in a unit. */
export function amountOf<U extends SumUnit>(sum: Sum, unit: U, divisor = 1): Quantity<U> {
  const value = totalOf(sum, unit) / divisor;
  if (!Number.isFinite(value)) fail('NOT_FINITE', '', 'loads of a possible size', value, 'Check the numbers given.');
  return new Quantity(value, unit);
}

/** The unit that forces are shown in: the codes and their tables write kN. */
export const forceUnitOf = (units: UnitSystem): 'kN' | 'lbf' => (units === 'si' ? 'kN' : 'lbf');

/** How a sum is shown as a force; one that was kept free of a division is divided here. */
export const inForce =
  (units: UnitSystem, divisor = 1) =>
  (sum: Sum): Quantity<'kN' | 'lbf'> =>
    // added up in newtons, in which most of what is written is a whole number
    units === 'si' ? new Quantity(amountOf(sum, 'N', 1000 * divisor).value, 'kN') : amountOf(sum, 'lbf', divisor);

/** How a sum of moments is shown: a plain number in {@link momentUnit}. */
export const inMoment =
  (units: UnitSystem, divisor = 1) =>
  (sum: Sum): number =>
    inForce(units, divisor)(sum).value / (units === 'si' ? 1 : FOOT);

const FOOT = 0.3048;

/** The unit of a moment that is shown as a plain number. */
export const momentUnit = (units: UnitSystem): string => (units === 'si' ? 'kN m' : 'lbf ft');

/** A load as a force, as it is shown; null where it is not known. */
export const shownLoad = (load: QuantityLike | null | undefined, units: UnitSystem): Quantity<'kN' | 'lbf'> | null =>
  load === null || load === undefined || load.value === Number.POSITIVE_INFINITY
    ? null
    : ratedLoadIn(load, forceUnitOf(units));

/** A quantity in a smaller unit of its system as the decimal it is, 12.3 t as 12300 kg; in another system as the nearest double. */
function decimalIn(quantity: QuantityLike, unit: 'N' | 'kg'): number {
  const { value, unit: from } = quantity;
  const factor = UNITS[from].steps / UNITS[unit].steps;
  const exact = UNITS[from].dimension === UNITS[unit].dimension && Number.isInteger(factor);
  return exact ? decimalProduct(value, factor) : ratedLoadIn(quantity, unit).value;
}
