import {
  type Article,
  checkSecurement,
  type Part,
  type Point,
  type QuantityInput,
  type RatioCheck,
  type SecurementCheck,
  type TieDown,
  tieDownsRequired,
  type VehicleUnit,
} from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../../quantities/issue-of.js';
import { checkOf, codes, missingIn, reasonOf, throughJson } from '../plans.js';
import {
  across,
  anchor,
  anchorOf,
  at,
  corners,
  direct,
  halfLoop,
  judge,
  load,
  overTop,
  rules,
} from './en-12195-plans.js';

const HEADINGS = ['forward', 'rearward', 'left', 'right'] as const;

const verdictOf = (result: SecurementCheck, id: string) => checkOf(result, `${id}/load`).verdict;
const ratioIn = (result: SecurementCheck, id: string) => checkOf(result, `${id}/load`) as RatioCheck;
// forces are shown in kN, worked by hand here in N
const newtons = (shown: unknown) => (shown as { value: number }).value * 1000;
const demandOf = (result: SecurementCheck, id: string) => newtons(ratioIn(result, id).demand);
const capacityOf = (result: SecurementCheck, id: string) => newtons(ratioIn(result, id).capacity);

const flat = { alpha: 0, beta: 0 } as const;
/** Two chains pulling straight back, and two straight forward: each pair holds 2 · LC in one heading. */
const lengthwise = (lashingCapacity: `${number} kN`) => corners(lashingCapacity, flat);

describe('sliding, over-top lashing', () => {
  it('presses with the pretension of both legs, with the friction in full, divided by fs', () => {
    const result = judge(load(), across(3, 90));
    // demand: 8000 · 9.81 · (c − 0.3); held: 3 · 2 · 0.3 · 4000 / fs = 7200 / fs
    expect(demandOf(result, 'sliding-forward')).toBeCloseTo(39_240, 6);
    expect(demandOf(result, 'sliding-rearward')).toBeCloseTo(15_696, 6);
    expect(demandOf(result, 'sliding-left')).toBeCloseTo(15_696, 6);
    expect(capacityOf(result, 'sliding-forward')).toBeCloseTo(7200 / 1.25, 6);
    expect(capacityOf(result, 'sliding-rearward')).toBeCloseTo(7200 / 1.1, 6);
    expect(capacityOf(result, 'sliding-left')).toBeCloseTo(7200 / 1.1, 6);
  });

  it('counts by sin α, and turns at the number of the formula', () => {
    // n ≥ 1.1 · 0.2 · 8000 · 9.81 / (2 · 0.3 · sin 60° · 4000) = 8.307
    expect(verdictOf(judge(load(), across(8, 60)), 'sliding-left')).toBe('fail');
    expect(verdictOf(judge(load(), across(9, 60)), 'sliding-left')).toBe('pass');
  });

  it('takes the pretension that is stated before the STF of the tag', () => {
    const stated = judge(load(), across(1, 90, { pretension: '2 kN' }));
    expect(stated.tieDowns[0]).toMatchObject({ counts: 'pretension', rating: { value: 2, unit: 'kN' }, credit: 2 });
    expect(judge(load(), across(1, 90)).tieDowns[0]).toMatchObject({
      rating: { value: 4 },
      counted: { value: 8 },
    });
  });

  it.each([
    ['12.4 kN', 12.4],
    ['12.5 kN', 12.5],
    ['12.6 kN', 12.5], // never more than half of LC 25 kN
    ['25 kN', 12.5],
  ] as const)('of %s counts %d kN', (pretension, counted) => {
    expect(judge(load(), across(1, 90, { pretension })).tieDowns[0]?.rating?.value).toBe(counted);
  });

  it('never takes strength for pretension: without it the answer is open, however strong the lashing', () => {
    const result = judge(load(), across(2, 90, { capacities: { lashingCapacity: '200 kN' } }));
    // 2 · 2 · 0.3 · 100 kN / 1.25 could be enough
    expect(missingIn(checkOf(result, 'sliding-forward/load'))).toContain('PRETENSION_OR_STF_NOT_STATED');
    expect(result.verdict).toBe('undetermined');
    expect(result.tieDowns[0]).toMatchObject({ rating: null, counted: null });
  });

  it('fails without the pretension where half of LC would not do either', () => {
    // at best 2 · 2 · 0.3 · 5 kN / 1.25 = 4.8 kN against 39.24 kN
    const result = judge(load(), across(2, 90, { capacities: { lashingCapacity: '10 kN' } }));
    expect(verdictOf(result, 'sliding-forward')).toBe('fail');
  });

  it('is not divided by fs 1.1 forward, nor by 1.25 sideways', () => {
    const [forward, left] = ['sliding-forward', 'sliding-left'].map((id) =>
      capacityOf(judge(load(), across(1, 90)), id),
    );
    expect(left! / forward!).toBeCloseTo(1.25 / 1.1, 12);
  });

  it.each([0, -10])('refuses a lashing whose legs run at %d°', (alpha) => {
    // 1 t asks 1962 N; drawn right, two might hold 2 · 2 · 0.3 · 4000 / 1.1 = 4364 N
    const result = judge(load({ mass: '1 t' }), across(2, alpha));
    expect(missingIn(checkOf(result, 'sliding-left/load'))).toEqual(['OVER_TOP_FLAT', 'OVER_TOP_FLAT']);
  });

  it('decides without a flat one where the others are enough', () => {
    const result = judge(load(), [...across(20, 90), overTop('flat', 0)]);
    expect(verdictOf(result, 'sliding-left')).toBe('pass');
  });

  it('takes the least STF of the parts, and cautions where it is less than the share of its chain', () => {
    const strap = (size: '10 mm' | '11 mm' | '13 mm' | '12 mm', stf: QuantityInput<'force'>): TieDown => {
      const { capacities: _, ...points } = overTop('strap', 90);
      const parts: Part[] = [
        { id: 'chain', kind: 'chain', size, grade: '8' },
        {
          id: 'tensioner',
          kind: 'turnbuckle',
          capacities: { lashingCapacity: '100 kN', standardTensionForce: stf },
        },
        anchor('left', 'vehicle', '100 kN'),
        anchor('right', 'vehicle', '100 kN'),
      ];
      return { ...points, parts };
    };
    const cautioned = (size: Parameters<typeof strap>[0], stf: QuantityInput<'force'>) =>
      codes(judge(load(), [strap(size, stf)]).cautions).includes('STF_BELOW_SHARE');
    // 0.25 of 63 kN up to 10 mm, 0.15 of 75 kN and of 100 kN above: 15.75, 11.25 and 15 kN
    expect([cautioned('10 mm', '15.74 kN'), cautioned('10 mm', '15.75 kN')]).toEqual([true, false]);
    expect([cautioned('11 mm', '11.24 kN'), cautioned('11 mm', { value: 1125, unit: 'daN' })]).toEqual([true, false]);
    expect([cautioned('13 mm', '14.99 kN'), cautioned('13 mm', '15 kN')]).toEqual([true, false]);
    expect(cautioned('12 mm', '1 kN')).toBe(false); // no size of the table: nothing to compare with
    // the bigger chain may press less: 15 kN against 15.75 kN
    const [ten, thirteen] = [strap('10 mm', '15.75 kN'), strap('13 mm', '15 kN')].map(
      (tieDown) => judge(load(), [tieDown]).tieDowns[0]?.rating?.value,
    );
    expect([ten, thirteen]).toEqual([15.75, 15]);
  });
});

