// Machines and vehicles, 49 CFR 393.128 and 393.130: both ends, accessory equipment, articulation, and the choice of
// rule for a machine under 10,000 lb.
import type { Accessory, Article, Part, TieDown } from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { check, checkOf, codes, crate, machine, missingIn, ofParts, rated, reasonOf, several } from './plans.js';

const heavy = (more: Partial<Article> = {}) => machine({ mass: '12000 lb', length: '14 ft', ...more });
const ends = (...each: ('front' | 'rear' | undefined)[]) =>
  each.map((end, at) => rated(`tie-down-${at + 1}`, '9000 lb', end === undefined ? {} : { end }));

describe('four tie-downs for a heavy machine, 393.130(c)', () => {
  test.each([3, 4, 5])('%d of them', (count) => {
    const result = check([heavy()], several(count, '9000 lb'));
    expect(checkOf(result, '393.130/tractor')).toMatchObject({
      verdict: count < 4 ? 'fail' : 'pass',
      demand: 4,
      capacity: count,
    });
    expect(result.verdict).toBe(count < 4 ? 'fail' : 'pass');
    expect(result.articles[0]).toMatchObject({ rule: '393.130', minimumCount: 4 });
  });
  it('starts at 10,000 lb', () => {
    expect(check([machine({ mass: '10000 lb' })], several(3, '9000 lb')).verdict).toBe('fail');
    expect(check([machine({ mass: '9999.99 lb' })], several(3, '9000 lb')).verdict).toBe('pass');
  });
});

describe('front and rear', () => {
  const ask = (article: Article, tieDowns: readonly TieDown[], rule = '393.130(c)', beside: readonly Article[] = []) =>
    checkOf(check([article, ...beside], tieDowns), `${rule}/tractor`);

  it('a heavy machine is held at both', () => {
    expect(ask(heavy(), ends('front', 'front', 'rear', 'rear')).verdict).toBe('pass');
    expect(ask(heavy(), ends('front', 'rear', undefined, undefined)).verdict).toBe('pass');
  });
  // 393.130(c)(2): mounting points made for the purpose will do in place of the ends.
  it('tie-downs at one end only leave it open, whichever it is', () => {
    for (const end of ['front', 'rear'] as const) {
      const result = check([heavy()], ends(end, end, end, end));
      expect(missingIn(checkOf(result, '393.130(c)/tractor'))).toEqual(['MOUNTING_POINTS_NOT_STATED']);
      expect(result).toMatchObject({ verdict: 'undetermined', governing: '393.130(c)/tractor' });
      expect(check([heavy()], ends(end, end, end)).verdict).toBe('fail'); // three are too few all the same
    }
  });
  it('a single one at one end leaves it open too', () => {
    expect(missingIn(ask(heavy(), ends('front')))).toEqual(['MOUNTING_POINTS_NOT_STATED']);
  });
  it('no tie-down at all holds neither', () => {
    const found = ask(
      heavy(),
      ends('front', 'rear').map((each) => ({ ...each, holds: 'bucket' })),
      '393.130(c)',
      [crate({ id: 'bucket', length: '5 ft' })],
    );
    expect(found.verdict).toBe('fail');
    expect(reasonOf(found)).toBe('ONE_END_ONLY');
  });
  it('a lighter machine under 393.130 is asked the same', () => {
    const chosen = machine({ securedUnder: '393.130' });
    expect(missingIn(ask(chosen, ends('rear', 'rear', 'rear', 'rear')))).toEqual(['MOUNTING_POINTS_NOT_STATED']);
    expect(ask(chosen, ends('rear', 'rear', 'rear', 'front')).verdict).toBe('pass');
  });
  it('the weight of a car or van decides which of the two it is asked', () => {
    const van = (mass: '10000 lb' | '10000.01 lb'): Article => ({
      id: 'tractor',
      kind: 'light-vehicle',
      mass,
      length: '10 ft',
    });
    const front = ends('front', 'front', 'front', 'front');
    expect(reasonOf(ask(van('10000 lb'), front, '393.128(b)'))).toBe('ONE_END_ONLY');
    expect(missingIn(ask(van('10000.01 lb'), front))).toEqual(['MOUNTING_POINTS_NOT_STATED']);
  });
  it('ends that are not stated are a missing fact', () => {
    expect(missingIn(ask(heavy(), ends('front', 'front', 'front', undefined)))).toEqual(['END_NOT_STATED']);
    expect(check([heavy()], ends(undefined, undefined, undefined, undefined)).verdict).toBe('undetermined');
  });
  it('a car is held at both, 393.128', () => {
    const van: Article = { id: 'tractor', kind: 'light-vehicle', mass: '6000 lb', length: '18 ft' };
    expect(ask(van, ends('front', 'rear'), '393.128(b)').verdict).toBe('pass');
    for (const end of ['front', 'rear'] as const) {
      const found = ask(van, ends(end, end), '393.128(b)');
      expect(found.verdict).toBe('fail');
      expect(reasonOf(found)).toBe('ONE_END_ONLY');
    }
    expect(ask(van, ends('front', undefined), '393.128(b)').verdict).toBe('undetermined');
    expect(check([van], ends('front', 'rear')).articles[0]).toMatchObject({ rule: '393.128', minimumCount: 2 });
  });
  it('a damaged tie-down holds no end', () => {
    const bad = ofParts('bad', [{ id: 'chain', kind: 'chain', size: '3/8', grade: 70, condition: 'damaged' }], {
      end: 'rear',
    });
    const four = ends('front', 'front', 'front', 'front');
    expect(missingIn(ask(heavy(), [...four, bad]))).toEqual(['MOUNTING_POINTS_NOT_STATED']);
    expect(ask(machine({ securedUnder: '393.128' }), [...four, bad], '393.128(b)').verdict).toBe('fail');
    expect(reasonOf(ask(heavy(), [bad]))).toBe('ONE_END_ONLY'); // nothing sound holds it
  });
  it('are not asked under the general rules', () => {
    const result = check([machine()], ends('front', 'front'));
    expect(result.checks.map(({ id }) => id)).not.toContain('393.128(b)/tractor');
    expect(result).toMatchObject({ verdict: 'pass', articles: [{ rule: '393.110' }] });
  });
});

