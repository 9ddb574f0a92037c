// The least number of tie-downs, 49 CFR 393.110, 393.128 and 393.130. Every threshold is tried at the value, just
// below and just above, in every form in which a length or a mass can be given.
import {
  type Article,
  cm,
  ft,
  inches,
  kg,
  lb,
  m,
  mm,
  quantity,
  shortTon,
  t,
  tieDownsRequired,
  us49cfr393_110_2024,
  yd,
} from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';
import { checkLoosely, crate, type Length, type Mass, rules, several, throughJson } from './plans.js';

type Query = Omit<Article, 'id'>;
const count = (article: Query) => tieDownsRequired({ rules, article }).minimumCount;

interface Threshold<Form> {
  readonly at: readonly Form[];
  readonly below: readonly Form[];
  readonly above: readonly Form[];
}

// 5 ft = 60 in = 1.524 m exactly.
const FIVE_FEET: Threshold<Length> = {
  at: [
    '5 ft',
    '5 ft 0 in',
    '60 in',
    '1.524 m',
    '1524 mm',
    '152.4 cm',
    ft(5),
    inches(60),
    m(1.524),
    mm(1524),
    cm(152.4),
    { value: 1.524, unit: 'm' },
    throughJson(m(1.524)),
  ],
  below: [
    '4.999999 ft',
    '4 ft 11 63/64 in',
    '59 63/64 in',
    '1.5239999 m',
    '1523.9999 mm',
    ft(4.9999),
    m(1.523999999),
    mm(1523.999),
    throughJson(m(1.523999999)),
  ],
  above: [
    '5.000001 ft',
    '5 ft 1/64 in',
    '60 1/64 in',
    '1.5240001 m',
    '1524.0001 mm',
    ft(5.0001),
    m(1.524000001),
    mm(1524.001),
    throughJson(m(1.524000001)),
  ],
};

// 1,100 lb = 498.951 607 kg exactly; the 500 kg printed beside it is 1,102.3 lb.
const ELEVEN_HUNDRED_POUNDS: Threshold<Mass> = {
  at: [
    '1100 lb',
    '498.951607 kg',
    '0.55 short-ton',
    lb(1100),
    kg(498.951607),
    t(0.498951607),
    shortTon(0.55),
    { value: 498.951607, unit: 'kg' },
    throughJson(kg(498.951607)),
  ],
  below: ['1099.9999 lb', '498.951606 kg', lb(1099.99), kg(498.9516069), t(0.498951606), throughJson(kg(498.951606))],
  above: [
    '1100.0001 lb',
    '498.951608 kg',
    lb(1100.01),
    kg(498.9516071),
    t(0.498951608),
    '500 kg',
    throughJson(kg(498.951608)),
  ],
};

// 10,000 lb = 4,535.923 7 kg exactly; the 4,536 kg printed beside it is 10,000.17 lb.
const TEN_THOUSAND_POUNDS: Threshold<Mass> = {
  at: [
    '10000 lb',
    '4535.9237 kg',
    '4.5359237 t',
    '5 short-ton',
    lb(10000),
    kg(4535.9237),
    t(4.5359237),
    shortTon(5),
    { value: 4535.9237, unit: 'kg' },
    throughJson(kg(4535.9237)),
  ],
  below: [
    '9999.9999 lb',
    '4535.9236 kg',
    '4.5359236 t',
    '4.9999999 short-ton',
    lb(9999.99),
    kg(4535.92369),
    t(4.5359236),
    throughJson(kg(4535.9236)),
  ],
  above: [
    '10000.0001 lb',
    '4535.9238 kg',
    '4.5359238 t',
    '4536 kg',
    '5.0000001 short-ton',
    lb(10000.01),
    kg(4535.92371),
    t(4.5359238),
    throughJson(kg(4535.9238)),
  ],
};

