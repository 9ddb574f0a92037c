import { type Forces, GREATEST_RESIDUAL, residualOf } from '../residual.js';
import { type Coulomb, checkCoulomb, checkLoad, checkLoading, type Loading, type RigidLoad } from '../rigid-load.js';
import { lengthOf } from '../vector.js';
import {
  type Balance,
  balanceAtRest,
  contactForcesOf,
  type LimitProgram,
  makeLimitProgram,
  setLoading,
  tensionOf,
} from './limit-program.js';
import { AT_LOWER, amountOf, type Basis, copyBasis, maximize } from './simplex.js';

export interface LimitOptions {
  /** `'none'` leaves friction out; else how much of it counts, and the polygon that stands for its circle. */
  readonly friction: 'none' | Coulomb;
}

/**
 * The greatest factor and forces that balance it; others may do so too. How the load starts to move there is what
 * `collapseMechanism` finds.
 */
export interface Limited extends Forces {
  readonly outcome: 'limited';
  readonly factor: number;
  /** Ids of the members at their capacity, to 1e-9 of it. */
  readonly governing: readonly string[];
  /** See {@link residualOf}; at most 1e-9. */
  readonly residual: number;
}

export type LimitOutcome =
  | Limited
  /** No factor is too great: under this loading the load never gives way. */
  | { readonly outcome: 'unbounded' }
  /** Not even the steady load alone, factor 0, can be balanced. */
  | { readonly outcome: 'impossible' }
  /** Rounding won: no answer rather than a wrong one. */
  | { readonly outcome: 'not-solved' };

/** One loading: with all members, and with each of them gone in turn. */
export interface LimitWithOneOut {
  readonly intact: LimitOutcome;
  /** In the order of the members; the member that is gone keeps its place among the tensions, with 0. */
  readonly without: readonly LimitOutcome[];
}

/**
 * The greatest factor at which a load can still be balanced (limit analysis, lower-bound theorem; from memory):
 *
 *     maximize f >= 0   subject to
 *     sum T_i u_i + sum F_k + W (steady + f varying) = 0               three equations of force
 *     sum a_i x T_i u_i + sum c_k x F_k = 0                            three of moment, about the center of gravity
 *     0 <= T_i <= capacity_i,   F_k inside the friction pyramid of contact k: N_k >= 0, friction in N_k mu_k * polygon
 *
 * with u_i from attachment to anchor, a_i and c_k the arms. A linear program, solved exactly but for rounding.
 *
 * What the answer means. A balance is necessary for holding, not sufficient. The problem shares the load among the
 * members in the most favorable way, as members do that yield at their capacity without breaking; chain hardly yields,
 * and a short stiff one breaks before a long one has taken its part (see elasticResponse). Pretension plays no role in
 * it, because a self-balanced state of stress can always be added or left out. Friction that slides is not associated
 * (the load does not rise as it slides), and then the factor is an upper bound of the true one: a real load with dry
 * friction may give way below it, and above it only by what the polygon leaves out. Without friction the bound is exact for
 * yielding members. The polygon
 * lies inside the circle of friction, which is the safe side.
 *
 * @param load weight in N, points in m, capacities in N
 * @param loading multiples of standard gravity, in the direction of the force on the load
 * @param options.friction `'none'`, or `{ multiplier, coneSides }`
 * @returns data, whatever the outcome: `limited`, `unbounded`, `impossible` or `not-solved`
 * @throws NOT_POSITIVE, NOT_FINITE, NEGATIVE, IMPOSSIBLE_GEOMETRY, UNKNOWN_VALUE
 * @validity small: up to some hundred members and contacts; rigid load, straight members that only pull
 * @source limit theorems of plasticity as in textbooks on limit analysis (from memory)
 *
 * For example:
 *
 * const block = { weight: 1000, centerOfGravity: [0, 0, 0.1], members: [], contacts: [
 *   { id: 'a', at: [1, 1, 0], friction: 0.4 }, { id: 'b', at: [1, -1, 0], friction: 0.4 },
 *   { id: 'c', at: [-1, 1, 0], friction: 0.4 }, { id: 'd', at: [-1, -1, 0], friction: 0.4 } ] };
 * const braking = { steady: [0, 0, -1], varying: [1, 0, 0] };
 * limitFactor(block, braking, { friction: { multiplier: 1, coneSides: 16 } }).factor
 * // => 0.4
 */
