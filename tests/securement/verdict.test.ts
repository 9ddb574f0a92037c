// From checks to the verdict: a failed requirement decides, then a missing fact, then a pass; practice never.
import type { Article, Part, TieDown } from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { check, checkOf, codes, crate, machine, ofParts, rated, several, throughJson } from './plans.js';

const unknown = (id: string, size: '1/2' | '1/4' = '1/2') =>
  ofParts(
    id,
    [
      { id: 'chain', kind: 'chain', size, grade: 70 },
      { id: 'binder', kind: 'binder' },
    ],
    { end: 'front' },
  ); // at most 11,300 lb, of 1/4 in chain 3,150 lb

describe('strength × count × a further requirement', () => {
  // 8,000 lb and 10 ft: 4,000 lb and 2 tie-downs under the general rules. The accessory is the further requirement.
  const strong = '9000 lb'; // 4,500 counts
  const weak = '100 lb'; // 50 counts
  type Word = 'pass' | 'fail' | 'undetermined';
  const table: [strength: Word, count: Word, accessory: Word, verdict: Word][] = [
    ['pass', 'pass', 'pass', 'pass'],
    ['pass', 'pass', 'undetermined', 'undetermined'],
    ['pass', 'pass', 'fail', 'fail'],
    ['pass', 'undetermined', 'pass', 'undetermined'],
    ['pass', 'undetermined', 'undetermined', 'undetermined'],
    ['pass', 'undetermined', 'fail', 'fail'],
    ['pass', 'fail', 'pass', 'fail'],
    ['pass', 'fail', 'undetermined', 'fail'],
    ['pass', 'fail', 'fail', 'fail'],
    ['fail', 'pass', 'pass', 'fail'],
    ['fail', 'pass', 'undetermined', 'fail'],
    ['fail', 'undetermined', 'pass', 'fail'],
    ['fail', 'fail', 'pass', 'fail'],
    ['undetermined', 'pass', 'pass', 'undetermined'],
    ['undetermined', 'pass', 'undetermined', 'undetermined'],
    ['undetermined', 'pass', 'fail', 'fail'],
    ['undetermined', 'undetermined', 'pass', 'undetermined'],
    ['undetermined', 'undetermined', 'undetermined', 'undetermined'],
    ['undetermined', 'undetermined', 'fail', 'fail'],
    ['undetermined', 'fail', 'pass', 'fail'],
  ];
  // Of a tie-down that is not known 11,300/2 = 5,650 lb count at most, of the thin one 3,150/2 = 1,575 lb.
  const plans: Record<Word, Record<Word, readonly TieDown[]>> = {
    pass: {
      pass: several(2, strong),
      undetermined: [...several(1, strong), unknown('u')],
      fail: several(1, strong),
    },
    undetermined: {
      pass: [...several(2, weak), unknown('u')],
      undetermined: [unknown('u'), unknown('v')],
      fail: [unknown('u')],
    },
    fail: {
      pass: several(2, weak),
      undetermined: [...several(1, weak), unknown('u', '1/4')],
      fail: several(1, weak),
    },
  };
  test.each(table)('strength %s, count %s, accessory %s: %s', (strength, count, accessory, verdict) => {
    const article = machine({
      accessories: [{ id: 'bucket', ...(accessory === 'undetermined' ? {} : { locked: accessory === 'pass' }) }],
    });
    const result = check([article], plans[strength][count]);
    expect(checkOf(result, '393.106(d)/tractor').verdict).toBe(strength);
    expect(result.checks.find(({ title }) => title === 'Number of tie-downs')?.verdict).toBe(count);
    expect(result.checks.find(({ subject }) => subject === 'bucket')?.verdict).toBe(accessory);
    expect(result.verdict).toBe(verdict);
    const governing = result.checks.find(({ id }) => id === result.governing);
    expect(governing).toMatchObject({ verdict, weight: 'requirement' });
  });
});

describe('one article of two', () => {
  it('decides for both', () => {
    const good = several(4, '9000 lb');
    const forCrate = (limit: '9000 lb' | '100 lb') =>
      several(2, limit, { holds: 'crate' }).map((each) => ({ ...each, id: `crate-${each.id}` }));
    expect(check([machine(), crate()], [...good, ...forCrate('9000 lb')]).verdict).toBe('pass');
    const result = check([machine(), crate()], [...good, ...forCrate('100 lb')]);
    expect(result).toMatchObject({ verdict: 'fail', governing: '393.106(d)/crate' });
    expect(checkOf(result, '393.102(c)/tractor').verdict).toBe('pass');
    expect(checkOf(result, '393.102(c)/crate').verdict).toBe('not-applicable');
  });
});