// An unmarked part, or an anchor point that is not listed: the tie-down may be worth nothing. It counts neither as
// one nor as none: without it the number and the ends are enough, or with it they are still not, or it is open.
describe('a tie-down whose rating is not known', () => {
  const chain: Part = { id: 'chain', kind: 'chain', size: '3/8', grade: 70 }; // 6,600 lb, of which half counts
  const good = (id: string, end: 'front' | 'rear') => ofParts(id, [chain], { end });
  const rope = (id: string, end?: 'front' | 'rear') =>
    ofParts(id, [{ id: 'rope', kind: 'fiber-rope' }], end === undefined ? {} : { end });
  const verdicts = (article: Article, tieDowns: readonly TieDown[]) => {
    const result = check([article], tieDowns);
    const { rule } = result.articles[0] ?? {};
    return {
      whole: result.verdict,
      strength: checkOf(result, '393.106(d)/tractor').verdict,
      rating: checkOf(result, '393.108(a)/tractor').verdict,
      number: checkOf(result, `${rule}/tractor`).verdict,
      ends: checkOf(result, `${rule === '393.128' ? '393.128(b)' : '393.130(c)'}/tractor`).verdict,
    };
  };

  it('at the rear of a compact tractor leaves it open, though the chain at its front is strong enough', () => {
    // 6,600/2 = 3,300 ≥ 3,940/2 = 1,970. 12 ft: two under 393.128, three by length.
    const tractor = machine({ mass: '3940 lb', length: '12 ft' });
    const result = check([tractor], [good('front', 'front'), rope('rear', 'rear')]);
    expect(result).toMatchObject({ verdict: 'undetermined', articles: [{ rule: '393.128', count: 2 }] });
    expect(checkOf(result, '393.106(d)/tractor').verdict).toBe('pass');
    for (const id of ['393.128/tractor', '393.128(b)/tractor']) {
      expect(missingIn(checkOf(result, id)), id).toEqual(['RATING_NOT_KNOWN']);
      expect(checkOf(result, id), id).toMatchObject({ missing: [{ params: { tieDowns: 'rear' } }] });
    }
    expect(missingIn(checkOf(result, '393.108(a)/tractor'))).toEqual(['PART_NOT_MARKED']);
    expect(checkOf(result, '393.102(c)/tractor').verdict).toBe('not-applicable');
    // With a mark it is known, and without the rope there is one tie-down of two.
    const marked = ofParts('rear', [{ id: 'rope', kind: 'fiber-rope', markedWll: '100 lb' }], { end: 'rear' });
    expect(check([tractor], [good('front', 'front'), marked]).verdict).toBe('pass');
    expect(check([tractor], [good('front', 'front')]).verdict).toBe('fail');
  });

  // 10,000 lb: four. 4 × 3,300 = 13,200, 3 × 3,300 = 9,900 and 2 × 3,300 = 6,600 are all at least 5,000.
  test.each([
    [4, 0, 'pass'],
    [4, 1, 'pass'],
    [3, 2, 'undetermined'],
    [3, 1, 'undetermined'],
    [3, 0, 'fail'],
    [2, 2, 'undetermined'],
    [2, 1, 'fail'],
  ] as const)('%d known and %d unknown of the four of a heavy machine: %s', (known, unknown, verdict) => {
    const end = (at: number) => (at % 2 === 0 ? 'front' : 'rear');
    const tieDowns = [
      ...Array.from({ length: known }, (_, at) => good(`good-${at}`, end(at))),
      ...Array.from({ length: unknown }, (_, at) => rope(`rope-${at}`, end(at))),
    ];
    const rating = unknown === 0 ? 'pass' : verdict === 'pass' ? 'not-applicable' : 'undetermined';
    expect(verdicts(machine({ mass: '10000 lb' }), tieDowns)).toEqual({
      whole: verdict,
      strength: 'pass',
      rating,
      number: verdict,
      ends: 'pass',
    });
  });

  it('is one with an anchor point that is not listed, or without a working load limit, just as well', () => {
    const three = several(3, '9000 lb');
    const none: TieDown[] = [
      { id: 'open', holds: 'tractor', path: 'vehicle-to-cargo', end: 'rear', parts: [chain] },
      rated('open', '1 lb', { capacities: {}, end: 'rear' }),
    ];
    for (const open of none) {
      const result = check([machine({ mass: '10000 lb' })], [...three, open]);
      expect(missingIn(checkOf(result, '393.130/tractor'))).toEqual(['RATING_NOT_KNOWN']);
      expect(result.verdict).toBe('undetermined');
    }
  });

  it('is a known one, worth nothing, where a part of it is damaged', () => {
    const bad = ofParts(
      'bad',
      [
        { ...chain, condition: 'damaged' },
        { id: 'binder', kind: 'binder' },
      ],
      { end: 'rear' },
    );
    const result = check([machine({ mass: '10000 lb' })], [...several(3, '9000 lb'), bad]);
    expect(checkOf(result, '393.130/tractor')).toMatchObject({ verdict: 'fail', demand: 4, capacity: 3 });
  });

  it('holds an end only if the others do', () => {
    const four = [1, 2, 3, 4].map((at) => good(`front-${at}`, 'front'));
    expect(verdicts(heavy(), [...four, rope('rear', 'rear')])).toEqual({
      whole: 'undetermined',
      strength: 'pass', // 4 × 3,300 ≥ 6,000
      rating: 'undetermined', // strength and number do without it, the ends do not
      number: 'pass',
      ends: 'undetermined',
    });
    const open = (tieDown: TieDown) => missingIn(checkOf(check([heavy()], [...four, tieDown]), '393.130(c)/tractor'));
    expect(open(rope('rear', 'rear'))).toEqual(['RATING_NOT_KNOWN']);
    expect(open(rope('front', 'front'))).toEqual(['MOUNTING_POINTS_NOT_STATED']);
    expect(open(rope('somewhere'))).toEqual(['END_NOT_STATED']);
    expect(verdicts(heavy(), [...four, good('rear', 'rear'), rope('more', 'rear')])).toMatchObject({
      whole: 'pass',
      rating: 'not-applicable',
      ends: 'pass',
    });
  });

  it('at the end that is held anyway does not save 393.128', () => {
    const article = machine({ securedUnder: '393.128' });
    expect(verdicts(article, [good('a', 'front'), good('b', 'front'), rope('c', 'front')])).toMatchObject({
      whole: 'fail',
      ends: 'fail',
    });
    expect(verdicts(article, [good('a', 'front'), good('b', 'front'), rope('c', 'rear')])).toMatchObject({
      whole: 'undetermined',
      ends: 'undetermined',
    });
  });

  it('is not needed where the strength is, only where all three are enough without it', () => {
    // 16,000 lb needs 8,000. Four of 1,000/2 are 2,000, and half of what the rope may be is not bounded.
    expect(verdicts(heavy({ mass: '16000 lb' }), [...several(4, '1000 lb'), rope('more', 'rear')])).toEqual({
      whole: 'undetermined',
      strength: 'undetermined',
      rating: 'undetermined',
      number: 'pass',
      ends: 'pass',
    });
    // 4 × 4,000/2 = 8,000 are enough; a hundredth of a pound less each is not.
    expect(verdicts(heavy({ mass: '16000 lb' }), [...several(4, '4000 lb'), rope('more', 'rear')])).toMatchObject({
      whole: 'pass',
      rating: 'not-applicable',
    });
    expect(verdicts(heavy({ mass: '16000 lb' }), [...several(4, '3999.99 lb'), rope('more', 'rear')])).toMatchObject({
      whole: 'undetermined',
      rating: 'undetermined',
    });
  });

  it('does not matter where another rule is met without it', () => {
    // 6,000 lb, 15 ft: three by length. Held at the front only but for the rope, 393.128 is open, 393.110 is met.
    const result = check(
      [machine({ mass: '6000 lb', length: '15 ft' })],
      [good('a', 'front'), good('b', 'front'), good('c', 'front'), rope('d', 'rear')],
    );
    expect(result).toMatchObject({ verdict: 'pass', articles: [{ rule: '393.110', minimumCount: 3 }] });
    expect(checkOf(result, '393.108(a)/tractor').verdict).toBe('not-applicable');
  });

  it('is named, and the known ones are not', () => {
    const result = check(
      [machine({ mass: '10000 lb' })],
      [rope('one', 'front'), good('two', 'rear'), rope('three', 'rear'), good('four', 'front')],
    );
    expect(checkOf(result, '393.130/tractor')).toMatchObject({
      verdict: 'undetermined',
      missing: [{ code: 'RATING_NOT_KNOWN', params: { tieDowns: 'one, three' } }],
    });
  });
});

