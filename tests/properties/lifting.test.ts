// Slings: what must hold whatever the sling is, and 10,000 of them against brute force.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkLift,
  euEn818_2008,
  explain,
  type Point,
  RiggingError,
  type SlingTensions,
  slingRating,
  slingTensions,
  usAlloySling_2011,
} from '../../src/index.js';
import { hang, shareLoad } from '../../src/statics/hanging-load.js';
import type { Vec3 } from '../../src/statics/vector.js';
import { settle } from '../statics/least-energy.js';
import { anyGarbage, givesResultOrIssue, spoiled } from './garbage.js';

/** The same numbers in every run (Numerical Recipes' quick generator). */
function numbersFrom(seed: number): (least: number, most: number) => number {
  let state = seed;
  return (least, most) => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return least + ((most - least) * state) / 2 ** 32;
  };
}
const distance = (a: readonly number[], b: readonly number[]) =>
  Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!, a[2]! - b[2]!);
const below = (g: readonly number[], hook: readonly number[]) => ({
  center: g.map((each, axis) => each - hook[axis]!),
});

describe('10,000 slings against the least potential energy, found by moving the load in the room', () => {
  it('one to three legs of any length over any load: tensions and tilt', { timeout: 240_000 }, () => {
    const between = numbersFrom(12345);
    let settled = 0;
    let slack = 0;
    let worst = 0;
    for (let run = 0; run < 9000; run++) {
      const count = 1 + (run % 3);
      const g: Vec3 = [between(-0.5, 0.5), between(-0.5, 0.5), between(-1.5, -0.1)];
      const hook = [g[0] + between(-0.6, 0.6), g[1] + between(-0.6, 0.6), between(2, 5)];
      const legs = Array.from({ length: count }, () => {
        const at: Vec3 = [between(-2, 2), between(-1.5, 1.5), between(0, 0.5)];
        return { at, length: distance(hook, at) };
      });
      const rest = hang({ weight: 1000, centerOfGravity: g, legs });
      if (rest.outcome !== 'rests') throw new Error(`run ${run}: ${rest.outcome}`);
      const { greatest, determinate, residual } = shareLoad({ weight: 1000, centerOfGravity: g, legs }, rest, 0);
      expect([determinate, residual < 1e-9]).toEqual([true, true]);
      const found = settle(
        1000,
        g,
        legs.map((leg) => ({ ...leg, stiffness: 4e5 })),
        below(g, hook),
        true,
      );
      if (!found.converged) continue;
      settled++;
      if (greatest.some((tension) => tension === 0)) slack++;
      const gaps = [
        ...greatest.map((tension, leg) => Math.abs(tension - found.tensions[leg]!) / 1000),
        ...rest.up.map((each, axis) => Math.abs(each - found.up[axis]!)),
      ];
      worst = Math.max(worst, ...gaps);
    }
    // brute force need not end, but it nearly always does; where it does, both agree
    expect(settled).toBeGreaterThan(8950);
    expect(slack).toBeGreaterThan(100);
    expect(worst).toBeLessThan(1e-6);
  });

  it('four legs that stretch, some of them a hair too long', { timeout: 240_000 }, () => {
    const between = numbersFrom(777);
    let settled = 0;
    let worst = 0;
    for (let run = 0; run < 1000; run++) {
      const [x, y, height] = [between(1, 2), between(0.5, 1.5), between(2, 5)];
      const g: Vec3 = [between(-0.4, 0.4), between(-0.3, 0.3), between(-1.5, -0.1)];
      const corners = [
        [-x, -y],
        [x, -y],
        [x, y],
        [-x, y],
      ];
      const legs = corners.map(([a, b], index) => {
        const at: Vec3 = [a! * between(0.7, 1.3), b! * between(0.7, 1.3), between(0, 0.4)];
        const longer = run % 2 === 1 && index === 0 ? between(0, 1e-4) : 0;
        return { at, length: distance([0, 0, height], at) + longer, axialStiffness: between(1.5e7, 6e7) };
      });
      const rest = hang({ weight: 1000, centerOfGravity: g, legs });
      if (rest.outcome !== 'rests') throw new Error(`run ${run}: ${rest.outcome}`);
      const { elastic, greatest } = shareLoad({ weight: 1000, centerOfGravity: g, legs }, rest, 0.01);
      const springs = legs.map(({ at, length, axialStiffness }) => ({
        at,
        length,
        stiffness: axialStiffness / length,
      }));
      const found = settle(1000, g, springs, below(g, [0, 0, height]), false);
      if (!found.converged) continue;
      settled++;
      for (const [leg, tension] of found.tensions.entries()) {
        worst = Math.max(worst, Math.abs(tension - elastic![leg]!) / 1000);
        // no real sharing is worse than the worst case; a thousandth for the way that it sinks
        expect(tension).toBeLessThan(greatest[leg]! + 1);
      }
    }
    expect(settled).toBeGreaterThan(980);
    // the closed form takes the load as sinking little: here about 0.1 mm over meters
    expect(worst).toBeLessThan(1e-3);
  });
});

