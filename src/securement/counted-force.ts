import type { SeriesRating } from '../assembly/rate-part.js';
import { isForce, ratedLoadIn, STANDARD_GRAVITY } from '../quantities/rated.js';
import type { UnitSystem } from '../quantities/units.js';
import { type Note, note } from '../working/note.js';
import type { StepValue, Working } from '../working/step.js';
import { type Span, shownForce } from './force-checks.js';
import {
  anglesOf,
  type CountedRun,
  type Heading,
  heldAgainstTipping,
  heldByFriction,
  heldDirectly,
  leversOf,
  pressingDown,
  type TippingEdge,
} from './forces.js';
import type { TieDownLayout } from './layout.js';
import type { TieDownRating } from './rate-tie-down.js';

/** A tie-down with the force that each of its runs is counted on for. */
export interface CountedForce {
  readonly layout: TieDownLayout;
  /** N, for each run. */
  readonly force: Span;
  /** What must be known to count it in full. */
  readonly missing: readonly Note[];
}

/** The capacity of a tie-down in newtons, as far as it is known. */
export function capacitySpan({ capacity, atMost }: TieDownRating): Span {
  const most = capacity ?? atMost;
  return {
    least: capacity === null ? 0 : ratedLoadIn(capacity, 'N').value,
    most: most === null ? Number.POSITIVE_INFINITY : ratedLoadIn(most, 'N').value,
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
export function directSpan(counted: readonly CountedForce[], heading: Heading, mu: Span): Span {
  return spanOf(counted, (runs, at) => heldDirectly(runs, heading, mu[at]), Math.hypot(1, mu.most));
}

/** What tie-downs over the load hold against sliding by friction: see {@link heldByFriction}. */
export function frictionSpan(counted: readonly CountedForce[], mu: Span): Span {
  return spanOf(counted, (runs, at) => heldByFriction(runs, mu[at]), mu.most);
}

/** What direct tie-downs hold against tipping: see {@link heldAgainstTipping}; N m. */
export function directTippingSpan(counted: readonly CountedForce[], edge: TippingEdge, heading: Heading): Span {
  return spanOf(counted, (runs) => heldAgainstTipping(runs, edge, heading), Number.POSITIVE_INFINITY);
}

/**
 * What tie-downs over the load hold against tipping: sum(F · s · sin α). The level parts of the two runs pull against
 * each other and are left out.
 */
export function pressedTippingSpan(counted: readonly CountedForce[], edge: TippingEdge, heading: Heading): Span {
  const moment = (held: number, { run, force }: CountedRun) =>
    held + force * leversOf(run, edge, heading).s * pressingDown(run);
  return spanOf(counted, (runs) => runs.reduce(moment, 0), Number.POSITIVE_INFINITY);
}

/** The least and the most of a sum over runs; `best` is what a run without points could add for each newton. */
function spanOf(
  counted: readonly CountedForce[],
  held: (runs: readonly CountedRun[], at: keyof Span) => number,
  best: number,
): Span {
  let least = 0;
  let most = 0;
  for (const { layout, force } of counted) {
    for (const run of layout.runs) {
      const perNewton = held([{ run, force: 1 }], 'least');
      const atBest = held([{ run, force: 1 }], 'most');
      least += times(perNewton, perNewton > 0 ? force.least : force.most);
      most += times(atBest, atBest > 0 ? force.most : force.least);
    }
    most += times(unplacedRuns(layout) * best, force.most);
  }
  return { least, most };
}

/** A product in which nothing times an unknown force is nothing. */
const times = (share: number, force: number): number => (share === 0 || force === 0 ? 0 : share * force);

/** The values of a run that a step shows: its force, its angle to the deck, and of its plan to the heading. */
export function runValues(
  counted: readonly CountedForce[],
  heading: Heading,
  units: UnitSystem,
): (readonly [string, StepValue])[] {
  return counted.flatMap(({ layout: { tieDown, runs }, force }) =>
    runs.flatMap((run, index) => {
      const name = runs.length > 1 ? `${tieDown.id}, run ${index + 1}` : tieDown.id;
      const { alpha, beta } = anglesOf(run, heading);
      return [
        [`${name}, F`, shownForce(force.least, units)],
        [`${name}, α`, { value: alpha, unit: 'deg' }],
        [`${name}, β`, { value: beta, unit: 'deg' }],
      ] as const;
    }),
  );
}

/** Records the capacity of a tie-down as a force, and first each part that is rated by mass. */
export function showCapacity(working: Working, rating: TieDownRating, symbol: string, units: UnitSystem): void {
  if (!working.shown) return;
  const { tieDown, capacity, series } = rating;
  const rated =
    series === undefined
      ? [[tieDown.id, capacity] as const]
      : partsOf(series).map((limit, index) => [tieDown.parts?.[index]?.id ?? tieDown.id, limit] as const);
  for (const [id, load] of rated) {
    if (load === null || isForce(load) || load.value === 0) continue;
    working.step({
      subject: id === tieDown.id ? `tie-down ${id}` : `tie-down ${tieDown.id}, ${id}`,
      symbol,
      expression: 'm · g',
      values: { m: load, g: { value: STANDARD_GRAVITY, unit: 'm/s2' } },
      result: shownForce(ratedLoadIn(load, 'N').value, units),
    });
  }
  working.step({
    subject: `tie-down ${tieDown.id}`,
    symbol,
    expression: series === undefined ? 'as stated' : `min(${symbol} of every part)`,
    values: rated,
    result: capacity === null ? null : shownForce(ratedLoadIn(capacity, 'N').value, units),
  });
}

const partsOf = ({ limits }: SeriesRating) => limits.map(({ workingLoadLimit }) => workingLoadLimit);

const POINTS_NOT_STATED = {
  code: 'POINTS_NOT_STATED',
  text: 'Tie-down {tieDown}: the points where each of its runs is fixed and meets the cargo.',
};
