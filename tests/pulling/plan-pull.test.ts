import { describe, expect, it } from 'vitest';
import { availablePull, type PullPlan, planPull, shockTension, us49cfr393_108_2024 } from '../../src/index.js';
import { issueOf } from '../quantities/issue-of.js';

/** Dossier tractor: W 3300 lb, x = 22.4 in, L = 64 in, on the drawbar; net μ 0.55 gives 1306 lb behind rear wheels. */
const plan: PullPlan = {
  ratings: us49cfr393_108_2024,
  tractor: { mass: '3300 lb', frontAxleMass: '1155 lb', wheelbase: '64 in', drive: 'rear-wheels' },
  hitch: { kind: 'drawbar', height: '15 in' },
  traction: { coefficient: 0.55, kind: 'net' },
  rolling: { coefficient: 0.05 },
  load: { kind: 'rolling', mass: '4000 lb', rolling: { coefficient: 0.15 } },
  rigging: [
    { id: 'chain', kind: 'chain', size: '1/4', grade: 70 },
    { id: 'hook', kind: 'grab-hook', size: '1/4', grade: 70 },
  ],
  chain: { pitch: '0.88 in', length: '20 ft' },
  ends: [{ at: 'hook' }, { at: 'hook' }],
  standoff: '18 ft',
  takeUp: 'slow',
};
const verdicts = (result: ReturnType<typeof planPull>) =>
  Object.fromEntries(result.checks.map(({ id, verdict }) => [id, verdict]));

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
      rigging: 'pass',
      'chain-length': 'pass',
      'take-up/working-load-limit': 'pass',
    });
  });

  it('recommends the lightest chain of the table that will do', () => {
    // 1/4 grade 30 (1300 lb) has 600 lb too, and its wire is the thinnest that the table lists beside the other 1/4 in
    expect(result.recommended).toMatchObject({ size: '1/4', workingLoadLimit: { value: expect.any(Number) } });
    expect(result.recommended!.workingLoadLimit.value).toBeGreaterThanOrEqual(600);
    const needs3000 = planPull({ ...plan, load: { ...plan.load, mass: '20000 lb' } as never });
    // 3000 lbf needed, but no more than 1306 lbf can be given: 1/4 in still does
    expect(needs3000.requiredLimit!.value).toBeCloseTo(1306, 0);
    expect(needs3000.recommended).toMatchObject({ size: '1/4' });
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
    const rigging = (markedWll: string) => [{ id: 'sling', kind: 'shackle', markedWll } as never];
    expect(verdicts(planPull({ ...plan, rigging: rigging('600 lb') })).rigging).toBe('pass');
    expect(verdicts(planPull({ ...plan, rigging: rigging('599.9 lb') })).rigging).toBe('fail');
  });

  it('an unmarked part leaves it open, unless another is too weak anyway', () => {
    const shackle = { id: 'shackle', kind: 'shackle' } as const;
    const open = planPull({ ...plan, rigging: [...plan.rigging!, shackle] });
    expect(verdicts(open).rigging).toBe('undetermined');
    expect(open.riggingLimit).toBe(null);
    const weak = { id: 'link', kind: 'connecting-link', markedWll: '500 lb' } as const;
    expect(verdicts(planPull({ ...plan, rigging: [weak, shackle] })).rigging).toBe('fail');
    expect(verdicts(planPull({ ...plan, rigging: undefined as never })).rigging).toBe('undetermined');
  });

  it('the hitch: the top link fails whatever the forces say', () => {
    const result = planPull({ ...plan, hitch: { kind: 'top-link', height: '34 in' } });
    expect(result.verdict).toBe('fail');
    expect(verdicts(result)['hitch-point']).toBe('fail');
  });

  it('the length: as long as needed passes, a link less fails', () => {
    // two hooks and a gap of 18 ft need 18 ft
    expect(verdicts(planPull({ ...plan, chain: { pitch: '0.88 in', length: '18 ft' } }))['chain-length']).toBe('pass');
    expect(verdicts(planPull({ ...plan, chain: { pitch: '0.88 in', length: '17.9 ft' } }))['chain-length']).toBe(
      'fail',
    );
    expect(verdicts(planPull({ ...plan, chain: { pitch: '0.88 in' } }))['chain-length']).toBe('not-applicable');
  });

  it('the danger zone reaches as far as the longest line: what is needed, or a longer chain that is there', () => {
    const radius = (length: `${number} ft`, more = {}) =>
      planPull({ ...plan, chain: { pitch: '0.88 in', length }, ...more }).dangerRadius;
    // 18 ft are 246 links of 0.88 in, 18.04 ft
    expect(radius('18 ft').value).toBeCloseTo(18.04, 6);
    expect(radius('18.04 ft').value).toBeCloseTo(18.04, 6);
    expect(radius('18.05 ft').value).toBe(18.05);
    expect(radius('20 ft', { dangerMargin: 1.5 })).toMatchObject({ value: 30, unit: 'ft' });
  });

  it('slack: taken up with all the pull it breaks what a steady pull does not', () => {
    // common practice: several feet of slack at speed break a farm chain that a steady pull does not
    const result = planPull({
      ...plan,
      takeUp: { slack: '3 ft' },
      load: { kind: 'mired', depth: 'wheel', mass: '1200 lb' },
    });
    expect(verdicts(result)['available-pull']).toBe('pass');
    expect(verdicts(result).rigging).toBe('pass');
    expect(verdicts(result)['take-up/working-load-limit']).toBe('fail');
    expect(result.verdict).toBe('fail');
  });

  it('a load that runs down by itself', () => {
    const load = { kind: 'rolling', mass: '4000 lb', rolling: { coefficient: 0.02 }, slope: '-10 deg' } as const;
    const result = planPull({ ...plan, load });
    expect(result.verdict).toBe('fail');
    expect(result.pull).toBe(null);
    expect(verdicts(result)).toMatchObject({ 'available-pull': 'fail', rigging: 'not-applicable' });
  });

  it('a tractor that cannot even move itself', () => {
    const tractor = { ...plan.tractor, centerOfGravityHeight: '28 in' } as const;
    const result = planPull({ ...plan, tractor, slope: '35 deg' });
    expect(result.available.outcome).not.toBe('pulls');
    expect(result.verdict).toBe('fail');
    expect(result.pull).toBe(null);
  });
});