describe('sliding, direct lashing', () => {
  it('counts LC with 0.75 of the friction and without fs', () => {
    const result = judge(load(), lengthwise('20 kN'));
    // 8000 · 9.81 · (0.8 − 0.225) = 45 126; two of 20 kN pulling straight
    expect(demandOf(result, 'sliding-forward')).toBeCloseTo(45_126, 6);
    expect(capacityOf(result, 'sliding-forward')).toBeCloseTo(40_000, 6);
    expect(demandOf(result, 'sliding-rearward')).toBeCloseTo(21_582, 6); // (0.5 − 0.225)
  });

  it('turns at the LC of the formula, with no tolerance', () => {
    // 45 126 / 2 = 22 563 N each
    expect(verdictOf(judge(load(), lengthwise('22.562 kN')), 'sliding-forward')).toBe('fail');
    expect(verdictOf(judge(load(), lengthwise('22.564 kN')), 'sliding-forward')).toBe('pass');
    const near = ratioIn(judge(load(), lengthwise('22.5 kN')), 'sliding-forward');
    expect(near.verdict).toBe('fail'); // within 1 % of it, and still a fail
    expect(near.utilization).toBeCloseTo(22.563 / 22.5, 12);
  });

  it('slides sideways at c = 0.5, not at the 0.6 of tilting', () => {
    const result = judge(load({ friction: 0 }), corners('100 kN', { alpha: 30, beta: 60 }));
    expect(demandOf(result, 'sliding-left')).toBeCloseTo(8000 * 9.81 * 0.5, 6);
  });

  it('counts only the chains that hold back: one pair of the four', () => {
    // cos 30° · cos 45° + 0.225 · sin 30° = 0.72487 each, two of them
    const result = judge(load(), corners('50 kN', { alpha: 30, beta: 45 }));
    for (const heading of HEADINGS) {
      expect(capacityOf(result, `sliding-${heading}`)).toBeCloseTo(2 * 50_000 * 0.724_872, 0);
    }
  });

  it('goes by where a chain pulls, not by its name: crossed chains hold the other way', () => {
    const [first, ...others] = corners('50 kN', { alpha: 30, beta: 45 }) as [TieDown, ...TieDown[]];
    // the front left one laid rearward from its attachment: three hold back forward, one rearward
    const crossed = { ...first, anchor: anchorOf([-2, 1, 1], { alpha: 30, beta: 45, x: -1, y: 1 }) };
    const result = judge(load(), [crossed, ...others]);
    expect(capacityOf(result, 'sliding-forward')).toBeCloseTo(3 * 50_000 * 0.724_872, 0);
    expect(capacityOf(result, 'sliding-rearward')).toBeCloseTo(50_000 * 0.724_872, 0);
  });

  it('slope lashing: straight across, cos β = 1 sideways and nothing lengthwise', () => {
    const slope = corners('50 kN', { alpha: 45, beta: 90 });
    const result = judge(load(), slope);
    // cos 45° + 0.225 · sin 45° = 0.866206
    expect(capacityOf(result, 'sliding-left')).toBeCloseTo(2 * 50_000 * 0.866_206, 0);
  });

  it('spring lashing: two direct legs from the front of the load back to both sides', () => {
    const legs = ([1, -1] as const).map((y) =>
      direct(
        `leg ${y}`,
        '50 kN',
        { alpha: 40, beta: 10, x: -1, y },
        {
          attachment: at(-2, y, 1),
          anchor: anchorOf([-2, y, 1], { alpha: 40, beta: 10, x: -1, y }),
        },
      ),
    );
    // cos 40° · cos 10° + 0.225 · sin 40° = 0.754407 + 0.144627
    expect(capacityOf(judge(load(), legs), 'sliding-forward')).toBeCloseTo(2 * 50_000 * 0.899_034, 0);
  });

  it('half loop: each leg counts, and no more than the points it is fixed to', () => {
    const parts = (points: `${number} kN`): Part[] => [
      { id: 'strap', kind: 'webbing', capacities: { lashingCapacity: '50 kN' } },
      anchor('front', 'vehicle', points),
      anchor('rear', 'vehicle', points),
    ];
    // both legs hold against going to the right: 2 · LC · (cos 45° + 0.225 · sin 45°)
    const held = (points: `${number} kN`) =>
      capacityOf(judge(load(), [halfLoop('loop', 45, { parts: parts(points) })]), 'sliding-right');
    expect(held('60 kN')).toBeCloseTo(2 * 50_000 * 0.866_206, 0);
    expect(held('20 kN')).toBeCloseTo(2 * 20_000 * 0.866_206, 0);
  });

  it('a loop whose legs pull apart counts nothing lengthwise: it slips around the load', () => {
    const spread = halfLoop('loop', 45, {
      capacities: { lashingCapacity: '50 kN' },
      anchor: anchorOf([-3, 1, 2], { alpha: 45, beta: 45, x: 1, y: 1 }),
      otherAnchor: anchorOf([-5, 1, 2], { alpha: 45, beta: 45, x: -1, y: 1 }),
    });
    const result = judge(load({ friction: 0 }), [spread]);
    expect(ratioIn(result, 'sliding-forward')).toMatchObject({ verdict: 'fail', utilization: null });
    expect(capacityOf(result, 'sliding-right')).toBeCloseTo(2 * 50_000 * 0.5, 0);
  });

  it('says where a lashing counts more by friction than by its pull', () => {
    const steep = judge(load({ friction: 0.6 }), corners('300 kN', { alpha: 45, beta: 80 }));
    // forward: cos 45° · cos 80° = 0.1228 against 0.45 · sin 45° = 0.318; sideways 0.696
    const said = steep.cautions.filter(({ code }) => code === 'MORE_FRICTION_THAN_PULL');
    expect(new Set(said.map(({ params }) => params.heading))).toEqual(new Set(['forward', 'rearward']));
    expect(codes(judge(load(), corners('100 kN', { alpha: 30, beta: 45 })).cautions)).not.toContain(
      'MORE_FRICTION_THAN_PULL',
    );
  });

  it('is open, and no error, where a lashing that lifts more than it pulls is not known', () => {
    const lifting = { attachment: at(-2, 0.5, 0), anchor: at(-2.1, 0.5, 3), capacities: {} };
    const [one, ...others] = lengthwise('50 kN') as [TieDown, ...TieDown[]];
    const result = judge(load(), [{ ...one, ...lifting } as TieDown, ...others]);
    expect(missingIn(checkOf(result, 'sliding-forward/load'))).toEqual(['CAPACITY_NOT_STATED']);
  });

  it('takes off what a lashing that lifts the load takes from friction', () => {
    const lifting = lengthwise('50 kN').map(
      (tieDown) => ({ ...tieDown, attachment: at(-2, 0.5, 0), anchor: at(-6, 0.5, 3) }) as TieDown, // 4 back, 3 up, over 5
    );
    // 4 · 50 kN · (0.8 − 0.225 · 0.6)
    expect(capacityOf(judge(load(), lifting), 'sliding-forward')).toBeCloseTo(4 * 50_000 * 0.665, 4);
  });
});

