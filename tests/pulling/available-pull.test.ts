import { type AvailablePull, type AvailablePullInput, availablePull, type Engine } from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

/** A compact tractor: 3300 lb, wheelbase 64 in, center of gravity 22.4 in ahead of the rear axle and 28 in high. */
const tractor = {
  mass: '3300 lb',
  frontAxleMass: '1155 lb',
  wheelbase: '64 in',
  centerOfGravityHeight: '28 in',
  drive: 'rear-wheels',
} as const;
const net = { coefficient: 0.55, kind: 'net' } as const;
const base = {
  tractor,
  hitch: { kind: 'drawbar', height: '15 in' },
  traction: net,
  rolling: { coefficient: 0.05 },
} as const;

const pounds = (input: AvailablePullInput) => availablePull(input).pull?.value ?? Number.NaN;
const limit = (result: AvailablePull, name: string) => result.limits.find((each) => each.limit === name)?.pull?.value;
const codes = (notes: readonly { readonly code: string }[]) => notes.map(({ code }) => code);
const radians = (degrees: number) => (degrees * Math.PI) / 180;

/**
 * Another road to the pull: forces along and across the ground and moments about the CENTER OF GRAVITY, as three
 * equations in P, R_f and R_r, solved by Cramer's rule. `fr` and `re` are what each newton on the axle gives along the
 * ground in the way it pulls; x is the way the nose points, z up.
 */
function byMoments(given: {
  readonly fr: number;
  readonly re: number;
  readonly thrust?: number;
  readonly h: number;
  readonly c?: number;
  readonly slope?: number;
  readonly below?: number;
}): { readonly pull: number; readonly front: number; readonly rear: number } {
  const { fr, re, thrust = 0, h, c = 0, slope = 0, below = 0 } = given;
  const [W, L, x, z] = [3300, 64, 22.4, 28];
  const [a, b] = [radians(slope), radians(below)];
  // columns: P, R_f, R_r; right side
  const rows: [number, number, number, number][] = [
    // along: thrust + fr R_f + re R_r − P cos b = W sin a
    [-Math.cos(b), fr, re, W * Math.sin(a) - thrust],
    // across: R_f + R_r − P sin b = W cos a
    [-Math.sin(b), 1, 1, W * Math.cos(a)],
    // moments, nose up: hitch at (−(x + c), h − z), front wheels at (L − x, −z), rear wheels at (−x, −z)
    [(x + c) * Math.sin(b) + (h - z) * Math.cos(b), L - x + z * fr, -x + z * re, -z * thrust],
  ];
  const det = (columns: readonly [number, number, number]) => {
    const [[p, q, r], [s, t, u], [v, w, y]] = rows.map((row) => columns.map((at) => row[at] as number)) as [
      [number, number, number],
      [number, number, number],
      [number, number, number],
    ];
    return p * (t * y - u * w) - q * (s * y - u * v) + r * (s * w - t * v);
  };
  const all = det([0, 1, 2]);
  return { pull: det([3, 1, 2]) / all, front: det([0, 3, 2]) / all, rear: det([0, 1, 3]) / all };
}

