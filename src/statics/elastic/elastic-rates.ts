import { ROWS } from '../rigid-load.js';
import { type ContactRate, contactModeOf, contactStiffness, facetMode, OPEN, STICKS, slides } from './contact-law.js';
import type { ElasticModel, ElasticState, Standing } from './elastic-model.js';
import { addProduct, addTo, factorize, freePart, inner, solve } from './linear-equations.js';
import { unresistedMotion } from './unresisted-motion.js';

/** What each spring does while the load moves a little. */
export interface Modes {
  /** 1 while taut, 0 while slack. */
  readonly members: Uint8Array;
  readonly contacts: Int32Array;
}

/** How everything changes with the load: the shape of a state, but rates. */
export interface Rates extends ElasticState {
  readonly modes: Modes;
}

export type RatesOutcome =
  | { readonly outcome: 'moves'; readonly rates: Rates }
  /** Nothing stiff resists: a motion that the load drives and no spring takes up. */
  | { readonly outcome: 'free'; readonly motion: Float64Array }
  | { readonly outcome: 'not-solved' };

const MOST_TRIES = 120;

/**
 * How a state changes when the load grows by `side` (a force and a moment): springs with a force follow linearly, those
 * between a force and a gap decide by the motion itself, and sliding contacts likewise. Newton's method for a piecewise
 * linear system: the tangent stiffness for one guess of who does what gives a motion; along the way to it the point is
 * taken at which the forces do no more work, and who does what there is the next guess. For springs without dry friction
 * the work is a convex potential and this always ends (its exact minimum along a line, over and over). With dry friction
 * there may be no answer or more than one: then it may end without, or take one of them.
 *
 * @param before what the springs did until now, for a first guess
 * @param pretensions force that the members get at the same time
 */
export function solveRates(
  model: ElasticModel,
  standing: Standing,
  side: Float64Array,
  before?: Modes,
  pretensions?: readonly number[],
): RatesOutcome {
  let modes = firstGuess(standing, before);
  const motion = new Float64Array(ROWS);
  const coupled = typeof model.friction === 'object';
  const problem: RateProblem = { model, standing, side, pretensions };
  for (let attempt = 0; attempt < MOST_TRIES; attempt++) {
    const tried = tryModes(model, modes, side, pretensions);
    let direction = tried.motion;
    if (tried.free) {
      if (isFree(problem, direction)) return { outcome: 'free', motion: direction };
      direction = softenedStep(model, modes, imbalance(problem, motion).left, SOFT * 100 ** -Math.floor(attempt / 15));
    } else {
      if (largest(direction) > FAR_AWAY) return { outcome: 'free', motion: direction };
      if (isRight(problem, modes, tried)) return { outcome: 'moves', rates: { ...tried, modes } };
      direction = tried.motion.slice();
      addTo(direction, motion, -1);
    }
    const left = coupled ? imbalance(problem, motion).left : side;
    if (coupled && (inner(direction, left) <= 0 || (attempt > TRIES_COUPLED && attempt % 3 !== 0))) {
      direction = softenedStep(model, modes, left, SOFT, false);
    }
    const by = restPoint(problem, motion, direction);
    if (by === Number.POSITIVE_INFINITY) return { outcome: 'free', motion: direction };
    addTo(motion, direction, by < NO_PROGRESS ? 1 : by);
    if (largest(motion) > FAR_AWAY) return { outcome: 'free', motion };
    modes = imbalance(problem, motion).modes;
  }
  const free = unresistedMotion(model, standing, side);
  return free === undefined ? { outcome: 'not-solved' } : { outcome: 'free', motion: free };
}

