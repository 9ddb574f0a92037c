import { inUnit } from '../../../quantities/convert.js';
import { ratioOf } from '../../../quantities/exact.js';
import type { Quantity } from '../../../quantities/quantity.js';
import type { UnitSystem } from '../../../quantities/units.js';
import { type Check, type CheckSubject, ratioCheck, undeterminedCheck } from '../../../working/check.js';
import type { Note } from '../../../working/note.js';
import type { Range } from './range.js';

/**
 * Holds a force against what is there for it: decided where the least is enough or the most is not, else undetermined.
 * Angles have no exact decimals: the numbers are compared as they were computed, unrounded and without a tolerance.
 */
export function settle(
  about: CheckSubject,
  demand: number,
  { least, most }: Range,
  missing: readonly Note[],
  units: UnitSystem,
): Check {
  const fits = demand <= Math.max(0, least);
  if (!fits && demand <= most) return undeterminedCheck(about, missing);
  const there = Math.max(0, fits ? least : most); // legs that pull upward can leave less than nothing
  const sides = [shown(demand, units), shown(there, units)] as const;
  if (demand / there > Number.MAX_VALUE) return ratioCheck(about, false, ...sides, null); // as good as nothing
  const { utilization } = ratioOf(demand, there, () => (demand < there ? -1 : demand > there ? 1 : 0));
  return ratioCheck(about, fits, ...sides, utilization);
}

/** A force in the units of the result. */
export function shown(newtons: number, units: UnitSystem): Quantity<'N' | 'lbf'> {
  return inUnit({ value: newtons, unit: 'N' }, units === 'si' ? 'N' : 'lbf');
}

/** The lower the better: pass, undetermined, fail; among equals by how far the forces are used. */
export function rankOf(check: Check): number {
  const used = 'utilization' in check ? (check.utilization ?? Number.MAX_VALUE) : 0;
  if (check.verdict === 'pass') return Math.min(used, 1);
  return check.verdict === 'fail' ? UNDECIDED + used : UNDECIDED;
}

const UNDECIDED = 2;
