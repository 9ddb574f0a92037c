import { chainMass, checkCarry, explain, inWords, type MultiplierName } from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { usNiosh1994Coupling } from '../../src/tables/generated/us-niosh-1994-coupling.js';
import { usNiosh1994Frequency } from '../../src/tables/generated/us-niosh-1994-frequency.js';
import { issueOf } from '../quantities/issue-of.js';
import { easyLift, type LiftChange } from './lifts.js';

const us = (change?: LiftChange) => checkCarry(easyLift('us', change));
const si = (change?: LiftChange) => checkCarry(easyLift('si', change));
const codesOf = (notes: readonly { readonly code: string }[]) => notes.map(({ code }) => code);

/** Out of a box by the feet onto a deck: H 14, V 6, D 32 in, turned by 30 deg, poor grip, once in a while. */
const boxToDeck = {
  origin: { horizontal: '14 in', height: '6 in', asymmetry: '30 deg' },
  destination: { control: false, height: '38 in' },
  coupling: 'poor',
} as const;

describe('the load constant', () => {
  it('is the limit of a lift that takes nothing off it, in each system', () => {
    // RWL = LC: 51 lb, and 23 kg (constants of the equation, from memory)
    expect(us().recommendedWeightLimit).toEqual({ value: 51, unit: 'lb' });
    expect(si().recommendedWeightLimit).toEqual({ value: 23, unit: 'kg' });
    expect(us().costsMost).toBeNull();
  });

  it.each([
    ['us', '51 lb', 'pass', 1],
    ['us', '51.0001 lb', 'fail', 51.0001 / 51],
    ['us', '50.9999 lb', 'pass', 50.9999 / 51],
    ['si', '23 kg', 'pass', 1],
    ['si', '23.0001 kg', 'fail', 23.0001 / 23],
    ['si', '22.9999 kg', 'pass', 22.9999 / 23],
  ] as const)('decides at an index of 1: %s, %s', (system, mass, verdict, index) => {
    const answer = checkCarry(easyLift(system, { load: mass }));
    expect(answer.verdict).toBe(verdict);
    expect(answer.liftingIndex).toBeCloseTo(index, 12);
  });

  it('is never mixed: 51 lb passes in lb, and as 23.13 kg not in kg', () => {
    expect(us({ load: '51 lb' }).verdict).toBe('pass');
    expect(checkCarry({ ...easyLift('si', { load: '51 lb' }), units: 'si' }).verdict).toBe('fail');
    expect(issueOf(() => si({ load: '51 lb' })).code).toBe('UNITS_REQUIRED');
  });

  it('is decided by the decimals that were written', () => {
    // fair grip below 30 in: 51 · 0.95 = 48.45 exactly, which doubles miss by their last digit; V 29.9: VM = 0.99925
    expect(51 * 0.95).not.toBe(48.45);
    // 51 · 0.95 · 0.99925 = 48.4136625
    const lift = {
      coupling: 'fair',
      origin: { height: '29.9 in' },
      destination: { control: false, height: '30 in' },
    } as const;
    expect(us({ ...lift, load: '48.4136625 lb' })).toMatchObject({ verdict: 'pass', liftingIndex: 1 });
    expect(us({ ...lift, load: '48.4136626 lb' }).verdict).toBe('fail');
    // three factors with their own decimals: H 20, D 40, A 10: 51 · 1/2 · (0.82 + 0.045) · 0.968 · 0.9 = 19.216 620... :
    // 51 · 0.5 = 25.5; · 0.865 = 22.0575; · 0.968 = 21.35166; · 0.9 = 19.216494
    const far = {
      coupling: 'poor',
      origin: { horizontal: '20 in', asymmetry: '10 deg' },
      destination: { control: false, height: '70 in' },
    } as const;
    expect(us({ ...far, load: '19.216494 lb' })).toMatchObject({ verdict: 'pass', liftingIndex: 1 });
    expect(us({ ...far, load: '19.216495 lb' }).verdict).toBe('fail');
  });
});

