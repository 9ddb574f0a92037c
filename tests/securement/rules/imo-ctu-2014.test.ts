import {
  type Article,
  type CheckSecurementInput,
  checkSecurement,
  imoCtu_2014 as rules,
  type Surfaces,
  type TieDown,
  tieDownsRequired,
} from 'chain-rigging';
import { ruleSetById } from 'chain-rigging/registry';
import { checkSecurementRequestSchema, readJson } from 'chain-rigging/schemas';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../../quantities/issue-of.js';
import { checkOf, codes, missingIn, throughJson } from '../plans.js';
import { at, block, corners, flat, over, ratioIn, upright } from './layouts.js';

// The block weighs 1000 kg · 9.81 m/s² = 9810 N. Coefficients and factors are those of the code, from memory.
const WEIGHT = 9.81;

const judge = (article: Partial<Article>, tieDowns: readonly TieDown[], more: Partial<CheckSecurementInput> = {}) =>
  checkSecurement({ rules, articles: [block(article)], tieDowns, ...more });

const verdictOf = (id: string, article: Partial<Article>, tieDowns: readonly TieDown[], more = {}) =>
  checkOf(judge(article, tieDowns, more), `${id}/block`).verdict;

describe('sliding with direct tie-downs', () => {
  // forward 0.8 · 9810 = 7848 N; friction 0.75 · 0.4 · 9810 = 2943 N; a flat chain must hold 4905 N
  it.each([
    ['at', '4.905 kN', 'pass'],
    ['at', '4905 N', 'pass'],
    ['at', '490.5 daN', 'pass'],
    ['at', { value: 4.905, unit: 'kN' }, 'pass'],
    ['just below', '4.9049999 kN', 'fail'],
    ['just below', '490.49999 daN', 'fail'],
    ['just above', '4905.0001 N', 'pass'],
    // 4905 N / 4.4482216152605 = 1102.6879 lbf
    ['just below', '1102.6878 lbf', 'fail'],
    ['just above', '1102.688 lbf', 'pass'],
  ] as const)('%s: %s', (_where, load, verdict) => {
    expect(verdictOf('sliding-forward', {}, [flat('rearward', load)])).toBe(verdict);
    expect(checkOf(throughJson(judge({}, [flat('rearward', load)])), 'sliding-forward/block').verdict).toBe(verdict);
  });

  it('reads the mass in every form', () => {
    const tie = [flat('rearward', '4.905 kN')];
    for (const mass of ['1 t', '1000 kg', { value: 1, unit: 't' }] as const) {
      expect(ratioIn(judge({ mass }, tie), 'sliding-forward/block').utilization).toBe(1);
    }
    expect(verdictOf('sliding-forward', { mass: '1000.0001 kg' }, tie)).toBe('fail');
    expect(verdictOf('sliding-forward', { mass: '2204.62 lb' }, tie)).toBe('pass'); // 999.9988 kg
    expect(verdictOf('sliding-forward', { mass: '2204.63 lb' }, tie)).toBe('fail'); // 1000.0033 kg
  });

  it('asks 0.5 to the rear and to the sides', () => {
    // 0.5 · 9810 − 2943 = 1962 N
    for (const [heading, pull] of [
      ['rearward', 'forward'],
      ['left', 'right'],
      ['right', 'left'],
    ] as const) {
      expect(verdictOf(`sliding-${heading}`, {}, [flat(pull, '1.962 kN')])).toBe('pass');
      expect(verdictOf(`sliding-${heading}`, {}, [flat(pull, '1.9619 kN')])).toBe('fail');
    }
  });

  it('counts a tie-down only in the heading that it pulls against', () => {
    const result = judge({}, [flat('rearward', '100 kN')]);
    expect(checkOf(result, 'sliding-forward/block').verdict).toBe('pass');
    expect(checkOf(result, 'sliding-rearward/block').verdict).toBe('fail');
    expect(checkOf(result, 'sliding-left/block').verdict).toBe('fail');
  });

  it('counts two of four corner chains in each heading', () => {
    // α 45, β 45: cos α · cos β = 0.5, sin α = 0.70711; 2 · F · (0.5 + 0.3 · 0.70711) + 2.943 with F = 10 kN
    const result = judge({}, corners(45, 45, '10 kN'));
    for (const heading of ['forward', 'rearward', 'left', 'right']) {
      expect(ratioIn(result, `sliding-${heading}/block`).capacity).toBeCloseTo(20 * (0.5 + 0.212132) + 2.943, 4);
    }
  });

  it('measures α from the deck and β from the heading', () => {
    // α 30, β 10 forward: 2 · 10 · (cos 30 · cos 10 + 0.3 · sin 30) + 2.943; to the side cos 80 stands for cos 10
    const result = judge({}, corners(30, 10, '10 kN'));
    expect(ratioIn(result, 'sliding-forward/block').capacity).toBeCloseTo(20 * (0.852869 + 0.15) + 2.943, 4);
    expect(ratioIn(result, 'sliding-left/block').capacity).toBeCloseTo(20 * (0.150384 + 0.15) + 2.943, 4);
    const step = result.steps.find(({ subject, symbol }) => subject === 'block, forward' && symbol === 'F held');
    const values = new Map(step?.values);
    expect(values.get('rear-left, α')).toMatchObject({ unit: 'deg', value: expect.closeTo(30, 9) });
    expect(values.get('rear-left, β')).toMatchObject({ unit: 'deg', value: expect.closeTo(10, 9) });
    expect([...values.keys()].filter((name) => name.startsWith('front'))).toEqual([]);
  });

  it('counts each run of a loop that comes back to its side', () => {
    const loop = (load: '0.981 kN' | '0.9809 kN'): TieDown => ({
      ...flat('left', load),
      path: 'over-same-side',
      attachment: at(-3, 1, 1),
      anchor: at(-3, 3, 1),
      otherAttachment: at(-5, 1, 1),
      otherAnchor: at(-5, 3, 1),
    });
    // 1962 N in two runs
    expect(verdictOf('sliding-right', {}, [loop('0.981 kN')])).toBe('pass');
    expect(verdictOf('sliding-right', {}, [loop('0.9809 kN')])).toBe('fail');
    expect(verdictOf('sliding-left', {}, [loop('0.981 kN')])).toBe('fail');
  });

  it('takes the least of the parts, anchor points among them', () => {
    const parts = (anchor: string): TieDown => ({
      ...flat('rearward', '1 kN'),
      capacities: undefined as never,
      parts: [
        { id: 'chain', kind: 'chain', size: '10 mm', grade: '8', capacities: { maximumSecuringLoad: '63 kN' } },
        { id: 'deck', kind: 'anchor', at: 'vehicle', capacities: { maximumSecuringLoad: anchor as '1 kN' } },
        { id: 'lug', kind: 'anchor', at: 'cargo', capacities: { maximumSecuringLoad: '63 kN' } },
      ],
    });
    const result = judge({ mass: '5 t' }, [parts('20 kN')]);
    expect(result.tieDowns[0]).toMatchObject({ rating: { value: 20, unit: 'kN' }, weakest: ['deck'], credit: 1 });
    // 5 t: 0.8 · 49.05 = 39.24; 0.3 · 49.05 + 20 = 34.715
    expect(ratioIn(result, 'sliding-forward/block').capacity).toBeCloseTo(34.715, 9);
    expect(ratioIn(result, 'sliding-forward/block').verdict).toBe('fail');
    // 24.525 kN would do, and the chain alone has 63
    expect(verdictOf('sliding-forward', { mass: '5 t' }, [parts('24.525 kN')])).toBe('pass');
  });
});

