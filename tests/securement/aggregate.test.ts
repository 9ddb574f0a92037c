// Aggregate working load limit, 49 CFR 393.106(d): sum(credit · WLL) at least half of the weight.
import { type Article, kg, lb, type Part, shortTon, type TieDownPath, t } from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import {
  check,
  checkOf,
  codes,
  crate,
  type Mass,
  machine,
  missingIn,
  ofParts,
  rated,
  reasonOf,
  several,
  throughJson,
} from './plans.js';

const strength = (result: ReturnType<typeof check>, article = 'tractor') => checkOf(result, `393.106(d)/${article}`);

describe('credits by the way a tie-down runs', () => {
  // (d)(1) vehicle to cargo: half; (d)(2) back to the same side: half; (d)(3) over to the other side: all of it.
  test.each([
    ['vehicle-to-cargo', 0.5, 4000],
    ['over-same-side', 0.5, 4000],
    ['over-other-side', 1, 8000],
  ] as const)('%s: %d of 8,000 lb is %d lb', (path, credit, counted) => {
    const result = check([machine()], [rated('one', '8000 lb', { path })]);
    expect(result.tieDowns).toEqual([
      {
        id: 'one',
        holds: 'tractor',
        path,
        counts: 'workingLoadLimit',
        rating: { value: 8000, unit: 'lb' },
        credit,
        counted: { value: counted, unit: 'lb' },
        weakest: [],
      },
    ]);
    expect(result.articles[0]?.aggregate).toEqual({ value: counted, unit: 'lb' });
  });

  it('add up, each by its own way', () => {
    // 4,700/2 + 4,700/2 + 4,000 = 8,700, against 16,000/2 = 8,000.
    const result = check(
      [machine({ mass: '16000 lb' })],
      [
        rated('a', '4700 lb'),
        rated('b', '4700 lb', { path: 'over-same-side' }),
        rated('c', '4000 lb', { path: 'over-other-side' }),
      ],
    );
    expect(result.articles[0]).toMatchObject({
      aggregate: { value: 8700, unit: 'lb' },
      requiredAggregate: { value: 8000, unit: 'lb' },
    });
    expect(strength(result)).toMatchObject({
      verdict: 'pass',
      demand: { value: 8000 },
      capacity: { value: 8700 },
      utilization: 8000 / 8700,
    });
  });

  it('come after the weakest part, not before it', () => {
    // min(6,600 chain, 5,400 binder) = 5,400, half of it 2,700.
    const result = check(
      [machine()],
      [
        ofParts('a', [
          { id: 'chain', kind: 'chain', size: '3/8', grade: 70 },
          { id: 'binder', kind: 'binder', markedWll: '5400 lb' },
        ]),
      ],
    );
    expect(result.tieDowns[0]).toMatchObject({
      rating: { value: 5400 },
      counted: { value: 2700 },
      weakest: ['binder'],
    });
  });

  it('do not follow the handbook, which gives a direct tie-down all of its limit: a caution says so', () => {
    expect(codes(check([machine()], several(2, '4000 lb')).cautions)).toContain('HALF_CREDIT');
    expect(codes(check([machine()], several(2, '4000 lb', { path: 'over-other-side' })).cautions)).not.toContain(
      'HALF_CREDIT',
    );
  });
});