describe('5 ft and 1,100 lb, not blocked: 393.110(b)(1)-(2)', () => {
  const light = (length: Length) => count({ kind: 'general', mass: '1100 lb', length });
  test.each(FIVE_FEET.at.map((form) => [form]))('%o long, light: 1', (length) => expect(light(length)).toBe(1));
  test.each(FIVE_FEET.below.map((form) => [form]))('%o long, light: 1', (length) => expect(light(length)).toBe(1));
  test.each(FIVE_FEET.above.map((form) => [form]))('%o long, light: 2', (length) => expect(light(length)).toBe(2));

  const short = (mass: Mass) => count({ kind: 'general', mass, length: '5 ft' });
  test.each(ELEVEN_HUNDRED_POUNDS.at.map((form) => [form]))('5 ft, %o: 1', (mass) => expect(short(mass)).toBe(1));
  test.each(ELEVEN_HUNDRED_POUNDS.below.map((form) => [form]))('5 ft, %o: 1', (mass) => expect(short(mass)).toBe(1));
  test.each(ELEVEN_HUNDRED_POUNDS.above.map((form) => [form]))('5 ft, %o: 2', (mass) => expect(short(mass)).toBe(2));

  it('takes 2 for a longer article, however light, and for a shorter one, however heavy', () => {
    expect(count({ kind: 'general', mass: '10 lb', length: '5 ft 1 in' })).toBe(2);
    expect(count({ kind: 'general', mass: '40000 lb', length: '1 ft' })).toBe(2);
    expect(count({ kind: 'general', mass: '10 lb', length: '1 in' })).toBe(1);
  });
});

describe('every 10 ft', () => {
  // 10 ft = 3.048 m exactly. Not blocked: 2 up to 10 ft, and one more for each 10 ft or fraction beyond it,
  // 393.110(b)(2)(ii)-(3). Blocked: one for each 10 ft or fraction, 393.110(c).
  const tens: [feet: number, meters: string, unblocked: number, blocked: number][] = [
    [10, '3.048', 2, 1],
    [20, '6.096', 3, 2],
    [30, '9.144', 4, 3],
    [40, '12.192', 5, 4],
    [50, '15.24', 6, 5],
    [60, '18.288', 7, 6],
    [70, '21.336', 8, 7],
  ];

  describe.each(tens)('%d ft = %s m', (feet, meters, unblocked, blocked) => {
    const millimeters = Number((Number(meters) * 1000).toFixed(0));
    const at: Length[] = [
      `${feet} ft`,
      `${feet} ft 0 in`,
      `${feet * 12} in`,
      `${Number(meters)} m`,
      `${millimeters} mm`,
      ft(feet),
      inches(feet * 12),
      m(Number(meters)),
      mm(millimeters),
      throughJson(m(Number(meters))),
      { value: Number(meters), unit: 'm' },
    ];
    const below: Length[] = [
      `${feet - 1} ft 11 63/64 in`,
      `${feet * 12 - 1} 63/64 in` as Length,
      `${millimeters - 0.0001} mm`,
      ft(feet - 0.0001),
      m(Number((Number(meters) - 1e-7).toFixed(7))),
      throughJson(mm(millimeters - 0.001)),
    ];
    const above: Length[] = [
      `${feet} ft 1/64 in`,
      `${feet * 12} 1/64 in` as Length,
      `${millimeters + 0.0001} mm`,
      ft(feet + 0.0001),
      m(Number((Number(meters) + 1e-7).toFixed(7))),
      throughJson(mm(millimeters + 0.001)),
    ];
    const ask = (length: Length, blockedForward: boolean) =>
      count({ kind: 'general', mass: '5000 lb', length, blockedForward });

    test.each(at.map((form) => [form]))(`%o: ${unblocked}, blocked ${blocked}`, (length) => {
      expect([ask(length, false), ask(length, true)]).toEqual([unblocked, blocked]);
    });
    test.each(below.map((form) => [form]))(`%o: ${unblocked}, blocked ${blocked}`, (length) => {
      expect([ask(length, false), ask(length, true)]).toEqual([unblocked, blocked]);
    });
    test.each(above.map((form) => [form]))(`%o: ${unblocked + 1}, blocked ${blocked + 1}`, (length) => {
      expect([ask(length, false), ask(length, true)]).toEqual([unblocked + 1, blocked + 1]);
    });
  });

  it('counts any fraction: 10 ft 1 in takes 3, 20 ft 3, 20 ft 1 in 4', () => {
    expect(
      ['10 ft 1 in', '20 ft', '20 ft 1 in'].map((length) =>
        count({ kind: 'general', mass: '5000 lb', length: length as Length }),
      ),
    ).toEqual([3, 3, 4]);
  });

  it('lets the metric figure printed beside 10 ft not decide: 3.04 m is short of it, 3.05 m over', () => {
    expect(count({ kind: 'general', mass: '5000 lb', length: '3.04 m' })).toBe(2);
    expect(count({ kind: 'general', mass: '5000 lb', length: '3.05 m' })).toBe(3);
    expect(count({ kind: 'general', mass: '1000 lb', length: '1.52 m' })).toBe(1); // short of 5 ft
  });

  it('takes no noise of a conversion for a fraction', () => {
    // 0.1 + 0.2 and its like: the number counts as the shortest decimal that names it.
    expect(count({ kind: 'general', mass: '5000 lb', length: yd(10) })).toBe(4); // 30 ft
    expect(count({ kind: 'general', mass: '5000 lb', length: quantity(3048, 'mm') })).toBe(2);
    expect(count({ kind: 'general', mass: '5000 lb', length: quantity(304.8, 'cm') })).toBe(2);
  });
});

