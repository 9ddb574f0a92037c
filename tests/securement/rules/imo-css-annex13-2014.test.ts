import {
  type Article,
  type CheckSecurementInput,
  checkSecurement,
  imoCssAnnex13_2014 as rules,
  type ShipForces,
  type Surfaces,
  type TieDown,
  tieDownsRequired,
} from 'chain-rigging';
import { ruleSetById } from 'chain-rigging/registry';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../../quantities/issue-of.js';
import { checkOf, codes, missingIn, throughJson } from '../plans.js';
import { at, block, corners, flat, over, ratioIn, upright } from './layouts.js';

// The block weighs 1000 kg · 9.81 m/s² = 9.81 kN, μ 0.3: friction 2.943 kN.
const judge = (
  shipForces: ShipForces | undefined,
  tieDowns: readonly TieDown[],
  article: Partial<Article> = {},
  more: Partial<CheckSecurementInput> = {},
) =>
  checkSecurement({
    rules,
    articles: [block({ friction: 0.3, ...(shipForces && { shipForces }), ...article })],
    tieDowns,
    ...more,
  });
const across: ShipForces = { transverse: '10 kN' };
const along: ShipForces = { longitudinal: '10 kN' };
const sideways = (tieDowns: readonly TieDown[], article: Partial<Article> = {}) =>
  checkOf(judge(across, tieDowns, article), 'sliding-left/block').verdict;

describe('sliding across the ship', () => {
  // Fy = 10; flat: CS = 10 − 2.943 = 7.057, MSL = 1.5 · 7.057 = 10.5855
  it.each([
    ['at', '10.5855 kN', 'pass'],
    ['at', '10585.5 N', 'pass'],
    ['at', { value: 1058.55, unit: 'daN' }, 'pass'],
    ['just below', '10.58549 kN', 'fail'],
    ['just above', '10.58551 kN', 'pass'],
    // 10585.5 N / 4.4482216152605 = 2379.7151 lbf
    ['just below', '2379.715 lbf', 'fail'],
    ['just above', '2379.716 lbf', 'pass'],
  ] as const)('%s: %s', (_where, load, verdict) => {
    expect(sideways([flat('right', load)])).toBe(verdict);
    expect(checkOf(throughJson(judge(across, [flat('right', load)])), 'sliding-left/block').verdict).toBe(verdict);
  });

  it('counts MSL / 1.5, from the tie-downs that pull against the heading', () => {
    const result = judge(across, [flat('right', '15 kN')]);
    expect(result.tieDowns[0]).toMatchObject({
      rating: { value: 15, unit: 'kN' },
      counted: { value: 10, unit: 'kN' },
      credit: 1 / 1.5,
      counts: 'maximumSecuringLoad',
    });
    expect(ratioIn(result, 'sliding-left/block').capacity).toBeCloseTo(12.943, 9);
    expect(checkOf(result, 'sliding-right/block').verdict).toBe('fail');
  });

  it('with f = cos α + μ · sin α where the tie-down runs straight across', () => {
    // α 40: 0.766044 + 0.3 · 0.642788 = 0.958881; CS 10
    const run = flat('right', '15 kN', {
      anchor: at(-4, -Math.cos((40 * Math.PI) / 180), 1 - Math.sin((40 * Math.PI) / 180)),
    });
    expect(ratioIn(judge(across, [run]), 'sliding-left/block').capacity).toBeCloseTo(2.943 + 9.58881, 4);
  });

  it('and cos β less where it runs askew: f = cos α · cos β + μ · sin α, β from across', () => {
    // corners at α 30 and 60 to the length are 30 from across: cos 30 · cos 30 + 0.15 = 0.9; along cos 30 · cos 60 + 0.15
    const result = judge({ transverse: '10 kN', longitudinal: '1 kN' }, corners(30, 60, '15 kN'));
    expect(ratioIn(result, 'sliding-left/block').capacity).toBeCloseTo(2.943 + 20 * 0.9, 9);
    expect(ratioIn(result, 'sliding-forward/block').capacity).toBeCloseTo(20 * (0.4330127 + 0.15), 5);
  });
});

describe('sliding along the ship', () => {
  const forward = (load: '15 kN' | '14.999 kN' | '10.5855 kN' | '10.5854 kN') =>
    checkOf(judge(along, [flat('rearward', load)]), 'sliding-forward/block');

  it('rests on no friction of the weight, for a vertical force that is not stated takes it off', () => {
    expect(forward('15 kN').verdict).toBe('pass'); // CS 10
    expect(missingIn(forward('14.999 kN'))).toEqual(['VERTICAL_FORCE_NOT_STATED']);
    expect(forward('10.5855 kN').verdict).toBe('undetermined');
    expect(forward('10.5854 kN').verdict).toBe('fail'); // too little even with all of it
  });
});