describe('grip', () => {
  it.each([
    { slope: 0, below: 0, c: 0, h: 15 },
    { slope: 15, below: 0, c: 0, h: 15 },
    { slope: -10, below: 0, c: 0, h: 20 },
    { slope: 0, below: 12, c: 9, h: 18 },
    { slope: 8, below: -10, c: 9, h: 18 },
  ])('balances forces and moments about the center of gravity: %j', ({ slope, below, c, h }) => {
    const place = {
      slope: { value: slope, unit: 'deg' },
      hitch: { kind: 'drawbar', height: { value: h, unit: 'in' }, behindAxle: { value: c, unit: 'in' } },
      chainAngle: { belowTractorLine: { value: below, unit: 'deg' } },
    } as const;
    const rearDriven = availablePull({ ...base, ...place });
    const expected = byMoments({ fr: -0.05, re: 0.55, h, c, slope, below });
    expect(limit(rearDriven, 'traction')).toBeCloseTo(expected.pull, 6);
    expect(rearDriven.governs).toBe('traction');
    expect(rearDriven.frontReaction.value).toBeCloseTo(expected.front, 6);
    expect(rearDriven.rearReaction.value).toBeCloseTo(expected.rear, 6);

    const allDriven = availablePull({ ...base, ...place, tractor: { ...tractor, drive: 'all-wheels' } });
    expect(limit(allDriven, 'traction')).toBeCloseTo(byMoments({ fr: 0.55, re: 0.55, h, c, slope, below }).pull, 6);
  });

  it('takes rolling off a gross coefficient once, and not off a net one', () => {
    const all = { ...tractor, drive: 'all-wheels' } as const;
    const gross = { coefficient: 0.55, kind: 'gross' } as const;
    // all driven, level: W (0.55 − 0.05), and W · 0.55
    expect(pounds({ ...base, tractor: all, traction: gross })).toBeCloseTo(1650, 6);
    expect(pounds({ ...base, tractor: all })).toBeCloseTo(1815, 6);
    expect(pounds({ ...base, traction: gross })).toBeCloseTo(byMoments({ fr: -0.05, re: 0.5, h: 15 }).pull, 6);
  });

  it('does not count the front axle of a rear-driven tractor', () => {
    expect(pounds(base)).toBeLessThan(0.55 * 3300);
    expect(pounds({ ...base, tractor: { ...tractor, drive: 'all-wheels' } })).toBeCloseTo(0.55 * 3300, 6);
    // 3300 (0.55 · 0.65 − 0.05 · 0.35) / (1 − 0.6 · 15/64) = 1122 / 0.859375; a course sheet has rolling with a plus
    // sign in the statics: 3300 (0.3575 + 0.0175) / (1 − 0.5 · 15/64) = 1401.8
    expect(pounds(base)).toBeCloseTo(1305.6, 1);
    expect(byMoments({ fr: 0.05, re: 0.55, h: 15 }).pull).toBeCloseTo(1401.8, 1);
  });

  it('counts the low end of a surface and reports the high one', () => {
    // from memory: rubber tires on dry clay loam 0.5 to 0.7, tracks 0.9; loose gravel rolls at 200 to 240 lb per ton
    const all = { ...tractor, drive: 'all-wheels' } as const;
    const loam = { traction: { surface: 'dry-clay-loam' }, rolling: { surface: 'loose-gravel' } } as const;
    const result = availablePull({ ...base, ...loam, tractor: all });
    expect(result.pull?.value).toBeCloseTo(3300 * (0.5 - 0.12), 6);
    expect(result.atBest?.pull?.value).toBeCloseTo(3300 * (0.7 - 0.1), 6);
    const tracks = availablePull({ ...base, traction: loam.traction, tractor: { ...tractor, drive: 'tracks' } });
    expect(tracks.pull?.value).toBeCloseTo(3300 * (0.9 - 0.05), 6);
    expect(tracks).not.toHaveProperty('atBest');
  });

  it('keeps the mark of the source it counts', () => {
    const provenance = (surface: 'dry-clay-loam' | 'firm-smooth-earth') =>
      availablePull({ ...base, traction: { surface } }).sources[0]?.provenance;
    expect([provenance('dry-clay-loam'), provenance('firm-smooth-earth')]).toEqual(['memory', 'read']);
  });

  it('has no row of the worksheet for tracks', () => {
    const onTracks = { ...base, tractor: { ...tractor, drive: 'tracks' } } as const;
    const issue = issueOf(() => availablePull({ ...onTracks, traction: { surface: 'firm-smooth-earth' } }));
    expect(issue).toMatchObject({ code: 'NO_VALUE_IN_TABLE', path: 'traction.surface' });
    expect(issue.expected).toContain('dry-clay-loam');
    expect(issue.expected).not.toContain('firm-smooth-earth');
  });

  it('asks for rolling resistance where the answer rests on it', () => {
    const { rolling: _, ...without } = base;
    const all = { ...without, tractor: { ...tractor, drive: 'all-wheels' } } as const;
    const missing = { code: 'MISSING_FIELD', path: 'rolling' };
    expect(issueOf(() => availablePull(without))).toMatchObject(missing);
    expect(availablePull(all).outcome).toBe('pulls');
    expect(issueOf(() => availablePull({ ...all, engine: { thrustLimit: '2000 lbf' } }))).toMatchObject(missing);
    expect(issueOf(() => availablePull({ ...all, traction: { coefficient: 0.5, kind: 'gross' } }))).toMatchObject(
      missing,
    );
  });
});

