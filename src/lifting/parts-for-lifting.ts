import type { Part } from '../assembly/part.js';
import { fail } from '../errors.js';
import { liftingGrades } from '../tables/generated/lifting-grades.js';
import { rowOf } from '../tables/rating-table.js';
import { type Check, type CheckSubject, failedCheck, undeterminedCheck } from '../working/check.js';
import { note } from '../working/note.js';

/** Whether hooks, links and chain of a sling are made for lifting: kinds for tie-downs are not, nor grades whose standard says so. */
export function judgePartsForLifting(parts: readonly Part[], name: string, checks: Check[], path = name): void {
  for (const [index, part] of parts.entries()) {
    const { id, kind } = part;
    if (kind === 'parallel') {
      part.legs.forEach((leg, at) => {
        judgePartsForLifting(leg, `${name}/${id}/${at + 1}`, checks, `${path}[${index}].legs[${at}]`);
      });
      continue;
    }
    const about: Omit<CheckSubject, 'clause'> = {
      id: `${name}/for-lifting/${id}`,
      title: 'part made for lifting',
      weight: 'requirement',
      subject: id,
    };
    if (FOR_TIE_DOWNS.includes(kind)) {
      checks.push(
        failedCheck({ ...about, clause: 'common practice' }, note('PART_NOT_FOR_LIFTING', { part: id, kind })),
      );
    } else if ('grade' in part && part.grade !== undefined) {
      const { grade } = part;
      const row: { readonly standard?: string; readonly scope?: string; readonly practice: string } =
        rowOf(liftingGrades.rows, grade) ??
        fail('UNKNOWN_GRADE', `${path}[${index}].grade`, 'a grade of chain', grade, 'Read the mark again.');
      // a grade of which no standard was read goes by the mark of the part, which its rating asks for
      if (row.standard !== undefined && row.scope !== 'for lifting') {
        const because = note('PART_GRADE_NOT_FOR_LIFTING', { part: id, grade, standard: row.standard });
        checks.push(failedCheck({ ...about, clause: `${row.standard}, scope` }, because));
      }
    } else if (kind === 'chain') {
      const clause = '29 CFR 1910.184(e)(1)';
      checks.push(undeterminedCheck({ ...about, clause }, [note('PART_GRADE_NOT_STATED', { part: id })]));
    }
  }
}

const FOR_TIE_DOWNS: readonly string[] = ['binder', 'webbing', 'winch', 'strapping'];
