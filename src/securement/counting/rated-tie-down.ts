import { ratedLoadIn } from '../../quantities/rated.js';
import { type Note, note } from '../../working/note.js';
import type { ReadArticle, TieDownPath } from '../plan.js';
import type { TieDownRating } from '../rate-tie-down.js';
import type { CountedTieDown } from '../rule-set.js';

/** The share of a tie-down's working load limit that a rule set counts, by the way it runs. */
export type Credit = (path: TieDownPath) => number;

export const isRated = ({ capacity }: TieDownRating): boolean => capacity !== null;

/** None of its parts is damaged. */
export const isSound = ({ damaged }: TieDownRating): boolean => damaged.length === 0;

/** Those that hold an article or an accessory. */
export const thatHold = <T extends TieDownRating>(tieDowns: readonly T[], id: string): T[] =>
  tieDowns.filter(({ tieDown }) => tieDown.holds === id);

/** The ids of tie-downs, as a sentence names them. */
export const namesOf = (tieDowns: readonly TieDownRating[]): string =>
  tieDowns.map(({ tieDown }) => tieDown.id).join(', ');

/** Names the tie-downs whose rating is not known. */
export function ratingNotKnown(tieDowns: readonly TieDownRating[]): Note {
  return note('RATING_NOT_KNOWN', { tieDowns: namesOf(tieDowns.filter((each) => !isRated(each))) });
}

/** As results show it. One that holds an accessory is shown with its rating and counts in no article's aggregate. */
export function countedTieDown(
  { tieDown, capacity, weakest }: TieDownRating,
  creditOf: Credit,
  articles: readonly ReadArticle[],
  unit: 'lb' | 'kg',
): CountedTieDown {
  const { id, holds, path } = tieDown;
  const credit = articles.some(({ article }) => article.id === holds) ? creditOf(path) : 0;
  const rating = capacity === null || capacity.unit === unit ? capacity : ratedLoadIn(capacity, unit);
  const counted = rating === null ? null : { value: rating.value * credit, unit };
  return { id, holds, path, counts: 'workingLoadLimit', rating, credit, counted, weakest };
}