describe('over-top with direct lashing', () => {
  const both = [...across(3, 90), ...lengthwise('15 kN')];

  it('adds up, with 0.75 of the friction in every term', () => {
    const result = judge(load(), both);
    // forward: 45 126 against 2 · 15 000 + 6 · 0.225 · 4000 / 1.25 = 34 320
    expect(demandOf(result, 'sliding-forward')).toBeCloseTo(45_126, 6);
    expect(capacityOf(result, 'sliding-forward')).toBeCloseTo(34_320, 6);
  });

  it('keeps the friction in full where no direct lashing counts', () => {
    const result = judge(load(), both);
    expect(demandOf(result, 'sliding-left')).toBeCloseTo(15_696, 6); // 0.5 − 0.3
    expect(capacityOf(result, 'sliding-left')).toBeCloseTo(7200 / 1.1, 6);
  });

  it('is no worse than the over-top lashing alone', () => {
    // rearward 15 696 / (0.6 · 4000 / 1.1 · n): 8 straps hold; a weak chain beside them would cost a quarter of the friction
    expect(verdictOf(judge(load(), across(8, 90)), 'sliding-rearward')).toBe('pass');
    const weak = [...across(8, 90), ...lengthwise('0.1 kN')];
    expect(verdictOf(judge(load(), weak), 'sliding-rearward')).toBe('pass');
  });
});

describe('friction', () => {
  const surfaces = (surface: string, deck: string, condition?: 'dry' | 'wet' | 'frost'): Partial<Article> => {
    const { friction: _, ...article } = load();
    return { ...article, surfaces: { load: surface, deck, ...(condition && { condition }) } };
  };
  const muOf = (more: Partial<Article>) => {
    const { friction: _, ...article } = load();
    const result = judge({ ...article, ...more } as Article, across(2, 90));
    const check = checkOf(result, 'sliding-forward/load');
    if (check.verdict === 'undetermined') return missingIn(check);
    return 0.8 - demandOf(result, 'sliding-forward') / (8000 * 9.81);
  };

  it('comes from Annex B, alike dry and wet', () => {
    // rows of Annex B (from memory)
    expect(muOf(surfaces('steel-crate', 'plywood'))).toBeCloseTo(0.45, 12);
    expect(muOf(surfaces('steel-crate', 'plywood', 'wet'))).toBeCloseTo(0.45, 12);
    expect(muOf(surfaces('rubber', 'other-material', 'dry'))).toBeCloseTo(0.6, 12);
  });

  it('is at most 0.2 with frost, and less where the table has less', () => {
    expect(muOf(surfaces('steel-crate', 'plywood', 'frost'))).toBeCloseTo(0.2, 12);
    expect(muOf(surfaces('planed-wood', 'stainless-steel-sheet', 'frost'))).toBeCloseTo(0.2, 12);
    expect(muOf(surfaces('plastic-pallet', 'grooved-aluminum', 'frost'))).toBeCloseTo(0.15, 12);
  });

  it('is what the plan states, before the table; with frost the cap holds for it too', () => {
    expect(muOf({ ...surfaces('steel-crate', 'plywood'), friction: 0.35 })).toBeCloseTo(0.35, 12);
    expect(muOf({ ...surfaces('no', 'pair'), friction: 0.35 })).toBeCloseTo(0.35, 12);
    expect(muOf({ ...surfaces('steel-crate', 'plywood', 'frost'), friction: 0.35 })).toBeCloseTo(0.2, 12);
    expect(muOf({ ...surfaces('steel-crate', 'plywood', 'frost'), friction: 0.19 })).toBeCloseTo(0.19, 12);
  });

  it('is the least of contacts that differ', () => {
    const contacts = [0.4, 0.25, undefined].map((friction) => ({
      at: at(-2, 0, 0),
      ...(friction === undefined ? {} : { friction }),
    }));
    expect(muOf({ contacts, friction: 0.3 })).toBeCloseTo(0.25, 12);
    expect(muOf({ contacts })).toEqual(['FRICTION_NOT_STATED']); // one of them is not known
  });

  it('has no fallback for a pair that is not listed', () => {
    expect(muOf(surfaces('steel-track', 'steel-deck'))).toEqual(['FRICTION_NOT_LISTED']);
    expect(muOf(surfaces('steel-crate', 'sawn-wood'))).toEqual(['FRICTION_NOT_LISTED']);
    expect(muOf(surfaces('constructor', 'name'))).toEqual(['FRICTION_NOT_LISTED']);
    expect(muOf({})).toEqual(['FRICTION_NOT_STATED']);
  });

  it('names the surfaces that are listed', () => {
    const { friction: _, ...bare } = load(surfaces('steel-crate', 'ice'));
    const check = checkOf(judge(bare, across(2, 90)), 'sliding-left/load');
    expect('missing' in check && check.missing[0]?.text).toContain('plywood, grooved-aluminum, stainless-steel-sheet');
  });

  it('is not needed where the lashings hold without', () => {
    const { friction: _, ...bare } = load();
    // forward 0.8 · 78 480 = 62 784: two of 32 kN
    const enough = judge(bare, lengthwise('32 kN'));
    expect(verdictOf(enough, 'sliding-forward')).toBe('pass');
    expect(codes(enough.assumptions)).toContain('ENOUGH_WITHOUT_FRICTION');
    expect(missingIn(checkOf(judge(bare, lengthwise('31 kN')), 'sliding-forward/load'))).toEqual([
      'FRICTION_NOT_STATED',
    ]);
  });

  it('leaves nothing to hold where it is as much as c, and the least number stays', () => {
    for (const [friction, verdict] of [
      [0.499, 'fail'],
      [0.5, 'pass'],
      [0.501, 'pass'],
    ] as const) {
      const alone = judge(load({ friction }), across(1, 90, { pretension: '0.001 kN' }));
      expect(verdictOf(alone, 'sliding-left')).toBe(verdict);
      expect(checkOf(alone, 'number/load')).toMatchObject({ verdict: 'fail', demand: 2, capacity: 1 });
    }
    // direct lashing alone: with 0.75 of 0.6 something would be left, but friction holds by itself
    expect(verdictOf(judge(load({ friction: 0.6 }), lengthwise('1 kN')), 'sliding-rearward')).toBe('pass');
  });

  it('is needed all the same where a lashing lifts the load', () => {
    const { friction: _, ...bare } = load();
    const up = { attachment: at(-2, 0.5, 0), anchor: at(-6, 0.5, 3) };
    const lifting = lengthwise('90 kN').map((tieDown) => ({ ...tieDown, ...up }) as TieDown);
    // 4 · 90 kN · 0.8 is far more than 62 784 N, and yet each takes 0.6 of its pull off the deck
    expect(missingIn(checkOf(judge(bare, lifting), 'sliding-forward/load'))).toEqual(['FRICTION_NOT_STATED']);
  });

  it.each([
    [{ load: 'rubber' }, 'MISSING_FIELD', 'articles[0].surfaces.deck'],
    [{ load: 1, deck: 'plywood' }, 'MISSING_FIELD', 'articles[0].surfaces.load'],
    [null, 'MISSING_FIELD', 'articles[0].surfaces'],
    [{ load: 'rubber', deck: 'x', condition: 'icy' }, 'UNKNOWN_VALUE', 'articles[0].surfaces.condition'],
  ])('refuses surfaces %j', (given, code, path) => {
    const article = { ...load(), surfaces: given } as unknown as Article;
    expect(issueOf(() => judge(article, across(2, 90)))).toMatchObject({ code, path });
  });
});

