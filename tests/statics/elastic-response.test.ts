import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ElasticFriction, ElasticLoad } from '../../src/statics/elastic/elastic-model.js';
import { type ElasticEquilibrium, elasticResponse } from '../../src/statics/elastic/elastic-response.js';
import { modeOf } from '../../src/statics/mechanism.js';
import type { Loading, RigidLoad } from '../../src/statics/rigid-load.js';
import { anyLoad, anyLoading, block, downward, FULL, forward, leftward, member, rearward, upward } from './layouts.js';

const elastic = (load: RigidLoad) => load as ElasticLoad;

function rest(load: RigidLoad, loading: Loading, factor: number, friction: ElasticFriction): ElasticEquilibrium {
  const outcome = elasticResponse(elastic(load), loading, factor, { friction });
  if (outcome.outcome !== 'equilibrium') throw new Error(outcome.outcome);
  expect(outcome.residual).toBeLessThanOrEqual(1e-9);
  return outcome;
}

/** Level chains of a length along x at the height of the center of gravity; stiffness 1e6 N/m at 4 m, so 4e6 / L. */
const along = (id: string, length: number, y: number, pretension = 0) =>
  member(id, [-length, y, 0.5], [0, y, 0.5], { stiffness: 4e6 / length, pretension });

// A rigid contact is a million times as stiff as the stiffest member, so answers hold to about 1e-6.
const CLOSE = 5;

describe('chains side by side', () => {
  // The load moves straight, both lengthen alike, T = k e: shares as 1/L. 600 N over 1e6 and 2e6 N/m: e = 0.2 mm.
  it('share as their stiffness, not their strength', () => {
    const load = block({ members: [along('long', 4, 0), along('short', 2, 0)] });
    const { tensions, displacement, members, contacts } = rest(load, forward, 0.6, 'none');
    expect(tensions[0]).toBeCloseTo(200, CLOSE);
    expect(tensions[1]).toBeCloseTo(400, CLOSE);
    expect(displacement.velocity[0]).toBeCloseTo(0.0002, 12);
    expect(members).toEqual(['taut', 'taut']);
    expect(contacts).toEqual(['slides', 'slides', 'slides', 'slides']);
  });

  // Pulled apart, pretension 300 each: T1 - T2 = f W, and while both are taut each takes half: 300 +- f W / 2.
  // The slack one leaves at f W / 2 = 300; beyond, the other carries all.
  it('against each other share until one goes slack', () => {
    const ahead = member('ahead', [4, 0, 0.5], [0, 0, 0.5], { stiffness: 1e6, pretension: 300 });
    const load = block({ members: [along('behind', 4, 0, 300), ahead] });
    expect(rest(load, forward, 0.4, 'none').tensions.map((one) => Math.round(one * 1e4) / 1e4)).toEqual([500, 100]);
    const beyond = rest(load, forward, 0.8, 'none');
    expect(beyond.tensions[0]).toBeCloseTo(800, CLOSE);
    expect(beyond.tensions[1]).toBe(0);
    expect(beyond.members).toEqual(['taut', 'slack']);
    // 0.3 mm to the slack point (600 N over 2e6 N/m), then 200 N more over 1e6 N/m
    expect(beyond.displacement.velocity[0]).toBeCloseTo(0.0005, 12);
  });

  // At 45 degrees k u_x^2 = k / 2 sideways... along x: T cos 45 = f W, so T = 100 sqrt 2 at f = 0.1; N rises by T sin 45.
  it('at 45 degrees press the load down', () => {
    const load = block({ half: 5, height: 1, members: [member('chain', [-1, 0, 0], [0, 0, 1])] });
    const { tensions, contactForces } = rest(load, forward, 0.1, 'none');
    expect(tensions[0]).toBeCloseTo(100 * Math.SQRT2, CLOSE);
    expect(contactForces.reduce((sum, [, , z]) => sum + z, 0)).toBeCloseTo(1100, CLOSE);
  });

  // The same chain with friction 0.3: sticks at 0.1 and the chain has nothing to do; the load leans on its front contacts:
  // the moment f W h = 100 N m over the half distance 5 m moves 10 N from the two rear to the two front: 250 +- 5 each.
  it('do nothing while friction holds', () => {
    const load = block({ half: 5, height: 1, members: [member('chain', [-1, 0, 0], [0, 0, 1])] });
    for (const friction of ['sticking', FULL.friction] as const) {
      const { tensions, contactForces, contacts } = rest(load, forward, 0.1, friction);
      expect(tensions[0]).toBeCloseTo(0, CLOSE);
      expect(contactForces.map(([, , z]) => z)).toEqual([255, 255, 245, 245].map((one) => expect.closeTo(one, CLOSE)));
      expect(contactForces.map(([x]) => x)).toEqual([-25, -25, -25, -25].map((one) => expect.closeTo(one, CLOSE)));
      expect(contacts).toEqual(['sticks', 'sticks', 'sticks', 'sticks']);
    }
  });

  // A level chain through the center of gravity and mu 0.3, h = 0.5 over half = 5. Beyond mu the contacts slide with
  // friction mu N in all, 300 N, and the chain takes the rest: f W - 300.
  it('take over when the contacts slide', () => {
    const load = block({ half: 5, members: [along('chain', 4, 0)] });
    const { tensions, contacts } = rest(load, forward, 0.7, FULL.friction);
    expect(tensions[0]).toBeCloseTo(400, 3);
    expect(contacts).toEqual(['slides', 'slides', 'slides', 'slides']);
    const other = elasticResponse(elastic(load), rearward, 0.7, FULL);
    expect(other).toMatchObject({ outcome: 'gives-way', factor: expect.closeTo(0.3, CLOSE) });
  });
});

