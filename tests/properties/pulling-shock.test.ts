// Any snatch: the motion of both masses as a second way, and what must hold whatever they are.
import { bridleTension, chainSag, pullChainLength, shockTension, takeUpSpeed } from 'chain-rigging';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { peakByMotion } from '../pulling/two-mass-pull.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anySnatch = fc.record({
  m1: between(500, 8000),
  m2: between(500, 20_000),
  d: between(6, 16),
  L: between(2, 20),
  v: between(0.01, 3),
  T: between(0, 30),
  R: between(0.1, 80),
  kept: between(0, 1),
});
type Values = typeof anySnatch extends fc.Arbitrary<infer T> ? T : never;

const base = ({ m1, d, L, v, T }: Values) =>
  ({
    towingMass: { value: m1, unit: 'kg' },
    takeUp: { speed: { value: v, unit: 'm/s' } },
    thrust: { value: T, unit: 'kN' },
    chain: { wireDiameter: { value: d, unit: 'mm' }, length: { value: L, unit: 'm' } },
  }) as const;
const free = ({ m2 }: Values) => ({ mass: { value: m2, unit: 'kg' } }) as const;
const loose = (values: Values) =>
  ({
    ...free(values),
    breaksLooseAt: { value: values.R, unit: 'kN' },
    resists: { value: values.R * values.kept, unit: 'kN' },
  }) as const;

it('peaks as the motion of both masses does, step by step', () => {
  fc.assert(
    fc.property(anySnatch, (values) => {
      const { m1, m2, d, L, v, T, R, kept } = values;
      const stiffness = (85_400 * d * d) / L;
      const motion = { towingMass: m1, thrust: () => T * 1000, stiffness, speed: v };
      const until = 2 * Math.PI * Math.sqrt(m1 / stiffness);
      const anchored = shockTension({ ...base(values), load: 'anchored' }).leastPeakTension.value * 1000;
      const stands = { ...motion, breaksLooseAt: Number.POSITIVE_INFINITY };
      expect(Math.abs(peakByMotion(stands, until, 20_000) / anchored - 1)).toBeLessThan(0.001);
      const gives = { ...motion, loadMass: m2, breaksLooseAt: R * 1000, resists: R * 1000 * kept };
      const found = shockTension({ ...base(values), load: loose(values) }).leastPeakTension.value * 1000;
      expect(Math.abs(peakByMotion(gives, until, 20_000) / found - 1)).toBeLessThan(0.001);
    }),
    { numRuns: 50 },
  );
});

it('an anchored load is the upper bound, and a free pair peaks as if no heavier than the lighter of both', () => {
  fc.assert(
    fc.property(anySnatch, (values) => {
      const peak = (load: Parameters<typeof shockTension>[0]['load'], thrust = base(values).thrust) =>
        shockTension({ ...base(values), thrust, load }).peakTension.value;
      const anchored = peak('anchored') * (1 + 1e-12);
      expect(peak(loose(values))).toBeLessThanOrEqual(anchored);
      expect(peak(free(values))).toBeLessThanOrEqual(anchored);
      const none = { value: 0, unit: 'kN' } as const;
      const { m1, m2, d, L, v } = values;
      const lighter = v * Math.sqrt(((323_600 * d * d) / L) * Math.min(m1, m2));
      expect(peak(free(values), none) * 1000).toBeLessThanOrEqual(lighter * (1 + 1e-12));
    }),
  );
});

it('a faster take-up never lowers the peak, a longer chain never raises it', () => {
  fc.assert(
    fc.property(anySnatch, between(1, 3), fc.boolean(), (values, more, anchor) => {
      const peak = (changed: Values) =>
        shockTension({ ...base(changed), load: anchor ? 'anchored' : loose(changed) }).leastPeakTension.value;
      expect(peak({ ...values, v: values.v * more })).toBeGreaterThanOrEqual(peak(values) * (1 - 1e-12));
      expect(peak({ ...values, L: values.L * more })).toBeLessThanOrEqual(peak(values) * (1 + 1e-12));
    }),
  );
});

it('snug: the thrust raised slowly is the tension, at once twice the thrust', () => {
  fc.assert(
    fc.property(anySnatch, (values) => {
      const ask = { ...base(values), load: 'anchored', thrust: { value: values.T + 1, unit: 'kN' } } as const;
      expect(shockTension({ ...ask, takeUp: 'slow' }).peakTension.value).toBeCloseTo(values.T + 1, 9);
      const sudden = shockTension({ ...ask, takeUp: { slack: '0 m' } }).peakTension.value;
      expect(sudden).toBeCloseTo(2 * (values.T + 1), 9);
    }),
  );
});

