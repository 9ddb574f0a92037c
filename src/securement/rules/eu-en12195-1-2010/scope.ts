import { mapAt } from '../../../errors.js';
import { checkIds, checkList, checkObject, checkOneOf } from '../../../input-checks.js';
import { compareExact } from '../../../quantities/exact.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { readOptional } from '../../../quantities/read.js';
import { euEn1219512010Factors } from '../../../tables/generated/eu-en12195-1-2010-factors.js';
import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { Vehicle, VehicleUnit } from '../../plan.js';
import type { Applicability } from '../../rule-set.js';
import { cite, STANDARD } from './cite.js';

/**
 * Scope: road vehicles of a total mass of more than 3.5 t, each by itself: a pickup of 3.5 t and its trailer of 3.5 t
 * are both outside. The total mass is the maker's rating; the weight on the road stands for it only where it is more
 * than 3.5 t, because the rating is at least that.
 */
export function applicability(vehicle: Vehicle | undefined, working: Working): Applicability {
  cite(working, 'scope', 'read');
  if (vehicle === undefined) return answer('undetermined', note('STANDARD_TAKEN_TO_REACH_VEHICLE'));
  checkObject(vehicle, 'vehicle', '{ units }');
  const { units } = vehicle;
  checkList(units, 'vehicle.units');
  checkIds(units, 'vehicle.units');
  const covered = mapAt(units, 'vehicle.units', isCovered);
  if (covered.every((each) => each === true)) return answer('applies', note('VEHICLE_COVERED', { limit: LIMIT }));
  if (covered.every((each) => each === false))
    return answer('does-not-apply', note('VEHICLE_TOO_LIGHT', { limit: LIMIT }));
  const open = covered.includes(undefined) ? 'UNIT_RATING_NOT_STATED' : 'SOME_UNITS_TOO_LIGHT';
  return answer('undetermined', note(open, { limit: LIMIT }));
}

function isCovered(unit: VehicleUnit): boolean | undefined {
  checkOneOf(unit.kind, ['power', 'towed'], 'kind');
  const rating = readOptional(unit.grossWeightRating, 'mass', 'grossWeightRating');
  const weight = readOptional(unit.grossWeight, 'mass', 'grossWeight');
  if (rating !== undefined) return compareExact(rating, LIMIT) > 0;
  return weight !== undefined && compareExact(weight, LIMIT) > 0 ? true : undefined;
}

const LIMIT: QuantityLike = /* @__PURE__ */ (() => {
  const { value, unit } = euEn1219512010Factors.rows['vehicle-mass'];
  return { value, unit };
})();

function answer(verdict: Applicability['verdict'], because: Note): Applicability {
  return { verdict, because, clause: `${STANDARD}, scope` };
}