describe('friction alone', () => {
  // with nothing that pulls, μ · cz · m · g against c · m · g
  it.each([
    [undefined, 'forward', 0.8, 1],
    [undefined, 'rearward', 0.5, 1],
    [undefined, 'left', 0.5, 1],
    ['A', 'forward', 0.3, 0.5],
    ['A', 'rearward', 0.3, 0.5],
    ['A', 'right', 0.5, 1],
    ['B', 'forward', 0.3, 0.3],
    ['B', 'rearward', 0.3, 0.3],
    ['B', 'left', 0.7, 1],
    ['C', 'forward', 0.4, 0.2],
    ['C', 'rearward', 0.4, 0.2],
    ['C', 'right', 0.8, 1],
  ] as const)('sea area %s, %s: c %s, cz %s', (seaArea, heading, c, cz) => {
    const enough = c / cz; // 0.3 / 0.3, 0.4 / 0.2 and so on: whole tenths
    const friction = Number(enough.toFixed(1));
    const more = seaArea === undefined ? {} : { seaArea };
    const found = ratioIn(judge({ friction }, [upright], more), `sliding-${heading}/block`);
    expect(found).toMatchObject({ verdict: 'pass', utilization: 1 });
    expect(found.demand).toBeCloseTo(c * WEIGHT, 12);
    const below = ratioIn(judge({ friction: friction - 0.0001 }, [upright], more), `sliding-${heading}/block`);
    expect(below.verdict).toBe('fail');
    expect(below.capacity).toBeCloseTo((friction - 0.0001) * cz * WEIGHT, 9);
  });

  it('lets less weight press along the ship than across it', () => {
    // area C, μ 0.4, forward: 0.4 − 0.75 · 0.4 · 0.2 = 0.34, 3335.4 N; with the whole weight it would be 0.1, 981 N
    const article = { friction: 0.4 };
    expect(verdictOf('sliding-forward', article, [flat('rearward', '3.3354 kN')], { seaArea: 'C' })).toBe('pass');
    expect(verdictOf('sliding-forward', article, [flat('rearward', '3.3353 kN')], { seaArea: 'C' })).toBe('fail');
  });

  it('is not made worse by a direct tie-down: the whole of μ counts without it', () => {
    // μ 0.5 to the side holds by itself; 0.75 · 0.5 with a slack strap would not
    expect(ratioIn(judge({ friction: 0.5 }, [flat('right', '1 N')]), 'sliding-left/block').utilization).toBe(1);
  });

  it('passes where friction is more than enough: nothing counts below zero', () => {
    expect(ratioIn(judge({ friction: 0.7 }, [upright]), 'sliding-left/block')).toMatchObject({
      verdict: 'pass',
      utilization: expect.closeTo(0.5 / 0.7, 12),
    });
  });
});

