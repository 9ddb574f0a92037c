import { compareExactSums } from '../../../quantities/exact.js';
import { caNsc102013Thresholds as thresholds } from '../../../tables/generated/ca-nsc10-2013-thresholds.js';
import { type Note, note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { readGrossMass, UNIT_MASS_NOT_STATED, VEHICLE_NOT_STATED } from '../../counting/gross-mass.js';
import type { Vehicle } from '../../plan.js';
import type { Applicability } from '../../rule-set.js';
import { cite, clauseOf } from './cite.js';

/**
 * Part 1: the standard reaches a commercial vehicle or combination of more than 4,500 kg gross or registered mass.
 *
 * Counted is sum(max(rating, weight)) over the units. A combination rating on a label does not enter, nor does
 * whether the trip crosses a border; provinces exempt some vehicles and reach further to others.
 */
export function applicability(vehicle: Vehicle | undefined, working: Working): Applicability {
  const { value, unit, clause } = thresholds.rows['commercial-vehicle-mass'];
  cite(working, `${clause}, scope`);
  if (vehicle === undefined) return answer('undetermined', VEHICLE_NOT_STATED);
  const { units, known, total } = readGrossMass(vehicle, 'kg');
  const limit = { value, unit };
  working.step('vehicle', 'gross', 'sum(max(rating, weight))', units, total, clauseOf(clause));
  const heavy = compareExactSums(known, [{ quantity: limit }]) > 0;
  if (heavy) return answer('applies', OVER_THE_LIMIT, { limit });
  return known.length < units.length
    ? answer('undetermined', UNIT_MASS_NOT_STATED)
    : answer('does-not-apply', NOT_OVER_THE_LIMIT, { total, limit });
}

function answer(verdict: Applicability['verdict'], words: Words, params?: Note['params']): Applicability {
  return { verdict, because: note(words, params), clause: clauseOf(thresholds.rows['commercial-vehicle-mass'].clause) };
}

const NOT_OVER_THE_LIMIT: Words = [
  'NOT_OVER_WEIGHT_LIMIT',
  '{total} is not over {limit}. Registered for more, it would be; Ontario reaches lighter commercial vehicles too.',
];
const OVER_THE_LIMIT: Words = [
  'COMMERCIAL_VEHICLE',
  'Over {limit}; which use is commercial, and what is exempt, each province says.',
];
