import { fail, within } from '../../errors.js';
import { checkObject, checkOneOf } from '../../input-checks.js';
import { Quantity } from '../../quantities/quantity.js';
import { ratedLoadIn } from '../../quantities/rated.js';
import { sharedUnits } from '../../quantities/shared-units.js';
import type { UnitSystem } from '../../quantities/units.js';
import { type LimitOutcome, limitFactors } from '../../statics/limit-factor.js';
import type { Loading, RigidLoad } from '../../statics/rigid-load.js';
import { scale } from '../../statics/vector.js';
import type { CapacitySystem, CapacityTable } from '../../tables/rating-table.js';
import { FOLLOW_THE_MARK, STAND_CLEAR } from '../../working/cautions.js';
import type { Verdict } from '../../working/check.js';
import { type Note, note } from '../../working/note.js';
import { makeResult } from '../../working/result.js';
import type { SourceRef } from '../../working/source.js';
import { Working } from '../../working/step.js';
import { type ArticleLayout, readLayout } from '../layout.js';
import type { Plan } from '../plan.js';
import { factorOf, limitAnswer, worstOf } from './limit.js';
import { checkFriction, forceIn, type HeldBy, missingFacts, rateAll, rigidLoadOf } from './load.js';
import {
  type Accelerations,
  type DeckSlope,
  gravityOn,
  readAccelerations,
  readFrictionOption,
  readTolerances,
  TOWARDS,
  type Tolerances,
} from './options.js';
import type { Direction, DirectionAnswer, Restraint } from './restraint.js';
import { variationsOf } from './tolerances.js';

