// New Zealand: rigid loads. Every expected figure is worked by hand beside it.
import {
  type Article,
  checkSecurement,
  nzTlc_2017,
  type Part,
  type QuantityInput,
  type SecurementCheck,
  type TieDown,
  tieDownsRequired,
} from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../../quantities/issue-of.js';
import { checkOf, codes, missingIn, throughJson } from '../plans.js';
import { flat, type Load, mirrored, upright } from './runs.js';

function load(more: Partial<Article> = {}): Article {
  return { id: 'load', kind: 'general', mass: '1000 kg', length: '4 m', ...more };
}

function check(article: Partial<Article>, tieDowns: readonly TieDown[]): SecurementCheck {
  return checkSecurement({ rules: nzTlc_2017, articles: [load(article)], tieDowns });
}

/** Two tie-downs without any points: directions are not looked at. */
const two = (ratedStrength: Load): TieDown[] =>
  ['front', 'rear'].map((id) => ({ id, holds: 'load', path: 'vehicle-to-cargo', capacities: { ratedStrength } }));

describe('sum(rated strength) ≥ k · W', () => {
  // two tie-downs of k · 1000 / 2 each
  const multiples: [headboard: Article['headboard'], k: number][] = [
    [undefined, 2],
    ['none', 2],
    ['partial', 1.5],
    ['adequate', 1],
  ];
  const forms: [form: string, mass: QuantityInput<'mass'>, of: (thousandth: number) => Load][] = [
    ['pounds', '1000 lb', (n) => `${n} lb`],
    ['metric text', '1000 kg', (n) => `${n} kg`],
    ['JSON', { value: 1, unit: 't' }, (n) => ({ value: n / 1000, unit: 't' })],
    ['force', '1000 kg', (n) => `${n} kgf`],
  ];
  for (const [form, mass, of] of forms) {
    test.each(multiples)(`${form}, headboard %s: at, just below, just above`, (headboard, k) => {
      const judged = (each: number) => check({ mass, ...(headboard && { headboard }) }, two(of(each)));
      const at = judged(k * 500);
      expect(at.verdict).toBe('pass');
      expect(checkOf(at, 'rated-strength/load')).toMatchObject({ verdict: 'pass', utilization: 1 });
      expect(judged(k * 500 - 0.01).verdict).toBe('fail');
      expect(judged(k * 500 + 0.01).verdict).toBe('pass');
    });
  }

  it('says what it asked and found, in kilograms', () => {
    const [article] = check({}, two('1500 kg')).articles;
    expect(article).toMatchObject({
      requiredAggregate: { value: 2000, unit: 'kg' },
      aggregate: { value: 3000, unit: 'kg' },
      rule: 'rigid loads',
    });
  });

  it('crosses from force to mass by standard gravity, as a step', () => {
    // 9806.65 N weigh 1000 kg
    const { steps, tieDowns } = check({}, two('9806.65 N'));
    expect(steps.find(({ expression }) => expression === 'F / g')?.result).toMatchObject({ value: 1000, unit: 'kg' });
    expect(tieDowns[0]).toMatchObject({ counts: 'ratedStrength', credit: 1, counted: { value: 1000, unit: 'kg' } });
  });

  it('looks at no angle, no direction, no friction', () => {
    const ratio = (tieDowns: readonly TieDown[]) => checkOf(check({ friction: 0.9 }, tieDowns), 'rated-strength/load');
    const pulling = ['forward', 'rearward'].map((id) => flat('forward', { ratedStrength: '1 t' }, { id }));
    const over = ['front', 'rear'].map((id) => upright(id, '20 kN', { capacities: { ratedStrength: '1 t' } }));
    expect(ratio(pulling)).toEqual(ratio(two('1 t')));
    expect(ratio(over)).toEqual(ratio(two('1 t')));
    expect(codes(check({}, two('1 t')).cautions)).toContain('PLAIN_SUM');
  });
});

describe('what stands in front', () => {
  it('is no adequate headboard because it blocks', () => {
    const judged = (each: Load) => check({ blockedForward: true }, two(each));
    expect(judged('1000 kg').verdict).toBe('pass'); // 2 · W without any headboard
    const open = judged('999 kg');
    expect(open.verdict).toBe('undetermined');
    expect(missingIn(checkOf(open, 'rated-strength/load'))).toEqual(['HEADBOARD_NOT_STATED']);
    expect(judged('500 kg').verdict).toBe('undetermined'); // 1 · W, were it adequate
    expect(judged('499.99 kg').verdict).toBe('fail'); // even then not enough
  });

  it('stated, stands by itself', () => {
    expect(check({ headboard: 'adequate' }, two('500 kg')).verdict).toBe('pass');
    expect(check({ headboard: 'none', blockedForward: true }, two('999 kg')).verdict).toBe('fail');
    expect(issueOf(() => check({ headboard: 'tall' as 'none' }, two('1 t')))).toMatchObject({
      code: 'UNKNOWN_VALUE',
      path: 'articles[0].headboard',
    });
  });
});