describe('tipping across the ship', () => {
  // b 1 m: 9.81 kN m against Fy · a
  it('Fy · a against b · m · g', () => {
    const stands = (transverse: ShipForces['transverse'], a: number) =>
      ratioIn(judge({ transverse } as ShipForces, [upright], { centerOfGravity: at(-4, 0, a) }), 'tipping-left/block');
    expect(stands('9.81 kN', 1)).toMatchObject({ verdict: 'pass', utilization: 1 });
    expect(stands('9.8101 kN', 1).verdict).toBe('fail');
    expect(stands('9.8099 kN', 1).verdict).toBe('pass');
    expect(stands('4.905 kN', 2)).toMatchObject({ verdict: 'pass', utilization: 1 });
  });

  it('counts CS · c', () => {
    // 10 kN · 1.5 m = 15; 15 − 9.81 = 5.19 kN m at a lever of 1 m: MSL 7.785
    const found = (load: '7.785 kN' | '7.7849 kN') =>
      checkOf(judge(across, [flat('right', load)], { centerOfGravity: at(-4, 0, 1.5) }), 'tipping-left/block').verdict;
    expect(found('7.785 kN')).toBe('pass');
    expect(found('7.7849 kN')).toBe('fail');
  });

  it('is undetermined without the stance, and not looked at along the ship', () => {
    const { contacts: _, ...floating } = block({ shipForces: across });
    const result = checkSecurement({ rules, articles: [floating], tieDowns: [upright] });
    expect(missingIn(checkOf(result, 'tipping-left/block'))).toEqual(['CONTACTS_NOT_STATED']);
    expect(result.checks.some(({ id }) => id.startsWith('tipping-forward'))).toBe(false);
    expect(checkOf(judge(across, [upright], { centerOfGravity: at(-4, 0, 0) }), 'tipping-left/block').verdict).toBe(
      'not-applicable',
    );
  });
});

describe('what is not known', () => {
  it('the forces of the ship come from the caller', () => {
    const result = judge(undefined, [flat('right', '50 kN')]);
    for (const id of ['sliding-forward', 'sliding-left', 'tipping-right']) {
      expect(missingIn(checkOf(result, `${id}/block`))).toEqual(['SHIP_FORCE_NOT_STATED']);
    }
    expect(result.verdict).toBe('undetermined');
    expect(issueOf(() => judge({ transverse: '-1 kN' } as never, [upright])).path).toBe(
      'articles[0].shipForces.transverse',
    );
    expect(issueOf(() => judge(null as never, [upright], { shipForces: 1 as never })).path).toBe(
      'articles[0].shipForces',
    );
  });

  it('a tie-down that runs over to the other side has no figure', () => {
    const result = judge(across, [over('50 kN', { pretension: '20 kN' })]);
    expect(missingIn(checkOf(result, 'sliding-left/block'))).toContain('OVER_THE_TOP_NOT_COVERED');
    expect(result.tieDowns[0]).toMatchObject({ credit: 0, counted: { value: 0 } });
    expect(sideways([over('50 kN'), flat('right', '10.5855 kN')])).toBe('pass');
  });

  it('a capacity of another system is none', () => {
    for (const capacities of [
      { workingLoadLimit: '50 kN' },
      { lashingCapacity: '50 kN' },
      { ratedStrength: '50 kN' },
    ] as const) {
      const result = judge(across, [flat('right', '1 kN', { capacities })]);
      expect(missingIn(checkOf(result, 'sliding-left/block'))).toEqual(['CAPACITY_NOT_STATED']);
    }
  });

  it('a tonne is 9.80665 kN and not 10', () => {
    // 10.5855 kN are 1.07942 t
    expect(sideways([flat('right', '1.0794 t')])).toBe('fail');
    expect(sideways([flat('right', '1.07943 t')])).toBe('pass');
    expect(sideways([flat('right', '1.0586 t')])).toBe('fail');
  });

  it('friction by the pair of surfaces', () => {
    const { friction: _, ...bare } = block({ shipForces: across });
    const found = (surfaces: Surfaces | undefined, load: '15 kN' | '13.5285 kN' | '13.528 kN' | '10.5855 kN') =>
      checkOf(
        checkSecurement({
          rules,
          articles: [{ ...bare, ...(surfaces && { surfaces }) }],
          tieDowns: [flat('right', load)],
        }),
        'sliding-left/block',
      );
    const steel: Surfaces = { load: 'steel', deck: 'steel' };
    // dry 0.1: 1.5 · (10 − 0.981) = 13.5285; wet nothing: 15
    expect(found({ ...steel, condition: 'dry' }, '13.5285 kN').verdict).toBe('pass');
    expect(found({ ...steel, condition: 'dry' }, '13.528 kN').verdict).toBe('fail');
    expect(found({ ...steel, condition: 'wet' }, '15 kN').verdict).toBe('pass');
    expect(found({ ...steel, condition: 'wet' }, '13.5285 kN').verdict).toBe('fail');
    expect(missingIn(found(steel, '13.5285 kN'))).toEqual(['SURFACE_CONDITION_NOT_STATED']);
    expect(found(steel, '13.528 kN').verdict).toBe('fail');
    expect(found(steel, '15 kN').verdict).toBe('pass');
    // steel on timber 0.3, either way round; wet the table is blank
    expect(found({ load: 'timber', deck: 'steel', condition: 'dry' }, '10.5855 kN').verdict).toBe('pass');
    expect(missingIn(found({ load: 'steel', deck: 'timber', condition: 'wet' }, '10.5855 kN'))).toEqual([
      'FRICTION_NOT_IN_TABLE',
    ]);
    expect(missingIn(found({ load: 'steel', deck: 'steel', condition: 'frost' }, '13.5285 kN'))).toEqual([
      'FRICTION_NOT_IN_TABLE',
    ]);
    expect(missingIn(found({ load: 'rubber', deck: 'timber' }, '10.5855 kN'))).toEqual(['PAIR_NOT_LISTED']);
    expect(missingIn(found(undefined, '10.5855 kN'))).toEqual(['FRICTION_NOT_STATED']);
  });
});

