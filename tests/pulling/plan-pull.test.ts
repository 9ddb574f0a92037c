import { describe, expect, it } from 'vitest';
import { availablePull, type PullPlan, planPull, us49cfr393_108_2024 } from '../../src/index.js';
import { issueOf } from '../quantities/issue-of.js';

/** Dossier tractor: W 3300 lb, x = 22.4 in, L = 64 in, on the drawbar; net μ 0.55 gives 1306 lb behind rear wheels. */
const drawbar = { id: 'drawbar', kind: 'anchor', at: 'vehicle', markedWll: '12000 lb' } as const;
const towHook = { id: 'tow hook', kind: 'anchor', at: 'cargo', markedWll: '12000 lb' } as const;
const chainOf = (size: string, grade: number) => ({ id: 'chain', kind: 'chain', size, grade }) as never;
const lineOf = (...parts: readonly unknown[]) => [drawbar, ...parts, towHook] as NonNullable<PullPlan['rigging']>;

const plan: PullPlan = {
  ratings: us49cfr393_108_2024,
  tractor: {
    mass: '3300 lb',
    frontAxleMass: '1155 lb',
    wheelbase: '64 in',
    centerOfGravityHeight: '28 in',
    drive: 'rear-wheels',
  },
  hitch: { kind: 'drawbar', height: '15 in' },
  traction: { coefficient: 0.55, kind: 'net' },
  rolling: { coefficient: 0.05 },
  load: { kind: 'rolling', mass: '4000 lb', rolling: { coefficient: 0.15 } },
  rigging: lineOf(chainOf('1/4', 70), { id: 'hook', kind: 'grab-hook', size: '1/4', grade: 70 }),
  chain: { pitch: '0.88 in', length: '20 ft' },
  ends: [{ at: 'hook' }, { at: 'hook' }],
  standoff: '18 ft',
  steeringReserve: 0.2,
  takeUp: 'slow',
};
const stuck = { kind: 'nosed-in-ditch', mass: '1200 lb' } as const;
const verdicts = (result: ReturnType<typeof planPull>) =>
  Object.fromEntries(result.checks.map(({ id, verdict }) => [id, verdict]));
const missing = (result: ReturnType<typeof planPull>, id: string) => {
  const check = result.checks.find((each) => each.id === id);
  return check !== undefined && 'missing' in check ? check.missing.map(({ code }) => code) : [];
};

describe('a pull that goes', () => {
  // needed 0.15 · 4000 = 600 lbf, less than the 1306 lbf that the tractor can give; 600 lb on a limit of 3150 lb
  const result = planPull(plan);

  it('loads the chain with what is needed', () => {
    expect(result.verdict).toBe('pass');
    expect(result.pull).toMatchObject({ value: 600, unit: 'lbf' });
    expect(result.requiredLimit).toMatchObject({ value: 600, unit: 'lb' });
    expect(result.riggingLimit).toMatchObject({ value: 3150, unit: 'lb' });
    expect(result.weakest).toEqual(['chain', 'hook']);
  });

  it('checks each thing by itself', () => {
    expect(verdicts(result)).toEqual({
      'available-pull': 'pass',
      'hitch-point': 'pass',
      'axle-lift': 'pass',
      'steering-reserve': 'pass',
      rigging: 'pass',
      'rigging-against-tractor': 'pass',
      'chain-length': 'pass',
    });
  });

  it('recommends the lightest chain of the table that will do', () => {
    // every 1/4 in chain of the table has 600 lb; the thinnest wires among them are those of grade 70 and 30 and 43, all
    // alike in weight but the stronger is preferred: grade 70 with 3150 lb (wire 7.0 mm, as 30 and 43)
    expect(result.recommended).toMatchObject({ size: '1/4', grade: 70, workingLoadLimit: { value: 3150 } });
  });

  it('says at the top what its parts warn of, each thing once', () => {
    const codes = result.cautions.map(({ code }) => code);
    expect(codes).toEqual([...new Set(codes)]);
    expect(codes).toEqual(
      expect.arrayContaining(['CHAIN_NOT_MADE_FOR_RECOVERY', 'TAKE_UP_AT_A_CRAWL', 'JERK_ADDS_TO_PULL']),
    );
  });
});

