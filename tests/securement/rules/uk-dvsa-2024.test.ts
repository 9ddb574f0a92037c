// United Kingdom: the guidance of December 2024. Every expected figure is worked by hand beside it.
import {
  type Article,
  checkSecurement,
  type Part,
  type QuantityInput,
  type SecurementCheck,
  type TieDown,
  tieDownsRequired,
  ukDvsa_2024,
} from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { checkOf, codes, missingIn, throughJson } from '../plans.js';
import { flat, type Heading, LENGTHS, type Load, mirrored, sloped, upright } from './runs.js';

const HEADINGS: readonly Heading[] = ['forward', 'rearward', 'left', 'right'];

function load(more: Partial<Article> = {}): Article {
  return { id: 'load', kind: 'general', mass: '1000 kg', length: '4 m', ...more };
}

function check(article: Partial<Article>, tieDowns: readonly TieDown[]): SecurementCheck {
  return checkSecurement({ rules: ukDvsa_2024, articles: [load(article)], tieDowns });
}

const verdictOf = (result: SecurementCheck, id: string) => checkOf(result, `${id}/load`).verdict;
const LC = (lashingCapacity: Load) => ({ lashingCapacity });
const four = HEADINGS.map((heading) => flat(heading, LC('100 kN')));
/** The four with others in the place of those of the same id. */
const with4 = (...others: readonly TieDown[]) => [
  ...four.filter(({ id }) => !others.some((other) => other.id === id)),
  ...others,
];

describe('sum(LC · share) ≥ a · W', () => {
  const A = { forward: 1, rearward: 0.5, left: 0.5, right: 0.5 };
  const forms: [form: keyof typeof LENGTHS, mass: QuantityInput<'mass'>, of: (thousandth: number) => Load][] = [
    ['inches', '1000 lb', (n) => `${n} lb`],
    ['metric text', '1000 kg', (n) => `${n} kg`],
    ['JSON', { value: 1, unit: 't' }, (n) => ({ value: n / 1000, unit: 't' })],
  ];
  for (const [form, mass, of] of forms) {
    test.each(HEADINGS)(`${form}, %s: at, just below, just above`, (heading) => {
      const at = A[heading] * 1000;
      const judged = (thousandth: number) =>
        check({ mass }, with4(flat(heading, LC(of(thousandth)), {}, LENGTHS[form])));
      expect(checkOf(judged(at), `${heading}/load`)).toMatchObject({ verdict: 'pass', utilization: 1 });
      expect(judged(at).verdict).toBe('pass');
      expect(verdictOf(judged(at - 0.01), heading)).toBe('fail');
      expect(judged(at - 0.01)).toMatchObject({ verdict: 'fail', governing: `${heading}/load` });
      expect(verdictOf(judged(at + 0.01), heading)).toBe('pass');
    });
  }

  it('counts the share that holds back: 0.8 of a 3-4-5', () => {
    // 1000 / 0.8 = 1250
    const judged = (limit: Load) => verdictOf(check({}, with4(sloped('forward', LC(limit)))), 'forward');
    expect([judged('1250 kg'), judged('1249.99 kg'), judged('1250.01 kg')]).toEqual(['pass', 'fail', 'pass']);
  });

  it('reads tonnes as mass: 6 t is 58.84 kN', () => {
    // 6100 kg weigh 59.82 kN: 60 kN holds them, 6 t does not
    expect(check({ mass: '6100 kg' }, with4(flat('forward', LC('60 kN')))).verdict).toBe('pass');
    expect(check({ mass: '6100 kg' }, with4(flat('forward', LC('6 t')))).verdict).toBe('fail');
  });

  it('credits no friction', () => {
    expect(verdictOf(check({ friction: 0.9 }, with4(flat('forward', LC('999 kg')))), 'forward')).toBe('fail');
    expect(check({ friction: 0.9 }, four).sources).toContainEqual(
      expect.objectContaining({ clause: 'friction alone', provenance: 'memory' }),
    );
  });

  it('leaves open what tie-downs over the load hold, where one is needed', () => {
    const strap = upright('strap', '20 kN');
    expect(check({}, [...four, strap]).verdict).toBe('pass');
    const result = check({ friction: 0.9 }, [...four.slice(1), strap]);
    expect(missingIn(checkOf(result, 'forward/load'))).toEqual(['OVER_THE_LOAD']);
    expect(result.verdict).toBe('undetermined');
    expect(result.tieDowns.find(({ id }) => id === 'strap')).toMatchObject({ credit: 0, counted: { value: 0 } });
  });

  it('leaves open what blocks it, where that is needed', () => {
    const result = check({ blockedForward: true }, four.slice(1));
    expect(missingIn(checkOf(result, 'forward/load'))).toEqual(['BLOCKING_NOT_RATED']);
    expect(result.verdict).toBe('undetermined');
    expect(check({ blockedForward: true }, four).verdict).toBe('pass');
    expect(verdictOf(check({ blockedForward: true }, four.slice(0, 1)), 'rearward')).toBe('fail'); // forward alone
    expect(check({}, four.slice(1)).verdict).toBe('fail');
  });
});

