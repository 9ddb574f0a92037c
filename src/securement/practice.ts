import { type Check, type CheckSubject, countCheck, failedCheck, metCheck } from '../working/check.js';
import { note } from '../working/note.js';
import { namesOf } from './counting/rated-tie-down.js';
import type { Article, ReadArticle } from './plan.js';
import type { TieDownRating } from './rate-tie-down.js';

// What haulers do beyond the law. It is no clause of any rule set and decides no verdict.

/** What a piece of advice is about. */
export function aboutPractice(about: string, title: string, subject: string, clause = 'common practice'): CheckSubject {
  return { id: `practice/${about}/${subject}`, title, clause, weight: 'practice', subject };
}

/** What haulers use, so that each way is held by two: four on a machine or a vehicle, two on anything else. */
export const usualCount = ({ kind }: Pick<Article, 'kind'>): number => (kind === 'general' ? 2 : 4); // common practice

/** As many as haulers use, never below what the law asks. */
export function recommendedCount({ article }: ReadArticle, minimumCount: number): number {
  return Math.max(usualCount(article), minimumCount);
}

/** Advice on the number of tie-downs. */
export function adviseOnCount(subject: string, recommended: number, count: number): Check {
  return countCheck(aboutPractice('count', 'Number of tie-downs, as haulers do', subject), recommended, count);
}

/** Haulers tie down with chain of grade 70 or higher; lower grades are lawful at their rating. Undefined without chain that counts by grade. */
export function checkGrade(subject: string, counted: readonly TieDownRating[]): Check | undefined {
  let lowest = Number.POSITIVE_INFINITY;
  for (const { lowestGrade } of counted) lowest = Math.min(lowest, lowestGrade);
  if (lowest === Number.POSITIVE_INFINITY) return undefined;
  const about = aboutPractice('grade', 'Chain of grade 70 or higher, as haulers do', subject);
  if (lowest >= 70) return metCheck(about);
  const low = counted.filter(({ lowestGrade }) => lowestGrade < 70);
  return failedCheck(about, note('BELOW_GRADE_70', { tieDowns: namesOf(low) }));
}