describe('what stops a pull', () => {
  it('the tractor: needed is more than it can give, and the chain sees what it can give', () => {
    const result = planPull({ ...plan, load: { kind: 'mired', depth: 'fender', mass: '3300 lb' } });
    expect(result.verdict).toBe('fail');
    expect(result.governing).toBe('available-pull');
    expect(result.resistance.pull).toMatchObject({ value: 6600 });
    expect(result.pull!.value).toBeCloseTo(1306, 0);
  });

  it('the chain: at its limit it passes, just above it fails', () => {
    const rigging = (markedWll: string) => lineOf({ id: 'shackle', kind: 'shackle', markedWll });
    expect(verdicts(planPull({ ...plan, rigging: rigging('600 lb') })).rigging).toBe('pass');
    expect(verdicts(planPull({ ...plan, rigging: rigging('599.9 lb') })).rigging).toBe('fail');
  });

  it('an unmarked part leaves it open, unless another is too weak anyway', () => {
    const shackle = { id: 'shackle', kind: 'shackle' } as const;
    const open = planPull({ ...plan, rigging: [...plan.rigging!, shackle] });
    expect(verdicts(open).rigging).toBe('undetermined');
    expect(open.riggingLimit).toBe(null);
    const weak = { id: 'link', kind: 'connecting-link', markedWll: '500 lb' } as const;
    expect(verdicts(planPull({ ...plan, rigging: lineOf(weak, shackle) })).rigging).toBe('fail');
    expect(missing(planPull({ ...plan, rigging: undefined as never }), 'rigging')).toEqual(['RIGGING_UNKNOWN']);
  });

  it('the points at both ends: one that is not listed is a missing fact', () => {
    const without = (id: string) => planPull({ ...plan, rigging: plan.rigging!.filter((part) => part.id !== id) });
    expect(missing(without('drawbar'), 'rigging')).toEqual(['HITCH_POINT_NOT_LISTED']);
    expect(missing(without('tow hook'), 'rigging')).toEqual(['LOAD_POINT_NOT_LISTED']);
    const round = { at: 'choker', diameter: '12 in', tail: '18 in' } as const;
    const wrapped = (...ends: PullPlan['ends']) =>
      planPull({ ...plan, rigging: plan.rigging!.filter((part) => part.id !== 'tow hook'), ends, standoff: '12 ft' });
    // the end at the load is the last
    expect(missing(wrapped(round, { at: 'hook' }), 'rigging')).toEqual(['LOAD_POINT_NOT_LISTED']);
    const choked = planPull({
      ...plan,
      rigging: plan.rigging!.filter((part) => part.id !== 'tow hook'),
      ends: [{ at: 'hook' }, round],
      standoff: '12 ft',
    });
    expect(verdicts(choked).rigging).toBe('pass');
  });

  it('the hitch: the top link fails whatever the forces say', () => {
    const result = planPull({ ...plan, hitch: { kind: 'top-link', height: '34 in' } });
    expect(result.verdict).toBe('fail');
    expect(verdicts(result)['hitch-point']).toBe('fail');
  });

  it('a reserve for steering that nobody states leaves it open; one that is not kept fails', () => {
    const { steeringReserve: _, ...unsaid } = plan;
    expect(missing(planPull(unsaid), 'steering-reserve')).toEqual(['STEERING_RESERVE_UNKNOWN']);
    // R_f = 1155 − 600 · 15 / 64 = 1014 lbf, 0.307 of 3300 lb
    expect(verdicts(planPull({ ...plan, steeringReserve: 0.307 }))['steering-reserve']).toBe('pass');
    expect(verdicts(planPull({ ...plan, steeringReserve: 0.308 }))['steering-reserve']).toBe('fail');
  });

  it('the length: as long as needed passes, a link less fails', () => {
    // two hooks and a gap of 18 ft need 18 ft
    expect(verdicts(planPull({ ...plan, chain: { pitch: '0.88 in', length: '18 ft' } }))['chain-length']).toBe('pass');
    expect(verdicts(planPull({ ...plan, chain: { pitch: '0.88 in', length: '17.9 ft' } }))['chain-length']).toBe(
      'fail',
    );
    expect(verdicts(planPull({ ...plan, chain: { pitch: '0.88 in' } }))['chain-length']).toBe('not-applicable');
  });

  it('a load that runs down by itself, and one that may', () => {
    const rolls = (coefficient: number, slope: '-10 deg' | '-2 percent-grade') =>
      planPull({ ...plan, slope, load: { kind: 'rolling', mass: '4000 lb', rolling: { coefficient } } });
    const runs = rolls(0.02, '-10 deg');
    expect(runs.verdict).toBe('fail');
    expect(runs.pull).toBe(null);
    expect(verdicts(runs)).toMatchObject({ 'available-pull': 'fail', rigging: 'not-applicable' });
    // concrete or asphalt: 30 to 45 lb per ton, 0.015 to 0.0225, on 2 percent down
    const may = planPull({
      ...plan,
      slope: '-2 percent-grade',
      load: { kind: 'rolling', mass: '4000 lb', rolling: { surface: 'concrete-or-asphalt' } },
    });
    expect(may.resistance.push!.value).toBeGreaterThan(0);
    expect(missing(may, 'available-pull')).toEqual(['LOAD_MAY_RUN_BY_ITSELF']);
    expect(may.verdict).not.toBe('pass');
  });

  it('a tractor that cannot even move itself', () => {
    const result = planPull({ ...plan, slope: '35 deg' });
    expect(result.available.outcome).not.toBe('pulls');
    expect(result.verdict).toBe('fail');
    expect(result.pull).toBe(null);
  });

  it('one end of a log on the hitch lifts the front', () => {
    // R_f = 900 − 875 · 15 / 64 − 1750 · 30 / 64 = −125 lbf: it lifts at (900 · 64 − 1750 · 30) / 15 = 340 of the 875 lbf
    const result = planPull({
      ...plan,
      tractor: { mass: '3300 lb', frontAxleMass: '900 lb', wheelbase: '64 in', drive: 'rear-wheels' },
      hitch: { kind: 'drawbar', height: '15 in', behindAxle: '30 in' },
      traction: { coefficient: 0.9, kind: 'net' },
      load: { kind: 'log', lift: 'one-end', mass: '3500 lb', friction: { coefficient: 0.5 } },
    });
    expect(result.available.governs).toBe('front-lift');
    expect(verdicts(result)).toMatchObject({ 'available-pull': 'fail', 'steering-reserve': 'fail' });
  });
});