describe('the rule a lighter machine is judged under', () => {
  const long = (more: Partial<Article> = {}) => machine({ mass: '6000 lb', length: '32 ft', ...more }); // by length 5

  it('is the least demanding one that is met', () => {
    expect(check([long()], ends('front', 'rear')).articles[0]).toMatchObject({ rule: '393.128', minimumCount: 2 });
    // Held at one end only, 393.128 is not met, and five tie-downs meet 393.110.
    expect(check([long()], ends('front', 'front', 'front', 'front', 'front'))).toMatchObject({
      verdict: 'pass',
      articles: [{ rule: '393.110', minimumCount: 5 }],
    });
  });
  it('is the least demanding one where none is met', () => {
    const result = check([long()], ends('front'));
    expect(result).toMatchObject({ verdict: 'fail', articles: [{ rule: '393.128', minimumCount: 2, count: 1 }] });
  });
  it('is the one its hauler chose, met or not', () => {
    const two = ends('front', 'rear');
    expect(check([long({ securedUnder: '393.128' })], two).verdict).toBe('pass');
    expect(check([long({ securedUnder: '393.110' })], two)).toMatchObject({
      verdict: 'fail',
      articles: [{ rule: '393.110', minimumCount: 5 }],
    });
    expect(check([machine({ securedUnder: '393.130' })], two)).toMatchObject({
      verdict: 'fail',
      articles: [{ rule: '393.130', minimumCount: 4 }],
    });
    expect(check([machine({ securedUnder: '393.130' })], ends('front', 'rear', 'front', 'rear')).verdict).toBe('pass');
  });
  it('is shown with the others', () => {
    expect(
      check([long()], ends('front', 'rear')).articles[0]?.options.map(({ rule, minimumCount }) => [rule, minimumCount]),
    ).toEqual([
      ['393.128', 2],
      ['393.110', 5],
      ['393.130', 5],
    ]);
  });
  it('warns where 393.110 would ask for more than 393.128: readings differ', () => {
    const practice = checkOf(check([long()], ends('front', 'rear')), 'practice/length/tractor');
    expect(practice).toMatchObject({ weight: 'practice', verdict: 'fail', demand: 5, capacity: 2 });
    expect(
      check([machine({ securedUnder: '393.128' })], ends('front', 'rear')).checks.map(({ id }) => id),
    ).not.toContain('practice/length/tractor');
  });
});

