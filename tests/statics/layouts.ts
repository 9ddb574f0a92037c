// Loads to try the statics on: a block with four contacts and chains, and random layouts of every kind.
import fc from 'fast-check';
import type { Contact, Coulomb, Loading, Member, RigidLoad } from '../../src/statics/rigid-load.js';
import type { Vec3 } from '../../src/statics/vector.js';

export const FULL: { readonly friction: Coulomb } = { friction: { multiplier: 1, coneSides: 16 } };
export const NONE = { friction: 'none' } as const;

export const forward: Loading = { steady: [0, 0, -1], varying: [1, 0, 0] };
export const rearward: Loading = { steady: [0, 0, -1], varying: [-1, 0, 0] };
export const leftward: Loading = { steady: [0, 0, -1], varying: [0, 1, 0] };
const rightward: Loading = { steady: [0, 0, -1], varying: [0, -1, 0] };
export const upward: Loading = { steady: [0, 0, -1], varying: [0, 0, 1] };
export const downward: Loading = { steady: [0, 0, -1], varying: [0, 0, -1] };
export const around: readonly Loading[] = [forward, rearward, leftward, rightward];

export interface Block {
  readonly weight?: number;
  /** Half the distance between contacts, along x and y. */
  readonly half?: number;
  readonly height?: number;
  readonly friction?: number;
  readonly members?: readonly Member[];
}

/** A block on four contacts, symmetric about the origin. */
export function block({ weight = 1000, half = 1, height = 0.5, friction = 0.3, members = [] }: Block): RigidLoad {
  const contacts = [
    [1, 1],
    [1, -1],
    [-1, 1],
    [-1, -1],
  ].map(([x, y], index): Contact => ({ id: `contact ${index}`, at: [x! * half, y! * half, 0], friction }));
  return { weight, centerOfGravity: [0, 0, height], contacts, members };
}

export const member = (
  id: string,
  anchor: Vec3,
  attachment: Vec3,
  rest: Partial<Member> = {},
): Member & { stiffness: number } => ({ id, anchor, attachment, capacity: 1000, stiffness: 1e6, ...rest });

/** In thousandths: millimeters, newtons, thousandths of g. Doubles at random would mostly be absurdly small. */
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1000), max: Math.round(max * 1000) }).map((thousandths) => thousandths / 1000);
const spread = (most: number) => between(-most, most);
/** Round values now and then, so that ties, coincidences and symmetries occur. */
const rough = (most: number) => fc.oneof(spread(most), fc.constantFrom(-most, -most / 2, 0, most / 2, most));
const vector = (x: number, y: number, z: fc.Arbitrary<number>): fc.Arbitrary<Vec3> => fc.tuple(rough(x), rough(y), z);

const contact: fc.Arbitrary<Contact> = fc.record(
  {
    id: fc.constant('contact'),
    at: vector(2, 1, fc.oneof({ weight: 4, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: spread(0.2) })),
    friction: fc.oneof(between(0.05, 0.9), fc.constantFrom(0, 0.3, 1.2)),
    stiffness: between(2e5, 2e6),
  },
  { requiredKeys: ['id', 'at', 'friction'] },
);

const chain: fc.Arbitrary<Member & { stiffness: number }> = fc
  .record({
    id: fc.constant('member'),
    anchor: vector(3, 1.2, fc.constant(0)),
    attachment: vector(2, 0.8, between(0.2, 1.5)),
    capacity: fc.oneof(between(500, 60_000), fc.constantFrom(0, 10_000)),
    pretension: fc.oneof(fc.constant(0), between(0, 3000)),
    stiffness: fc.oneof(between(3e5, 2e7), fc.constantFrom(1e6)),
  })
  .map((one) => ({ ...one, capacity: Math.max(one.capacity, one.capacity === 0 ? 0 : one.pretension) }));

/** Loads of 5 to 50 kN on zero to six contacts with zero to eight chains, most of them able to stand. */
export const anyLoad: fc.Arbitrary<RigidLoad & { members: readonly (Member & { stiffness: number })[] }> = fc
  .record({
    weight: between(5000, 50_000),
    centerOfGravity: vector(0.7, 0.3, between(0.2, 1.5)),
    contacts: fc.oneof(
      { weight: 2, arbitrary: fc.array(contact, { maxLength: 6 }) },
      {
        weight: 5,
        arbitrary: fc.tuple(fc.array(contact, { maxLength: 2 }), corners()).map(([some, four]) => [...four, ...some]),
      },
    ),
    members: fc.array(chain, { maxLength: 8 }),
  })
  .map((load) => ({
    ...load,
    contacts: load.contacts.map((one, index) => ({ ...one, id: `contact ${index}` })),
    members: load.members.map((one, index) => ({ ...one, id: `member ${index}` })),
  }));

/** Four contacts at the corners of a rectangle. */
function corners(): fc.Arbitrary<Contact[]> {
  return fc
    .tuple(between(0.5, 2), between(0.5, 1), between(0, 0.8))
    .map(([x, y, friction]) =>
      [1, -1].flatMap((a) => [1, -1].map((b): Contact => ({ id: 'contact', at: [a * x, b * y, 0], friction }))),
    );
}

export const anyLoading: fc.Arbitrary<Loading> = fc.record({
  steady: fc.oneof(
    { weight: 5, arbitrary: fc.constant([0, 0, -1] as Vec3) },
    { weight: 1, arbitrary: fc.tuple(spread(0.3), spread(0.3), fc.constant(-0.95)) },
  ),
  varying: fc.oneof(
    fc.constantFrom<Vec3>(
      [1, 0, 0],
      [-1, 0, 0],
      [0, 1, 0],
      [0, -1, 0],
      [0, 0, 1],
      [0, 0, -1],
      [0.2, 0, -0.5],
      [0.8, 0, 0],
      [0, 0.5, 0.2],
    ),
    fc.tuple(spread(1), spread(1), spread(0.5)),
  ),
});

export const anyFriction: fc.Arbitrary<'none' | Coulomb> = fc.oneof(
  fc.constant('none' as const),
  fc.record({ multiplier: fc.constantFrom(1, 0.75), coneSides: fc.constantFrom(3, 4, 8, 16) }),
);

/** A machine of 10 to 40 kN on four contacts with a chain from each corner outward, as one is tied down. */
export const tiedDown: fc.Arbitrary<RigidLoad & { members: readonly (Member & { stiffness: number })[] }> = fc
  .record({
    weight: between(10_000, 40_000),
    centerOfGravity: fc.tuple(between(-0.3, 0.3), between(-0.1, 0.1), between(0.5, 1)),
    friction: between(0.1, 0.6),
    out: fc.array(fc.tuple(between(0.3, 1.2), between(0.1, 0.5), between(0.4, 1), between(0, 2000)), {
      minLength: 4,
      maxLength: 4,
    }),
  })
  .map(({ weight, centerOfGravity, friction, out }) => {
    const signs = [1, -1].flatMap((x) => [1, -1].map((y) => [x, y] as const));
    return {
      weight,
      centerOfGravity,
      contacts: signs.map(([x, y], index) => ({
        id: `contact ${index}`,
        at: [x * 1.2, y * 0.7, 0] as const,
        friction,
      })),
      members: signs.map(([x, y], index) => {
        const [far, aside, height, pretension] = out[index]!;
        const length = Math.hypot(far, aside, height);
        return member(`chain ${index}`, [x * (1.2 + far), y * (0.6 + aside), 0], [x * 1.2, y * 0.6, height], {
          capacity: 20_000,
          pretension,
          stiffness: 4e6 / length,
        });
      }),
    };
  });
