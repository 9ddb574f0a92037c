import type { LimitOptions } from '../../statics/limit/limit-factor.js';
import type { RigidLoad } from '../../statics/rigid-load.js';
import { add, lengthOf, scale, subtract, type Vec3 } from '../../statics/vector.js';
import type { ReadTolerances } from './options.js';

/** The load with one figure off, both ways. */
export interface Variation {
  readonly what: string;
  readonly loads: readonly RigidLoad[];
}

/** Every figure that a tolerance is stated for, off by it, each by itself. */
export function variationsOf(
  load: RigidLoad,
  { friction }: LimitOptions,
  { angle, friction: offFriction, centerOfGravity }: ReadTolerances,
): readonly Variation[] {
  const variations: Variation[] = [];
  if (offFriction !== undefined && friction !== 'none') {
    const contacts = load.contacts.map((each) => ({ ...each, friction: Math.max(0, each.friction - offFriction) }));
    variations.push({ what: 'friction', loads: [{ ...load, contacts }] });
  }
  if (centerOfGravity !== undefined) {
    const moved = AXES.flatMap((axis) => [scale(axis, centerOfGravity), scale(axis, -centerOfGravity)]);
    variations.push({
      what: 'center of gravity',
      loads: moved.map((by) => ({ ...load, centerOfGravity: add(load.centerOfGravity, by) })),
    });
  }
  if (angle !== undefined) {
    for (const id of new Set(load.members.map(({ id }) => id))) {
      variations.push({
        what: `angle of ${id}`,
        loads: TURNS.map(([toDeck, aside]) => ({
          ...load,
          members: load.members.map((member) =>
            member.id === id
              ? { ...member, anchor: turned(member.anchor, member.attachment, toDeck * angle, aside * angle) }
              : member,
          ),
        })),
      });
    }
  }
  return variations;
}

const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** Steeper, flatter, to the left and to the right. */
const TURNS = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const;

/** An anchor moved so that the run keeps its attachment and length and turns in its vertical plane, or about the vertical. */
function turned(anchor: Vec3, attachment: Vec3, toDeck: number, aside: number): Vec3 {
  const [x, y, z] = subtract(anchor, attachment);
  const length = lengthOf([x, y, z]);
  const flat = Math.hypot(x, y);
  const alpha = Math.atan2(-z, flat) + toDeck;
  const beta = Math.atan2(y, x) + aside;
  return add(
    attachment,
    scale([Math.cos(alpha) * Math.cos(beta), Math.cos(alpha) * Math.sin(beta), -Math.sin(alpha)], length),
  );
}
