import { compareExactSums, type Ratio, ratioOf } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import type { usNiosh1994Constants } from '../tables/generated/us-niosh-1994-constants.js';
import { usNiosh1994Coupling } from '../tables/generated/us-niosh-1994-coupling.js';
import type { usNiosh1994Duration } from '../tables/generated/us-niosh-1994-duration.js';
import { usNiosh1994Frequency } from '../tables/generated/us-niosh-1994-frequency.js';

// The revised NIOSH lifting equation. Its two systems are roundings of one another: everything here takes the
// constants of one and never looks at the other.

/** How long the lifting goes on: up to 1 h, up to 2 h, up to 8 h, the first two with rest after them. */
export type LiftDuration = keyof typeof usNiosh1994Duration.rows;

/** How well the hands hold the load. */
export type Coupling = keyof typeof usNiosh1994Coupling.rows;

export type LiftingConstants = (typeof usNiosh1994Constants.rows)['us' | 'si'];

/** What a lift takes off the load constant. */
export type MultiplierName = 'horizontal' | 'vertical' | 'distance' | 'asymmetry' | 'frequency' | 'coupling';

/** One lift as the equation sees it; lengths in the unit of the constants, the angle in degrees. */
export interface Lift {
  readonly horizontal: number;
  readonly height: number;
  readonly asymmetry: number;
  readonly distance: number;
  /** A rate of the table; undefined above the last one. */
  readonly rate: number | undefined;
  readonly duration: LiftDuration;
  readonly coupling: Coupling;
}

/**
 * A multiplier, and the same as a sum of products of decimals over a decimal: whether a load is within the limit is
 * decided from the decimals that people and tables wrote.
 */
interface Multiplier {
  readonly value: number;
  readonly sum: readonly (readonly number[])[];
  readonly over: number;
}

export type Multipliers = Readonly<Record<MultiplierName, Multiplier>>;

/** The lowest rate of the table that is not below this one: nothing is interpolated. */
export function rateOfTable(liftsPerMinute: number): number | undefined {
  const rates = Object.keys(usNiosh1994Frequency.rows).map(Number);
  return rates.sort((a, b) => a - b).find((rate) => liftsPerMinute <= rate);
}

/** The six multipliers of a lift, each zero beyond the limit of its figure. */
export function multipliersOf(constants: LiftingConstants, lift: Lift): Multipliers {
  const { horizontal, height, asymmetry, distance, rate, duration, coupling } = lift;
  const { horizontal_least, vertical_reference, vertical_slope, distance_base, distance_term } = constants;
  const frequencies: Readonly<Record<number, Readonly<Record<string, number>>>> = usNiosh1994Frequency.rows;
  const edge = height < constants.height_edge ? 'below_edge' : 'from_edge';
  const loss = height < vertical_reference ? -vertical_slope : vertical_slope;
  const from = Math.max(horizontal, horizontal_least);
  const over = Math.max(distance, constants.distance_least); // there the formula gives 1
  const upTo = (within: boolean, sum: Multiplier['sum'], over = 1): Multiplier =>
    within ? { value: sumOf(sum) / over, sum, over } : { value: 0, sum: [[0]], over: 1 };
  return {
    horizontal: upTo(horizontal <= constants.horizontal_most, [[horizontal_least]], from),
    vertical: upTo(height <= constants.vertical_most, [[1], [-loss, height], [loss, vertical_reference]]),
    distance: upTo(distance <= constants.distance_most, [[distance_base, over], [distance_term]], over),
    asymmetry: upTo(asymmetry <= constants.asymmetry_most_deg, [[1], [-constants.asymmetry_slope, asymmetry]]),
    frequency: upTo(rate !== undefined, [[frequencies[rate as number]?.[`${duration}_${edge}`] as number]]),
    coupling: upTo(true, [[usNiosh1994Coupling.rows[coupling][edge]]]),
  };
}

const timesOf = (factors: readonly number[]) => factors.reduce((product, factor) => product * factor, 1);
const sumOf = (products: readonly (readonly number[])[]) =>
  products.reduce((sum, factors) => sum + timesOf(factors), 0);

/** The recommended weight limit, the load constant times all multipliers, in the mass unit of the constants. */
export function weightLimitOf(constants: LiftingConstants, multipliers: Multipliers): number {
  return constants.load_constant * timesOf(Object.values(multipliers).map(({ value }) => value));
}

/** Load over limit, and whether it is 1 at most. */
export function liftingIndexOf(
  { load_constant, mass_unit }: LiftingConstants,
  multipliers: Multipliers,
  limit: number,
  load: QuantityLike,
  loadInUnit: number,
): Ratio {
  return ratioOf(loadInUnit, limit, () => {
    const all = Object.values(multipliers);
    // multiplied out: load · (all denominators) against the load constant · (each product of the sums)
    const products = all.reduce<(readonly number[])[]>(
      (found, { sum }) => found.flatMap((product) => sum.map((more) => [...product, ...more])),
      [[]],
    );
    const quantity = { value: load_constant, unit: mass_unit };
    return compareExactSums(
      [{ quantity: load, times: all.map(({ over }) => over) }],
      products.map((times) => ({ quantity, times })),
    );
  });
}