/** Who has come to zero goes on through it; who has come to the edge of its friction slides; the others go on. */
function firstGuess({ members, contacts, touching }: Standing, before: Modes | undefined): Modes {
  const modes: Modes = { members: new Uint8Array(members.length), contacts: new Int32Array(contacts.length) };
  for (let index = 0; index < members.length; index++) {
    const taut = members[index] === 0 ? before?.members[index] !== 1 : members[index]! > 0;
    modes.members[index] = taut ? 1 : 0;
  }
  for (let index = 0; index < contacts.length; index++) {
    const was = before?.contacts[index] ?? OPEN;
    const pressed = contacts[index] === 0 ? was === OPEN : contacts[index]! > 0;
    const facets = touching[index]!;
    if (!pressed) modes.contacts[index] = OPEN;
    else if (facets.length === 0) modes.contacts[index] = STICKS;
    else modes.contacts[index] = slides(was) ? was : facetMode(facets[0]!);
  }
  return modes;
}

/** True when the load drives a motion and no spring resists it, not even those that it would close or tighten. */
function isFree(problem: RateProblem, motion: Float64Array): boolean {
  if (!(inner(problem.side, motion) > NO_WORK * Math.sqrt(inner(motion, motion)))) return false;
  const alone = imbalance({ ...problem, side: new Float64Array(ROWS), pretensions: undefined }, motion).left;
  return !(-inner(motion, alone) > NO_STIFFNESS * inner(motion, motion));
}

/**
 * A step where Newton's has no direction, or one that leads away: a soft spring in every direction makes a singular
 * stiffness regular, and leaving out that sliding friction grows with the normal force makes it symmetric.
 */
function softenedStep(
  model: ElasticModel,
  modes: Modes,
  left: Float64Array,
  soft: number,
  coupled = true,
): Float64Array {
  const matrix = tangentStiffness(model, modes, coupled);
  for (let i = 0; i < ROWS; i++) matrix[i * ROWS + i]! += soft;
  return solve(factorize(matrix), left) ?? left;
}

interface RateProblem {
  readonly model: ElasticModel;
  readonly standing: Standing;
  readonly side: Float64Array;
  readonly pretensions: readonly number[] | undefined;
}

/** A free motion that meets less stiffness than this, in weights and sizes, meets none. */
const NO_STIFFNESS = 1e-9;
/** A load of less than this part of the weight drives nothing. */
const NO_WORK = 1e-5;
const SOFT = 1e-2;
/** A shorter part of a step is rounding: then the whole step is taken. */
const TRIES_COUPLED = 20;
const NO_PROGRESS = 1e-10;
/** In sizes of the load: whoever moves so far while the load grows by once the weight is not held by anything. */
const FAR_AWAY = 1e4;

/**
 * How far along a direction the forces stop doing work on the load: the root of a function that falls, if all is well.
 * Infinity when they never do.
 */
function restPoint(problem: RateProblem, motion: Float64Array, direction: Float64Array): number {
  const work = (by: number): number => {
    const at = motion.slice();
    addTo(at, direction, by);
    return inner(direction, imbalance(problem, at).left);
  };
  const reach = largest(direction);
  let low = 0;
  let atLow = work(0);
  if (!(atLow > 0)) return 1;
  let high = 1;
  let atHigh = work(1);
  const enough = 1e-12 * atLow;
  while (atHigh > enough && high * reach < FAR_AWAY) {
    low = high;
    atLow = atHigh;
    high *= 4;
    atHigh = work(high);
  }
  if (atHigh > enough) return Number.POSITIVE_INFINITY;
  if (atHigh >= -enough) return high;
  // regula falsi with the Illinois rule; the function is piecewise linear, so it lands on the root soon
  for (let round = 0, side = 0; round < 60; round++) {
    const middle = (low * -atHigh + high * atLow) / (atLow - atHigh);
    const atMiddle = work(middle);
    if (Math.abs(atMiddle) <= enough) return middle;
    if (atMiddle > 0) {
      low = middle;
      atLow = atMiddle;
      if (side === 1) atHigh /= 2;
      side = 1;
    } else {
      high = middle;
      atHigh = atMiddle;
      if (side === -1) atLow /= 2;
      side = -1;
    }
  }
  return high;
}

function largest(vector: Float64Array): number {
  let most = 0;
  for (let i = 0; i < ROWS; i++) most = Math.max(most, Math.abs(vector[i]!));
  return most;
}

