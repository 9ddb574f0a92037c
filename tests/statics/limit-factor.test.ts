import { describe, expect, it } from 'vitest';
import { collapseMechanism } from '../../src/statics/limit/collapse-mechanism.js';
import {
  type Limited,
  type LimitOptions,
  limitFactor,
  limitFactors,
  limitFactorsOneOut,
} from '../../src/statics/limit/limit-factor.js';
import { type Mode, modeOf } from '../../src/statics/mechanism.js';
import type { Loading, RigidLoad } from '../../src/statics/rigid-load.js';
import { around, block, downward, FULL, forward, leftward, member, NONE, rearward, upward } from './layouts.js';

function limited(load: RigidLoad, loading: Loading, options: LimitOptions = FULL): Limited {
  const outcome = limitFactor(load, loading, options);
  if (outcome.outcome !== 'limited') throw new Error(outcome.outcome);
  expect(outcome.residual).toBeLessThanOrEqual(1e-9);
  return outcome;
}

const factorOf = (load: RigidLoad, loading: Loading, options?: LimitOptions) => limited(load, loading, options).factor;
const modeAt = (load: RigidLoad, loading: Loading, options: LimitOptions = FULL): Mode =>
  modeOf(collapseMechanism(load, loading, limited(load, loading, options), options)!, load);

const R = Math.SQRT1_2;

describe('a block without members', () => {
  // Slides when f W = mu W, so f = mu. Tips about its front edge when f W h = W b, so f = b / h. The lesser counts.
  it.each<[height: number, friction: number, factor: number, mode: Mode]>([
    [0.5, 0.3, 0.3, 'slides'],
    [3, 0.3, 0.3, 'slides'], // b / h = 1/3, just above mu
    [4, 0.3, 0.25, 'tips'],
    [2, 0.8, 0.5, 'tips'],
    [0.5, 0, 0, 'slides'],
    [0.5, 1.5, 1.5, 'slides'],
  ])('center of gravity at %d m, friction %d: factor %d, %s', (height, friction, factor, mode) => {
    for (const loading of around) {
      const load = block({ height, friction });
      expect(factorOf(load, loading)).toBeCloseTo(factor, 12);
      expect(modeAt(load, loading)).toBe(mode);
    }
  });

  it('counts part of the friction', () => {
    const part = { friction: { multiplier: 0.75, coneSides: 16 } };
    expect(factorOf(block({ friction: 0.4 }), forward, part)).toBeCloseTo(0.3, 12);
    expect(factorOf(block({ friction: 0.4 }), forward, NONE)).toBeCloseTo(0, 12);
  });

  // On a deck that falls forward by angle a, along the deck: steady is (sin a, 0, -cos a). With f along the deck:
  // sin a + f = mu cos a.
  it('on a slope', () => {
    const a = 0.1;
    const loading: Loading = { steady: [Math.sin(a), 0, -Math.cos(a)], varying: [1, 0, 0] };
    expect(factorOf(block({}), loading)).toBeCloseTo(0.3 * Math.cos(a) - Math.sin(a), 12);
    const steep: Loading = { steady: [Math.sin(0.4), 0, -Math.cos(0.4)], varying: [1, 0, 0] }; // tan 0.4 = 0.42 > 0.3
    expect(limitFactor(block({}), steep, FULL).outcome).toBe('impossible');
  });

  // Upward at factor 1 it floats: nothing holds it down.
  it('lifts at 1 g upward and bears any load downward', () => {
    expect(factorOf(block({}), upward)).toBeCloseTo(1, 12);
    expect(modeAt(block({}), upward)).toBe('lifts');
    expect(limitFactor(block({}), downward, FULL).outcome).toBe('unbounded');
    expect(limitFactor(block({}), { steady: [0, 0, -1], varying: [0, 0, 0] }, FULL).outcome).toBe('unbounded');
  });

  // Along 45 degrees the 16-gon has a corner (45 / 22.5 = 2), at 11.25 degrees the middle of a side.
  it('sees friction less by at most 1 - cos(pi / coneSides)', () => {
    const along = (degrees: number): Loading => {
      const angle = (degrees * Math.PI) / 180;
      return { steady: [0, 0, -1], varying: [Math.cos(angle), Math.sin(angle), 0] };
    };
    expect(factorOf(block({}), along(45))).toBeCloseTo(0.3, 12);
    expect(factorOf(block({}), along(11.25))).toBeCloseTo(0.3 * Math.cos(Math.PI / 16), 12);
  });
});