it('the greatest speed within a limit gives that limit', () => {
  fc.assert(
    fc.property(anySnatch, between(5, 150), fc.boolean(), (values, limit, anchor) => {
      const ask = {
        ...base(values),
        load: anchor ? 'anchored' : loose(values),
        workingLoadLimit: { value: limit, unit: 'kN' },
      } as const;
      const speed = shockTension(ask).greatestTakeUpSpeed.withinWorkingLoadLimit!;
      const still = shockTension({
        ...ask,
        takeUp: { speed: { value: 0, unit: 'm/s' } },
        thrust: ask.thrust.value > 0 ? ask.thrust : { value: 1e-9, unit: 'kN' },
      });
      if (speed === null) expect(still.peakTension.value).toBeGreaterThan(limit * (1 - 1e-9));
      else if (speed.value > 1e-6)
        expect(shockTension({ ...ask, takeUp: { speed } }).peakTension.value / limit).toBeCloseTo(1, 6);
    }),
  );
});

it('says the same in US units', () => {
  fc.assert(
    fc.property(anySnatch, (values) => {
      const { m1, d, L, v, T } = values;
      const us = shockTension({
        towingMass: { value: m1 / 0.45359237, unit: 'lb' },
        load: 'anchored',
        takeUp: { speed: { value: v / 0.44704, unit: 'mph' } },
        thrust: { value: (T * 1000) / 4.4482216152605, unit: 'lbf' },
        chain: { wireDiameter: { value: d / 25.4, unit: 'in' }, length: { value: L / 0.3048, unit: 'ft' } },
      });
      const si = shockTension({ ...base(values), load: 'anchored' });
      expect((us.leastPeakTension.value * 4.4482216152605) / 1000 / si.leastPeakTension.value).toBeCloseTo(1, 9);
      // 1 lbf ft = 1.3558179483314 J
      expect((us.energy.stored * 1.3558179483314) / 1000 / si.energy.stored).toBeCloseTo(1, 9);
    }),
  );
});

it('a bridle balances its pull, whatever its angles', () => {
  fc.assert(
    fc.property(between(0, 60), between(0.01, 60), (a, b) => {
      const angle = (value: number) => ({ value, unit: 'deg' }) as const;
      const { legs } = bridleTension({ pull: '1 kN', angles: { fromPullLine: [angle(a), angle(b)] } });
      const [A, B] = [(a * Math.PI) / 180, (b * Math.PI) / 180];
      expect(legs[0].value * Math.cos(A) + legs[1].value * Math.cos(B)).toBeCloseTo(1, 9);
      expect(legs[0].value * Math.sin(A)).toBeCloseTo(legs[1].value * Math.sin(B), 9);
    }),
  );
});

it('more tension never sags more, and the end tension is H and the weight of half the chain at right angles', () => {
  fc.assert(
    fc.property(between(1, 60), between(0.5, 12), between(0.05, 50), between(1, 5), (span, w, kN, more) => {
      const hang = (tension: number) =>
        chainSag({
          span: { value: span, unit: 'm' },
          massPerLength: { value: w, unit: 'kg/m' },
          horizontalTension: { value: tension, unit: 'kN' },
        });
      const { sag, length, endTension } = hang(kN);
      expect(hang(kN * more).sag.value).toBeLessThanOrEqual(sag.value * (1 + 1e-12));
      expect(Math.hypot(kN, (w * 9.80665 * length.value) / 2000) / endTension.value).toBeCloseTo(1, 9);
    }),
  );
});

it('a chain covers what it needs with less than a link to spare', () => {
  fc.assert(
    fc.property(between(0.1, 30), between(0.02, 2), fc.integer({ min: 1, max: 8 }), (gap, D, halves) => {
      const answer = pullChainLength({
        ends: [
          { at: 'hook' },
          { at: 'cylinder', diameter: { value: D, unit: 'm' }, turns: halves / 2, hookBack: '0.3 m' },
        ],
        standoff: { value: gap, unit: 'm' },
        pitch: '30 mm',
        outsideWidth: '34 mm',
      });
      const needed = gap + (halves / 2) * Math.PI * (D + 0.034) + 0.3;
      expect(answer.required.value).toBeCloseTo(needed, 9);
      expect(answer.spare.value).toBeGreaterThanOrEqual(0);
      expect(answer.spare.value).toBeLessThan(0.03 + 1e-9);
      expect(answer.links * 0.03).toBeCloseTo(answer.length.value, 9);
    }),
  );
});

it('a speed gathered over slack is that of thrust and mass', () => {
  fc.assert(
    fc.property(between(0, 10), between(0.1, 50), between(100, 9000), (s, kN, mass) => {
      const slack = { value: s, unit: 'm' } as const;
      const byThrust = takeUpSpeed({ slack, thrust: { value: kN, unit: 'kN' }, mass: { value: mass, unit: 'kg' } });
      // m · v² / 2 = T · s
      expect((mass * byThrust.speed.value ** 2) / 2).toBeCloseTo(kN * 1000 * s, 3);
    }),
  );
});