describe('blocked forward', () => {
  it('leaves to the block what the lashings do not hold, and says how much', () => {
    const result = judge(load({ blockedForward: true }), across(3, 90));
    const check = checkOf(result, 'sliding-forward/load');
    expect(missingIn(check)).toEqual(['BLOCK_NOT_STATED']);
    // 39 240 − 7200 / 1.25
    expect('missing' in check && newtons(check.missing[0]!.params.force)).toBeCloseTo(33_480, 6);
    expect(verdictOf(result, 'sliding-left')).toBe('fail');
  });

  it('needs no block where the lashings hold', () => {
    expect(verdictOf(judge(load({ blockedForward: true }), lengthwise('30 kN')), 'sliding-forward')).toBe('pass');
  });

  it.each([
    ['adequate', 'undetermined'],
    ['partial', 'undetermined'],
    ['none', 'fail'],
  ] as const)('a headboard that is %s: %s', (headboard, verdict) => {
    expect(verdictOf(judge(load({ headboard }), across(3, 90)), 'sliding-forward')).toBe(verdict);
  });

  it('refuses a headboard of another sort', () => {
    const article = load({ headboard: 'high' as 'none' });
    expect(issueOf(() => judge(article, across(3, 90)))).toMatchObject({
      code: 'UNKNOWN_VALUE',
      path: 'articles[0].headboard',
    });
  });
});

describe('tilting, free-standing', () => {
  const standing = (b: QuantityInput<'length'>, d: QuantityInput<'length'>) => {
    const zero = '0 m';
    const foot = (x: QuantityInput<'length'>, y: QuantityInput<'length'>) => ({ at: [x, y, zero] as Point });
    return load({
      centerOfGravity: ['0 m', '0 m', d],
      contacts: [foot(b, zero), foot(zero, b)],
    });
  };
  // A direct lashing that pulls forward holds nothing forward, to the left or to the right.
  const unheld = [direct('away', '50 kN', { alpha: 0, beta: 0, x: 1, y: 1 })];
  const tilts = (heading: string, b: QuantityInput<'length'>, d: QuantityInput<'length'>) =>
    checkOf(judge(standing(b, d), unheld), `tilting-${heading}/load`);

  // b / d against c / cz: 0.8 forward, 0.6 sideways
  it.each([
    ['forward', '4 ft', '5 ft', '48.001 in', '47.999 in'],
    ['forward', '0.8 m', '1 m', '0.8000001 m', '799.9999 mm'],
    ['forward', { value: 1.2, unit: 'm' }, '1.5 m', '1.2000001 m', '1.1999999 m'],
    ['left', '3 ft', '5 ft', '36.001 in', '35.999 in'],
    ['left', '0.9 m', '1.5 m', '900.0001 mm', '899.9999 mm'],
    ['left', { value: 42, unit: 'cm' }, { value: 0.7, unit: 'm' }, '0.4200001 m', '0.4199999 m'],
  ] as const)('%s, b = %j: at it, above and below', (heading, b, d, above, below) => {
    const edge = tilts(heading, b, d);
    expect(edge.verdict).toBe('fail');
    if ('because' in edge) expect(reasonOf(edge)).toBe('ON_THE_EDGE');
    expect(tilts(heading, above, d).verdict).toBe('pass');
    expect(tilts(heading, below, d).verdict).toBe('fail');
  });

  it('takes 0.6 to the rear, the cautious reading', () => {
    const rear = (b: number) =>
      load({ centerOfGravity: at(-4, 0, 1), contacts: [{ at: at(-4 - b, 0, 0) }, { at: at(-2, 0, 0) }] });
    const back = [direct('back', '50 kN', { alpha: 0, beta: 0, x: -1, y: 1 })];
    expect(verdictOf(judge(rear(0.6001), back), 'tilting-rearward')).toBe('pass');
    expect(verdictOf(judge(rear(0.5999), back), 'tilting-rearward')).toBe('fail');
  });

  it('states the force that tips it', () => {
    // b = 2 m forward, d = 0.5: 78 480 · 0.8 against 78 480 · 4
    expect(ratioIn(judge(load(), across(2, 90)), 'tilting-forward').utilization).toBeCloseTo(0.2, 12);
  });

  it('cannot tilt while its center of gravity is no higher than its edge', () => {
    const low = load({ centerOfGravity: at(-4, 0, 0) });
    expect(checkOf(judge(low, across(2, 90)), 'tilting-left/load')).toMatchObject({ verdict: 'pass' });
  });

  it('fails where the center of gravity is beyond the edge and nothing holds it', () => {
    const article = load({ centerOfGravity: at(-4, 1.5, 1) });
    expect(ratioIn(judge(article, unheld), 'tilting-left')).toMatchObject({ verdict: 'fail', utilization: null });
  });

  it('asks for the center of gravity and the contacts', () => {
    const { centerOfGravity: _, contacts: __, ...bare } = load();
    const result = judge(bare, across(21, 90)); // forward 39 240 against 21 · 2400 / 1.25 = 40 320
    expect(missingIn(checkOf(result, 'tilting-left/load'))).toEqual([
      'CENTER_OF_GRAVITY_NOT_STATED',
      'CONTACTS_NOT_STATED',
    ]);
    expect(verdictOf(result, 'sliding-left')).toBe('pass'); // sliding needs neither
    expect(result.verdict).toBe('undetermined');
  });
});