describe('beyond the line', () => {
  // 3000 lbf at the load; 2 sheaves, MA 4: fall line (3000 + 0.1 · 2 · 3000) / 4 = 900 lbf
  const tackled = {
    ...plan,
    load: {
      kind: 'mired',
      depth: 'wheel',
      mass: '3000 lb',
      tackle: { sheaves: 2, mechanicalAdvantage: 4 },
    },
  } as PullPlan;

  it('a tackle: the line sees the fall line, the parts at the load the whole resistance', () => {
    const result = planPull({
      ...tackled,
      atLoad: [{ ...towHook, id: 'block', markedWll: '2999 lb' }] as never,
    });
    expect(result.requiredLimit!.value).toBeCloseTo(900, 9);
    expect(result.requiredAtLoad!.value).toBeCloseTo(3000, 9);
    expect(verdicts(result)).toMatchObject({ rigging: 'pass', 'at-load': 'fail' });
    expect(missing(planPull(tackled), 'at-load')).toEqual(['LOAD_SIDE_UNKNOWN']);
  });

  it('a bridle: each leg carries its share, 60 deg between them 1 / (2 · cos 30 deg) = 0.577 of the pull', () => {
    const legs = (markedWll?: string) =>
      planPull({
        ...plan,
        bridle: {
          angles: { included: '60 deg' },
          ...(markedWll && { parts: [{ id: 'leg', kind: 'shackle', markedWll }, towHook] as never }),
        },
      });
    expect(legs().requiredOfLegs!.map(({ value }) => value)).toEqual([
      expect.closeTo(346.41, 2),
      expect.closeTo(346.41, 2),
    ]);
    expect(missing(legs(), 'bridle')).toEqual(['BRIDLE_PARTS_UNKNOWN']);
    expect(verdicts(legs('347 lb')).bridle).toBe('pass');
    expect(verdicts(legs('346 lb')).bridle).toBe('fail');
    const bare = { angles: { included: '60 deg' }, parts: [{ id: 'leg', kind: 'shackle', markedWll: '9 t' }] } as const;
    expect(missing(planPull({ ...plan, bridle: bare }), 'bridle')).toEqual(['LOAD_POINT_NOT_LISTED']);
  });
});

