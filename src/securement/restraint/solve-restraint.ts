import { fail, within } from '../../errors.js';
import { checkObject, checkOneOf } from '../../input-checks.js';
import { Quantity } from '../../quantities/quantity.js';
import { ratedLoadIn } from '../../quantities/rated.js';
import { sharedUnits } from '../../quantities/shared-units.js';
import type { UnitSystem } from '../../quantities/units.js';
import { type ElasticOutcome, elasticResponses } from '../../statics/elastic/elastic-response.js';
import { type LimitOutcome, limitFactors, limitFactorsOneOut } from '../../statics/limit/limit-factor.js';
import type { Loading, RigidLoad } from '../../statics/rigid-load.js';
import { scale } from '../../statics/vector.js';
import { CAPACITY_SYSTEMS, type CapacitySystem, type CapacityTable } from '../../tables/rating-table.js';
import { FOLLOW_THE_MARK, STAND_CLEAR } from '../../working/cautions.js';
import type { Verdict } from '../../working/check.js';
import { type Note, note } from '../../working/note.js';
import { makeResult } from '../../working/result.js';
import type { SourceRef } from '../../working/source.js';
import { Working } from '../../working/step.js';
import { ALONG } from '../forces/directions.js';
import { type ArticleLayout, readLayout } from '../layout.js';
import type { Plan } from '../plan.js';
import type { Direction, DirectionAnswer, Restraint } from './answer.js';
import { elasticAnswer, elasticLoad } from './elastic-answer.js';
import { factorOf, limitAnswer, worstOf } from './limit-answer.js';
import { checkFriction, forceIn, type HeldBy, missingFacts, missingStiffness, rateHeld, rigidLoadOf } from './load.js';
import {
  type Accelerations,
  type DeckSlope,
  gravityOn,
  readAccelerations,
  readFrictionOption,
  readTolerances,
  type Tolerances,
} from './options.js';
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

/**
 * Whether a layout of tie-downs holds an article in a hard stop, a swerve or a jolt: forces and moments on the whole
 * machine, direction by direction. Two answers, which are not the same and are both given:
 *
 * - `limit`: the greatest f for which tensions within capacities, friction and pushes of the deck can balance
 *   W · (gravity + f · a) at all. It shares the load in the most favorable way, so it is **necessary for holding, not
 *   sufficient**. With friction it is an upper bound: dry friction may give way before. With `friction: 'none'` it holds
 *   for tie-downs that yield at their capacity.
 * - `elastic`: how the load shares when every tie-down is a spring of EA / L, a short, flat, stiff one first; at which
 *   multiple of a the first reaches its capacity, and the load first slips, lifts and gives way. It needs the stiffness of
 *   every tie-down: {@link chainStiffness} gives that of chain.
 *
 * The verdict of a direction is `fail` where either answer fails below 1, `pass` where both hold, else `undetermined`. The
 * limit is found again without each tie-down, and with every stated tolerance used up the worse way.
 *
 * A direct tie-down, or a loop back to its own side, holds by its strength. One that runs over to the other side presses
 * with its pretension and holds nothing back. Every balance is checked by separate code to 1e-9 of the weight.
 *
 * @param input.articles with `centerOfGravity`, `contacts` and, where friction counts, `friction`
 * @param input.tieDowns with `anchor` and `attachment`, and `parts` or `capacities`; `pretension` and `axialStiffness`
 * @param input.article which article; omitted: the only one
 * @param input.accelerations what to hold, `{ forward: '0.8 g', ... }`; braking throws the load forward
 * @param input.capacity the capacity that tie-downs are held to: `'workingLoadLimit'`, `'lashingCapacity'`,
 * `'maximumSecuringLoad'`, `'ratedStrength'` or `'breakingStrength'`
 * @param input.ratings a table of that capacity for parts without a mark; omitted: only marks count
 * @param input.friction `'none'`, `'full'`, or the share that counts, such as 0.75
 * @param input.deckSlope `{ noseUp, leftUp }`, angles; omitted: level
 * @param input.tolerances `{ angle, friction, centerOfGravity }`: how far figures may be off
 * @param input.units `'us'` (lbf) or `'si'` (N); omitted: the system of the article's mass
 * @throws RiggingError `MISSING_FIELD` (no center of gravity, contacts, friction, direction), `CONFLICTING_FIELDS`,
 * `UNKNOWN_REFERENCE`, `UNKNOWN_FIELD`, `UNKNOWN_VALUE`, `IMPOSSIBLE_GEOMETRY`, `NOT_POSITIVE`, `WRONG_KIND`, and as
 * {@link checkSecurement}
 * @validity rigid load on a rigid deck, small displacements, straight runs; tires and springs settle and slacken tie-downs.
 * The circle of friction is taken as a polygon of 16 sides inside it, at most two percent less
 * @source equilibrium of a rigid body, limit analysis and the direct stiffness method, as in textbooks of mechanics
 * @example
 * const at = (x: number, y: number, z: number) => [{ value: x, unit: 'ft' }, { value: y, unit: 'ft' }, { value: z, unit: 'ft' }] as const;
 * const chain = (id: string, x: number, y: number) => ({
 *   id, holds: 'tractor', path: 'vehicle-to-cargo', capacities: { workingLoadLimit: '4700 lb' }, axialStiffness: '1200000 lbf',
 *   anchor: at(x < -6 ? x - 4 : x + 4, y * 3, 0), attachment: at(x, y * 1.5, 2),
 * } as const);
 * const { verdict, directions } = solveRestraint({
 *   articles: [{
 *     id: 'tractor', kind: 'machinery', mass: '4680 lb', length: '12 ft', friction: 0.4, centerOfGravity: at(-6.5, 0, 2.5),
 *     contacts: [at(-4, 2, 0), at(-4, -2, 0), at(-9, 2, 0), at(-9, -2, 0)].map((each) => ({ at: each })),
 *   }],
 *   tieDowns: [chain('front left', -3, 1), chain('front right', -3, -1), chain('rear left', -9, 1), chain('rear right', -9, -1)],
 *   accelerations: { forward: '0.8 g', rearward: '0.5 g', left: '0.5 g', right: '0.5 g' },
 *   capacity: 'workingLoadLimit',
 *   friction: 'full',
 * });
 * console.log(verdict, directions.map(({ mode }) => mode));
 * // => pass [ 'holds', 'holds', 'holds', 'holds' ]
 */