describe('blocked against forward movement, 393.110(c)', () => {
  it('takes at least one, however short or heavy', () => {
    expect(count({ kind: 'general', mass: '10 lb', length: '1 in', blockedForward: true })).toBe(1);
    expect(count({ kind: 'general', mass: '40000 lb', length: '5 ft', blockedForward: true })).toBe(1);
    expect(count({ kind: 'general', mass: '40000 lb', length: '5 ft 1 in', blockedForward: true })).toBe(1);
  });

  it('not stated is not blocked, and the result says so', () => {
    const unstated = tieDownsRequired({ rules, article: { kind: 'general', mass: '5000 lb', length: '20 ft' } });
    expect(unstated.minimumCount).toBe(3);
    expect(unstated.assumptions.map(({ code }) => code)).toContain('NOT_BLOCKED_FORWARD');
    const stated = tieDownsRequired({
      rules,
      article: { kind: 'general', mass: '5000 lb', length: '20 ft', blockedForward: false },
    });
    expect(stated.minimumCount).toBe(3);
    expect(stated.assumptions).toEqual([]);
  });
});

describe('10,000 lb: the kind of thing decides', () => {
  // 393.130(a): machinery of 10,000 lb or more. 393.128(a): cars, light trucks and vans of 10,000 lb or less.
  const machinery = (mass: Mass) => tieDownsRequired({ rules, article: { kind: 'machinery', mass, length: '10 ft' } });
  const vehicle = (mass: Mass) =>
    tieDownsRequired({ rules, article: { kind: 'light-vehicle', mass, length: '10 ft' } });

  test.each([...TEN_THOUSAND_POUNDS.at, ...TEN_THOUSAND_POUNDS.above].map((form) => [form]))(
    'a machine of %o needs 4',
    (mass) => {
      expect(machinery(mass)).toMatchObject({ minimumCount: 4, options: [{ rule: '393.130', minimumCount: 4 }] });
    },
  );
  test.each(TEN_THOUSAND_POUNDS.below.map((form) => [form]))('a machine of %o has three ways', (mass) => {
    expect(machinery(mass)).toMatchObject({
      minimumCount: 2,
      options: [
        { rule: '393.110', minimumCount: 2 },
        { rule: '393.128', minimumCount: 2 },
        { rule: '393.130', minimumCount: 4 },
      ],
    });
  });
  test.each([...TEN_THOUSAND_POUNDS.at, ...TEN_THOUSAND_POUNDS.below].map((form) => [form]))(
    'a van of %o needs 2',
    (mass) => {
      expect(vehicle(mass)).toMatchObject({ minimumCount: 2, options: [{ rule: '393.128', minimumCount: 2 }] });
    },
  );
  test.each(TEN_THOUSAND_POUNDS.above.map((form) => [form]))('a van of %o needs 4', (mass) => {
    expect(vehicle(mass)).toMatchObject({ minimumCount: 4, options: [{ rule: '393.130', minimumCount: 4 }] });
  });
  it('does not look at the weight of anything else', () => {
    for (const mass of ['9999 lb', '10000 lb', '10001 lb'] as const) {
      expect(tieDownsRequired({ rules, article: { kind: 'general', mass, length: '10 ft' } }).options).toEqual([
        { rule: '393.110', minimumCount: 2 },
      ]);
    }
  });
});