describe('tilting, with lashings', () => {
  const DAMAGED: Part = { id: 'chain', kind: 'chain', size: '10 mm', grade: '8', condition: 'damaged' };
  /** 2 t, 19 620 N, on feet 1 m apart, its center of gravity 1.5 m up: b = 0.5, d = 1.5 sideways and forward. */
  const tall = load({
    mass: '2 t',
    centerOfGravity: at(-2.5, 0, 1.5),
    contacts: [at(-2, 0.5, 0), at(-2, -0.5, 0), at(-3, 0.5, 0), at(-3, -0.5, 0)].map((point) => ({ at: point })),
  });
  const strap = (id: string, y: number, x: number, capacities: object): TieDown =>
    ({
      id,
      holds: 'load',
      path: 'over-other-side',
      capacities,
      attachment: at(x, y, 2),
      anchor: at(x, y, 0),
      otherAttachment: at(x, -y, 2),
      otherAnchor: at(x, -y, 0),
    }) as TieDown;
  const straps = (count: number, lc: string, stf: string, y = 0.5, x = -2.5) =>
    Array.from({ length: count }, (_, index) =>
      strap(`strap ${index}`, y, x, { lashingCapacity: lc, standardTensionForce: stf }),
    );
  const tilting = (tieDowns: readonly TieDown[], heading: string) =>
    verdictOf(judge(tall, tieDowns), `tilting-${heading}`);

  it('sideways, case A: c = 0.5 with FT', () => {
    // 19 620 · (0.75 − 0.5) = 4905 against 1 m · 4000 / 1.1 = 3636 each: 1.35. Case B: 7848 against 12 500 / 1.1: 0.69
    expect(tilting(straps(1, '25 kN', '4 kN'), 'left')).toBe('fail');
    expect(tilting(straps(2, '25 kN', '4 kN'), 'left')).toBe('pass');
  });

  it('sideways, case B: c = 0.6 with 0.5 LC', () => {
    // 19 620 · (0.9 − 0.5) = 7848 against 1 m · 4000 / 1.1 each, 0.5 · 8 kN: 2.16, where case A asks 2
    expect(tilting(straps(2, '8 kN', '4 kN'), 'left')).toBe('fail');
    expect(tilting(straps(3, '8 kN', '4 kN'), 'left')).toBe('pass');
    expect(tilting(straps(3, '8 kN', '4 kN'), 'right')).toBe('pass');
  });

  it('sideways by the distance between the legs, less where the near leg stands beyond the edge', () => {
    // capacity · d = 19 620 · 0.5 + lever · 4000 / 1.1 · 1; case A governs
    const leverOf = (y: number) =>
      ((capacityOf(judge(tall, straps(1, '25 kN', '4 kN', y)), 'tilting-left') * 1.5 - 9810) * 1.1) / 4000;
    expect(leverOf(0.5)).toBeCloseTo(1, 9);
    expect(leverOf(0.4)).toBeCloseTo(0.8, 9); // w = 0.8
    expect(leverOf(0.7)).toBeCloseTo(1, 9); // 1.2 − 0.2, not w = 1.4
  });

  it('forward by the pretension alone, with fs = 1.25', () => {
    // 19 620 · (0.8 · 1.5 − 0.5) = 13 734; at x = −3 each holds 2 · 4000 · 1 m / 1.25 = 6400: 2.15
    expect(tilting(straps(2, '25 kN', '4 kN', 0.5, -3), 'forward')).toBe('fail');
    expect(tilting(straps(3, '25 kN', '4 kN', 0.5, -3), 'forward')).toBe('pass');
    // right over the edge it holds nothing
    expect(tilting(straps(9, '25 kN', '4 kN', 0.5, -2), 'forward')).toBe('fail');
  });

  it('direct: h of the part that holds back, s of the part that presses down, c = 0.6 and no fs', () => {
    const slope = (lc: `${number} kN`) =>
      [-2.2, -2.8].map(
        (x): TieDown => ({
          id: `chain ${x}`,
          holds: 'load',
          path: 'vehicle-to-cargo',
          capacities: { lashingCapacity: lc },
          attachment: at(x, -0.5, 2),
          anchor: at(x, -2.5, 0),
        }),
      );
    // 45°, h = 2, s = 1: two hold 2 · LC · 3 · sin 45°; 19 620 · (0.9 − 0.5) = 7848, so LC = 1849.8 N
    expect(tilting(slope('1.849 kN'), 'left')).toBe('fail');
    expect(tilting(slope('1.851 kN'), 'left')).toBe('pass');
    expect(tilting(slope('100 kN'), 'right')).toBe('fail'); // they point with it
    // beside over-top lashing both cases count it: B asks 7848, one strap of 0.5 · 8 kN gives 3636
    expect(tilting([...straps(1, '8 kN', '4 kN'), ...slope('0.99 kN')], 'left')).toBe('fail'); // 3636 + 4200
    expect(tilting([...straps(1, '8 kN', '4 kN'), ...slope('1 kN')], 'left')).toBe('pass'); // 3636 + 4243
  });

  it('is open where a lashing that may hold it is not known', () => {
    const { anchor: _, attachment: __, ...somewhere } = direct('chain', '50 kN', { alpha: 45, beta: 90, x: 1, y: -1 });
    expect(missingIn(checkOf(judge(tall, [somewhere as TieDown]), 'tilting-left/load'))).toEqual(['POINTS_NOT_STATED']);
    const damaged = { ...somewhere, capacities: undefined, parts: [{ ...DAMAGED }] } as TieDown;
    expect(tilting([damaged], 'left')).toBe('fail'); // wherever it runs, it counts nothing
    const unknown = straps(1, '25 kN', '4 kN').map((each) => ({ ...each, capacities: { lashingCapacity: '25 kN' } }));
    expect(missingIn(checkOf(judge(tall, unknown as TieDown[]), 'tilting-left/load'))).toEqual([
      'PRETENSION_OR_STF_NOT_STATED',
    ]);
  });
});