describe('the governing check', () => {
  it('of a pass is the one with the highest utilization', () => {
    // Strength 4,000/9,000 = 0.44; count 2/2 = 1.
    expect(check([machine()], several(2, '9000 lb')).governing).toBe('393.110/tractor');
    // Strength 4,000/4,400 = 0.91; count 2/4 = 0.5.
    expect(check([machine()], several(4, '2200 lb')).governing).toBe('393.106(d)/tractor');
  });
  it('of a fail is the worst of those that fail', () => {
    // Strength 4,000/2,000 = 2; count 4/2 = 2 for 25 ft, 2 + ceil(15/10) = 4: the first in order.
    const tie = check([crate({ length: '25 ft' })], several(2, '2000 lb', { holds: 'crate' }));
    expect(tie.governing).toBe('393.106(d)/crate');
    // Strength 4,000/3,000 = 1.33; count 2.
    expect(check([crate({ length: '25 ft' })], several(2, '3000 lb', { holds: 'crate' })).governing).toBe(
      '393.110/crate',
    );
  });
  it('of a fail with a failed condition is that condition', () => {
    const article = machine({ accessories: [{ id: 'bucket', locked: false }] });
    const result = check([article], several(2, '3000 lb'));
    expect(result.checks.find(({ id }) => id === result.governing)?.subject).toBe('bucket');
  });
  it('of an open verdict is one that is open', () => {
    const result = check([machine()], [unknown('a'), unknown('b')]);
    expect(checkOf(result, result.governing ?? '').verdict).toBe('undetermined');
  });
});

describe('practice never decides', () => {
  const heavy = (more: Partial<Article> = {}) => machine({ mass: '16000 lb', length: '14 ft', ...more });
  const fourOf = (...parts: Part[]) =>
    [1, 2, 3, 4].map((at) => ofParts(`chain-${at}`, parts, { end: at < 3 ? 'front' : 'rear' }));

  it('grade 43 chain passes at its rating, and the advice says grade 70', () => {
    // Four 3/8 grade 43 (5,400 lb): 10,800 ≥ 8,000.
    const result = check([heavy()], fourOf({ id: 'chain', kind: 'chain', size: '3/8', grade: 43 }));
    expect(result.verdict).toBe('pass');
    expect(checkOf(result, 'practice/grade/tractor')).toMatchObject({
      verdict: 'fail',
      weight: 'practice',
      clause: 'common practice',
    });
  });
  it('grade 70 and up follows it', () => {
    for (const chain of [
      { id: 'chain', kind: 'chain', size: '3/8', grade: 70 },
      { id: 'chain', kind: 'chain', size: '3/8', grade: 80 },
    ] as Part[]) {
      expect(checkOf(check([heavy()], fourOf(chain)), 'practice/grade/tractor').verdict).toBe('pass');
    }
  });
  it('a chain with a mark of its own and no grade is asked for none', () => {
    const marked: Part = { id: 'chain', kind: 'chain', size: '3/8', markedWll: '6600 lb' };
    const idsOf = (tieDowns: readonly TieDown[]) => check([heavy()], tieDowns).checks.map(({ id }) => id);
    expect(idsOf(fourOf(marked))).not.toContain('practice/grade/tractor');
    expect(idsOf(several(4, '9000 lb'))).not.toContain('practice/grade/tractor');
    // Beside one that counts by grade the check is there, and looks at that one.
    const mixed = [...fourOf(marked), ofParts('fifth', [{ id: 'chain', kind: 'chain', size: '3/8', grade: 43 }])];
    expect(checkOf(check([heavy()], mixed), 'practice/grade/tractor')).toMatchObject({
      verdict: 'fail',
      because: { code: 'BELOW_GRADE_70', params: { tieDowns: 'fifth' } },
    });
  });
  it('names the tie-downs that are below it', () => {
    const good = fourOf({ id: 'chain', kind: 'chain', size: '1/2', grade: 70 });
    const old = ofParts('old', [{ id: 'chain', kind: 'chain', size: '1/2' }]);
    const low = ofParts('low', [{ id: 'chain', kind: 'chain', size: '1/2', grade: 43 }]);
    expect(checkOf(check([heavy()], [old, ...good, low]), 'practice/grade/tractor')).toMatchObject({
      because: { params: { tieDowns: 'old, low' } },
    });
  });
  it('an unmarked chain passes as grade 30, and the advice says so', () => {
    // Four 1/2 grade 30 (4,500 lb): 9,000 ≥ 8,000.
    const result = check([heavy()], fourOf({ id: 'chain', kind: 'chain', size: '1/2' }));
    expect(result.verdict).toBe('pass');
    expect(checkOf(result, 'practice/grade/tractor').verdict).toBe('fail');
  });
  it('four 5/16 grade 70 meet the regulation and miss the handbook floor', () => {
    // 4 × 4,700/2 = 9,400 ≥ 8,000, each below 5,000.
    const result = check([heavy()], fourOf({ id: 'chain', kind: 'chain', size: '5/16', grade: 70 }));
    expect(result.verdict).toBe('pass');
    expect(checkOf(result, 'practice/handbook/tractor')).toMatchObject({ verdict: 'fail', weight: 'practice' });
  });
  test.each([
    ['4999.99 lb', 'fail'],
    ['5000 lb', 'pass'],
    ['5000.01 lb', 'pass'],
    ['2267.96185 kg', 'pass'],
    ['2267.96184 kg', 'fail'],
  ] as const)('the handbook floor at %s: %s', (limit, verdict) => {
    // 5,000 lb = 2,267.961 85 kg exactly.
    const result = check([heavy()], several(4, limit));
    expect(checkOf(result, 'practice/handbook/tractor').verdict).toBe(verdict);
    expect(result.verdict).toBe('pass');
  });
  it('the handbook floor is for heavy machines', () => {
    expect(check([machine()], several(4, '4000 lb')).checks.map(({ id }) => id)).not.toContain(
      'practice/handbook/tractor',
    );
  });
  it('the handbook is a document of its own, not 49 CFR', () => {
    const { sources } = check([heavy()], several(4, '4000 lb'));
    const handbook = sources.find(({ document, clause }) => `${document} ${clause}`.includes('Handbook'));
    expect(handbook).toBeDefined();
    expect(handbook?.document).not.toBe('49 CFR');
    expect(handbook).not.toHaveProperty('edition'); // 2024 is that of the regulation
  });
  it('two tie-downs on a light machine are lawful; haulers use four', () => {
    const result = check([machine()], several(2, '9000 lb'));
    expect(result.verdict).toBe('pass');
    expect(checkOf(result, 'practice/count/tractor')).toMatchObject({
      verdict: 'fail',
      weight: 'practice',
      demand: 4,
      capacity: 2,
    });
  });
  it('one tie-down on a small crate is lawful; two are good practice', () => {
    const result = check([crate({ mass: '1000 lb', length: '4 ft' })], [rated('one', '1000 lb', { holds: 'crate' })]);
    expect(result.verdict).toBe('pass');
    expect(checkOf(result, 'practice/count/crate')).toMatchObject({ verdict: 'fail', demand: 2, capacity: 1 });
  });
});

