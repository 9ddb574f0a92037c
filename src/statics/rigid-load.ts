import { fail, mapAt } from '../errors.js';
import { add, cross, lengthOf, scale, subtract, type Vec3 } from './vector.js';

// What the statics are about: one rigid load that stands on a deck and is held by members that can only pull.
// Plain SI numbers: newtons, meters, newtons per meter. Accelerations are multiples of standard gravity, so that
// force = weight * acceleration.

/**
 * A point at which the load stands on the deck. The deck only pushes, along +z, and resists sliding in x and y by dry
 * friction. A sloping deck enters through the direction of gravity in {@link Loading}, not through the contact.
 */
export interface Contact {
  readonly id: string;
  readonly at: Vec3;
  /** Coefficient of friction: friction force at most this times the normal force. */
  readonly friction: number;
  /** Of the pad or tire in z, N/m; omitted means rigid. Only the elastic problem reads it. */
  readonly stiffness?: number;
}

/** A straight member that only pulls: a chain, a strap, a wire rope. */
export interface Member {
  readonly id: string;
  /** Its end on the deck. */
  readonly anchor: Vec3;
  /** Its end on the load. */
  readonly attachment: Vec3;
  /** The greatest tension that it may carry, N. */
  readonly capacity: number;
  /** The tension given to it when it was fitted, N; none when omitted. Only the elastic problem reads it. */
  readonly pretension?: number;
  /** E A / L, N/m. Only the elastic problem reads it. */
  readonly stiffness?: number;
}

/** Equations of equilibrium of a rigid body: three of force, three of moment. */
export const ROWS = 6;

/** A force that is there whatever the load does, such as the clamping of a strap laid over it. */
interface Push {
  readonly at: Vec3;
  /** On the load, N. */
  readonly force: Vec3;
}

export interface RigidLoad {
  /** N */
  readonly weight: number;
  readonly centerOfGravity: Vec3;
  readonly contacts: readonly Contact[];
  readonly members: readonly Member[];
  /** Part of the steady load; none when omitted. */
  readonly pushes?: readonly Push[];
}

/**
 * What acts at the center of gravity: weight * (steady + factor * varying). Both are multiples of standard gravity
 * and have the direction of the force on the load: on a level deck steady is [0, 0, -1], and braking at 0.8 g throws
 * the load forward, so varying is [0.8, 0, 0].
 */
export interface Loading {
  readonly steady: Vec3;
  readonly varying: Vec3;
}

/**
 * Dry (Coulomb) friction with the circle of possible friction forces replaced by a regular polygon inside it, whose
 * first corner points along +x. Inside, so that no friction force is ever greater than the coefficient allows: what is
 * computed with the polygon can be balanced by the circle too. The loss is at most 1 - cos(pi / coneSides) of the
 * friction. A multiple of four keeps forward, rearward, left and right alike.
 */
export interface Coulomb {
  /** Of every contact's coefficient: 1 for all of it, 0.75 where a code counts three quarters. */
  readonly multiplier: number;
  /** Corners of the polygon, 3 to 360. */
  readonly coneSides: number;
}

/** The steady load, in weights, and its moment about the center of gravity, in weights times the size of the load. */
export function steadyWrench(load: RigidLoad, { steady }: Loading): [number, number, number, number, number, number] {
  const size = sizeOf(load);
  let force = steady;
  let moment: Vec3 = [0, 0, 0];
  for (const push of load.pushes ?? []) {
    const inWeights = scale(push.force, 1 / load.weight);
    force = add(force, inWeights);
    moment = add(moment, cross(scale(subtract(push.at, load.centerOfGravity), 1 / size), inWeights));
  }
  return [...force, ...moment];
}

/** The greatest distance from the center of gravity to a contact or an attachment, m: the length moments are measured by. */
export function sizeOf(load: RigidLoad): number {
  let size = 0;
  for (const { at } of load.contacts) size = Math.max(size, lengthOf(subtract(at, load.centerOfGravity)));
  for (const { at } of load.pushes ?? []) size = Math.max(size, lengthOf(subtract(at, load.centerOfGravity)));
  for (const { attachment } of load.members) {
    size = Math.max(size, lengthOf(subtract(attachment, load.centerOfGravity)));
  }
  return size > 0 ? size : 1; // everything in one point: no moments
}