describe('the least number', () => {
  it.each([
    [1, 'fail'],
    [2, 'pass'],
    [3, 'pass'],
  ])('%d over-top lashings: %s', (count, verdict) => {
    const result = judge(load({ friction: 0.9 }), across(count, 90));
    expect(verdictOf(result, 'number')).toBe(verdict);
    expect(result.articles[0]).toMatchObject({ rule: 'over-top lashing', minimumCount: 2, count });
  });

  it.each([
    [2, 'fail'],
    [3, 'fail'],
    [4, 'pass'],
  ])('%d direct lashings, two pairs needed: %s', (count, verdict) => {
    const result = judge(load({ friction: 0.9 }), lengthwise('50 kN').slice(0, count));
    expect(verdictOf(result, 'number')).toBe(verdict);
    expect(result.articles[0]).toMatchObject({ rule: 'direct lashing', minimumCount: 4, count });
  });

  it('a loop is a pair, and so is an over-top lashing beside direct ones', () => {
    const loops = ['one', 'two'].map((id) => halfLoop(id, 45, { capacities: { lashingCapacity: '50 kN' } }));
    expect(verdictOf(judge(load(), loops), 'number')).toBe('pass');
    expect(verdictOf(judge(load(), loops.slice(1)), 'number')).toBe('fail');
    expect(verdictOf(judge(load(), [...across(1, 90), ...lengthwise('50 kN').slice(2)]), 'number')).toBe('pass');
    expect(verdictOf(judge(load(), [...across(1, 90), ...lengthwise('50 kN').slice(3)]), 'number')).toBe('fail');
  });

  it('is open while one may be no lashing at all, and none is damaged', () => {
    const chain = (condition: 'sound' | 'damaged', grade?: '8'): TieDown => {
      const { capacities: _, ...points } = lengthwise('1 kN')[0]!;
      const parts: Part[] = [
        { id: 'chain', kind: 'chain', size: '10 mm', condition, ...(grade && { grade }) },
        anchor('ring', 'vehicle', '100 kN'),
        anchor('lug', 'cargo', '100 kN'),
      ];
      return { ...points, parts } as TieDown;
    };
    const others = lengthwise('50 kN').slice(1);
    expect(missingIn(checkOf(judge(load(), [chain('sound'), ...others]), 'number/load'))).toEqual(['PART_NOT_MARKED']);
    expect(verdictOf(judge(load(), [chain('sound', '8'), ...others]), 'number')).toBe('pass');
    const damaged = judge(load(), [chain('damaged', '8'), ...others]);
    expect(checkOf(damaged, 'number/load')).toMatchObject({ verdict: 'fail', demand: 2, capacity: 1 });
    expect(codes(damaged.cautions)).toContain('DAMAGED_COUNTS_ZERO');
    expect(damaged.tieDowns[0]).toMatchObject({ counted: { value: 0 } });
  });
});

describe('missing facts', () => {
  const chains = (): TieDown[] =>
    corners('1 kN', { alpha: 30, beta: 45 }).map(
      ({ capacities: _, ...points }) =>
        ({
          ...points,
          parts: [
            { id: 'chain', kind: 'chain', size: '10 mm', grade: '8' },
            { id: 'tensioner', kind: 'turnbuckle', capacities: { lashingCapacity: '63 kN' } },
            anchor('ring', 'vehicle', '50 kN'),
            anchor('lug', 'cargo', '50 kN'),
          ],
        }) as TieDown,
    );
  const withPart = (index: number, change: (parts: Part[]) => Part[]): TieDown[] =>
    chains().map((each, at) =>
      at === index ? ({ ...each, parts: change([...(each.parts as Part[])]) } as TieDown) : each,
    );

  it('none: four chains on 8 t hold', () => {
    const result = judge(load(), chains());
    expect(result.verdict).toBe('pass');
    expect(result.tieDowns[0]).toMatchObject({
      counts: 'lashingCapacity',
      rating: { value: 50, unit: 'kN' },
      credit: 1,
      weakest: ['ring', 'lug'],
    });
  });

  it.each<[string, (parts: Part[]) => Part[], string]>([
    ['an anchor point that is not listed', (parts) => parts.slice(0, 3), 'ANCHOR_NOT_LISTED'],
    [
      'an anchor point without a rating',
      (parts) => [...parts.slice(0, 3), { id: 'lug', kind: 'anchor', at: 'cargo' }],
      'ANCHOR_NOT_RATED',
    ],
    [
      'a working load limit in place of LC',
      (parts) => [{ id: 'chain', kind: 'chain', size: '12 mm', grade: '8', markedWll: '4 t' }, ...parts.slice(1)],
      'NOT_IN_TABLE',
    ],
    [
      'a tensioner with a WLL',
      (parts) => [parts[0]!, { id: 'tensioner', kind: 'binder', markedWll: '5 t' }, ...parts.slice(2)],
      'OTHER_CAPACITY_SYSTEM',
    ],
    [
      'a part with the rated strength of New Zealand, twice the LC of a chain',
      (parts) => [
        parts[0]!,
        { id: 'tensioner', kind: 'binder', capacities: { ratedStrength: '126 kN' } },
        ...parts.slice(2),
      ],
      'OTHER_CAPACITY_SYSTEM',
    ],
    [
      'a chain of another market',
      (parts) => [{ id: 'chain', kind: 'chain', size: '3/8', grade: 70 }, ...parts.slice(1)],
      'NOT_IN_TABLE',
    ],
    [
      'a chain without a class',
      (parts) => [{ id: 'chain', kind: 'chain', size: '10 mm' }, ...parts.slice(1)],
      'PART_NOT_MARKED',
    ],
  ])('%s leaves open what rests on it, and only that', (_, change, code) => {
    const heavy = load({ mass: '12 t' }); // forward 67 689 N: both chains are needed, rearward 32 373 N: one is enough
    const result = judge(heavy, withPart(2, change)); // corner −1 1: pulls rearward, holds back forward
    expect(missingIn(checkOf(result, 'sliding-forward/load'))).toContain(code);
    expect(verdictOf(result, 'sliding-rearward')).toBe('pass');
    expect(result.verdict).toBe('undetermined');
    expect(result.tieDowns[2]).toMatchObject({ rating: null, counted: null });
  });

  it('a capacity of the whole in another system is none', () => {
    const tieDowns = lengthwise('50 kN').map(
      (each) => ({ ...each, capacities: { workingLoadLimit: '50 kN' } }) as TieDown,
    );
    expect(missingIn(checkOf(judge(load(), tieDowns), 'sliding-forward/load'))).toEqual([
      'CAPACITY_NOT_STATED',
      'CAPACITY_NOT_STATED',
    ]);
  });

  it('fails where the most that the unknown can be is not enough', () => {
    // 8 t forward 45 126 N: one chain of 50 kN at 0.72487 and one that its 8 mm chain keeps to 10 kN at most
    const weak = withPart(2, () => [
      { id: 'tensioner', kind: 'turnbuckle', capacities: { lashingCapacity: '10 kN' } },
      anchor('ring', 'vehicle', '50 kN'),
    ]);
    expect(verdictOf(judge(load(), weak), 'sliding-forward')).toBe('fail'); // 43.5 kN
  });

  it('points: of a direct lashing it counts nothing for certain, of a strong one maybe enough', () => {
    const nowhere = chains().map((each, index) => {
      const { anchor: _, attachment: __, ...points } = each;
      return index === 2 ? (points as TieDown) : each;
    });
    expect(missingIn(checkOf(judge(load({ mass: '10 t' }), nowhere), 'sliding-forward/load'))).toEqual([
      'POINTS_NOT_STATED',
    ]);
    // even 50 kN straight, times sqrt(1 + 0.225²), is not enough for 20 t
    expect(verdictOf(judge(load({ mass: '20 t' }), nowhere), 'sliding-forward')).toBe('fail');
  });

  it('points of an over-top lashing: open, or fail where straight down would not do either', () => {
    const { anchor: _, attachment: __, otherAnchor: ___, otherAttachment: ____, ...points } = overTop('strap', 90);
    const somewhere = points as TieDown;
    // straight down it would hold 2 · 0.3 · 4000 / 1.1 = 2182 N; 1 t asks 1962 N, 2 t 3924 N
    expect(missingIn(checkOf(judge(load({ mass: '1 t' }), [somewhere]), 'sliding-left/load'))).toEqual([
      'POINTS_NOT_STATED',
    ]);
    expect(verdictOf(judge(load({ mass: '2 t' }), [somewhere]), 'sliding-left')).toBe('fail');
    const { otherAnchor: _a, otherAttachment: _b, ...half } = overTop('strap', 90);
    expect(missingIn(checkOf(judge(load({ mass: '1 t' }), [half as TieDown]), 'sliding-left/load'))).toEqual([
      'POINTS_NOT_STATED',
    ]);
  });

  it('a sea leg: the coefficients here are those of the road', () => {
    const result = judge(load(), chains(), { seaArea: 'A' });
    expect(missingIn(checkOf(result, 'sea-leg/plan'))).toEqual(['SEA_NOT_ENTERED']);
    expect(result.verdict).toBe('undetermined');
    expect(issueOf(() => judge(load(), chains(), { seaArea: 'D' as 'A' }))).toMatchObject({
      code: 'UNKNOWN_VALUE',
      path: 'seaArea',
    });
  });
});

