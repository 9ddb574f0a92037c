import { shockTension, takeUpSpeed } from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';
import { peakByMotion } from './two-mass-pull.js';

// EA = 85.4 · 10² = 8540 kN as mooring chain, 323.6 · 10² = 32,360 kN as solid bars; over 6 m k = 8540 / 6 kN/m
const chain = { wireDiameter: '10 mm', length: '6 m' } as const;
const base = { towingMass: '3000 kg', load: 'anchored', chain, takeUp: { speed: '1 m/s' } } as const;
const K = 8_540_000 / 6;
const ratio = Math.sqrt(323.6 / 85.4);
const newtonsOf = ({ value }: { readonly value: number }) => value * 1000;

describe('shockTension', () => {
  it('is v · √(k · m) against an anchored load', () => {
    // √(1,423,333 · 3000) = 65,345 N; solid bars: times √(323.6 / 85.4)
    const { leastPeakTension, peakTension, energy } = shockTension(base);
    expect(newtonsOf(leastPeakTension)).toBeCloseTo(Math.sqrt(K * 3000), 6);
    expect(newtonsOf(peakTension)).toBeCloseTo(Math.sqrt(K * 3000) * ratio, 5);
    // 3000 · 1² / 2 = 1500 J
    expect(energy.ofSnatch).toBeCloseTo(1.5, 12);
    expect(energy.stored).toBeCloseTo(1.5, 12);
    expect(energy.ductileBound).toBeUndefined();
  });

  it('takes the reduced mass of two free machines, not their sum', () => {
    // 3000 · 6000 / 9000 = 2000 kg
    const { leastPeakTension, breaksLoose } = shockTension({ ...base, load: { mass: '6000 kg' } });
    expect(newtonsOf(leastPeakTension)).toBeCloseTo(Math.sqrt(K * 2000), 6);
    expect(breaksLoose).toBe(true);
    expect(shockTension(base).breaksLoose).toBeUndefined();
  });

  it('a thrust put on at once on a snug chain doubles; raised slowly it does not', () => {
    const sudden = shockTension({ ...base, takeUp: { slack: '0 m' }, thrust: '12 kN' });
    expect(sudden.leastPeakTension.value).toBeCloseTo(24, 12);
    expect(sudden.peakTension.value).toBeCloseTo(24, 12);
    expect(shockTension({ ...base, takeUp: { speed: '0 m/s' }, thrust: '12 kN' }).leastPeakTension.value).toBeCloseTo(
      24,
      12,
    );
    const slow = shockTension({ ...base, takeUp: 'slow', thrust: '12 kN' });
    expect(slow.leastPeakTension.value).toBe(12);
    expect(slow.takeUpSpeed.value).toBe(0);
  });

  it('from slack and a thrust it is T + √(T² + 2 · k · T · s)', () => {
    // T 12 kN, s 0.5 m: 12,000 + √(1.44e8 + 2 · 1,423,333 · 12,000 · 0.5) = 12,000 + √(1.7224e10)
    const { leastPeakTension } = shockTension({ ...base, takeUp: { slack: '0.5 m' }, thrust: '12 kN' });
    expect(newtonsOf(leastPeakTension)).toBeCloseTo(12_000 + Math.sqrt(1.44e8 + 2 * K * 12_000 * 0.5), 5);
  });

  it('the thrust of an accelerated start goes on unless the driver lets go', () => {
    // a = 2 m/s², s = 1 m: v = 2 m/s; T = 6 kN
    const takeUp = { slack: '1 m', acceleration: '2 m/s2' } as const;
    const goesOn = shockTension({ ...base, takeUp });
    expect(goesOn.takeUpSpeed.value).toBeCloseTo(2, 12);
    expect(newtonsOf(goesOn.leastPeakTension)).toBeCloseTo(6000 + Math.sqrt(3.6e7 + K * 3000 * 4), 5);
    expect(goesOn.assumptions.map(({ code }) => code)).toContain('THRUST_GOES_ON');
    const letsGo = shockTension({ ...base, takeUp, thrust: '0 kN' });
    expect(newtonsOf(letsGo.leastPeakTension)).toBeCloseTo(Math.sqrt(K * 3000 * 4), 5);
    expect(letsGo.assumptions.map(({ code }) => code)).not.toContain('THRUST_GOES_ON');
    expect(shockTension(base).assumptions.map(({ code }) => code)).toContain('NO_THRUST_AFTER');
  });

  it('what gives in line lowers the peak; the solid bars are lowered too', () => {
    // 2 MN/m in series: 1 / (1 / 1.42333 + 1 / 2) MN/m, written as 5 mm under 10 kN
    const answer = shockTension({ ...base, inSeries: [{ by: '5 mm', under: '10 kN' }] });
    expect(newtonsOf(answer.leastPeakTension)).toBeCloseTo(Math.sqrt(3000 / (1 / K + 1 / 2e6)), 5);
    expect(newtonsOf(answer.peakTension)).toBeCloseTo(Math.sqrt(3000 / (6 / 32_360_000 + 1 / 2e6)), 5);
    expect(answer.assumptions.map(({ code }) => code)).not.toContain('NOTHING_ELSE_GIVES');
    expect(shockTension(base).assumptions.map(({ code }) => code)).toContain('NOTHING_ELSE_GIVES');
  });

  it('a longer chain lowers the peak by the root of its length and stores more at a given force', () => {
    const long = shockTension({ ...base, chain: { ...chain, length: '24 m' } });
    expect(long.leastPeakTension.value).toBeCloseTo(shockTension(base).leastPeakTension.value / 2, 9);
    // U = F² · L / (2 · EA)
    const stored = (length: '6 m' | '24 m') =>
      shockTension({ ...base, takeUp: 'slow', thrust: '117 kN', chain: { ...chain, length } }).energy.stored;
    expect(stored('6 m')).toBeCloseTo((117 ** 2 * 6) / (2 * 8540), 9);
    expect(stored('24 m')).toBeCloseTo(4 * stored('6 m'), 9);
  });
});

