import { fail } from '../../errors.js';
import type { Twist } from '../mechanism.js';
import type { Forces } from '../residual.js';
import {
  type Contact,
  type Coulomb,
  checkCoulomb,
  checkLoad,
  type Member,
  polygonCorners,
  type RigidLoad,
  sizeOf,
} from '../rigid-load.js';
import { cross, dot, lengthOf, scale, subtract, type Vec3 } from '../vector.js';
import { addProduct } from './linear-equations.js';

/** A member whose stiffness E A / L is known, N/m. */
interface ElasticMember extends Member {
  readonly stiffness: number;
}

/** A load for the elastic problem: every member has a stiffness, contacts may. */
export interface ElasticLoad extends RigidLoad {
  readonly members: readonly ElasticMember[];
}

/**
 * What the deck does against sliding:
 *
 * - `'none'`: nothing;
 * - `'sticking'`: everything. A contact does not move sideways, as if cleated to the deck, even where it lifts. With
 *   real friction it would slide before it lifts, so beyond the factor of first slip this is the answer of a cleated load;
 * - {@link Coulomb}: dry friction, which sticks up to the coefficient times the normal force and slides beyond.
 */
export type ElasticFriction = 'none' | 'sticking' | Coulomb;

/**
 * How much stiffer than anything else in the load a rigid contact is taken. So redundant rigid contacts share their
 * force as equal pads would, and the answer differs from one with an unyielding deck by about one part in a million.
 */
const RIGID = 1e6;

/**
 * The springs of one load. Forces in weights, lengths in sizes of the load, so stiffness in weight / size. A direction
 * is the force of a unit of tension or thrust and its moment about the center of gravity; a motion q of the load (of the
 * center of gravity, and rotation) moves the spring along it by direction . q, and its force falls by stiffness times that.
 */
export interface ElasticModel {
  readonly load: ElasticLoad;
  readonly size: number;
  readonly friction: ElasticFriction;
  readonly members: readonly MemberSpring[];
  readonly contacts: readonly ContactSpring[];
  readonly polygon: FrictionPolygon;
}

interface MemberSpring {
  readonly direction: Float64Array;
  readonly stiffness: number;
  readonly pretension: number;
  /** What it adds to the stiffness of the load while taut: k g g^T, 6 by 6. */
  readonly matrix: Float64Array;
}

export interface ContactSpring {
  /** Along x, y and z. */
  readonly directions: readonly [Float64Array, Float64Array, Float64Array];
  readonly normalStiffness: number;
  readonly shearStiffness: number;
  /** Coefficient of friction that counts. */
  readonly friction: number;
  /** What it adds to the stiffness of the load while it sticks, 6 by 6. */
  readonly matrix: Float64Array;
}

/** A regular polygon of corners on the unit circle; facet j runs from corner j to corner j + 1. */
export interface FrictionPolygon {
  readonly corners: readonly Vec3[];
  /** Outward normals of the facets. */
  readonly normals: readonly Vec3[];
  /** Distance of the facets from the middle: cos(pi / sides). */
  readonly apothem: number;
}

