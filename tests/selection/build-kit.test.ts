import { describe, expect, it } from 'vitest';
import {
  buildKit,
  caNsc10_2013,
  checkItems,
  checkSecurement,
  euEn12195_1_2010,
  explain,
  inWords,
  type KitInput,
  type KitItem,
  us49cfr393_102_2024,
  us49cfr393_2024,
  type WantedTieDown,
} from '../../src/index.js';
import { issueOf } from '../quantities/issue-of.js';

// An invented catalog. Ratings of unmarked chain: 49 CFR 393.108, 1/4 in grade 70 3,150 lb, 5/16 4,700 lb, 3/8 6,600 lb.
const chain = (size: '1/4' | '5/16' | '3/8', price: number, mass: number, more: Partial<KitItem> = {}): KitItem => ({
  id: `chain ${size}`,
  kind: 'chain',
  size,
  grade: 70,
  length: '20 ft',
  mass: { value: mass, unit: 'lb' },
  price,
  ...more,
});
const hook = (size: '1/4' | '5/16' | '3/8', price: number, mass: number): KitItem => ({
  id: `hook ${size}`,
  kind: 'grab-hook',
  size,
  grade: 70,
  mass: { value: mass, unit: 'lb' },
  price,
});
const binder = (id: string, wll: number, price: number, mass: number, more: Partial<KitItem> = {}): KitItem => ({
  id,
  kind: 'binder',
  chainSizes: ['1/4', '5/16', '3/8'],
  markedWll: { value: wll, unit: 'lb' },
  mass: { value: mass, unit: 'lb' },
  price,
  ...more,
});

const anchors = [
  { id: 'deck', kind: 'anchor', at: 'vehicle', markedWll: '6000 lb' },
  { id: 'machine', kind: 'anchor', at: 'cargo', markedWll: '6000 lb' },
] as const;
const tieDown = (id: string, more: Partial<WantedTieDown> = {}): WantedTieDown => ({
  id,
  holds: 'tractor',
  path: 'vehicle-to-cargo',
  end: id.startsWith('front') ? 'front' : 'rear',
  chainLength: '14 ft',
  anchors,
  ...more,
});

const catalog = [
  chain('1/4', 30, 15),
  chain('5/16', 45, 22),
  chain('3/8', 60, 30),
  hook('1/4', 3.1, 1),
  hook('5/16', 4.2, 1.5),
  hook('3/8', 5.3, 2),
  binder('light binder', 2600, 20, 5),
  binder('binder', 5400, 35, 9),
];
const two: KitInput = {
  rules: us49cfr393_2024,
  articles: [{ id: 'tractor', kind: 'machinery', mass: '5000 lb', length: '10 ft' }],
  tieDowns: [tieDown('front'), tieDown('rear')],
  catalog,
  objective: 'price',
};
const bill = (kit: { readonly bill: readonly { readonly id: string; readonly pieces: number }[] }) =>
  kit.bill.map(({ id, pieces }) => `${pieces} ${id}`).sort();