describe('LC stated as a mass', () => {
  it('crosses with standard gravity, as a step', () => {
    const tieDowns = lengthwise('1 kN').map((each) => ({ ...each, capacities: { lashingCapacity: '4 t' } }) as TieDown);
    const result = judge(load(), tieDowns);
    // 4000 · 9.80665; not 40 kN, which is 2 % too much
    expect(result.tieDowns[0]?.rating?.value).toBeCloseTo(39.2266, 12);
    expect(
      result.steps.find(({ symbol, expression }) => symbol === 'LC' && expression === 'm · g')?.result,
    ).toMatchObject({
      unit: 'kN',
    });
    expect(capacityOf(result, 'sliding-forward')).toBeCloseTo(78_453.2, 6);
  });
});

describe('what must be said of sharing', () => {
  it('stiffness apart by more than two to one, and chain beside webbing', () => {
    const tieDowns = lengthwise('50 kN').map((each, index) => ({
      ...each,
      axialStiffness: index % 2 === 0 ? '1000 kN' : '2001 kN',
    })) as TieDown[];
    expect(codes(judge(load(), tieDowns).cautions)).toContain('UNEQUAL_STIFFNESS');
    const even = tieDowns.map((each) => ({ ...each, axialStiffness: '2000 kN' })) as TieDown[];
    expect(codes(judge(load(), even).cautions)).not.toContain('UNEQUAL_STIFFNESS');
  });

  it('chain beside webbing in one heading', () => {
    const made = (kind: 'chain' | 'webbing', points: TieDown): TieDown => {
      const { capacities: _, ...rest } = points;
      const part: Part =
        kind === 'chain'
          ? { id: 'chain', kind, size: '10 mm', grade: '8' }
          : { id: 'strap', kind, capacities: { lashingCapacity: '50 kN' } };
      return { ...rest, parts: [part, anchor('ring', 'vehicle', '50 kN'), anchor('lug', 'cargo', '50 kN')] } as TieDown;
    };
    const [one, two, three, four] = lengthwise('1 kN') as [TieDown, TieDown, TieDown, TieDown];
    const headings = (kinds: ('chain' | 'webbing')[]) =>
      judge(
        load(),
        [one, two, three, four].map((each, index) => made(kinds[index]!, each)),
      )
        .cautions.filter(({ code }) => code === 'CHAIN_AND_WEBBING')
        .map(({ params }) => params.heading);
    // the first two hold back rearward, the others forward
    expect(headings(['chain', 'chain', 'webbing', 'webbing'])).toEqual([]);
    expect(headings(['chain', 'webbing', 'webbing', 'webbing'])).toEqual(['rearward']);
  });

  it('of an over-top lashing on a machine, that it settles', () => {
    expect(codes(judge(load({ kind: 'machinery' }), across(2, 90)).cautions)).toContain('OVER_TOP_ON_TIRES');
    expect(codes(judge(load(), across(2, 90)).cautions)).not.toContain('OVER_TOP_ON_TIRES');
  });
});

describe('scope', () => {
  const unit = (id: string, more: Partial<VehicleUnit>): VehicleUnit => ({ id, kind: 'power', ...more });
  const applies = (...units: VehicleUnit[]) => judge(load(), across(2, 90), { vehicle: { units } }).applicability;
  const rating = (grossWeightRating: QuantityInput<'mass'>) => unit('truck', { grossWeightRating });

  it.each([
    ['3.5 t', 'does-not-apply'],
    ['3.5000001 t', 'applies'],
    ['3.4999999 t', 'does-not-apply'],
    ['3500 kg', 'does-not-apply'],
    ['3500.0001 kg', 'applies'],
    ['7716 lb', 'does-not-apply'], // 3499.92 kg
    ['7717 lb', 'applies'], // 3500.37 kg
    [{ value: 3.5, unit: 't' }, 'does-not-apply'],
    [{ value: 3500.001, unit: 'kg' }, 'applies'],
  ] as const)('a total mass of %j: %s', (mass, verdict) => {
    expect(applies(rating(mass)).verdict).toBe(verdict);
  });

  it('looks at each unit by itself: a 3.5 t pickup and a 3.5 t trailer are outside', () => {
    expect(applies(rating('3.5 t'), unit('trailer', { kind: 'towed', grossWeightRating: '3.5 t' })).verdict).toBe(
      'does-not-apply',
    );
    const mixed = applies(rating('3.5 t'), unit('trailer', { kind: 'towed', grossWeightRating: '8 t' }));
    expect(mixed).toMatchObject({ verdict: 'undetermined', because: { code: 'SOME_UNITS_TOO_LIGHT' } });
  });

  it('takes the weight on the road only where it is more than 3.5 t', () => {
    expect(applies(unit('truck', { grossWeight: '3.6 t' })).verdict).toBe('applies');
    expect(applies(unit('truck', { grossWeight: '3.5 t' }))).toMatchObject({
      verdict: 'undetermined',
      because: { code: 'UNIT_RATING_NOT_STATED' },
    });
    expect(applies(unit('truck', {})).verdict).toBe('undetermined');
  });

  it('is open without a vehicle, and refuses one that is none', () => {
    expect(judge(load(), across(2, 90)).applicability.because.code).toBe('STANDARD_TAKEN_TO_REACH_VEHICLE');
    expect(issueOf(() => applies(unit('truck', { kind: 'x' as 'power' })))).toMatchObject({
      code: 'UNKNOWN_VALUE',
      path: 'vehicle.units[0].kind',
    });
    expect(issueOf(() => applies())).toMatchObject({ code: 'EMPTY_LIST', path: 'vehicle.units' });
  });
});

