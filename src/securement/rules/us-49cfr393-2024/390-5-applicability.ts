import { compareExactSums } from '../../../quantities/exact.js';
import { us49cfr393Thresholds as thresholds } from '../../../tables/generated/us-49cfr393-thresholds.js';
import { type Note, note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { readGrossMass, UNIT_MASS_NOT_STATED, VEHICLE_NOT_STATED } from '../../counting/gross-mass.js';
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
  if (vehicle === undefined) return answer('undetermined', VEHICLE_NOT_STATED);
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
  if (interstateCommerce === false) return answer('does-not-apply', INTRASTATE);
  if (heavy)
    return interstateCommerce ? answer('applies', APPLIES, { limit }) : answer('undetermined', COMMERCE_NOT_STATED);
  return known.length < units.length
    ? answer('undetermined', UNIT_MASS_NOT_STATED)
    : answer('does-not-apply', BELOW_THRESHOLD, { total, limit });
}

function answer(verdict: Applicability['verdict'], words: Words, params?: Note['params']): Applicability {
  return { verdict, because: note(words, params), clause: CLAUSE };
}

const COMMERCE_NOT_STATED: Words = ['COMMERCE_NOT_STATED', 'Heavy enough; interstate commerce is not stated.'];
const BELOW_THRESHOLD: Words = [
  'BELOW_WEIGHT_THRESHOLD',
  '{total} is below {limit}; state law usually asks for securement anyway.',
];
const INTRASTATE: Words = ['NOT_INTERSTATE', 'Not interstate commerce: state law decides, often by these rules.'];
const APPLIES: Words = ['COMMERCIAL_VEHICLE', '{limit} or more, in interstate commerce.'];