describe('four alike, vehicle to cargo: the most they hold is 4 × WLL', () => {
  // 4 × 1/2 × WLL = 1/2 × W. Weights from the dossier's closed forms.
  const rows: [size: string, grade: number | undefined, most: number][] = [
    ['1/4', 70, 12600],
    ['5/16', 70, 18800],
    ['3/8', 70, 26400],
    ['1/2', 70, 45200],
    ['5/16', 43, 15600],
    ['3/8', 43, 21600],
    ['5/16', 80, 18000],
    ['3/8', 80, 28400],
    ['5/16', 100, 22800],
    ['3/8', 100, 35200],
    ['3/8', undefined, 10600], // unmarked: grade 30
  ];
  const four = (size: string, grade: number | undefined) =>
    [1, 2, 3, 4].map((at) => {
      const chain = { id: 'chain', kind: 'chain', size, ...(grade === undefined ? {} : { grade }) } as Part;
      return ofParts(`chain-${at}`, [chain], { end: at < 3 ? 'front' : 'rear' });
    });

  test.each(rows)('%s grade %s: %d lb', (size, grade, most) => {
    const ask = (mass: Mass) => strength(check([machine({ mass })], four(size, grade)));
    expect(ask(lb(most))).toMatchObject({ verdict: 'pass', utilization: 1 });
    expect(ask(lb(most - 0.001)).verdict).toBe('pass');
    expect(ask(lb(most + 0.001)).verdict).toBe('fail');
    expect(ask(`${most + 0.000001} lb`).verdict).toBe('fail');
  });
});

describe('exactly half of the weight passes, in every form', () => {
  // Four chains of 3,150 lb (1/4 grade 70) hold 12,600 lb = 5,715.263 862 kg exactly.
  const chains = several(4, '3150 lb');
  const ask = (mass: Mass) => strength(check([machine({ mass })], chains));

  test.each([
    ['12600 lb'],
    ['5715.263862 kg'],
    ['5.715263862 t'],
    ['6.3 short-ton'],
    [lb(12600)],
    [kg(5715.263862)],
    [t(5.715263862)],
    [shortTon(6.3)],
    [{ value: 5715.263862, unit: 'kg' }],
    [throughJson(kg(5715.263862))],
  ] as const)('%o', (mass) => {
    expect(ask(mass)).toMatchObject({ verdict: 'pass', utilization: 1 });
  });
  test.each([
    ['12599.9999 lb'],
    ['5715.263861 kg'],
    ['5.715263861 t'],
    [kg(5715.26386199)],
    [throughJson(lb(12599.999))],
  ] as const)('%o, just below', (mass) => {
    const found = ask(mass);
    expect(found.verdict).toBe('pass');
    expect('utilization' in found && found.utilization).toBeLessThan(1);
  });
  test.each([
    ['12600.0001 lb'],
    ['5715.263863 kg'],
    ['5.715263863 t'],
    [kg(5715.26386201)],
    [throughJson(lb(12600.001))],
  ] as const)('%o, just above', (mass) => {
    const found = ask(mass);
    expect(found.verdict).toBe('fail');
    expect('utilization' in found && found.utilization).toBeGreaterThan(1);
  });

  it('with the limit in kilograms, kilonewtons or tons', () => {
    // 3,150 lb = 1,428.815 965 5 kg = 14.011 898 088 070 575 kN, all exact.
    for (const limit of ['1428.8159655 kg', '1.575 short-ton', '3.15 kip', '1.4288159655 t'] as const) {
      expect(strength(check([machine({ mass: '12600 lb' })], several(4, limit))), limit).toMatchObject({
        verdict: 'pass',
        utilization: 1,
      });
    }
    expect(strength(check([machine({ mass: '12600 lb' })], several(4, '1428.8159654 kg'))).verdict).toBe('fail');
    // 1 lbf = 4.448 221 615 260 5 N: 1,000 lb each, 4,000 lb of machine.
    expect(strength(check([machine({ mass: '4000 lb' })], several(4, '4.4482216152605 kN')))).toMatchObject({
      verdict: 'pass',
      utilization: 1,
    });
    expect(strength(check([machine({ mass: '4000 lb' })], several(4, '4.4482216152604 kN'))).verdict).toBe('fail');
  });

  it('where doubles would not add up', () => {
    // 3 × 0.7 t across = 2.1 t = half of 4.2 t; in doubles 0.7 + 0.7 + 0.7 is 2.0999999999999996.
    const three = [1, 2, 3].map((at) => rated(`strap-${at}`, '0.7 t', { holds: 'crate', path: 'over-other-side' }));
    expect(strength(check([crate({ mass: '4.2 t' })], three), 'crate')).toMatchObject({
      verdict: 'pass',
      utilization: 1,
    });
    // 0.1 + 0.2 is more than 0.3 in doubles: 0.1 t and 0.2 t hold 0.6 t, and nothing above it.
    const two = [
      rated('a', '0.1 t', { holds: 'crate', path: 'over-other-side' }),
      rated('b', '0.2 t', { holds: 'crate', path: 'over-other-side' }),
    ];
    expect(strength(check([crate({ mass: '0.6 t' })], two), 'crate')).toMatchObject({
      verdict: 'pass',
      utilization: 1,
    });
    expect(strength(check([crate({ mass: '0.60000000000001 t' })], two), 'crate').verdict).toBe('fail');
  });

  it('across: the most that n alike hold is 2 × n × WLL', () => {
    const ask3 = (mass: Mass) =>
      strength(check([crate({ mass })], several(3, '4000 lb', { holds: 'crate', path: 'over-other-side' })), 'crate');
    expect([ask3('24000 lb').verdict, ask3('24000.01 lb').verdict]).toEqual(['pass', 'fail']);
  });
});