describe('a load that breaks loose', () => {
  it.each([
    { R: 30, k: 30, T: 12, v: 1, m2: 4000 },
    { R: 30, k: 10, T: 12, v: 1, m2: 4000 },
    { R: 10, k: 10, T: 20, v: 0, m2: 1000 },
    { R: 60, k: 0, T: 5, v: 1.2, m2: 800 },
    { R: 5, k: 5, T: 0, v: 0.5, m2: 20_000 },
  ])('swings as the motion of both masses has it: %o', ({ R, k, T, v, m2 }) => {
    const load = {
      mass: { value: m2, unit: 'kg' },
      breaksLooseAt: { value: R, unit: 'kN' },
      resists: { value: k, unit: 'kN' },
    } as const;
    const answer = shockTension({
      ...base,
      towingMass: '2000 kg',
      load,
      takeUp: { speed: { value: v, unit: 'm/s' } },
      thrust: { value: T, unit: 'kN' },
    });
    const motion = {
      towingMass: 2000,
      loadMass: m2,
      breaksLooseAt: R * 1000,
      resists: k * 1000,
      thrust: () => T * 1000,
    };
    const period = 2 * Math.PI * Math.sqrt(2000 / K);
    const peak = peakByMotion({ ...motion, stiffness: K, speed: v }, period, 200_000);
    expect(answer.breaksLoose).toBe(true);
    expect(newtonsOf(answer.leastPeakTension) / peak).toBeCloseTo(1, 4);
  });

  it('holds as anchored while the peak stays below what it resists', () => {
    const load = { mass: '4000 kg', breaksLooseAt: '130 kN' } as const;
    const answer = shockTension({ ...base, load });
    expect(answer.breaksLoose).toBe(false);
    expect(answer.leastPeakTension).toEqual(shockTension(base).leastPeakTension);
    // a little less than the peak, and it gives way: no jump there
    const just = (kN: number) =>
      shockTension({ ...base, load: { mass: '4000 kg', breaksLooseAt: { value: kN, unit: 'kN' } } }).leastPeakTension
        .value;
    const anchored = shockTension(base).leastPeakTension.value;
    expect(just(anchored + 1e-6)).toBeCloseTo(anchored, 9);
    expect(just(anchored - 1e-6)).toBeCloseTo(anchored, 4);
  });

  it('raised slowly, the motion never exceeds the thrust', () => {
    // over a rise of t the thrust leaves a swing of 2 / (ω · t) behind: 0.09 percent for ω = 21.8 1/s and 100 s
    const thrust = (time: number) => 20_000 * Math.min(1, time / 100);
    const peak = peakByMotion({ towingMass: 3000, thrust, stiffness: K, speed: 0 }, 101, 1_000_000);
    expect(Math.abs(peak / 20_000 - 1)).toBeLessThan(0.001);
  });
});

