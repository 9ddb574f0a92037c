import { newRater, type SeriesRating } from '../assembly/rate-part.js';
import { newLog, noteAssumptions } from '../assembly/show-parts.js';
import { mapAt } from '../errors.js';
import { isForce, STANDARD_GRAVITY } from '../quantities/rated.js';
import type { UnitSystem } from '../quantities/units.js';
import type { CapacityTable } from '../tables/rating-table.js';
import { type Note, note, type Words } from '../working/note.js';
import type { StepValue, Working } from '../working/step.js';
import { decimalIn, ifKnown, type Span, type SumSpan, shownForce } from './force-checks.js';
import {
  anglesOf,
  type CountedRun,
  type Heading,
  heldAgainstTipping,
  heldByFriction,
  heldDirectly,
  holdingBack,
  leversOf,
  pressingDown,
  type TippingEdge,
} from './forces.js';
import type { TieDownLayout } from './layout.js';
import type { TieDown } from './plan.js';
import { rateTieDown, type TieDownRating } from './rate-tie-down.js';
import type { RuleContext } from './rule-set.js';

/** A tie-down with the force that each of its runs is counted on for. */
export interface CountedForce {
  readonly layout: TieDownLayout;
  /** N, for each run. */
  readonly force: Span;
  /** What must be known to count it in full. */
  readonly missing: readonly Note[];
}

/** The tie-downs of a plan rated under a table, with the steps and assumptions of that; `symbol` as the table calls it. */
export function rateTieDowns(
  table: CapacityTable,
  symbol: string,
  tieDowns: readonly TieDown[],
  { working, units }: RuleContext,
): readonly TieDownRating[] {
  const log = working.shown ? newLog() : undefined;
  const rater = newRater(table, log);
  const ratings = mapAt(tieDowns, 'tieDowns', (tieDown) => rateTieDown(rater, tieDown, working));
  for (const { tieDown, damaged } of ratings) {
    if (damaged.length === 0) continue;
    working.cautions.push(note(COUNTS_ZERO, { tieDown: tieDown.id, parts: damaged.join(', ') }));
  }
  if (log !== undefined) {
    for (const rating of ratings) showCapacity(working, rating, symbol, units);
    for (const source of log.sources) working.cite(source);
    noteAssumptions(working, log);
  }
  return ratings;
}

/** The capacity of a tie-down in newtons, as far as it is known. */
export function capacitySpan({ capacity, atMost }: TieDownRating): Span {
  const most = capacity ?? atMost;
  return {
    least: capacity === null ? 0 : decimalIn(capacity, 'N'),
    most: most === null ? Number.POSITIVE_INFINITY : decimalIn(most, 'N'),
  };
}

/** The points that a tie-down lacks, as a missing fact; none where it has them all. */
export function missingPoints(layout: TieDownLayout): readonly Note[] {
  return unplacedRuns(layout) === 0 ? [] : [note(POINTS_NOT_STATED, { tieDown: layout.tieDown.id })];
}

/** Runs that the plan gives no points for: a direct tie-down has one run, the others two. */
export function unplacedRuns({ tieDown, runs }: TieDownLayout): number {
  return (tieDown.path === 'vehicle-to-cargo' ? 1 : 2) - runs.length;
}

/**
 * What direct tie-downs hold against sliding: see {@link heldDirectly}. A run without points holds nothing at worst; at
 * best it pulls at the best angle there is, F · sqrt(1 + μ²).
 */
export function directSpan(counted: readonly CountedForce[], heading: Heading, mu: Span): SumSpan {
  return spanOf(counted, (run, at) => heldDirectly([run], heading, mu[at]), Math.hypot(1, mu.most));
}

/** What tie-downs over the load hold against sliding by friction: see {@link heldByFriction}. */
export function frictionSpan(counted: readonly CountedForce[], mu: Span): SumSpan {
  return spanOf(counted, (run, at) => heldByFriction([run], mu[at]), mu.most);
}

/** What direct tie-downs hold against tipping: see {@link heldAgainstTipping}; N m. */
export function directTippingSpan(counted: readonly CountedForce[], edge: TippingEdge, heading: Heading): SumSpan {
  return spanOf(counted, (run) => heldAgainstTipping([run], edge, heading), Number.POSITIVE_INFINITY);
}

/**
 * What tie-downs over the load hold against tipping: sum(F · s · sin α). The level parts of the two runs pull against
 * each other and are left out.
 */
