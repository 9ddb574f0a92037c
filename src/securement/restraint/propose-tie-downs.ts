import { fail, mapAt, within } from '../../errors.js';
import { checkIds, checkList, checkObject } from '../../input-checks.js';
import { type Point, readPoint } from '../../quantities/point.js';
import type { QuantityInput } from '../../quantities/quantity.js';
import { ratedLoadIn } from '../../quantities/rated.js';
import { readPositive } from '../../quantities/read.js';
import { type LimitOptions, type LimitOutcome, limitFactors } from '../../statics/limit/limit-factor.js';
import type { Loading, Member, RigidLoad } from '../../statics/rigid-load.js';
import { dot, lengthOf, scale, subtract, type Vec3 } from '../../statics/vector.js';
import { FOLLOW_THE_MARK, STAND_CLEAR } from '../../working/cautions.js';
import { type Note, note } from '../../working/note.js';
import { makeResult, type ResultBase } from '../../working/result.js';
import { Working } from '../../working/step.js';
import { ALONG } from '../forces/directions.js';
import { type ArticleLayout, layoutOfArticle } from '../layout.js';
import { type Article, readArticle } from '../plan.js';
import type { Direction } from './answer.js';
import { worstOf } from './limit-answer.js';
import { checkFriction, rigidLoadOf } from './load.js';
import { type Accelerations, gravityOn, readAccelerations, readFrictionOption } from './options.js';

/** A point that a tie-down may be fixed to. */
export interface FixingPoint {
  readonly id: string;
  readonly at: Point;
  /** What it may carry in the capacity asked for; omitted: at least as much as the tie-down. */
  readonly rated?: QuantityInput<'ratedLoad'>;
}

/** One tie-down of a proposal. */
export interface ProposedTieDown {
  /** Ids of the points. */
  readonly anchor: string;
  readonly attachment: string;
  /** The way it pulls the machine. */
  readonly pulls: 'forward' | 'rearward' | 'aside';
}

export interface Proposal {
  readonly tieDowns: readonly ProposedTieDown[];
  /** The least limit factor over the directions asked for; null where nothing ever gives way. */
  readonly factor: number | null;
  /** The direction that has it. */
  readonly governing: Direction;
}

export interface ProposedTieDowns extends ResultBase<'proposeTieDowns'> {
  /** Best first, three at most; none where the points allow no such arrangement. */
  readonly proposals: readonly Proposal[];
  /** How many arrangements there are. */
  readonly arrangements: number;
}

/** Proposals that are handed out. */
const MOST_PROPOSALS = 3;
/** More arrangements than this are a search for another tool. */
const MOST_ARRANGEMENTS = 100_000;

/**
 * Where to fix so many tie-downs: the arrangement with the greatest least limit factor over all directions asked for.
 *
 * Every anchor point and every attachment point is used once at most. As haulers do, half of the tie-downs, two of four,
 * pull the machine forward and half rearward. Every arrangement is looked at: a bound from the sum of forces,
 * f ≤ (μ · W + sum(F · (cos α · cos β + μ · sin α))) / (a · W), orders them, and the limit problem is solved until no bound
 * can beat the best. Among equals the lower attachments come first.
 *
 * @param input.article with `centerOfGravity`, `contacts` and, where friction counts, `friction`
 * @param input.anchors points on the vehicle
 * @param input.attachments points on the frame of the machine; leave out what is no frame
 * @param input.count how many tie-downs, 2 to 8
 * @param input.capacity what each tie-down may carry; a point that is rated lower holds it to that
 * @param input.accelerations as in {@link solveRestraint}, as is `friction`
 * @throws RiggingError `TOO_LARGE` (more than 100,000 arrangements), `EMPTY_LIST`, `DUPLICATE_ID`, `NOT_A_WHOLE_NUMBER`,
 * `MISSING_FIELD`, `NOT_POSITIVE`, `WRONG_KIND`, `IMPOSSIBLE_GEOMETRY`
 * @validity the limit problem's: necessary for holding, not sufficient; it does not see what a chain would run through
 * @source equilibrium of a rigid body; two forward and two back, low and on the frame: common practice
 * @example
 * const at = (x: number, y: number, z: number) => [{ value: x, unit: 'm' }, { value: y, unit: 'm' }, { value: z, unit: 'm' }] as const;
 * const article = {
 *   id: 'tractor', kind: 'machinery', mass: '2000 kg', length: '3 m', centerOfGravity: at(-3, 0, 0.7),
 *   contacts: [at(-2, 0.6, 0), at(-2, -0.6, 0), at(-4, 0.6, 0), at(-4, -0.6, 0)].map((each) => ({ at: each })),
 * } as const;
 * const anchors = [
 *   { id: 'front left', at: at(-0.5, 1, 0) }, { id: 'front right', at: at(-0.5, -1, 0) },
 *   { id: 'rear left', at: at(-5.5, 1, 0) }, { id: 'rear right', at: at(-5.5, -1, 0) },
 * ];
 * const attachments = [
 *   { id: 'fl', at: at(-2, 0.4, 0.5) }, { id: 'fr', at: at(-2, -0.4, 0.5) },
 *   { id: 'rl', at: at(-4, 0.4, 0.5) }, { id: 'rr', at: at(-4, -0.4, 0.5) },
 * ];
 * proposeTieDowns({
 *   article, anchors, attachments, count: 4, capacity: '20 kN', friction: 'none',
 *   accelerations: { forward: '0.8 g', rearward: '0.5 g', left: '0.5 g', right: '0.5 g' },
 * }).proposals.length
 * // => 3
 */