describe('two tie-downs on a compact tractor', () => {
  // 393.106(d): 0.5 · 5,000 = 2,500 lb. Two direct chains at half: each needs 2,500 lb, which the light binder has
  const kit = buildKit(two);

  it('takes the cheapest that passes', () => {
    expect(kit.verdict).toBe('pass');
    expect(bill(kit)).toEqual(['2 chain 1/4', '2 light binder', '4 hook 1/4']);
    expect(kit.totals).toMatchObject({ price: 112.4, mass: { value: 44, unit: 'lb' }, parts: 8, bought: 8 });
  });

  it('carries the plan and what the rule set says of it', () => {
    expect(kit.check!.verdict).toBe('pass');
    expect(kit.check!.articles[0]!.aggregate).toMatchObject({ value: 2600 });
    expect(checkSecurement({ rules: us49cfr393_2024, ...kit.plan! }).verdict).toBe('pass');
    expect(kit.plan!.tieDowns[0]!.parts!.map(({ id }) => id)).toEqual([
      'chain',
      'binder',
      'grab-hook',
      'grab-hook 2',
      'deck',
      'machine',
    ]);
  });

  it.each([
    [5200, ['2 chain 1/4', '2 light binder', '4 hook 1/4']], // 2 · 2,600 / 2 is half of it, exactly
    // a little more: one of the two needs the other binder, and then 3,150 lb of chain
    [5200.1, ['1 binder', '1 light binder', '2 chain 1/4', '4 hook 1/4']],
    [5750, ['1 binder', '1 light binder', '2 chain 1/4', '4 hook 1/4']], // 3,150 + 2,600
    [6300, ['2 binder', '2 chain 1/4', '4 hook 1/4']],
    // 2,600 + 4,700 = 7,300: 5/16 chain takes a 5/16 hook, as the 1/4 hook would be the weakest
    [6300.1, ['1 binder', '1 chain 1/4', '1 chain 5/16', '1 light binder', '2 hook 1/4', '2 hook 5/16']],
    [7300, ['1 binder', '1 chain 1/4', '1 chain 5/16', '1 light binder', '2 hook 1/4', '2 hook 5/16']],
    // 3,150 + 4,700 = 7,850
    [7300.1, ['1 chain 1/4', '1 chain 5/16', '2 binder', '2 hook 1/4', '2 hook 5/16']],
  ])('of %s lb', (mass, expected) => {
    const articles = [{ ...two.articles[0]!, mass: { value: mass, unit: 'lb' as const } }];
    expect(bill(buildKit({ ...two, articles }))).toEqual(expected);
  });

  it('takes the lightest, or the fewest pieces, where that is asked', () => {
    const sold = [...catalog, chain('5/16', 70, 25, { id: 'with hooks', includes: ['grab-hook', 'grab-hook'] })];
    const parts = buildKit({ ...two, catalog: sold, objective: 'parts' });
    expect(bill(parts)).toEqual(['2 light binder', '2 with hooks']);
    expect(parts.totals!.parts).toBe(4);
    expect(buildKit({ ...two, catalog: sold, objective: 'mass' }).totals!.mass.value).toBe(44);
  });
});

describe('limits', () => {
  it.each([
    ['price', 112.4, 112.39],
    ['parts', 8, 7],
  ] as const)('of %s: %s will do, %s will not', (what, enough, tooLittle) => {
    expect(buildKit({ ...two, limits: { [what]: enough } }).verdict).toBe('pass');
    const kit = buildKit({ ...two, limits: { [what]: tooLittle } });
    expect(kit.verdict).toBe('fail');
    expect(kit.obstacles).toMatchObject([
      { subject: 'kit', because: { code: 'LIMIT_TOO_LOW' }, needed: tooLittle, nearest: enough },
    ]);
  });

  it('of mass, in any unit, exactly', () => {
    // 44 lb = 19.95806428 kg exactly
    expect(buildKit({ ...two, limits: { mass: '19.95806428 kg' } }).verdict).toBe('pass');
    const kit = buildKit({ ...two, limits: { mass: '19.95806427 kg' } });
    expect(kit.obstacles).toMatchObject([{ because: { code: 'LIMIT_TOO_LOW' }, nearest: { value: 44, unit: 'lb' } }]);
  });
});

describe('chain that is long enough', () => {
  it.each([
    ['20 ft', 'pass'],
    ['6.096 m', 'pass'], // 20 ft exactly
    ['20.001 ft', 'fail'],
  ] as const)('for %s: %s', (chainLength, verdict) => {
    const kit = buildKit({ ...two, tieDowns: [tieDown('front', { chainLength }), tieDown('rear')] });
    expect(kit.verdict).toBe(verdict);
    if (verdict === 'fail') {
      expect(kit.obstacles).toMatchObject([
        { subject: 'front', because: { code: 'NO_CHAIN_LONG_ENOUGH' }, nearest: { value: 20, unit: 'ft' } },
      ]);
    }
  });
});

