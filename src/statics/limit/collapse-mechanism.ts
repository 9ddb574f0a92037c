import type { Twist } from '../mechanism.js';
import { type Loading, polygonCorners, type RigidLoad, sizeOf } from '../rigid-load.js';
import { cross, dot, lengthOf, scale, subtract, type Vec3 } from '../vector.js';
import type { Limited, LimitOptions } from './limit-factor.js';
import { coneRemainder } from './non-negative-least-squares.js';

/** A tension this close to none, or to capacity, is there; as part of the capacity. */
const AT_BOUND = 1e-9;

/**
 * How a load starts to move at its limit factor: the mechanism of the limit problem (its dual solution), as the motion y
 * of the center of gravity and about it with
 *
 *     work of the varying load = 1 J,   and in that motion
 *     members below capacity do not lengthen, slack ones neither, those at capacity do not shorten,
 *     contacts do not sink, and where one slides it rises by mu times its travel (the associated flow of the problem).
 *
 * Where several mechanisms form at the same factor, the one with the least motion is taken, with rotations measured by
 * the size of the load: so a symmetric load moves symmetrically. By the virtual work of that motion
 *
 *     factor * 1 J = sum capacity_i * lengthening_i - weight * steady . velocity
 *
 * which proves from above what the balance proves from below. A member that is gone is one of capacity 0.
 *
 * @param limited the outcome of the same load, loading and options
 * @returns undefined when no mechanism can be told from rounding; throws nothing
 */
export function collapseMechanism(
  load: RigidLoad,
  loading: Loading,
  limited: Limited,
  { friction }: LimitOptions,
): Twist | undefined {
  const size = sizeOf(load);
  // directions of force that the motion must not work with: y . column <= 0 for each
  const columns: number[][] = [];
  const forbid = (force: Vec3, at: Vec3, sign: number) => {
    const arm = scale(subtract(at, load.centerOfGravity), 1 / size);
    const column = [...force, ...cross(arm, force)];
    const length = sign * Math.hypot(...column);
    columns.push(column.map((value) => value / length));
  };

  load.members.forEach(({ anchor, attachment, capacity }, index) => {
    const along = subtract(anchor, attachment);
    const pull = scale(along, 1 / lengthOf(along));
    const tension = limited.tensions[index]!;
    if (tension < capacity * (1 - AT_BOUND)) forbid(pull, attachment, -1); // it may shorten and go slack
    if (tension > capacity * AT_BOUND) forbid(pull, attachment, 1); // it may lengthen at its capacity
  });
  const corners = friction === 'none' ? [] : polygonCorners(friction.coneSides);
  load.contacts.forEach(({ at, friction: coefficient }, index) => {
    const mu = friction === 'none' ? 0 : coefficient * friction.multiplier;
    for (const [x, y] of mu > 0 ? corners : [[0, 0]]) forbid([mu * x!, mu * y!, 1], at, -1);
    const force = limited.contactForces[index]!;
    if (lengthOf(force) > load.weight * AT_BOUND) forbid(force, at, 1);
  });

  const amount = lengthOf(loading.varying);
  const direction = scale(loading.varying, 1 / amount);
  const motion = coneRemainder(columns, [...direction, 0, 0, 0]);
  const work = motion === undefined ? 0 : dot(motion as unknown as Vec3, direction);
  if (motion === undefined || !(work > 1e-14)) return undefined;
  const [x, y, z, rx, ry, rz] = motion.map((value) => value / (work * load.weight * amount)) as Six;
  return { velocity: [x, y, z], rotation: [rx / size, ry / size, rz / size] };
}

type Six = [number, number, number, number, number, number];
