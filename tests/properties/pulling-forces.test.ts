import {
  type AvailablePullInput,
  availablePull,
  convert,
  logMass,
  type PullResistanceInput,
  pullResistance,
  quantity,
  tireTraction,
} from 'chain-rigging';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyGarbage, givesResultOrIssue, jsonGarbage, spoiled } from './garbage.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A tractor and its pull in meters, kilograms and degrees. */
const pulls = fc.record({
  mass: between(500, 8000),
  share: between(0.2, 0.6),
  wheelbase: between(1.2, 3),
  high: between(0.4, 1.2),
  drive: fc.constantFrom('rear-wheels' as const, 'all-wheels' as const, 'tracks' as const),
  hitch: between(0.2, 1),
  behind: between(0.1, 0.8),
  μ: between(0.1, 1),
  kind: fc.constantFrom('gross' as const, 'net' as const),
  f: between(0, 0.1),
  slope: between(-15, 15),
  below: between(-15, 15),
});
type Pull = typeof pulls extends fc.Arbitrary<infer P> ? P : never;

/** The same in one system or the other. */
function inputOf(pull: Pull, units: 'us' | 'si'): AvailablePullInput {
  const length = (meters: number) => (units === 'si' ? quantity(meters, 'm') : convert(quantity(meters, 'm'), 'ft'));
  const mass = (kilograms: number) =>
    units === 'si' ? quantity(kilograms, 'kg') : convert(quantity(kilograms, 'kg'), 'lb');
  return {
    tractor: {
      mass: mass(pull.mass),
      frontAxleMass: mass(pull.mass * pull.share),
      wheelbase: length(pull.wheelbase),
      centerOfGravityHeight: length(pull.high),
      drive: pull.drive,
    },
    hitch: { kind: 'drawbar', height: length(pull.hitch), behindAxle: length(pull.behind) },
    traction: { coefficient: pull.μ, kind: pull.kind },
    rolling: { coefficient: pull.f },
    slope: quantity(pull.slope, 'deg'),
    chainAngle: { belowTractorLine: quantity(pull.below, 'deg') },
  };
}

const newtons = (force: { readonly value: number; readonly unit: 'lbf' | 'kN' } | null | undefined) =>
  force ? convert(force, 'N').value : 0;