describe('count and strength are separate', () => {
  it('more strength does not make up for a missing tie-down', () => {
    // 20 ft, not blocked: 3 tie-downs.
    const result = check(
      [crate({ mass: '4000 lb', length: '20 ft' })],
      several(2, '50000 lb', { holds: 'crate', path: 'over-other-side' }),
    );
    expect(strength(result, 'crate').verdict).toBe('pass');
    expect(checkOf(result, '393.110/crate')).toMatchObject({
      verdict: 'fail',
      demand: 3,
      capacity: 2,
      utilization: 1.5,
    });
    expect(result).toMatchObject({ verdict: 'fail', governing: '393.110/crate' });
  });
  it('more tie-downs do not make up for missing strength', () => {
    // 8 × 900/2 = 3,600 < 4,000.
    const result = check([machine()], several(8, '900 lb'));
    expect(checkOf(result, '393.110/tractor')).toMatchObject({ verdict: 'pass', demand: 2, capacity: 8 });
    expect(strength(result)).toMatchObject({ verdict: 'fail', utilization: 4000 / 3600 });
    expect(result).toMatchObject({ verdict: 'fail', governing: '393.106(d)/tractor' });
  });
  it('a tie-down over to the other side counts whole in strength and once in number', () => {
    const result = check(
      [crate({ length: '20 ft' })],
      [rated('one', '50000 lb', { holds: 'crate', path: 'over-other-side' })],
    );
    expect(result.articles[0]).toMatchObject({ count: 1, minimumCount: 3 });
  });
});

