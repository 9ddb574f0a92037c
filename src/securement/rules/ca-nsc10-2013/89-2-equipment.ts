import { type Check, failedCheck, metCheck, undeterminedCheck } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { type CreditedTieDown, isRated, ratingNotKnown } from '../../counting/credited-tie-down.js';
import type { Accessory, ReadArticle } from '../../plan.js';
import { aboutPractice } from '../../counting/practice.js';
import { aboutRule } from './cite.js';

/**
 * Accessory equipment of a heavy machine, 89(2), whose meaning is an open question of interpretation: lowered and tied
 * down meets every reading of it; a lock or a tie-down alone meets some. On anything else a lock or a tie-down will do
 * (from memory: nothing may shift).
 */
export function checkAccessory(
  { id, lowered, locked }: Accessory,
  heavy: boolean,
  ties: readonly CreditedTieDown[],
  working: Working,
): Check {
  const about = aboutRule(
    working,
    { clause: heavy ? 'section 89(2)' : 'Part 1', part: 'equipment' },
    'Accessory equipment held',
    id,
    heavy ? 'interpretation' : 'memory',
  );
  const tied = ties.some(isRated);
  if (heavy ? tied && lowered === true : tied || locked === true) return metCheck(about);
  if (!tied && ties.length > 0) return undeterminedCheck(about, [ratingNotKnown(ties)]);
  if (tied || locked === true)
    return undeterminedCheck(about, [tied && lowered === undefined ? LOWERED_NOT_STATED : OPEN_QUESTION]);
  if (locked === undefined) return undeterminedCheck(about, [LOCK_NOT_STATED]);
  return lowered === true ? undeterminedCheck(about, [LOWERED_ONLY]) : failedCheck(about, NOT_HELD);
}

/** A joint that is locked meets every reading of 89(2); whether tie-downs may hold it instead is open. On a lighter machine it is advice. */
export function checkArticulation({ article }: ReadArticle, heavy: boolean, working: Working): Check | undefined {
  if (article.articulated !== true) return undefined;
  const title = 'Articulation locked';
  const about = heavy
    ? aboutRule(working, { clause: 'section 89(2)', part: 'articulation' }, title, article.id, 'interpretation')
    : aboutPractice('articulation', title, article.id);
  if (article.articulationLocked === true) return metCheck(about);
  if (article.articulationLocked === undefined) return undeterminedCheck(about, [LOCK_NOT_STATED]);
  return heavy ? undeterminedCheck(about, [OPEN_QUESTION]) : failedCheck(about, NOT_HELD);
}

const NOT_HELD: Note = /* @__PURE__ */ note(['NOT_HELD', 'Nothing is stated to hold it.']);
const LOCK_NOT_STATED: Note = /* @__PURE__ */ note([
  'LOCK_NOT_STATED',
  'Whether a lock or pins hold it, or a tie-down does.',
]);
const LOWERED_NOT_STATED: Note = /* @__PURE__ */ note(['LOWERED_NOT_STATED', 'Whether it is completely lowered.']);
const LOWERED_ONLY: Note = /* @__PURE__ */ note([
  'LOWERED_ONLY',
  'Lowered, neither locked nor tied: whether it can drift.',
]);
const OPEN_QUESTION: Note = /* @__PURE__ */ note([
  'INTERPRETATION_OPEN',
  'Whether 89(2) accepts this in place of equipment lowered and tied down, or of a locked joint: ask the province.',
]);