export function pressedTippingSpan(counted: readonly CountedForce[], edge: TippingEdge, heading: Heading): SumSpan {
  return spanOf(counted, ({ run }) => leversOf(run, edge, heading).s * pressingDown(run), Number.POSITIVE_INFINITY);
}

/**
 * The least and the most of a sum over runs, from what each holds for a newton of its force; `best` is what one without
 * points could. A run that does harm does the more of it the harder it pulls.
 */
function spanOf(
  counted: readonly CountedForce[],
  perNewton: (run: CountedRun, at: keyof Span) => number,
  best: number,
): SumSpan {
  const least: (readonly number[])[] = [];
  const most: (readonly number[])[] = [];
  // nothing of a force that is not known is nothing
  const add = (sum: (readonly number[])[], ...product: number[]) => product.includes(0) || sum.push(product);
  for (const { layout, force } of counted) {
    for (const run of layout.runs) {
      const one = { run, force: 1 };
      const atLeast = perNewton(one, 'least');
      const atMost = perNewton(one, 'most');
      add(least, atLeast, atLeast > 0 ? force.least : force.most);
      add(most, atMost, atMost > 0 ? force.most : force.least);
    }
    add(most, unplacedRuns(layout), best, force.most);
  }
  return { least, most };
}

/**
 * The values that a step shows of the runs that count in a heading: the force over a divisor, the angle to the deck, that
 * of its plan to the heading, and about an edge its levers.
 */
export function runValues(
  counted: readonly CountedForce[],
  heading: Heading,
  units: UnitSystem,
  { symbol = 'F', divisor = 1, edge }: { symbol?: string; divisor?: number; edge?: TippingEdge } = {},
): (readonly [string, StepValue])[] {
  const values: (readonly [string, StepValue])[] = [];
  for (const { layout, force } of counted) {
    const { id, path } = layout.tieDown;
    layout.runs.forEach((run, index) => {
      if (path !== 'over-other-side' && holdingBack(run, heading) <= 0) return;
      const name = layout.runs.length > 1 ? `${id}, run ${index + 1}` : id;
      const { alpha, beta } = anglesOf(run, heading);
      values.push(
        [`${name}, ${symbol}`, ifKnown(force, (newtons) => shownForce(newtons / divisor, units))],
        [`${name}, α`, { value: alpha, unit: 'deg' }],
      );
      if (path !== 'over-other-side') values.push([`${name}, β`, { value: beta, unit: 'deg' }]);
      if (edge === undefined) return;
      const { h, s } = leversOf(run, edge, heading);
      values.push([`${name}, h`, { value: h, unit: 'm' }], [`${name}, s`, { value: s, unit: 'm' }]);
    });
  }
  return values;
}

/** Records the capacity of a tie-down as a force, and first each part that is rated by mass. */
function showCapacity(working: Working, rating: TieDownRating, symbol: string, units: UnitSystem): void {
  const { tieDown, capacity, series } = rating;
  const rated =
    series === undefined
      ? [[tieDown.id, capacity] as const]
      : partsOf(series).map((limit, index) => [tieDown.parts?.[index]?.id ?? tieDown.id, limit] as const);
  for (const [id, load] of rated) {
    if (load === null || isForce(load) || load.value === 0) continue;
    working.step(
      id === tieDown.id ? `tie-down ${id}` : `tie-down ${tieDown.id}, ${id}`,
      symbol,
      'm · g',
      { m: load, g: { value: STANDARD_GRAVITY, unit: 'm/s2' } },
      shownForce(decimalIn(load, 'N'), units),
    );
  }
  working.step(
    `tie-down ${tieDown.id}`,
    symbol,
    series === undefined ? 'as stated' : `min(${symbol} of every part)`,
    rated,
    capacity === null ? null : shownForce(decimalIn(capacity, 'N'), units),
  );
}

const partsOf = ({ limits }: SeriesRating) => limits.map(({ workingLoadLimit }) => workingLoadLimit);

const COUNTS_ZERO: Words = [
  'DAMAGED_COUNTS_ZERO',
  'Tie-down {tieDown} counts zero, because of damage: {parts}. Take that out of use.',
];
const POINTS_NOT_STATED: Words = [
  'POINTS_NOT_STATED',
  'Tie-down {tieDown}: the points where each of its runs is fixed and meets the cargo.',
];