describe('one chain', () => {
  // From the middle of the contacts to 45 degrees rearward and down at the height of the center of gravity: no moment
  // about it. Capacity T = 1000 = W. Balance along x: f W = T cos 45 + mu (W + T sin 45).
  const load = (friction: number) =>
    block({ friction, height: 1, members: [member('chain', [-1, 0, 0], [0, 0, 1])], half: 5 });

  it('at 45 degrees without friction: T cos 45', () => {
    expect(factorOf(load(0.3), forward, NONE)).toBeCloseTo(R, 12);
    expect(limited(load(0.3), forward, NONE).governing).toEqual(['chain']);
  });

  it('at 45 degrees with friction: T cos 45 + mu (W + T sin 45)', () => {
    expect(factorOf(load(0.3), forward)).toBeCloseTo(R + 0.3 * (1 + R), 12);
    expect(modeAt(load(0.3), forward)).toBe('slides');
  });

  it('pulls only: it does not push against rearward', () => {
    expect(factorOf(load(0.3), rearward)).toBeCloseTo(0.3, 12);
  });

  // Straight down through the middle: it holds nothing forward by itself, but presses: mu (W + T). Upward: W + T.
  it('vertical', () => {
    const held = block({ members: [member('chain', [0, 0, -1], [0, 0, 0], { capacity: 400 })] });
    expect(factorOf(held, forward, NONE)).toBeCloseTo(0, 12);
    expect(factorOf(held, forward)).toBeCloseTo(0.3 * 1.4, 12);
    expect(factorOf(held, upward)).toBeCloseTo(1.4, 12);
  });

  // A low chain and a tall load: tips about the front edge at x = b. The chain lies along x at height z, anchored
  // behind: f W h = W b + T z.
  it('that stops it from tipping', () => {
    const held = block({
      height: 4,
      friction: 0.9,
      members: [member('chain', [-9, 0, 2], [-1, 0, 2], { capacity: 300 })],
    });
    expect(factorOf(held, forward)).toBeCloseTo((1000 * 1 + 300 * 2) / 4000, 12);
    expect(modeAt(held, forward)).toBe('tips');
  });

  it('of no capacity is no chain', () => {
    const held = block({ members: [member('chain', [-1, 0, 0], [0, 0, 1], { capacity: 0 })] });
    expect(factorOf(held, forward)).toBeCloseTo(0.3, 12);
  });
});

describe('four chains, one at each corner', () => {
  // Each from (x, y, z) on the load to (x + 0.6, y + 0, z - 0.8) signs outward along x: cos = 0.6, sin = 0.8, L = 1.
  // Without friction, forward: the two rear ones pull 0.6 T each. The rear pull at height z = 0.8 and the center of
  // gravity at the same height: moments about y come from 2 x 0.8 T at x = -1 alone, and the contacts bear them.
  const chains = [1, -1].flatMap((x) =>
    [1, -1].map((y) => member(`${x},${y}`, [x * 1.6, y, 0], [x, y, 0.8], { capacity: 500 })),
  );
  const load = block({ height: 0.8, members: chains });

  it('two of them work in each direction along', () => {
    const { factor, governing, tensions } = limited(load, forward, NONE);
    expect(factor).toBeCloseTo((2 * 500 * 0.6) / 1000, 12);
    expect(governing).toEqual(['-1,1', '-1,-1']);
    expect(tensions[2]).toBeCloseTo(500, 9);
  });

  // With friction all four press: mu (W + 4 x 0.8 T); the front pair pulls forward by 0.6 T each, so it is better left
  // slack as long as 0.8 mu < 0.6: f = (2 x 0.6 T + mu (W + 2 x 0.8 T)) / W.
  it('friction adds what they press', () => {
    expect(factorOf(load, forward)).toBeCloseTo((600 + 0.3 * (1000 + 800)) / 1000, 12);
  });

  // Sideways no chain has a part in y: friction alone, all four pressing.
  it('across, they only press', () => {
    expect(factorOf(load, leftward, NONE)).toBeCloseTo(0, 12);
    expect(factorOf(load, leftward)).toBeCloseTo((0.3 * (1000 + 4 * 0.8 * 500)) / 1000, 9);
  });

  it('with one gone: not missed in front; behind, what one chain holds', () => {
    const [
      { intact, without } = (() => {
        throw new Error('none');
      })(),
    ] = limitFactorsOneOut(load, [forward], NONE);
    expect(intact).toEqual(limited(load, forward, NONE));
    for (const gone of [0, 1]) expect(without[gone]).toBe(intact);
    for (const gone of [2, 3]) {
      const alone = { ...load, members: load.members.filter((_, index) => index !== gone) };
      expect(without[gone]).toMatchObject({
        outcome: 'limited',
        factor: expect.closeTo(factorOf(alone, forward, NONE), 12),
      });
      // one rear chain 1 m off the middle also turns the load about z, and without friction nothing resists that
      expect((without[gone] as Limited).factor).toBeCloseTo(0, 12);
    }
  });
});

