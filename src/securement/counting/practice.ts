import { type Check, type CheckSubject, countCheck, failedCheck, metCheck } from '../../working/check.js';
import { note, type Words } from '../../working/note.js';
import type { ReadArticle } from '../plan.js';
import { type CreditedTieDown, namesOf } from './credited-tie-down.js';

// What North American haulers do beyond the law. It is no clause of any rule set and decides no verdict.

/** What a piece of advice is about. */
export function aboutPractice(about: string, title: string, subject: string, clause = 'common practice'): CheckSubject {
  return { id: `practice/${about}/${subject}`, title, clause, weight: 'practice', subject };
}

/** Four for machines and vehicles, two for anything else; never below what the law asks. */
export function recommendedCount({ article }: ReadArticle, minimumCount: number): number {
  return Math.max(article.kind === 'general' ? 2 : 4, minimumCount);
}

/**
 * What haulers do: as many as recommended, then what the rule set has to add, then chain of grade 70 or higher; lower
 * grades are lawful at their rating. Nothing is said of grades where no chain counts by one.
 */
export function checkPractice(
  subject: string,
  recommended: number,
  counted: readonly CreditedTieDown[],
  more: readonly Check[],
): Check[] {
  const about = aboutPractice('count', 'Number of tie-downs, as haulers do', subject);
  const checks = [countCheck(about, recommended, counted.length), ...more];
  if (counted.some(({ lowestGrade }) => lowestGrade !== Number.POSITIVE_INFINITY)) {
    const grade = aboutPractice('grade', 'Chain of grade 70 or higher, as haulers do', subject);
    const low = namesOf(counted.filter(({ lowestGrade }) => lowestGrade < 70));
    checks.push(low === '' ? metCheck(grade) : failedCheck(grade, note(BELOW_GRADE_70, { tieDowns: low })));
  }
  return checks;
}

const BELOW_GRADE_70: Words = ['BELOW_GRADE_70', 'Lower or unmarked, lawful at its rating: {tieDowns}.'];