describe('what is owned', () => {
  const stock: KitItem[] = [
    { ...chain('3/8', 0, 30), count: 1 },
    { ...hook('3/8', 0, 2), count: 2 },
    { ...binder('owned binder', 9200, 0, 12), count: 1 },
  ];

  it('costs nothing, and is used where that is better', () => {
    // the owned set makes one tie-down; the other is bought: 30 + 2 · 3.1 + 20
    const kit = buildKit({ ...two, stock });
    expect(kit.totals).toMatchObject({ price: 56.2, bought: 4, parts: 8 });
    expect(kit.bill.filter(({ source }) => source === 'stock').map(({ cost }) => cost)).toEqual([0, 0, 0]);
    // by mass it is not: 46 lb more than the 22 lb of a bought set
    expect(buildKit({ ...two, stock, objective: 'mass' }).totals!.bought).toBe(8);
  });

  it('first: as few bought pieces as can be, then the objective', () => {
    const kit = buildKit({ ...two, stock, objective: 'mass', stockFirst: true });
    expect(kit.totals).toMatchObject({ bought: 4 });
    // the bought set is the lightest of its kind: 15 + 2 · 1 + 5 lb beside the owned 30 + 2 · 2 + 12
    expect(kit.totals!.mass.value).toBe(68);
  });

  it('is used no more often than there is of it', () => {
    const scarce = catalog.map((item) => (item.id === 'light binder' ? { ...item, count: 1 } : item));
    expect(bill(buildKit({ ...two, catalog: scarce }))).toEqual([
      '1 binder',
      '1 light binder',
      '2 chain 1/4',
      '4 hook 1/4',
    ]);
  });
});

describe('accessories, spares and other fittings', () => {
  it('gives an accessory a tie-down of its own, as light as may be', () => {
    // 393.130(b)(1) asks for one on each accessory of a heavy machine; its strength counts for nothing
    const kit = buildKit({
      ...two,
      articles: [
        {
          id: 'tractor',
          kind: 'machinery',
          mass: '12000 lb',
          length: '12 ft',
          accessories: [{ id: 'loader', lowered: true }],
        },
      ],
      tieDowns: [
        ...['front left', 'front right', 'rear left', 'rear right'].map((id) => tieDown(id)),
        tieDown('loader chain', { holds: 'loader' }),
      ],
    });
    expect(kit.verdict).toBe('pass');
    const loader = kit.tieDowns.find(({ id }) => id === 'loader chain')!;
    expect(loader.items.map(({ id }) => id)).toContain('light binder');
  });

  it('adds spares that would do in place of what they stand for', () => {
    const spared = [tieDown('front', { spares: ['binder', 'chain'] }), tieDown('rear')];
    const kit = buildKit({ ...two, tieDowns: spared });
    expect(bill(kit)).toEqual(['3 chain 1/4', '3 light binder', '4 hook 1/4']);
    expect(kit.tieDowns[0]!.spares.map(({ id }) => id)).toEqual(['chain 1/4', 'light binder']);
    expect(kit.plan!.tieDowns[0]!.parts).toHaveLength(6);
  });

  it('takes a shackle and a connecting link, by their marks and sizes', () => {
    const kit = buildKit({
      ...two,
      catalog: [
        ...catalog,
        { id: 'shackle', kind: 'shackle', markedWll: '3 short-ton', mass: '1 lb', price: 6 },
        { id: 'link', kind: 'connecting-link', size: '1/4', grade: 70, mass: '0.3 lb', price: 2 },
        { id: 'large link', kind: 'connecting-link', size: '5/16', grade: 70, mass: '0.3 lb', price: 1 },
      ],
      tieDowns: [
        tieDown('front', { fittings: ['binder', 'shackle'] }),
        tieDown('rear', { fittings: ['binder', 'connecting-link'] }),
      ],
    });
    expect(bill(kit)).toEqual(['1 link', '1 shackle', '2 chain 1/4', '2 light binder']);
    expect(kit.cautions.map(({ code }) => code)).toContain('JOINT_NOT_CHECKED');
  });

  it('says what hooks of another size are', () => {
    const only = catalog.filter(({ id }) => id !== 'hook 1/4' && id !== 'chain 5/16' && id !== 'chain 3/8');
    const kit = buildKit({ ...two, catalog: only });
    expect(bill(kit)).toContain('4 hook 5/16'); // one size larger than the chain: held, but deep
    expect(kit.cautions.map(({ code }) => code)).toContain('NOT_RATED_FOR_IT');
  });
});

