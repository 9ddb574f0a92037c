import { type ChainEnd, pullChainLength } from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

const hook = { at: 'hook' } as const;
/** Inches of one end. */
const inchesOf = (end: ChainEnd) =>
  pullChainLength({ ends: [end], pitch: '1 in', outsideWidth: '1 in' }).ends[0]!.value * 12;

describe('what an end takes', () => {
  it('round a cylinder: n · π · (D + b)', () => {
    // π · (15 + 1) = 50.2655 in once round; half as much in a basket, three halves with a lap and a half
    expect(inchesOf({ at: 'cylinder', diameter: '15 in', turns: 1 })).toBeCloseTo(50.2655, 4);
    expect(inchesOf({ at: 'cylinder', diameter: '15 in', turns: 0.5 })).toBeCloseTo(25.1327, 4);
    expect(inchesOf({ at: 'cylinder', diameter: '15 in', turns: 1.5, hookBack: '1 ft' })).toBeCloseTo(87.3982, 4);
  });

  it('round a rectangle: n · (2 · (width + height) + π · b)', () => {
    // 2 · (12 + 8) + π = 43.1416; twice round with 6 in back: 92.2832
    const beam = { at: 'rectangle', width: '12 in', height: '8 in' } as const;
    expect(inchesOf({ ...beam, turns: 1 })).toBeCloseTo(43.1416, 4);
    expect(inchesOf({ ...beam, turns: 2, hookBack: '6 in' })).toBeCloseTo(92.2832, 4);
  });

  it('a choker: π · (D + b) and its tail', () => {
    // 50.2655 + 24
    expect(inchesOf({ at: 'choker', diameter: '15 in', tail: '2 ft' })).toBeCloseTo(74.2655, 4);
  });

  it('a hook: nothing but what hooks back', () => {
    expect(inchesOf({ at: 'hook', hookBack: '9 in' })).toBeCloseTo(9, 12);
  });

  it('takes short link as 3.4 times its wire wide, and says so', () => {
    // π · (16 + 3.4 · 0.375) = 54.2710 in
    const end = { at: 'cylinder', diameter: '16 in', turns: 1 } as const;
    const answer = pullChainLength({ ends: [end], pitch: '1 in', wireDiameter: '0.375 in' });
    expect(answer.ends[0]!.value * 12).toBeCloseTo(54.271, 3);
    expect(answer.assumptions.map(({ code }) => code)).toContain('SHORT_LINK_WIDTH');
    const plain = pullChainLength({ ends: [hook], standoff: '20 ft', pitch: '1 in', wireDiameter: '0.375 in' });
    expect(plain.assumptions.map(({ code }) => code)).not.toContain('SHORT_LINK_WIDTH');
  });
});

describe('the whole chain', () => {
  it('adds both ends to the gap, in whole links', () => {
    // 240 + 0 + 74.2655 = 314.2655 in; / 1.25 = 251.41: 252 links, 315 in, 0.7345 in to spare
    const ends = [hook, { at: 'choker', diameter: '15 in', tail: '2 ft' }] as const;
    const answer = pullChainLength({ ends, standoff: '20 ft', pitch: '1.25 in', outsideWidth: '1 in' });
    expect(answer.required.value * 12).toBeCloseTo(314.2655, 4);
    expect(answer.links).toBe(252);
    expect(answer.length.value).toBeCloseTo(26.25, 12);
    expect(answer.spare.value * 12).toBeCloseTo(0.7345, 4);
  });

  it('is exact where links come out even', () => {
    const even = pullChainLength({ ends: [hook, hook], standoff: '20 ft', pitch: '1.2 in' });
    expect(even.links).toBe(200);
    expect(even.spare.value).toBe(0);
    const more = [hook, { at: 'hook', hookBack: '1/16 in' }] as const;
    expect(pullChainLength({ ends: more, standoff: '20 ft', pitch: '1.2 in' }).links).toBe(201);
  });

  it('a gap to stop in: reaction, then braking', () => {
    // 2 m/s · 1.5 s + 4 / (2 · 2) = 3 + 1 = 4 m
    const standoff = { speed: '2 m/s', reactionTime: '1.5 s', deceleration: '2 m/s2' } as const;
    const answer = pullChainLength({ ends: [hook, hook], standoff, pitch: '30 mm' });
    expect(answer.standoff).toMatchObject({ unit: 'm' });
    expect(answer.standoff!.value).toBeCloseTo(4, 12);
    expect(answer.links).toBe(134); // 4000 / 30 = 133.3
  });

  it('keeps people away from both ends by its length, times a margin', () => {
    const ask = { ends: [hook], standoff: '20 ft', pitch: '1.2 in' } as const;
    const plain = pullChainLength(ask);
    expect(plain.dangerRadius.value).toBeCloseTo(20, 12);
    expect(plain.assumptions.map(({ code }) => code)).toContain('NO_DANGER_MARGIN');
    // from memory: 1.5 times is a civil habit
    const wide = pullChainLength({ ...ask, dangerMargin: 1.5 });
    expect(wide.dangerRadius.value).toBeCloseTo(30, 12);
    expect(wide.assumptions.map(({ code }) => code)).not.toContain('NO_DANGER_MARGIN');
  });

  it('answers in feet or meters as asked, and asks where the lengths mix', () => {
    const mixed = { ends: [hook], standoff: '6 m', pitch: '1.2 in' } as const;
    expect(issueOf(() => pullChainLength(mixed)).code).toBe('UNITS_REQUIRED');
    expect(pullChainLength({ ...mixed, units: 'us' }).length.unit).toBe('ft');
    expect(pullChainLength({ ...mixed, working: false, units: 'si' })).toMatchObject({
      steps: [],
      length: { unit: 'm' },
    });
  });

  it('says how to wrap only where it wraps', () => {
    const codes = (end: ChainEnd) =>
      pullChainLength({ ends: [end], standoff: '1 ft', pitch: '1 in', outsideWidth: '1 in' }).cautions.map(
        ({ code }) => code,
      );
    expect(codes({ at: 'choker', diameter: '1 ft', tail: '1 ft' })).toContain('WRAP_TO_KEEP_HOOK');
    expect(codes(hook)).not.toContain('WRAP_TO_KEEP_HOOK');
  });
});

