import { GREATEST_RESIDUAL, residualOf } from './residual.js';
import { add, cross, dot, lengthOf, scale, subtract, type Vec3 } from './vector.js';

// One rigid load that hangs from one hook by straight legs of given lengths. Plain SI numbers: newtons, meters.
// Points are in the axes of the load as it stands, z up.

/** One leg of a sling, from the hook to a pick point. */
export interface HangingLeg {
  /** The pick point on the load. */
  readonly at: Vec3;
  /** m */
  readonly length: number;
  /** E A: the force that would stretch it by its own length, N. Only the sharing of more than three legs needs it. */
  readonly axialStiffness?: number;
}

export interface HangingLoad {
  /** N */
  readonly weight: number;
  readonly centerOfGravity: Vec3;
  /** At least one; no two at one point. */
  readonly legs: readonly HangingLeg[];
}

/** The load at rest, seen from the load: it is the hook that has moved. */
export interface Rest {
  readonly outcome: 'rests';
  readonly hook: Vec3;
  /** The true vertical, a unit vector from the center of gravity toward the hook. */
  readonly up: Vec3;
  /** By how much each leg is longer than the way from its pick point to the hook, m; 0 for a taut one. */
  readonly gaps: readonly number[];
}

export type HangingOutcome =
  | Rest
  /** It would hang upside down only: the center of gravity is not below the picks that carry it. */
  | { readonly outcome: 'rolls-over' }
  /** No hook is within the reach of every leg. */
  | { readonly outcome: 'does-not-close' };

/** Points closer than this part of the longest leg count as one. */
const SAME_POINT = 1e-9;
/** Three directions with a smaller triple product lie in a plane. */
const IN_ONE_PLANE = 1e-9;

/**
 * Where a load comes to rest under a hook. The load turns freely about the hook, so at rest its center of gravity G
 * hangs straight below the hook h, at the distance |h - G|, and as deep as the legs let it:
 *
 *     maximize |h - G|   subject to   |h - P_i| <= S_i
 *
 * At such a place the taut legs, at most three of them needed, hold the load by tensions that are not negative,
 * sum T_i u_i = W (h - G) / |h - G|. Every set of one, two or three legs has at most two places in question, all in
 * closed form; those within the reach of the other legs and held by tension are the places of rest. The one that tilts
 * the load least is taken, because a load is lifted from where it stands. Less than a quarter turn counts as upright.
 */
export function hang({ centerOfGravity: g, legs }: HangingLoad): HangingOutcome {
  const near = SAME_POINT * Math.max(...legs.map(({ length }) => length));
  let closes = false;
  let best: Rest | undefined;
  for (const set of setsOfLegs(legs.length)) {
    const taut = set.map((index) => legs[index]!);
    const hooks = hooksOf(taut, g, near);
    if (hooks === 'any') closes ||= taut.length === legs.length;
    for (const hook of hooks === 'any' ? [] : hooks) {
      const gaps = legs.map(({ at, length }, index) => {
        const gap = length - lengthOf(subtract(hook, at));
        return set.includes(index) || Math.abs(gap) <= near ? 0 : gap;
      });
      if (gaps.some((gap) => gap < 0)) continue;
      closes = true;
      const depth = subtract(hook, g);
      const up = scale(depth, 1 / lengthOf(depth));
      const pulls = set.map((index) => directionTo(hook, legs[index]!.at));
      if (up[2] > SAME_POINT && up[2] > (best?.up[2] ?? 0) && balanceOf(pulls, up) !== undefined) {
        best = { outcome: 'rests', hook, up, gaps };
      }
    }
  }
  return best ?? { outcome: closes ? 'rolls-over' : 'does-not-close' };
}

/** Every set of one, two or three of so many legs. */
function setsOfLegs(count: number): number[][] {
  const sets: number[][] = [];
  for (let a = 0; a < count; a++) {
    sets.push([a]);
    for (let b = a + 1; b < count; b++) {
      sets.push([a, b]);
      for (let c = b + 1; c < count; c++) sets.push([a, b, c]);
    }
  }
  return sets;
}

/**
 * The hooks at which legs, all of them taut, may hold a load: those at which |h - G| is greatest. `any` where the center
 * of gravity lies in the pick or on the line of two, so that it rests anyhow and is held in no place.
 */