describe('a load that gives way', () => {
  // b / h = 1 / 4 with friction enough; the motion is a rotation about the front edge.
  it('tips at b / h', () => {
    const load = block({ height: 4, friction: 0.9 });
    for (const friction of ['sticking', FULL.friction] as const) {
      const outcome = elasticResponse(elastic(load), forward, 1, { friction });
      if (outcome.outcome !== 'gives-way') throw new Error(outcome.outcome);
      expect(outcome.factor).toBeCloseTo(0.25, CLOSE);
      expect(modeOf(outcome.mechanism, load)).toBe('tips');
      // scaled to 1 J: 1000 N * 4 m * rotation = 1
      expect(outcome.mechanism.rotation[1]).toBeCloseTo(1 / 4000, 9);
    }
  });

  it('slides at once without friction, and lifts at 1 g', () => {
    const slid = elasticResponse(elastic(block({})), leftward, 0.1, { friction: 'none' });
    expect(slid).toMatchObject({ outcome: 'gives-way', factor: 0 });
    const lifted = elasticResponse(elastic(block({})), upward, 1.5, FULL);
    expect(lifted).toMatchObject({ outcome: 'gives-way', factor: expect.closeTo(1, 9) });
  });

  it('finds no rest with its center of gravity outside the contacts', () => {
    const load = { ...block({}), centerOfGravity: [1.2, 0, 0.5] as const };
    const outcome = elasticResponse(elastic(load), forward, 0, { friction: 'sticking' });
    if (outcome.outcome !== 'impossible') throw new Error(outcome.outcome);
    expect(modeOf(outcome.mechanism, load)).toBe('tips');
  });

  // One chain ahead goes slack as the load settles on its pads; pushed against it, the load shifts until it is taut again.
  it('shifts until a slack member tightens', () => {
    const soft = block({}).contacts.map((one) => ({ ...one, stiffness: 1e5 }));
    const chain = member('chain', [-3, 0, 0], [0, 0, 0.5], { stiffness: 1e6 });
    const load = { ...block({ members: [chain] }), contacts: soft };
    expect(rest(load, forward, 0, 'none').members).toEqual(['slack']);
    // T cos a = f W with cos a = 3 / sqrt 9.25
    expect(rest(load, forward, 0.2, 'none').tensions[0]).toBeCloseTo((200 * Math.sqrt(9.25)) / 3, 1);
  });
});