describe('tie-downs over the load', () => {
  // to the side, μ 0.3: 0.2 · 9810 = 1962 = 0.3 · 2 · F, F = 3270 N, upright runs
  const article = { friction: 0.3 };
  const side = (tieDown: TieDown) => verdictOf('sliding-left', article, [tieDown]);

  it('count their pretension with the whole of μ', () => {
    expect(side(over('50 kN', { pretension: '3.27 kN' }))).toBe('pass');
    expect(side(over('50 kN', { pretension: '3.2699 kN' }))).toBe('fail');
    expect(side(over('50 kN', { pretension: '327 daN' }))).toBe('pass');
  });

  it('count up to half of the maximum securing load', () => {
    expect(side(over('6.54 kN', { pretension: '6 kN' }))).toBe('pass');
    expect(side(over('6.5399 kN', { pretension: '6 kN' }))).toBe('fail');
    expect(judge(article, [over('6 kN', { pretension: '4 kN' })]).tieDowns[0]).toMatchObject({
      counts: 'pretension',
      rating: { value: 4, unit: 'kN' },
      counted: { value: 3, unit: 'kN' },
      credit: 0.75,
    });
  });

  it('do not count their strength in place of a pretension that is not stated', () => {
    const result = judge(article, [over('50 kN')]);
    expect(missingIn(checkOf(result, 'sliding-left/block'))).toEqual(['PRETENSION_NOT_STATED']);
    expect(result.tieDowns[0]).toMatchObject({ counts: 'pretension', rating: null, counted: null });
    // even at half of 6.53 kN it is too little: no need to know
    expect(side(over('6.53 kN'))).toBe('fail');
    // a capacity that is not known caps nothing and proves nothing
    const unrated = over('1 kN', { pretension: '4 kN', capacities: { lashingCapacity: '50 kN' } });
    expect(missingIn(checkOf(judge(article, [unrated]), 'sliding-left/block'))).toEqual(['CAPACITY_NOT_STATED']);
    expect(side({ ...unrated, pretension: '3.26 kN' })).toBe('fail');
  });

  it('count beside direct ones with 0.75 μ for all friction', () => {
    // μ 0.4: 0.3 · 9810 + 0.3 · 2 · 1000 + 1362 = 4905
    const both = (load: '1.362 kN' | '1.3619 kN') => [over('50 kN', { pretension: '1 kN' }), flat('right', load)];
    expect(verdictOf('sliding-left', {}, both('1.362 kN'))).toBe('pass');
    expect(verdictOf('sliding-left', {}, both('1.3619 kN'))).toBe('fail');
  });
});

