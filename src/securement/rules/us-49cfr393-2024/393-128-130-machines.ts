import { type Check, type CheckSubject, failedCheck, undeterminedCheck } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import {
  checkEquipmentHeld,
  checkJointLocked,
  checkLoweredAndTied,
  LOCK_NOT_STATED,
  LOWERED_NOT_STATED,
  NOT_HELD,
} from '../../counting/attachments.js';
import { checkBothEnds } from '../../counting/checks.js';
import type { Accessory, ArticleKind, ReadArticle } from '../../plan.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import { aboutRule } from './cite.js';

/**
 * 393.128(b) and 393.130(c): the tie-downs hold the machine at both front and rear. The end each one holds is
 * the caller's to state. Under 393.130(c)(2) mounting points made for the purpose will do in place of the ends,
 * so tie-downs at one end only are not yet a violation there.
 */
export function checkEnds(rule: string, article: string, counted: readonly TieDownRating[], working: Working): Check {
  const title = 'Restraint at front and rear';
  if (rule === '393.128') return checkBothEnds(aboutRule(working, '393.128(b)', title, article, 'memory'), counted);
  const about = aboutRule(working, '393.130(c)', title, article);
  const check = checkBothEnds(about, counted);
  return check.verdict === 'fail' && counted.length > 0 ? undeterminedCheck(about, [MOUNTING_POINTS]) : check;
}

/**
 * 393.130(b)(1): on a machine of 10,000 lb or more, or one secured as such, accessory equipment is completely
 * lowered and secured to the vehicle. Agency guidance may accept a full lock instead of a tie-down, or equipment
 * made to travel raised and locked; that is disputed, so a locked accessory is neither passed nor reported as a
 * violation here.
 *
 * On lighter machines the guidance asks that locking pins or the like keep it from shifting; it need not be
 * lowered. On other cargo 393.100(c), that nothing shifts, says the same.
 */
export function checkAccessory(
  accessory: Accessory,
  kind: ArticleKind,
  strict: boolean,
  ties: readonly TieDownRating[],
  working: Working,
): Check {
  const guidance = !strict && kind === 'machinery';
  const paragraph = strict ? '393.130(b)(1)' : guidance ? '393.130, question 1' : '393.100(c)';
  const document = guidance ? 'FMCSA guidance to 49 CFR' : '49 CFR';
  const { id, lowered, locked } = accessory;
  const about = aboutRule(working, paragraph, 'Accessory equipment held', id, 'read', document);
  if (!strict) return checkEquipmentHeld(about, accessory, ties);
  return checkLoweredAndTied(about, accessory, ties, (tied) => {
    if (locked === true) return undeterminedCheck(about, [LOCK_DISPUTED]);
    if (locked === false && (!tied || lowered === false)) return failedCheck(about, NOT_HELD);
    return undeterminedCheck(about, [lowered === undefined ? LOWERED_NOT_STATED : LOCK_NOT_STATED]);
  });
}

/** 393.130(b)(2): an articulated machine under 393.130 is kept from articulating; for others it is advice. */
export function checkArticulation({ article }: ReadArticle, strict: boolean, working: Working): Check | undefined {
  if (article.articulated !== true) return undefined;
  const binding = aboutRule(working, '393.130(b)(2)', 'Articulation locked', article.id);
  const about: CheckSubject = strict ? binding : { ...binding, weight: 'practice' };
  return checkJointLocked(about, article.articulationLocked, failedCheck(about, NOT_HELD));
}

const LOCK_DISPUTED: Note = /* @__PURE__ */ note('LOCK_DISPUTED');
const MOUNTING_POINTS: Note = /* @__PURE__ */ note('MOUNTING_POINTS_NOT_STATED');