describe('no kit', () => {
  const codesOf = (input: Partial<KitInput>) => {
    const kit = buildKit({ ...two, ...input });
    return { verdict: kit.verdict, obstacles: kit.obstacles.map(({ because }) => because.code) };
  };

  it('where the number of tie-downs is too low, however strong they are', () => {
    const articles = [{ ...two.articles[0]!, mass: '12000 lb' as const }];
    const kit = buildKit({ ...two, articles });
    expect(kit.verdict).toBe('fail');
    expect(kit.obstacles).toMatchObject([{ because: { code: 'NO_KIT_MEETS' }, needed: 4, nearest: 2, open: false }]);
    expect(kit).toMatchObject({ totals: null, plan: null, check: null, bill: [], tieDowns: [] });
  });

  it('where an anchor point is not rated: a missing fact, not a failure', () => {
    const unrated = [{ ...anchors[0], markedWll: undefined }, anchors[1]] as never;
    const both = [tieDown('front', { anchors: unrated }), tieDown('rear')];
    expect(codesOf({ tieDowns: both }).verdict).toBe('undetermined');
    expect(codesOf({ tieDowns: both }).obstacles).toContain('ANCHORS_NOT_RATED');
    expect(codesOf({ tieDowns: [tieDown('front', { anchors: [] }), tieDown('rear')] }).verdict).toBe('undetermined');
  });

  it('where they cannot be made strong enough: by how much', () => {
    // the best of it: 3/8 chain on anchor points of 6,000 lb, the binder of 5,400 lb
    const articles = [{ ...two.articles[0]!, mass: '10800.2 lb' as const, kind: 'general' as const }];
    expect(buildKit({ ...two, articles }).obstacles).toMatchObject([
      {
        subject: 'tractor',
        because: { code: 'NOT_STRONG_ENOUGH' },
        needed: { value: 5400.1, unit: 'lb' },
        nearest: { value: 5400, unit: 'lb' },
      },
    ]);
    const exactly = [{ ...two.articles[0]!, mass: '10800 lb' as const, kind: 'general' as const }];
    expect(buildKit({ ...two, articles: exactly }).verdict).toBe('pass');
  });

  it('where there are too few pieces: for how many tie-downs', () => {
    const few = catalog.map((item) => (item.kind === 'chain' ? { ...item, count: item.size === '1/4' ? 1 : 0 } : item));
    expect(buildKit({ ...two, catalog: few }).obstacles).toMatchObject([
      { because: { code: 'NOT_ENOUGH_PIECES' }, needed: 2, nearest: 1 },
    ]);
  });

  it('where nothing goes together', () => {
    expect(codesOf({ catalog: catalog.filter(({ kind }) => kind !== 'binder') }).obstacles).toEqual([
      'NO_FITTING',
      'NO_FITTING',
    ]);
    const unmarked = catalog.map(({ markedWll: _, ...item }) => item);
    expect(codesOf({ catalog: unmarked }).obstacles).toEqual(['NO_FITTING', 'NO_FITTING']); // a binder without a mark
    const apart = [
      chain('1/4', 1, 1),
      chain('3/8', 1, 1),
      hook('1/4', 1, 1),
      { ...binder('binder', 5400, 1, 1), chainSizes: ['3/8'] as const },
    ];
    expect(codesOf({ catalog: apart }).obstacles).toEqual(['NOTHING_GOES_TOGETHER', 'NOTHING_GOES_TOGETHER']);
  });

  it('where limits cannot hold at once', () => {
    // the lightest costs 112.40 too, so a limit of 8 pieces and one of 100 fail each by themselves or not at all
    expect(codesOf({ limits: { price: 100, parts: 8 } }).obstacles).toEqual(['LIMIT_TOO_LOW']);
  });
});