describe('take-up', () => {
  const strong: PullPlan = { ...plan, rigging: lineOf(chainOf('3/8', 70)), load: stuck };
  /** The greatest grip gathers speed: the pull at the height of the center of gravity over the mass. */
  const peakAt = (inches: number) => planPull({ ...strong, takeUp: { slack: { value: inches, unit: 'in' } } });

  it('permits the slack at which the tractor reaches the greatest speed, and not a hair more', () => {
    const { value, unit } = planPull(strong).permittedSlack!;
    expect(unit).toBe('in');
    expect(value).toBeGreaterThan(0);
    expect(verdicts(peakAt(value * 0.999))['take-up/working-load-limit']).toBe('pass');
    expect(verdicts(peakAt(value * 1.001))['take-up/working-load-limit']).toBe('fail');
  });

  it('gathers speed as hard as the tractor could pull at the height of its own center of gravity', () => {
    // rear wheels, level: P = W · (net · (1 − φ) − f · φ) / (1 − (net + f) · z / L), φ = 0.35, z / L = 28 / 64
    const pounds = (3300 * (0.55 * 0.65 - 0.05 * 0.35)) / (1 - 0.6 * (28 / 64));
    const { inputs } = peakAt(1).snatch!;
    const { acceleration } = (inputs as { takeUp: { acceleration: { value: number } } }).takeUp;
    expect(acceleration.value).toBeCloseTo((pounds / 3300) * 9.80665, 6);
  });

  it('several feet of slack break what a steady pull does not (common practice)', () => {
    const result = planPull({ ...strong, takeUp: { slack: '3 ft' } });
    expect(verdicts(result)).toMatchObject({
      'available-pull': 'pass',
      rigging: 'pass',
      'take-up/working-load-limit': 'fail',
    });
    expect(result.verdict).toBe('fail');
  });

  it('a peak that lifts the front fails too', () => {
    // the front lifts at 3300 · 22.4 / 15 = 4928 lbf; the chain alone would bear 6600 lb
    const result = planPull({ ...strong, takeUp: { speed: '0.7 mph' } });
    expect(result.snatch!.peakTension.value).toBeGreaterThan(4928);
    expect(verdicts(result)).toMatchObject({ 'axle-lift': 'pass', 'take-up/axle-lift': 'fail' });
  });

  it('permits none where the thrust at once is already too much', () => {
    // 2 · 1306 lbf on a limit of 2000 lb
    const rigging = lineOf(chainOf('1/4', 70), { id: 'link', kind: 'connecting-link', markedWll: '2000 lb' });
    const result = planPull({ ...plan, rigging, load: stuck });
    expect(result.greatestTakeUpSpeed).toBe(null);
    expect(result.permittedSlack).toMatchObject({ value: 0 });
  });

  it('a chain longer than needed is no softer, and reaches farther', () => {
    const at = (length: '20 ft' | '100 ft') =>
      planPull({ ...strong, takeUp: { speed: '0.8 mph' }, chain: { pitch: '0.88 in', length } });
    expect(at('100 ft').snatch!.peakTension).toEqual(at('20 ft').snatch!.peakTension);
    expect(at('100 ft').dangerRadius.value).toBe(100);
  });

  it('a faster gear makes no safer plan', () => {
    const engine = { power: { hp: 20 }, speed: '7 mph', efficiency: 0.8 } as const;
    const slow = planPull({ ...strong, takeUp: { slack: '0.06 ft' } });
    const fast = planPull({ ...strong, engine, takeUp: { slack: '0.06 ft' } });
    expect(fast.available.governs).toBe('engine-power');
    expect(fast.snatch!.peakTension.value).toBeCloseTo(slow.snatch!.peakTension.value, 6);
    expect(fast.pull).toEqual(slow.pull);
  });

  it('the thickest chain is the stiffest, wherever it stands', () => {
    const peak = (...parts: unknown[]) =>
      planPull({ ...plan, rigging: lineOf(...parts), load: stuck, takeUp: { speed: '0.4 mph' } }).snatch!.peakTension
        .value;
    const [thin, thick] = [chainOf('1/4', 70), { ...(chainOf('1/2', 70) as object), id: 'other' }];
    expect(peak(thin, thick)).toBe(peak(thick, thin));
    expect(peak(thin, thick)).toBeGreaterThan(peak(thin));
  });

  it('a wire told thinner than the table says softens nothing', () => {
    const at = (wireDiameter: '2 mm' | '7 mm') =>
      planPull({ ...plan, load: stuck, takeUp: { speed: '0.4 mph' }, chain: { ...plan.chain, wireDiameter } }).snatch!
        .peakTension;
    expect(at('2 mm')).toEqual(at('7 mm'));
  });

  it('a chain whose wire nobody knows leaves the peak open, and is no error', () => {
    const marked = { id: 'chain', kind: 'chain', size: '3/8', grade: 120, markedWll: '9000 lb' };
    const result = planPull({ ...plan, rigging: lineOf(marked), takeUp: { speed: '0.1 mph' } });
    expect(missing(result, 'take-up/working-load-limit')).toEqual(['WIRE_UNKNOWN']);
    const none = planPull({
      ...plan,
      rigging: lineOf({ id: 's', kind: 'shackle', markedWll: '9000 lb' }),
      takeUp: { speed: '0.1 mph' },
    });
    expect(missing(none, 'take-up/working-load-limit')).toEqual(['WIRE_UNKNOWN']);
  });

  it('recommends a chain that stands its own peak', () => {
    const { rigging: _, ...bare } = strong;
    const chosen = planPull({ ...bare, takeUp: { speed: '0.5 mph' } }).recommended!;
    const own = planPull({
      ...strong,
      rigging: lineOf(chainOf(chosen.size, chosen.grade)),
      takeUp: { speed: '0.5 mph' },
    });
    expect(verdicts(own)['take-up/working-load-limit']).toBe('pass');
    expect(chosen.mass.value).toBeGreaterThan(planPull(bare).recommended!.mass.value);
  });

  it('raised slowly there is no peak to judge', () => {
    expect(planPull(plan).snatch).toBeUndefined();
  });
});