export interface SolveRestraintInput extends Plan {
  /** The article to look at; omitted: the only one of the plan. */
  readonly article?: string;
  readonly accelerations: Accelerations;
  /** The capacity that the tie-downs are held to. */
  readonly capacity: CapacitySystem;
  /** Rates the parts that carry no mark, in the same system; omitted: only marks count. */
  readonly ratings?: CapacityTable;
  /** How much of the friction counts: `'none'`, `'full'`, or a share such as a code's 0.75. */
  readonly friction: 'none' | 'full' | number;
  readonly deckSlope?: DeckSlope;
  /** The limit is found again with each figure off by as much, the worse way. */
  readonly tolerances?: Tolerances;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

const SYSTEMS: readonly CapacitySystem[] = [
  'workingLoadLimit',
  'lashingCapacity',
  'maximumSecuringLoad',
  'ratedStrength',
  'breakingStrength',
];

export function solveRestraint(input: SolveRestraintInput): Restraint {
  checkObject(input, '', '{ articles, tieDowns, accelerations, capacity, friction }');
  const { capacity, ratings } = input;
  checkOneOf(capacity, SYSTEMS, 'capacity');
  if (ratings !== undefined && ratings?.system !== capacity) {
    fail('CONFLICTING_FIELDS', 'ratings', `a table of ${capacity}`, ratings?.id, 'Give a table of the same capacity.');
  }
  const working = new Working(input.working !== false);
  const asked = readAccelerations(input.accelerations);
  const options = readFrictionOption(input.friction);
  const steady = gravityOn(input.deckSlope);
  const tolerances = readTolerances(input.tolerances);
  const layouts = readLayout(input);
  const index = indexOfArticle(layouts, input.article);
  const layout = layouts[index] as ArticleLayout;
  const units = sharedUnits(input.units, [layout.mass]);

  const held = rateAll(layout, capacity, ratings, units, working);
  const missing = missingFacts(held);
  const load = within(`articles[${index}]`, () => {
    checkFriction(layout, options);
    return rigidLoadOf(layout, held);
  });
  const loadings = asked.map(({ direction, g }): Loading => ({ steady, varying: scale(TOWARDS[direction], g) }));
  const limits = (each: RigidLoad, off = options) => limitFactors(each, loadings, off);
  const found = limits(load);
  const atBest = missing.length > 0 ? limits(rigidLoadOf(layout, held, withoutLimit(layout))) : undefined;
  const less = held.map((gone) => ({
    id: gone.tieDown.id,
    outcomes: limits(
      rigidLoadOf(
        layout,
        held.filter((each) => each !== gone),
      ),
    ),
  }));
  const off = variationsOf(load, options, tolerances).map(({ what, loads }) => ({
    what,
    outcomes: loads.map((each) => limits(each)),
  }));

  const directions = asked.map(({ direction, g }, at): DirectionAnswer => {
    const loading = loadings[at] as Loading;
    const limit = limitAnswer(load, loading, found[at] as LimitOutcome, atBest?.[at], options, units);
    const { factor, outcome } = limit;
    const values = { W: forceIn(layout.weight, units), a: new Quantity(g, 'g') };
    working.step(direction, 'f', GREATEST_FACTOR, values, factor ?? outcome);
    return {
      direction,
      acceleration: new Quantity(g, 'g'),
      verdict: limit.verdict,
      mode: limit.verdict === 'pass' ? 'holds' : limit.mode,
      limit,
      elastic: null,
      withoutOne: less.map(({ id, outcomes }) => ({ id, ...factorOf(outcomes[at] as LimitOutcome) })),
      ifOff: off.map(({ what, outcomes }) => ({
        what,
        factor: worstOf(outcomes.map((each) => each[at] as LimitOutcome)),
      })),
    };
  });
  working.cite(RIGID_BODY);
  if (working.shown) working.assumptions.push(RIGID_AND_STRAIGHT);
  working.cautions.push(NECESSARY, STAND_CLEAR, FOLLOW_THE_MARK);
  return makeResult(
    'solveRestraint',
    {
      verdict: overall(directions),
      article: layout.article.id,
      governing: governingOf(directions),
      directions,
      missing,
    },
    input,
    working,
  );
}

const GREATEST_FACTOR = 'greatest f at which forces within capacities balance W · (gravity + f · a)';

/** A tie-down whose capacity is not known, taken as strong as the known parts are, or stronger than the load can ask. */
const withoutLimit =
  ({ weight }: ArticleLayout) =>
  ({ capacity, rating: { atMost } }: HeldBy): number =>
    capacity ?? (atMost === null ? 1000 * weight : ratedLoadIn(atMost, 'N').value);

function indexOfArticle(layouts: readonly ArticleLayout[], wanted: string | undefined): number {
  if (wanted === undefined && layouts.length === 1) return 0;
  const ids = layouts.map(({ article }) => article.id);
  const index = wanted === undefined ? -1 : ids.indexOf(wanted);
  if (index < 0) {
    const code = wanted === undefined ? 'MISSING_FIELD' : 'UNKNOWN_REFERENCE';
    fail(code, 'article', `one of ${ids.join(', ')}`, wanted, 'Name the article to look at.');
  }
  return index;
}

function overall(directions: readonly DirectionAnswer[]): Verdict {
  for (const verdict of ['fail', 'undetermined'] as const) {
    if (directions.some((each) => each.verdict === verdict)) return verdict;
  }
  return 'pass';
}

/** The direction that holds the least. */
function governingOf(directions: readonly DirectionAnswer[]): Direction {
  const factorIn = ({ limit, elastic }: DirectionAnswer) =>
    Math.min(limit.factor ?? Number.POSITIVE_INFINITY, elastic?.firstAtCapacity?.factor ?? Number.POSITIVE_INFINITY);
  return directions.reduce((least, each) => (factorIn(each) < factorIn(least) ? each : least)).direction;
}

const RIGID_BODY: SourceRef = {
  document: 'Equilibrium of a rigid body and limit analysis, as in textbooks of mechanics',
  provenance: 'memory',
};
const RIGID_AND_STRAIGHT: Note = /* @__PURE__ */ note([
  'RIGID_AND_STRAIGHT',
  'The load and the deck are rigid, tie-downs run straight between their points; springs and tires settle and slacken them.',
]);
const NECESSARY: Note = /* @__PURE__ */ note([
  'BALANCE_IS_NECESSARY_ONLY',
  'A balance at the limit is necessary for holding, not sufficient: it shares the load in the most favorable way.',
]);
