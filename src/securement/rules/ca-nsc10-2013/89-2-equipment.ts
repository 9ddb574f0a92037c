import { type Check, failedCheck, undeterminedCheck } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import {
  checkEquipmentHeld,
  checkJointLocked,
  checkLoweredAndTied,
  LOWERED_NOT_STATED,
  NOT_HELD,
} from '../../counting/attachments.js';
import type { Accessory, ReadArticle } from '../../plan.js';
import { aboutPractice } from '../../practice.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import { aboutRule } from './cite.js';

/**
 * Accessory equipment of a heavy machine, 89(2), whose meaning is an open question of interpretation: lowered and tied
 * down meets every reading of it; a lock or a tie-down alone meets some. On anything else a lock or a tie-down will do
 * (from memory: nothing may shift).
 */
export function checkAccessory(
  accessory: Accessory,
  heavy: boolean,
  ties: readonly TieDownRating[],
  working: Working,
): Check {
  const about = aboutRule(
    working,
    { clause: heavy ? 'section 89(2)' : 'Part 1', part: 'equipment' },
    'Accessory equipment held',
    accessory.id,
    heavy ? 'interpretation' : 'memory',
  );
  if (!heavy) return checkEquipmentHeld(about, accessory, ties);
  const { lowered, locked } = accessory;
  return checkLoweredAndTied(about, accessory, ties, (tied) => {
    if (tied) return undeterminedCheck(about, [lowered === undefined ? LOWERED_NOT_STATED : OPEN_QUESTION]);
    return locked === true ? undeterminedCheck(about, [OPEN_QUESTION]) : checkEquipmentHeld(about, accessory, []);
  });
}

/** A joint that is locked meets every reading of 89(2); whether tie-downs may hold it instead is open. On a lighter machine it is advice. */
export function checkArticulation({ article }: ReadArticle, heavy: boolean, working: Working): Check | undefined {
  if (article.articulated !== true) return undefined;
  const title = 'Articulation locked';
  const about = heavy
    ? aboutRule(working, { clause: 'section 89(2)', part: 'articulation' }, title, article.id, 'interpretation')
    : aboutPractice('articulation', title, article.id);
  const unlocked = heavy ? undeterminedCheck(about, [OPEN_QUESTION]) : failedCheck(about, NOT_HELD);
  return checkJointLocked(about, article.articulationLocked, unlocked);
}

const OPEN_QUESTION: Note = /* @__PURE__ */ note('INTERPRETATION_OPEN');