describe('each multiplier', () => {
  const at = (name: MultiplierName, system: 'us' | 'si', change: LiftChange) =>
    checkCarry(easyLift(system, change)).points[0]?.multipliers[name];
  const goingTo = (height: string) => ({ destination: { control: false, height } }) as LiftChange;

  it.each([
    // worked by hand from HM = 10/H or 25/H, VM = 1 − s · |V − Vr|, DM = 0.82 + k/D, AM = 1 − 0.0032 · A
    ['horizontal', 'us', { origin: { horizontal: '9.99 in' } }, 1],
    ['horizontal', 'us', { origin: { horizontal: '10 in' } }, 1],
    ['horizontal', 'us', { origin: { horizontal: '10.01 in' } }, 0.999001],
    ['horizontal', 'us', { origin: { horizontal: '24.99 in' } }, 0.40016],
    ['horizontal', 'us', { origin: { horizontal: '25 in' } }, 0.4],
    ['horizontal', 'us', { origin: { horizontal: '25.01 in' } }, 0],
    ['horizontal', 'si', { origin: { horizontal: '24.9 cm' } }, 1],
    ['horizontal', 'si', { origin: { horizontal: '50 cm' } }, 0.5],
    ['horizontal', 'si', { origin: { horizontal: '63 cm' } }, 0.396825],
    ['horizontal', 'si', { origin: { horizontal: '63.01 cm' } }, 0],
    ['vertical', 'us', { origin: { height: '0 in' } }, 0.775],
    ['vertical', 'us', { origin: { height: '29 in' } }, 0.9925],
    ['vertical', 'us', { origin: { height: '31 in' } }, 0.9925],
    ['vertical', 'us', { origin: { height: '70 in' } }, 0.7],
    ['vertical', 'us', { origin: { height: '69.99 in' } }, 0.700075],
    ['vertical', 'us', { origin: { height: '70.01 in' } }, 0],
    ['vertical', 'si', { origin: { height: '0 cm' } }, 0.775],
    ['vertical', 'si', { origin: { height: '175 cm' } }, 0.7],
    ['vertical', 'si', { origin: { height: '175.01 cm' } }, 0],
    ['distance', 'us', goingTo('30 in'), 1],
    ['distance', 'us', goingTo('40 in'), 1],
    ['distance', 'us', goingTo('40.1 in'), 0.998218],
    ['distance', 'us', goingTo('50 in'), 0.91],
    ['distance', 'us', { origin: { height: '0 in' }, ...goingTo('70 in') }, 0.845714],
    ['distance', 'us', { origin: { height: '0 in' }, ...goingTo('69.99 in') }, 0.845718],
    ['distance', 'us', { origin: { height: '0 in' }, ...goingTo('70.01 in') }, 0],
    ['distance', 'si', goingTo('100 cm'), 1],
    ['distance', 'si', goingTo('125 cm'), 0.91],
    ['distance', 'si', { origin: { height: '0 cm' }, ...goingTo('175 cm') }, 0.845714],
    ['distance', 'si', { origin: { height: '0 cm' }, ...goingTo('175.01 cm') }, 0],
    ['asymmetry', 'us', { origin: { asymmetry: '45 deg' } }, 0.856],
    ['asymmetry', 'us', { origin: { asymmetry: '-45 deg' } }, 0.856],
    ['asymmetry', 'us', { origin: { asymmetry: '134.99 deg' } }, 0.568032],
    ['asymmetry', 'us', { origin: { asymmetry: '135 deg' } }, 0.568],
    ['asymmetry', 'us', { origin: { asymmetry: '135.01 deg' } }, 0],
    ['asymmetry', 'si', { origin: { asymmetry: '90 deg' } }, 0.712],
  ] as [MultiplierName, 'us' | 'si', LiftChange, number][])('%s in %s of %j is %d', (name, system, change, value) => {
    expect(at(name, system, change)).toBeCloseTo(value, 6);
    if (value === 0) expect(at(name, system, change)).toBe(0);
  });

  it('of a lowering is that of the lift back', () => {
    expect(at('distance', 'us', { origin: { height: '50 in' }, ...goingTo('30 in') })).toBeCloseTo(0.91, 12);
  });

  it('of horizontal distance stands in the manual for each inch, rounded to hundredths', () => {
    // Table 1 of the manual, from memory; 22 and 23 in print .46 and .44, where the formula gives .4545 and .4348
    const printed = [1, 0.91, 0.83, 0.77, 0.71, 0.67, 0.63, 0.59, 0.56, 0.53, 0.5, 0.48, 0.46, 0.44, 0.42, 0.4];
    for (const [index, value] of printed.entries()) {
      const inches = 10 + index;
      const gap = Math.abs((at('horizontal', 'us', { origin: { horizontal: `${inches} in` } }) as number) - value);
      expect(gap, `${inches} in`).toBeLessThan(inches === 22 || inches === 23 ? 0.006 : 0.005 + 1e-12);
    }
  });

  it('of frequency is the cell of the table', () => {
    for (const [rate, row] of Object.entries(usNiosh1994Frequency.rows)) {
      for (const duration of ['short', 'moderate', 'long'] as const) {
        const of = (height: string) => at('frequency', 'us', { frequency: Number(rate), duration, origin: { height } });
        expect(of('29.99 in'), `${rate} ${duration}`).toBe(row[`${duration}_below_edge`]);
        expect(of('30 in'), `${rate} ${duration}`).toBe(row[`${duration}_from_edge`]);
        const metric = (height: string) =>
          at('frequency', 'si', { frequency: Number(rate), duration, origin: { height } });
        expect(metric('74.99 cm')).toBe(row[`${duration}_below_edge`]);
        expect(metric('75 cm')).toBe(row[`${duration}_from_edge`]);
      }
    }
  });

  it.each([
    // long, hands at 30 in: 0.2 → 0.85, 0.5 → 0.81, 1 → 0.75, 10 → 0.13; short: 15 → 0.28, above it nothing
    [0.01, 'long', 0.85],
    [0.2, 'long', 0.85],
    [0.2000001, 'long', 0.81],
    [0.5, 'long', 0.81],
    [0.51, 'long', 0.75],
    [1, 'long', 0.75],
    [9.01, 'long', 0.13],
    [14.9, 'short', 0.28],
    [15, 'short', 0.28],
    [15.01, 'short', 0],
    [1e300, 'short', 0],
  ] as const)('of frequency takes the next higher rate: %d a minute, %s, is %d', (frequency, duration, value) => {
    expect(at('frequency', 'us', { frequency, duration })).toBe(value);
  });

  it('of frequency says which rate it took', () => {
    const { assumptions } = us({ frequency: 5.5 });
    expect(assumptions).toContainEqual(
      expect.objectContaining({ code: 'RATE_TAKEN_AS', params: { lifts: 5.5, rate: 6 } }),
    );
    expect(codesOf(us({ frequency: 6 }).assumptions)).not.toContain('RATE_TAKEN_AS');
  });

  it('of coupling is the cell of the table, and poor where nothing is said', () => {
    for (const [coupling, row] of Object.entries(usNiosh1994Coupling.rows)) {
      const of = (height: string) => at('coupling', 'us', { coupling: coupling as 'good', origin: { height } });
      expect([of('29.99 in'), of('30 in')]).toEqual([row.below_edge, row.from_edge]);
    }
    const { coupling: _, ...unsaid } = easyLift('us');
    const answer = checkCarry(unsaid as typeof unsaid & { load: '20 lb' });
    expect(answer.points[0]?.multipliers.coupling).toBe(0.9);
    expect(codesOf(answer.assumptions)).toContain('POOR_GRIP_TAKEN');
  });

  it('beyond its limit leaves no load: the verdict is fail, the index null, and the reason is named', () => {
    const answer = us({ origin: { horizontal: '26 in' }, frequency: 16 });
    expect(answer).toMatchObject({ verdict: 'fail', liftingIndex: null, costsMost: 'horizontal' });
    expect(answer.recommendedWeightLimit).toEqual({ value: 0, unit: 'lb' });
    const said = answer.cautions.filter(({ code }) => code === 'BEYOND_LIFTING_METHOD').map(({ params }) => params);
    expect(said).toEqual([
      { multiplier: 'horizontal', at: 'origin' },
      { multiplier: 'frequency', at: 'origin' },
    ]);
    expect(inWords(answer.cautions)[0]?.text).toMatch(/horizontal multiplier is zero/);
  });
});

