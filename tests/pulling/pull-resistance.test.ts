import { type PullResistanceInput, pullResistance, type QuantityInput } from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

/** Pounds-force of what is to be counted on. */
const pounds = (input: PullResistanceInput) => pullResistance({ ...input, units: 'us' }).pull?.value;
const codes = (notes: readonly { readonly code: string }[]) => notes.map(({ code }) => code);
const sine = (degrees: number) => Math.sin((degrees * Math.PI) / 180);
const cosine = (degrees: number) => Math.cos((degrees * Math.PI) / 180);

describe('a load on its wheels', () => {
  const cart = { kind: 'rolling', mass: '2000 lb', rolling: { coefficient: 0.05 } } as const;

  it('takes f · W · cos α + W · sin α', () => {
    expect(pounds(cart)).toBeCloseTo(100, 9);
    // 10 deg: 2000 (0.05 · 0.984808 + 0.173648) = 98.481 + 347.296
    expect(pounds({ ...cart, slope: '10 deg' })).toBeCloseTo(445.777, 3);
  });

  it('takes a grade in percent for what it is: 60 percent is 30.96 deg, not 60', () => {
    const free = { ...cart, rolling: { coefficient: 0 } };
    expect(pounds({ ...free, slope: '60 percent-grade' })).toBeCloseTo(2000 * 0.514496, 2); // 0.6 / √1.36
    expect(pounds({ ...free, slope: '60 deg' })).toBeCloseTo(2000 * 0.866025, 2);
    // the rule of 20 lb per ton and percent is the tangent, 1200 lb: 17 percent high
    expect(1200 / (pounds({ ...free, slope: '60 percent-grade' }) ?? 0)).toBeCloseTo(1.166, 3);
  });

  it('counts the high end of the sources and reports the low one', () => {
    // from memory: firm smooth earth 50 to 70 lb per short ton in the printed table; the worksheet (read) 65, within it
    const result = pullResistance({ ...cart, rolling: { surface: 'firm-smooth-earth' } });
    expect(result.pull?.value).toBeCloseTo(70, 9);
    expect(result.leastPull?.value).toBeCloseTo(50, 9);
    expect(result.sources.map(({ provenance }) => provenance)).toEqual(['memory', 'read', 'derived']);
    // a surface of the worksheet alone has one figure
    const rutted = pullResistance({ ...cart, rolling: { surface: 'rutted-dirt-4-in' } });
    expect(rutted.pull?.value).toBeCloseTo(150, 9);
    expect(rutted).not.toHaveProperty('leastPull');
  });

  it('rolls by tire penetration: 40 + 30 p lb per short ton', () => {
    // read: RR = 40 + 30 p
    const deep = (penetration: QuantityInput<'length'>) => pounds({ ...cart, rolling: { penetration } });
    expect(deep('0 in')).toBeCloseTo(40, 9);
    expect(deep('4 in')).toBeCloseTo(160, 9);
    expect(deep('101.6 mm')).toBeCloseTo(160, 9);
    expect(deep('65.3 in')).toBeCloseTo(1999, 9); // the whole weight is reached at 65.33 in
  });

  it('overruns downhill: a named outcome, no negative pull', () => {
    // f = 0.05 is the tangent of 2.8624 deg
    const down = pullResistance({ ...cart, slope: '-10 deg' });
    expect(down.outcome).toBe('overruns');
    expect(down.pull).toBeNull();
    expect(down.push?.value).toBeCloseTo(2000 * (sine(10) - 0.05 * cosine(10)), 6);
    expect(codes(down.cautions)).toContain('OVERRUNS');
    expect(pullResistance({ ...cart, slope: '-2.862 deg' }).outcome).toBe('resists');
    expect(pullResistance({ ...cart, slope: '-2.863 deg' }).outcome).toBe('overruns');
  });

  it('warns where it overruns at the low end of the range only', () => {
    // 50 to 70 lb per ton: 0.025 to 0.035; 3 percent is between
    const result = pullResistance({
      ...cart,
      rolling: { surface: 'firm-smooth-earth' },
      slope: '-3 percent-grade',
    });
    expect(result.outcome).toBe('resists');
    expect(result.pull?.value).toBeCloseTo(2000 * (0.035 - 0.03) * cosine(1.71836), 4);
    expect(result.leastPull).toBeNull();
    expect(result.push?.value).toBeCloseTo(2000 * (0.03 - 0.025) * cosine(1.71836), 4);
    expect(codes(result.cautions)).toContain('OVERRUNS');
  });

  it('records a level ground as an assumption, only where none was given', () => {
    expect(codes(pullResistance(cart).assumptions)).toEqual(['LEVEL_GROUND']);
    expect(pullResistance({ ...cart, slope: '0 deg' }).assumptions).toEqual([]);
  });

  it('refuses what it cannot use', () => {
    const rolling = (input: unknown) => issueOf(() => pullResistance({ ...cart, rolling: input as never }));
    expect(rolling(undefined)).toMatchObject({ code: 'MISSING_FIELD', path: 'rolling' });
    expect(rolling({})).toMatchObject({ code: 'MISSING_FIELD', path: 'rolling' });
    expect(rolling({ coefficient: 0.05, penetration: '1 in' })).toMatchObject({ code: 'CONFLICTING_FIELDS' });
    expect(rolling({ coefficient: 5 })).toMatchObject({ code: 'TOO_LARGE', path: 'rolling.coefficient' });
    expect(rolling({ coefficient: -0.1 })).toMatchObject({ code: 'NEGATIVE' });
    expect(rolling({ coefficient: Number.NaN })).toMatchObject({ code: 'NOT_FINITE' });
    expect(rolling({ surface: 'moon' })).toMatchObject({ code: 'NO_VALUE_IN_TABLE', path: 'rolling.surface' });
    expect(rolling({ surface: 'toString' })).toMatchObject({ code: 'NO_VALUE_IN_TABLE' });
    // 40 + 30 p reaches the whole weight, 2000 lb per ton, at 65.33 in
    expect(rolling({ penetration: '65.4 in' })).toMatchObject({ code: 'TOO_LARGE', path: 'rolling.penetration' });
    expect(issueOf(() => pullResistance({ ...cart, slope: '90 deg' })).code).toBe('IMPOSSIBLE_GEOMETRY');
    expect(issueOf(() => pullResistance({ ...cart, mass: '0 lb' })).code).toBe('NOT_POSITIVE');
    expect(issueOf(() => pullResistance({ ...cart, rolling: { penetration: '5 cm' } })).code).toBe('UNITS_REQUIRED');
    expect(issueOf(() => pullResistance({ ...cart, kind: 'flying' } as never)).code).toBe('UNKNOWN_VALUE');
    expect(issueOf(() => pullResistance(undefined as never)).code).toBe('MISSING_FIELD');
  });
});