describe('a tie-down whose rating is not known', () => {
  const unknown = ofParts(
    'unknown',
    [
      { id: 'chain', kind: 'chain', size: '3/8', grade: 70 },
      { id: 'binder', kind: 'binder' },
    ],
    { end: 'front' },
  );

  it('is not needed where the others are enough', () => {
    const result = check([machine()], [...several(2, '8000 lb'), unknown]);
    expect(strength(result)).toMatchObject({ verdict: 'pass', utilization: 0.5 });
    expect(result.articles[0]?.aggregate).toBeNull();
    expect(reasonOf(checkOf(result, '393.108(a)/tractor'))).toBe('RATING_NOT_NEEDED');
    expect(checkOf(result, '393.108(a)/tractor').verdict).toBe('not-applicable');
    expect(result.verdict).toBe('pass');
  });
  it('leaves the answer open where it might be enough, and names what is missing', () => {
    // Known 2 × 1,500/2 = 1,500, ceiling of the third 6,600/2 = 3,300: 4,800 at most, 4,000 needed.
    const result = check([machine()], [...several(2, '1500 lb'), unknown]);
    expect(strength(result).verdict).toBe('undetermined');
    expect(missingIn(strength(result))).toEqual(['RATING_NOT_KNOWN']);
    expect(strength(result)).toMatchObject({ missing: [{ params: { tieDowns: 'unknown' } }] });
    expect(missingIn(checkOf(result, '393.108(a)/tractor'))).toEqual(['PART_NOT_MARKED']);
    expect(result.verdict).toBe('undetermined');
  });
  it('does not hide that even the most it can be is too little', () => {
    // 2 × 600/2 + 6,600/2 = 3,900 < 4,000; at 2 × 700/2 the ceiling is 4,000.
    expect(strength(check([machine()], [...several(2, '600 lb'), unknown]))).toMatchObject({
      verdict: 'fail',
      capacity: { value: 3900 },
    });
    expect(strength(check([machine()], [...several(2, '700 lb'), unknown])).verdict).toBe('undetermined');
    expect(strength(check([machine()], [...several(2, '699.99 lb'), unknown])).verdict).toBe('fail');
  });
  it('without a ceiling leaves the answer open', () => {
    const bare = rated('bare', '1 lb', { capacities: {} });
    const result = check([machine()], [...several(2, '100 lb'), bare]);
    expect(missingIn(checkOf(result, '393.108(a)/tractor'))).toEqual(['NO_WORKING_LOAD_LIMIT']);
    expect(result.tieDowns[2]).toMatchObject({ rating: null, counted: null, credit: 0.5 });
  });
  it('takes another capacity for none', () => {
    const european = rated('strap', '1 lb', {
      capacities: { lashingCapacity: '5000 daN', maximumSecuringLoad: '50 kN' },
    });
    expect(missingIn(checkOf(check([machine()], [european]), '393.108(a)/tractor'))).toEqual(['NO_WORKING_LOAD_LIMIT']);
  });
  it('is listed in the number, which stays open where it rests on it', () => {
    const result = check([machine()], [unknown, rated('known', '8000 lb')]);
    expect(result.articles[0]?.count).toBe(2);
    expect(missingIn(checkOf(result, '393.110/tractor'))).toEqual(['RATING_NOT_KNOWN']);
    // 8,000/2 = 4,000 is enough without it, one tie-down of two is not.
    expect(strength(result)).toMatchObject({ verdict: 'pass', utilization: 1 });
    expect(missingIn(checkOf(result, '393.108(a)/tractor'))).toEqual(['PART_NOT_MARKED']);
    expect(result.verdict).toBe('undetermined');
  });
  // 20 ft, not blocked: 2 + ceil(10/10) = 3.
  test.each([
    [3, 0, 'pass'],
    [3, 1, 'pass'],
    [2, 1, 'undetermined'],
    [2, 0, 'fail'],
    [1, 2, 'undetermined'],
    [1, 1, 'fail'],
    [0, 3, 'undetermined'],
    [0, 2, 'fail'],
  ] as const)('%d known and %d unknown of three that cargo needs: %s', (known, open, verdict) => {
    const bare = Array.from({ length: open }, (_, at) => rated(`bare-${at}`, '1 lb', { capacities: {} }));
    const tieDowns = [...several(known, '50000 lb'), ...bare].map((each) => ({ ...each, holds: 'crate' }));
    const result = check([crate({ length: '20 ft' })], tieDowns);
    expect(checkOf(result, '393.110/crate').verdict).toBe(verdict);
    expect(result.articles[0]?.count).toBe(known + open);
    expect(result.verdict).toBe(verdict);
  });
  it('is not asked about where no number is', () => {
    const article = machine({ length: '20 ft', securedUnder: '393.110', specialMethods: true });
    const result = check([article], [rated('known', '8000 lb'), unknown]);
    expect(checkOf(result, '393.108(a)/tractor').verdict).toBe('not-applicable');
    expect(result.verdict).toBe('pass');
  });
});

describe('a tie-down stated as a whole', () => {
  it('is taken at its word, as an assumption', () => {
    const result = check([machine()], several(2, '8000 lb'));
    expect(result.assumptions.filter(({ code }) => code === 'STATED_AS_WHOLE')).toHaveLength(2);
    expect(checkOf(result, '393.108(a)/tractor').verdict).toBe('pass');
  });
});

