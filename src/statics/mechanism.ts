import { type RigidLoad, sizeOf } from './rigid-load.js';
import { add, cross, lengthOf, scale, subtract, type Vec3 } from './vector.js';

/** How a rigid load moves, or starts to move: the displacement or velocity of a point p is velocity + rotation x (p - G). */
export interface Twist {
  /** Of the center of gravity G, in meters or meters a second. */
  readonly velocity: Vec3;
  /** Right-handed about the axes of the deck, in radians or radians a second. */
  readonly rotation: Vec3;
}

export type Mode = 'slides' | 'turns' | 'tips' | 'lifts';

/** How the point of a load moves under a twist. */
export function motionOf(twist: Twist, load: RigidLoad, point: Vec3): Vec3 {
  return add(twist.velocity, cross(twist.rotation, subtract(point, load.centerOfGravity)));
}

/**
 * A word for a mechanism. Three speeds are compared: that of the middle of the contacts (of the center of gravity where
 * there are none), and the speeds that rotation gives to a point at the load's greatest distance l from the center of
 * gravity, (rotation about horizontal axes) * l and (rotation about the vertical) * l. The greatest names the mode:
 *
 * - `tips`: rotation about a horizontal axis;
 * - `turns`: rotation about the vertical, as when one end slides round the other;
 * - `slides`: translation, at most as steep as 45 degrees or as the angle of friction, since in a mechanism of
 *   the limit problem a sliding contact rises by its coefficient of friction times its travel;
 * - `lifts`: translation steeper than that, upward or downward.
 *
 * Most real mechanisms are mixed; the word says which part is greatest. Throws nothing.
 */
export function modeOf(twist: Twist, load: RigidLoad): Mode {
  const { contacts } = load;
  const middle =
    contacts.length === 0
      ? load.centerOfGravity
      : scale(
          contacts.reduce<Vec3>((sum, { at }) => add(sum, at), [0, 0, 0]),
          1 / contacts.length,
        );
  const [x, y, z] = motionOf(twist, load, middle);
  const size = sizeOf(load);
  const tipping = Math.hypot(twist.rotation[0], twist.rotation[1]) * size;
  const turning = Math.abs(twist.rotation[2]) * size;
  const moving = lengthOf([x, y, z]);
  if (tipping >= turning && tipping > moving) return 'tips';
  if (turning > moving) return 'turns';
  const steepest = Math.max(1, ...contacts.map(({ friction }) => friction));
  return Math.abs(z) > steepest * Math.hypot(x, y) * (1 + 1e-9) ? 'lifts' : 'slides';
}
