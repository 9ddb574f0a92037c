import { compareExact, ratioOf } from '../../../quantities/exact.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { us49cfr393Thresholds as thresholds } from '../../../tables/generated/us-49cfr393-thresholds.js';
import { type Check, countCheck, ratioCheck } from '../../../working/check.js';
import type { Working } from '../../../working/step.js';
import { isRated } from '../../counting/rated-tie-down.js';
import { aboutPractice, adviseOnCount, checkGrade } from '../../practice.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import { cite } from './cite.js';
import type { OpenRules } from './open-rules.js';

/**
 * What haulers do beyond the regulation, and what a handbook of the agency asks. None of it is a clause of
 * 49 CFR 393, and none of it decides the verdict.
 */
export function addPracticeChecks(
  checks: Check[],
  subject: string,
  { heavy, byLength }: OpenRules,
  { rule, recommended }: { readonly rule: string; readonly recommended: number },
  counted: readonly TieDownRating[],
  working: Working,
): void {
  checks.push(adviseOnCount(subject, recommended, counted.length));
  if (rule === '393.128' && byLength > 2) {
    const title = 'Count by length under 393.128, where readings differ';
    checks.push(countCheck(aboutPractice('length', title, subject, '49 CFR 393.110(b)'), byLength, counted.length));
  }
  const grade = checkGrade(subject, counted);
  if (grade !== undefined) checks.push(grade);
  if (heavy && counted.length > 0 && counted.every(isRated)) checks.push(checkHandbookFloor(subject, counted, working));
}

/** A handbook of the agency asks at least 5,000 lb of each tie-down on heavy equipment; the regulation does not. */
function checkHandbookFloor(subject: string, counted: readonly TieDownRating[], working: Working): Check {
  const { value, unit, clause } = thresholds.rows['handbook-tie-down-wll'];
  const floor = { value, unit };
  const [weakest = floor] = counted.map(({ capacity }) => capacity as QuantityLike).sort(compareExact);
  cite(working, clause, 'read', "FMCSA Driver's Handbook on Cargo Securement, no part of the regulation");
  const { fits, utilization } = ratioOf(value, ratedLoadIn(weakest, unit).value, () => compareExact(floor, weakest));
  const about = aboutPractice('handbook', 'Least tie-down, by the handbook', subject, clause);
  return ratioCheck(about, fits, floor, weakest, utilization);
}
