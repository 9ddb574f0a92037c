import { type Check, failedCheck, metCheck, undeterminedCheck } from '../../../working/check.js';
import { type Note, note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { RatedTieDown } from './393-108-weakest-part.js';
import { aboutRule } from './cite.js';

/**
 * 393.104(b)-(c): no damaged or weakened component, anchor points included. The regulation gives no
 * percentage of wear for chain; whether a part is damaged is the caller's finding. A damaged part also counts
 * zero in the aggregate and its tie-down does not count in the number.
 */
export function checkCondition(tieDowns: readonly RatedTieDown[], working: Working): Check {
  const about = aboutRule(working, '393.104(b)', 'No damaged part', 'tie-downs');
  let damaged = '';
  let undecided: Note[] | undefined;
  for (const { tieDown, damaged: parts, missing } of tieDowns) {
    for (const part of parts) damaged += `${damaged === '' ? '' : ', '}${tieDown.id} ${part}`;
    for (const fact of missing) {
      if (fact.code !== 'CONDITION_UNDETERMINED') continue;
      undecided ??= [];
      undecided.push(fact);
    }
  }
  if (damaged !== '') return failedCheck(about, note(DAMAGED, { parts: damaged }));
  if (undecided !== undefined) return undeterminedCheck(about, undecided);
  return metCheck(about);
}

const DAMAGED: Words = ['DAMAGED_PART', 'Damaged, may not be used, counts zero: {parts}.'];
