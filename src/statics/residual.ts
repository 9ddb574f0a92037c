import type { Loading, RigidLoad } from './rigid-load.js';
import type { Vec3 } from './vector.js';

/** The forces that are said to balance: one tension a member, one force a contact, in the order of the load's lists. */
export interface Forces {
  readonly tensions: readonly number[];
  /** On the load: friction in x and y, the normal force in z. N. */
  readonly contactForces: readonly Vec3[];
}

/** No equilibrium is handed out that misses by more than this part of the weight. */
export const GREATEST_RESIDUAL = 1e-9;

/**
 * By how much the forces on a load miss equilibrium, as part of its weight: the greatest component of
 *
 *     sum of forces / W,   sum of moments about G / (W l),   sum of moments about P / (W l)
 *
 * where W is the weight, G the center of gravity, l the greatest distance of a point of the load from G, and P = G +
 * (l, l, l). It is written from points and forces alone and shares nothing with the solvers, so that a fault in their
 * equations shows here.
 */
export function residualOf(load: RigidLoad, loading: Loading, factor: number, forces: Forces): number {
  const { weight, centerOfGravity: g } = load;
  const left = new Float64Array(6); // force, and moment about G
  let reach = 0;
  const put = (at: Vec3, x: number, y: number, z: number) => {
    const a = at[0] - g[0];
    const b = at[1] - g[1];
    const c = at[2] - g[2];
    reach = Math.max(reach, Math.hypot(a, b, c));
    left[0]! += x;
    left[1]! += y;
    left[2]! += z;
    left[3]! += b * z - c * y;
    left[4]! += c * x - a * z;
    left[5]! += a * y - b * x;
  };
  const { steady, varying } = loading;
  put(
    g,
    weight * (steady[0] + factor * varying[0]),
    weight * (steady[1] + factor * varying[1]),
    weight * (steady[2] + factor * varying[2]),
  );
  for (const { at, force } of load.pushes ?? []) put(at, force[0], force[1], force[2]);
  for (let index = 0; index < load.contacts.length; index++) {
    const force = forces.contactForces[index]!;
    put(load.contacts[index]!.at, force[0], force[1], force[2]);
  }
  for (let index = 0; index < load.members.length; index++) {
    const { anchor, attachment } = load.members[index]!;
    const x = anchor[0] - attachment[0];
    const y = anchor[1] - attachment[1];
    const z = anchor[2] - attachment[2];
    const pull = forces.tensions[index]! / Math.hypot(x, y, z);
    put(attachment, pull * x, pull * y, pull * z);
  }
  if (reach === 0) reach = 1;
  const [fx, fy, fz, mx, my, mz] = left as unknown as [number, number, number, number, number, number];
  // moment about P = moment about G - (P - G) x force
  const about = [mx - reach * (fz - fy), my - reach * (fx - fz), mz - reach * (fy - fx)];
  let most = 0;
  for (const force of [fx, fy, fz]) most = Math.max(most, Math.abs(force));
  for (const moment of [mx, my, mz, ...about]) most = Math.max(most, Math.abs(moment) / reach);
  return Number.isNaN(left.reduce((sum, value) => sum + value, 0)) ? Number.NaN : most / weight;
}
