import { RiggingError } from '../errors.js';
import { compareExact } from '../quantities/exact.js';
import type { Quantity, QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import type { UnitSystem } from '../quantities/units.js';
import { printedRating, type RatingTable } from '../tables/rating-table.js';
import { chainMass } from './chain-mass.js';
import type { ChainGrade, TradeSize } from './trade-size.js';

/** A chain that a table rates, with what a length of it weighs. */
export interface RatedChain {
  readonly size: string;
  readonly grade: number;
  readonly workingLoadLimit: Quantity<'lb' | 'kg'>;
  readonly mass: Quantity<'lb' | 'kg'>;
}

/** A chain that a table rates; its mass is null where no table describes its links. */
export type ListedRating = Omit<RatedChain, 'mass'> & { readonly mass: RatedChain['mass'] | null };

/** Every chain of a table, with what a length of it weighs. */
export function ratedChains({ chain, units: own }: RatingTable, length: QuantityLike<'ft' | 'm'>, units: UnitSystem) {
  const unit = units === 'us' ? 'lb' : 'kg';
  return Object.entries(chain.rows).flatMap(([size, grades]) =>
    Object.entries(grades).map(([name, cell]): ListedRating => {
      const grade = Number(name);
      const workingLoadLimit = ratedLoadIn(printedRating(cell, own), unit);
      return { size, grade, workingLoadLimit, mass: massOf(size, grade, length, units) };
    }),
  );
}

/**
 * The lightest chain of a table with a limit of at least so much that `suits`; of two as light, the stronger. A chain whose links no
 * table describes is left out: what it weighs is not known.
 */
export function lightestChain(
  ratings: RatingTable,
  required: QuantityLike,
  length: QuantityLike<'ft' | 'm'>,
  units: UnitSystem,
  suits: (chain: RatedChain) => boolean = () => true,
): RatedChain | null {
  const enough = ratedChains(ratings, length, units)
    .filter(isWeighed)
    .filter(({ workingLoadLimit }) => compareExact(workingLoadLimit, required) >= 0);
  return enough.sort(byMass).find(suits) ?? null;
}

const isWeighed = (chain: ListedRating): chain is RatedChain => chain.mass !== null;

/** The lighter first; of two as light, the stronger. */
export function byMass(one: RatedChain, other: RatedChain): number {
  return one.mass.value - other.mass.value || other.workingLoadLimit.value - one.workingLoadLimit.value;
}

function massOf(size: string, grade: number, length: QuantityLike<'ft' | 'm'>, units: UnitSystem) {
  try {
    return chainMass({ size: size as TradeSize, grade: grade as ChainGrade, length, units, working: false }).mass;
  } catch (error) {
    if (error instanceof RiggingError) return null;
    throw error;
  }
}
