import { compareExact, ratioOf } from '../../../quantities/exact.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { us49cfr393Thresholds as thresholds } from '../../../tables/generated/us-49cfr393-thresholds.js';
import { type Check, countCheck, ratioCheck } from '../../../working/check.js';
import type { Working } from '../../../working/step.js';
import type { CreditedTieDown } from '../../counting/credited-tie-down.js';
import { aboutPractice, checkGrade, checkRecommendedCount } from '../../counting/practice.js';
import type { ReadArticle } from '../../plan.js';
import { cite } from './cite.js';

/** What the advice depends on. */
interface Judged {
  readonly heavy: boolean;
  readonly byLength: number;
  readonly rule: string;
  readonly recommended: number;
}

/**
 * What haulers do beyond the regulation, and what a handbook of the agency asks. None of it is a clause of
 * 49 CFR 393, and none of it decides the verdict.
 */
export function addPracticeChecks(
  checks: Check[],
  { article }: ReadArticle,
  judged: Judged,
  counted: readonly CreditedTieDown[],
  working: Working,
): void {
  const { heavy, byLength, rule, recommended } = judged;
  const subject = article.id;
  checks.push(checkRecommendedCount(subject, recommended, counted));
  if (rule === '393.128' && byLength > 2) {
    const about = aboutPractice(
      'length',
      'Count by length under 393.128, where readings differ',
      subject,
      '49 CFR 393.110(b)',
    );
    checks.push(countCheck(about, byLength, counted.length));
  }
  const grade = checkGrade(subject, counted);
  if (grade !== undefined) checks.push(grade);
  const weakest = heavy ? leastOf(counted) : undefined;
  if (weakest !== undefined) checks.push(checkHandbookFloor(subject, weakest, working));
}

/** A handbook of the agency asks at least 5,000 lb of each tie-down on heavy equipment; the regulation does not. */
function checkHandbookFloor(subject: string, weakest: QuantityLike, working: Working): Check {
  const { value, unit, clause } = thresholds.rows['handbook-tie-down-wll'];
  const floor = { value, unit };
  cite(working, clause, 'read', "FMCSA Driver's Handbook on Cargo Securement, no part of the regulation");
  const { fits, utilization } = ratioOf(value, ratedLoadIn(weakest, unit).value, () => compareExact(floor, weakest));
  const about = aboutPractice('handbook', 'Least tie-down, by the handbook', subject, clause);
  return ratioCheck(about, fits, floor, weakest, utilization);
}

function leastOf(tieDowns: readonly CreditedTieDown[]): QuantityLike | undefined {
  let least: QuantityLike | undefined;
  for (const { capacity } of tieDowns) {
    if (capacity === null) return undefined;
    if (least === undefined || compareExact(capacity, least) < 0) least = capacity;
  }
  return least;
}