export function limitFactor(load: RigidLoad, loading: Loading, options: LimitOptions): LimitOutcome {
  return limitFactors(load, [loading], options)[0]!;
}

/**
 * {@link limitFactor} for several loadings of one load. The columns of the program are assembled once, and loadings
 * with the same steady part start from the same balance at rest.
 *
 * @throws as {@link limitFactor}
 */
export function limitFactors(load: RigidLoad, loadings: readonly Loading[], options: LimitOptions): LimitOutcome[] {
  return limitFactorsOneOut(load, loadings, options, false).map(({ intact }) => intact);
}

/**
 * {@link limitFactor} for several loadings of one load, and again with each member gone, for the question what happens
 * when one lets go. A member that carries nothing in the balance found is not missed, provided that the load stands
 * without it: then the outcome without it is the outcome with it.
 *
 * @throws as {@link limitFactor}
 */
export function limitFactorsOneOut(
  load: RigidLoad,
  loadings: readonly Loading[],
  options: LimitOptions,
  oneOut = true,
): LimitWithOneOut[] {
  checkLoad(load);
  for (const loading of loadings) checkLoading(loading);
  if (options.friction !== 'none') checkCoulomb(options.friction);
  const program = makeLimitProgram(load, options.friction);
  let steady: Loading['steady'] | undefined;
  let rest: Balance | undefined;
  return loadings.map((loading) => {
    setLoading(program, loading);
    if (rest === undefined || steady?.some((part, axis) => part !== loading.steady[axis])) {
      rest = balanceAtRest(program);
      steady = loading.steady;
    }
    const intact = solve(program, loading, rest);
    const without = oneOut
      ? load.members.map((_, member) => solveWithout(program, loading, rest!, intact, member))
      : [];
    return { intact: intact.outcome, without };
  });
}

interface Solved {
  readonly outcome: LimitOutcome;
  /** Of the outcome, where it is `limited`. */
  readonly basis?: Basis;
}

/** From a balance at rest to the greatest factor. */
function solve(program: LimitProgram, loading: Loading, rest: Balance): Solved {
  if (rest === 'infeasible') return { outcome: { outcome: 'impossible' } };
  if (rest === 'not-solved') return { outcome: { outcome: 'not-solved' } };
  if (lengthOf(loading.varying) === 0) return { outcome: { outcome: 'unbounded' } };
  const basis = copyBasis(rest);
  const end = maximize(program, basis, program.factor);
  if (end === 'unbounded') return { outcome: { outcome: 'unbounded' } };
  if (end !== 'optimal') return { outcome: { outcome: 'not-solved' } };
  return { outcome: read(program, loading, basis), basis };
}

function solveWithout(
  program: LimitProgram,
  loading: Loading,
  rest: Balance,
  intact: Solved,
  member: number,
): LimitOutcome {
  const column = program.firstMember + member;
  const stands = typeof rest === 'object' && amountOf(program, rest, column) === 0;
  const capacity = program.upper[column]!;
  program.upper[column] = 0;
  const restWithout = stands ? rest : balanceAtRest(program);
  // a balance that does not use the member is the best one without it too, provided that the load stands without it
  const unused = typeof restWithout === 'object' && intact.basis?.place[column] === AT_LOWER;
  const outcome = unused ? intact.outcome : solve(program, loading, restWithout).outcome;
  program.upper[column] = capacity;
  return outcome;
}

/** Turns a basis into forces, and hands them out only when they balance. */
function read(program: LimitProgram, loading: Loading, basis: Basis): LimitOutcome {
  const { load } = program;
  const factor = amountOf(program, basis, program.factor) / lengthOf(loading.varying);
  const tensions = load.members.map((_, member) => tensionOf(program, basis, member));
  const contactForces = contactForcesOf(program, basis);
  const residual = residualOf(load, loading, factor, { tensions, contactForces });
  if (!(residual <= GREATEST_RESIDUAL && Number.isFinite(factor))) return { outcome: 'not-solved' };
  const governing = load.members.flatMap(({ id, capacity }, member) =>
    tensions[member]! >= capacity * (1 - 1e-9) ? [id] : [],
  );
  return {
    outcome: 'limited',
    factor,
    tensions,
    contactForces,
    governing,
    residual,
  };
}