describe('a machine to be recovered', () => {
  const stuck = { kind: 'mired', mass: '3000 kg' } as const;
  const W = 3000 * 9.80665e-3; // kN

  it.each([
    // from memory: recovery doctrine, one, two and three times the weight
    ['wheel', 1],
    ['fender', 2],
    ['cab', 3],
  ] as const)('mired to the %s takes %d times its weight', (depth, multiple) => {
    expect(pullResistance({ ...stuck, depth }).pull?.value).toBeCloseTo(multiple * W, 9);
  });

  it('adds the slope to the mire, and nothing for rolling', () => {
    const up = pullResistance({ ...stuck, depth: 'wheel', slope: '10 deg' });
    expect(up.pull?.value).toBeCloseTo(W * (1 + sine(10)), 9);
    expect(up.steps.map(({ symbol }) => symbol)).toEqual(['W', 'R mire', 'R grade']);
  });

  it('takes off 10 percent for the way it came, 40 for driven tracks, and their sum for both', () => {
    // from memory: 0.5 for both, not 0.6 · 0.9 = 0.54 left
    const tracks = { ...stuck, depth: 'wheel', runningGear: 'tracks' } as const;
    const left = (input: object) => (pullResistance({ ...tracks, ...input }).pull?.value ?? 0) / W;
    expect(left({})).toBeCloseTo(1, 12);
    expect(left({ oppositeToEntry: true })).toBeCloseTo(0.9, 12);
    expect(left({ powerOnTracks: true })).toBeCloseTo(0.6, 12);
    expect(left({ powerOnTracks: true, oppositeToEntry: true })).toBeCloseTo(0.5, 12);
    expect(left({ powerOnTracks: false })).toBeCloseTo(1, 12);
  });

  it('reduces the mire, not the slope', () => {
    const both = { runningGear: 'tracks', powerOnTracks: true, oppositeToEntry: true, slope: '10 deg' } as const;
    expect(pullResistance({ ...stuck, depth: 'wheel', ...both }).pull?.value).toBeCloseTo(W * (0.5 + sine(10)), 9);
  });

  it('never takes the 40 percent off for wheels', () => {
    const wheels = { ...stuck, depth: 'wheel', powerOnTracks: true, runningGear: 'wheels' } as const;
    expect(issueOf(() => pullResistance(wheels))).toMatchObject({
      code: 'CONFLICTING_FIELDS',
      path: 'powerOnTracks',
    });
    expect(issueOf(() => pullResistance({ ...stuck, depth: 'wheel', powerOnTracks: true }))).toMatchObject({
      code: 'MISSING_FIELD',
      path: 'runningGear',
    });
    expect(issueOf(() => pullResistance({ ...stuck } as never))).toMatchObject({
      code: 'MISSING_FIELD',
      path: 'depth',
    });
    expect(issueOf(() => pullResistance({ ...stuck, depth: 'axle' } as never)).code).toBe('UNKNOWN_VALUE');
  });

  it('rights an overturned machine with half its weight, and pulls one from a ditch with all of it', () => {
    // from memory
    const over = pullResistance({ kind: 'overturned', mass: '3000 kg' });
    expect(over.pull?.value).toBeCloseTo(W / 2, 9);
    expect(codes(over.cautions)).toEqual(['PAST_BALANCE']);
    expect(over.assumptions).toEqual([]);
    expect(pullResistance({ kind: 'nosed-in-ditch', mass: '3000 kg' }).pull?.value).toBeCloseTo(W, 9);
  });

  it('marks doctrine as memory', () => {
    const { sources } = pullResistance({ ...stuck, depth: 'wheel' });
    expect(sources.map(({ provenance }) => provenance)).toEqual(['memory']);
  });
});

