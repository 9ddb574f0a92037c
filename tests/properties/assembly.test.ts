import { assemblyRating, chainRating, type Part, us49cfr393_108_2024, usWeldedChain_2003 } from 'chain-rigging';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyGarbage, givesResultOrIssue, jsonGarbage, spoiled } from './garbage.js';

const law = us49cfr393_108_2024;

// An oracle in whole numbers: loads in steps of 1e-13 N, from 1 lb = 0.453 592 37 kg and g = 9.806 65 m/s², exact.
const STEPS = {
  lb: 44_482_216_152_605n,
  lbf: 44_482_216_152_605n,
  kip: 44_482_216_152_605_000n,
  'short-ton': 88_964_432_305_210_000n,
  kg: 98_066_500_000_000n,
  t: 98_066_500_000_000_000n,
  kN: 10_000_000_000_000_000n,
  daN: 100_000_000_000_000n,
} as const;
type LoadUnit = keyof typeof STEPS;

/** A load of so many thousandths of a unit. */
interface Load {
  readonly thousandths: number;
  readonly unit: LoadUnit;
}
const load = fc.record({
  thousandths: fc.integer({ min: 1, max: 50_000_000 }),
  unit: fc.constantFrom(...(Object.keys(STEPS) as LoadUnit[])),
});
const sizeOf = ({ thousandths, unit }: Load) => BigInt(thousandths) * STEPS[unit];
const least = (loads: readonly Load[]) => loads.map(sizeOf).sort((a, b) => (a < b ? -1 : 1))[0]!;
const pounds = (steps: bigint) => Number(steps) / Number(STEPS.lb) / 1000;
/** As text or as an object: both name the same decimal. */
const mark = ({ thousandths, unit }: Load, asText: boolean) =>
  asText
    ? (`${Math.trunc(thousandths / 1000)}.${String(thousandths % 1000).padStart(3, '0')} ${unit}` as const)
    : ({ value: thousandths / 1000, unit } as const);

const loads = fc.array(load, { minLength: 1, maxLength: 8 });
/** Loads close to each other, so that ties and near ties are common: a few pounds written in any unit. */
const close = fc.array(
  fc.oneof(
    fc.record({ thousandths: fc.integer({ min: 999, max: 1001 }), unit: fc.constantFrom<LoadUnit>('lb', 'lbf') }),
    fc.record({ thousandths: fc.constantFrom(1, 2), unit: fc.constantFrom<LoadUnit>('kip') }),
    fc.record({ thousandths: fc.constantFrom(453, 454), unit: fc.constantFrom<LoadUnit>('kg') }),
  ),
  { minLength: 2, maxLength: 8 },
);
const series = fc.oneof(loads, close);
const partsOf = (each: readonly Load[], asText = true): Part[] =>
  each.map((one, at) => ({ id: `part-${at}`, kind: 'shackle', markedWll: mark(one, asText) as never }));

describe('the weakest part', () => {
  it('is the least of all, exactly, and every part that ties with it', () => {
    fc.assert(
      fc.property(series, fc.boolean(), (each, asText) => {
        const result = assemblyRating({ ratings: law, parts: partsOf(each, asText) });
        const low = least(each);
        expect(result.weakest).toEqual(each.flatMap((one, at) => (sizeOf(one) === low ? [`part-${at}`] : [])));
        expect(result.workingLoadLimit?.value).toBeCloseTo(pounds(low), 6);
        expect(result.verdict).toBe('pass');
      }),
    );
  });
  it('does not depend on the order of the parts', () => {
    fc.assert(
      fc.property(
        series.chain((each) =>
          fc.tuple(
            fc.constant(each),
            fc.shuffledSubarray(
              each.map((_, at) => at),
              { minLength: each.length, maxLength: each.length },
            ),
          ),
        ),
        ([each, order]) => {
          const parts = partsOf(each);
          const straight = assemblyRating({ ratings: law, parts });
          const shuffled = assemblyRating({ ratings: law, parts: order.map((at) => parts[at]!) });
          expect(shuffled.workingLoadLimit?.value).toBeCloseTo(straight.workingLoadLimit?.value ?? Number.NaN, 6);
          expect([...shuffled.weakest].sort()).toEqual([...straight.weakest].sort());
        },
      ),
    );
  });
  it('is never raised by one more part', () => {
    fc.assert(
      fc.property(series, load, (each, one) => {
        const limit = (list: readonly Load[]) =>
          assemblyRating({ ratings: law, parts: partsOf(list) }).workingLoadLimit!.value;
        expect(limit([...each, one])).toBeLessThanOrEqual(limit(each));
      }),
    );
  });
  it('carries a load exactly up to its limit', () => {
    fc.assert(
      fc.property(series, fc.oneof(load, fc.constant(undefined)), (each, other) => {
        const wanted = other ?? each[0]!;
        const { verdict, utilization } = assemblyRating({
          ratings: law,
          parts: partsOf(each),
          load: mark(wanted, true) as never,
        });
        const fits = sizeOf(wanted) <= least(each);
        expect(verdict).toBe(fits ? 'pass' : 'fail');
        expect(utilization! <= 1).toBe(fits);
        expect(utilization === 1).toBe(sizeOf(wanted) === least(each));
      }),
    );
  });
});

