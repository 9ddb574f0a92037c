import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { elasticLimits } from '../../src/statics/elastic/elastic-limits.js';
import type { ElasticFriction, ElasticLoad } from '../../src/statics/elastic/elastic-model.js';
import { elasticResponse } from '../../src/statics/elastic/elastic-response.js';
import { limitFactor } from '../../src/statics/limit/limit-factor.js';
import type { Loading, RigidLoad } from '../../src/statics/rigid-load.js';
import { anyLoad, anyLoading, block, FULL, forward, leftward, member, rearward, upward } from './layouts.js';

function followed(load: RigidLoad, loading: Loading, friction: ElasticFriction, upTo = 3) {
  const limits = elasticLimits(load as ElasticLoad, loading, { friction, upTo });
  if (limits.outcome !== 'followed') throw new Error(limits.outcome);
  return limits;
}

const along = (id: string, length: number, capacity: number, pretension = 0) =>
  member(id, [-length, 0, 0.5], [0, 0, 0.5], { stiffness: 4e6 / length, capacity, pretension });

describe('the first to reach its capacity', () => {
  // Two level chains of 1e6 and 2e6 N/m carry 1/3 and 2/3 of f W = f * 1000 N.
  it('is the short stiff one, though the long one is no stronger', () => {
    const load = block({ members: [along('long', 4, 600), along('short', 2, 600)] });
    const { firstAtCapacity, firstSlip, firstLift, givesWay } = followed(load, forward, 'none');
    expect(firstAtCapacity).toEqual({ factor: expect.closeTo(0.9, 5), id: 'short' });
    expect([firstSlip, firstLift, givesWay]).toEqual([null, null, null]);
    // the limit problem lets both yield: 1200 N
    expect(limitFactor(load, forward, { friction: 'none' })).toMatchObject({ factor: expect.closeTo(1.2, 9) });
  });

  // 300 N each against each other, stiffness equal: the one behind gains f W / 2 until the other is slack at f = 0.6,
  // then all of it: capacity 700 is reached at 600 + (700 - 600) = 700 N of load.
  it('counts pretension', () => {
    const ahead = member('ahead', [4, 0, 0.5], [0, 0, 0.5], { pretension: 300, capacity: 1e4 });
    const load = block({ members: [along('behind', 4, 700, 300), ahead] });
    expect(followed(load, forward, 'none').firstAtCapacity).toEqual({ factor: expect.closeTo(0.7, 5), id: 'behind' });
    const half = block({ members: [along('behind', 4, 500, 300), ahead] });
    expect(followed(half, forward, 'none').firstAtCapacity).toEqual({ factor: expect.closeTo(0.4, 5), id: 'behind' });
  });

  it('is there at rest when pretension is the capacity', () => {
    const chain = member('down', [0, 0, -1], [0, 0, 0], { pretension: 500, capacity: 499 });
    const { firstAtCapacity } = followed(block({ members: [chain] }), forward, 'sticking');
    expect(firstAtCapacity).toEqual({ factor: 0, id: 'down' });
  });

  it('is null where it is not reached up to the bound', () => {
    const load = block({ members: [along('chain', 4, 1000)] });
    expect(followed(load, forward, 'none', 0.999).firstAtCapacity).toBeNull();
    expect(followed(load, forward, 'none', 1.001).firstAtCapacity?.factor).toBeCloseTo(1, 5);
  });
});

