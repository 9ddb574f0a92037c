import { chainMass } from '../chain/chain-mass.js';
import type { ChainGrade, TradeSize } from '../chain/trade-size.js';
import { RiggingError } from '../errors.js';
import type { Quantity, QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import type { UnitSystem } from '../quantities/units.js';
import { printedRating, type RatingTable } from '../tables/rating-table.js';

/** A chain that a table rates, with what a length of it weighs. */
export interface RatedChain {
  readonly size: string;
  readonly grade: number;
  readonly workingLoadLimit: Quantity<'lb' | 'kg'>;
  readonly mass: Quantity<'lb' | 'kg'>;
}

/**
 * The lightest chain of a table with a limit of at least so much that `suits`; of two as light, the stronger. A chain whose links no
 * table describes is left out: what it weighs is not known.
 */
export function lightestChain(
  { chain, units: own }: RatingTable,
  required: QuantityLike,
  length: QuantityLike<'ft' | 'm'>,
  units: UnitSystem,
  suits: (chain: RatedChain) => boolean = () => true,
): RatedChain | null {
  const unit = units === 'us' ? 'lb' : 'kg';
  let best: RatedChain | null = null;
  for (const [size, grades] of Object.entries(chain.rows)) {
    for (const [grade, cell] of Object.entries(grades)) {
      const limit = printedRating(cell, own);
      if (ratedLoadIn(limit, unit).value < ratedLoadIn(required, unit).value) continue;
      const mass = massOf(size, Number(grade), length, units);
      if (mass === undefined) continue;
      const found = { size, grade: Number(grade), workingLoadLimit: ratedLoadIn(limit, unit), mass };
      if ((best === null || isBetter(found, best)) && suits(found)) best = found;
    }
  }
  return best;
}

function isBetter(one: RatedChain, other: RatedChain): boolean {
  const lighter = other.mass.value - one.mass.value;
  return lighter > 0 || (lighter === 0 && one.workingLoadLimit.value > other.workingLoadLimit.value);
}

function massOf(size: string, grade: number, length: QuantityLike<'ft' | 'm'>, units: UnitSystem) {
  try {
    return chainMass({ size: size as TradeSize, grade: grade as ChainGrade, length, units, working: false }).mass;
  } catch (error) {
    if (error instanceof RiggingError) return undefined;
    throw error;
  }
}