describe('availablePull', () => {
  it('is the same in pounds and feet as in kilograms and meters', () => {
    fc.assert(
      fc.property(pulls, (pull) => {
        const [us, si] = [availablePull(inputOf(pull, 'us')), availablePull(inputOf(pull, 'si'))];
        expect([us.pull?.unit ?? 'lbf', si.pull?.unit ?? 'kN']).toEqual(['lbf', 'kN']);
        const scale = pull.mass * 9.80665;
        expect(Math.abs(newtons(us.pull) - newtons(si.pull))).toBeLessThan(1e-9 * scale);
      }),
    );
  });

  it('grows with the mass, lengths held; and stays with lengths grown, mass held', () => {
    fc.assert(
      fc.property(pulls, between(1.1, 3), (pull, k) => {
        const one = newtons(availablePull(inputOf(pull, 'si')).pull);
        const heavier = newtons(availablePull(inputOf({ ...pull, mass: pull.mass * k }, 'si')).pull);
        expect(Math.abs(heavier - k * one)).toBeLessThan(1e-8 * pull.mass * 10);
        const { wheelbase, high, hitch, behind } = pull;
        const grown = { ...pull, wheelbase: wheelbase * k, high: high * k, hitch: hitch * k, behind: behind * k };
        expect(Math.abs(newtons(availablePull(inputOf(grown, 'si')).pull) - one)).toBeLessThan(1e-8 * pull.mass * 10);
      }),
    );
  });

  it('leaves forces along the ground in balance where grip governs, and no axle below zero', () => {
    fc.assert(
      fc.property(pulls, (pull) => {
        const result = availablePull(inputOf(pull, 'si'));
        fc.pre(result.outcome === 'pulls');
        const [front, rear] = [newtons(result.frontReaction), newtons(result.rearReaction)];
        const W = pull.mass * 9.80665;
        expect(Math.min(front, rear)).toBeGreaterThan(-1e-9 * W);
        fc.pre(result.governs === 'traction');
        const net = pull.kind === 'gross' ? pull.μ - pull.f : pull.μ;
        const radians = Math.PI / 180;
        const thrust = net * rear + (pull.drive === 'rear-wheels' ? -pull.f : net) * front;
        const taken = newtons(result.pull) * Math.cos(pull.below * radians) + W * Math.sin(pull.slope * radians);
        expect(Math.abs(thrust - taken)).toBeLessThan(1e-9 * W);
        const across = newtons(result.pull) * Math.sin(pull.below * radians) + W * Math.cos(pull.slope * radians);
        expect(Math.abs(front + rear - across)).toBeLessThan(1e-9 * W);
      }),
    );
  });

  it('never falls with more grip, nor rises with a steeper slope on all wheels', () => {
    fc.assert(
      fc.property(pulls, between(0, 0.3), between(0, 10), (pull, more, steeper) => {
        const at = (change: Partial<Pull>) => newtons(availablePull(inputOf({ ...pull, ...change }, 'si')).pull);
        expect(at({ μ: pull.μ + more })).toBeGreaterThanOrEqual(at({}) - 1e-6);
        const all = { drive: 'all-wheels', slope: Math.abs(pull.slope), below: 0 } as const;
        const up = at({ ...all, slope: all.slope + steeper });
        expect(up).toBeLessThanOrEqual(at(all) + 1e-6);
      }),
    );
  });

  it('is the least of its limits', () => {
    fc.assert(
      fc.property(pulls, between(100, 50_000), (pull, thrust) => {
        const engine = { thrustLimit: quantity(thrust, 'N') };
        const result = availablePull({ ...inputOf(pull, 'si'), engine });
        fc.pre(result.outcome === 'pulls');
        for (const { limit, pull: at } of result.limits) {
          if (at === null) continue;
          expect(newtons(at)).toBeGreaterThanOrEqual(newtons(result.pull));
          if (limit === result.governs) expect(at.value).toBe(result.pull?.value);
        }
      }),
    );
  });
});

