import type { Check } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { RatedTieDown } from './393-108-weakest-part.js';
import { cite } from './parameters.js';

/**
 * 393.104(b)-(c): no damaged or weakened component, anchor points included. The regulation gives no
 * percentage of wear for chain; whether a part is damaged is the caller's finding. A damaged part also counts
 * zero in the aggregate and its tie-down does not count in the number.
 */
export function checkCondition(rated: RatedTieDown, working: Working): Check {
  cite(working, '393.104(b)-(c)');
  const { tieDown, damaged } = rated;
  const base = {
    id: `393.104(b)/${tieDown.id}`,
    title: 'Condition of the parts',
    clause: '49 CFR 393.104(b)-(c)',
    weight: 'requirement',
    subject: tieDown.id,
  } as const;
  if (damaged.length > 0) {
    return { ...base, verdict: 'fail', because: note(DAMAGED, { parts: damaged.join(', ') }) };
  }
  const undecided = rated.missing.filter(({ code }) => code === 'CONDITION_UNDETERMINED');
  if (undecided.length > 0) return { ...base, verdict: 'undetermined', missing: undecided };
  return { ...base, verdict: 'pass', because: SOUND };
}

const DAMAGED = { code: 'DAMAGED_PART', text: 'Damaged: {parts}. A damaged part may not be used and counts zero.' };
const SOUND: Note = { code: 'NO_DAMAGE_STATED', params: {}, text: 'No damaged part is stated.' };
