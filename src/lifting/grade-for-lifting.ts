import type { AnyGrade } from '../chain/trade-size.js';
import { liftingGrades } from '../tables/generated/lifting-grades.js';
import { type Check, failedCheck, metCheck, notApplicableCheck, undeterminedCheck } from '../working/check.js';
import { note } from '../working/note.js';
import type { Working } from '../working/step.js';

/**
 * Whether chain of a grade is for overhead lifting: what the scope of its standard says decides; what a regulation asks
 * and what the trade does stand beside it, each by itself.
 */
export function judgeGrade(grade: AnyGrade | undefined, marked: boolean, checks: Check[], working: Working): boolean {
  const about = { title: 'chain for overhead lifting', weight: 'requirement', subject: 'sling' } as const;
  if (grade === undefined) {
    checks.push(
      undeterminedCheck({ ...about, id: 'grade/scope', clause: '29 CFR 1910.184(e)(1)' }, [
        note('SLING_GRADE_NOT_STATED'),
      ]),
    );
    return false;
  }
  const row: {
    readonly standard?: string;
    readonly scope?: string;
    readonly scope_provenance?: 'read';
    readonly practice: string;
  } = liftingGrades.rows[grade];
  const { standard, scope } = row;
  if (standard === undefined) {
    // no standard that was read: the trade lifts with it where it is marked for it
    const byMark = { ...about, id: 'grade/practice', clause: 'common practice' };
    checks.push(marked ? metCheck(byMark) : undeterminedCheck(byMark, [note('GRADE_BY_MARK_ALONE', { grade })]));
    return marked;
  }
  working.cite({
    document: standard,
    clause: 'scope',
    provenance: row.scope_provenance ?? liftingGrades.source.provenance,
  });
  const byScope = { ...about, id: 'grade/scope', clause: `${standard}, scope` };
  if (scope === 'for lifting') {
    checks.push(metCheck(byScope));
    return true;
  }
  checks.push(
    failedCheck(byScope, note('SCOPE_NOT_FOR_LIFTING', { standard, grade })),
    failedCheck(
      { ...about, id: 'grade/practice', clause: 'common practice', weight: 'practice' },
      note('TRADE_LIFTS_WITH_ALLOY', { grade }),
    ),
    notApplicableCheck(
      { ...about, id: 'grade/regulation', clause: '29 CFR 1910.184, 1926.251', weight: 'practice' },
      note('REGULATION_FORBIDS_NO_GRADE'),
    ),
  );
  return false;
}