describe('bad rows', () => {
  const bad = [
    chain('1/4', 30, 15),
    { ...chain('1/4', 31, 15) }, // the same id
    { ...hook('1/4', -3, 1), currency: 'EUR' },
    { ...binder('binder', 0, 20, 5), markedWll: '17 ft' },
    { id: 'no mass', kind: 'grab-hook', size: '1/4', grade: 70, price: 2 },
    { ...hook('5/16', 4, 1.5), currency: 'EUR' },
    { ...hook('3/8', 4.00001, 1.5), grade: 71, count: 1.5 },
    null,
  ] as never;

  it('are all reported at once, each with its row', () => {
    const faults = checkItems({ catalog: bad });
    expect(faults.map(({ row, path, code }) => `${row} ${path}: ${code}`)).toEqual([
      '2 catalog[1].id: DUPLICATE_ID',
      '3 catalog[2].price: NEGATIVE',
      '4 catalog[3].markedWll: WRONG_KIND',
      '5 catalog[4].mass: MISSING_FIELD',
      '6 catalog[5].currency: CONFLICTING_FIELDS',
      '7 catalog[6].grade: UNKNOWN_GRADE',
      '7 catalog[6].count: NOT_A_WHOLE_NUMBER',
      '7 catalog[6].price: TEXT_TOO_PRECISE',
      '8 catalog[7]: MISSING_FIELD',
    ]);
    expect(checkItems({ catalog })).toEqual([]);
  });

  it('stop a kit, unless it is to go on without them', () => {
    const issue = issueOf(() => buildKit({ ...two, catalog: bad }));
    expect(issue).toMatchObject({ code: 'DUPLICATE_ID', path: 'catalog[1].id' });
    expect(issue.remedy).toContain('8 more');
    const good = catalog.map((item) => ({ ...item, id: `good ${item.id}` }));
    const kit = buildKit({ ...two, catalog: [...(bad as KitItem[]), ...good], skipBadRows: true });
    expect(kit.faults).toHaveLength(9);
    expect(kit.verdict).toBe('pass');
  });

  it('in two currencies are an error with rows, never a sum', () => {
    const mixed = catalog.map((item, index) => ({ ...item, currency: index === 3 ? 'EUR' : 'USD' }));
    expect(checkItems({ catalog: mixed })).toMatchObject([{ row: 4, code: 'CONFLICTING_FIELDS' }]);
    expect(checkItems({ catalog: mixed, currency: 'EUR' })).toHaveLength(7);
    const kit = buildKit({ ...two, catalog: mixed.map((item) => ({ ...item, currency: 'USD' })) });
    expect(kit.totals).toMatchObject({ price: 112.4, currency: 'USD' });
  });

  it('need a price only where money is asked about', () => {
    const unpriced = catalog.map(({ price: _, ...item }) => item);
    expect(issueOf(() => buildKit({ ...two, catalog: unpriced }))).toMatchObject({ path: 'catalog[0].price' });
    const kit = buildKit({ ...two, catalog: unpriced, objective: 'mass' });
    expect(kit.totals).toMatchObject({ price: null, currency: null, mass: { value: 44 } });
  });

  it('of stock need their count', () => {
    expect(checkItems({ stock: [chain('1/4', 0, 15)] })).toMatchObject([{ path: 'stock[0].count' }]);
  });
});

describe('money', () => {
  it('adds up as the decimals that it shows', () => {
    // 0.1 and 0.2 as doubles make 0.30000000000000004
    const cheap = [chain('1/4', 0.1, 15), hook('1/4', 0.2, 1), binder('binder', 5400, 0.3, 9)];
    expect(buildKit({ ...two, catalog: cheap }).totals!.price).toBe(1.6); // 2 · 0.1 + 4 · 0.2 + 2 · 0.3
    const cents = cheap.map((item) => ({ ...item, price: item.price! * 100 }));
    expect(buildKit({ ...two, catalog: cents }).totals!.price).toBe(160);
  });
});

describe('the curve of price against mass', () => {
  it('runs from the cheapest to the lightest, each the cheapest so light', () => {
    const sold = [
      ...catalog,
      chain('1/4', 80, 11, { id: 'light chain' }),
      binder('aluminum binder', 3200, 60, 3),
      binder('steel binder', 2600, 30, 4),
    ];
    const { alternatives } = buildKit({ ...two, catalog: sold, alternatives: 6 });
    const points = alternatives.map(({ totals }) => [totals.price!, totals.mass.value] as const);
    expect(points[0]).toEqual([112.4, 44]);
    expect(points.at(-1)).toEqual([292.4, 32]); // 2 · (80 + 60) + 12.4; 2 · (11 + 3) + 4
    for (let at = 1; at < points.length; at++) {
      expect(points[at]![0]).toBeGreaterThan(points[at - 1]![0]);
      expect(points[at]![1]).toBeLessThan(points[at - 1]![1]);
    }
    expect(points.length).toBeGreaterThan(3);
    expect(buildKit(two).alternatives).toEqual([]);
  });
});