export function solveRestraint(input: SolveRestraintInput): Restraint {
  checkObject(input, '', '{ articles, tieDowns, accelerations, capacity, friction }');
  const { capacity, ratings } = input;
  checkOneOf(capacity, CAPACITY_SYSTEMS, 'capacity');
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

  checkSize(layout, index);

  const held = rateHeld(layout, capacity, ratings, units, working);
  const unknown = missingFacts(held);
  const load = within(`articles[${index}]`, () => {
    checkFriction(layout, options);
    return rigidLoadOf(layout, held);
  });
  const loadings = asked.map(({ direction, g }): Loading => ({ steady, varying: scale(ALONG[direction], g) }));
  const limits = (each: RigidLoad) => limitFactors(each, loadings, options);
  const solved = limitFactorsOneOut(load, loadings, options);
  const found = solved.map(({ intact }) => intact);
  // the solver takes one member away; a loop has two, and what runs over has none
  const withoutOne = (gone: HeldBy): readonly LimitOutcome[] => {
    const [only, another] = load.members.flatMap(({ id }, member) => (id === gone.tieDown.id ? [member] : []));
    return only !== undefined && another === undefined
      ? solved.map(({ without }) => without[only] as LimitOutcome)
      : limits(
          rigidLoadOf(
            layout,
            held.filter((each) => each !== gone),
          ),
        );
  };
  const atBest = unknown.length > 0 ? limits(rigidLoadOf(layout, held, withoutLimit(layout))) : undefined;
  const springs = unknown.length > 0 ? undefined : elasticLoad(load);
  const shared = springs && elasticResponses(springs, loadings, 1, options);
  const missing = [...unknown, ...(unknown.length > 0 ? [] : missingStiffness(load))];
  const less = held.map((gone) => ({ id: gone.tieDown.id, outcomes: withoutOne(gone) }));
  const off = variationsOf(load, options, tolerances).map(({ what, loads }) => ({
    what,
    outcomes: loads.map(limits),
  }));

  const directions = asked.map(({ direction, g }, at): DirectionAnswer => {
    const loading = loadings[at] as Loading;
    const limit = limitAnswer(load, loading, found[at] as LimitOutcome, atBest?.[at], options, units);
    const elastic =
      springs && shared ? elasticAnswer(springs, loading, shared[at] as ElasticOutcome, options, units) : null;
    const verdict = worseOf(limit.verdict, elastic?.verdict ?? 'undetermined');
    const { factor, outcome } = limit;
    const values = { W: forceIn(layout.weight, units), a: new Quantity(g, 'g') };
    working.step(direction, 'f', GREATEST_FACTOR, values, factor ?? outcome);
    return {
      direction,
      acceleration: new Quantity(g, 'g'),
      verdict,
      mode: verdict === 'pass' ? 'holds' : limit.mode,
      limit,
      elastic,
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
      verdict: worseOf(...directions.map(({ verdict }) => verdict)),
      withOneGone: worseOf(...directions.flatMap(({ withoutOne }) => withoutOne.map(({ verdict }) => verdict))),
      article: layout.article.id,
      governing: governingOf(directions),
      directions,
      missing,
    },
    input,
    working,
  );
}

/** More than this is no machine on a deck, and would take seconds. */
const MOST_POINTS = 64;
const LIGHTEST = 0.01; // N
const HEAVIEST = 1e9;

function checkSize({ tieDowns, contacts, weight }: ArticleLayout, index: number): void {
  const most = `at most ${MOST_POINTS}`;
  if (tieDowns.length > MOST_POINTS) fail('TOO_LARGE', 'tieDowns', most, tieDowns.length, 'Look at fewer at a time.');
  if (contacts.length > MOST_POINTS) {
    fail('TOO_LARGE', `articles[${index}].contacts`, most, contacts.length, 'Give tires, or the corners of tracks.');
  }
  if (!(weight > LIGHTEST && weight < HEAVIEST)) {
    fail('NOT_FINITE', `articles[${index}].mass`, 'a mass from 1 g to 100,000 t', weight, 'Check the mass.');
  }
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

/** What fails, fails; what is open, is open; else it passes. */
function worseOf(...verdicts: readonly Verdict[]): Verdict {
  return verdicts.find((each) => each === 'fail') ?? verdicts.find((each) => each === 'undetermined') ?? 'pass';
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
const RIGID_AND_STRAIGHT: Note = /* @__PURE__ */ note('RIGID_AND_STRAIGHT');
const NECESSARY: Note = /* @__PURE__ */ note('BALANCE_IS_NECESSARY_ONLY');