describe('friction factors', () => {
  /** What counts: the capacity of the upright block over its weight. */
  function counted(surfaces: Surfaces, friction?: number): number {
    const { friction: _, ...bare } = block();
    const article: Article = { ...bare, surfaces, ...(friction !== undefined && { friction }) };
    const result = checkSecurement({ rules, articles: [article], tieDowns: [upright] });
    return ratioIn(result, 'sliding-forward/block').capacity / WEIGHT;
  }
  const undecided = (surfaces: Surfaces | undefined, tieDowns: readonly TieDown[] = [flat('rearward', '5 kN')]) => {
    const { friction: _, ...bare } = block();
    return checkSecurement({ rules, articles: [{ ...bare, ...(surfaces && { surfaces }) }], tieDowns });
  };

  it('are looked up by the pair, either way round', () => {
    expect(counted({ load: 'steel-crate', deck: 'plywood', condition: 'dry' })).toBeCloseTo(0.45, 12);
    expect(counted({ load: 'plywood', deck: 'steel-crate', condition: 'wet' })).toBeCloseTo(0.45, 12);
    // dry and wet are alike there: the condition need not be known
    expect(counted({ load: 'steel-crate', deck: 'plywood' })).toBeCloseTo(0.45, 12);
    expect(counted({ load: 'unpainted-rough-metal', deck: 'unpainted-rough-metal', condition: 'dry' })).toBeCloseTo(
      0.4,
      12,
    );
  });

  it('are capped at 0.2 with frost, and lower where the pair is lower', () => {
    expect(counted({ load: 'steel-crate', deck: 'plywood', condition: 'frost' })).toBeCloseTo(0.2, 12);
    expect(counted({ load: 'plastic-pallet', deck: 'grooved-aluminum', condition: 'frost' })).toBeCloseTo(0.15, 12);
    expect(counted({ load: 'big-bag', deck: 'wooden-pallet', condition: 'frost' })).toBeCloseTo(0.2, 12);
    expect(counted({ load: 'tracks', deck: 'steel', condition: 'frost' })).toBeCloseTo(0.2, 12);
    expect(counted({ load: 'tracks', deck: 'steel', condition: 'frost' }, 0.6)).toBeCloseTo(0.2, 12);
    expect(counted({ load: 'tracks', deck: 'steel', condition: 'frost' }, 0.1)).toBeCloseTo(0.1, 12);
  });

  it('count 0.3 at most for a pair that is not listed, with a caution', () => {
    // rubber is listed on other material, not tires on a steel deck
    expect(counted({ load: 'rubber', deck: 'steel', condition: 'dry' })).toBeCloseTo(0.3, 12);
    expect(counted({ load: 'constructor', deck: 'plywood' })).toBeCloseTo(0.3, 12);
    expect(codes(undecided({ load: 'rubber', deck: 'steel' }).cautions)).toContain('CAP_ON_PAIR_NOT_LISTED');
  });

  it('take a factor that was measured', () => {
    expect(counted({ load: 'rubber', deck: 'steel', condition: 'dry' }, 0.55)).toBeCloseTo(0.55, 12);
    const contacts = block().contacts?.map((contact, index) => ({ ...contact, friction: index === 2 ? 0.1 : 0.5 }));
    const result = judge(contacts === undefined ? {} : { contacts }, [upright]);
    expect(ratioIn(result, 'sliding-forward/block').capacity).toBeCloseTo(0.1 * WEIGHT, 12);
  });

  it('are not known wet where the table leaves that blank', () => {
    const pair = { load: 'unpainted-rough-metal', deck: 'unpainted-rough-metal' };
    const missing = (surfaces: Surfaces | undefined) =>
      missingIn(checkOf(undecided(surfaces), 'sliding-forward/block'));
    expect(missing({ ...pair, condition: 'wet' })).toEqual(['FRICTION_NOT_IN_TABLE']);
    expect(missing(pair)).toEqual(['SURFACE_CONDITION_NOT_STATED']);
    expect(missing(undefined)).toEqual(['FRICTION_NOT_STATED']);
  });

  it('need not be known where the rest is enough, or where the dry one would not do', () => {
    const pair: Surfaces = { load: 'big-bag', deck: 'wooden-pallet', condition: 'wet' };
    const verdict = (load: '7.848 kN' | '7.84 kN' | '4.9 kN') =>
      checkOf(undecided(pair, [flat('rearward', load)]), 'sliding-forward/block').verdict;
    expect(verdict('7.848 kN')).toBe('pass'); // 0.8 · 9810, without any friction
    expect(verdict('7.84 kN')).toBe('undetermined');
    expect(verdict('4.9 kN')).toBe('fail'); // 2943 + 4900 < 7848 with the dry factor of 0.4
  });

  it('are refused where they are no factor', () => {
    for (const surfaces of [{ load: 1, deck: 'a' }, { load: 'a', deck: 'b', condition: 'damp' }, null]) {
      expect(issueOf(() => judge({ surfaces: surfaces as never }, [upright])).path).toMatch(/articles\[0\]\.surfaces/);
    }
    expect(issueOf(() => tieDownsRequired({ rules, article: { ...block(), friction: -1 } })).code).toBe('NEGATIVE');
  });
});