describe('a heavy machine, 393.130', () => {
  it('needs max(4, count by length)', () => {
    // Unblocked 30 ft: 4; 30 ft 1 in: 5. Blocked 40 ft: 4; 40 ft 1 in: 5.
    const heavy = (length: Length, blockedForward = false) =>
      count({ kind: 'machinery', mass: '30000 lb', length, blockedForward });
    expect([heavy('1 ft'), heavy('30 ft'), heavy('30 ft 1/64 in'), heavy('70 ft')]).toEqual([4, 4, 5, 8]);
    expect([heavy('40 ft', true), heavy('40 ft 1/64 in', true)]).toEqual([4, 5]);
  });
  it('says where that is an interpretation', () => {
    const sources = (length: Length) =>
      tieDownsRequired({ rules, article: { kind: 'machinery', mass: '30000 lb', length } }).sources;
    expect(sources('30 ft 1 in').some(({ provenance }) => provenance === 'interpretation')).toBe(true);
    expect(sources('30 ft').some(({ provenance }) => provenance === 'interpretation')).toBe(false);
  });
  it('keeps its four even where it is fastened by special methods', () => {
    expect(count({ kind: 'machinery', mass: '30000 lb', length: '60 ft', specialMethods: true })).toBe(4);
  });
});

describe('a lighter machine', () => {
  const options = (length: Length, more: Partial<Article> = {}) =>
    tieDownsRequired({ rules, article: { kind: 'machinery', mass: '6000 lb', length, ...more } });

  it('lists each lawful way, the least demanding first', () => {
    expect(options('12 ft').options).toEqual([
      { rule: '393.128', minimumCount: 2 },
      { rule: '393.110', minimumCount: 3 },
      { rule: '393.130', minimumCount: 4 },
    ]);
    expect(options('4 ft', { mass: '900 lb' }).options).toEqual([
      { rule: '393.110', minimumCount: 1 },
      { rule: '393.128', minimumCount: 2 },
      { rule: '393.130', minimumCount: 4 },
    ]);
  });
  it('recommends four, never below the minimum', () => {
    expect(options('10 ft')).toMatchObject({ minimumCount: 2, recommendedCount: 4 });
    expect(options('12 ft')).toMatchObject({ minimumCount: 2, recommendedCount: 4 });
    expect(options('60 ft', { securedUnder: '393.110' })).toMatchObject({ minimumCount: 7, recommendedCount: 7 });
    expect(
      tieDownsRequired({ rules, article: { kind: 'general', mass: '100 lb', length: '1 ft' } }).recommendedCount,
    ).toBe(2);
  });
  it('may be secured under the rule its hauler chooses', () => {
    expect(options('12 ft', { securedUnder: '393.128' })).toMatchObject({
      minimumCount: 2,
      options: [{ rule: '393.128', minimumCount: 2 }],
    });
    expect(options('12 ft', { securedUnder: '393.110' })).toMatchObject({ minimumCount: 3 });
    expect(options('12 ft', { securedUnder: '393.130' })).toMatchObject({ minimumCount: 4 });
    expect(options('32 ft', { securedUnder: '393.130' })).toMatchObject({ minimumCount: 5 }); // 2 + ceil(22 / 10)
  });
  it('under special methods has no count by length, and keeps that of the rule it is secured under', () => {
    const result = options('60 ft', { specialMethods: true });
    expect(result.minimumCount).toBe(0);
    expect(result.assumptions.map(({ code }) => code)).toContain('SPECIAL_METHODS');
    expect(options('60 ft', { specialMethods: true, securedUnder: '393.130' }).minimumCount).toBe(4);
  });
});

