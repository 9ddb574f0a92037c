import { fail } from '../../errors.js';
import type { Twist } from '../mechanism.js';
import { type Forces, GREATEST_RESIDUAL, residualOf } from '../residual.js';
import { checkLoading, type Loading } from '../rigid-load.js';
import { OPEN, slides } from './contact-law.js';
import {
  type ElasticFriction,
  type ElasticLoad,
  type ElasticModel,
  forcesOf,
  makeElasticModel,
  mechanismOf,
  twistOf,
} from './elastic-model.js';
import { followPath, type PathEnd, type Rest, settle } from './elastic-path.js';

export interface ElasticOptions {
  readonly friction: ElasticFriction;
}

/** Where the load comes to rest, and what bears what there. */
export interface ElasticEquilibrium extends Forces {
  readonly outcome: 'equilibrium';
  /** How the load has moved since rest: of the center of gravity in m, about the axes in rad. */
  readonly displacement: Twist;
  readonly members: readonly ('taut' | 'slack')[];
  /** A pressed contact without friction slides. */
  readonly contacts: readonly ('sticks' | 'slides' | 'lifted')[];
  /** See {@link residualOf}; at most 1e-9. */
  readonly residual: number;
}

export type ElasticOutcome =
  | ElasticEquilibrium
  /** At this factor, at most the one asked for, no stiffness is left against the motion given: the load gives way. */
  | { readonly outcome: 'gives-way'; readonly factor: number; readonly mechanism: Twist }
  /** The steady load alone finds no rest; it moves so. */
  | { readonly outcome: 'impossible'; readonly mechanism: Twist }
  /** No answer rather than a wrong one. */
  | { readonly outcome: 'not-solved' };

/**
 * How the members really share: a rigid load on springs that only pull and contacts that only push, displacements small
 * (direct stiffness method, followed from event to event; from memory). A short, stiff, well-aligned member loads first.
 *
 *     T = max(0, pretension + k e),  e its lengthening since assembly;   N = max(0, k d),  d the indentation
 *     sum T u + sum F + W (steady + factor varying) = 0, and the moments likewise
 *
 * At assembly nothing has moved and nothing bears; steady load and pretensions then come on together, and the load settles
 * to rest. So pretension is what a member carries before the load settles on its contacts: on rigid contacts nearly all
 * of it stays, on soft ones the settling takes some away. Displacements count from rest.
 *
 * Friction: `'none'` and `'sticking'` have one answer, the least potential energy. With {@link Coulomb} friction a contact
 * sticks until its friction reaches the polygon, then slides along it, and may stick again; the answer depends on the
 * path, which is taken to be: settle, then grow steadily from factor 0. Such a problem may have several answers or none
 * (friction that wedges); one that is found balances and obeys the law along the whole path, and where none is found the
 * outcome is `not-solved`. Rigid contacts are very stiff ones, see `RIGID`.
 *
 * Capacity plays no part: a member may be loaded beyond it. A motion of more than 10,000 sizes of the load for one more
 * weight counts as no stiffness at all.
 *
 * @param load weight in N, points in m, pretensions in N, stiffness in N/m for every member
 * @param loading multiples of standard gravity, in the direction of the force on the load
 * @param factor of the varying load, zero or more
 * @param options.friction `'none'`, `'sticking'` or `{ multiplier, coneSides }`
 * @returns data, whatever the outcome: `equilibrium`, `gives-way`, `impossible` or `not-solved`
 * @throws NOT_POSITIVE, NOT_FINITE, NEGATIVE, IMPOSSIBLE_GEOMETRY, UNKNOWN_VALUE, MISSING_FIELD
 * @validity small displacements: the geometry does not change; members straight, linear, without mass
 * @source direct stiffness method and elastic-plastic friction as in textbooks (from memory)
 *
 * For example:
 *
 * // two chains pull a load rearward side by side, one twice as stiff: it takes two thirds
 * const load = { weight: 1000, centerOfGravity: [0, 0, 0.5], contacts: [
 *   { id: 'a', at: [1, 1, 0], friction: 0 }, { id: 'b', at: [1, -1, 0], friction: 0 },
 *   { id: 'c', at: [-1, 1, 0], friction: 0 }, { id: 'd', at: [-1, -1, 0], friction: 0 } ], members: [
 *   { id: 'long', anchor: [-4, 0, 0.5], attachment: [0, 0, 0.5], capacity: 5000, stiffness: 1e6 },
 *   { id: 'short', anchor: [-2, 0, 0.5], attachment: [0, 0, 0.5], capacity: 5000, stiffness: 2e6 } ] };
 * elasticResponse(load, { steady: [0, 0, -1], varying: [1, 0, 0] }, 0.6, { friction: 'none' }).tensions
 * // => [200, 400]
 */
export function elasticResponse(
  load: ElasticLoad,
  loading: Loading,
  factor: number,
  options: ElasticOptions,
): ElasticOutcome {
  return elasticResponses(load, [loading], factor, options)[0]!;
}

/**
 * {@link elasticResponse} to several loadings of one load at one factor. Loadings with the same steady part start from the
 * same rest.
 *
 * @throws as {@link elasticResponse}
 */
export function elasticResponses(
  load: ElasticLoad,
  loadings: readonly Loading[],
  factor: number,
  { friction }: ElasticOptions,
): ElasticOutcome[] {
  if (!Number.isFinite(factor)) fail('NOT_FINITE', 'factor', 'a finite number', factor, 'Say how far the load grows.');
  if (factor < 0) fail('NEGATIVE', 'factor', 'zero or more', factor, 'Turn the varying load round instead.');
  for (const loading of loadings) checkLoading(loading);
  const model = makeElasticModel(load, friction);
  let steady: Loading['steady'] | undefined;
  let rest: Rest | undefined;
  return loadings.map((loading) => {
    if (rest === undefined || steady?.some((part, axis) => part !== loading.steady[axis])) {
      rest = settle(model, loading);
      steady = loading.steady;
    }
    return read(model, loading, factor, followPath(model, rest, loading, factor));
  });
}

/** Turns the end of a path into forces, and hands them out only when they balance. */
function read(model: ElasticModel, loading: Loading, factor: number, end: PathEnd): ElasticOutcome {
  const { load } = model;
  if (end.outcome === 'not-solved') return end;
  if (end.outcome === 'impossible') {
    return { outcome: 'impossible', mechanism: mechanismOf(model, end.motion, loading.steady) };
  }
  if (end.outcome === 'gives-way') {
    return { outcome: 'gives-way', factor: end.factor, mechanism: mechanismOf(model, end.motion, loading.varying) };
  }
  const forces = forcesOf(model, end.state);
  const residual = residualOf(load, loading, factor, forces);
  if (!(residual <= GREATEST_RESIDUAL)) return { outcome: 'not-solved' };
  return {
    outcome: 'equilibrium',
    ...forces,
    displacement: twistOf(model, end.state.motion),
    members: load.members.map((_, index) => (end.state.members[index]! > 0 ? 'taut' : 'slack')),
    contacts: load.contacts.map((_, index) => {
      if (!(end.state.normals[index]! > 0) || end.contacts[index] === OPEN) return 'lifted';
      return slides(end.contacts[index]!) || model.contacts[index]!.shearStiffness === 0 ? 'slides' : 'sticks';
    }),
    residual,
  };
}