describe('what the chain may see', () => {
  // 3/8 grade 70: 6600 lb = 29.358 kN
  const limits = { workingLoadLimit: '6600 lb', proofFactor: 2, units: 'si' } as const;

  it('passes only within the working load limit at the stiff end', () => {
    // v · √(k · m) · √(323.6 / 85.4) = 127.2 · v kN: 29.358 / 127.2 = 0.2308 m/s
    const at = (speed: number) =>
      shockTension({ ...base, ...limits, takeUp: { speed: { value: speed, unit: 'm/s' } } });
    const slow = at(0.2307);
    expect(slow.verdict).toBe('pass');
    expect(slow.cautions.map(({ code }) => code)).toContain('TAKE_UP_AT_A_CRAWL');
    expect(at(0.2309).verdict).toBe('fail');
    // as mooring chain it would still be well within: the stiff end decides
    expect(at(0.2309).leastPeakTension.value).toBeLessThan(29.358 / 1.9);
  });

  it('tells the greatest speeds, and at them the peak is the limit', () => {
    const { greatestTakeUpSpeed } = shockTension({ ...base, ...limits });
    const { withinWorkingLoadLimit, withinProofLoad } = greatestTakeUpSpeed;
    expect(withinWorkingLoadLimit!.value).toBeCloseTo(29_358.262661 / Math.sqrt((32_360_000 / 6) * 3000), 9);
    expect(withinProofLoad!.value).toBeCloseTo(2 * withinWorkingLoadLimit!.value, 12);
    const again = shockTension({ ...base, ...limits, takeUp: { speed: withinWorkingLoadLimit! } });
    expect(again.peakTension.value).toBeCloseTo(29.358262661, 6);
  });

  it.each([
    { load: 'anchored' },
    { load: { mass: '4000 kg', breaksLooseAt: '25 kN' } },
    { load: { mass: '4000 kg', breaksLooseAt: '25 kN', resists: '5 kN' } },
    { load: { mass: '4000 kg', breaksLooseAt: '3 kN' } },
    { load: { mass: '900 kg' } },
  ] as const)('so with a thrust and %o', ({ load }) => {
    const asked = { ...base, ...limits, load, thrust: '8 kN' } as const;
    const speed = shockTension(asked).greatestTakeUpSpeed.withinProofLoad!;
    expect(shockTension({ ...asked, takeUp: { speed } }).peakTension.value).toBeCloseTo(2 * 29.358262661, 6);
  });

  it('no speed is slow enough where the thrust at once is too much', () => {
    // twice 15 kN is above 29.4, below 58.7
    const { greatestTakeUpSpeed } = shockTension({ ...base, ...limits, thrust: '15 kN' });
    expect(greatestTakeUpSpeed.withinWorkingLoadLimit).toBeNull();
    expect(greatestTakeUpSpeed.withinProofLoad!.value).toBeGreaterThan(0);
  });

  it('never passes on a peak that is merely below breaking', () => {
    const answer = shockTension({ ...base, takeUp: { speed: '0.5 m/s' }, breakingForce: '117 kN' });
    expect(answer.verdict).toBe('undetermined');
    expect(answer.checks.map(({ id, verdict }) => [id, verdict])).toEqual([
      ['working-load-limit', 'undetermined'],
      ['breaking-force', 'pass'],
    ]);
    const limited = shockTension({ ...base, ...limits, takeUp: { speed: '0.5 m/s' }, breakingForce: '117 kN' });
    expect(limited).toMatchObject({ verdict: 'fail', governing: 'working-load-limit' });
  });

  it('says when a chain is scrap: past its proof load, not at it', () => {
    const asked = (proofLoad: '60 kN' | '59.9 kN') =>
      shockTension({ ...base, takeUp: 'slow', thrust: '60 kN', proofLoad, workingLoadLimit: '30 kN' });
    expect(asked('60 kN').cautions.map(({ code }) => code)).not.toContain('SCRAP_PAST_PROOF');
    expect(asked('59.9 kN').cautions.map(({ code }) => code)).toContain('SCRAP_PAST_PROOF');
    expect(asked('60 kN').checks.find(({ id }) => id === 'proof-load')!.verdict).toBe('pass');
  });

  it('the ductile bound is told with a warning', () => {
    // 117 · 0.15 · 6 = 105.3 kJ, from memory: 15 percent at break for carbon grades
    const answer = shockTension({ ...base, breakingForce: '117 kN', elongationAtBreak: 0.15 });
    expect(answer.energy.ductileBound).toBeCloseTo(105.3, 9);
    expect(answer.cautions.map(({ code }) => code)).toContain('DUCTILE_BOUND_IS_NO_DESIGN');
  });
});