function hooksOf(legs: readonly HangingLeg[], g: Vec3, near: number): Vec3[] | 'any' {
  const [first, second, third] = legs as [HangingLeg, HangingLeg?, HangingLeg?];
  if (second === undefined) {
    const away = subtract(first.at, g);
    const distance = lengthOf(away);
    return distance <= near ? 'any' : [add(first.at, scale(away, first.length / distance))];
  }
  // in the plane of two picks and the hook: x along the picks, r off their line
  const between = subtract(second.at, first.at);
  const spread = lengthOf(between);
  const along = scale(between, 1 / spread);
  const x = (spread ** 2 + first.length ** 2 - second.length ** 2) / (2 * spread);
  const foot = add(first.at, scale(along, x));
  const square = first.length ** 2 - x ** 2;
  if (!(square > near ** 2)) return [];
  const r = Math.sqrt(square);
  if (third === undefined) {
    const off = subtract(foot, g);
    const away = subtract(off, scale(along, dot(off, along)));
    const distance = lengthOf(away);
    return distance <= near ? 'any' : [add(foot, scale(away, r / distance))];
  }
  const toThird = subtract(third.at, foot);
  const forward = dot(toThird, along);
  const sideways = subtract(toThird, scale(along, forward));
  const width = lengthOf(sideways);
  if (width <= near) return []; // three picks on one line
  const across = scale(sideways, 1 / width);
  const y = (r ** 2 + width ** 2 + forward ** 2 - third.length ** 2) / (2 * width);
  const rest = r ** 2 - y ** 2;
  if (!(rest > near ** 2)) return [];
  const middle = add(foot, scale(across, y));
  const normal = scale(cross(along, across), Math.sqrt(rest));
  return [add(middle, normal), subtract(middle, normal)];
}

/** How the legs carry the load at rest, N, in the order of the legs. */
export interface Sharing {
  /**
   * Between rigid legs and a rigid load: the greatest tension that each leg may have to carry. Where more legs are
   * taut than balance needs, a hair of length decides which of them carry, so each may find itself in the worst place.
   */
  readonly greatest: readonly number[];
  /** Between legs that stretch, T = (E A / S) · stretch; undefined where a stiffness that decides is missing. */
  readonly elastic: readonly number[] | undefined;
  /** True where balance alone says what every leg carries: then both answers are the same. */
  readonly determinate: boolean;
  /** By how much the answers miss equilibrium, as part of the weight. */
  readonly residual: number;
}

/**
 * How the legs share. A leg with a gap up to its allowance may come taut: its length is not known better than that.
 *
 * Rigid: every set of legs that balances the load by itself is a state that may occur; the greatest tension of each leg
 * over them. Elastic: leg i is a spring of k = E A / S from the resting place on, and the load, small against the legs,
 * sinks by d: T_i = k_i max(0, u_i · d - gap_i) with sum T_i u_i = W up. Equal stiffness E A is taken where none is
 * stated and every leg is taut, since then only its ratio counts.
 */
export function shareLoad({ weight, centerOfGravity, legs }: HangingLoad, rest: Rest, allowance: number): Sharing {
  const { hook, up, gaps } = rest;
  const pulls = legs.map(({ at }) => directionTo(hook, at));
  const able = legs.map((_, index) => index).filter((index) => gaps[index]! <= allowance);
  const states: number[][] = [];
  for (const set of setsOfLegs(able.length)) {
    const those = set.map((place) => able[place]!);
    const shares = balanceOf(
      those.map((index) => pulls[index]!),
      up,
    );
    if (shares === undefined) continue;
    states.push(legs.map((_, index) => weight * Math.max(0, shares[those.indexOf(index)] ?? 0)));
  }
  const greatest = legs.map((_, index) => Math.max(...states.map((tensions) => tensions[index]!)));
  const least = legs.map((_, index) => Math.min(...states.map((tensions) => tensions[index]!)));
  const determinate = greatest.every((tension, index) => tension - least[index]! <= GREATEST_RESIDUAL * weight);
  const elastic = determinate ? greatest : stretch(weight, legs, pulls, rest);
  const members = legs.map(({ at }, index) => ({ id: `${index}`, anchor: hook, attachment: at, capacity: 0 }));
  const load = { weight, centerOfGravity, contacts: [], members };
  const loading = { steady: scale(up, -1), varying: [0, 0, 0] as const };
  const residual = Math.max(
    ...[...states, ...(elastic === undefined ? [] : [elastic])].map((tensions) =>
      residualOf(load, loading, 0, { tensions, contactForces: [] }),
    ),
  );
  return { greatest, elastic, determinate, residual };
}