describe('the rating', () => {
  it('is the lashing capacity and no other', () => {
    for (const capacities of [
      { workingLoadLimit: '100 kN' },
      { ratedStrength: '100 kN' },
      { maximumSecuringLoad: '100 kN' },
    ] as const) {
      const result = check({}, with4(flat('forward', capacities)));
      expect(missingIn(checkOf(result, 'forward/load'))).toEqual(['CAPACITY_NOT_STATED']);
    }
  });

  it('is marked: no table stands in for it; the weakest part counts', () => {
    const chain = (capacities?: { lashingCapacity: Load }): TieDown =>
      ({
        ...flat('forward', {}),
        capacities: undefined,
        parts: [
          { id: 'links', kind: 'chain', size: '8 mm', grade: '8', ...(capacities && { capacities }) },
          { id: 'ring', kind: 'anchor', at: 'vehicle', capacities: LC('20 kN') },
          { id: 'lug', kind: 'anchor', at: 'cargo', capacities: LC('50 kN') },
        ],
      }) as TieDown;
    const result = check({}, with4(chain(LC('40 kN'))));
    expect(result.verdict).toBe('pass');
    expect(result.tieDowns.find(({ id }) => id === 'forward')?.weakest).toEqual(['ring']);
    expect(missingIn(checkOf(check({}, with4(chain())), 'forward/load'))).toEqual(['NOT_IN_TABLE']);
    // the ring alone says that 20 kN is the most: 2100 kg weigh 20.59 kN
    expect(verdictOf(check({ mass: '2100 kg' }, with4(chain())), 'forward')).toBe('fail');
  });
});

describe('a missing point', () => {
  const bare: TieDown = { id: 'forward', holds: 'load', path: 'vehicle-to-cargo', capacities: LC('100 kN') };
  it('leaves force and anchorage open', () => {
    const result = check({}, with4(bare));
    expect(missingIn(checkOf(result, 'forward/load'))).toEqual(['POINTS_NOT_STATED']);
    expect(missingIn(checkOf(result, 'anchorages/tie-downs'))).toEqual(['ANCHORAGES_NOT_STATED']);
  });
});

describe('one lashing per anchorage', () => {
  const anchorages = (...tieDowns: readonly TieDown[]) => checkOf(check({}, tieDowns), 'anchorages/tie-downs');
  const at = (id: string, anchor: TieDown['anchor'], more: Partial<TieDown> = {}) =>
    flat('forward', LC('100 kN'), { id, ...(anchor && { anchor }), ...more } as object);

  it('fails where two are fixed to one point, however it is written', () => {
    const one = at('one', ['-12 ft', '4 ft', '0 in']);
    expect(anchorages(one, at('two', ['-144 in', '48 in', '0 m'])).verdict).toBe('fail');
    expect(anchorages(one, at('two', [{ value: -3.6576, unit: 'm' }, '1.2192 m', '0 mm'])).verdict).toBe('fail');
    expect(anchorages(one, at('two', ['-144 in', '48.001 in', '0 m'])).verdict).toBe('pass');
  });

  it('looks at both ends of one that runs over', () => {
    const strap = upright('strap', '5 kN'); // fixed at 1 m left and right of −10 m
    expect(anchorages(strap, at('chain', ['-10 m', '-1 m', '0 m'])).verdict).toBe('fail');
    expect(anchorages(strap, at('chain', ['-10 m', '-1.001 m', '0 m'])).verdict).toBe('pass');
  });

  it('fails on one pair, whatever else is not stated', () => {
    const bare: TieDown = { id: 'bare', holds: 'load', path: 'vehicle-to-cargo', capacities: LC('1 kN') };
    const point = ['-12 m', '1 m', '0 m'] as const;
    expect(anchorages(at('one', point), at('two', point), bare).verdict).toBe('fail');
    expect(anchorages(at('one', point), bare).verdict).toBe('undetermined');
    expect(anchorages(bare).verdict).toBe('pass'); // one alone shares with nobody
  });

  it('is a requirement: it decides', () => {
    const doubled = flat('forward', LC('100 kN'), { id: 'again' });
    expect(check({}, [...four, doubled])).toMatchObject({ verdict: 'fail', governing: 'anchorages/tie-downs' });
  });
});

