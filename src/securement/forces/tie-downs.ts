import { mapAt } from '../../errors.js';
import { decimalProduct } from '../../quantities/decimal.js';
import { compareExact } from '../../quantities/exact.js';
import { formatNumber } from '../../quantities/format.js';
import type { QuantityLike } from '../../quantities/quantity.js';
import { isForce, ratedLoadIn, STANDARD_GRAVITY } from '../../quantities/rated.js';
import { readOptional } from '../../quantities/read.js';
import type { UnitSystem } from '../../quantities/units.js';
import type { CapacityTable } from '../../tables/rating-table.js';
import { type Note, note } from '../../working/note.js';
import type { StepValue, Working } from '../../working/step.js';
import type { ArticleLayout, Run, TieDownLayout } from '../layout.js';
import type { TieDown } from '../plan.js';
import { rateTieDown, ratingUnder, type TieDownRating } from '../rate-tie-down.js';
import type { CountedTieDown } from '../rule-set.js';
import { anglesOf, type Heading, holdingBack } from './directions.js';
import { type SumUnit, shownLoad } from './sums.js';
import { leversOf, type TippingEdge } from './tipping-edge.js';

/** A load that nothing bounds, until a fact is known. */
export const unbounded = (): QuantityLike => ({ value: Number.POSITIVE_INFINITY, unit: 'N' });

/** A tie-down with its points and its capacity. */
export interface RatedLayout {
  readonly layout: TieDownLayout;
  readonly rating: TieDownRating;
}

/** A load as far as it is known: at least this, and while a fact is missing at most that. */
export interface LoadSpan {
  readonly least: QuantityLike;
  readonly most: QuantityLike;
}

/** A tie-down with the force that each of its runs is counted on for. */
export interface CountedForce {
  readonly layout: TieDownLayout;
  readonly force: LoadSpan;
  /** What must be known to count it in full. */
  readonly missing: readonly Note[];
}

export const NOTHING: QuantityLike = { value: 0, unit: 'N' };

/**
 * The tie-downs of a plan rated under a table. The steps state each as the least of its parts, and first each load that
 * crosses between mass and force; `symbol` and `clause` as the code has them.
 */
export function rateTieDowns(
  table: CapacityTable,
  tieDowns: readonly TieDown[],
  working: Working,
  symbol: string,
  unit: SumUnit,
  clause: string,
): readonly TieDownRating[] {
  const ratings = ratingUnder(table, working, (rater) =>
    mapAt(tieDowns, 'tieDowns', (tieDown) => rateTieDown(rater, tieDown, working)),
  );
  for (const { tieDown, damaged } of ratings) {
    if (damaged.length === 0) continue;
    const caution = note('DAMAGED_COUNTS_ZERO', { tieDown: tieDown.id, parts: damaged.join(', ') });
    if (!working.cautions.some(({ text }) => text === caution.text)) working.cautions.push(caution);
  }
  if (working.shown) for (const rating of ratings) showCapacity(working, rating, symbol, unit, clause);
  return ratings;
}

function showCapacity(
  working: Working,
  { tieDown, series, capacity }: TieDownRating,
  symbol: string,
  unit: SumUnit,
  clause: string,
): void {
  const whole = `tie-down ${tieDown.id}`;
  const parts = tieDown.parts?.map(({ id }, index) => [id, series?.limits[index]?.workingLoadLimit ?? null] as const);
  for (const [id, load] of parts ?? [[null, capacity] as const]) {
    if (load === null || load.value === 0 || isForce(load) === isForce({ value: 1, unit })) continue;
    const [name, expression] = isForce(load) ? ['F', 'F / g'] : ['m', 'm · g'];
    working.step(
      id === null ? whole : `${whole}, ${id}`,
      symbol,
      expression,
      { [name]: load, g: { value: STANDARD_GRAVITY, unit: 'm/s2' } },
      ratedLoadIn(load, unit),
    );
  }
  working.step(
    whole,
    symbol,
    parts === undefined ? 'as stated' : `min(${symbol} of every part)`,
    parts ?? [[tieDown.id, capacity]],
    capacity === null ? null : ratedLoadIn(capacity, unit),
    clause,
  );
}

/** The tie-downs of an article with their capacities. */
export const ratedLayouts = ({ tieDowns }: ArticleLayout, ratings: readonly TieDownRating[]): readonly RatedLayout[] =>
  tieDowns.flatMap((layout) => {
    const rating = ratings.find(({ tieDown }) => tieDown === layout.tieDown);
    return rating === undefined ? [] : [{ layout, rating }];
  });

/** Whether a tie-down runs over the load, to the other side: it holds by pressing, and not by its strength. */
export const runsOver = ({ layout }: { readonly layout: TieDownLayout }): boolean =>
  layout.tieDown.path === 'over-other-side';

/** Straight runs of a tie-down by its path: one of a direct tie-down, two of the others. */
export const legsOf = ({ path }: TieDown): 1 | 2 => (path === 'vehicle-to-cargo' ? 1 : 2);

/** Runs that the plan gives no points for. */
export const absentRuns = ({ tieDown, runs }: TieDownLayout): number => legsOf(tieDown) - runs.length;

/** The capacity of a tie-down, as far as it is known. */
export const loadOf = ({ capacity, atMost }: TieDownRating): LoadSpan => ({
  least: capacity ?? NOTHING,
  most: capacity ?? atMost ?? unbounded(),
});