describe('accessory equipment', () => {
  type Truth = boolean | undefined;
  const bucket = (lowered: Truth, locked: Truth): Accessory => ({
    id: 'bucket',
    ...(lowered === undefined ? {} : { lowered }),
    ...(locked === undefined ? {} : { locked }),
  });
  const tie: TieDown = rated('bucket-chain', '4700 lb', { holds: 'bucket' });
  const ask = (article: Article, tied: boolean) => check([article], [...several(4, '9000 lb'), ...(tied ? [tie] : [])]);

  // 130(b)(1): completely lowered and secured to the vehicle. A full lock instead of the tie-down, or raised where
  // made to travel so and locked, is disputed (guidance to 393.130, questions 2 and 3): never a definite violation,
  // never a pass. Neither lowered nor locked, or lowered and neither tied nor locked, is a violation.
  const strict: [lowered: Truth, locked: Truth, tied: boolean, verdict: string][] = [
    [true, true, true, 'pass'],
    [true, false, true, 'pass'],
    [true, undefined, true, 'pass'],
    [true, true, false, 'undetermined'], // question 3
    [true, false, false, 'fail'],
    [true, undefined, false, 'undetermined'],
    [false, true, true, 'undetermined'], // question 2
    [false, true, false, 'undetermined'], // question 2
    [false, false, true, 'fail'],
    [false, false, false, 'fail'],
    [false, undefined, true, 'undetermined'],
    [false, undefined, false, 'undetermined'],
    [undefined, true, true, 'undetermined'],
    [undefined, true, false, 'undetermined'],
    [undefined, false, true, 'undetermined'],
    [undefined, undefined, true, 'undetermined'],
    [undefined, undefined, false, 'undetermined'],
  ];
  describe('of a heavy machine, 393.130(b)(1)', () => {
    test.each(strict)('lowered %s, locked %s, tied %s: %s', (lowered, locked, tied, verdict) => {
      const result = ask(heavy({ accessories: [bucket(lowered, locked)] }), tied);
      expect(checkOf(result, '393.130(b)(1)/bucket')).toMatchObject({ verdict, weight: 'requirement' });
      expect(result.verdict).toBe(verdict);
    });
    it('neither locked nor tied is a violation, lowered or not', () => {
      expect(
        checkOf(ask(heavy({ accessories: [bucket(undefined, false)] }), false), '393.130(b)(1)/bucket').verdict,
      ).toBe('fail');
    });
    it('locked is left to a qualified person, with the dispute named', () => {
      expect(
        missingIn(checkOf(ask(heavy({ accessories: [bucket(true, true)] }), false), '393.130(b)(1)/bucket')),
      ).toEqual(['LOCK_DISPUTED']);
    });
    it('begins at 10,000 lb', () => {
      const accessories = [bucket(true, true)];
      expect(ask(machine({ mass: '10000 lb', accessories }), false).verdict).toBe('undetermined');
      expect(ask(machine({ mass: '9999.99 lb', accessories }), false).verdict).toBe('pass');
    });
  });

  // Guidance to 393.130, question 1: it need not be lowered, but pins, locks or the like keep it from shifting.
  const light: [lowered: Truth, locked: Truth, tied: boolean, verdict: string][] = [
    [true, true, true, 'pass'],
    [true, true, false, 'pass'],
    [false, true, false, 'pass'],
    [undefined, true, false, 'pass'],
    [true, false, true, 'pass'],
    [false, false, true, 'pass'],
    [undefined, undefined, true, 'pass'],
    [true, false, false, 'undetermined'], // it may drift
    [false, false, false, 'fail'],
    [false, undefined, false, 'undetermined'],
    [true, undefined, false, 'undetermined'],
    [undefined, undefined, false, 'undetermined'],
  ];
  describe('of a lighter machine', () => {
    test.each(light)('lowered %s, locked %s, tied %s: %s', (lowered, locked, tied, verdict) => {
      const result = ask(machine({ accessories: [bucket(lowered, locked)] }), tied);
      const found = result.checks.find(({ subject }) => subject === 'bucket');
      expect(found?.verdict).toBe(verdict);
      expect(result.verdict).toBe(verdict);
    });
    it('that is secured under 393.130 is prepared as 393.130 asks', () => {
      // 393.130(a): secured "in accordance with this section", its paragraph (b) included.
      const article = machine({ securedUnder: '393.130', accessories: [bucket(true, true)] });
      expect(ask(article, false).verdict).toBe('undetermined');
      expect(ask(article, true).verdict).toBe('pass');
    });
  });

  // What is asked for: the fact that would settle it.
  const asked: [kind: 'heavy' | 'light', lowered: Truth, locked: Truth, tied: boolean, code: string][] = [
    ['heavy', true, true, false, 'LOCK_DISPUTED'],
    ['heavy', false, true, true, 'LOCK_DISPUTED'],
    ['heavy', undefined, true, true, 'LOCK_DISPUTED'],
    ['heavy', true, undefined, false, 'LOCK_NOT_STATED'],
    ['heavy', false, undefined, true, 'LOCK_NOT_STATED'],
    ['heavy', false, undefined, false, 'LOCK_NOT_STATED'],
    ['heavy', undefined, false, true, 'LOWERED_NOT_STATED'],
    ['heavy', undefined, undefined, true, 'LOWERED_NOT_STATED'],
    ['light', true, undefined, false, 'LOCK_NOT_STATED'],
    ['light', undefined, undefined, false, 'LOCK_NOT_STATED'],
    ['light', true, false, false, 'LOWERED_ONLY'],
  ];
  test.each(asked)('on a %s machine, lowered %s, locked %s, tied %s: %s', (kind, lowered, locked, tied, code) => {
    const accessories = [bucket(lowered, locked)];
    const result = ask(kind === 'heavy' ? heavy({ accessories }) : machine({ accessories }), tied);
    const found = result.checks.find(({ subject }) => subject === 'bucket');
    expect(found === undefined ? [] : missingIn(found)).toEqual([code]);
  });
  it('is judged under the paragraph that binds its article', () => {
    const accessories = [bucket(false, false)];
    const reasons = [heavy({ accessories }), machine({ accessories }), crate({ id: 'tractor', accessories })].map(
      (article) => {
        const found = ask(article, false).checks.find(({ subject }) => subject === 'bucket');
        return found === undefined ? [] : [found.id, reasonOf(found)];
      },
    );
    expect(reasons).toEqual([
      ['393.130(b)(1)/bucket', 'NOT_HELD'],
      ['393.130, question 1/bucket', 'NOT_HELD'],
      ['393.100(c)/bucket', 'NOT_HELD'],
    ]);
  });

  it('tied down counts neither among the four nor in the aggregate', () => {
    // Three on the machine and one on the bucket are three; 3 × 9,000/2 = 13,500, whatever holds the bucket.
    const result = check([heavy({ accessories: [bucket(true, undefined)] })], [...several(3, '9000 lb'), tie]);
    expect(result.articles[0]).toMatchObject({ count: 3, aggregate: { value: 13500, unit: 'lb' } });
    expect(checkOf(result, '393.130/tractor').verdict).toBe('fail');
    expect(checkOf(result, '393.130(b)(1)/bucket').verdict).toBe('pass');
    expect(result.tieDowns[3]).toMatchObject({
      id: 'bucket-chain',
      holds: 'bucket',
      credit: 0,
      counted: { value: 0 },
      rating: { value: 4700 },
    });
  });
  it('held only by a damaged tie-down is not held', () => {
    const bad = ofParts('bad', [{ id: 'chain', kind: 'chain', size: '3/8', grade: 70, condition: 'damaged' }], {
      holds: 'bucket',
    });
    const result = check([heavy({ accessories: [bucket(true, false)] })], [...several(4, '9000 lb'), bad]);
    expect(checkOf(result, '393.130(b)(1)/bucket').verdict).toBe('fail');
  });
  it('is judged one by one', () => {
    const accessories: Accessory[] = [
      { id: 'loader', lowered: true, locked: false },
      { id: 'backhoe', lowered: true, locked: true },
    ];
    const loader = rated('loader-chain', '4700 lb', { holds: 'loader' });
    const result = check([heavy({ accessories })], [...several(4, '9000 lb'), loader]);
    expect(checkOf(result, '393.130(b)(1)/loader').verdict).toBe('pass');
    expect(checkOf(result, '393.130(b)(1)/backhoe').verdict).toBe('undetermined');
  });
});