describe('tipping', () => {
  // 0.5 · 9.81 · d against 9.81 · 1 to the side: it stands by itself up to d = 2 b = 2 m
  const high = (d: number, more: Partial<Article> = {}): Partial<Article> => ({
    centerOfGravity: at(-4, 0, d),
    ...more,
  });

  it('is decided by b / d against c / cz, at 0.5 and not 0.6 to the side', () => {
    expect(ratioIn(judge(high(2), [upright]), 'tipping-left/block')).toMatchObject({ verdict: 'pass', utilization: 1 });
    expect(verdictOf('tipping-left', high(2.001), [upright])).toBe('fail');
    expect(verdictOf('tipping-right', high(1.999), [upright])).toBe('pass');
    // forward 0.8: up to 1.25 m
    expect(verdictOf('tipping-forward', high(1.25), [upright])).toBe('pass');
    expect(verdictOf('tipping-forward', high(1.26), [upright])).toBe('fail');
    // sea area C forward: c 0.4, cz 0.2: up to 0.5 m
    expect(verdictOf('tipping-forward', high(0.5), [upright], { seaArea: 'C' })).toBe('pass');
    expect(verdictOf('tipping-forward', high(0.501), [upright], { seaArea: 'C' })).toBe('fail');
  });

  it('counts direct tie-downs at their levers', () => {
    // d 3: 14.715 − 9.81 = 4.905 kN m; a flat pull 1 m above the edge needs 4.905 kN
    expect(verdictOf('tipping-left', high(3), [flat('right', '4.905 kN')])).toBe('pass');
    expect(verdictOf('tipping-left', high(3), [flat('right', '4.9049 kN')])).toBe('fail');
    expect(verdictOf('tipping-left', high(3), [flat('left', '100 kN')])).toBe('fail');
    // α 45 across from the middle: h 1, s 1, F · (0.70711 + 0.70711), so 3.46836 kN
    const slope = (load: '3.4683 kN' | '3.4684 kN') => flat('right', load, { anchor: at(-4, -1, 0) });
    expect(verdictOf('tipping-left', high(3), [slope('3.4684 kN')])).toBe('pass');
    expect(verdictOf('tipping-left', high(3), [slope('3.4683 kN')])).toBe('fail');
  });

  it('counts the pretension of the far run of one over the load', () => {
    // s is 2 m at the far side and 0 at the near one: 2 · F = 4.905
    expect(verdictOf('tipping-left', high(3), [over('50 kN', { pretension: '2.4525 kN' })])).toBe('pass');
    expect(verdictOf('tipping-left', high(3), [over('50 kN', { pretension: '2.4524 kN' })])).toBe('fail');
  });

  it('is undetermined without center of gravity or contacts, and does not arise below the edge', () => {
    const { contacts: _, ...floating } = block();
    const result = checkSecurement({ rules, articles: [floating], tieDowns: [upright] });
    expect(missingIn(checkOf(result, 'tipping-left/block'))).toEqual(['CONTACTS_NOT_STATED']);
    expect(verdictOf('tipping-left', high(0), [upright])).toBe('not-applicable');
  });

  it('fails where the center of gravity lies outside the contacts', () => {
    expect(ratioIn(judge({ centerOfGravity: at(-4, 1.2, 0.5) }, [upright]), 'tipping-left/block')).toMatchObject({
      verdict: 'fail',
      utilization: null,
    });
  });
});

