import { compareExactSums } from '../../../quantities/exact.js';
import { us49cfr393Thresholds as thresholds } from '../../../tables/generated/us-49cfr393-thresholds.js';
import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { readGrossMass } from '../../counting/gross-mass.js';
import type { Vehicle } from '../../plan.js';
import type { Applicability } from '../../rule-set.js';
import { cite } from './cite.js';

const CLAUSE = '49 CFR 390.5';

/**
 * 390.5: a commercial motor vehicle by weight is one in interstate commerce whose gross weight rating,
 * combination rating, gross weight or combination weight, whichever is greatest, is 10,001 lb or more.
 *
 * The combination rating is the greater of the power unit's label and the sum over the units of rating or
 * weight, taken unit by unit so that the total is greatest; the label counts only while something is towed.
 * Pounds decide: the 4,536 kg printed beside them are 10,000.17 lb.
 */
export function applicability(vehicle: Vehicle | undefined, working: Working): Applicability {
  cite(working, '390.5');
  if (vehicle === undefined) return answer('undetermined', NOT_STATED);
  const { units, known, total, label } = readGrossMass(vehicle, 'lb');
  const onLabel = vehicle.units.some(({ kind }) => kind === 'towed') ? label : undefined;
  const byLabel = onLabel === undefined ? [] : [{ quantity: onLabel }];
  const gross = compareExactSums(known, byLabel) < 0 ? byLabel : known;
  const limit = thresholds.rows['commercial-vehicle-mass'];
  const heavy = compareExactSums(gross, [{ quantity: limit }]) >= 0;
  working.step(
    'vehicle',
    'gross',
    'max(label, sum(max(rating, weight)))',
    [...units, ['label', onLabel ?? 'none']],
    gross === known ? total : (onLabel ?? null),
    CLAUSE,
  );
  const { interstateCommerce } = vehicle;
  if (interstateCommerce === false) return answer('does-not-apply', NOT_INTERSTATE);
  if (heavy)
    return interstateCommerce
      ? answer('applies', note('COMMERCIAL_VEHICLE', { limit }))
      : answer('undetermined', COMMERCE_NOT_STATED);
  return known.length < units.length
    ? answer('undetermined', UNIT_MASS_NOT_STATED)
    : answer('does-not-apply', note('BELOW_WEIGHT_THRESHOLD', { total, limit }));
}

function answer(verdict: Applicability['verdict'], because: Note): Applicability {
  return { verdict, because, clause: CLAUSE };
}

// ready-made, for this is asked once for every plan
const NOT_STATED: Note = /* @__PURE__ */ note('RULE_TAKEN_TO_REACH_VEHICLE');
const NOT_INTERSTATE: Note = /* @__PURE__ */ note('NOT_INTERSTATE');
const COMMERCE_NOT_STATED: Note = /* @__PURE__ */ note('COMMERCE_NOT_STATED');
const UNIT_MASS_NOT_STATED: Note = /* @__PURE__ */ note('UNIT_MASS_NOT_STATED');