describe('an accessory of a lighter machine that is lowered, and neither locked nor tied', () => {
  it('does not pass: question 1 asks for pins, locks or the like', () => {
    const article = machine({ accessories: [{ id: 'bucket', lowered: true, locked: false }] });
    expect(check([article], several(4, '9000 lb')).verdict).not.toBe('pass');
  });
});

describe('an articulated machine, 393.130(b)(2)', () => {
  const ask = (article: Article) => check([article], several(4, '9000 lb'));

  test.each([
    [true, 'pass'],
    [false, 'fail'],
    [undefined, 'undetermined'],
  ] as const)('heavy, joint locked %s: %s', (articulationLocked, verdict) => {
    const result = ask(
      heavy({ articulated: true, ...(articulationLocked === undefined ? {} : { articulationLocked }) }),
    );
    expect(checkOf(result, '393.130(b)(2)/tractor')).toMatchObject({ verdict, weight: 'requirement' });
    expect(result.verdict).toBe(verdict);
  });
  test.each([
    [true, 'pass'],
    [false, 'fail'],
    [undefined, 'undetermined'],
  ] as const)('under 10,000 lb it is advice: joint locked %s', (articulationLocked, verdict) => {
    const result = ask(
      machine({ articulated: true, ...(articulationLocked === undefined ? {} : { articulationLocked }) }),
    );
    expect(checkOf(result, '393.130(b)(2)/tractor')).toMatchObject({ verdict, weight: 'practice' });
    expect(result.verdict).toBe('pass');
  });
  it('under 10,000 lb secured under 393.130 it binds', () => {
    const result = ask(machine({ articulated: true, articulationLocked: false, securedUnder: '393.130' }));
    expect(result.verdict).toBe('fail');
  });
  it('begins at 10,000 lb', () => {
    expect(ask(machine({ mass: '10000 lb', articulated: true, articulationLocked: false })).verdict).toBe('fail');
    expect(ask(machine({ mass: '9999.99 lb', articulated: true, articulationLocked: false })).verdict).toBe('pass');
  });
  it('is not asked of a rigid one', () => {
    expect(ask(heavy()).checks.map(({ id }) => id)).not.toContain('393.130(b)(2)/tractor');
    expect(ask(heavy({ articulated: false, articulationLocked: false })).verdict).toBe('pass');
  });
});