describe('the rule of thumb', () => {
  const thumb = (tieDowns: readonly TieDown[], side: 'left' | 'right') =>
    checkOf(judge(across, tieDowns), `practice/rule-of-thumb-${side}/block`);

  it('asks MSL of the weight on each side, and is advice', () => {
    expect(thumb([flat('left', '9.81 kN')], 'left')).toMatchObject({
      verdict: 'pass',
      utilization: 1,
      weight: 'practice',
    });
    expect(thumb([flat('left', '9.8099 kN')], 'left').verdict).toBe('fail');
    expect(thumb([flat('left', '9.8101 kN')], 'left').verdict).toBe('pass');
    expect(thumb([flat('left', '9.81 kN')], 'right').verdict).toBe('fail');
    const small = judge({ transverse: '1 kN', longitudinal: '1 kN' }, corners(30, 45, '4 kN'));
    expect(checkOf(small, 'practice/rule-of-thumb-left/block').verdict).toBe('fail');
    expect(small.verdict).toBe('pass');
    expect(
      small.sources.filter(({ clause }) => clause?.includes('rule of thumb')).map(({ provenance }) => provenance),
    ).toEqual(['memory']);
  });

  it('leaves out what is steeper than 60 degrees', () => {
    const steep = (degrees: number) => corners(degrees, 45, '10 kN');
    expect(thumb(steep(59.999), 'left').verdict).toBe('pass');
    expect(thumb(steep(60.001), 'left').verdict).toBe('fail');
  });

  it('is undetermined while a load that could matter is not known', () => {
    expect(thumb([flat('left', '1 kN', { capacities: { workingLoadLimit: '50 kN' } })], 'left').verdict).toBe(
      'undetermined',
    );
    const { anchor: _a, attachment: _b, ...bare } = flat('left', '20 kN');
    expect(thumb([bare], 'left').verdict).toBe('undetermined');
    expect(thumb([{ ...bare, capacities: { maximumSecuringLoad: '9 kN' } }], 'left').verdict).toBe('fail');
  });
});

describe('the whole result', () => {
  it('mirrored gives left for right', () => {
    const tie = (mirror: number): TieDown =>
      flat('right', '12 kN', { attachment: at(-4, mirror, 1), anchor: at(-3, 2.5 * mirror, 0) });
    const [one, other] = [1, -1].map((mirror) =>
      judge(across, [tie(mirror)], { centerOfGravity: at(-4, 0.1 * mirror, 1) }),
    );
    for (const check of ['sliding', 'tipping', 'practice/rule-of-thumb']) {
      expect(ratioIn(one!, `${check}-left/block`)).toEqual(ratioIn(other!, `${check}-right/block`));
      expect(ratioIn(one!, `${check}-right/block`)).toEqual(ratioIn(other!, `${check}-left/block`));
    }
  });

  it('says which edition it is, and is found by its id', () => {
    expect(rules.title).toContain('before its replacement of December 2020');
    const plan = { longitudinal: '1 kN', transverse: '1 kN' } as const;
    expect(codes(judge(plan, [upright]).cautions)).toEqual(
      expect.arrayContaining(['ANNEX_REPLACED', 'SHIP_FORCES_STATED', 'CSS_NOT_LOOKED_AT']),
    );
    expect(ruleSetById('imo-css-annex13-2014')).toBe(rules);
  });

  it('is the same without its working', () => {
    const full = judge(across, corners(40, 40, '5 kN'));
    const silent = judge(across, corners(40, 40, '5 kN'), {}, { working: false });
    expect(silent.checks).toEqual(full.checks);
    expect([silent.steps, silent.sources]).toEqual([[], []]);
  });
});

describe('tieDownsRequired', () => {
  it('states 1.5 times the force that friction leaves, along the ship without friction', () => {
    const article = block({ friction: 0.3, shipForces: { transverse: '10 kN', longitudinal: '2 kN' } });
    const { perDirection, minimumCount } = tieDownsRequired({ rules, article });
    expect(perDirection.map(({ direction, againstMaximumSecuringLoad: load }) => [direction, load?.value])).toEqual([
      ['forward', 3],
      ['rearward', 3],
      ['lateral', expect.closeTo(10.5855, 9)],
    ]);
    expect(minimumCount).toBe(0);
    expect(tieDownsRequired({ rules, article: block() }).perDirection).toEqual([]);
  });
});