describe('take-up', () => {
  const strong = { ...plan, rigging: [{ id: 'chain', kind: 'chain', size: '3/8', grade: 70 }] } as PullPlan;

  it('permits the slack at which the tractor reaches the greatest speed, and not an inch more', () => {
    const result = planPull({
      ...strong,
      takeUp: { slack: '1 in' },
      load: { kind: 'nosed-in-ditch', mass: '1200 lb' },
    });
    const { value, unit } = result.permittedSlack!;
    expect(unit).toBe('ft');
    expect(value).toBeGreaterThan(0);
    const peakAt = (slack: number) =>
      shockTension({
        towingMass: '3300 lb',
        load: 'anchored',
        takeUp: { slack: { value: slack, unit: 'ft' } },
        thrust: result.available.pull!,
        chain: { wireDiameter: '10 mm', length: '20 ft' },
        workingLoadLimit: '6600 lb',
        units: 'us',
      });
    expect(peakAt(value * 0.999).verdict).toBe('pass');
    expect(peakAt(value * 1.001).verdict).toBe('fail');
  });

  it('permits none where the thrust at once is already too much', () => {
    // 2 · 1306 lbf on a limit of 2000 lb
    const rigging = [
      { id: 'chain', kind: 'chain', size: '1/4', grade: 70 },
      { id: 'link', kind: 'connecting-link', markedWll: '2000 lb' },
    ] as const;
    const result = planPull({
      ...plan,
      rigging,
      takeUp: { slack: '1 in' },
      load: { kind: 'mired', depth: 'wheel', mass: '1200 lb' },
    });
    expect(result.greatestTakeUpSpeed).toBe(null);
    expect(result.permittedSlack).toMatchObject({ value: 0 });
  });

  it('raised slowly the chain sees the pull and no more', () => {
    const { snatch, pull } = planPull(plan);
    expect(snatch!.mostPeakTension.value).toBeCloseTo(pull!.value, 9);
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

  it('warns where the tractor could overload the rigging when the load does not move', () => {
    const codes = (result: ReturnType<typeof planPull>) => result.cautions.map(({ code }) => code);
    const rigging = [{ id: 'link', kind: 'connecting-link', markedWll: '1000 lb' }] as const;
    const chain = { ...plan.chain, wireDiameter: '7 mm' } as const;
    expect(codes(planPull({ ...plan, rigging, chain }))).toContain('TRACTOR_CAN_OVERLOAD_RIGGING');
    expect(codes(planPull(plan))).not.toContain('TRACTOR_CAN_OVERLOAD_RIGGING');
  });

  it('divides over a bridle: 60 deg between the legs, 1 / (2 · cos 30 deg) = 0.577 of the pull on each', () => {
    const { requiredOfLegs } = planPull({ ...plan, bridle: { included: '60 deg' } });
    expect(requiredOfLegs!.map(({ value }) => value)).toEqual([expect.closeTo(346.41, 2), expect.closeTo(346.41, 2)]);
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
    [{ chain: undefined }, 'chain'],
    [{ chain: {} }, 'chain.pitch'],
    [{ takeUp: undefined }, 'takeUp'],
    [{ takeUp: {} }, 'takeUp'],
    [{ rigging: [] }, 'rigging'],
    [{ ends: [] }, 'ends'],
    [{ ratings: {} }, 'ratings'],
  ])('%j', (fault, path) => {
    expect(issueOf(() => planPull({ ...plan, ...fault } as never)).path).toBe(path);
  });
});
