import { checkRatings } from '../chain/chain-rating.js';
import { checkObject } from '../input-checks.js';
import { compareExact, type Ratio, ratioOf } from '../quantities/exact.js';
import type { Quantity, QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import { readOptional } from '../quantities/read.js';
import { massUnitOf, readSystem } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import type { RatingTable } from '../tables/rating-table.js';
import { FOLLOW_THE_MARK, STAND_CLEAR, STRAIGHT_PULL } from '../working/cautions.js';
import type { Verdict } from '../working/check.js';
import type { Note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import type { Part } from './part.js';
import { newRater, type PartLimit, type PartRating, rateSeries, type SeriesRating } from './rate-part.js';
import { newLog, noteAssumptions, showSeries } from './show-parts.js';

export interface AssemblyRating extends ResultBase<'assemblyRating'> {
  /**
   * With a load: whether the assembly carries it. Without: `pass` when every part is rated and sound, `fail`
   * when one counts zero. `undetermined` when a part's rating is not known.
   */
  readonly verdict: Verdict;
  /** The least rating of any part; null when a part's rating is not known. */
  readonly workingLoadLimit: Quantity<'lb' | 'kg'> | null;
  /** Ids of the parts that have the least rating; several when they tie. */
  readonly weakest: readonly string[];
  /** While a part is unknown: the assembly carries no more than this. */
  readonly atMost?: Quantity<'lb' | 'kg'>;
  /** Load over working load limit; only with a load, null when the limit is zero. */
  readonly utilization?: number | null;
  readonly parts: readonly PartRating[];
  readonly missing: readonly Note[];
  readonly ratings: string;
}

export interface AssemblyInput {
  readonly ratings: RatingTable;
  /** Every part in series, in order from end to end; legs side by side are one part of kind `parallel`. */
  readonly parts: readonly Part[];
  /** The load it must carry along its line, if the answer should say whether it does. */
  readonly load?: QuantityInput<'ratedLoad'>;
  readonly units?: UnitSystem;
  readonly working?: boolean;
}

/**
 * The working load limit of an assembly: its weakest part. WLL = min(WLL of every part in series).
 *
 * Each part is rated by its mark, else by the table's row, else by what the table's document gives an unmarked
 * part. Hooks and links marked with grade and size only count as chain of that grade and size. Binders,
 * shackles and anchor points have no table: without a mark they are unknown, and the verdict is `undetermined`.
 * A damaged part counts zero.
 *
 * @param input.ratings the rating table, such as {@link us49cfr393_108_2024}
 * @param input.parts `{ id, kind, size?, grade?, markedWll?, condition? }`, at least one, ids unique
 * @param input.load a rated load (mass or force unit); optional
 * @param input.units `'us'` or `'si'`; omitted: the table's own
 * @throws RiggingError `EMPTY_LIST`, `DUPLICATE_ID`, `MISSING_FIELD`, `UNKNOWN_VALUE`, `UNKNOWN_SIZE`, `UNKNOWN_GRADE`,
 * `NOT_POSITIVE`, `WRONG_KIND`
 * @validity parts in line, straight pull; angles between legs are not part of this
 * @source 49 CFR 393.108(a) for tie-downs; the same rule for chain and fittings in DOE-STD-1090-96 12.2.3
 * @example
 * assemblyRating({
 *   ratings: us49cfr393_108_2024,
 *   parts: [
 *     { id: 'chain', kind: 'chain', size: '3/8', grade: 70 },
 *     { id: 'hook', kind: 'grab-hook', size: '3/8', grade: 70 },
 *     { id: 'binder', kind: 'binder', markedWll: '5400 lb' },
 *   ],
 * }).weakest
 * // => [ 'binder' ]
 */
export function assemblyRating(input: AssemblyInput): AssemblyRating {
  checkObject(input, '', '{ ratings, parts }');
  const { ratings, parts } = input;
  checkRatings(ratings);
  const unit = massUnitOf(readSystem(input.units, ratings.units));
  const working = new Working(input.working !== false);
  const log = newLog();
  const series = rateSeries(newRater(ratings, log), parts);
  const load = readOptional(input.load, 'ratedLoad', 'load');
  if (working.shown) showSeries(working, series, parts, 'assembly', unit);
  for (const source of log.sources) working.cite(source);
  noteAssumptions(working, log);
  working.cautions.push(STRAIGHT_PULL, STAND_CLEAR, FOLLOW_THE_MARK);

  const { workingLoadLimit, atMost } = series;
  return makeResult(
    'assemblyRating',
    {
      verdict: verdictOf(series, load),
      workingLoadLimit: workingLoadLimit === null ? null : ratedLoadIn(workingLoadLimit, unit),
      weakest: series.weakest,
      ...(workingLoadLimit === null && atMost !== null ? { atMost: ratedLoadIn(atMost, unit) } : {}),
      ...(load === undefined || workingLoadLimit === null
        ? {}
        : { utilization: ratioOfLoads(load, workingLoadLimit).utilization }),
      parts: parts.map(({ id, kind }, index): PartRating => ({ id, kind, ...(series.limits[index] as PartLimit) })),
      missing: series.missing,
      ratings: ratings.id,
    },
    input,
    working,
  );
}

function verdictOf(series: SeriesRating, load: QuantityLike | undefined): Verdict {
  const { workingLoadLimit, atMost } = series;
  const carries = (limit: QuantityLike) => (load === undefined ? limit.value > 0 : ratioOfLoads(load, limit).fits);
  if (workingLoadLimit !== null) return carries(workingLoadLimit) ? 'pass' : 'fail';
  return atMost !== null && !carries(atMost) ? 'fail' : 'undetermined';
}

function ratioOfLoads(load: QuantityLike, limit: QuantityLike): Ratio {
  return ratioOf(ratedLoadIn(load, 'kg').value, ratedLoadIn(limit, 'kg').value, () => compareExact(load, limit));
}