export function proposeTieDowns(input: {
  readonly article: Article;
  readonly anchors: readonly FixingPoint[];
  readonly attachments: readonly FixingPoint[];
  readonly count: number;
  readonly capacity: QuantityInput<'ratedLoad'>;
  readonly accelerations: Accelerations;
  readonly friction: 'none' | 'full' | number;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): ProposedTieDowns {
  checkObject(input, '', '{ article, anchors, attachments, count, capacity, accelerations, friction }');
  const { count } = input;
  if (!Number.isSafeInteger(count) || count < 2 || count > 8) {
    fail('NOT_A_WHOLE_NUMBER', 'count', 'a whole number from 2 to 8', count, 'Say how many tie-downs.');
  }
  const working = new Working(input.working !== false);
  const capacity = ratedLoadIn(readPositive(input.capacity, 'ratedLoad', 'capacity'), 'N').value;
  const anchors = readPoints(input.anchors, 'anchors');
  const attachments = readPoints(input.attachments, 'attachments');
  const asked = readAccelerations(input.accelerations);
  const options = readFrictionOption(input.friction);
  const bare = within('article', () => rigidLoadOf(readArticleLayout(input.article, options), []));
  const runs = anchors.map((anchor) => attachments.map((attachment) => runBetween(anchor, attachment, capacity)));
  const bounds = asked.map(({ direction, g }) => boundOn(bare, options, direction, g));
  const candidates = arrangementsOf(runs, count).map((members) => ({ members, bound: boundOf(members, bounds) }));
  candidates.sort((one, other) => other.bound - one.bound || heightOf(one.members) - heightOf(other.members));

  const loadings = asked.map(
    ({ direction, g }): Loading => ({
      steady: gravityOn(undefined),
      varying: scale(ALONG[direction], g),
    }),
  );
  const best: (Proposal & { readonly height: number })[] = [];
  let solved = 0;
  for (const { members, bound } of candidates) {
    const last = best[MOST_PROPOSALS - 1];
    if (last !== undefined && bound <= (last.factor ?? Number.POSITIVE_INFINITY)) break;
    solved++;
    const outcomes = limitFactors({ ...bare, members }, loadings, options);
    const factor = worstOf(outcomes);
    const governing = asked.find((_, at) => worstOf([outcomes[at] as LimitOutcome]) === factor) ?? asked[0];
    best.push({
      tieDowns: members.map(proposed),
      factor,
      governing: (governing as (typeof asked)[number]).direction,
      height: heightOf(members),
    });
    best.sort(better);
    best.length = Math.min(best.length, MOST_PROPOSALS);
  }
  working.step(
    'arrangements',
    'solved',
    'those whose bound could beat the third best',
    { all: candidates.length },
    solved,
  );
  working.cite(PRACTICE);
  working.assumptions.push(NOTHING_IN_THE_WAY);
  working.cautions.push(LOW_ON_THE_FRAME, STAND_CLEAR, FOLLOW_THE_MARK);
  const proposals = best.map(({ height: _, ...proposal }) => proposal);
  return makeResult('proposeTieDowns', { proposals, arrangements: candidates.length }, input, working);
}

interface Fixing {
  readonly id: string;
  readonly at: Vec3;
  readonly rated: number;
}

function readPoints(points: readonly FixingPoint[], name: string): readonly Fixing[] {
  checkList(points, name);
  checkIds(points, name);
  return mapAt(points, name, ({ id, at, rated }) => ({
    id,
    at: readPoint(at, 'at'),
    rated:
      rated === undefined
        ? Number.POSITIVE_INFINITY
        : ratedLoadIn(readPositive(rated, 'ratedLoad', 'rated'), 'N').value,
  }));
}

function readArticleLayout(article: Article, options: LimitOptions): ArticleLayout {
  const layout = layoutOfArticle(readArticle(article), []);
  checkFriction(layout, options);
  return layout;
}

/** A possible tie-down: a member of the statics that remembers its points. */
interface PossibleTieDown extends Member {
  readonly from: string;
  readonly to: string;
  /** Unit vector of its pull on the load. */
  readonly pull: Vec3;
}

function runBetween(anchor: Fixing, attachment: Fixing, capacity: number): PossibleTieDown {
  const line = subtract(anchor.at, attachment.at);
  const length = lengthOf(line);
  if (!(length > 0)) {
    fail('IMPOSSIBLE_GEOMETRY', 'anchors', `points apart from ${attachment.id}`, anchor.id, 'Check the points.');
  }
  return {
    id: `${anchor.id} to ${attachment.id}`,
    from: anchor.id,
    to: attachment.id,
    anchor: anchor.at,
    attachment: attachment.at,
    capacity: Math.min(capacity, anchor.rated, attachment.rated),
    pull: scale(line, 1 / length),
  };
}

const pullsOf = ({ pull }: PossibleTieDown): ProposedTieDown['pulls'] =>
  pull[0] > 0 ? 'forward' : pull[0] < 0 ? 'rearward' : 'aside';

const proposed = (each: PossibleTieDown): ProposedTieDown => ({
  anchor: each.from,
  attachment: each.to,
  pulls: pullsOf(each),
});

/** Every way to lay so many tie-downs, each point used once, half of them pulling forward and half rearward. */
function arrangementsOf(runs: readonly (readonly PossibleTieDown[])[], count: number): PossibleTieDown[][] {
  const each = Math.floor(count / 2);
  const found: PossibleTieDown[][] = [];
  const chosen: PossibleTieDown[] = [];
  const used = new Set<string>();
  const visit = (from: number): void => {
    if (chosen.length === count) {
      const pulling = (way: ProposedTieDown['pulls']) => chosen.filter((run) => pullsOf(run) === way).length;
      if (pulling('forward') < each || pulling('rearward') < each) return;
      found.push([...chosen]);
      if (found.length > MOST_ARRANGEMENTS) {
        fail('TOO_LARGE', 'anchors', `at most ${MOST_ARRANGEMENTS} arrangements`, 'more', 'Offer fewer points.');
      }
      return;
    }
    for (let anchor = from; anchor <= runs.length - (count - chosen.length); anchor++) {
      for (const run of runs[anchor] as readonly PossibleTieDown[]) {
        if (used.has(run.to)) continue;
        used.add(run.to);
        chosen.push(run);
        visit(anchor + 1);
        chosen.pop();
        used.delete(run.to);
      }
    }
  };
  visit(0);
  return found;
}

/** The part of the bound on the factor in one direction that is there without tie-downs, and what each one adds. */
interface Bound {
  readonly bare: number;
  readonly adds: (member: PossibleTieDown) => number;
}

/** From the sum of forces alone: friction on the weight, and of every tie-down what it holds back and presses down. */
function boundOn({ weight, contacts }: RigidLoad, { friction }: LimitOptions, direction: Direction, g: number): Bound {
  const mu = friction === 'none' ? 0 : friction.multiplier * Math.max(...contacts.map((each) => each.friction));
  const towards = ALONG[direction];
  const asked = g * weight;
  if (direction === 'up') {
    return { bare: weight / asked, adds: ({ pull, capacity }) => (capacity * Math.max(0, -pull[2])) / asked };
  }
  return {
    bare: (mu * weight) / asked,
    adds: ({ pull, capacity }) => (capacity * Math.max(0, -dot(pull, towards) - mu * pull[2])) / asked,
  };
}

function boundOf(members: readonly PossibleTieDown[], bounds: readonly Bound[]): number {
  return Math.min(...bounds.map(({ bare, adds }) => members.reduce((sum, member) => sum + adds(member), bare)));
}

const heightOf = (members: readonly PossibleTieDown[]): number =>
  members.reduce((sum, { attachment }) => sum + attachment[2], 0);

/** The greater factor first; as good as equal ones by the lower attachments. */
function better(
  one: { readonly factor: number | null; readonly height: number },
  other: { readonly factor: number | null; readonly height: number },
): number {
  const [a, b] = [one.factor ?? Number.MAX_VALUE, other.factor ?? Number.MAX_VALUE];
  return Math.abs(a - b) <= 1e-9 * Math.max(a, b) ? one.height - other.height : b - a;
}

const PRACTICE = {
  document: 'Two tie-downs pulling forward and two back, low and on the frame',
  provenance: 'common practice',
} as const;
const NOTHING_IN_THE_WAY: Note = /* @__PURE__ */ note('NOTHING_IN_THE_WAY');
const LOW_ON_THE_FRAME: Note = /* @__PURE__ */ note('LOW_ON_THE_FRAME');
