import { checkCarry, stowage } from 'chain-rigging';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

/** A fraction of whole numbers: an exact second way to the verdict. */
interface Fraction {
  readonly over: bigint;
  readonly under: bigint;
}
const times = (a: Fraction, b: Fraction): Fraction => ({ over: a.over * b.over, under: a.under * b.under });
const plus = (a: Fraction, b: Fraction): Fraction => ({
  over: a.over * b.under + b.over * a.under,
  under: a.under * b.under,
});
const hundredths = (value: number): Fraction => ({ over: BigInt(value), under: 100n });
const part = (over: number, under: number): Fraction => ({ over: BigInt(over), under: BigInt(under) });
const abs = ({ over, under }: Fraction): Fraction => ({ over: over < 0n ? -over : over, under });
const less = (a: Fraction, b: Fraction): Fraction => plus(a, { over: -b.over, under: b.under });

/** Everything in hundredths of its unit: within the limits of the equation, so that no multiplier is zero. */
const lifts = {
  us: fc.record({
    H: fc.integer({ min: 500, max: 2500 }),
    V: fc.integer({ min: 0, max: 7000 }),
    A: fc.integer({ min: 0, max: 13500 }),
  }),
  si: fc.record({
    H: fc.integer({ min: 500, max: 6300 }),
    V: fc.integer({ min: 0, max: 17500 }),
    A: fc.integer({ min: 0, max: 13500 }),
  }),
};
// from memory, as the dossier of the equation has them
const LAW = {
  us: {
    LC: part(51, 1),
    least: 1000,
    reference: 3000,
    slope: part(75, 10000),
    term: part(18, 10),
    mass: 'lb',
    length: 'in',
  },
  si: {
    LC: part(23, 1),
    least: 2500,
    reference: 7500,
    slope: part(3, 1000),
    term: part(45, 10),
    mass: 'kg',
    length: 'cm',
  },
} as const;

describe.each(['us', 'si'] as const)('checkCarry in %s', (system) => {
  const law = LAW[system];
  const length = (value: number) => ({ value: value / 100, unit: law.length });
  const check = ({ H, V, A }: { H: number; V: number; A: number }, to: number, load: number) =>
    checkCarry({
      load: { value: load, unit: law.mass },
      origin: { horizontal: length(H), height: length(V), asymmetry: { value: A / 100, unit: 'deg' } },
      destination: { control: false, height: length(to) },
      frequency: 0.2,
      duration: 'short',
      coupling: 'poor', // 0.9 at every height
      working: false,
    });

  /** The limit as an exact fraction, by the formulas of the manual. */
  function limitOf({ H, V, A }: { H: number; V: number; A: number }, to: number): Fraction {
    const one = part(1, 1);
    const HM = H <= law.least ? one : part(law.least, H);
    const VM = less(one, times(law.slope, abs(hundredths(V - law.reference))));
    const D = Math.abs(to - V);
    const DM = D <= law.least ? one : plus(part(82, 100), times(law.term, part(100, D)));
    const AM = less(one, times(part(32, 10000), hundredths(A)));
    return [HM, VM, DM, AM, part(9, 10)].reduce(times, law.LC);
  }

  it('decides as exact fractions do, at the limit too', () => {
    const nudges = fc.constantFrom(-1, 0, 1);
    fc.assert(
      fc.property(lifts[system], fc.integer({ min: 0, max: 7000 }), nudges, (lift, to, nudge) => {
        const limit = limitOf(lift, to);
        // the limit to nine decimals, and one step beside it
        const near = Number((limit.over * 10n ** 9n) / limit.under) + nudge;
        const load = Number(`${near}e-9`);
        const exact = BigInt(near) * limit.under <= limit.over * 10n ** 9n;
        expect(check(lift, to, load).verdict).toBe(exact ? 'pass' : 'fail');
      }),
      { numRuns: 2000 },
    );
  });

  it('comes to the same limit as exact fractions', () => {
    fc.assert(
      fc.property(lifts[system], fc.integer({ min: 0, max: 7000 }), (lift, to) => {
        const { over, under } = limitOf(lift, to);
        const exact = Number((over * 10n ** 15n) / under) / 1e15;
        expect(check(lift, to, 1).recommendedWeightLimit.value / exact).toBeCloseTo(1, 11);
      }),
    );
  });

  it('has an index in proportion to the load, and a farther reach never raises the limit', () => {
    fc.assert(
      fc.property(
        lifts[system],
        fc.integer({ min: 0, max: 7000 }),
        fc.integer({ min: 0, max: 2000 }),
        (lift, to, more) => {
          const one = check(lift, to, 5);
          expect(check(lift, to, 10).liftingIndex).toBeCloseTo(2 * (one.liftingIndex as number), 10);
          const farther = check({ ...lift, H: lift.H + more }, to, 5);
          expect(farther.recommendedWeightLimit.value).toBeLessThanOrEqual(one.recommendedWeightLimit.value);
        },
      ),
    );
  });

  it('gives the same answer in any unit of its system', () => {
    const [longer, factor] = system === 'us' ? (['ft', 12] as const) : (['m', 100] as const);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 0, max: 50 }), (tenthsOfH, tenthsOfV) => {
        const lift = { H: tenthsOfH * 10 * factor, V: tenthsOfV * 10 * factor, A: 0 };
        const there = (tenths: number) => ({ value: tenths / 10, unit: longer });
        const again = checkCarry({
          load: { value: 10, unit: law.mass },
          origin: { horizontal: there(tenthsOfH), height: there(tenthsOfV), asymmetry: '0 deg' },
          destination: { control: false, height: there(tenthsOfV) },
          frequency: 0.2,
          duration: 'short',
          coupling: 'poor',
          working: false,
        });
        expect(again.points).toEqual(check(lift, lift.V, 10).points);
      }),
    );
  });
});