describe('grip on soil by D497', () => {
  const { rolling: _, ...soilBase } = base;
  const firm = { soil: 'firm', slip: 0.15, construction: 'bias' } as const;
  // by hand, from memory of the equations: Bn 55, s 0.15: GTR 0.63188, MRR 0.068295; at s = 0 MRR = 1/55 + 0.04
  const NTR = 0.63188 - 0.068295;
  const FREE = 1 / 55 + 0.04;

  it('has the net traction ratio on what is driven, and the motion resistance of no slip on the rest', () => {
    const result = availablePull({ ...soilBase, traction: firm });
    expect(result.pull?.value).toBeCloseTo(byMoments({ fr: -FREE, re: NTR, h: 15 }).pull, 1);
    expect(codes(result.assumptions)).toContain('NORMALLY_LOADED_TIRES');
  });

  it('holds the motion resistance against the engine too', () => {
    const result = availablePull({ ...soilBase, traction: firm, engine: { thrustLimit: '1000 lbf' } });
    expect(result.governs).toBe('thrust-limit');
    const expected = byMoments({ fr: -FREE, re: -0.068295, thrust: 1000, h: 15 }).pull;
    expect(result.pull?.value).toBeCloseTo(expected, 1);
  });

  it('takes no rolling resistance beside it, and no tracks', () => {
    expect(issueOf(() => availablePull({ ...base, traction: firm }))).toMatchObject({
      code: 'CONFLICTING_FIELDS',
      path: 'rolling',
    });
    const tracks = { ...soilBase, traction: firm, tractor: { ...tractor, drive: 'tracks' } } as const;
    expect(issueOf(() => availablePull(tracks))).toMatchObject({ code: 'CONFLICTING_FIELDS', path: 'traction' });
  });

  const tires = {
    front: { sectionWidth: '7 in', diameter: '24 in', deflectionRatio: 0.2 },
    rear: { sectionWidth: '11 in', diameter: '42 in', deflectionRatio: 0.2 },
  } as const;

  /** D497 typed again: net ratio at slip s, and free rolling, of one of two tires under the load of an axle in lbf. */
  function ratios(axleLoad: number, b: number, d: number, s: number): { readonly net: number; readonly free: number } {
    const kN = (axleLoad / 2) * 0.0044482216152605; // exact by definition
    const Bn = ((1200 * (b * 0.0254) * (d * 0.0254)) / kN) * (2 / (1 + (3 * b) / d));
    const net = 0.88 * (1 - Math.exp(-0.1 * Bn)) * (1 - Math.exp(-7.5 * s)) - 1 / Bn - (0.5 * s) / Math.sqrt(Bn);
    return { net, free: 1 / Bn + 0.04 };
  }

  it.each([0, 10])('finds the pull at which tires of a size carry what they give, slope %d deg', (slope) => {
    const input = { ...soilBase, traction: { ...firm, tires }, slope: { value: slope, unit: 'deg' } } as const;
    const result = availablePull(input);
    const [front, rear] = [result.frontReaction.value, result.rearReaction.value];
    const expected = byMoments({
      fr: -ratios(front, 7, 24, 0.15).free,
      re: ratios(rear, 11, 42, 0.15).net,
      h: 15,
      slope,
    });
    expect(result.pull?.value).toBeCloseTo(expected.pull, 5);
    expect(front).toBeCloseTo(expected.front, 5);
    const all = availablePull({ ...input, tractor: { ...tractor, drive: 'all-wheels' } });
    const both = byMoments({
      fr: ratios(all.frontReaction.value, 7, 24, 0.15).net,
      re: ratios(all.rearReaction.value, 11, 42, 0.15).net,
      h: 15,
      slope,
    });
    expect(all.pull?.value).toBeCloseTo(both.pull, 5);
  });

  it('finds it under a steep chain too, where the pull presses the tractor down to a multiple of its grip at rest', () => {
    // all driven: at rest about 0.6 W; P cos 50° = NTR (W + P sin 50°) with NTR near 0.55 gives 2.5 W
    const hitch = { kind: 'frame', height: '15 in', behindAxle: '-18 in' } as const;
    const result = availablePull({
      ...soilBase,
      hitch,
      tractor: { ...tractor, drive: 'all-wheels' },
      chainAngle: { belowTractorLine: '50 deg' },
      traction: { ...firm, tires },
    });
    expect(result.governs).toBe('traction');
    const expected = byMoments({
      fr: ratios(result.frontReaction.value, 7, 24, 0.15).net,
      re: ratios(result.rearReaction.value, 11, 42, 0.15).net,
      h: 15,
      c: -18,
      below: 50,
    });
    expect(result.pull?.value).toBeCloseTo(expected.pull, 5);
    expect(expected.pull).toBeGreaterThan(1.5 * 3300);
  });

  it('asks for the tires with a cone index', () => {
    const cone = { coneIndex: { kPa: 1200 }, slip: 0.15, construction: 'bias' } as const;
    expect(issueOf(() => availablePull({ ...soilBase, traction: cone }))).toMatchObject({
      code: 'MISSING_FIELD',
      path: 'traction.tires',
    });
    const measured = availablePull({ ...soilBase, traction: { ...cone, tires } });
    expect(measured.pull?.value).toBeCloseTo(pounds({ ...soilBase, traction: { ...firm, tires } }), 6);
  });

  it('cannot move without slip', () => {
    expect(availablePull({ ...soilBase, traction: { ...firm, slip: 0 } }).outcome).toBe('cannot-move-itself');
    expect(availablePull({ ...soilBase, traction: { ...firm, slip: 0, tires } }).outcome).toBe('cannot-move-itself');
  });
});

