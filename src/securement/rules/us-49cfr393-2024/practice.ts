import { compareExact, ratioOf } from '../../../quantities/exact.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { us49cfr393Thresholds as thresholds } from '../../../tables/generated/us-49cfr393-thresholds.js';
import { type Check, countCheck, failedCheck, metCheck, ratioCheck } from '../../../working/check.js';
import { note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { ReadArticle } from '../../plan.js';
import type { RatedTieDown } from './393-108-weakest-part.js';
import { aboutPractice, cite } from './cite.js';

/** What the advice depends on. */
interface Judged {
  readonly heavy: boolean;
  readonly byLength: number;
  readonly rule: string;
  readonly recommended: number;
}

/** Four for machines and vehicles, two for anything else: practice, never below what the law asks. */
export function recommendedCount({ article }: ReadArticle, minimumCount: number): number {
  return Math.max(article.kind === 'general' ? 2 : 4, minimumCount);
}

/**
 * What haulers do beyond the regulation, and what a handbook of the agency asks. None of it is a clause of
 * 49 CFR 393, and none of it decides the verdict.
 */
export function addPracticeChecks(
  checks: Check[],
  { article }: ReadArticle,
  judged: Judged,
  counted: readonly RatedTieDown[],
  working: Working,
): void {
  const { heavy, byLength, rule, recommended } = judged;
  const subject = article.id;
  checks.push(
    countCheck(aboutPractice('count', 'Number of tie-downs, as haulers do', subject), recommended, counted.length),
  );
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

/** Haulers tie down with grade 70 or higher. Lower grades are lawful at their rating. */
function checkGrade(subject: string, counted: readonly RatedTieDown[]): Check | undefined {
  let lowest = Number.POSITIVE_INFINITY;
  for (const { lowestGrade } of counted) lowest = Math.min(lowest, lowestGrade);
  if (lowest === Number.POSITIVE_INFINITY) return undefined;
  const about = aboutPractice('grade', 'Chain of grade 70 or higher, as haulers do', subject);
  if (lowest >= 70) return metCheck(about);
  const low = counted.filter(({ lowestGrade }) => lowestGrade < 70).map(({ tieDown }) => tieDown.id);
  return failedCheck(about, note(BELOW_GRADE_70, { tieDowns: low.join(', ') }));
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

function leastOf(tieDowns: readonly RatedTieDown[]): QuantityLike | undefined {
  let least: QuantityLike | undefined;
  for (const { workingLoadLimit } of tieDowns) {
    if (workingLoadLimit === null) return undefined;
    if (least === undefined || compareExact(workingLoadLimit, least) < 0) least = workingLoadLimit;
  }
  return least;
}

const BELOW_GRADE_70: Words = ['BELOW_GRADE_70', 'Lower or unmarked, lawful at its rating: {tieDowns}.'];
