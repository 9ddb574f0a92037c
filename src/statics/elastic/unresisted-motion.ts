import { coneRemainder } from '../limit/non-negative-least-squares.js';
import { cornerBetween } from './contact-law.js';
import type { ContactSpring, ElasticModel, Standing } from './elastic-model.js';

/** A remainder shorter than this is rounding; the load's own length is about 1. */
const NOTHING = 1e-7;

/**
 * A motion that a load drives and that no spring can resist, whatever its stiffness: there is one when no forces that the
 * springs could add balance the load (Farkas' lemma). Friction counts as in the limit problem, to the full inside its
 * polygon, so where this finds a motion the load gives way under any law of sliding. Undefined when there is none.
 */
export function unresistedMotion(
  { members, contacts, polygon, friction }: ElasticModel,
  standing: Standing,
  side: Float64Array,
): Float64Array | undefined {
  const forces: number[][] = [];
  const add = (parts: readonly (readonly [Float64Array, number])[], both = false) => {
    const force = Array.from({ length: 6 }, (_, row) =>
      parts.reduce((sum, [axis, times]) => sum + times * axis[row]!, 0),
    );
    const length = Math.hypot(...force);
    forces.push(force.map((value) => value / length));
    if (both) forces.push(force.map((value) => -value / length));
  };
  for (const [index, { direction }] of members.entries()) {
    if (standing.members[index]! >= 0) add([[direction, 1]], standing.members[index]! > 0);
  }
  const addContact = ({ directions: [x, y, z], shearStiffness, friction: mu }: ContactSpring, index: number): void => {
    const at = standing.contacts[index]!;
    if (friction === 'sticking') {
      add([[x, 1]], true);
      add([[y, 1]], true);
    }
    if (at < 0) return;
    if (friction === 'sticking' || shearStiffness === 0) {
      add([[z, 1]], at > 0);
      return;
    }
    const { corners, normals, apothem } = polygon;
    const touching = standing.touching[index]!;
    if (at === 0) {
      for (const [cx, cy] of corners)
        add([
          [x, mu * cx],
          [y, mu * cy],
          [z, 1],
        ]); // one vector
    } else if (touching.length === 0) {
      for (const axis of [x, y, z]) add([[axis, 1]], true);
    } else if (touching.length === 1) {
      const [nx, ny] = normals[touching[0]!]!;
      add(
        [
          [x, -ny],
          [y, nx],
        ],
        true,
      ); // along the facet
      add(
        [
          [x, mu * apothem * nx],
          [y, mu * apothem * ny],
          [z, 1],
        ],
        true,
      ); // with the facet
      add([
        [x, -nx],
        [y, -ny],
      ]); // away from it
    } else {
      const corner = cornerBetween(touching, corners.length);
      const [cx, cy] = corners[corner]!;
      add(
        [
          [x, mu * cx],
          [y, mu * cy],
          [z, 1],
        ],
        true,
      ); // with the corner
      for (const next of [1, corners.length - 1]) {
        const [ox, oy] = corners[(corner + next) % corners.length]!;
        add([
          [x, ox - cx],
          [y, oy - cy],
        ]); // along either facet, away from it
      }
    }
  };
  contacts.forEach(addContact);
  const length = Math.hypot(...side);
  const left = coneRemainder(
    forces,
    Array.from(side, (value) => -value / length),
  );
  if (left === undefined || !(Math.hypot(...left) > NOTHING)) return undefined;
  return Float64Array.from(left, (value) => -value);
}