/** Direct stiffness, for every set of legs that may be the taut ones: there is one whose stretches say so too. */
function stretch(
  weight: number,
  legs: readonly HangingLeg[],
  pulls: readonly Vec3[],
  { up, gaps }: Rest,
): number[] | undefined {
  const stated = legs.every(({ axialStiffness }) => axialStiffness !== undefined);
  if (!stated && (gaps.some((gap) => gap > 0) || legs.some(({ axialStiffness }) => axialStiffness !== undefined))) {
    return undefined;
  }
  const reach = Math.max(...legs.map(({ length }) => length));
  // in units of the weight and of the stiffest k, so that the equations are near one
  const rates = legs.map(({ axialStiffness = weight, length }) => axialStiffness / length);
  const stiffest = Math.max(...rates);
  const k = rates.map((rate) => rate / stiffest);
  const slack = gaps.map((gap) => (gap * stiffest) / weight);
  for (let taut = (1 << legs.length) - 1; taut > 0; taut--) {
    const isTaut = (index: number) => (taut >> index) % 2 === 1;
    const columns: [Vec3, Vec3, Vec3] = [ZERO, ZERO, ZERO];
    let side = up;
    for (let index = 0; index < legs.length; index++) {
      if (!isTaut(index)) continue;
      const u = pulls[index]!;
      for (let axis = 0; axis < 3; axis++) columns[axis] = add(columns[axis]!, scale(u, k[index]! * u[axis]!));
      side = add(side, scale(u, k[index]! * slack[index]!));
    }
    const d =
      solve3(columns, side) ??
      inPlane(
        columns,
        side,
        pulls.filter((_, index) => isTaut(index)),
      );
    if (d === undefined) continue;
    const stretches = pulls.map((u, index) => dot(u, d) - slack[index]!);
    const fits = stretches.every((by, index) => (isTaut(index) ? by >= -ROUNDING * reach : by <= ROUNDING * reach));
    if (fits) return stretches.map((by, index) => (isTaut(index) ? weight * k[index]! * Math.max(0, by) : 0));
  }
  return undefined;
}

const ROUNDING = 1e-12;
const ZERO: Vec3 = [0, 0, 0];

/** Legs in one plane leave the way across it free: holding it there changes nothing, since nothing pulls across. */
function inPlane(columns: [Vec3, Vec3, Vec3], side: Vec3, pulls: readonly Vec3[]): Vec3 | undefined {
  const [u, ...others] = pulls as [Vec3, ...Vec3[]];
  const normals = others.map((other) => cross(u, other)).sort((a, b) => lengthOf(b) - lengthOf(a));
  const normal = normals[0];
  if (normal === undefined || lengthOf(normal) < SAME_POINT) return undefined;
  const n = scale(normal, 1 / lengthOf(normal));
  if (Math.abs(dot(n, side)) > SAME_POINT) return undefined;
  return solve3([0, 1, 2].map((axis) => add(columns[axis]!, scale(n, n[axis]!))) as [Vec3, Vec3, Vec3], side);
}

const directionTo = (hook: Vec3, at: Vec3): Vec3 => {
  const way = subtract(hook, at);
  return scale(way, 1 / lengthOf(way));
};

/** Tensions along one, two or three directions that add up to the unit vector `up`; undefined where they do not, or would push. */
export function balanceOf(pulls: readonly Vec3[], up: Vec3): number[] | undefined {
  const [a, b, c] = pulls as [Vec3, Vec3?, Vec3?];
  let tensions: readonly number[];
  if (b === undefined) tensions = [dot(a, up)];
  else {
    const normal = cross(a, b);
    const area = dot(normal, normal);
    if (area < IN_ONE_PLANE ** 2) return undefined;
    if (c === undefined) tensions = [dot(cross(up, b), normal) / area, dot(cross(a, up), normal) / area];
    else {
      if (Math.abs(dot(normal, c)) < IN_ONE_PLANE) return undefined;
      tensions = solve3([a, b, c], up) ?? [];
    }
  }
  const left = pulls.reduce<Vec3>((rest, pull, index) => subtract(rest, scale(pull, tensions[index]!)), up);
  const holds = lengthOf(left) <= GREATEST_RESIDUAL && tensions.every((tension) => tension >= -GREATEST_RESIDUAL);
  return holds ? [...tensions] : undefined;
}

/** x with columns · x = side, by Cramer's rule; undefined where the columns lie in a plane. */
function solve3([a, b, c]: [Vec3, Vec3, Vec3], side: Vec3): Vec3 | undefined {
  const volume = dot(a, cross(b, c));
  if (Math.abs(volume) < IN_ONE_PLANE * lengthOf(a) * lengthOf(b) * lengthOf(c) || volume === 0) return undefined;
  return [dot(side, cross(b, c)) / volume, dot(a, cross(side, c)) / volume, dot(a, cross(b, side)) / volume];
}
