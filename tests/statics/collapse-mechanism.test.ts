import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { collapseMechanism } from '../../src/statics/limit/collapse-mechanism.js';
import { limitFactor } from '../../src/statics/limit/limit-factor.js';
import { modeOf, motionOf, type Twist } from '../../src/statics/mechanism.js';
import type { Loading, RigidLoad } from '../../src/statics/rigid-load.js';
import { dot, lengthOf, subtract } from '../../src/statics/vector.js';
import { anyFriction, anyLoad, anyLoading, block, FULL, forward, member, NONE, rearward, upward } from './layouts.js';

const mechanismOf = (load: RigidLoad, loading: Loading, options: typeof FULL | typeof NONE = FULL): Twist => {
  const outcome = limitFactor(load, loading, options);
  if (outcome.outcome !== 'limited') throw new Error(outcome.outcome);
  return collapseMechanism(load, loading, outcome, options)!;
};

describe('the mechanism of a block of 1000 N', () => {
  // work of the varying load: 1000 N * velocity = 1 J, so 0.001 m
  it('slides straight and rises by mu, as the limit problem has it', () => {
    const { velocity, rotation } = mechanismOf(block({}), forward);
    expect(velocity[0]).toBeCloseTo(0.001, 15);
    expect(velocity[1]).toBeCloseTo(0, 15);
    expect(velocity[2]).toBeCloseTo(0.0003, 15);
    expect(lengthOf(rotation)).toBeCloseTo(0, 15);
  });

  // Tips about the edge at x = 1 with the center of gravity 4 m up: velocity_x = omega h, so omega = 0.001 / 4; the
  // center of gravity is 1 m behind the edge and rises by omega * 1. Right-handed about +y, x goes down... and z forward.
  it('tips about its front edge', () => {
    const load = block({ height: 4 });
    const twist = mechanismOf(load, forward);
    expect(twist.rotation[1]).toBeCloseTo(0.00025, 15);
    expect(twist.velocity[2]).toBeCloseTo(0.00025, 15);
    for (const { at } of load.contacts.slice(0, 2)) expect(lengthOf(motionOf(twist, load, at))).toBeCloseTo(0, 15);
    expect(modeOf(twist, load)).toBe('tips');
  });

  // Two chains rearward, one on each side, without friction; the left one of capacity 0: the load turns to the left
  // end's advance, that is to the right about the vertical.
  it('turns when one side alone is held', () => {
    const chains = [1, -1].map((y) => member(`${y}`, [-3, y, 0.5], [0, y, 0.5], { capacity: y > 0 ? 0 : 1000 }));
    const load = block({ half: 3, members: chains });
    const twist = mechanismOf(load, forward, NONE);
    expect(motionOf(twist, load, [0, -1, 0.5])[0]).toBeCloseTo(0, 12);
    expect(twist.rotation[2]).toBeLessThan(0);
    expect(modeOf(twist, load)).toBe('turns');
  });

  it('lifts', () => {
    expect(mechanismOf(block({}), upward).velocity[2]).toBeCloseTo(0.001, 15);
    expect(modeOf(mechanismOf(block({}), upward), block({}))).toBe('lifts');
  });

  it('is mirrored with the loading', () => {
    const [front, back] = [mechanismOf(block({ height: 4 }), forward), mechanismOf(block({ height: 4 }), rearward)];
    expect(back.velocity[0]).toBeCloseTo(-front.velocity[0], 15);
    expect(back.rotation[1]).toBeCloseTo(-front.rotation[1], 15);
  });
});

// The upper bound: no equilibrium can have a factor above sum(capacity * lengthening) - weight * steady . velocity when
// the contacts do no work in the motion. Together with the balance it proves the factor from both sides.
it('proves the factor from above, in random layouts', () => {
  let proved = 0;
  fc.assert(
    fc.property(anyLoad, anyLoading, anyFriction, (load, loading, friction) => {
      const outcome = limitFactor(load, loading, { friction });
      if (outcome.outcome !== 'limited') return;
      const twist = collapseMechanism(load, loading, outcome, { friction })!;
      const { weight, centerOfGravity, contacts, members } = load;
      expect(weight * dot(loading.varying, twist.velocity)).toBeCloseTo(1, 9);
      const size = Math.max(
        ...contacts.map(({ at }) => lengthOf(subtract(at, centerOfGravity))),
        ...members.map(({ attachment }) => lengthOf(subtract(attachment, centerOfGravity))),
      );
      const most = lengthOf(twist.velocity) + lengthOf(twist.rotation) * size;
      for (const { at, friction: coefficient } of contacts) {
        const [x, y, z] = motionOf(twist, load, at);
        const mu = friction === 'none' ? 0 : coefficient * friction.multiplier;
        const sides = friction === 'none' ? 1 : friction.coneSides;
        for (let side = 0; side < sides; side++) {
          const angle = (2 * Math.PI * side) / sides;
          expect(z + mu * (x * Math.cos(angle) + y * Math.sin(angle))).toBeGreaterThanOrEqual(-1e-9 * most);
        }
      }
      const lengthening = members.map(({ anchor, attachment }) => {
        const along = subtract(anchor, attachment);
        return -dot(along, motionOf(twist, load, attachment)) / lengthOf(along);
      });
      const bound = members.reduce(
        (sum, { capacity }, index) => sum + capacity * Math.max(0, lengthening[index]!),
        -weight * dot(loading.steady, twist.velocity),
      );
      const scale = members.reduce((sum, { capacity }) => sum + capacity, weight) * most;
      expect(Math.abs(bound - outcome.factor)).toBeLessThanOrEqual(1e-8 * scale);
      proved++;
    }),
    { numRuns: 2000 },
  );
  expect(proved).toBeGreaterThan(1000);
}, 60_000);