describe('facts of the trade', () => {
  it('common practice: from machine to machine at least 15 ft, better 20 ft', () => {
    const verdicts = (standoff: '14.9 ft' | '15 ft' | '4.572 m' | '19.9 ft' | '20 ft') =>
      pullChainLength({ ends: [hook], standoff, pitch: '1 in', units: 'us' }).checks.map(({ verdict }) => verdict);
    expect(verdicts('14.9 ft')).toEqual(['fail', 'fail']);
    expect(verdicts('15 ft')).toEqual(['pass', 'fail']);
    expect(verdicts('4.572 m')).toEqual(['pass', 'fail']);
    expect(verdicts('19.9 ft')).toEqual(['pass', 'fail']);
    expect(verdicts('20 ft')).toEqual(['pass', 'pass']);
    const answer = pullChainLength({ ends: [hook], pitch: '1 in', standoff: '1 ft' });
    expect(answer.checks.every(({ weight, clause }) => weight === 'practice' && clause === 'common practice')).toBe(
      true,
    );
  });

  it('common practice: about 10 ft wraps a load in the bucket of a compact loader', () => {
    // a bucket 50 in wide and 20 in deep: round its depth with a load heaped 30 in high, 2 · (20 + 30) + 4 = 104 in and a
    // foot back to its own hook: 9.7 ft
    const chain = { pitch: '1 in', wireDiameter: '0.375 in' } as const;
    const bucket = { at: 'rectangle', height: '20 in', turns: 1, hookBack: '1 ft' } as const; // its depth
    const short = pullChainLength({ ends: [{ ...bucket, width: '30 in' }], ...chain });
    expect(short.required.value).toBeCloseTo(9.67, 2);
    expect(short.required.value).toBeLessThan(10);
    // round its whole rim, 50 in by 20 in, the turn alone takes 2 · 70 + 4 = 144 in, 12 ft: 10 ft does not reach
    const long = pullChainLength({ ends: [{ ...bucket, width: '50 in' }], ...chain });
    expect(long.required.value).toBeCloseTo(13, 1);
  });
});

describe('what it refuses', () => {
  const base = { ends: [hook], standoff: '20 ft', pitch: '1.2 in', wireDiameter: '0.4 in' } as const;
  const log = { at: 'cylinder', diameter: '1 ft', turns: 1 } as const;
  it.each<[code: string, path: string, change: object]>([
    ['MISSING_FIELD', 'pitch', { pitch: undefined }],
    ['EMPTY_LIST', 'ends', { ends: [] }],
    ['EMPTY_LIST', 'ends', { ends: undefined }],
    ['TOO_LARGE', 'ends', { ends: [hook, hook, hook] }],
    ['MISSING_FIELD', 'ends[0]', { ends: [null] }],
    ['UNKNOWN_VALUE', 'ends[1].at', { ends: [hook, { at: 'bumper' }] }],
    ['NOT_A_WHOLE_NUMBER', 'ends[0].turns', { ends: [{ ...log, turns: 0 }] }],
    ['NOT_A_WHOLE_NUMBER', 'ends[0].turns', { ends: [{ ...log, turns: 0.75 }] }],
    ['NOT_A_WHOLE_NUMBER', 'ends[0].turns', { ends: [{ ...log, turns: 100.5 }] }],
    ['NOT_A_WHOLE_NUMBER', 'ends[0].turns', { ends: [{ at: 'rectangle', width: '1 ft', height: '1 ft', turns: 0.5 }] }],
    ['NOT_POSITIVE', 'ends[0].diameter', { ends: [{ ...log, diameter: '0 ft' }] }],
    ['MISSING_FIELD', 'ends[0].tail', { ends: [{ at: 'choker', diameter: '1 ft' }] }],
    ['MISSING_FIELD', 'wireDiameter', { ends: [log], wireDiameter: undefined }],
    ['CONFLICTING_FIELDS', 'outsideWidth', { outsideWidth: '1.3 in' }],
    ['UNKNOWN_VALUE', 'dangerMargin', { dangerMargin: 0.9 }],
    ['IMPOSSIBLE_GEOMETRY', 'standoff', { standoff: undefined }],
    ['NOT_POSITIVE', 'standoff', { standoff: '0 ft' }],
    ['NOT_A_QUANTITY', 'standoff', { standoff: null }],
    ['MISSING_FIELD', 'standoff.reactionTime', { standoff: { speed: '1 mph' } }],
    [
      'NOT_POSITIVE',
      'standoff.deceleration',
      { standoff: { speed: '1 mph', reactionTime: '1 s', deceleration: '0 g' } },
    ],
  ])('%s at %s', (code, path, change) => {
    expect(issueOf(() => pullChainLength({ ...base, ...change } as never))).toMatchObject({ code, path });
  });
});
