import { type Check, type CheckSubject, failedCheck, metCheck, undeterminedCheck } from '../../../working/check.js';
import { type Note, note, plainNote, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { Accessory, ArticleKind, ReadArticle } from '../../plan.js';
import { type RatedTieDown, ratingNotKnown } from './393-108-weakest-part.js';
import { aboutRule } from './cite.js';

/**
 * 393.128(b) and 393.130(c): the tie-downs hold the machine at both front and rear. The end each one holds is
 * the caller's to state. Under 393.130(c)(2) mounting points made for the purpose will do in place of the ends,
 * so tie-downs at one end only are not yet a violation there.
 */
export function checkBothEnds(
  rule: string,
  { article }: ReadArticle,
  counted: readonly RatedTieDown[],
  known: readonly RatedTieDown[],
  working: Working,
): Check {
  const title = 'Restraint at front and rear';
  const light = rule === '393.128';
  const about = light
    ? aboutRule(working, '393.128(b)', title, article.id, 'memory')
    : aboutRule(working, '393.130(c)', title, article.id);
  if (holdBothEnds(known)) return metCheck(about);
  if (holdBothEnds(counted)) return undeterminedCheck(about, [ratingNotKnown(counted)]);
  const unstated = counted.filter(({ tieDown }) => tieDown.end === undefined).map(({ tieDown }) => tieDown.id);
  if (unstated.length > 0) {
    return undeterminedCheck(about, [note(END_NOT_STATED, { tieDowns: unstated.join(', ') })]);
  }
  return light || counted.length === 0 ? failedCheck(about, ONE_END_ONLY) : undeterminedCheck(about, [MOUNTING_POINTS]);
}

function holdBothEnds(tieDowns: readonly RatedTieDown[]): boolean {
  return (
    tieDowns.some(({ tieDown }) => tieDown.end === 'front') && tieDowns.some(({ tieDown }) => tieDown.end === 'rear')
  );
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
  { id, lowered, locked }: Accessory,
  kind: ArticleKind,
  strict: boolean,
  ties: readonly RatedTieDown[],
  working: Working,
): Check {
  const guidance = !strict && kind === 'machinery';
  const paragraph = strict ? '393.130(b)(1)' : guidance ? '393.130, question 1' : '393.100(c)';
  const document = guidance ? 'FMCSA guidance to 49 CFR' : '49 CFR';
  const about = aboutRule(working, paragraph, 'Accessory equipment held', id, 'read', document);
  const ask = (missing: Note) => undeterminedCheck(about, [missing]);
  const tied = ties.some(({ workingLoadLimit }) => workingLoadLimit !== null);
  if (strict ? tied && lowered === true : tied || locked === true) return metCheck(about);
  if (!tied && ties.length > 0) return ask(ratingNotKnown(ties));
  if (strict) {
    if (locked === true) return ask(LOCK_DISPUTED);
    if (locked === false && (!tied || lowered === false)) return failedCheck(about, NOT_HELD);
    return ask(lowered === undefined ? LOWERED_NOT_STATED : LOCK_NOT_STATED);
  }
  if (locked === undefined) return ask(LOCK_NOT_STATED);
  return lowered === true ? ask(LOWERED_ONLY) : failedCheck(about, NOT_HELD);
}

/** 393.130(b)(2): an articulated machine under 393.130 is kept from articulating; for others it is advice. */
export function checkArticulation({ article }: ReadArticle, strict: boolean, working: Working): Check | undefined {
  if (article.articulated !== true) return undefined;
  const binding = aboutRule(working, '393.130(b)(2)', 'Articulation locked', article.id);
  const about: CheckSubject = strict ? binding : { ...binding, weight: 'practice' };
  if (article.articulationLocked === undefined) return undeterminedCheck(about, [LOCK_NOT_STATED]);
  return article.articulationLocked ? metCheck(about) : failedCheck(about, NOT_HELD);
}

const NOT_HELD: Note = /* @__PURE__ */ plainNote('NOT_HELD', 'It is not held as the rule asks.');
const LOCK_NOT_STATED: Note = /* @__PURE__ */ plainNote(
  'LOCK_NOT_STATED',
  'Whether a lock, pins or a tie-down hold it.',
);
const LOWERED_NOT_STATED: Note = /* @__PURE__ */ plainNote('LOWERED_NOT_STATED', 'Whether it is completely lowered.');
const LOWERED_ONLY: Note = /* @__PURE__ */ plainNote(
  'LOWERED_ONLY',
  'Lowered, neither locked nor tied: whether it can drift.',
);
const LOCK_DISPUTED: Note = /* @__PURE__ */ plainNote(
  'LOCK_DISPUTED',
  'Locked, not lowered and tied down: guidance may accept it, the words of the rule do not.',
);
const END_NOT_STATED: Words = ['END_NOT_STATED', 'The end that each of {tieDowns} holds.'];
const MOUNTING_POINTS: Note = /* @__PURE__ */ plainNote(
  'MOUNTING_POINTS_NOT_STATED',
  'Not both ends are held: whether the points were made for the purpose.',
);
const ONE_END_ONLY: Note = /* @__PURE__ */ plainNote('ONE_END_ONLY', 'Not both ends are held.');