/** Refuses a load that is none: callers convert and check, this is the guard against NaN. */
export function checkLoad(load: RigidLoad): void {
  if (!(load.weight > 0)) fail('NOT_POSITIVE', 'weight', 'a weight above zero, N', load.weight, 'Give the weight.');
  checkFinite(load.weight, 'weight');
  checkVector(load.centerOfGravity, 'centerOfGravity');
  mapAt(load.contacts, 'contacts', ({ at, friction, stiffness }) => {
    checkVector(at, 'at');
    checkNotNegative(friction, 'friction');
    if (stiffness !== undefined) checkStiffness(stiffness);
  });
  mapAt(load.pushes ?? [], 'pushes', checkPush);
  mapAt(load.members, 'members', ({ anchor, attachment, capacity, pretension, stiffness }) => {
    checkVector(anchor, 'anchor');
    checkVector(attachment, 'attachment');
    checkNotNegative(capacity, 'capacity');
    if (pretension !== undefined) checkNotNegative(pretension, 'pretension');
    if (stiffness !== undefined) checkStiffness(stiffness);
    if (!(lengthOf(subtract(anchor, attachment)) > 0)) {
      fail(
        'IMPOSSIBLE_GEOMETRY',
        '',
        'two ends apart from each other',
        'one point',
        'A member without length pulls in no direction: give both ends.',
      );
    }
  });
}

/** Refuses a push that is no force at a point. */
function checkPush({ at, force }: Push): void {
  checkVector(at, 'at');
  checkVector(force, 'force');
}

/** Refuses a loading that is no pair of vectors. */
export function checkLoading(loading: Loading): void {
  checkVector(loading.steady, 'steady');
  checkVector(loading.varying, 'varying');
}

/** Refuses friction that is neither absent nor a multiplier with a polygon. */
export function checkCoulomb({ multiplier, coneSides }: Coulomb): void {
  checkNotNegative(multiplier, 'friction.multiplier');
  if (!(Number.isInteger(coneSides) && coneSides >= 3 && coneSides <= 360)) {
    fail(
      'UNKNOWN_VALUE',
      'friction.coneSides',
      'a whole number from 3 to 360',
      coneSides,
      'Say how many sides the friction polygon has, such as 16.',
    );
  }
}

/** The corners of the friction polygon of one unit of friction, one after the other, counterclockwise from +x. */
export function polygonCorners(coneSides: number): Vec3[] {
  return Array.from({ length: coneSides }, (_, corner) => {
    const angle = (2 * Math.PI * corner) / coneSides;
    return [clean(Math.cos(angle)), clean(Math.sin(angle)), 0];
  });
}

/** cos 90 degrees is 6e-17 in doubles; here it is 0, so that symmetric layouts stay exactly symmetric. */
const clean = (value: number) => (Math.abs(value) < 1e-15 ? 0 : value);

function checkFinite(value: number, path: string): void {
  if (!Number.isFinite(value)) fail('NOT_FINITE', path, 'a finite number', value, 'Check where it was computed.');
}

function checkVector(vector: Vec3, path: string): void {
  for (let axis = 0; axis < 3; axis++) {
    if (!Number.isFinite(vector[axis])) checkFinite(vector[axis] as number, `${path}[${axis}]`);
  }
}

function checkNotNegative(value: number, path: string): void {
  checkFinite(value, path);
  if (value < 0) fail('NEGATIVE', path, 'zero or more', value, 'Check the sign.');
}

function checkStiffness(value: number): void {
  checkFinite(value, 'stiffness');
  if (!(value > 0)) fail('NOT_POSITIVE', 'stiffness', 'a stiffness above zero, N/m', value, 'Give E A / L.');
}
