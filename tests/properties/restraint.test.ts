// solveRestraint on random layouts: what must hold whatever the layout is.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { explain, type Point, type Restraint, RiggingError, solveRestraint, type TieDown } from '../../src/index.js';

type Triple = readonly [number, number, number];

/** To the hundredth, as anybody measures: an offset of a millionth makes a layout degenerate, not different. */
const within = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 100), max: Math.round(max * 100) }).map((hundredths) => hundredths / 100);
const meters = (of: Triple, unit: 'm' | 'ft' = 'm'): Point =>
  of.map((value) => (unit === 'm' ? { value, unit } : { value: value / 0.3048, unit })) as unknown as Point;

/** A machine about 3 m behind the front edge, its tires on a rectangle, one to eight tie-downs from deck to frame. */
const layouts = fc.record({
  mass: within(300, 9000),
  friction: within(0, 0.8),
  center: fc.tuple(within(-3.4, -2.6), within(-0.2, 0.2), within(0.3, 1.6)),
  half: fc.tuple(within(0.6, 1.4), within(0.5, 1)),
  runs: fc.array(
    fc.record({
      anchor: fc.tuple(within(-6, 0), within(-1.25, 1.25), within(0, 0.2)),
      attachment: fc.tuple(within(-4.2, -1.8), within(-0.6, 0.6), within(0.3, 1.2)),
      capacity: within(1, 60),
      pretension: within(0.01, 5),
      stiffness: within(500, 20_000),
    }),
    { minLength: 1, maxLength: 8 },
  ),
});
type Layout = typeof layouts extends fc.Arbitrary<infer L> ? L : never;
type Move = (of: Triple) => Triple;
const stay: Move = (of) => of;

function solve({ mass, friction, center, half: [x, y], runs }: Layout, move = stay, unit: 'm' | 'ft' = 'm'): Restraint {
  const at = (of: Triple) => meters(move(of), unit);
  const corners: Triple[] = [
    [-3 + x, y, 0],
    [-3 + x, -y, 0],
    [-3 - x, y, 0],
    [-3 - x, -y, 0],
  ];
  return solveRestraint({
    articles: [
      {
        id: 'machine',
        kind: 'machinery',
        mass: { value: mass, unit: 'kg' },
        length: '3 m',
        friction,
        centerOfGravity: at(center),
        contacts: corners.map((corner) => ({ at: at(corner) })),
      },
    ],
    tieDowns: runs.map(
      ({ anchor, attachment, capacity, pretension, stiffness }, index): TieDown => ({
        id: `${index}`,
        holds: 'machine',
        path: 'vehicle-to-cargo',
        anchor: at(anchor),
        attachment: at(attachment),
        capacities: { lashingCapacity: { value: capacity, unit: 'kN' } },
        pretension: { value: pretension, unit: 'kN' },
        axialStiffness: { value: stiffness, unit: 'kN' },
      }),
    ),
    accelerations: { forward: '0.8 g', rearward: '0.5 g', left: '0.5 g', right: '0.5 g' },
    capacity: 'lashingCapacity',
    friction: 'full',
    units: 'si',
  });
}

const limits = ({ directions }: Restraint) => directions.map(({ limit }) => limit.factor ?? 1e9);
/** Layouts that all but touch a degenerate one may get no answer; an answer that is given must be right. */
const solved = ({ directions }: Restraint) =>
  directions.every(({ limit, elastic }) => limit.outcome !== 'not-solved' && elastic?.outcome !== 'not-solved');
const close = (value: number) => expect.closeTo(value, 6);
const RUNS = { numRuns: 40, endOnFailure: true, seed: 40 };

describe('solveRestraint on random layouts', () => {
  it('gives numbers, and balances to 1e-9 of the weight', () => {
    fc.assert(
      fc.property(layouts, (layout) => {
        const result = solve(layout);
        expect(JSON.stringify(result)).not.toMatch(/NaN|Infinity/);
        for (const { limit, elastic, verdict } of result.directions) {
          expect(limit.outcome).not.toBe('not-solved');
          if (limit.residual !== null) expect(limit.residual).toBeLessThanOrEqual(1e-9);
          if (elastic?.residual != null) expect(elastic.residual).toBeLessThanOrEqual(1e-9);
          if (verdict === 'pass') expect(limit.factor ?? 1).toBeGreaterThanOrEqual(1);
        }
      }),
      RUNS,
    );
  });

  it('never passes as springs what the limit cannot balance', () => {
    // lower-bound theorem: what springs within their capacities balance, the limit can balance too
    fc.assert(
      fc.property(layouts, (layout) => {
        for (const { limit, elastic } of solve(layout).directions) {
          if (elastic?.verdict === 'pass' && limit.factor !== null) expect(limit.factor).toBeGreaterThan(1 - 1e-6);
        }
      }),
      RUNS,
    );
  });

  it('is the mirror image for the mirror image', () => {
    fc.assert(
      fc.property(layouts, (layout) => {
        const result = solve(layout);
        fc.pre(solved(result));
        const [forward, rearward, left, right] = limits(result);
        expect(limits(solve(layout, ([x, y, z]) => [x, -y, z]))).toEqual(
          [forward, rearward, right, left].map((each) => close(each!)),
        );
      }),
      RUNS,
    );
  });

  it('does not care for the unit of length', () => {
    fc.assert(
      fc.property(layouts, (layout) => {
        expect(limits(solve(layout, stay, 'ft'))).toEqual(limits(solve(layout)).map(close));
      }),
      RUNS,
    );
  });

  it('holds no less with a tie-down more, and no more with one gone', () => {
    fc.assert(
      fc.property(layouts, (layout) => {
        const result = solve(layout);
        fc.pre(
          solved(result) &&
            result.directions.every(({ withoutOne }) => withoutOne.every(({ factor }) => factor !== null)),
        );
        for (const { limit, withoutOne } of result.directions) {
          for (const { factor } of withoutOne)
            expect(factor ?? 1e9).toBeLessThanOrEqual((limit.factor ?? 1e9) * (1 + 1e-6) + 1e-6);
        }
      }),
      RUNS,
    );
  });

  it('is explained alike after JSON', () => {
    fc.assert(
      fc.property(layouts, (layout) => {
        const result = solve(layout);
        expect(explain(JSON.parse(JSON.stringify(result)))).toBe(explain(result));
      }),
      { numRuns: 30 },
    );
  });

  it('gives a result or a RiggingError for garbage', () => {
    fc.assert(
      fc.property(fc.anything({ withNullPrototype: true }), fc.anything(), (one, other) => {
        const calls = [
          () => solveRestraint(one as never),
          () =>
            solveRestraint({
              articles: [one],
              tieDowns: [other],
              accelerations: one,
              capacity: 'lashingCapacity',
              friction: 'full',
            } as never),
          () =>
            solveRestraint({
              articles: one,
              tieDowns: other,
              accelerations: { forward: other },
              capacity: one,
              friction: other,
            } as never),
        ];
        for (const call of calls) {
          try {
            call();
          } catch (error) {
            expect(error).toBeInstanceOf(RiggingError);
          }
        }
      }),
      { numRuns: 400 },
    );
  });
});