// Over the top: down on both sides with sin a = 0.8, cos a = 0.6. Across it balances itself; along it only presses.
describe('a pair over the top', () => {
  const pair = [1, -1].map((y) => member(`${y}`, [0, y * 1.6, -0.3], [0, y, 0.5], { capacity: 400 }));
  const load = block({ members: pair });

  it('presses: f = mu (W + 2 x 0.8 T) / W along', () => {
    expect(factorOf(load, forward)).toBeCloseTo(0.3 * (1 + 2 * 0.8 * 0.4), 12);
  });

  it('across, the far part is better left slack: 0.6 T + mu (W + 0.8 T)', () => {
    expect(factorOf(load, leftward)).toBeCloseTo(0.6 * 0.4 + 0.3 * (1 + 0.8 * 0.4), 12);
  });
});

describe('hostile layouts', () => {
  it('no contacts, no members: impossible', () => {
    expect(limitFactor({ ...block({}), contacts: [] }, forward, FULL)).toEqual({ outcome: 'impossible' });
  });

  it('weightless on nothing: a steady load of zero balances, anything else moves it', () => {
    const nothing: RigidLoad = { weight: 1000, centerOfGravity: [0, 0, 0], contacts: [], members: [] };
    const still: Loading = { steady: [0, 0, 0], varying: [1, 0, 0] };
    expect(factorOf(nothing, still)).toBe(0);
  });

  // Two contacts on a line across under the center of gravity: any push along tips it, however little.
  it('collinear contacts', () => {
    const line = {
      ...block({}),
      contacts: block({})
        .contacts.slice(0, 2)
        .map((one) => ({ ...one, at: [0, one.at[1], 0] as const })),
    };
    expect(factorOf(line, forward)).toBeCloseTo(0, 12);
    expect(factorOf(line, leftward)).toBeCloseTo(0.3, 12);
  });

  it('center of gravity outside the contacts: impossible; just inside and on the edge: possible', () => {
    const at = (x: number) => limitFactor({ ...block({}), centerOfGravity: [x, 0, 0.5] }, forward, FULL).outcome;
    expect(at(1.001)).toBe('impossible');
    expect(at(1)).toBe('limited');
    expect(at(0.999)).toBe('limited');
  });

  it('braking that would put an overhanging load back on its feet is no balance at rest', () => {
    const overhanging = { ...block({ friction: 1 }), centerOfGravity: [-1.2, 0, 0.5] as const };
    expect(limitFactor(overhanging, forward, FULL).outcome).toBe('impossible');
  });

  it('all contacts in one point', () => {
    const point = { ...block({}), contacts: block({}).contacts.map((one) => ({ ...one, at: [0, 0, 0] as const })) };
    expect(factorOf(point, forward)).toBeCloseTo(0, 12);
  });

  it('hung from three chains without a contact', () => {
    // All three vertical, at the corners of a triangle round the center of gravity: upward until they are slack.
    const hung: RigidLoad = {
      weight: 900,
      centerOfGravity: [0, 0, 0],
      contacts: [],
      members: [
        [1, 0],
        [-0.5, 0.8],
        [-0.5, -0.8],
      ].map(([x, y]) => member(`${x} ${y}`, [x!, y!, 3], [x!, y!, 1])),
    };
    expect(factorOf(hung, upward)).toBeCloseTo(1, 12);
    // each bears W / 3 at rest, so all reach 1000 N together at (1 + f) 900 = 3000
    expect(factorOf(hung, downward)).toBeCloseTo(3000 / 900 - 1, 12);
    expect(limited(hung, downward).governing).toHaveLength(3);
    expect(modeAt(hung, downward)).toBe('lifts');
  });

  it('scales of a grain and of a mountain', () => {
    for (const long of [1e-4, 1, 1e5]) {
      for (const heavy of [1e-6, 1, 1e9]) {
        const load = block({ weight: 1000 * heavy, half: long, height: 4 * long });
        expect(factorOf(load, forward)).toBeCloseTo(0.25, 12);
      }
    }
  });

  const chainsOf = (strong: number) =>
    block({
      half: 5,
      members: [
        member('strong', [-1, 0, 0.5], [0, 0, 0.5], { capacity: strong }),
        member('weak', [1, 0, 0.5], [0, 0, 0.5], { capacity: 1e-3 }),
      ],
    });

  it('a chain that could hold a hundred thousand loads beside one that could hold a millionth', () => {
    expect(factorOf(chainsOf(1e8), forward, NONE) / 1e5).toBeCloseTo(1, 9);
    expect(factorOf(chainsOf(1e8), rearward, NONE)).toBeCloseTo(1e-6, 12);
  });

  // Doubles carry 16 digits: forces of 1e12 weights cannot balance to 1e-9 of the weight, unless they happen to.
  it('is not solved rather than wrong where doubles end', () => {
    const tilted = {
      ...chainsOf(1e15),
      members: [member('strong', [-1, 0.3, 0.1], [0.1, 0.2, 0.7], { capacity: 1e15 })],
    };
    const outcome = limitFactor(tilted, forward, FULL);
    if (outcome.outcome === 'limited') expect(outcome.residual).toBeLessThanOrEqual(1e-9);
    else expect(outcome).toEqual({ outcome: 'not-solved' });
  });

  it('many loadings at once are each what it is alone, whatever their steady part', () => {
    const loadings: Loading[] = [...around, { steady: [0.1, 0, -1], varying: [1, 0, 0] }, upward, downward];
    expect(limitFactors(block({}), loadings, FULL)).toEqual(loadings.map((one) => limitFactor(block({}), one, FULL)));
  });
});