describe('lifts within a time', () => {
  const rateOf = (lifts: number, within: string) => {
    const answer = us({ frequency: { lifts, within } as never });
    const taken = answer.assumptions.find(({ code }) => code === 'RATE_TAKEN_AS');
    return taken?.params.lifts;
  };
  it('are counted over 15 minutes: 10 a minute for 8 of every 15 are 5.33', () => {
    // manual, 1.3.5.5, from memory: 10 · 8 / 15
    expect(rateOf(80, '15 min')).toBeCloseTo(5.33, 2);
  });
  it('take any unit of time', () => {
    expect(rateOf(80, '900 s')).toBeCloseTo(80 / 15, 12);
    expect(rateOf(80, '0.25 h')).toBeCloseTo(80 / 15, 12);
    expect(rateOf(3, '15 min')).toBeUndefined(); // 0.2 exactly, a rate of the table
  });
  it.each([
    ['15.01 min', 'TOO_LARGE'],
    ['8 h', 'TOO_LARGE'],
    ['0 min', 'NOT_POSITIVE'],
    ['5 ft', 'WRONG_KIND'],
    [undefined, 'MISSING_FIELD'],
  ])('are not counted over %s: %s', (within, code) => {
    expect(issueOf(() => us({ frequency: { lifts: 3, within } as never }))).toMatchObject({
      code,
      path: 'frequency.within',
    });
  });
  it.each([0, -1, 1.5, Number.NaN, '3', undefined])('are whole: not %s', (lifts) => {
    const issue = issueOf(() => us({ frequency: { lifts, within: '15 min' } as never }));
    expect(issue).toMatchObject({ code: 'NOT_A_WHOLE_NUMBER', path: 'frequency.lifts' });
  });
});

