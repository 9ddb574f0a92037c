import { compareExactSums } from '../../../quantities/exact.js';
import { caNsc102013Thresholds as thresholds } from '../../../tables/generated/ca-nsc10-2013-thresholds.js';
import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { readGrossMass } from '../../counting/gross-mass.js';
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
  if (vehicle === undefined) return answer('undetermined', note('RULE_TAKEN_TO_REACH_VEHICLE'));
  const { units, known, total } = readGrossMass(vehicle, 'kg');
  const limit = { value, unit };
  working.step('vehicle', 'gross', 'sum(max(rating, weight))', units, total, clauseOf(clause));
  const heavy = compareExactSums(known, [{ quantity: limit }]) > 0;
  if (heavy) return answer('applies', note('OVER_THE_LIMIT_OF_MASS', { limit }));
  return known.length < units.length
    ? answer('undetermined', note('UNIT_MASS_NOT_STATED'))
    : answer('does-not-apply', note('NOT_OVER_WEIGHT_LIMIT', { total, limit }));
}

function answer(verdict: Applicability['verdict'], because: Note): Applicability {
  return { verdict, because, clause: clauseOf(thresholds.rows['commercial-vehicle-mass'].clause) };
}