/**
 * True when the springs that could decide otherwise would not: the forces found are those that the motion causes. Forces
 * below `NO_RATE` and the rounding of stiffness times motion do not count.
 */
function isRight(
  { model, standing }: RateProblem,
  modes: Modes,
  { members, normals, shears, motion }: ElasticState,
): boolean {
  const rounding = ROUNDING * largest(motion);
  for (let index = 0; index < model.members.length; index++) {
    if (standing.members[index] !== 0) continue;
    const { stiffness } = model.members[index]!;
    const wrong = modes.members[index] === 1 ? -members[index]! : members[index]! - rounding * stiffness;
    if (wrong > NO_RATE) return false;
  }
  for (let index = 0; index < model.contacts.length; index++) {
    const contact = model.contacts[index]!;
    const at = standing.contacts[index]!;
    if (at < 0 || (at > 0 && standing.touching[index]!.length === 0)) continue;
    if (at === 0 && modes.contacts[index] !== OPEN && normals[index]! < -NO_RATE) return false;
    const u = motionAt(contact.directions, motion);
    const mode = contactModeOf(contact, model.polygon, at === 0 ? undefined : standing.touching[index], u);
    if (mode === modes.contacts[index]) continue;
    const d = contactStiffness(contact, model.polygon, mode);
    const found = [
      shears[2 * index]!,
      shears[2 * index + 1]!,
      modes.contacts[index] === OPEN ? 0 : normals[index]!,
    ] as const;
    for (let i = 0; i < 3; i++) {
      const caused = -(d[3 * i]! * u[0] + d[3 * i + 1]! * u[1] + d[3 * i + 2]! * u[2]);
      const stiffness = i === 2 ? contact.normalStiffness : contact.shearStiffness;
      if (Math.abs(caused - found[i]!) > NO_RATE + rounding * stiffness) return false;
    }
  }
  return true;
}

/** Force rates that balance to this part of the weight need no more correction. */
const BALANCED = 1e-14;
/** In weights. */
const NO_RATE = 1e-11;
const ROUNDING = 3e-15;

/** What a motion makes each spring do, and what is then left of the load: side + sum of force rates. */
function imbalance(
  { model, standing, side, pretensions }: RateProblem,
  motion: Float64Array,
): { left: Float64Array; modes: Modes } {
  const left = side.slice();
  const members = new Uint8Array(model.members.length);
  const contacts = new Int32Array(model.contacts.length);
  for (const [index, { direction, stiffness }] of model.members.entries()) {
    const rate = (pretensions?.[index] ?? 0) - stiffness * inner(direction, motion);
    const at = standing.members[index]!;
    if (at < 0 || (at === 0 && rate <= 0)) continue;
    members[index] = 1;
    addTo(left, direction, rate);
  }
  for (const [index, contact] of model.contacts.entries()) {
    const at = standing.contacts[index]!;
    const u = motionAt(contact.directions, motion);
    const touching = at === 0 ? undefined : standing.touching[index];
    const mode = at < 0 ? OPEN : contactModeOf(contact, model.polygon, touching, u);
    contacts[index] = mode;
    const d = contactStiffness(contact, model.polygon, mode);
    for (let i = 0; i < 3; i++) {
      const rate = -(d[3 * i]! * u[0] + d[3 * i + 1]! * u[1] + d[3 * i + 2]! * u[2]);
      if (rate !== 0) addTo(left, contact.directions[i]!, rate);
    }
  }
  return { left, modes: { members, contacts } };
}