describe('a rule that is not open', () => {
  it('is refused with the open ones named', () => {
    const ask = (article: Query) => issueOf(() => tieDownsRequired({ rules, article }));
    expect(ask({ kind: 'machinery', mass: '10000 lb', length: '10 ft', securedUnder: '393.128' })).toMatchObject({
      code: 'UNKNOWN_VALUE',
      path: 'article.securedUnder',
      expected: expect.stringContaining('393.130'),
    });
    expect(ask({ kind: 'machinery', mass: '10000 lb', length: '10 ft', securedUnder: '393.110' }).code).toBe(
      'UNKNOWN_VALUE',
    );
    expect(ask({ kind: 'general', mass: '900 lb', length: '10 ft', securedUnder: '393.130' }).code).toBe(
      'UNKNOWN_VALUE',
    );
    expect(ask({ kind: 'light-vehicle', mass: '900 lb', length: '10 ft', securedUnder: '393.110' }).code).toBe(
      'UNKNOWN_VALUE',
    );
    expect(ask({ kind: 'machinery', mass: '900 lb', length: '10 ft', securedUnder: '393.136' }).code).toBe(
      'UNKNOWN_VALUE',
    );
  });
});

describe('a car, light truck or van longer than 10 ft', () => {
  it('has 2 as its floor, and a word about the count by length where that is larger', () => {
    // Disputed: 393.106(a) leaves 393.110 standing (18 ft unblocked: 3), practice stops at two.
    const long = tieDownsRequired({ rules, article: { kind: 'light-vehicle', mass: '5000 lb', length: '18 ft' } });
    expect(long.minimumCount).toBe(2);
    expect(long.cautions.some(({ code }) => code === 'LENGTH_COUNT_LARGER')).toBe(true);
    const short = tieDownsRequired({ rules, article: { kind: 'light-vehicle', mass: '5000 lb', length: '10 ft' } });
    expect(short.cautions.some(({ code }) => code === 'LENGTH_COUNT_LARGER')).toBe(false);
  });
});

describe('special methods, 393.110(d)', () => {
  it('free general cargo of the count, never by themselves, and leave the strength', () => {
    const article: Query = { kind: 'general', mass: '30000 lb', length: '60 ft', specialMethods: true };
    expect(tieDownsRequired({ rules, article })).toMatchObject({
      minimumCount: 0,
      requiredAggregate: { value: 15000, unit: 'lb' },
    });
    expect(count({ ...article, specialMethods: false })).toBe(7); // 2 + ceil(50 / 10)
  });
});