describe('what is not known', () => {
  it('a tie-down without points may pull any way', () => {
    const { anchor: _a, attachment: _b, ...bare } = flat('rearward', '20 kN');
    const result = judge({}, [bare]);
    expect(missingIn(checkOf(result, 'sliding-forward/block'))).toEqual(['POINTS_NOT_STATED']);
    expect(result.verdict).toBe('undetermined');
    // at its best it holds F · sqrt(1 + 0.3²) = 1.04403 · F: 4905 N take 4.698 kN
    const best = (load: '4.69 kN' | '4.7 kN') => ({ ...bare, capacities: { maximumSecuringLoad: load } });
    expect(verdictOf('sliding-forward', {}, [best('4.69 kN')])).toBe('fail');
    expect(verdictOf('sliding-forward', {}, [best('4.7 kN')])).toBe('undetermined');
    expect(verdictOf('sliding-left', { friction: 0.5 }, [bare])).toBe('pass');
  });

  it('a capacity of another system is none', () => {
    for (const capacities of [
      { workingLoadLimit: '50 kN' },
      { lashingCapacity: '50 kN' },
      { ratedStrength: '50 kN' },
    ] as const) {
      const result = judge({}, [flat('rearward', '1 kN', { capacities })]);
      expect(missingIn(checkOf(result, 'sliding-forward/block'))).toEqual(['CAPACITY_NOT_STATED']);
      expect(result.tieDowns[0]?.rating).toBeNull();
    }
    const binder: TieDown = {
      ...flat('rearward', '1 kN'),
      capacities: undefined as never,
      parts: [
        { id: 'chain', kind: 'chain', size: '3/8', grade: 70 },
        { id: 'binder', kind: 'binder', markedWll: '5400 lb' },
        { id: 'ring', kind: 'anchor', at: 'vehicle', capacities: { maximumSecuringLoad: '4 kN' } },
      ],
    };
    const found = checkOf(judge({}, [binder]), 'sliding-forward/block');
    expect(found.verdict).toBe('fail'); // the ring alone keeps it below 4905 N
    const strong = { ...binder, parts: binder.parts?.slice(0, 2) } as TieDown;
    expect(missingIn(checkOf(judge({}, [strong]), 'sliding-forward/block'))).toEqual([
      'NOT_IN_TABLE',
      'OTHER_CAPACITY_SYSTEM',
      'ANCHOR_NOT_LISTED',
      'ANCHOR_NOT_LISTED',
    ]);
  });

  it('damage counts zero, whatever else is unknown', () => {
    const worn: TieDown = {
      ...flat('rearward', '1 kN'),
      capacities: undefined as never,
      parts: [{ id: 'chain', kind: 'chain', size: '10 mm', condition: 'damaged' }],
    };
    const result = judge({}, [worn]);
    expect(checkOf(result, 'sliding-forward/block').verdict).toBe('fail');
    expect(codes(result.cautions)).toContain('DAMAGED_COUNTS_ZERO');
    expect(result.tieDowns[0]).toMatchObject({ rating: { value: 0, unit: 'kN' }, weakest: ['chain'] });
  });

  it('a load stated in tonnes crosses with standard gravity, not with 10', () => {
    // 0.5 t is 4903.3 N, short of 4905; 0.5002 t is 4905.3 N
    expect(verdictOf('sliding-forward', {}, [flat('rearward', '0.5 t')])).toBe('fail');
    const result = judge({}, [flat('rearward', '0.5002 t')]);
    expect(checkOf(result, 'sliding-forward/block').verdict).toBe('pass');
    expect(result.steps).toContainEqual(
      expect.objectContaining({ symbol: 'MSL', expression: 'm · g', result: expect.objectContaining({ unit: 'kN' }) }),
    );
  });

  it('what blocks the load forward may be strong enough or not', () => {
    for (const blocked of [{ blockedForward: true }, { headboard: 'partial' }, { headboard: 'adequate' }] as const) {
      const result = judge(blocked, [upright]);
      expect(missingIn(checkOf(result, 'sliding-forward/block'))).toEqual(['BLOCKING_STRENGTH_NOT_STATED']);
      expect(checkOf(result, 'sliding-rearward/block').verdict).toBe('fail');
      expect(verdictOf('sliding-forward', blocked, [flat('rearward', '4.905 kN')])).toBe('pass');
    }
    expect(verdictOf('sliding-forward', { headboard: 'none' }, [upright])).toBe('fail');
  });
});