describe('soft ground', () => {
  it('takes a fraction of the weight while the vehicle still rolls', () => {
    // read: about 4 percent on tarmac, 1/6 on hard wet sand, 1/2 in a bog
    const on = (surface: 'hard-level-tarmac' | 'hard-wet-sand' | 'bog') =>
      pounds({ kind: 'soft-ground', mass: '3000 lb', surface });
    expect(on('hard-level-tarmac')).toBeCloseTo(120, 9);
    expect(on('hard-wet-sand')).toBeCloseTo(500, 9);
    expect(on('bog')).toBeCloseTo(1500, 9);
  });

  it('says that a buried vehicle is another thing', () => {
    const bog = { kind: 'soft-ground', mass: '3000 lb', surface: 'bog' } as const;
    expect(codes(pullResistance(bog).cautions)).toEqual(['STILL_ROLLS']);
    expect(pounds({ kind: 'mired', mass: '3000 lb', depth: 'wheel' })).toBeGreaterThan(pounds(bog) ?? 0);
    expect(pounds({ ...bog, slope: '30 deg' })).toBeCloseTo(3000, 6);
  });

  it('refuses a surface that is not listed', () => {
    const grass = { kind: 'soft-ground', mass: '3000 lb', surface: 'grass' } as never;
    expect(issueOf(() => pullResistance(grass))).toMatchObject({ code: 'NO_VALUE_IN_TABLE', path: 'surface' });
  });
});

