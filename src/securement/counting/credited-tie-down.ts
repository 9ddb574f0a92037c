import { ratedLoadIn } from '../../quantities/rated.js';
import { type Note, note, type Words } from '../../working/note.js';
import type { ReadArticle } from '../plan.js';
import type { TieDownRating } from '../rate-tie-down.js';
import type { CountedTieDown } from '../rule-set.js';

/** A tie-down as a rule set counts it that adds up working load limits: its rating, and the share of it that counts. */
export interface CreditedTieDown extends TieDownRating {
  readonly credit: number;
}

export const isRated = ({ capacity }: CreditedTieDown): boolean => capacity !== null;

/** A rating with its credit, written out: a spread would cost the bulk check half of its speed. */
export function withCredit(
  { tieDown, capacity, atMost, weakest, missing, damaged, lowestGrade }: TieDownRating,
  credit: number,
): CreditedTieDown {
  return { tieDown, capacity, atMost, weakest, missing, damaged, lowestGrade, credit };
}

/** None of its parts is damaged. */
export const isSound = ({ damaged }: CreditedTieDown): boolean => damaged.length === 0;

/** Those that hold an article or an accessory. */
export const thatHold = <T extends CreditedTieDown>(tieDowns: readonly T[], id: string): T[] =>
  tieDowns.filter(({ tieDown }) => tieDown.holds === id);

/** The ids of tie-downs, as a sentence names them. */
export const namesOf = (tieDowns: readonly CreditedTieDown[]): string =>
  tieDowns.map(({ tieDown }) => tieDown.id).join(', ');

/** Names the tie-downs whose rating is not known. */
export function ratingNotKnown(tieDowns: readonly CreditedTieDown[]): Note {
  return note(RATING_NOT_KNOWN, { tieDowns: namesOf(tieDowns.filter((each) => !isRated(each))) });
}

const RATING_NOT_KNOWN: Words = ['RATING_NOT_KNOWN', 'The working load limit of {tieDowns}.'];

/** As results show it. One that holds an accessory is shown with its rating and counts in no article's aggregate. */
export function countedTieDown(
  { tieDown, capacity, weakest, credit }: CreditedTieDown,
  articles: readonly ReadArticle[],
  unit: 'lb' | 'kg',
): CountedTieDown {
  const { id, holds, path } = tieDown;
  const share = articles.some(({ article }) => article.id === holds) ? credit : 0;
  const rating = capacity === null || capacity.unit === unit ? capacity : ratedLoadIn(capacity, unit);
  const counted = rating === null ? null : { value: rating.value * share, unit };
  return { id, holds, path, counts: 'workingLoadLimit', rating, credit: share, counted, weakest };
}