describe('the ends of a lift', () => {
  const hands = { control: true, horizontal: '20 in', height: '60 in', asymmetry: '0 deg' } as const;

  it('count at the origin alone where the load is let go, and says so', () => {
    const answer = us({ destination: { control: false, height: '60 in' } });
    expect(answer.points.map(({ at }) => at)).toEqual(['origin']);
    expect(codesOf(answer.assumptions)).toContain('LET_GO_AT_DESTINATION');
  });

  it('both count where it is placed with care, and the lower limit governs', () => {
    const answer = us({ destination: hands });
    expect(answer.points.map(({ at }) => at)).toEqual(['origin', 'destination']);
    // D = 30: DM 0.88. Origin 51 · 0.88 = 44.88; destination 51 · 0.5 · (1 − 0.0075 · 30) · 0.88 = 17.391
    expect(answer.points.map((point) => point.recommendedWeightLimit.value)).toEqual([
      expect.closeTo(44.88, 10),
      expect.closeTo(17.391, 10),
    ]);
    expect(answer).toMatchObject({ governs: 'destination', verdict: 'fail', costsMost: 'horizontal' });
    expect(codesOf(answer.assumptions)).not.toContain('LET_GO_AT_DESTINATION');
  });

  it('fail together: an easy destination does not help a hard origin', () => {
    const answer = us({
      origin: { horizontal: '25 in' },
      load: '21 lb',
      destination: { ...hands, horizontal: '10 in', height: '30 in' },
    });
    // origin 51 · 0.4 = 20.4
    expect(answer).toMatchObject({ governs: 'origin', verdict: 'fail' });
  });

  it('name the multiplier that costs most', () => {
    expect(us({ origin: { asymmetry: '90 deg', horizontal: '12 in' } }).costsMost).toBe('asymmetry'); // 0.712 < 0.833
    expect(us({ frequency: 9, duration: 'long' }).costsMost).toBe('frequency'); // 0.15
    expect(us({ coupling: 'poor' }).costsMost).toBe('coupling');
  });
});