describe('pullResistance', () => {
  const loads = fc.record({
    mass: between(100, 20_000),
    slope: between(-30, 30),
    f: between(0, 0.4),
    chain: between(-20, 40),
  });

  it('is proportional to the mass, whatever holds the load', () => {
    fc.assert(
      fc.property(loads, between(1.1, 5), ({ mass, slope, f, chain }, k) => {
        for (const kind of [
          { kind: 'rolling', rolling: { coefficient: f } },
          { kind: 'mired', depth: 'fender' },
          { kind: 'overturned' },
          { kind: 'soft-ground', surface: 'bog' },
          { kind: 'log', lift: 'none', friction: { coefficient: f }, chainAngle: quantity(chain, 'deg') },
          { kind: 'log', lift: 'one-end', friction: { coefficient: f } },
        ] as const) {
          const at = (kilograms: number) =>
            pullResistance({
              ...kind,
              mass: quantity(kilograms, 'kg'),
              ...(kind.kind !== 'overturned' && { slope: quantity(slope, 'deg') }),
            } as never);
          const signed = ({ pull, push }: ReturnType<typeof at>) => newtons(pull) - (pull ? 0 : newtons(push));
          expect(Math.abs(signed(at(mass * k)) - k * signed(at(mass)))).toBeLessThan(1e-8 * mass * 10);
        }
      }),
    );
  });

  it('is the same in pounds as in kilograms', () => {
    fc.assert(
      fc.property(loads, ({ mass, slope }) => {
        const stuck = { kind: 'mired', depth: 'cab', slope: quantity(slope, 'deg') } as const;
        const si = pullResistance({ ...stuck, mass: quantity(mass, 'kg') });
        const us = pullResistance({ ...stuck, mass: convert(quantity(mass, 'kg'), 'lb') });
        expect(Math.abs(newtons(us.pull) / newtons(si.pull) - 1)).toBeLessThan(1e-12);
      }),
    );
  });

  it('grows with the slope up to 45 degrees, and never names a negative pull', () => {
    fc.assert(
      fc.property(loads, between(0, 10), ({ mass, slope, f }, more) => {
        const at = (degrees: number) =>
          pullResistance({
            kind: 'rolling',
            rolling: { coefficient: f },
            mass: quantity(mass, 'kg'),
            slope: quantity(degrees, 'deg'),
          });
        const [low, high] = [at(slope), at(slope + more)];
        if (low.pull !== null) expect(newtons(high.pull)).toBeGreaterThanOrEqual(newtons(low.pull) - 1e-9);
        for (const { outcome, pull, push } of [low, high]) {
          expect(pull === null).toBe(outcome === 'overruns');
          expect((pull ?? push)?.value).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });
});

const tractor = {
  mass: '3300 lb',
  frontAxleMass: '1155 lb',
  wheelbase: '64 in',
  centerOfGravityHeight: '28 in',
  drive: 'rear-wheels',
};
const place = { tractor, hitch: { kind: 'drawbar', height: '15 in', behindAxle: '9 in' }, slope: '5 deg', units: 'us' };
const tire = { sectionWidth: '11 in', diameter: '42 in', deflectionRatio: 0.2 };
const functions: [name: string, call: (input: never) => unknown, good: object][] = [
  [
    'availablePull, surface',
    availablePull,
    {
      ...place,
      traction: { surface: 'dry-clay-loam' },
      rolling: { surface: 'loose-gravel' },
      engine: { power: { hp: 35 }, speed: '4 mph', efficiency: 0.8, thrustLimit: '2000 lbf' },
      chainAngle: { belowTractorLine: '5 deg' },
    },
  ],
  [
    'availablePull, coefficient',
    availablePull,
    {
      ...place,
      traction: { coefficient: 0.5, kind: 'gross' },
      rolling: { penetration: '2 in' },
      engine: { power: { kW: 20 }, speed: '4 mph', toDrawbar: { tractor: 'tracks', surface: 'concrete' } },
      chainAngle: { belowHorizontal: '5 deg' },
    },
  ],
  [
    'availablePull, soil',
    availablePull,
    {
      ...place,
      traction: { coneIndex: { psi: 150 }, slip: 0.2, construction: 'radial', tires: { front: tire, rear: tire } },
    },
  ],
  [
    'pullResistance, rolling',
    pullResistance,
    {
      kind: 'rolling',
      mass: '2 t',
      rolling: { surface: 'loose-sand' },
      slope: '5 deg',
      tackle: { sheaves: 2, mechanicalAdvantage: 3 },
    },
  ],
  [
    'pullResistance, mired',
    pullResistance,
    {
      kind: 'mired',
      mass: '2 t',
      depth: 'cab',
      runningGear: 'tracks',
      powerOnTracks: true,
      oppositeToEntry: true,
      units: 'us',
    },
  ],
  ['pullResistance, soft ground', pullResistance, { kind: 'soft-ground', mass: '2 t', surface: 'bog', slope: '5 deg' }],
  [
    'pullResistance, log',
    pullResistance,
    { kind: 'log', mass: '2 t', lift: 'none', friction: { condition: 'whole-log-on-soil' }, chainAngle: '5 deg' },
  ],
  [
    'logMass',
    logMass,
    {
      length: '4 m',
      diameter: { ends: ['40 cm', '30 cm'] },
      density: { basicSpecificGravity: 0.5, moisture: 1 },
      units: 'si',
    },
  ],
  ['tireTraction', tireTraction, { soil: 'firm', slip: 0.15, construction: 'bias', tire, load: '5 kN' }],
];

it.each(functions)('%s with garbage in it', (_, call, good) => {
  for (const garbage of [jsonGarbage, anyGarbage]) {
    fc.assert(
      fc.property(spoiled(good, garbage), (input) => givesResultOrIssue(() => call(input as never))),
      { numRuns: 500 },
    );
  }
});

it.each(functions)('%s of garbage', (_, call) => {
  fc.assert(fc.property(anyGarbage, (input) => givesResultOrIssue(() => call(input as never))));
});

it('survives JSON', () => {
  const input: PullResistanceInput = { kind: 'mired', depth: 'wheel', mass: '2 t' };
  const result = pullResistance(input);
  expect(JSON.parse(JSON.stringify(result))).toEqual({ ...result });
});
