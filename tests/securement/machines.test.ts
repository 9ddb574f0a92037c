// Machines and vehicles, 49 CFR 393.128 and 393.130: both ends, accessory equipment, articulation, and the choice of
// rule for a machine under 10,000 lb.
import type { Accessory, Article, TieDown } from 'chain-rigging';
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
  const ask = (article: Article, tieDowns: readonly TieDown[], rule = '393.130(c)') =>
    checkOf(check([article], tieDowns), `${rule}/tractor`);

  it('a heavy machine is held at both', () => {
    expect(ask(heavy(), ends('front', 'front', 'rear', 'rear')).verdict).toBe('pass');
    expect(ask(heavy(), ends('front', 'rear', undefined, undefined)).verdict).toBe('pass');
  });
  it('tie-downs at one end only fail, whichever it is', () => {
    for (const end of ['front', 'rear'] as const) {
      const found = ask(heavy(), ends(end, end, end, end));
      expect(found.verdict).toBe('fail');
      expect(reasonOf(found)).toBe('ONE_END_ONLY');
    }
  });
  it('ends that are not stated are a missing fact', () => {
    expect(missingIn(ask(heavy(), ends('front', 'front', 'front', undefined)))).toEqual(['END_NOT_STATED']);
    expect(check([heavy()], ends(undefined, undefined, undefined, undefined)).verdict).toBe('undetermined');
  });
  it('a car is held at both, 393.128', () => {
    const van: Article = { id: 'tractor', kind: 'light-vehicle', mass: '6000 lb', length: '18 ft' };
    expect(ask(van, ends('front', 'rear'), '393.128(b)').verdict).toBe('pass');
    expect(ask(van, ends('front', 'front'), '393.128(b)').verdict).toBe('fail');
    expect(ask(van, ends('front', undefined), '393.128(b)').verdict).toBe('undetermined');
    expect(check([van], ends('front', 'rear')).articles[0]).toMatchObject({ rule: '393.128', minimumCount: 2 });
  });
  it('a damaged tie-down holds no end', () => {
    const bad = ofParts('bad', [{ id: 'chain', kind: 'chain', size: '3/8', grade: 70, condition: 'damaged' }], {
      end: 'rear',
    });
    expect(ask(heavy(), [...ends('front', 'front', 'front', 'front'), bad]).verdict).toBe('fail');
  });
  it('are not asked under the general rules', () => {
    const result = check([machine()], ends('front', 'front'));
    expect(result.checks.map(({ id }) => id)).not.toContain('393.128(b)/tractor');
    expect(result).toMatchObject({ verdict: 'pass', articles: [{ rule: '393.110' }] });
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
      workingLoadLimit: { value: 4700 },
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
    expect(guidance?.document).not.toBe('49 CFR');
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