describe('beside the known parts', () => {
  it('an unknown part leaves their least as a ceiling', () => {
    fc.assert(
      fc.property(series, fc.nat(), (each, where) => {
        const parts = partsOf(each);
        const known = assemblyRating({ ratings: law, parts });
        parts.splice(where % (parts.length + 1), 0, { id: 'unknown', kind: 'binder' });
        expect(assemblyRating({ ratings: law, parts })).toMatchObject({
          verdict: 'undetermined',
          workingLoadLimit: null,
          weakest: [],
          atMost: { value: known.workingLoadLimit?.value, unit: 'lb' },
        });
      }),
    );
  });
  it('a damaged part makes the whole zero, unknown ones or not', () => {
    fc.assert(
      fc.property(series, fc.nat(), fc.boolean(), (each, where, unknown) => {
        const parts: Part[] = [...partsOf(each), ...(unknown ? [{ id: 'unknown', kind: 'binder' } as const] : [])];
        parts.splice(where % (parts.length + 1), 0, {
          id: 'damaged',
          kind: 'chain',
          size: '3/8',
          grade: 70,
          condition: 'damaged',
        });
        expect(assemblyRating({ ratings: law, parts })).toMatchObject({
          verdict: 'fail',
          workingLoadLimit: { value: 0 },
          weakest: ['damaged'],
        });
      }),
    );
  });
});

describe('legs side by side', () => {
  const legs = fc.array(fc.array(load, { minLength: 1, maxLength: 3 }), { minLength: 2, maxLength: 4 });
  const bridle = (each: readonly (readonly Load[])[], loadSharing: 'equal' | 'one-leg'): Part => ({
    id: 'bridle',
    kind: 'parallel',
    loadSharing,
    legs: each.map((leg) => partsOf(leg)),
  });
  it('carry n times the weakest leg, or the weakest leg', () => {
    fc.assert(
      fc.property(legs, load, (each, wanted) => {
        const low = least(each.flat());
        for (const [sharing, limit] of [
          ['equal', low * BigInt(each.length)],
          ['one-leg', low],
        ] as const) {
          const result = assemblyRating({
            ratings: law,
            parts: [bridle(each, sharing)],
            load: mark(wanted, true) as never,
          });
          expect(result.workingLoadLimit?.value).toBeCloseTo(pounds(limit), 5);
          expect(result.verdict).toBe(sizeOf(wanted) <= limit ? 'pass' : 'fail');
        }
      }),
    );
  });
  it('carry their own limit exactly', () => {
    // The weakest leg taken n times, written as a decimal of its own unit.
    fc.assert(
      fc.property(load, fc.integer({ min: 2, max: 9 }), ({ thousandths, unit }, count) => {
        const alike = Array.from({ length: count }, () => [{ thousandths, unit }]);
        const wanted = { thousandths: thousandths * count, unit };
        expect(
          assemblyRating({ ratings: law, parts: [bridle(alike, 'equal')], load: mark(wanted, true) as never }),
        ).toMatchObject({ verdict: 'pass', utilization: 1 });
      }),
    );
  });
});

