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
  const points: Vec3[] = [g];
  const pushes: Vec3[] = [
    [0, 1, 2].map((axis) => weight * (loading.steady[axis]! + factor * loading.varying[axis]!)) as unknown as Vec3,
  ];
  for (const { at, force } of load.pushes ?? []) {
    points.push(at);
    pushes.push(force);
  }
  load.contacts.forEach(({ at }, index) => {
    points.push(at);
    pushes.push(forces.contactForces[index]!);
  });
  load.members.forEach(({ anchor, attachment }, index) => {
    const [x, y, z] = [anchor[0] - attachment[0], anchor[1] - attachment[1], anchor[2] - attachment[2]];
    const pull = forces.tensions[index]! / Math.hypot(x, y, z);
    points.push(attachment);
    pushes.push([pull * x, pull * y, pull * z]);
  });

  const reach = Math.max(...points.map(([x, y, z]) => Math.hypot(x - g[0], y - g[1], z - g[2]))) || 1;
  const corner: Vec3 = [g[0] + reach, g[1] + reach, g[2] + reach];
  const misses = [
    sum(pushes.map(([x]) => x)),
    sum(pushes.map(([, y]) => y)),
    sum(pushes.map(([, , z]) => z)),
    ...momentsAbout(g, points, pushes).map((moment) => moment / reach),
    ...momentsAbout(corner, points, pushes).map((moment) => moment / reach),
  ];
  return Math.max(...misses.map(Math.abs)) / weight;
}

function momentsAbout(pole: Vec3, points: readonly Vec3[], pushes: readonly Vec3[]): number[] {
  const arms = points.map(([x, y, z]) => [x - pole[0], y - pole[1], z - pole[2]] as const);
  return [
    sum(arms.map(([, y, z], index) => y * pushes[index]![2] - z * pushes[index]![1])),
    sum(arms.map(([x, , z], index) => z * pushes[index]![0] - x * pushes[index]![2])),
    sum(arms.map(([x, y], index) => x * pushes[index]![1] - y * pushes[index]![0])),
  ];
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