/** To the hundredth, as anybody measures. */
const within = (least: number, most: number) =>
  fc.integer({ min: Math.round(least * 100), max: Math.round(most * 100) }).map((hundredths) => hundredths / 100);
const slings = fc.record({
  mass: within(10, 9000),
  center: fc.tuple(within(-0.4, 0.4), within(-0.4, 0.4), within(-1.5, -0.1)),
  picks: fc
    .uniqueArray(fc.tuple(within(-2, 2), within(-2, 2), within(0, 0.5)), {
      minLength: 1,
      maxLength: 4,
      selector: String,
    })
    .filter((picks) => picks.every(([x, y]) => Math.hypot(x, y) > 0.3)),
  height: within(2, 6),
});
type Sling = typeof slings extends fc.Arbitrary<infer S> ? S : never;

function solve({ mass, center, picks, height }: Sling, unit: 'm' | 'ft' = 'm', factor = 1): SlingTensions | string {
  const point = (of: readonly number[]) =>
    of.map((each) => ({ value: unit === 'm' ? each * factor : (each * factor) / 0.3048, unit })) as unknown as Point;
  try {
    return slingTensions({
      load: { mass: { value: mass, unit: 'kg' }, centerOfGravity: point(center) },
      legs: picks.map((pick, index) => ({ id: `${index}`, at: point(pick) })),
      hook: point([0, 0, height]),
      units: 'si',
    });
  } catch (error) {
    if (error instanceof RiggingError) return error.code;
    throw error;
  }
}

describe('slingTensions', () => {
  it('vertical parts add up to the weight, no leg pushes, and no sharing is worse than the worst case', () => {
    fc.assert(
      fc.property(slings, (sling) => {
        const found = solve(sling);
        if (typeof found === 'string' || found.outcome === 'unstable') return;
        const lift = (tensions: readonly number[]) =>
          tensions.reduce(
            (sum, each, leg) => sum + each * Math.sin((found.legs[leg]!.angle.fromHorizontal.value * Math.PI) / 180),
            0,
          );
        const weight = (sling.mass * 9.80665) / 1000;
        const elastic = found.legs.map(({ elasticTension }) => elasticTension!.value);
        expect(lift(elastic) / weight).toBeCloseTo(1, 6);
        if (found.determinate) expect(lift(found.legs.map(({ tension }) => tension.value)) / weight).toBeCloseTo(1, 6);
        for (const { tension, elasticTension } of found.legs) {
          expect(elasticTension!.value).toBeGreaterThanOrEqual(0);
          expect(elasticTension!.value).toBeLessThanOrEqual(tension.value + 1e-6 * weight);
        }
      }),
      { numRuns: 1500, seed: 5 },
    );
  });

  it('does not know feet from meters; twice as large is as tilted; twice as heavy is twice as tight', () => {
    fc.assert(
      fc.property(slings, (sling) => {
        const one = solve(sling);
        for (const [other, times] of [
          [solve(sling, 'ft'), 1],
          [solve(sling, 'm', 2), 1],
          [solve({ ...sling, mass: sling.mass * 2 }), 2],
        ] as const) {
          if (typeof one === 'string' || typeof other === 'string') expect(typeof other).toBe(typeof one);
          else {
            expect(other.outcome).toBe(one.outcome);
            for (const [leg, { tension }] of other.legs.entries()) {
              expect(Math.abs(tension.value / times - one.legs[leg]!.tension.value)).toBeLessThan(1e-6 * sling.mass);
            }
          }
        }
      }),
      { numRuns: 300, seed: 6 },
    );
  });

  it('a wider included angle never lowers the tension of a leg', () => {
    fc.assert(
      fc.property(within(0.1, 3), within(0.01, 1), within(0.2, 1.4), (half, more, share) => {
        // two legs of 5 m over a center of gravity anywhere between the picks, spread wider and wider
        const at = (spread: number) => {
          const pick = (x: number): Point => [{ value: x, unit: 'm' }, '0 m', '0 m'];
          return slingTensions({
            load: {
              mass: '1000 kg',
              centerOfGravity: [{ value: spread * (share - 0.8) * 0.1, unit: 'm' }, '0 m', '-1 m'],
            },
            legs: [-1, 1].map((side) => ({ id: `${side}`, at: pick(side * spread), length: '5 m' })),
          }).legs.reduce((sum, { tension }) => sum + tension.value, 0);
        };
        expect(at(half + more)).toBeGreaterThan(at(half));
      }),
      { numRuns: 300, seed: 7 },
    );
  });

  it('goes through JSON, and says the same twice', () => {
    fc.assert(
      fc.property(slings, (sling) => {
        const found = solve(sling);
        if (typeof found === 'string') return;
        expect(JSON.stringify(solve(sling))).toBe(JSON.stringify(found));
        expect(explain(JSON.parse(JSON.stringify(found)), { as: 'text' })).toBe(explain(found, { as: 'text' }));
      }),
      { numRuns: 100, seed: 8 },
    );
  });
});