describe('a log', () => {
  const log = { kind: 'log', mass: '1000 kg' } as const;
  const W = 9.80665;
  const whole = { ...log, lift: 'none', friction: { coefficient: 0.6 } } as const;
  const oneEnd = { ...log, lift: 'one-end', friction: { coefficient: 0.6 } } as const;

  /** Pull by stepping it up until the forces along the ground are in balance, another road to the closed form. */
  function byBalance(μ: number, α: number, β: number): number {
    let low = 0;
    let high = 10 * W;
    for (let i = 0; i < 200; i++) {
      const pull = (low + high) / 2;
      const onGround = W * cosine(α) - pull * sine(β);
      const moves = pull * cosine(β) >= μ * onGround + W * sine(α);
      if (moves) high = pull;
      else low = pull;
    }
    return high;
  }

  it.each([
    [0.6, 0, 0],
    [0.6, 10, 15],
    [0.3, -5, 30],
    [0.8, 20, -10],
  ])('with friction %d, slope %d deg and chain %d deg needs what the balance gives', (μ, α, β) => {
    const result = pullResistance({
      ...log,
      lift: 'none',
      friction: { coefficient: μ },
      slope: { value: α, unit: 'deg' },
      chainAngle: { value: β, unit: 'deg' },
    });
    expect(result.pull?.value).toBeCloseTo(byBalance(μ, α, β), 9);
  });

  it('with one end up rubs with half its weight, and puts the other half on the hitch', () => {
    const result = pullResistance({ ...oneEnd, slope: '10 deg' });
    expect(result.pull?.value).toBeCloseTo(W * (0.3 * cosine(10) + sine(10)), 9);
    expect(result.onHitch?.value).toBeCloseTo((W * cosine(10)) / 2, 9);
    expect(pullResistance(whole)).not.toHaveProperty('onHitch');
  });

  it('keeps apart a coefficient of the full weight and one of the weight on the ground', () => {
    // from memory: one end lifted 0.3 to 0.5 of the FULL weight; bare soil 0.6 of the weight on the ground
    const lifted = pullResistance({ ...oneEnd, friction: { condition: 'one-end-lifted' } });
    expect(lifted.pull?.value).toBeCloseTo(0.5 * W, 9);
    expect(lifted.leastPull?.value).toBeCloseTo(0.3 * W, 9);
    const bare = { condition: 'bare-soil-design' } as const;
    expect(pullResistance({ ...oneEnd, friction: bare }).pull?.value).toBeCloseTo(0.3 * W, 9);
    expect(pullResistance({ ...whole, friction: bare }).pull?.value).toBeCloseTo(0.6 * W, 9);
    const soil = pullResistance({ ...whole, friction: { condition: 'whole-log-on-soil' } });
    expect([soil.leastPull?.value, soil.pull?.value].map((value) => ((value ?? 0) / W).toFixed(6))).toEqual([
      '0.500000',
      '0.800000',
    ]);
  });

  it('refuses a coefficient that was found the other way', () => {
    for (const input of [
      { ...whole, friction: { condition: 'one-end-lifted' } },
      { ...oneEnd, friction: { condition: 'whole-log-on-soil' } },
      { ...oneEnd, friction: { condition: 'packed-snow-or-ice-trail' } },
    ] as PullResistanceInput[]) {
      expect(issueOf(() => pullResistance(input))).toMatchObject({
        code: 'CONFLICTING_FIELDS',
        path: 'friction.condition',
      });
    }
  });

  it('slides down by itself on a trail steeper than its friction', () => {
    // packed snow 0.1 to 0.3 (from memory): tan 10 deg = 0.176, tan 20 deg = 0.364
    const snow = { ...whole, friction: { condition: 'packed-snow-or-ice-trail' } } as const;
    const gentle = pullResistance({ ...snow, slope: '-10 deg' });
    expect([gentle.outcome, gentle.leastPull]).toEqual(['resists', null]);
    expect(pullResistance({ ...snow, slope: '-20 deg' }).outcome).toBe('overruns');
  });

  it('refuses a chain that lifts the log or digs it in', () => {
    const at = (chainAngle: QuantityInput<'angle'>, slope: QuantityInput<'angle'> = '0 deg') =>
      pullResistance({ ...whole, chainAngle, slope });
    expect(at('80 deg', '9.9 deg').outcome).toBe('resists');
    expect(issueOf(() => at('80 deg', '10.1 deg'))).toMatchObject({
      code: 'IMPOSSIBLE_GEOMETRY',
      path: 'chainAngle',
    });
    // μ = 0.6: cos β + 0.6 sin β = 0 at β = −59.04 deg
    expect(at('-59 deg').outcome).toBe('resists');
    expect(issueOf(() => at('-59.1 deg')).code).toBe('IMPOSSIBLE_GEOMETRY');
    expect(issueOf(() => pullResistance({ ...oneEnd, chainAngle: '10 deg' }))).toMatchObject({
      code: 'CONFLICTING_FIELDS',
      path: 'chainAngle',
    });
    expect(issueOf(() => pullResistance({ ...whole, friction: { condition: 'sand' } as never })).code).toBe(
      'NO_VALUE_IN_TABLE',
    );
    expect(issueOf(() => pullResistance({ ...whole, friction: { coefficient: 60 } })).code).toBe('TOO_LARGE');
    expect(issueOf(() => pullResistance({ ...log, friction: { coefficient: 0.6 } } as never)).path).toBe('lift');
  });
});