describe('what the engine pushes with', () => {
  const strong = { ...base, tractor: { ...tractor, drive: 'all-wheels' } } as const;
  const withEngine = (engine: Engine, more: object = {}) => availablePull({ ...strong, ...more, engine });

  it('is 375 · hp · η / mph pounds on the ground, less rolling', () => {
    // 375 · 20 · 0.8 / 4 = 1500; less 0.05 · 3300 = 165
    const result = withEngine({ power: { hp: 20 }, efficiency: 0.8, speed: '4 mph' });
    expect(limit(result, 'engine-power')).toBeCloseTo(1335, 6);
    expect(result.governs).toBe('engine-power');
    // 3.6 · 14.914 · 0.8 / 6.437376 km/h = 6.6723 kN = 1500 lbf: 1 hp = 0.7457 kW (from memory)
    const metric = withEngine({ power: { kW: 14.914 }, efficiency: 0.8, speed: '4 mph' });
    expect(limit(metric, 'engine-power')).toBeCloseTo(1335, 1);
  });

  it('lifts the tractor itself up the slope too', () => {
    // 1500 − 0.05 · 3300 cos 10° − 3300 sin 10° = 1500 − 162.493 − 573.039
    const result = withEngine({ power: { hp: 20 }, efficiency: 0.8, speed: '4 mph' }, { slope: '10 deg' });
    expect(limit(result, 'engine-power')).toBeCloseTo(764.468, 2);
  });

  it('is drawbar power where D497 says so: rolling is off already', () => {
    // from memory: two-wheel drive on tilled soil 0.67; 375 · 20 · 0.67 / 4 = 1256.25
    const toDrawbar = { tractor: 'two-wheel-drive', surface: 'tilled-soil' } as const;
    const result = withEngine({ power: { hp: 20 }, toDrawbar, speed: '4 mph' });
    expect(limit(result, 'engine-power')).toBeCloseTo(1256.25, 6);
    expect(codes(result.assumptions)).toContain('PTO_POWER_AT_BEST_SLIP');
  });

  it('is never power over a speed below 2 km/h', () => {
    const slow =
      (speed: Engine['speed'], more: Engine = {}) =>
      () =>
        withEngine({ power: { hp: 20 }, efficiency: 0.8, ...(speed && { speed }), ...more }, { units: 'us' });
    expect(limit(slow('2 km/h')(), 'engine-power')).toBeCloseTo((375 * 20 * 0.8) / 1.2427424 - 165, 3);
    expect(limit(slow({ value: 2 / 3.6, unit: 'm/s' })(), 'engine-power')).toBeGreaterThan(0);
    expect(issueOf(slow('1.999 km/h'))).toMatchObject({ code: 'MISSING_FIELD', path: 'engine.thrustLimit' });
    const limited = slow('0.5 mph', { thrustLimit: '1000 lbf' })();
    expect(limited.limits.map((each) => each.limit)).toEqual(['traction', 'thrust-limit', 'front-lift']);
    expect(limited.pull?.value).toBeCloseTo(835, 6);
    expect(codes(limited.assumptions)).toContain('TOO_SLOW_FOR_POWER');
    expect(issueOf(slow('0 km/h')).code).toBe('NOT_POSITIVE');
    expect(issueOf(slow(undefined))).toMatchObject({ code: 'MISSING_FIELD', path: 'engine.speed' });
  });

  it('is not checked, and says so, where nothing is given', () => {
    expect(codes(availablePull(strong).assumptions)).toContain('ENGINE_NOT_CHECKED');
    const given = withEngine({ thrustLimit: '9000 lbf' });
    expect(codes(given.assumptions)).not.toContain('ENGINE_NOT_CHECKED');
    expect(given.governs).toBe('traction');
  });

  it.each([
    [{}, 'MISSING_FIELD', 'engine.power'],
    [{ power: {} }, 'MISSING_FIELD', 'engine.power'],
    [{ power: { hp: 20, kW: 15 } }, 'CONFLICTING_FIELDS', 'engine.power'],
    [{ power: { hp: 0 } }, 'NOT_POSITIVE', 'engine.power.hp'],
    [{ power: { hp: 20 }, speed: '4 mph' }, 'MISSING_FIELD', 'engine'],
    [{ power: { hp: 20 }, speed: '4 mph', efficiency: 80 }, 'TOO_LARGE', 'engine.efficiency'],
    [{ power: { hp: 20 }, speed: '4 mph', efficiency: 0 }, 'NOT_POSITIVE', 'engine.efficiency'],
    [
      { power: { hp: 20 }, speed: '4 mph', toDrawbar: { tractor: 'mule', surface: 'concrete' } },
      'NO_VALUE_IN_TABLE',
      'engine.toDrawbar.tractor',
    ],
    [
      { power: { hp: 20 }, speed: '4 mph', toDrawbar: { tractor: 'tracks', surface: 'ice' } },
      'NO_VALUE_IN_TABLE',
      'engine.toDrawbar.surface',
    ],
  ])('refuses %j', (engine, code, path) => {
    expect(issueOf(() => withEngine(engine as Engine))).toMatchObject({ code, path });
  });
});