describe('what an article needs', () => {
  const { id: _, ...article } = load();

  it('counts by method and forces after friction', () => {
    const needed = tieDownsRequired({ rules, article });
    expect(needed).toMatchObject({ minimumCount: 2, recommendedCount: 2, requiredAggregate: null });
    expect(needed.options).toEqual([
      { rule: 'over-top lashing', minimumCount: 2 },
      { rule: 'direct lashing', minimumCount: 4 },
    ]);
    // 78 480 · (0.8 − 0.225), and (0.5 − 0.225)
    const forces = needed.perDirection.map(
      ({ direction, againstLashingCapacity: force }) => [direction, newtons(force)] as const,
    );
    expect(forces.map(([direction]) => direction)).toEqual(['forward', 'rearward', 'lateral']);
    expect(forces[0]?.[1]).toBeCloseTo(45_126, 6);
    expect(forces[1]?.[1]).toBeCloseTo(21_582, 6);
    expect(forces[2]?.[1]).toBeCloseTo(21_582, 6);
    expect(tieDownsRequired({ rules, article, units: 'us' }).perDirection[0]?.againstLashingCapacity?.unit).toBe('lbf');
  });

  it('forces before friction where it is not known; two pairs for a machine', () => {
    const { friction: __, ...bare } = article;
    const needed = tieDownsRequired({ rules, article: { ...bare, kind: 'machinery' } });
    expect(newtons(needed.perDirection[0]?.againstLashingCapacity)).toBeCloseTo(62_784, 6); // 78 480 · 0.8
    expect(codes(needed.assumptions)).toContain('LEAST_FRICTION_COUNTED');
    expect(needed.recommendedCount).toBe(4);
  });

  it('no force below zero', () => {
    const needed = tieDownsRequired({ rules, article: { ...article, friction: 0.8 } }); // 0.5 − 0.6
    expect(needed.perDirection[1]?.againstLashingCapacity?.value).toBe(0);
  });

  it('refuses contacts that are none', () => {
    for (const [contacts, path] of [
      [[], 'article.contacts'],
      [[null], 'article.contacts[0]'],
      [[{ friction: -1 }], 'article.contacts[0].friction'],
    ] as const) {
      const given = { ...article, contacts } as unknown as Article;
      expect(issueOf(() => tieDownsRequired({ rules, article: given }))).toMatchObject({ path });
    }
  });

  it('refuses a friction factor that is none', () => {
    expect(issueOf(() => tieDownsRequired({ rules, article: { ...article, friction: Number.NaN } }))).toMatchObject({
      code: 'NOT_FINITE',
      path: 'article.friction',
    });
  });
});

describe('the same plan in other forms', () => {
  const mirrored = (point: Point | undefined): Point | undefined =>
    point && [
      point[0],
      { ...(point[1] as { value: number; unit: 'm' }), value: -(point[1] as { value: number }).value },
      point[2],
    ];
  const mirror = (tieDown: TieDown): TieDown =>
    ({
      ...tieDown,
      anchor: mirrored(tieDown.anchor),
      attachment: mirrored(tieDown.attachment),
      otherAnchor: mirrored(tieDown.otherAnchor),
      otherAttachment: mirrored(tieDown.otherAttachment),
    }) as TieDown;
  const tieDowns = [
    ...across(1, 70),
    direct('slope', '30 kN', { alpha: 35, beta: 80, x: 1, y: 1 }),
    direct('diagonal', '20 kN', { alpha: 25, beta: 40, x: -1, y: -1 }),
    halfLoop('loop', 50, { capacities: { lashingCapacity: '10 kN' } }),
  ];
  const article = load({ centerOfGravity: at(-4, 0.3, 1.4), friction: 0.2 });
  const found = (result: SecurementCheck, id: string) => {
    const { verdict, demand, capacity } = ratioIn(result, id);
    return [
      verdict,
      Number((demand as { value: number }).value.toFixed(6)),
      Number((capacity as { value: number }).value.toFixed(6)),
    ];
  };

  it('mirrored, left and right change places', () => {
    const result = judge(article, tieDowns);
    const other = judge(
      {
        ...article,
        centerOfGravity: mirrored(article.centerOfGravity)!,
        contacts: article.contacts!.map(({ at: point }) => ({ at: mirrored(point)! })),
      },
      tieDowns.map(mirror),
    );
    const swap = { forward: 'forward', rearward: 'rearward', left: 'right', right: 'left' } as const;
    for (const check of ['sliding', 'tilting']) {
      for (const heading of HEADINGS) {
        expect(found(other, `${check}-${swap[heading]}`), `${check} ${heading}`).toEqual(
          found(result, `${check}-${heading}`),
        );
      }
    }
  });

  it('through JSON and without the working: the same verdicts', () => {
    const whole = judge(article, tieDowns);
    const json = checkSecurement({ rules, ...throughJson({ articles: [article], tieDowns }), working: false });
    expect(json.checks).toEqual(whole.checks);
    expect(json.steps).toEqual([]);
    expect(json.sources).toEqual([]);
  });

  it('in pounds-force: the same ratios', () => {
    const si = judge(article, tieDowns);
    const us = judge(article, tieDowns, { units: 'us' });
    for (const [index, check] of si.checks.entries()) {
      if ('utilization' in check) expect((us.checks[index] as RatioCheck).utilization).toBe(check.utilization);
    }
    expect(us.tieDowns[0]?.rating?.unit).toBe('lbf');
  });

  it('says its sources, and what of them is from memory', () => {
    const { sources } = judge(article, tieDowns);
    expect(new Set(sources.map(({ provenance }) => provenance))).toEqual(new Set(['read', 'memory']));
    expect(sources.every(({ document }) => document.startsWith('EN 12195-'))).toBe(true);
  });

  it('tie-downs of an accessory hold the article that carries it', () => {
    const machine = load({ accessories: [{ id: 'bucket' }] });
    const onBucket = lengthwise('50 kN').map((each) => ({ ...each, holds: 'bucket' }) as TieDown);
    expect(judge(machine, onBucket).checks).toEqual(judge(load(), lengthwise('50 kN')).checks);
  });
});