export function makeElasticModel(load: ElasticLoad, friction: ElasticFriction): ElasticModel {
  checkLoad(load);
  for (const [index, { stiffness }] of load.members.entries()) {
    if (stiffness === undefined) {
      fail('MISSING_FIELD', `members[${index}].stiffness`, 'a stiffness, N/m', stiffness, 'Give E A / L.');
    }
  }
  if (friction !== 'none' && friction !== 'sticking') checkCoulomb(friction);
  const size = sizeOf(load);
  const unit = load.weight / size;
  const wrench = (at: Vec3, force: Vec3): Float64Array => {
    const arm = scale(subtract(at, load.centerOfGravity), 1 / size);
    const moment = cross(arm, force);
    return new Float64Array([force[0], force[1], force[2], moment[0], moment[1], moment[2]]);
  };
  const members = load.members.map(({ anchor, attachment, stiffness, pretension = 0 }): MemberSpring => {
    const along = subtract(anchor, attachment);
    const direction = wrench(attachment, scale(along, 1 / lengthOf(along)));
    const matrix = new Float64Array(36);
    addProduct(matrix, direction, direction, stiffness / unit);
    return { direction, stiffness: stiffness / unit, pretension: pretension / load.weight, matrix };
  });
  const given = [...load.members, ...load.contacts].map(({ stiffness }: Member | Contact) => (stiffness ?? 0) / unit);
  const rigid = RIGID * Math.max(1, ...given);
  const multiplier = typeof friction === 'object' ? friction.multiplier : 1;
  const contacts = load.contacts.map(({ at, stiffness, friction: coefficient }): ContactSpring => {
    const slippery = friction === 'none' || (friction !== 'sticking' && coefficient * multiplier === 0);
    const directions = [wrench(at, [1, 0, 0]), wrench(at, [0, 1, 0]), wrench(at, [0, 0, 1])] as const;
    const shearStiffness = slippery ? 0 : rigid;
    const normalStiffness = stiffness === undefined ? rigid : stiffness / unit;
    const matrix = new Float64Array(36);
    for (const axis of [0, 1, 2] as const) {
      addProduct(matrix, directions[axis], directions[axis], axis === 2 ? normalStiffness : shearStiffness);
    }
    return { directions, normalStiffness, shearStiffness, friction: coefficient * multiplier, matrix };
  });
  return { load, size, friction, members, contacts, polygon: makePolygon(friction) };
}

function makePolygon(friction: ElasticFriction): FrictionPolygon {
  const sides = typeof friction === 'object' ? friction.coneSides : 0;
  // the middle of facet j lies half a side on from corner j: every second corner of a polygon of twice the sides
  const normals = polygonCorners(2 * sides).filter((_, index) => index % 2 === 1);
  return { corners: polygonCorners(sides), normals, apothem: sides === 0 ? 1 : Math.cos(Math.PI / sides) };
}

/** Where a load is and what acts on it. Forces of members and contacts go negative with their gap, times stiffness. */
export interface ElasticState {
  readonly members: Float64Array;
  readonly normals: Float64Array;
  /** Friction along x and y, contact by contact. */
  readonly shears: Float64Array;
  /** Of the load, in sizes and radians. */
  readonly motion: Float64Array;
}

/** What may happen next to a state: springs with a force, with a gap, or at zero between the two. */
export interface Standing {
  /** 1 with a force, -1 with a gap, 0 between. */
  readonly members: Int8Array;
  readonly contacts: Int8Array;
  /** The facets of the friction polygon that a pressed contact touches. */
  readonly touching: readonly (readonly number[])[];
}

export const emptyState = ({ members, contacts }: ElasticModel): ElasticState => ({
  members: new Float64Array(members.length),
  normals: new Float64Array(contacts.length),
  shears: new Float64Array(2 * contacts.length),
  motion: new Float64Array(6),
});

/** The forces of a state in newtons, with none where there is a gap. */
export function forcesOf({ load }: ElasticModel, { members, normals, shears }: ElasticState): Forces {
  return {
    tensions: load.members.map((_, index) => Math.max(0, members[index]!) * load.weight),
    contactForces: load.contacts.map((_, index) => [
      shears[2 * index]! * load.weight,
      shears[2 * index + 1]! * load.weight,
      Math.max(0, normals[index]!) * load.weight,
    ]),
  };
}

/** A motion of the model in meters and radians. */
export function twistOf({ size }: ElasticModel, motion: Float64Array, by = 1): Twist {
  const [x, y, z, rx, ry, rz] = motion as unknown as [number, number, number, number, number, number];
  return { velocity: [x * size * by, y * size * by, z * size * by], rotation: [rx * by, ry * by, rz * by] };
}

/** A free motion, scaled so that weight * acceleration does work of 1 J in it, as collapseMechanism has it. */
export function mechanismOf(model: ElasticModel, motion: Float64Array, acceleration: Vec3): Twist {
  const [x, y, z] = motion as unknown as [number, number, number];
  const work = dot(acceleration, [x, y, z]) * model.size * model.load.weight;
  return twistOf(model, motion, work > 0 ? 1 / work : 1);
}