describe('chain', () => {
  const chain = (size: '1/4' | '3/8' | '1/2') => chainMass({ size, length: '20 ft' });

  it('of 1/4 in, 20 ft, is an easy carry from box to deck, and of 3/8 in a load (common practice)', () => {
    expect(us({ ...boxToDeck, load: { chain: chain('1/4') } }).verdict).toBe('pass');
    expect(us({ ...boxToDeck, load: { chain: chain('3/8') } }).verdict).toBe('fail');
  });

  it.each([
    // derived: 51 · 10/14 · 0.82 · 0.87625 · 0.904 · 0.9 = 21.296 lb; 3/8 in about 30 lb with hooks, 1/2 in about 54 lb
    ['30 lb', 1.4],
    ['54 lb', 2.5],
  ] as const)('of %s has an index of %d', (mass, index) => {
    const answer = us({ ...boxToDeck, load: mass });
    expect(answer.recommendedWeightLimit.value).toBeCloseTo(21.296, 3);
    expect(answer.liftingIndex).toBeCloseTo(index, 1);
  });

  it('counts with its greatest mass, and says how long a piece would be', () => {
    // 3/8 in: 2.20717 kg/m = 1.48315 lb/ft, with 3 percent 1.52764; 20 ft: 30.553 lb; 21.29585 / 1.52764 = 13.940 ft
    const answer = us({ ...boxToDeck, load: { chain: chain('3/8') } });
    expect(answer.load.value).toBeCloseTo(30.553, 2);
    expect(answer.longestPiece).toEqual({ value: 13.94, unit: 'ft' });
    const piece = chainMass({ size: '3/8', length: '13.94 ft' });
    expect(us({ ...boxToDeck, load: { chain: piece } }).verdict).toBe('pass');
    expect(us({ ...boxToDeck, load: { chain: chainMass({ size: '3/8', length: '13.95 ft' }) } }).verdict).toBe('fail');
  });

  it('keeps its hooks on a shorter piece', () => {
    // (21.29585 − 3) / 1.52764 = 11.976 ft
    const answer = us({ ...boxToDeck, load: { chain: chain('3/8'), fittings: '3 lb' } });
    expect(answer.load.value).toBeCloseTo(33.553, 2);
    expect(answer.longestPiece).toEqual({ value: 11.97, unit: 'ft' });
    expect(us({ ...boxToDeck, load: { chain: chain('3/8'), fittings: '22 lb' } }).longestPiece).toBeNull();
  });

  it('is weighed in the system of the lift', () => {
    const metric = checkCarry({
      ...easyLift('si', { load: { chain: chainMass({ size: '10 mm', length: '10 m' }) } }),
    });
    // 2.20717 · 1.03 = 2.27338 kg/m; 23 / 2.27338 = 10.117 m
    expect(metric).toMatchObject({ verdict: 'pass', longestPiece: { value: 10.11, unit: 'm' } });
    expect(issueOf(() => si({ load: { chain: chain('3/8') } })).code).toBe('UNITS_REQUIRED');
    const asked = checkCarry({ ...easyLift('si', { load: { chain: chain('3/8') } }), units: 'si' });
    expect(asked.load.unit).toBe('kg');
    expect(asked.longestPiece?.unit).toBe('m');
  });

  it('is a screening figure, whatever the verdict', () => {
    expect(codesOf(us({ ...boxToDeck, load: { chain: chain('1/4') } }).cautions)).toContain('LOOSE_CHAIN');
    expect(codesOf(us().cautions)).not.toContain('LOOSE_CHAIN');
  });

  it('may come from JSON', () => {
    const direct = us({ ...boxToDeck, load: { chain: chain('3/8') } });
    const told = us({ ...boxToDeck, load: { chain: JSON.parse(JSON.stringify(chain('3/8'))) } });
    expect(told.liftingIndex).toBe(direct.liftingIndex);
  });
});