describe('the whole result', () => {
  it('is the same without its working', () => {
    const plan = { rules, articles: [block()], tieDowns: corners(40, 40, '5 kN'), seaArea: 'B' } as const;
    const silent = checkSecurement({ ...plan, working: false });
    const full = checkSecurement(plan);
    expect(silent.checks).toEqual(full.checks);
    expect(silent.tieDowns).toEqual(full.tieDowns);
    expect([silent.steps, silent.sources]).toEqual([[], []]);
    expect(full.inputs).toMatchObject({ seaArea: 'B' });
    expect(codes(full.assumptions)).toContain('SEA_AREA');
    expect(full.assumptions.find(({ code }) => code === 'SEA_AREA')?.text).toContain('over 8 m up to 12 m');
  });

  it('keeps what is from memory marked so', () => {
    const { sources } = judge({}, [flat('rearward', '5 kN')]);
    expect(sources.filter(({ clause }) => clause === 'chapter 5').map(({ provenance }) => provenance)).toEqual([
      'memory',
    ]);
    expect(sources.some(({ provenance }) => provenance === 'read')).toBe(true); // 0.75
  });

  it('shows other units without another answer', () => {
    const si = judge({}, corners(40, 40, '5 kN'));
    const us = judge({}, corners(40, 40, '5 kN'), { units: 'us' });
    expect(us.checks.map(({ verdict }) => verdict)).toEqual(si.checks.map(({ verdict }) => verdict));
    // 1 kN = 224.8089 lbf, 1 kN m = 737.5621 lbf ft
    expect(ratioIn(us, 'sliding-left/block').capacity / ratioIn(si, 'sliding-left/block').capacity).toBeCloseTo(
      224.8089,
      3,
    );
    expect(ratioIn(us, 'tipping-left/block').capacity / ratioIn(si, 'tipping-left/block').capacity).toBeCloseTo(
      737.5621,
      3,
    );
  });

  it('comes from JSON with its sea area', () => {
    const body = readJson(checkSecurementRequestSchema, {
      rules: 'imo-ctu-2014',
      ...throughJson({ seaArea: 'A', articles: [block()], tieDowns: [flat('rearward', '5 kN')] }),
    });
    expect(checkSecurement({ ...body, rules: ruleSetById(body.rules) }).rules).toBe('imo-ctu-2014');
    expect(issueOf(() => judge({}, [upright], { seaArea: 'D' as 'A' })).path).toBe('seaArea');
  });

  it('warns of tie-downs that do not share alike', () => {
    // of one length and direction: 8000 over 4000 is 2 to 1, over 3999 more
    const one = flat('rearward', '10 kN', { axialStiffness: '8000 kN' });
    const same = { ...one, id: 'other', axialStiffness: '4000 kN' } as const;
    const softer = { ...same, axialStiffness: '3999 kN' } as const;
    expect(codes(judge({}, [one, same]).cautions)).not.toContain('UNEQUAL_STIFFNESS');
    expect(codes(judge({}, [one, softer]).cautions)).toContain('UNEQUAL_STIFFNESS');
    const of = (id: string, kind: 'chain' | 'webbing') =>
      ({
        ...flat('left', '1 kN'),
        id,
        capacities: undefined,
        parts: [{ id: 'p', kind, ...(kind === 'chain' && { size: '3/8' }) }],
      }) as never;
    expect(codes(judge({}, [of('a', 'chain'), of('b', 'webbing')]).cautions)).toContain('CHAIN_AND_WEBBING');
    expect(codes(judge({}, [of('a', 'chain'), of('b', 'chain')]).cautions)).not.toContain('CHAIN_AND_WEBBING');
  });
});