describe('the whole', () => {
  it('agrees with the functions that it is made of', () => {
    const { tractor, hitch, traction, rolling } = plan;
    const alone = availablePull({ tractor, hitch, traction, rolling: rolling! });
    expect(planPull(plan).available.pull!.value).toBeCloseTo(alone.pull!.value, 9);
  });

  it('is the same in both systems of units', () => {
    const us = planPull(plan);
    const si = planPull({ ...plan, units: 'si' });
    expect(si.verdict).toBe(us.verdict);
    expect(si.pull!.unit).toBe('kN');
    expect(si.pull!.value).toBeCloseTo((us.pull!.value * 4.4482216152605) / 1000, 9);
    expect(si.length.value).toBeCloseTo(us.length.value * 0.3048, 9);
  });

  it('one slope is under tractor and load: uphill both resist, backward too', () => {
    const up = planPull({ ...plan, slope: '5 deg' });
    expect(up.resistance.pull!.value).toBeCloseTo(4000 * (0.15 * Math.cos(Math.PI / 36) + Math.sin(Math.PI / 36)), 6);
    expect(up.available.pull!.value).toBeLessThan(planPull(plan).available.pull!.value);
    const front = { kind: 'front-hitch', height: '15 in' } as const;
    const reverse = planPull({ ...plan, hitch: front, slope: '5 deg' });
    expect(reverse.available.pull!.value).toBeLessThan(planPull({ ...plan, hitch: front }).available.pull!.value);
    const load = { ...plan.load, slope: '5 deg' } as PullPlan['load'];
    expect(issueOf(() => planPull({ ...plan, load }))).toMatchObject({ code: 'MISSING_FIELD', path: 'slope' });
  });

  describe('a chain that slopes', () => {
    const steep = {
      ...plan,
      hitch: { ...plan.hitch, behindAxle: '20 in' },
      chainAngle: { belowTractorLine: '60 deg' },
    } as const;

    it('pulls harder than the load resists along the ground: R / cos β, 600 / 0.5', () => {
      expect(planPull(steep).pull!.value).toBeCloseTo(1200, 6);
      expect(planPull(steep).requiredLimit!.value).toBeCloseTo(1200, 6);
    });

    it('takes a log along with its own formula, and one angle for both', () => {
      // dossier I: 1407 lb, μ 0.6, chain 15 deg up: 753 lb
      const log = { kind: 'log', lift: 'none', mass: '1407.4 lb', friction: { coefficient: 0.6 } } as const;
      const result = planPull({ ...steep, chainAngle: { belowTractorLine: '15 deg' }, load: log });
      expect(result.resistance.pull!.value).toBeCloseTo(753, 0);
      expect(result.pull!.value).toBe(result.resistance.pull!.value);
      const twice = { ...log, chainAngle: '15 deg' } as never;
      expect(issueOf(() => planPull({ ...steep, load: twice }))).toMatchObject({
        code: 'CONFLICTING_FIELDS',
        path: 'load.chainAngle',
      });
    });
  });

  it('says whether the rigging bears all that the tractor may give, beside the verdict', () => {
    const check = (markedWll: string) =>
      planPull({ ...plan, rigging: lineOf({ id: 's', kind: 'shackle', markedWll }) });
    // 1306 lbf at most
    expect(verdicts(check('1307 lb'))['rigging-against-tractor']).toBe('pass');
    const weak = check('1300 lb');
    expect(verdicts(weak)['rigging-against-tractor']).toBe('fail');
    expect(weak.verdict).toBe('pass');
  });

  it('warns where the tractor could overload the rigging when the load does not move', () => {
    const codes = (result: ReturnType<typeof planPull>) => result.cautions.map(({ code }) => code);
    const rigging = lineOf({ id: 'link', kind: 'connecting-link', markedWll: '1000 lb' });
    expect(codes(planPull({ ...plan, rigging }))).toContain('TRACTOR_CAN_OVERLOAD_RIGGING');
    expect(codes(planPull(plan))).not.toContain('TRACTOR_CAN_OVERLOAD_RIGGING');
  });

  it('keeps its working out of the answer', () => {
    const bulk = planPull({ ...plan, working: false });
    expect(bulk.steps).toEqual([]);
    expect(bulk.available.steps).toEqual([]);
    expect(bulk.verdict).toBe('pass');
  });

  it('goes on with the pull of the tractor at best where the ground is a range', () => {
    const result = planPull({
      ...plan,
      traction: { surface: 'dry-clay-loam' } as never,
      load: { kind: 'mired', depth: 'wheel', mass: '3300 lb' },
    });
    expect(result.available.atBest!.pull!.value).toBeGreaterThan(result.available.pull!.value);
    expect(result.pull!.value).toBeCloseTo(result.available.atBest!.pull!.value, 9);
  });
});