describe('what stands beside the verdict', () => {
  it('inspections, 392.9: before driving, within 50 mi, then 150 mi or 3 h or a change of duty', () => {
    const { inspections } = check([machine()], several(2, '9000 lb'));
    expect(inspections.map(({ when, distance, time }) => [when, distance?.value, time?.value])).toEqual([
      ['before-driving', undefined, undefined],
      ['first-check', 50, undefined],
      ['re-check', 150, 3],
      ['change-of-duty-status', undefined, undefined],
    ]);
    expect(inspections[2]).toMatchObject({ distance: { unit: 'mi' }, time: { unit: 'h' } });
    for (const { clause } of inspections) expect(clause).toContain('392.9');
  });
  it('performance deemed met by meeting the rest, from memory', () => {
    const result = check([machine()], several(2, '9000 lb'));
    expect(checkOf(result, '393.102(c)/tractor')).toMatchObject({ verdict: 'pass', clause: '49 CFR 393.102(c)' });
    expect(result.sources.find(({ clause }) => clause === '393.102(c)')?.provenance).toBe('memory');
  });
  it('a caution that direction is not looked at', () => {
    expect(codes(check([machine()], several(2, '9000 lb')).cautions)).toEqual(
      expect.arrayContaining(['DIRECTION_NOT_CHECKED', 'STRAIGHT_PULL', 'STAND_CLEAR', 'FOLLOW_THE_MARK']),
    );
  });
  it('ids that are used once', () => {
    const article = machine({
      mass: '12000 lb',
      accessories: [
        { id: 'a', lowered: true },
        { id: 'b', locked: true },
      ],
      articulated: true,
    });
    const ids = check([article, crate()], [...several(4, '9000 lb'), unknown('u')]).checks.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });
  it('every check with a clause, a title and a weight', () => {
    for (const each of check(
      [machine({ mass: '12000 lb', articulated: true })],
      [...several(3, '9000 lb'), unknown('u')],
    ).checks) {
      expect(each.clause).toMatch(/^49 CFR \d|^common practice$|handbook/i);
      expect(each.title).not.toBe('');
      expect(['requirement', 'practice']).toContain(each.weight);
    }
  });
});

describe('without working', () => {
  const plan = () =>
    check(
      [
        machine({
          mass: '12000 lb',
          accessories: [{ id: 'bucket', lowered: true }],
          frictionMat: { massOnMat: '4000 lb' },
        }),
      ],
      [...several(4, '4000 lb'), ofParts('old', [{ id: 'chain', kind: 'chain', size: '3/8' }]), unknown('u')],
    );
  it('the answer is the same', () => {
    const full = plan();
    const bare = check(
      [
        machine({
          mass: '12000 lb',
          accessories: [{ id: 'bucket', lowered: true }],
          frictionMat: { massOnMat: '4000 lb' },
        }),
      ],
      [...several(4, '4000 lb'), ofParts('old', [{ id: 'chain', kind: 'chain', size: '3/8' }]), unknown('u')],
      { working: false },
    );
    expect([bare.steps, bare.sources, bare.assumptions]).toEqual([[], [], []]);
    for (const key of [
      'verdict',
      'governing',
      'rules',
      'articles',
      'tieDowns',
      'checks',
      'applicability',
      'inspections',
      'cautions',
    ] as const) {
      expect(throughJson(bare[key]), key).toEqual(throughJson(full[key]));
    }
  });
});
