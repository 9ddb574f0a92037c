import {
  type Check,
  type CheckSubject,
  countCheck,
  failedCheck,
  metCheck,
  notApplicableCheck,
  undeterminedCheck,
} from '../../working/check.js';
import { type Note, note } from '../../working/note.js';
import type { TieDownRating } from '../rate-tie-down.js';
import { isRated, namesOf, ratingNotKnown } from './rated-tie-down.js';

// Checks of rule sets that count tie-downs and add up their ratings; each set says which clause asks and of how many.
// A tie-down whose rating is not known may be no tie-down at all: what rests on it is not decided.

/** Whether there are enough of them. */
export function checkCount(about: CheckSubject, minimumCount: number, counted: readonly TieDownRating[]): Check {
  const open = counted.filter(isRated).length < minimumCount && minimumCount <= counted.length;
  return open ? undeterminedCheck(about, [ratingNotKnown(counted)]) : countCheck(about, minimumCount, counted.length);
}

/** Whether they hold both ends of the cargo; the end each one holds is the caller's to state. */
export function checkBothEnds(about: CheckSubject, counted: readonly TieDownRating[]): Check {
  if (holdBothEnds(counted.filter(isRated))) return metCheck(about);
  if (holdBothEnds(counted)) return undeterminedCheck(about, [ratingNotKnown(counted)]);
  const unstated = counted.filter(({ tieDown }) => tieDown.end === undefined);
  if (unstated.length === 0) return failedCheck(about, ONE_END_ONLY);
  return undeterminedCheck(about, [note('END_NOT_STATED', { tieDowns: namesOf(unstated) })]);
}

function holdBothEnds(tieDowns: readonly TieDownRating[]): boolean {
  return (
    tieDowns.some(({ tieDown }) => tieDown.end === 'front') && tieDowns.some(({ tieDown }) => tieDown.end === 'rear')
  );
}

/** Whether no part is damaged, as the caller found. */
export function checkCondition(about: CheckSubject, tieDowns: readonly TieDownRating[]): Check {
  const damaged: string[] = [];
  const open: Note[] = [];
  for (const { tieDown, damaged: parts, missing } of tieDowns) {
    for (const part of parts) damaged.push(`${tieDown.id} ${part}`);
    for (const fact of missing) if (fact.code === 'CONDITION_UNDETERMINED') open.push(fact);
  }
  if (damaged.length > 0) return failedCheck(about, note('DAMAGED_PART', { parts: damaged.join(', ') }));
  return open.length > 0 ? undeterminedCheck(about, open) : metCheck(about);
}

/** Whether every part and anchor point is rated; where the others are enough without one that is not, it need not be. */
export function checkRated(about: CheckSubject, holding: readonly TieDownRating[], enough: boolean): Check {
  if (holding.every(isRated)) return metCheck(about);
  if (enough) return notApplicableCheck(about, RATING_NOT_NEEDED);
  const missing = holding.filter((each) => !isRated(each)).flatMap(({ missing: facts }) => facts);
  return undeterminedCheck(about, missing);
}

const ONE_END_ONLY: Note = /* @__PURE__ */ note('ONE_END_ONLY');
const RATING_NOT_NEEDED: Note = /* @__PURE__ */ note('RATING_NOT_NEEDED');