describe('an axle that lifts', () => {
  it('governs at a high hitch on ground that grips, and says that it is no pull to use', () => {
    // P_lift = 3300 · 22.4 / 34 = 2174 lb
    const high = availablePull({
      ...base,
      hitch: { kind: 'top-link', height: '34 in' },
      traction: { coefficient: 0.8, kind: 'net' },
    });
    expect(high.governs).toBe('front-lift');
    expect(high.pull?.value).toBeCloseTo((3300 * 22.4) / 34, 6);
    expect(high.frontReaction.value).toBeCloseTo(0, 9);
    expect(codes(high.cautions)).toContain('LIFT_GOVERNS');
    // past it the rear axle carries all of the weight, not more
    expect(limit(high, 'traction')).toBeCloseTo(0.8 * 3300, 6);
  });

  it('is no pull it could give: at the drawbar the wheels spin long before', () => {
    // P_lift = 3300 · 22.4 / 15 = 4928 lb, more than the tractor weighs
    const low = availablePull(base);
    expect(limit(low, 'front-lift')).toBeCloseTo(4928, 6);
    expect(low.governs).toBe('traction');
    expect(codes(low.cautions)).not.toContain('LIFT_GOVERNS');
  });

  it('is the rear one in reverse, where the pull takes the grip away', () => {
    const hitch = { kind: 'front-hitch', height: '15 in', aheadOfFrontAxle: '20 in' } as const;
    const result = availablePull({ ...base, hitch, rolling: { coefficient: 0 } });
    expect(result.limits.map((each) => each.limit)).toEqual(['traction', 'rear-lift']);
    expect(limit(result, 'rear-lift')).toBeCloseTo((3300 * 41.6) / 15, 6);
    const shared = { kind: 'front-hitch', height: '15 in' } as const;
    expect(pounds({ ...base, hitch: shared, rolling: { coefficient: 0 } })).toBeCloseTo(result.pull?.value ?? 0, 9);
    // nose down, in reverse, it climbs: all driven, W (0.55 cos 10° − sin 10°)
    const climbing = { ...base, hitch, slope: '-10 deg', tractor: { ...tractor, drive: 'all-wheels' } } as const;
    expect(pounds(climbing)).toBeCloseTo(3300 * (0.55 * Math.cos(radians(10)) - Math.sin(radians(10))), 6);
  });

  it('is the one at the hitch where the chain leads up steeply', () => {
    const up = {
      chainAngle: { belowTractorLine: '-60 deg' },
      hitch: { kind: 'drawbar', height: '15 in', behindAxle: '20 in' },
    } as const;
    const result = availablePull({ ...base, ...up, tractor: { ...tractor, drive: 'all-wheels' } });
    expect(result.limits.map((each) => each.limit)).toEqual(['traction', 'front-lift', 'rear-lift']);
    expect(limit(result, 'front-lift')).toBeUndefined(); // the chain presses it down
  });

  it('never ends a pull that presses the tractor down: refused, not infinite', () => {
    // hitch well ahead of the rear axle, chain 80 deg down: h cos β + c sin β < 0, and cos β < 0.55 sin β
    const down = {
      chainAngle: { belowTractorLine: '80 deg' },
      hitch: { kind: 'frame', height: '15 in', behindAxle: '-20 in' },
    } as const;
    const all = { ...tractor, drive: 'all-wheels' } as const;
    expect(issueOf(() => availablePull({ ...base, ...down, tractor: all }))).toMatchObject({
      code: 'IMPOSSIBLE_GEOMETRY',
      path: 'chainAngle',
    });
  });
});