describe('what is missing or wrong', () => {
  it.each([
    [{ load: undefined }, 'load'],
    [{ load: { kind: 'mired', depth: 'wheel' } }, 'load.mass'],
    [{ load: { kind: 'overturned', mass: '1 t', slope: '1 deg' }, slope: '1 deg' }, 'load.slope'],
    [{ chain: undefined }, 'chain'],
    [{ chain: {} }, 'chain.pitch'],
    [{ takeUp: undefined }, 'takeUp'],
    [{ takeUp: 'quick' }, 'takeUp'],
    [{ takeUp: {} }, 'takeUp'],
    [
      { takeUp: { slack: '1 ft' }, tractor: { ...plan.tractor, centerOfGravityHeight: undefined } },
      'tractor.centerOfGravityHeight',
    ],
    [{ bridle: 'x' }, 'bridle'],
    [{ bridle: { angles: { included: '150 deg' } } }, 'bridle.angles.included'],
    [{ rigging: [] }, 'rigging'],
    [{ ends: [] }, 'ends'],
    [{ ratings: {} }, 'ratings'],
    [{ steeringReserve: 20 }, 'steeringReserve'],
  ])('%j', (fault, path) => {
    expect(issueOf(() => planPull({ ...plan, ...fault } as never)).path).toBe(path);
  });
});