describe('facts of the trade', () => {
  it('common practice: a few feet of slack breaks a farm chain that holds a steady pull', () => {
    // 3 ft at 0.2 g: v = √(2 · 1.96133 · 0.9144) = 1.8939 m/s; T = 3000 · 1.96133 = 5.884 kN;
    // 5.884 + √(5.884² + 1423.33 · 3 · 1.8939²) = 129.8 kN; 3/8 grade 70 breaks at 26,400 lbf = 117.4 kN
    const limits = { workingLoadLimit: '6600 lb', breakingForce: '26400 lbf', units: 'si' } as const;
    const snatched = shockTension({ ...base, takeUp: { slack: '3 ft', acceleration: '0.2 g' }, ...limits });
    expect(snatched.leastPeakTension.value).toBeCloseTo(129.8, 1);
    expect(snatched.checks.find(({ id }) => id === 'breaking-force')!.verdict).toBe('fail');
    const steady = shockTension({ ...base, takeUp: 'slow', thrust: '5.884 kN', ...limits });
    expect(steady.verdict).toBe('pass');
  });

  it('common practice: a lighter tractor on smaller chain only goes past its proof load: scrap the chain', () => {
    // 1500 kg, 5/16 (8 mm): k = 5465.6 / 6 = 910.93 kN/m; T = 2.942 kN; 2.942 + √(2.942² + 910.93 · 1.5 · 3.5869) = 73.0 kN;
    // limit 4700 lb = 20.9 kN, proof twice that, break 18,800 lbf = 83.6 kN
    const { leastPeakTension } = shockTension({
      towingMass: '1500 kg',
      load: 'anchored',
      takeUp: { slack: '3 ft', acceleration: '0.2 g' },
      chain: { wireDiameter: '8 mm', length: '6 m' },
      units: 'si',
    });
    expect(leastPeakTension.value).toBeCloseTo(73.0, 1);
    expect(leastPeakTension.value).toBeGreaterThan(2 * 20.906);
    expect(leastPeakTension.value).toBeLessThan(83.6);
  });
});

describe('units and steps', () => {
  it('answers in lbf, mph and lbf ft for US input', () => {
    // 3000 lb / 32.17405 = 93.2428 slug at 2 mph = 2.93333 ft/s: 93.2428 · 8.60444 / 2 = 401.151 lbf ft
    const us = shockTension({
      towingMass: '3000 lb',
      load: 'anchored',
      takeUp: { speed: '2 mph' },
      chain: { wireDiameter: '0.394 in', length: '20 ft' },
    });
    expect([us.leastPeakTension.unit, us.takeUpSpeed.unit]).toEqual(['lbf', 'mph']);
    expect(us.energy.ofSnatch).toBeCloseTo(401.151, 2);
    expect(issueOf(() => shockTension({ ...base, workingLoadLimit: '6600 lb' })).code).toBe('UNITS_REQUIRED');
  });

  it('shows both ends, and nothing on request', () => {
    expect(shockTension(base).steps.map(({ symbol }) => symbol)).toEqual([
      'EA',
      'EA of solid bars',
      'k',
      'F',
      'k',
      'F',
    ]);
    expect(shockTension({ ...base, working: false }).steps).toEqual([]);
  });
});