describe('the result', () => {
  const anyPart = fc.constantFrom<Part>(
    { id: 'a', kind: 'chain', size: '3/8', grade: 70 },
    { id: 'b', kind: 'chain', size: '1/2' },
    { id: 'c', kind: 'chain', size: '9/32', grade: 80 },
    { id: 'd', kind: 'grab-hook', size: '3/8', grade: 43 },
    { id: 'e', kind: 'binder', markedWll: '24 kN' },
    { id: 'f', kind: 'anchor', at: 'vehicle' },
    { id: 'g', kind: 'webbing', width: '2' },
    { id: 'h', kind: 'fiber-rope', size: '1/2', condition: { verdict: 'fit' } },
    { id: 'i', kind: 'wire-rope', nominalStrength: '100 kN' },
    { id: 'j', kind: 'strapping', width: '2', thickness: '0.044', condition: 'damaged' },
    {
      id: 'k',
      kind: 'parallel',
      loadSharing: 'equal',
      legs: [[{ id: 'l', kind: 'chain', size: '3/8', grade: 70 }], [{ id: 'm', kind: 'shackle', markedWll: '2 t' }]],
    },
  );
  const assembly = fc.uniqueArray(anyPart, { minLength: 1, selector: ({ id }) => id });

  it('survives JSON, and is the same byte for byte on every call', () => {
    fc.assert(
      fc.property(
        assembly,
        fc.constantFrom('us', 'si'),
        fc.constantFrom(law, usWeldedChain_2003),
        (parts, units, ratings) => {
          const call = () => assemblyRating({ ratings, parts, units, load: '1000 lb' });
          const result = call();
          expect(JSON.stringify(call())).toBe(JSON.stringify(result));
          expect(JSON.parse(JSON.stringify(result))).toEqual({ ...result });
          expect(JSON.stringify(structuredClone({ ...result }))).toBe(JSON.stringify(result));
        },
      ),
    );
  });
  it('has the same verdict in either system', () => {
    fc.assert(
      fc.property(assembly, load, (parts, wanted) => {
        const answer = (units: 'us' | 'si') => {
          const { verdict, weakest, utilization, missing } = assemblyRating({
            ratings: law,
            parts,
            units,
            load: mark(wanted, true) as never,
          });
          return { verdict, weakest, utilization, missing };
        };
        expect(answer('si')).toEqual(answer('us'));
      }),
    );
  });
});

describe('garbage', () => {
  const good = {
    parts: [
      { id: 'a', kind: 'chain', size: '3/8', grade: 70, condition: 'sound' },
      { id: 'b', kind: 'fiber-rope', size: '1/2', material: 'nylon' },
      { id: 'c', kind: 'wire-rope', size: '1/2', nominalStrength: '20000 lbf' },
      { id: 'd', kind: 'webbing', width: '2', capacities: { workingLoadLimit: '2000 lb', lashingCapacity: '20 kN' } },
      { id: 'e', kind: 'strapping', width: '2', thickness: '0.044', condition: { verdict: 'fit' } },
      { id: 'f', kind: 'anchor', at: 'cargo', markedWll: { value: 5, unit: 't' } },
      { id: 'g', kind: 'grab-hook', size: '3/8', grade: 70 },
      {
        id: 'h',
        kind: 'parallel',
        loadSharing: 'equal',
        legs: [[{ id: 'i', kind: 'webbing', width: '3' }], [{ id: 'j', kind: 'binder', markedWll: '4000 lb' }]],
      },
    ],
    load: '1000 lb',
    units: 'us',
  };
  it.each([
    ['of JSON', jsonGarbage],
    ['of any type', anyGarbage],
  ] as const)('%s in an assembly gives a result or a RiggingError', (_, garbage) => {
    fc.assert(
      fc.property(spoiled(good, garbage), (input) => {
        givesResultOrIssue(() => assemblyRating({ ...(input as typeof good), ratings: law } as never));
      }),
      { numRuns: 1000 },
    );
  });
  it('for an assembly gives a RiggingError', () => {
    fc.assert(fc.property(anyGarbage, (input) => givesResultOrIssue(() => assemblyRating(input as never))));
    fc.assert(
      fc.property(anyGarbage, (ratings) =>
        givesResultOrIssue(() => assemblyRating({ ratings, parts: good.parts } as never)),
      ),
    );
  });
  const chain = { size: '3/8', grade: 70, markedWll: '5000 lb', units: 'us', working: true };
  it.each([
    ['of JSON', jsonGarbage],
    ['of any type', anyGarbage],
  ] as const)('%s in a chain gives a result or a RiggingError', (_, garbage) => {
    fc.assert(
      fc.property(spoiled(chain, garbage), fc.boolean(), (input, marked) => {
        const { markedWll, ...listed } = Object(input) as typeof chain;
        givesResultOrIssue(() => chainRating({ ...(marked ? Object(input) : listed), ratings: law } as never));
      }),
      { numRuns: 1000 },
    );
  });
  it('for a chain gives a RiggingError', () => {
    fc.assert(fc.property(anyGarbage, (input) => givesResultOrIssue(() => chainRating(input as never))));
  });
});