describe('a tractor that does not stand or move', () => {
  it('tips rearward by itself past atan(x/z)', () => {
    // atan(22.4 / 28) = 38.66 deg
    const at = (degrees: number) => availablePull({ ...base, slope: { value: degrees, unit: 'deg' } });
    expect(at(38.65).outcome).toBe('cannot-move-itself');
    const tipped = at(38.67);
    expect(tipped).toMatchObject({ outcome: 'tips-rearward', pull: null, governs: null, limits: [] });
    expect(tipped.frontReaction.value).toBeLessThan(0);
  });

  it('tips with its center of gravity beyond an axle', () => {
    const { frontAxleMass: _, ...unknown } = tractor;
    const at = (inches: number) =>
      availablePull({ ...base, tractor: { ...unknown, centerOfGravityAhead: { value: inches, unit: 'in' } } }).outcome;
    expect([at(-0.1), at(0), at(0.1)]).toEqual(['tips-rearward', 'tips-rearward', 'pulls']);
    expect([at(64.1), at(64)]).toEqual(['tips-forward', 'tips-forward']);
    expect(at(63.9)).toBe('cannot-move-itself'); // nothing on the driven axle
  });

  it('cannot move itself where slope and rolling take all it has', () => {
    // all driven: 0.55 − tan α > 0 up to 28.81 deg
    const all = { ...base, tractor: { ...tractor, drive: 'all-wheels' } } as const;
    expect(availablePull({ ...all, slope: '28.8 deg' }).outcome).toBe('pulls');
    expect(availablePull({ ...all, slope: '28.82 deg' })).toMatchObject({
      outcome: 'cannot-move-itself',
      pull: null,
      governs: null,
    });
  });
});