describe('the strength and the forces', () => {
  it('half of the weight', () => {
    const result = tieDownsRequired({ rules, article: { kind: 'machinery', mass: '3940 lb', length: '10 ft' } });
    expect(result.requiredAggregate).toEqual({ value: 1970, unit: 'lb' });
    // 3,940 lb = 1,787.153 937 8 kg, half of it 893.576 968 9 kg.
    const si = tieDownsRequired({
      rules,
      article: { kind: 'machinery', mass: '3940 lb', length: '10 ft' },
      units: 'si',
    });
    expect(si.requiredAggregate?.unit).toBe('kg');
    expect(si.requiredAggregate?.value).toBeCloseTo(893.5769689, 9);
  });

  it('the performance criteria of 393.102: rearward equals 0.5 in both columns', () => {
    const { perDirection } = tieDownsRequired({
      rules,
      article: { kind: 'machinery', mass: '10000 lb', length: '10 ft' },
    });
    // 10,000 lb weighs 10,000 lbf. Against working load limit and breaking strength, 393.102(a)(1)-(2) and (b).
    const expected: [direction: string, limit: number, strength: number][] = [
      ['forward', 4350, 8000],
      ['rearward', 5000, 5000],
      ['lateral', 2500, 5000],
      ['down', 2000, 2000],
    ];
    expect(perDirection.map(({ direction }) => direction)).toEqual(expected.map(([direction]) => direction));
    for (const [at, [, limit, strength]] of expected.entries()) {
      const row = perDirection[at];
      expect([row?.againstWorkingLoadLimit?.unit, row?.againstBreakingStrength?.unit]).toEqual(['lbf', 'lbf']);
      expect(row?.againstWorkingLoadLimit?.value).toBeCloseTo(limit, 9);
      expect(row?.againstBreakingStrength?.value).toBeCloseTo(strength, 9);
    }
  });

  it('the same in newtons', () => {
    // 1,000 kg weighs 9,806.65 N; 0.435 of it 4,265.892 75 N.
    const { perDirection } = tieDownsRequired({
      rules,
      article: { kind: 'machinery', mass: '1000 kg', length: '3 m' },
      units: 'si',
    });
    expect(perDirection[0]?.againstWorkingLoadLimit?.unit).toBe('N');
    expect(perDirection[0]?.againstWorkingLoadLimit?.value).toBeCloseTo(4265.89275, 8);
    expect(perDirection[0]?.againstBreakingStrength?.value).toBeCloseTo(7845.32, 8);
  });
});

describe('the step of the count', () => {
  // The weight is shown where the formula asks for it, and nowhere else.
  test.each([
    ['1100 lb', '5 ft', {}, ['L', 'W']],
    ['1100.01 lb', '5 ft', {}, ['L', 'W']],
    ['1100 lb', '5 ft 1 in', {}, ['L']],
    ['5000 lb', '10 ft', {}, ['L']],
    ['5000 lb', '10 ft 1 in', {}, ['L']],
    ['5000 lb', '5 ft', { blockedForward: true }, ['L']],
    ['5000 lb', '5 ft', { specialMethods: true }, ['L']],
  ] as const)('%s, %s, %o has %j', (mass, length, more, names) => {
    const { steps } = tieDownsRequired({ rules, article: { kind: 'general', mass, length, ...more } });
    const step = steps.find(({ symbol }) => symbol === 'n by length');
    expect(step?.values.map(([name]) => name)).toEqual(names);
    expect(step?.expression.includes('W')).toBe((names as readonly string[]).includes('W'));
  });
});

describe('what is said of the sources', () => {
  const sourceOf = (article: Query, clause: string) =>
    tieDownsRequired({ rules, article }).sources.find((source) => source.clause === clause);

  it('memory stays visible', () => {
    // That exactly 10 ft belongs to the smaller count, the words of (d), and the two of 393.128 were not read.
    expect(sourceOf({ kind: 'general', mass: '5000 lb', length: '10 ft' }, '393.110(b)(2)(ii)')?.provenance).toBe(
      'memory',
    );
    expect(
      sourceOf({ kind: 'general', mass: '5000 lb', length: '10 ft', specialMethods: true }, '393.110(d)')?.provenance,
    ).toBe('memory');
    expect(sourceOf({ kind: 'general', mass: '5000 lb', length: '20 ft' }, '393.110(b)(3)')?.provenance).toBe('read');
    expect(sourceOf({ kind: 'general', mass: '500 lb', length: '4 ft' }, '393.110(b)(1)')?.provenance).toBe('read');
    expect(
      sourceOf({ kind: 'general', mass: '500 lb', length: '4 ft', blockedForward: true }, '393.110(c)')?.provenance,
    ).toBe('read');
  });
  it('each is a paragraph of 49 CFR with its edition', () => {
    const { sources } = tieDownsRequired({ rules, article: { kind: 'machinery', mass: '12000 lb', length: '14 ft' } });
    for (const { document, edition } of sources) expect([document, edition]).toEqual(['49 CFR', '2024']);
  });
});