describe('a tackle', () => {
  const load = { kind: 'mired', depth: 'wheel', mass: '10000 lb' } as const;

  it('adds 10 percent of the resistance of the LOAD for each sheave, then divides', () => {
    // from memory: 2 sheaves, 3 parts of line: (10,000 + 2,000) / 3
    const result = pullResistance({ ...load, tackle: { sheaves: 2, mechanicalAdvantage: 3 } });
    expect(result.fallLine?.value).toBeCloseTo(4000, 9);
    expect(result.pull?.value).toBeCloseTo(10_000, 9);
    // the mistake is 10 percent of the force on the line: (10,000 + 0.2 · 3,333) / 3 = 3,556
    expect(result.fallLine?.value).not.toBeCloseTo(3555.6, 0);
  });

  it('takes whole sheaves, and an advantage that they can give', () => {
    const tackle = (sheaves: number, mechanicalAdvantage: number) => () =>
      pullResistance({ ...load, tackle: { sheaves, mechanicalAdvantage } });
    expect(tackle(1, 2)().fallLine?.value).toBeCloseTo(5500, 9);
    expect(tackle(1, 1)().fallLine?.value).toBeCloseTo(11_000, 9);
    expect(issueOf(tackle(1, 2.1))).toMatchObject({ code: 'TOO_LARGE', path: 'tackle.mechanicalAdvantage' });
    expect(issueOf(tackle(1, 0.9)).path).toBe('tackle.mechanicalAdvantage');
    expect(issueOf(tackle(0, 1)).code).toBe('NOT_A_WHOLE_NUMBER');
    expect(issueOf(tackle(1.5, 1)).code).toBe('NOT_A_WHOLE_NUMBER');
    expect(issueOf(tackle(11, 1)).code).toBe('NOT_A_WHOLE_NUMBER');
    expect(tackle(10, 1)().fallLine?.value).toBeCloseTo(20_000, 9);
  });

  it('works on what is counted on, the high end of a range', () => {
    // firm smooth earth, from memory: 50 to 70 lb per ton; (70 + 7) / 2
    const tackle = { sheaves: 1, mechanicalAdvantage: 2 };
    const cart = { kind: 'rolling', mass: '2000 lb', rolling: { surface: 'firm-smooth-earth' }, tackle } as const;
    expect(pullResistance(cart).fallLine?.value).toBeCloseTo(38.5, 9);
  });

  it('has no line force where the load overruns', () => {
    const tackle = { sheaves: 1, mechanicalAdvantage: 2 };
    const cart = { kind: 'rolling', mass: '1 t', rolling: { coefficient: 0 }, slope: '-5 deg', tackle } as const;
    expect(pullResistance(cart).fallLine).toBeNull();
  });
});

it('answers without the steps as with them', () => {
  const input = { kind: 'mired', depth: 'cab', mass: '3000 kg', slope: '5 deg' } as const;
  const { steps, ...rest } = pullResistance(input);
  const { steps: none, ...bulk } = pullResistance({ ...input, working: false });
  expect(bulk).toEqual(rest);
  expect([steps.length, none.length]).toEqual([3, 0]);
});
