import {
  type Coulomb,
  type Loading,
  polygonCorners,
  type RigidLoad,
  ROWS,
  sizeOf,
  steadyWrench,
} from '../rigid-load.js';
import { cross, lengthOf, scale, subtract, type Vec3 } from '../vector.js';
import { amountOf, artificialBasis, type Basis, findBalance, type Program } from './simplex.js';

/**
 * The linear program of the limit problem of one load. Forces are in weights and lengths in sizes of the load
 * ({@link sizeOf}), so that all entries are about 1. Moments are taken about the center of gravity, where weight and
 * inertia have none.
 *
 * Columns: for every contact the corners of its friction pyramid (mu cos, mu sin, 1), whose amounts add up to the normal
 * force; then the members; last the varying load, whose amount is the factor.
 */
export interface LimitProgram extends Program {
  readonly load: RigidLoad;
  readonly size: number;
  /** The contact that each corner belongs to. */
  readonly contactOf: readonly number[];
  readonly firstMember: number;
  /** The column of the factor. */
  readonly factor: number;
}

/** A basis that balances the steady load, or why there is none. */
export type Balance = Basis | 'infeasible' | 'not-solved';

export function makeLimitProgram(load: RigidLoad, friction: 'none' | Coulomb): LimitProgram {
  const { weight, centerOfGravity, contacts, members } = load;
  const size = sizeOf(load);
  const corners = friction === 'none' ? [] : polygonCorners(friction.coneSides);
  const contactOf: number[] = [];
  const entries: number[] = [];
  const push = (force: Vec3, at: Vec3) => {
    const moment = cross(scale(subtract(at, centerOfGravity), 1 / size), force);
    entries.push(...force, ...moment);
  };
  contacts.forEach((contact, index) => {
    const mu = friction === 'none' ? 0 : friction.multiplier * contact.friction;
    for (const [x, y] of mu > 0 ? corners : [[0, 0]]) {
      push([mu * x!, mu * y!, 1], contact.at);
      contactOf.push(index);
    }
  });
  for (const { anchor, attachment } of members) {
    const along = subtract(anchor, attachment);
    push(scale(along, 1 / lengthOf(along)), attachment);
  }
  entries.push(0, 0, 0, 0, 0, 0);
  const factor = contactOf.length + members.length;
  const upper = new Float64Array(factor + 1).fill(Number.POSITIVE_INFINITY);
  members.forEach(({ capacity }, member) => {
    upper[contactOf.length + member] = capacity / weight;
  });
  return {
    load,
    size,
    contactOf,
    firstMember: contactOf.length,
    factor,
    columns: Float64Array.from(entries),
    upper,
    rhs: new Float64Array(ROWS),
  };
}

/** Puts a loading into the program: its direction into the last column, the steady part to the right-hand side. */
export function setLoading({ load, columns, factor, rhs }: LimitProgram, loading: Loading): void {
  const { varying } = loading;
  const amount = lengthOf(varying);
  for (let axis = 0; axis < 3; axis++) columns[factor * ROWS + axis] = amount === 0 ? 0 : varying[axis]! / amount;
  steadyWrench(load, loading).forEach((part, row) => {
    rhs[row] = -part;
  });
}

/** A balance at factor 0, by the contacts alone where they suffice, so that it stands when a member is taken away. */
export function balanceAtRest(program: LimitProgram): Balance {
  const basis = artificialBasis(program);
  const end = findBalance(program, basis, program.factor, program.firstMember);
  return end === 'optimal' ? basis : end === 'infeasible' ? end : 'not-solved';
}

export const tensionOf = (program: LimitProgram, basis: Basis, member: number): number =>
  amountOf(program, basis, program.firstMember + member) * program.load.weight;

export function contactForcesOf(program: LimitProgram, basis: Basis): Vec3[] {
  const { load, contactOf, columns } = program;
  const forces = load.contacts.map((): [number, number, number] => [0, 0, 0]);
  contactOf.forEach((contact, corner) => {
    const amount = amountOf(program, basis, corner) * load.weight;
    if (amount === 0) return;
    for (let axis = 0; axis < 3; axis++) forces[contact]![axis]! += amount * columns[corner * ROWS + axis]!;
  });
  return forces;
}