describe('advice', () => {
  const of = (heading: Heading, kind: 'chain' | 'webbing'): TieDown => {
    const part = { id: kind, kind, size: '8 mm', capacities: LC('100 kN') } as Part;
    const anchors = (['vehicle', 'cargo'] as const).map(
      (at): Part => ({ id: at, kind: 'anchor', at, capacities: LC('100 kN') }),
    );
    return { ...flat(heading, {}), capacities: undefined, parts: [part, ...anchors] } as TieDown;
  };
  it('straps and chains together fail as practice and decide nothing', () => {
    const mixed = check({}, [of('forward', 'chain'), ...HEADINGS.slice(1).map((heading) => of(heading, 'webbing'))]);
    expect(mixed.verdict).toBe('pass');
    expect(checkOf(mixed, 'practice/no-mixing/load')).toMatchObject({ verdict: 'fail', weight: 'practice' });
    const alike = check(
      {},
      HEADINGS.map((heading) => of(heading, 'chain')),
    );
    expect(checkOf(alike, 'practice/no-mixing/load').verdict).toBe('pass');
    expect(checkOf(check({}, four), 'practice/no-mixing/load').verdict).toBe('undetermined');
  });

  it('cautions about plant on light vehicles, for machines alone', () => {
    const cautions = (kind: Article['kind']) => codes(check({ kind }, four).cautions);
    expect(cautions('machinery')).toContain('HEAVY_PLANT_ON_LIGHT_VEHICLE');
    expect(cautions('general')).not.toContain('HEAVY_PLANT_ON_LIGHT_VEHICLE');
  });
});

describe('the same plan', () => {
  const plan = {
    articles: [load()],
    tieDowns: [
      flat('forward', LC('9 kN')),
      flat('rearward', LC('5 kN')),
      sloped('left', LC('3 kN')),
      flat('right', LC('6 kN')),
    ],
  };
  const ratios = (more: object = {}) => {
    const { checks } = checkSecurement({ rules: ukDvsa_2024, ...plan, ...more });
    return Object.fromEntries(checks.map((each) => [each.id, 'utilization' in each ? each.utilization : each.verdict]));
  };
  it('in a mirror swaps left and right', () => {
    const { 'left/load': left, 'right/load': right, ...rest } = ratios();
    expect(left).not.toEqual(right);
    expect(ratios(mirrored(plan))).toMatchObject({ ...rest, 'left/load': right, 'right/load': left });
  });
  it('through JSON and without its working is judged alike', () => {
    expect(ratios(throughJson(plan))).toEqual(ratios());
    expect(ratios({ working: false })).toEqual(ratios());
  });
});

test('tieDownsRequired states a · W each way', () => {
  const newtons = (more: Partial<Article>) =>
    tieDownsRequired({ rules: ukDvsa_2024, article: load(more) }).perDirection.map(
      ({ direction, againstLashingCapacity }) => [direction, (againstLashingCapacity?.value ?? 0) * 1000], // shown in kN
    );
  // 1000 · 9.80665, and half of it; blocking shares in the first
  const each = [
    ['forward', 9806.65],
    ['rearward', 4903.325],
    ['lateral', 4903.325],
  ];
  expect(newtons({})).toEqual(each);
  expect(newtons({ blockedForward: true })).toEqual(each);
});