describe('rest', () => {
  // A chain straight down through the middle, pretension 200, on rigid contacts: each bears (1000 + 200) / 4.
  it('bears weight and pretension', () => {
    const load = block({ members: [member('chain', [0, 0, -1], [0, 0, 0], { pretension: 200 })] });
    const { tensions, contactForces, displacement } = rest(load, forward, 0, 'sticking');
    expect(tensions[0]).toBeCloseTo(200, 3);
    for (const [, , z] of contactForces) expect(z).toBeCloseTo(300, 3);
    expect(displacement).toEqual({ velocity: [0, 0, 0], rotation: [0, 0, 0] });
  });

  // On pads of 4 x 1e6 N/m and with the chain of 1e6 N/m: settling d by both: 1000 + 200 - 1e6 d = 4e6 d, d = 0.24 mm;
  // the chain keeps -40 N: slack. With pretension 2000: d = 3000 / 5e6 = 0.6 mm, keeps 1400, pads 2400.
  it('takes pretension away as soft pads settle', () => {
    const on = (pretension: number): RigidLoad => ({
      ...block({ members: [member('chain', [0, 0, -1], [0, 0, 0], { pretension, stiffness: 1e6 })] }),
      contacts: block({}).contacts.map((one) => ({ ...one, stiffness: 1e6 })),
    });
    expect(rest(on(2000), forward, 0, 'none').tensions[0]).toBeCloseTo(1400, CLOSE);
    expect(rest(on(200), forward, 0, 'none').members).toEqual(['slack']);
    // upward by f W: chain and pads unload and load together as long as both press: d falls by f W / 5e6
    expect(rest(on(2000), upward, 1, 'none').tensions[0]).toBeCloseTo(1600, CLOSE);
    expect(rest(on(2000), downward, 1, 'none').tensions[0]).toBeCloseTo(1200, CLOSE);
  });
});

describe('what cannot be asked', () => {
  const codeOf = (call: () => unknown) => {
    try {
      return call();
    } catch (error) {
      return `${(error as { code: string }).code} ${(error as { path: string }).path}`;
    }
  };
  const load = elastic(block({ members: [along('chain', 4, 0)] }));

  it('a member without stiffness, a factor below zero or not finite', () => {
    const { stiffness: _, ...bare } = along('chain', 4, 0);
    const without = elastic(block({ members: [bare] }));
    const ask = (one: ElasticLoad, factor: number) => codeOf(() => elasticResponse(one, forward, factor, FULL));
    expect(ask(without, 1)).toBe('MISSING_FIELD members[0].stiffness');
    expect(ask(load, -0.1)).toBe('NEGATIVE factor');
    expect(ask(load, Number.NaN)).toBe('NOT_FINITE factor');
  });
});

// The law of every spring, read from the displacement: what members and contacts say they do follows from how the load
// moved. Without pretension and on rigid ground, so that rest is where nothing has moved.
it('tensions are stiffness times lengthening', () => {
  fc.assert(
    fc.property(anyLoad, anyLoading, fc.constantFrom(0.1, 0.5, 1), (plan, loading, factor) => {
      const load: ElasticLoad = {
        ...plan,
        contacts: plan.contacts.map(({ stiffness: _, ...one }) => one),
        members: plan.members.map((one) => ({ ...one, pretension: 0 })) as ElasticLoad['members'],
      };
      const outcome = elasticResponse(load, loading, factor, { friction: 'sticking' });
      if (outcome.outcome !== 'equilibrium') return;
      const { velocity, rotation } = outcome.displacement;
      const atRest = elasticResponse(load, loading, 0, { friction: 'sticking' });
      if (atRest.outcome !== 'equilibrium') throw new Error(atRest.outcome);
      load.members.forEach(({ anchor, attachment, stiffness }, index) => {
        if (outcome.members[index] === 'slack' || atRest.members[index] === 'slack') return;
        const arm = attachment.map((value, axis) => value - load.centerOfGravity[axis]!) as [number, number, number];
        const moved = [
          velocity[0] + rotation[1] * arm[2] - rotation[2] * arm[1],
          velocity[1] + rotation[2] * arm[0] - rotation[0] * arm[2],
          velocity[2] + rotation[0] * arm[1] - rotation[1] * arm[0],
        ];
        const line = attachment.map((value, axis) => value - anchor[axis]!);
        const lengthening = line.reduce((sum, part, axis) => sum + part * moved[axis]!, 0) / Math.hypot(...line);
        const gained = outcome.tensions[index]! - atRest.tensions[index]!;
        expect(Math.abs(gained - stiffness * lengthening)).toBeLessThanOrEqual(1e-6 * load.weight);
      });
    }),
    { numRuns: 500 },
  );
});