describe('slingRating', () => {
  it('a flatter leg never raises the limit, and heat never does', () => {
    const angle = within(0, 60);
    fc.assert(
      fc.property(
        fc.constantFrom('double', 'triple', 'quad'),
        angle,
        angle,
        within(100, 700),
        (hitch, one, other, heat) => {
          for (const rate of [
            (fromVertical: number, temperature: number) =>
              slingRating({
                ratings: usAlloySling_2011,
                size: '1/2',
                grade: 80,
                hitch,
                angle: { fromVertical: { value: fromVertical, unit: 'deg' } },
                temperature: { value: temperature, unit: 'F' },
              }),
            (fromVertical: number, temperature: number) =>
              slingRating({
                ratings: euEn818_2008,
                size: '13 mm',
                grade: '8',
                hitch,
                angle: { fromVertical: { value: fromVertical, unit: 'deg' } },
                temperature: { value: temperature, unit: 'F' },
              }),
          ]) {
            const cool = rate(Math.min(one, other), 70).workingLoadLimit!.value;
            expect(rate(Math.max(one, other), 70).workingLoadLimit!.value).toBeLessThanOrEqual(cool);
            expect(rate(Math.min(one, other), heat).workingLoadLimit!.value).toBeLessThanOrEqual(cool);
          }
        },
      ),
      { numRuns: 300, seed: 9 },
    );
  });
});

describe('wrong input', () => {
  const legs = [
    { id: 'a', at: ['-1 ft', '0 ft', '0 ft'], length: '3 ft' },
    { id: 'b', at: ['1 ft', '0 ft', '0 ft'], length: '3 ft', axialStiffness: '900 kip' },
  ];
  const load = { mass: '1000 lb', centerOfGravity: ['0 ft', '0 ft', '-1 ft'] };
  const rated = { size: '3/8', grade: 80, temperature: '70 F', hottest: '90 F' };
  const angle = { fromHorizontal: '60 deg' };
  it.each([
    [
      'slingRating',
      slingRating,
      { ...rated, hitch: 'double', angle, load: '5000 lb', markedWll: '9 kip', markedAt: angle },
    ],
    [
      'slingRating by the formula',
      slingRating,
      { ...rated, hitch: 'double-choker', legAngles: [angle, angle], chokeAngle: '130 deg', method: 'formula' },
    ],
    ['slingTensions', slingTensions, { load, legs, units: 'us' }],
    [
      'checkLift by angle',
      checkLift,
      { load, sling: { ...rated, hitch: 'quad', angle, tagLegible: true, condition: 'sound' } },
    ],
    [
      'checkLift by legs',
      checkLift,
      {
        load,
        legs,
        sling: { ...rated, tagLegible: true, usedForTowing: false },
        topParts: [{ id: 'master', kind: 'master-link', markedWll: '9000 lb' }],
        legParts: [{ id: 'hook', kind: 'slip-hook', size: '3/8', grade: 80 }],
        riggingMass: '50 lb',
        peopleClear: true,
        machine: { kind: 'forks', liftCapacity: '3000 lb', makerAllows: true },
      },
    ],
  ] as [string, (input: never) => unknown, object][])(
    '%s gives a result without NaN, or a RiggingError',
    (_, call, good) => {
      fc.assert(
        fc.property(
          spoiled(good, anyGarbage),
          fc.constantFrom('United States', 'Europe', 'none', 'null', 'empty'),
          (input, table) => {
            const ratings = {
              'United States': usAlloySling_2011,
              Europe: euEn818_2008,
              none: undefined,
              null: null,
              empty: {},
            }[table];
            const whole =
              typeof input === 'object' && input !== null && call !== slingTensions ? { ...input, ratings } : input;
            givesResultOrIssue(() => call(whole as never));
          },
        ),
        { numRuns: 2000, seed: 10 },
      );
    },
  );
});