describe('what is no load', () => {
  const codeOf = (load: object, loading: object = forward, options: object = FULL): unknown => {
    try {
      return limitFactor({ ...block({}), ...load } as RigidLoad, loading as Loading, options as LimitOptions);
    } catch (error) {
      return `${(error as { code: string }).code} ${(error as { path: string }).path}`;
    }
  };
  const [contact] = block({}).contacts;

  it.each([
    ['NOT_POSITIVE weight', { weight: 0 }],
    ['NOT_POSITIVE weight', { weight: Number.NaN }],
    ['NOT_FINITE weight', { weight: Number.POSITIVE_INFINITY }],
    ['NOT_FINITE centerOfGravity[2]', { centerOfGravity: [0, 0] }],
    ['NEGATIVE contacts[0].friction', { contacts: [{ ...contact, friction: -0.1 }] }],
    ['NOT_POSITIVE contacts[0].stiffness', { contacts: [{ ...contact, stiffness: 0 }] }],
    ['IMPOSSIBLE_GEOMETRY members[0]', { members: [member('chain', [1, 2, 3], [1, 2, 3])] }],
    ['NEGATIVE members[0].capacity', { members: [member('chain', [1, 2, 3], [0, 0, 1], { capacity: -1 })] }],
    ['NEGATIVE members[0].pretension', { members: [member('chain', [1, 2, 3], [0, 0, 1], { pretension: -1 })] }],
    ['NOT_POSITIVE members[0].stiffness', { members: [member('chain', [1, 2, 3], [0, 0, 1], { stiffness: 0 })] }],
  ])('%s', (expected, load) => {
    expect(codeOf(load)).toBe(expected);
  });

  it.each([
    ['NOT_FINITE varying[0]', { steady: [0, 0, -1], varying: [Number.NaN, 0, 0] }, FULL],
    ['UNKNOWN_VALUE friction.coneSides', forward, { friction: { multiplier: 1, coneSides: 2 } }],
    ['NEGATIVE friction.multiplier', forward, { friction: { multiplier: -1, coneSides: 8 } }],
  ])('%s', (expected, loading, options) => {
    expect(codeOf({}, loading, options)).toBe(expected);
  });
});