describe('stowage', () => {
  const sizes = fc.record({
    d: fc.integer({ min: 4, max: 32 }),
    L: fc.integer({ min: 100, max: 50_000 }),
    a: fc.integer({ min: 50, max: 2000 }),
    b: fc.integer({ min: 50, max: 2000 }),
    c: fc.integer({ min: 50, max: 2000 }),
  });
  const mm = (value: number) => ({ value, unit: 'mm' }) as const;
  type Sizes = { d: number; L: number; a: number; b: number; c: number };
  const stow = ({ d, L, a, b, c }: Sizes, scale = 1) =>
    stowage({
      chain: { wireDiameter: mm(d * scale), length: mm(L * scale) },
      box: { length: mm(a * scale), width: mm(b * scale), height: mm(c * scale) },
      pipe: { insideDiameter: mm(a * scale), length: mm((L + 3 * d) * scale) },
      working: false,
    });

  it('is a matter of proportions: twice the size of everything, eight times the volume, the same answer', () => {
    fc.assert(
      fc.property(sizes, (each) => {
        const [one, two] = [stow(each), stow(each, 2)];
        expect(two.volume.least.value / one.volume.least.value).toBeCloseTo(8, 10);
        expect(two.box?.filled.most).toBeCloseTo(one.box?.filled.most as number, 10);
        expect([two.box?.verdict, two.pipe?.verdict]).toEqual([one.box?.verdict, one.pipe?.verdict]);
      }),
    );
  });

  it('never gets roomier with more chain, thicker chain or a smaller box', () => {
    const rank = { pass: 0, undetermined: 1, fail: 2 };
    fc.assert(
      fc.property(sizes, fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 1000 }), (each, thicker, longer) => {
        const before = stow(each).box;
        const after = stow({ ...each, d: each.d + thicker, L: each.L + longer, c: Math.max(1, each.c - longer) }).box;
        expect(rank[after?.verdict as 'pass']).toBeGreaterThanOrEqual(rank[before?.verdict as 'pass']);
      }),
    );
  });

  it('decides a box as whole numbers do', () => {
    fc.assert(
      fc.property(sizes, ({ d, L, a, b, c }) => {
        const room = BigInt(a) * BigInt(b) * BigInt(c);
        const link = BigInt(d) * BigInt(d) * BigInt(L);
        // mm³: tight 11 d² L, clear 10⁶/48,612 d² L; the widest link 3.7 d
        const fails = 11n * link > room;
        const clear = link * 1_000_000n <= room * 48_612n && 10 * Math.min(a, b, c) >= 37 * d;
        expect(stow({ d, L, a, b, c }).box?.verdict).toBe(fails ? 'fail' : clear ? 'pass' : 'undetermined');
      }),
      { numRuns: 1000 },
    );
  });
});