describe('what is said beside', () => {
  it('states the limits of the method always, and that two are not twice where it fails', () => {
    expect(codesOf(us().cautions)).toEqual(['RECOVERY_NEEDED', 'LIFTING_METHOD_LIMITS']);
    expect(codesOf(us({ load: '60 lb' }).cautions)).toContain('TWO_ARE_NOT_TWICE');
  });

  it('states the rest that must follow: 1.2 times after 1 h, 0.3 times after 2 h (from memory)', () => {
    const rest = (duration: 'short' | 'moderate' | 'long') =>
      us({ duration }).cautions.find(({ code }) => code === 'RECOVERY_NEEDED')?.params;
    expect(rest('short')).toEqual({ hours: 1, times: 1.2 });
    expect(rest('moderate')).toEqual({ hours: 2, times: 0.3 });
    expect(rest('long')).toBeUndefined();
  });

  it('rests on memory, and shows it', () => {
    expect(us().sources.map(({ provenance }) => provenance)).toEqual(['memory']);
    const sheet = explain(us({ ...boxToDeck, load: '30 lb' }), { as: 'text' });
    expect(sheet).toMatch(/from memory/);
    expect(sheet).toMatch(/HM = 10 \/ H/);
  });

  it('shows each multiplier, the limit and the index; or nothing', () => {
    expect(us().steps.map(({ symbol }) => symbol)).toEqual(['HM', 'VM', 'DM', 'AM', 'FM', 'CM', 'RWL', 'LI']);
    const { steps, ...bare } = us({ working: false });
    expect(steps).toEqual([]);
    expect(bare.recommendedWeightLimit.value).toBe(51);
  });
});

describe('wrong input', () => {
  it.each([
    [{ load: undefined }, 'MISSING_FIELD', 'load'],
    [{ load: null }, 'NOT_A_QUANTITY', 'load'],
    [{ load: '0 lb' }, 'NOT_POSITIVE', 'load'],
    [{ load: '20 ft' }, 'WRONG_KIND', 'load'],
    [{ load: { chain: {} } }, 'MISSING_FIELD', 'load.chain.mass'],
    [{ load: { chain: 'long' } }, 'MISSING_FIELD', 'load.chain'],
    [{ load: { chain: chainMass({ size: '3/8', length: '20 ft' }), fittings: '-1 lb' } }, 'NEGATIVE', 'load.fittings'],
    [{ origin: { horizontal: '0 in' } }, 'NOT_POSITIVE', 'origin.horizontal'],
    [{ origin: { height: '-1 in' } }, 'NEGATIVE', 'origin.height'],
    [{ origin: { height: undefined } }, 'MISSING_FIELD', 'origin.height'],
    [{ origin: { asymmetry: undefined } }, 'MISSING_FIELD', 'origin.asymmetry'],
    [{ destination: undefined }, 'MISSING_FIELD', 'destination'],
    [{ destination: { control: false, height: '-1 in' } }, 'NEGATIVE', 'destination.height'],
    [{ destination: { height: '40 in' } }, 'MISSING_FIELD', 'destination.control'],
    [{ destination: { control: true, height: '40 in' } }, 'MISSING_FIELD', 'destination.asymmetry'],
    [{ frequency: 0 }, 'NOT_POSITIVE', 'frequency'],
    [{ frequency: Number.NaN }, 'NOT_FINITE', 'frequency'],
    [{ frequency: undefined }, 'MISSING_FIELD', 'frequency'],
    [{ duration: '1 h' }, 'UNKNOWN_VALUE', 'duration'],
    [{ duration: undefined }, 'MISSING_FIELD', 'duration'],
    [{ coupling: 'firm' }, 'UNKNOWN_VALUE', 'coupling'],
    [{ units: 'metric' }, 'UNKNOWN_VALUE', 'units'],
    [{ load: { value: 1e308, unit: 'long-ton' } }, 'NOT_FINITE', 'value'],
  ])('%j gives %s at %s', (change, code, path) => {
    expect(issueOf(() => us(change as never))).toMatchObject({ code, path });
  });
});
