import { type Check, type CheckSubject, failedCheck, metCheck, undeterminedCheck } from '../../working/check.js';
import { type Note, note } from '../../working/note.js';
import type { Accessory } from '../plan.js';
import type { TieDownRating } from '../rate-tie-down.js';
import { isRated, ratingNotKnown } from './rated-tie-down.js';

// What is mounted on an article and could move by itself. Each set says which clause asks and what it leaves open.

/** Whether a lock or a tie-down keeps accessory equipment from moving; lowered alone, it may drift. */
export function checkEquipmentHeld(
  about: CheckSubject,
  { lowered, locked }: Accessory,
  ties: readonly TieDownRating[],
): Check {
  if (locked === true || ties.some(isRated)) return metCheck(about);
  if (ties.length > 0) return undeterminedCheck(about, [ratingNotKnown(ties)]);
  if (locked === undefined) return undeterminedCheck(about, [LOCK_NOT_STATED]);
  return lowered === true ? undeterminedCheck(about, [LOWERED_ONLY]) : failedCheck(about, NOT_HELD);
}

/** Whether accessory equipment is completely lowered and tied down; `otherwise` says what becomes of less than that. */
export function checkLoweredAndTied(
  about: CheckSubject,
  { lowered }: Accessory,
  ties: readonly TieDownRating[],
  otherwise: (tied: boolean) => Check,
): Check {
  const tied = ties.some(isRated);
  if (tied && lowered === true) return metCheck(about);
  return !tied && ties.length > 0 ? undeterminedCheck(about, [ratingNotKnown(ties)]) : otherwise(tied);
}

/** Whether a joint is locked; `otherwise` is the check of one that is not. */
export function checkJointLocked(about: CheckSubject, locked: boolean | undefined, otherwise: Check): Check {
  if (locked === undefined) return undeterminedCheck(about, [LOCK_NOT_STATED]);
  return locked ? metCheck(about) : otherwise;
}

export const NOT_HELD: Note = /* @__PURE__ */ note('NOT_HELD');
export const LOCK_NOT_STATED: Note = /* @__PURE__ */ note('LOCK_NOT_STATED');
export const LOWERED_NOT_STATED: Note = /* @__PURE__ */ note('LOWERED_NOT_STATED');
const LOWERED_ONLY: Note = /* @__PURE__ */ note('LOWERED_ONLY');