/** A tie-down by its capacity in each run. */
export function byCapacity({ layout, rating }: RatedLayout): CountedForce {
  const facts = rating.capacity === null ? rating.missing : [];
  return {
    layout,
    force: loadOf(rating),
    missing: [...facts, ...missingPoints(layout)],
  };
}

/** A tie-down by the tension that stands in each run; `fact` says what is missing where that is not stated. */
export function byTension(layout: TieDownLayout, tension: QuantityLike | undefined, fact: Note): CountedForce {
  return {
    layout,
    force: { least: tension ?? NOTHING, most: tension ?? unbounded() },
    missing: [...(tension === undefined ? [fact] : []), ...missingPoints(layout)],
  };
}

/** A tie-down by its pretension. Nothing guesses or bounds one that is not stated. */
export const byPretension = ({ layout }: Pick<RatedLayout, 'layout'>): CountedForce =>
  byTension(
    layout,
    readOptional(layout.tieDown.pretension, 'force', 'pretension'),
    pretensionNotStated(layout.tieDown.id),
  );

export const pretensionNotStated = (tieDown: string): Note => note('PRETENSION_NOT_STATED', { tieDown });

/** The lesser of two spans: no more tension than a share of the strength. */
export const lesserOf = (one: LoadSpan, other: LoadSpan): LoadSpan => ({
  least: lesser(one.least, other.least),
  most: lesser(one.most, other.most),
});

function lesser(one: QuantityLike, other: QuantityLike): QuantityLike {
  if (!Number.isFinite(one.value)) return other;
  return !Number.isFinite(other.value) || compareExact(one, other) <= 0 ? one : other;
}

/** A share of a span of loads, as the decimals they are. */
export const shareOfLoad = (share: number, { least, most }: LoadSpan): LoadSpan => ({
  least: shareOf(share, least),
  most: shareOf(share, most),
});

const shareOf = (share: number, { value, unit }: QuantityLike): QuantityLike => ({
  value: Number.isFinite(value) ? decimalProduct(share, value) : value,
  unit,
});

/** The load of a span where it is known, else null. */
export const knownLoad = ({ least, most }: LoadSpan): QuantityLike | null =>
  least.value === most.value && least.unit === most.unit ? least : null;

/** How a tie-down was counted, for the result; `counts` and the share of it that counts are the code's. */
export function countedTieDown(
  { tieDown: { id, holds, path }, weakest }: TieDownRating,
  counts: CountedTieDown['counts'],
  load: QuantityLike | null,
  credit: number,
  unit: SumUnit,
): CountedTieDown {
  const rating = load === null ? null : ratedLoadIn(load, unit);
  const counted = rating === null ? null : ratedLoadIn({ value: rating.value * credit, unit }, unit);
  return { id, holds, path, counts, rating, credit, counted, weakest };
}

/**
 * The values that a step shows of tie-downs in a heading: the force of each over a divisor, and of each run that counts
 * its angle to the deck, that of its plan to the heading, and about an edge its levers.
 */
export function runValues(
  counted: readonly CountedForce[],
  heading: Heading,
  units: UnitSystem,
  { symbol = 'F', divisor = 1, edge }: { symbol?: string; divisor?: number; edge?: TippingEdge } = {},
): (readonly [string, StepValue])[] {
  const values: (readonly [string, StepValue])[] = [];
  for (const { layout, force } of counted) {
    const { id } = layout.tieDown;
    const over = runsOver({ layout });
    const runs = layout.runs.filter((run) => over || holdingBack(run, heading) > 0);
    if (runs.length === 0 && absentRuns(layout) === 0) continue;
    const load = shownLoad(knownLoad(force), units);
    values.push([`${id}, ${symbol}`, load && { value: load.value / divisor, unit: load.unit }]);
    for (const run of runs) {
      const name = layout.runs.length > 1 ? `${id}, run ${layout.runs.indexOf(run) + 1}` : id;
      const { alpha, beta } = anglesOf(run, heading);
      values.push([`${name}, α`, { value: alpha, unit: 'deg' }]);
      if (!over) values.push([`${name}, β`, { value: beta, unit: 'deg' }]);
      if (edge === undefined) continue;
      const { h, s } = leversOf(run, edge);
      if (!over) values.push([`${name}, h`, { value: h, unit: 'm' }]);
      values.push([`${name}, s`, { value: s, unit: 'm' }]);
    }
  }
  return values;
}

/** The values that a step shows of tie-downs whose code counts a share of each: the share, and what it is of. */
export const shareValues = (
  counted: readonly CountedForce[],
  symbol: string,
  shareOf: (runs: readonly Run[]) => number,
): (readonly [string, StepValue])[] =>
  counted.map(({ layout, force }) => {
    const share = absentRuns(layout) === 0 ? formatNumber(shareOf(layout.runs)) : 'not known';
    return [`${layout.tieDown.id}, ${symbol} ${share}`, knownLoad(force)];
  });

/** Tie-downs by their ids, in a sentence. */
export const namesOf = (tieDowns: readonly { readonly layout: TieDownLayout }[]): string =>
  tieDowns.map(({ layout }) => layout.tieDown.id).join(', ');

/** The points that a tie-down lacks, as a missing fact; none where it has them all. */
const missingPoints = (layout: TieDownLayout): readonly Note[] =>
  absentRuns(layout) === 0 ? [] : [note('POINTS_NOT_STATED', { tieDown: layout.tieDown.id })];