describe('the counting part alone', () => {
  it('says what the whole rule set says, under the id of the whole', () => {
    for (const kind of ['machinery', 'light-vehicle', 'general'] as const) {
      for (const mass of ['1100 lb', '9999 lb', '10000 lb', '10001 lb'] as const) {
        for (const length of ['5 ft', '10 ft', '10 ft 1 in', '34 ft'] as const) {
          const {
            rules: id,
            inputs: _,
            ...alone
          } = tieDownsRequired({
            rules: us49cfr393_110_2024,
            article: { kind, mass, length },
          });
          const { rules: whole, inputs: __, ...full } = tieDownsRequired({ rules, article: { kind, mass, length } });
          expect([id, whole]).toEqual(['us-49cfr393-2024', 'us-49cfr393-2024']); // the part echoes the whole
          expect(alone).toEqual(full);
        }
      }
    }
  });
  it('has the id of the whole', () => {
    expect(us49cfr393_110_2024.id).toBe('us-49cfr393-2024');
  });
  it('judges no plan', () => {
    expect(
      issueOf(() => checkLoosely({ rules: us49cfr393_110_2024, articles: [crate()], tieDowns: several(2, '9000 lb') })),
    ).toMatchObject({ code: 'UNKNOWN_RULE_SET', path: 'rules' });
  });
});

describe('mistakes', () => {
  const ask = (article: unknown, more: Record<string, unknown> = {}) =>
    issueOf(() => tieDownsRequired({ rules, article, ...more } as never));
  const good = { kind: 'general', mass: '5000 lb', length: '10 ft' };

  it('say where', () => {
    expect(ask({ ...good, kind: 'tractor' })).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'article.kind' });
    expect(ask({ ...good, mass: '0 lb' })).toMatchObject({ code: 'NOT_POSITIVE', path: 'article.mass' });
    expect(ask({ ...good, mass: undefined })).toMatchObject({ code: 'MISSING_FIELD', path: 'article.mass' });
    expect(ask({ ...good, length: '-3 ft' })).toMatchObject({ code: 'NOT_POSITIVE', path: 'article.length' });
    expect(ask({ ...good, length: '5000 lb' })).toMatchObject({ code: 'WRONG_KIND', path: 'article.length' });
    expect(ask({ ...good, mass: '22 kN' })).toMatchObject({ code: 'WRONG_KIND', path: 'article.mass' });
    expect(ask({ ...good, blockedForward: 'yes' })).toMatchObject({
      code: 'UNKNOWN_VALUE',
      path: 'article.blockedForward',
    });
    expect(ask({ ...good, specialMethods: 1 })).toMatchObject({
      code: 'UNKNOWN_VALUE',
      path: 'article.specialMethods',
    });
  });
  it('a friction mat that is none', () => {
    for (const frictionMat of [null, 5, 'yes', true]) {
      expect(ask({ ...good, frictionMat }), String(frictionMat)).toMatchObject({
        code: 'MISSING_FIELD',
        path: 'article.frictionMat',
      });
    }
  });
  it('of the name, which may be left out', () => {
    for (const id of ['', 5, null, {}])
      expect(ask({ ...good, id }), String(id)).toMatchObject({ code: 'MISSING_FIELD', path: 'article.id' });
    expect(() =>
      tieDownsRequired({ rules, article: { kind: 'general', mass: '5000 lb', length: '10 ft' } }),
    ).not.toThrow();
  });
  it('of the call', () => {
    expect(issueOf(() => tieDownsRequired({ article: good } as never))).toMatchObject({
      code: 'UNKNOWN_RULE_SET',
      path: 'rules',
    });
    expect(ask(undefined).code).toMatch(/^(MISSING_FIELD|UNKNOWN_VALUE)$/);
    expect(ask(good, { units: 'metric' })).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'units' });
    expect(() => tieDownsRequired(undefined as never)).toThrowError(expect.objectContaining({ name: 'RiggingError' }));
  });
});
