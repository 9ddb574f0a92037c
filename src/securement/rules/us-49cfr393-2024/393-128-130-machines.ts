import { type Check, type CheckSubject, conditionCheck, undeterminedCheck } from '../../../working/check.js';
import { type Note, note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { Accessory, ReadArticle } from '../../plan.js';
import type { RatedTieDown } from './393-108-weakest-part.js';
import { cite } from './cite.js';

/**
 * 393.128(b) and 393.130(c): the tie-downs hold the machine at both front and rear. The end each one holds is
 * the caller's to state.
 */
export function checkBothEnds(rule: string, { article }: ReadArticle, counted: readonly RatedTieDown[], working: Working): Check {
  const paragraph = rule === '393.128' ? '393.128(b)' : '393.130(c)';
  cite(working, paragraph);
  const about: CheckSubject = {
    id: `${paragraph}/${article.id}`,
    title: 'Restraint at front and rear',
    clause: `49 CFR ${paragraph}`,
    weight: 'requirement',
    subject: article.id,
  };
  const ends = counted.map(({ tieDown }) => tieDown.end);
  if (ends.includes('front') && ends.includes('rear')) return conditionCheck(about, 'pass', BOTH_ENDS);
  const unstated = counted.filter(({ tieDown }) => tieDown.end === undefined).map(({ tieDown }) => tieDown.id);
  if (unstated.length > 0) {
    return undeterminedCheck(about, [note(END_NOT_STATED, { tieDowns: unstated.join(', ') })]);
  }
  return conditionCheck(about, 'fail', note(ONE_END_ONLY, { end: ends.includes('front') ? 'rear' : 'front' }));
}

/**
 * 393.130(b)(1): on a machine of 10,000 lb or more accessory equipment is completely lowered and secured to the
 * vehicle. Agency guidance may accept a full lock instead of a tie-down, or equipment made to travel raised and
 * locked; that is disputed, so a locked accessory is neither passed nor reported as a violation here.
 *
 * Below 10,000 lb the guidance asks that locking pins or the like keep it from shifting; it need not be lowered.
 */
export function checkAccessory(accessory: Accessory, heavy: boolean, tiedBy: number, working: Working): Check {
  const paragraph = heavy ? '393.130(b)(1)' : '393.130 guidance, question 1';
  cite(working, paragraph);
  const about: CheckSubject = {
    id: `${paragraph}/${accessory.id}`,
    title: 'Accessory equipment',
    clause: `49 CFR ${paragraph}`,
    weight: 'requirement',
    subject: accessory.id,
  };
  const { lowered, locked } = accessory;
  const ask = (words: Words) => undeterminedCheck(about, [note(words, { accessory: accessory.id })]);
  const say = (verdict: 'pass' | 'fail', words: Words) => conditionCheck(about, verdict, note(words, { accessory: accessory.id }));
  if (!heavy) {
    if (locked === true || tiedBy > 0) return say('pass', ACCESSORY_HELD);
    return locked === false ? say('fail', ACCESSORY_LOOSE) : ask(LOCK_NOT_STATED);
  }
  if (lowered === undefined) return ask(LOWERED_NOT_STATED);
  if (lowered && tiedBy > 0) return say('pass', LOWERED_AND_TIED);
  if (locked === true) return ask(LOCK_DISPUTED);
  if (locked === undefined) return ask(TIE_OR_LOCK_NOT_STATED);
  return say('fail', lowered ? ACCESSORY_NOT_TIED : ACCESSORY_RAISED);
}

/** 393.130(b)(2): an articulated machine of 10,000 lb or more is kept from articulating; below that it is advice. */
export function checkArticulation({ article }: ReadArticle, heavy: boolean, working: Working): Check | undefined {
  if (article.articulated !== true) return undefined;
  cite(working, '393.130(b)(2)');
  const about: CheckSubject = {
    id: `393.130(b)(2)/${article.id}`,
    title: 'Articulation',
    clause: '49 CFR 393.130(b)(2)',
    weight: heavy ? 'requirement' : 'practice',
    subject: article.id,
  };
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
const ACCESSORY_LOOSE = { code: 'ACCESSORY_LOOSE', text: '{accessory} is neither locked nor tied down.' };
const LOCK_NOT_STATED = { code: 'LOCK_NOT_STATED', text: 'Whether pins or a lock hold {accessory}, or which tie-down does.' };
const LOWERED_NOT_STATED = { code: 'LOWERED_NOT_STATED', text: 'Whether {accessory} is completely lowered.' };
const LOWERED_AND_TIED = { code: 'LOWERED_AND_TIED', text: '{accessory} is lowered and tied to the vehicle.' };
const LOCK_DISPUTED = {
  code: 'LOCK_DISPUTED',
  text: '{accessory} is locked and not both lowered and tied down: agency guidance may accept that, the words of the rule do not. A qualified person decides; lowering it and tying it down settles it.',
};
const TIE_OR_LOCK_NOT_STATED = { code: 'TIE_OR_LOCK_NOT_STATED', text: 'A tie-down that holds {accessory} lowered to the deck, or whether a lock stops all its movement.' };
const ACCESSORY_NOT_TIED = { code: 'ACCESSORY_NOT_TIED', text: '{accessory} is lowered and not secured to the vehicle.' };
const ACCESSORY_RAISED = { code: 'ACCESSORY_RAISED', text: '{accessory} is not completely lowered and not locked.' };
const JOINT_NOT_STATED = { code: 'ARTICULATION_NOT_STATED', text: 'Whether the joint of {article} is locked.' };
const JOINT_LOCKED = { code: 'ARTICULATION_LOCKED', text: 'The joint of {article} is locked.' };
const JOINT_FREE = { code: 'ARTICULATION_FREE', text: 'The joint of {article} is free to move.' };