describe('what it refuses', () => {
  it.each<[code: string, path: string, change: object]>([
    ['MISSING_FIELD', 'takeUp', { takeUp: undefined }],
    ['MISSING_FIELD', 'takeUp', { takeUp: {} }],
    ['CONFLICTING_FIELDS', 'takeUp', { takeUp: { speed: '1 m/s', slack: '1 m' } }],
    ['MISSING_FIELD', 'takeUp.acceleration', { takeUp: { slack: '1 m' } }],
    ['MISSING_FIELD', 'thrust', { takeUp: 'slow' }],
    ['UNKNOWN_VALUE', 'takeUp', { takeUp: 'fast' }],
    ['NEGATIVE', 'takeUp.speed', { takeUp: { speed: '-1 m/s' } }],
    ['NOT_POSITIVE', 'takeUp.speed', { takeUp: { speed: '0 m/s' } }],
    ['NEGATIVE', 'takeUp.slack', { takeUp: { slack: '-1 m' }, thrust: '1 kN' }],
    ['NOT_POSITIVE', 'takeUp.acceleration', { takeUp: { slack: '1 m', acceleration: '0 g' } }],
    ['NEGATIVE', 'thrust', { thrust: '-1 kN' }],
    ['NOT_POSITIVE', 'towingMass', { towingMass: '0 kg' }],
    ['MISSING_FIELD', 'load', { load: undefined }],
    ['UNKNOWN_VALUE', 'load', { load: 'stuck' }],
    ['MISSING_FIELD', 'load.mass', { load: {} }],
    ['IMPOSSIBLE_GEOMETRY', 'load.resists', { load: { mass: '1 t', breaksLooseAt: '1 kN', resists: '2 kN' } }],
    ['MISSING_FIELD', 'chain', { chain: undefined }],
    ['NOT_POSITIVE', 'chain.length', { chain: { ...chain, length: '0 m' } }],
    ['EMPTY_LIST', 'inSeries', { inSeries: 5 }],
    ['NOT_POSITIVE', 'inSeries[0].under', { inSeries: [{ by: '1 mm', under: '0 kN' }] }],
    ['MISSING_FIELD', 'workingLoadLimit', { proofFactor: 2 }],
    ['CONFLICTING_FIELDS', 'proofFactor', { proofFactor: 2, proofLoad: '60 kN', workingLoadLimit: '30 kN' }],
    ['UNKNOWN_VALUE', 'proofFactor', { proofFactor: 1, workingLoadLimit: '30 kN' }],
    ['MISSING_FIELD', 'breakingForce', { elongationAtBreak: 0.15 }],
    ['TOO_LARGE', 'elongationAtBreak', { elongationAtBreak: 15, breakingForce: '117 kN' }],
    ['NOT_POSITIVE', 'elongationAtBreak', { elongationAtBreak: 0, breakingForce: '117 kN' }],
  ])('%s at %s', (code, path, change) => {
    expect(issueOf(() => shockTension({ ...base, ...change } as never))).toMatchObject({ code, path });
  });
});

describe('takeUpSpeed', () => {
  it('is √(2 · a · s), from an acceleration or a thrust', () => {
    // √(2 · 0.2 · 9.80665 · 0.9144) = 1.8939 m/s = 4.2366 mph
    expect(takeUpSpeed({ slack: '3 ft', acceleration: '0.2 g' }).speed.value).toBeCloseTo(4.2366, 3);
    // 10 kN on 2500 kg: 4 m/s²; √(2 · 4 · 2) = 4 m/s
    expect(takeUpSpeed({ slack: '2 m', thrust: '10 kN', mass: '2500 kg' }).speed).toMatchObject({
      value: 4,
      unit: 'm/s',
    });
    expect(takeUpSpeed({ slack: '0 m', acceleration: '1 g' }).speed.value).toBe(0);
  });

  it('refuses half a question', () => {
    const refused = (input: object) => issueOf(() => takeUpSpeed(input as never));
    expect(refused({ slack: '1 m' })).toMatchObject({ code: 'MISSING_FIELD', path: 'acceleration' });
    expect(refused({ slack: '1 m', thrust: '1 kN' })).toMatchObject({ code: 'MISSING_FIELD', path: 'mass' });
    expect(refused({ slack: '-1 m', acceleration: '1 g' })).toMatchObject({ code: 'NEGATIVE', path: 'slack' });
    expect(refused({ slack: '1 m', acceleration: '1 g', thrust: '1 kN', mass: '1 t' }).code).toBe('CONFLICTING_FIELDS');
    expect(refused({ slack: '1 ft', thrust: '1 kN', mass: '1 t' }).code).toBe('UNITS_REQUIRED');
  });
});