describe('the chain', () => {
  const hitch = { kind: 'drawbar', height: '18 in', behindAxle: '9 in' } as const;

  it('is along the ground where no angle is given, and the working says so', () => {
    expect(codes(availablePull(base).assumptions)).toEqual([
      'LEVEL_GROUND',
      'CHAIN_ALONG_GROUND',
      'ENGINE_NOT_CHECKED',
    ]);
    const level = { ...base, hitch, chainAngle: { belowTractorLine: '0 deg' } } as const;
    expect(codes(availablePull(level).assumptions)).not.toContain('CHAIN_ALONG_GROUND');
  });

  it('has its angle from the line of the tractor or from the horizontal', () => {
    // nose up 10 deg: the line of the tractor goes down rearward by 10 deg
    const up = { ...base, hitch, slope: '10 deg' } as const;
    const line = pounds({ ...up, chainAngle: { belowTractorLine: '5 deg' } });
    expect(pounds({ ...up, chainAngle: { belowHorizontal: '15 deg' } })).toBeCloseTo(line, 8);
    // in reverse the chain leads the other way: the line goes up by 10 deg
    const reverse = { ...up, hitch: { kind: 'front-hitch', height: '18 in', aheadOfFrontAxle: '9 in' } } as const;
    const same = pounds({ ...reverse, chainAngle: { belowTractorLine: '5 deg' } });
    expect(pounds({ ...reverse, chainAngle: { belowHorizontal: '-5 deg' } })).toBeCloseTo(same, 8);
  });

  it.each([
    [{ hitch: undefined }, 'MISSING_FIELD', 'hitch'],
    [{ hitch: { kind: 'drawbar', height: '0 in' } }, 'NOT_POSITIVE', 'hitch.height'],
    [{ hitch: { height: '15 in' } }, 'MISSING_FIELD', 'hitch.kind'],
    [{ chainAngle: { belowTractorLine: '5 deg' } }, 'MISSING_FIELD', 'hitch.behindAxle'],
    [{ hitch: { ...hitch, aheadOfFrontAxle: '9 in' } }, 'CONFLICTING_FIELDS', 'hitch.aheadOfFrontAxle'],
    [{ chainAngle: {} }, 'MISSING_FIELD', 'chainAngle.belowTractorLine'],
    [{ hitch, chainAngle: { belowTractorLine: '90 deg' } }, 'IMPOSSIBLE_GEOMETRY', 'chainAngle.belowTractorLine'],
    [{ hitch, slope: '-20 deg', chainAngle: { belowHorizontal: '75 deg' } }, 'IMPOSSIBLE_GEOMETRY', 'chainAngle'],
    [
      { tractor: { ...tractor, centerOfGravityHeight: undefined }, slope: '5 deg' },
      'MISSING_FIELD',
      'tractor.centerOfGravityHeight',
    ],
    [{ traction: {} }, 'MISSING_FIELD', 'traction'],
    [{ traction: { coefficient: 0.5, surface: 'ice' } }, 'CONFLICTING_FIELDS', 'traction'],
    [{ traction: { coefficient: 0.5 } }, 'MISSING_FIELD', 'traction.kind'],
    [{ traction: { coefficient: 55, kind: 'net' } }, 'TOO_LARGE', 'traction.coefficient'],
    [{ traction: { surface: 'moon' } }, 'NO_VALUE_IN_TABLE', 'traction.surface'],
    [{ hitch: { kind: 'drawbar', height: '40 cm' } }, 'UNITS_REQUIRED', 'units'],
  ])('refuses %j', (change, code, path) => {
    expect(issueOf(() => availablePull({ ...base, ...change } as AvailablePullInput))).toMatchObject({ code, path });
  });

  it('leaves the rating of the rigging to the rigging', () => {
    expect(codes(availablePull(base).cautions)).toEqual(['RIGGING_NOT_COUNTED', 'STEADY_PULL', 'STAND_CLEAR']);
  });
});

it('answers without the steps as with them', () => {
  const { steps, ...rest } = availablePull(base);
  const { steps: none, ...bulk } = availablePull({ ...base, working: false });
  expect(bulk).toEqual(rest);
  expect([steps.length > 0, none.length]).toEqual([true, 0]);
});