describe('what is said of the sources', () => {
  it('the two of 393.128 are from memory', () => {
    const van: Article = { id: 'tractor', kind: 'light-vehicle', mass: '6000 lb', length: '10 ft' };
    const { sources } = check([van], ends('front', 'rear'));
    // 393.128 for the two in total, 393.128(b) for restraint at both ends: neither was read.
    for (const paragraph of ['393.128', '393.128(b)']) {
      expect(sources.find(({ clause }) => clause === paragraph)?.provenance, paragraph).toBe('memory');
    }
  });
  it('guidance is not the regulation', () => {
    const result = check([machine({ accessories: [{ id: 'bucket', locked: true }] })], several(2, '9000 lb'));
    const guidance = result.sources.find(({ clause, document }) => `${document} ${clause}`.includes('guidance'));
    expect(guidance).toBeDefined();
    expect(guidance?.document).not.toBe('49 CFR');
    expect(guidance).not.toHaveProperty('edition'); // 2024 is that of the regulation
  });
});

describe('a pass under 393.130', () => {
  it('is a whole plan: counts, ends, accessories, articulation, strength', () => {
    const article = heavy({
      accessories: [
        { id: 'loader', lowered: true },
        { id: 'backhoe', lowered: true },
      ],
      articulated: true,
      articulationLocked: true,
    });
    const result = check(
      [article],
      [
        ...several(4, '5000 lb'),
        rated('l', '3150 lb', { holds: 'loader' }),
        rated('b', '3150 lb', { holds: 'backhoe' }),
      ],
    );
    expect(result.verdict).toBe('pass');
    expect(reasonOf(checkOf(result, '393.102(c)/tractor'))).toBe('MET');
    expect(codes(result.cautions)).toContain('DIRECTION_NOT_CHECKED');
  });
});