describe('a kit in words', () => {
  it('has a sheet and sentences, with a kit and without one', () => {
    const kit = buildKit(two);
    for (const as of ['text', 'markdown', 'html'] as const) expect(explain(kit, { as })).toContain('light binder');
    expect(explain(JSON.parse(JSON.stringify(kit)), { as: 'text' })).toBe(explain(kit, { as: 'text' }));
    const none = buildKit({ ...two, limits: { price: 100 } });
    expect(inWords(none).obstacles[0]!.because.text).toBe('The least price of a kit within the other limits is more.');
    expect(explain(none, { as: 'text' })).toContain('Obstacles');
    expect(kit.proved && none.proved).toBe(true);
    expect([kit.atLeast, none.atLeast]).toEqual([null, null]);
  });

  it('leaves the steps out where the working is not wanted, and nothing else', () => {
    const { steps, sources, assumptions, cautions, check, inputs, ...answer } = buildKit({ ...two, working: false });
    expect(steps).toEqual([]);
    expect(buildKit(two)).toMatchObject(JSON.parse(JSON.stringify(answer)));
    expect(check!.steps).toEqual([]);
    expect([sources, assumptions, cautions, inputs]).toBeDefined();
  });
});

describe('other rule sets', () => {
  it('Canada counts a direct chain in full, and an unmarked one not at all', () => {
    const articles = [{ id: 'tractor', kind: 'machinery', mass: '2400 kg', length: '3 m' }] as const;
    const kit = buildKit({ ...two, rules: caNsc10_2013, articles });
    // half of 2,400 kg; two light binders of 2,600 lb (1,179 kg) are more than enough
    expect(kit.verdict).toBe('pass');
    expect(kit.totals!.mass.unit).toBe('kg');
    const unmarked = catalog.map((item) => (item.kind === 'chain' ? { ...item, grade: undefined } : item)) as never;
    expect(buildKit({ ...two, rules: caNsc10_2013, articles, catalog: unmarked }).verdict).toBe('fail');
    // in the United States it counts as grade 30: 1,900 lb for 5/16
    expect(buildKit({ ...two, catalog: unmarked, articles: [{ ...two.articles[0]!, mass: '3800 lb' }] }).verdict).toBe(
      'pass',
    );
  });

  it.each([euEn12195_1_2010, us49cfr393_102_2024])('$id, by forces, is refused', (rules) => {
    expect(issueOf(() => buildKit({ ...two, rules }))).toMatchObject({ code: 'UNKNOWN_RULE_SET' });
  });
});

describe('refuses', () => {
  it.each([
    ['no objective', { objective: undefined }, 'MISSING_FIELD', 'objective'],
    ['no tie-downs', { tieDowns: [] }, 'EMPTY_LIST', 'tieDowns'],
    [
      'a tie-down that holds nothing',
      { tieDowns: [tieDown('front', { holds: 'car' })] },
      'UNKNOWN_REFERENCE',
      'tieDowns[0].holds',
    ],
    ['two tie-downs of one id', { tieDowns: [tieDown('front'), tieDown('front')] }, 'DUPLICATE_ID', 'tieDowns[1].id'],
    [
      'no length',
      { tieDowns: [tieDown('front', { chainLength: undefined as never })] },
      'MISSING_FIELD',
      'tieDowns[0].chainLength',
    ],
    [
      'a fitting that is none',
      { tieDowns: [tieDown('front', { fittings: ['strap' as never] })] },
      'UNKNOWN_VALUE',
      'tieDowns[0].fittings[0]',
    ],
    [
      'a spare that it does not have',
      { tieDowns: [tieDown('front', { spares: ['shackle'] })] },
      'UNKNOWN_VALUE',
      'tieDowns[0].spares[0]',
    ],
    [
      'a spare chain for an anchor',
      { tieDowns: [tieDown('front', { anchors: [{ kind: 'chain' }] as never })] },
      'UNKNOWN_VALUE',
      'tieDowns[0].anchors[0].kind',
    ],
    [
      'thirteen fittings',
      { tieDowns: [tieDown('front', { fittings: new Array(13).fill('shackle') })] },
      'TOO_LARGE',
      'tieDowns[0].fittings',
    ],
    ['a limit below zero', { limits: { price: -1 } }, 'NEGATIVE', 'limits.price'],
    ['half a piece', { limits: { parts: 1.5 } }, 'NOT_A_WHOLE_NUMBER', 'limits.parts'],
    ['one alternative', { alternatives: 1 }, 'NOT_A_WHOLE_NUMBER', 'alternatives'],
    ['a catalog that is no list', { catalog: {} }, 'EMPTY_LIST', 'catalog'],
    ['no rule set', { rules: undefined }, 'UNKNOWN_RULE_SET', 'rules'],
  ])('%s', (_, change, code, path) => {
    expect(issueOf(() => buildKit({ ...two, ...change } as never))).toMatchObject({ code, path });
  });
});
