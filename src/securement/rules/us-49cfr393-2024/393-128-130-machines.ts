import { type Check, type CheckSubject, conditionCheck, undeterminedCheck } from '../../../working/check.js';
import { type Note, note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { Accessory, ArticleKind, ReadArticle } from '../../plan.js';
import type { RatedTieDown } from './393-108-weakest-part.js';
import { requirement } from './cite.js';

/**
 * 393.128(b) and 393.130(c): the tie-downs hold the machine at both front and rear. The end each one holds is
 * the caller's to state.
 */
export function checkBothEnds(rule: string, { article }: ReadArticle, counted: readonly RatedTieDown[], working: Working): Check {
  const about = requirement(working, rule === '393.128' ? '393.128(b)' : '393.130(c)', 'Restraint at front and rear', article.id);
  const ends = counted.map(({ tieDown }) => tieDown.end);
  if (ends.includes('front') && ends.includes('rear')) return conditionCheck(about, 'pass', BOTH_ENDS);
  const unstated = counted.filter(({ tieDown }) => tieDown.end === undefined).map(({ tieDown }) => tieDown.id);
  if (unstated.length > 0) {
    return undeterminedCheck(about, [note(END_NOT_STATED, { tieDowns: unstated.join(', ') })]);
  }
  return conditionCheck(about, 'fail', note(ONE_END_ONLY, { end: ends.includes('front') ? 'rear' : 'front' }));
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
export function checkAccessory({ id, lowered, locked }: Accessory, kind: ArticleKind, strict: boolean, tiedBy: number, working: Working): Check {
  const guidance = !strict && kind === 'machinery';
  const paragraph = strict ? '393.130(b)(1)' : guidance ? '393.130, agency guidance, question 1' : '393.100(c)';
  const about = requirement(working, paragraph, 'Accessory equipment', id);
  const ask = (words: Words) => undeterminedCheck(about, [note(words, { accessory: id })]);
  const say = (verdict: 'pass' | 'fail', words: Words) => conditionCheck(about, verdict, note(words, { accessory: id }));
  if (strict ? tiedBy > 0 && lowered === true : tiedBy > 0 || locked === true) return say('pass', ACCESSORY_HELD);
  if (strict) {
    if (locked === true) return ask(LOCK_DISPUTED);
    if (locked === false && (tiedBy === 0 || lowered === false)) return say('fail', NOT_LOWERED_AND_TIED);
    return ask(lowered === undefined ? LOWERED_NOT_STATED : TIE_OR_LOCK_NOT_STATED);
  }
  if (locked === undefined) return ask(LOCK_NOT_STATED);
  return lowered === true ? ask(LOWERED_ONLY) : say('fail', ACCESSORY_LOOSE);
}

/** 393.130(b)(2): an articulated machine under 393.130 is kept from articulating; for others it is advice. */
export function checkArticulation({ article }: ReadArticle, strict: boolean, working: Working): Check | undefined {
  if (article.articulated !== true) return undefined;
  const binding = requirement(working, '393.130(b)(2)', 'Articulation', article.id);
  const about: CheckSubject = strict ? binding : { ...binding, weight: 'practice' };
  if (article.articulationLocked === undefined) {
    return undeterminedCheck(about, [note(JOINT_NOT_STATED, { article: article.id })]);
  }
  return article.articulationLocked
    ? conditionCheck(about, 'pass', note(JOINT_LOCKED, { article: article.id }))
    : conditionCheck(about, 'fail', note(JOINT_FREE, { article: article.id }));
}

const BOTH_ENDS: Note = { code: 'BOTH_ENDS_HELD', params: {}, text: 'Tie-downs hold it at the front and at the rear.' };
const END_NOT_STATED = { code: 'END_NOT_STATED', text: 'Which end each tie-down holds: {tieDowns} does not say front or rear.' };
const ONE_END_ONLY = { code: 'ONE_END_ONLY', text: 'No tie-down holds the {end}.' };
const ACCESSORY_HELD = { code: 'ACCESSORY_HELD', text: '{accessory} is held so that it cannot shift.' };
const ACCESSORY_LOOSE = { code: 'ACCESSORY_LOOSE', text: '{accessory} is neither lowered, locked nor tied down.' };
const NOT_LOWERED_AND_TIED = { code: 'NOT_LOWERED_AND_TIED', text: '{accessory} is not both completely lowered and tied to the vehicle.' };
const LOCK_NOT_STATED = { code: 'LOCK_NOT_STATED', text: 'Whether pins or a lock hold {accessory}, or which tie-down does.' };
const LOWERED_ONLY = { code: 'LOWERED_ONLY', text: 'Whether {accessory}, lowered and neither locked nor tied, can drift.' };
const LOWERED_NOT_STATED = { code: 'LOWERED_NOT_STATED', text: 'Whether {accessory} is completely lowered.' };
const TIE_OR_LOCK_NOT_STATED = {
  code: 'TIE_OR_LOCK_NOT_STATED',
  text: 'A tie-down that holds {accessory} lowered, or whether a lock stops all its movement.',
};
const LOCK_DISPUTED = {
  code: 'LOCK_DISPUTED',
  text: '{accessory} is locked, not lowered and tied down: guidance may accept that, the words of the rule do not. A qualified person decides.',
};
const JOINT_NOT_STATED = { code: 'ARTICULATION_NOT_STATED', text: 'Whether the joint of {article} is locked.' };
const JOINT_LOCKED = { code: 'ARTICULATION_LOCKED', text: 'The joint of {article} is locked.' };
const JOINT_FREE = { code: 'ARTICULATION_FREE', text: 'The joint of {article} is free to move.' };