describe('what rests on a tie-down of unknown rating', () => {
  const unknown = (id: string, more: Partial<TieDown> = {}) => ofParts(id, [{ id: 'rope', kind: 'fiber-rope' }], more); // no size, no mark: no rating

  it('leaves the choice of rule open where another rule may still be met', () => {
    // 32 ft, not blocked: 2 + ceil(22 / 10) = 5 by 393.110; four rated and one unknown, all at the front.
    // 393.128 fails for want of the rear, 393.110 waits for the fifth: not decided, and never a fail.
    const long = machine({ mass: '6000 lb', length: '32 ft' });
    const result = check([long], [...several(4, '6600 lb', { end: 'front' }), unknown('fifth', { end: 'front' })]);
    expect(result.verdict).toBe('undetermined');
    expect(result.articles[0]?.rule).toBe('393.110');
  });

  it('does not hold an accessory', () => {
    // 393.130(b)(1): lowered and secured to the vehicle; by what, is not known.
    const loader: Accessory = { id: 'loader', lowered: true, locked: false };
    const plan = (tie: TieDown) => check([heavy({ accessories: [loader] })], [...several(4, '6600 lb'), tie]);
    expect(missingIn(checkOf(plan(unknown('boom', { holds: 'loader' })), '393.130(b)(1)/loader'))).toEqual([
      'RATING_NOT_KNOWN',
    ]);
    expect(checkOf(plan(rated('boom', '1 lb', { holds: 'loader' })), '393.130(b)(1)/loader').verdict).toBe('pass');
  });
});