describe('tieDownsRequired', () => {
  it('states the force of each direction by road after friction, and no number', () => {
    // 0.8 − 0.3 = 0.5 and 0.5 − 0.3 = 0.2 of 9.81 kN
    const { perDirection, minimumCount, requiredAggregate } = tieDownsRequired({ rules, article: block() });
    expect(perDirection.map(({ direction, againstMaximumSecuringLoad: force }) => [direction, force?.value])).toEqual([
      ['forward', expect.closeTo(4.905, 12)],
      ['rearward', expect.closeTo(1.962, 12)],
      ['lateral', expect.closeTo(1.962, 12)],
    ]);
    expect([minimumCount, requiredAggregate]).toEqual([0, null]);
  });

  it('counts no friction that is not known, and none beyond what is asked', () => {
    const { friction: _, ...bare } = block();
    const required = tieDownsRequired({ rules, article: bare });
    expect(required.perDirection[0]?.againstMaximumSecuringLoad?.value).toBeCloseTo(7.848, 12);
    expect(codes(required.assumptions)).toEqual(
      expect.arrayContaining(['FRICTION_NOT_STATED', 'LEAST_FRICTION_COUNTED']),
    );
    const gripping = tieDownsRequired({ rules, article: block({ friction: 1 }) });
    expect(gripping.perDirection[2]?.againstMaximumSecuringLoad?.value).toBe(0);
  });
});

describe('any plan', () => {
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const tie = fc.record({
    load: number(0.1, 40),
    from: fc.tuple(number(-5, -3), number(-1, 1), number(0.2, 1.5)),
    to: fc.tuple(number(-8, -0.5), number(-2, 2), number(-0.2, 0.1)),
  });
  const direct = (
    { load, from, to }: typeof tie extends fc.Arbitrary<infer T> ? T : never,
    id: string,
    mirror = 1,
  ): TieDown => ({
    id,
    holds: 'block',
    path: 'vehicle-to-cargo',
    capacities: { maximumSecuringLoad: { value: load, unit: 'kN' } },
    attachment: at(from[0], mirror * from[1], from[2]),
    anchor: at(to[0], mirror * to[1], to[2]),
  });
  const plans = fc.record({
    friction: number(0, 0.8),
    ties: fc.array(tie, { minLength: 1, maxLength: 5 }),
    seaArea: fc.constantFrom('A', 'B', 'C', undefined),
  });

  it('mirrored gives left for right', () => {
    fc.assert(
      fc.property(plans, ({ friction, ties, seaArea }) => {
        const more = seaArea === undefined ? {} : ({ seaArea } as const);
        const [one, other] = [1, -1].map((mirror) =>
          judge(
            { friction },
            ties.map((each, index) => direct(each, `t${index}`, mirror)),
            more,
          ),
        );
        for (const check of ['sliding', 'tipping']) {
          for (const [heading, mirrored] of [
            ['left', 'right'],
            ['right', 'left'],
            ['forward', 'forward'],
          ]) {
            const found = ratioIn(one!, `${check}-${heading}/block`);
            const twin = ratioIn(other!, `${check}-${mirrored}/block`);
            expect(twin.capacity).toBeCloseTo(found.capacity, 9);
            expect(twin.verdict).toBe(found.verdict);
          }
        }
      }),
      { numRuns: 100 },
    );
  });

  it('holds as much or more with another tie-down that presses the load down', () => {
    fc.assert(
      fc.property(plans, tie, ({ friction, ties, seaArea }, another) => {
        const more = seaArea === undefined ? {} : ({ seaArea } as const);
        const own = ties.map((each, index) => direct(each, `t${index}`));
        const before = judge({ friction }, own, more);
        const after = judge({ friction }, [...own, direct(another, 'another')], more);
        for (const heading of ['forward', 'rearward', 'left', 'right']) {
          const id = `sliding-${heading}/block`;
          expect(ratioIn(after, id).capacity).toBeGreaterThanOrEqual(ratioIn(before, id).capacity - 1e-9);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('agrees with the balance written with sines and cosines of its angles', () => {
    fc.assert(
      fc.property(plans, ({ friction, ties }) => {
        const result = judge(
          { friction },
          ties.map((each, index) => direct(each, `t${index}`)),
        );
        let pulled = 0;
        for (const { load, from, to } of ties) {
          const [x, y, z] = [to[0] - from[0], to[1] - from[1], from[2] - to[2]];
          const alpha = Math.atan2(z, Math.hypot(x, y));
          const beta = Math.atan2(Math.abs(y), Math.abs(x));
          if (x < 0) pulled += load * (Math.cos(alpha) * Math.cos(beta) + 0.75 * friction * Math.sin(alpha));
        }
        const expected = Math.max(friction * WEIGHT, 0.75 * friction * WEIGHT + pulled);
        expect(ratioIn(result, 'sliding-forward/block').capacity).toBeCloseTo(expected, 9);
      }),
      { numRuns: 100 },
    );
  });
});