describe('rated strength', () => {
  it('is never another capacity: a lashing capacity is half of it for chain', () => {
    for (const capacities of [
      { lashingCapacity: '10 t' },
      { workingLoadLimit: '10 t' },
      { maximumSecuringLoad: '10 t' },
    ] as const) {
      const tieDowns = two('1 t').map((each) => ({ ...each, capacities }) as TieDown);
      const result = check({}, tieDowns);
      expect(missingIn(checkOf(result, 'rated-strength/load'))).toEqual(['CAPACITY_NOT_STATED', 'CAPACITY_NOT_STATED']);
    }
  });

  it('of a tie-down is that of its weakest part; no table stands in for a mark', () => {
    const parts = (chain: Part): Part[] => [
      chain,
      { id: 'ring', kind: 'anchor', at: 'vehicle', capacities: { ratedStrength: '1.5 t' } },
      { id: 'lug', kind: 'anchor', at: 'cargo', capacities: { ratedStrength: '9 t' } },
    ];
    const of = (chain: Part): TieDown => ({
      id: 'chain',
      holds: 'load',
      path: 'vehicle-to-cargo',
      parts: parts(chain),
    });
    const marked = check({}, [
      of({ id: 'links', kind: 'chain', size: '8 mm', grade: 70, capacities: { ratedStrength: '7 t' } }),
    ]);
    expect(marked.tieDowns[0]).toMatchObject({ rating: { value: 1500, unit: 'kg' }, weakest: ['ring'] });
    expect(marked.verdict).toBe('fail'); // 1.5 t against 2 t
    const unmarked: Part = { id: 'links', kind: 'chain', size: '8 mm', grade: 70 };
    // at most 1.5 t, the ring: too little for 2 t whatever the chain is
    expect(check({}, [of(unmarked)]).verdict).toBe('fail');
    expect(check({ mass: '700 kg' }, [of(unmarked)]).verdict).toBe('undetermined'); // 1.4 t
    expect(check({}, [of(unmarked), ...two('1 t')]).verdict).toBe('pass'); // enough without it
  });

  it('of a breaking force is said: all of it for chain, half for webbing', () => {
    const said = check({}, two('1 t')).assumptions.find(({ code }) => code === 'RATED_NOT_BREAKING');
    expect(said?.params).toEqual({ chain: 1, webbing: 0.5 });
  });

  it('of a damaged part is zero', () => {
    const damaged: TieDown = {
      id: 'worn',
      holds: 'load',
      path: 'vehicle-to-cargo',
      parts: [{ id: 'strap', kind: 'webbing', condition: 'damaged', capacities: { ratedStrength: '9 t' } }],
    };
    const result = check({}, [damaged]);
    expect(result.articles[0]).toMatchObject({ count: 0, aggregate: { value: 0 } });
    expect(result.verdict).toBe('fail');
  });

  it('of a tie-down on an accessory counts for no article', () => {
    const tieDowns = two('2 t').map((each) => ({ ...each, holds: 'bucket' }));
    const result = check({ accessories: [{ id: 'bucket' }] }, tieDowns);
    expect(result.verdict).toBe('fail');
    expect(result.tieDowns[0]).toMatchObject({ credit: 0, counted: { value: 0 } });
  });
});

describe('the same plan', () => {
  const plan = {
    articles: [load()],
    tieDowns: [flat('left', { ratedStrength: '3 t' }), flat('right', { ratedStrength: '1 t' })],
  };
  const ratio = (more: object) => {
    const found = checkOf(checkSecurement({ rules: nzTlc_2017, ...plan, ...more }), 'rated-strength/load');
    return 'utilization' in found ? found.utilization : null;
  };
  it('in a mirror, through JSON and in pounds is judged alike', () => {
    expect(ratio({})).toBe(0.5);
    expect(ratio(mirrored(plan))).toBe(0.5);
    expect(ratio(throughJson(plan))).toBe(0.5);
    expect(ratio({ units: 'us' })).toBeCloseTo(0.5, 12);
    const quick = checkSecurement({ rules: nzTlc_2017, ...plan, working: false });
    expect([quick.steps, quick.sources, quick.assumptions]).toEqual([[], [], []]);
  });

  it('of a machine says that its section was not read', () => {
    const cautions = (kind: Article['kind']) => codes(check({ kind }, two('1 t')).cautions);
    expect(cautions('machinery')).toContain('CONSTRUCTION_EQUIPMENT');
    expect(cautions('general')).not.toContain('CONSTRUCTION_EQUIPMENT');
  });
});

test('tieDownsRequired states the total, with the greatest multiple that may apply', () => {
  const required = (more: Partial<Article>) =>
    tieDownsRequired({ rules: nzTlc_2017, article: load(more) }).requiredAggregate?.value;
  expect([required({}), required({ headboard: 'partial' }), required({ headboard: 'adequate' })]).toEqual([
    2000, 1500, 1000,
  ]);
  expect(required({ blockedForward: true })).toBe(2000);
});
