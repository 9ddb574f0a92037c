import { newRater, type PartRater } from '../../assembly/rate-part.js';
import { newLog, noteAssumptions } from '../../assembly/show-parts.js';
import { mapAt } from '../../errors.js';
import type { CapacityTable } from '../../tables/rating-table.js';
import type { Working } from '../../working/step.js';
import type { Plan, TieDown } from '../plan.js';

/** Rates the tie-downs of a plan in their order, and says what was looked up and what was taken for granted. */
export function rateAll<Rated>(
  { tieDowns }: Plan,
  ratings: CapacityTable,
  working: Working,
  rate: (rater: PartRater, tieDown: TieDown) => Rated,
): Rated[] {
  const log = working.shown ? newLog() : undefined;
  const rater = newRater(ratings, log);
  const rated = mapAt(tieDowns, 'tieDowns', (tieDown) => rate(rater, tieDown));
  if (log !== undefined) {
    for (const source of log.sources) working.cite(source);
    noteAssumptions(working, log);
  }
  return rated;
}