describe('nothing holds the article', () => {
  it('fails in strength and in number, with no capacity at all', () => {
    const result = check([machine(), crate()], several(4, '8000 lb'));
    expect(strength(result, 'crate')).toMatchObject({
      verdict: 'fail',
      capacity: { value: 0, unit: 'lb' },
      utilization: null,
    });
    expect(checkOf(result, '393.110/crate')).toMatchObject({
      verdict: 'fail',
      demand: 2,
      capacity: 0,
      utilization: null,
    });
    expect(result).toMatchObject({ verdict: 'fail', governing: '393.106(d)/crate' });
  });
});

describe('articles side by side', () => {
  const bucket: Article = { id: 'bucket', kind: 'general', mass: '900 lb', length: '5 ft' };

  it('a detached attachment is an article of its own', () => {
    const without = check([machine(), bucket], several(4, '8000 lb'));
    expect(without.articles.map(({ id, count, minimumCount }) => [id, count, minimumCount])).toEqual([
      ['tractor', 4, 2],
      ['bucket', 0, 1],
    ]);
    expect(without.verdict).toBe('fail');
    // 900 lb needs 450 lb: one strap of 450 lb across.
    const strap = rated('strap', '450 lb', { holds: 'bucket', path: 'over-other-side' });
    const withStrap = check([machine(), bucket], [...several(4, '8000 lb'), strap]);
    expect(strength(withStrap, 'bucket')).toMatchObject({ verdict: 'pass', utilization: 1 });
    expect(withStrap.verdict).toBe('pass');
    expect(
      strength(check([machine(), bucket], [...several(4, '8000 lb'), { ...strap, path: 'over-same-side' }]), 'bucket')
        .verdict,
    ).toBe('fail');
  });

  it('a tie-down counts for the article it holds and no other', () => {
    const result = check(
      [machine(), crate()],
      [
        ...several(4, '8000 lb'),
        ...several(2, '9000 lb').map((each, at) => ({ ...each, id: `crate-${at}`, holds: 'crate' })),
      ],
    );
    expect(result.articles.map(({ aggregate }) => aggregate?.value)).toEqual([16000, 9000]); // 4 × 8,000/2; 2 × 9,000/2
  });
});

describe('other units', () => {
  const paths: TieDownPath[] = ['vehicle-to-cargo', 'over-other-side'];
  it('shows kilograms for si and decides in the law’s own', () => {
    const plan = [machine({ mass: '12600 lb' })];
    const chains = several(4, '3150 lb', { path: paths[0] ?? 'vehicle-to-cargo' });
    const us = check(plan, chains);
    const si = check(plan, chains, { units: 'si' });
    expect(si.articles[0]?.requiredAggregate?.unit).toBe('kg');
    // 6,300 lb × 0.453 592 37 = 2,857.631 931 kg, on both sides of the test.
    expect(si.articles[0]?.requiredAggregate?.value).toBeCloseTo(2857.631931, 9);
    expect(si.articles[0]?.aggregate?.value).toBeCloseTo(2857.631931, 9);
    expect(si.tieDowns[0]?.rating?.value).toBeCloseTo(1428.8159655, 9);
    expect(si.tieDowns[0]?.counted?.unit).toBe('kg');
    expect(strength(si)).toMatchObject({ verdict: 'pass', utilization: 1 });
    expect(si.checks.map(({ id, verdict }) => [id, verdict])).toEqual(
      us.checks.map(({ id, verdict }) => [id, verdict]),
    );
  });
  it('does not let the printed kg column decide: 5/16 grade 80 is 2,000 kg there, 4,500 lb in the law’s own', () => {
    // Four of them hold 18,000 lb = 8,164.662 66 kg, where 4 × 2,000 kg would stop at 8,000 kg.
    const alloy = [1, 2, 3, 4].map((at) =>
      ofParts(`c${at}`, [{ id: 'chain', kind: 'chain', size: '5/16', grade: 80 }]),
    );
    const ask = (mass: Mass) => strength(check([machine({ mass })], alloy, { units: 'si' })).verdict;
    expect([ask('8164.66266 kg'), ask('8164.66267 kg')]).toEqual(['pass', 'fail']);
  });
});