describe('the first slip, lift and end of a block', () => {
  // Sticking, the friction f W / 4 is the same at all contacts; the rear ones bear W / 4 - f W h / (4 b) each, so they
  // slide first: f = mu (1 - f h / b), f = mu / (1 + mu h / b). h 0.5, b 1, mu 0.3: 0.3 / 1.15.
  it('slips first where it bears least', () => {
    for (const friction of ['sticking', FULL.friction] as const) {
      const { firstSlip } = followed(block({}), forward, friction);
      expect(firstSlip?.factor).toBeCloseTo(0.3 / 1.15, 5);
      expect(['contact 2', 'contact 3']).toContain(firstSlip?.id);
    }
  });

  // The rear contacts lose their force when f h / b = 1, and then it tips.
  it('lifts and tips at b / h', () => {
    const { firstLift, givesWay } = followed(block({ height: 4, friction: 0.9 }), forward, 'sticking');
    expect(firstLift).toBeNull(); // it goes over at that very factor
    expect(givesWay?.factor).toBeCloseTo(0.25, 5);
  });

  // Held down by a chain in the middle, without friction to slide on chains along x: lifts when the moment f W h has
  // emptied the rear pair: f h / b = 1 + P / W with pretension P straight down through the middle (hardly lengthened
  // before, as rigid contacts do not let go): 0.25 * (1 + 0.2).
  it('lifts later when pressed down', () => {
    const chain = member('down', [0, 0, -3], [0, 0, 0], { pretension: 200, capacity: 1e4 });
    const { firstLift, givesWay } = followed(block({ height: 4, members: [chain] }), forward, 'sticking');
    expect(firstLift?.factor).toBeCloseTo(0.3, 4);
    expect(givesWay).toBeNull(); // the chain, 1 m behind the edge, holds as long as it is not asked for its capacity
  });

  it('slides at mu, whichever way', () => {
    for (const loading of [forward, rearward, leftward]) {
      expect(followed(block({}), loading, FULL.friction).givesWay?.factor).toBeCloseTo(0.3, 5);
    }
    expect(followed(block({}), upward, FULL.friction).givesWay?.factor).toBeCloseTo(1, 9);
  });
});

it('finds no rest where there is none, and asks for a bound', () => {
  const over = { ...block({}), centerOfGravity: [1.2, 0, 0.5] as const } as ElasticLoad;
  expect(elasticLimits(over, forward, { friction: 'none', upTo: 1 }).outcome).toBe('impossible');
  for (const upTo of [0, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => elasticLimits(over, forward, { friction: 'none', upTo })).toThrow(/upTo/);
  }
});

describe('in random layouts', () => {
  // The factor of first capacity is where elasticResponse, asked there, says so; just below it no member is there.
  it('the factors are those at which the response reaches them', () => {
    let reached = 0;
    fc.assert(
      fc.property(
        anyLoad,
        anyLoading,
        fc.constantFrom('none' as const, 'sticking' as const, FULL.friction),
        (load, loading, friction) => {
          const strong = load.members.map((one) => ({
            ...one,
            capacity: Math.max(one.capacity, 1.1 * one.pretension! + 100),
          }));
          const plan = { ...load, members: strong } as ElasticLoad;
          const limits = elasticLimits(plan, loading, { friction, upTo: 2 });
          if (limits.outcome !== 'followed' || limits.firstAtCapacity === null) return;
          const { factor, id } = limits.firstAtCapacity;
          const at = elasticResponse(plan, loading, factor, { friction });
          if (factor === 0 || at.outcome !== 'equilibrium') return; // beyond it at rest, or gives way at this very factor
          const which = plan.members.findIndex((one) => one.id === id);
          expect(Math.abs(at.tensions[which]! - plan.members[which]!.capacity)).toBeLessThanOrEqual(1e-6 * plan.weight);
          const before = elasticResponse(plan, loading, factor * 0.999, { friction });
          if (before.outcome === 'equilibrium') {
            plan.members.forEach(({ capacity }, index) => {
              expect(before.tensions[index]).toBeLessThanOrEqual(capacity * (1 + 1e-9));
            });
          }
          reached++;
        },
      ),
      { numRuns: 400, endOnFailure: true, seed: 400 },
    );
    expect(reached).toBeGreaterThan(50);
  });

  // Where the springs hold within capacities, so does the limit problem: its balance is the most favorable one. The
  // pyramid of friction is the same.
  it('the limit factor is never below the factor of first capacity', () => {
    let compared = 0;
    fc.assert(
      fc.property(anyLoad, anyLoading, (load, loading) => {
        for (const friction of ['none', FULL.friction] as const) {
          const limits = elasticLimits(load as ElasticLoad, loading, { friction, upTo: 3 });
          if (limits.outcome !== 'followed') continue;
          const held = Math.min(limits.firstAtCapacity?.factor ?? 3, limits.givesWay?.factor ?? 3);
          const limit = limitFactor(load, loading, { friction });
          if (held === 0 || limit.outcome === 'not-solved') continue;
          expect(limit.outcome).not.toBe('impossible');
          if (limit.outcome === 'limited') expect(limit.factor).toBeGreaterThanOrEqual(held - 1e-5 * Math.max(1, held));
          compared++;
        }
      }),
      { numRuns: 300, endOnFailure: true, seed: 300 },
    );
    expect(compared).toBeGreaterThan(100);
  });
});