/** The rates if the modes are right; `free` when these modes leave the load without support, then only the motion counts. */
function tryModes(
  model: ElasticModel,
  modes: Modes,
  side: Float64Array,
  pretensions?: readonly number[],
): ElasticState & { free: boolean } {
  const factors = factorize(tangentStiffness(model, modes));
  const motion = new Float64Array(ROWS);
  const members = pretensions === undefined ? new Float64Array(model.members.length) : new Float64Array(pretensions);
  const normals = new Float64Array(model.contacts.length);
  const shears = new Float64Array(2 * model.contacts.length);
  const left = new Float64Array(ROWS);
  // each round corrects the one before by what it leaves over, so that the forces balance whatever the stiffness
  for (let round = 0; round < 3; round++) {
    left.set(side);
    if (round > 0 || pretensions !== undefined) addForces(left, model, modes, { members, normals, shears });
    if (round > 0 && largest(left) < BALANCED) break;
    const correction = solve(factors, left, round > 0); // after the first round a contradiction is rounding
    if (correction === undefined) {
      return { members, normals, shears, motion: freePart(factors, left), free: true };
    }
    addTo(motion, correction, 1);
    for (let index = 0; index < members.length; index++) {
      const { direction, stiffness } = model.members[index]!;
      members[index]! -= stiffness * inner(direction, correction);
    }
    for (let index = 0; index < normals.length; index++) {
      const contact = model.contacts[index]!;
      normals[index]! -= contact.normalStiffness * inner(contact.directions[2], correction);
      if (contact.shearStiffness === 0) continue;
      if (modes.contacts[index] === STICKS) {
        shears[2 * index]! -= contact.shearStiffness * inner(contact.directions[0], correction);
        shears[2 * index + 1]! -= contact.shearStiffness * inner(contact.directions[1], correction);
        continue;
      }
      const u = motionAt(contact.directions, correction);
      const d = contactStiffness(contact, model.polygon, modes.contacts[index]!);
      shears[2 * index]! -= d[0]! * u[0] + d[1]! * u[1] + d[2]! * u[2];
      shears[2 * index + 1]! -= d[3]! * u[0] + d[4]! * u[1] + d[5]! * u[2];
    }
  }
  return { members, normals, shears, motion, free: false };
}

/** Adds what the springs do to the load. */
function addForces(
  left: Float64Array,
  model: ElasticModel,
  modes: Modes,
  { members, normals, shears }: Pick<ElasticState, 'members' | 'normals' | 'shears'>,
): void {
  for (let index = 0; index < members.length; index++) {
    if (modes.members[index] === 1) addTo(left, model.members[index]!.direction, members[index]!);
  }
  for (let index = 0; index < normals.length; index++) {
    const [x, y, z] = model.contacts[index]!.directions;
    if (shears[2 * index] !== 0) addTo(left, x, shears[2 * index]!);
    if (shears[2 * index + 1] !== 0) addTo(left, y, shears[2 * index + 1]!);
    if (modes.contacts[index] !== OPEN) addTo(left, z, normals[index]!);
  }
}

const motionAt = (directions: readonly Float64Array[], motion: Float64Array): ContactRate => [
  inner(directions[0]!, motion),
  inner(directions[1]!, motion),
  inner(directions[2]!, motion),
];

/** K = sum of k g g^T over taut members + sum over contacts of D_ij g_i g_j^T. */
function tangentStiffness({ members, contacts, polygon }: ElasticModel, modes: Modes, coupled = true): Float64Array {
  const matrix = new Float64Array(ROWS * ROWS);
  for (let index = 0; index < members.length; index++) {
    if (modes.members[index] === 1) addMatrix(matrix, members[index]!.matrix);
  }
  for (let index = 0; index < contacts.length; index++) {
    const contact = contacts[index]!;
    if (modes.contacts[index] === STICKS) {
      addMatrix(matrix, contact.matrix);
      continue;
    }
    if (modes.contacts[index] === OPEN && contact.shearStiffness === 0) continue;
    const d = contactStiffness(contact, polygon, modes.contacts[index]!);
    for (let i = 0; i < 3; i++) {
      for (let j = 0; j < 3; j++) {
        const entry = d[3 * i + j]!;
        if (entry === 0 || (!coupled && i < 2 !== j < 2)) continue;
        addProduct(matrix, contact.directions[i]!, contact.directions[j]!, entry);
      }
    }
  }
  return matrix;
}

function addMatrix(sum: Float64Array, matrix: Float64Array): void {
  for (let i = 0; i < sum.length; i++) sum[i]! += matrix[i]!;
}
