// The shape of a plan: what is refused, with code and path, and that JSON says the same as objects.
import { kg, lb, m, type Plan } from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';
import { check, checkLoosely, crate, machine, ofParts, rated, rules, several, throughJson } from './plans.js';

const good = { rules, articles: [machine()], tieDowns: several(2, '9000 lb') };
const issue = (more: Record<string, unknown>) => issueOf(() => checkLoosely({ ...good, ...more }));
const withArticle = (more: Record<string, unknown>) => issue({ articles: [{ ...machine(), ...more }] });
const withTieDown = (more: Record<string, unknown>) => issue({ tieDowns: [{ ...rated('one', '9000 lb'), ...more }] });

describe('lists', () => {
  test.each(['articles', 'tieDowns'])('%s must not be empty', (list) => {
    for (const value of [[], undefined, null, {}, 'tractor', 5])
      expect(issue({ [list]: value })).toMatchObject({ code: 'EMPTY_LIST', path: list });
  });
  it('of items that are none', () => {
    for (const item of [null, undefined, 'tractor', 5]) {
      expect(issue({ articles: [machine(), item] })).toMatchObject({
        code: 'MISSING_FIELD',
        path: expect.stringMatching(/^articles\[1\]/),
      });
      expect(issue({ tieDowns: [rated('one', '9000 lb'), item] })).toMatchObject({
        code: 'MISSING_FIELD',
        path: expect.stringMatching(/^tieDowns\[1\]/),
      });
    }
  });
  it('of accessories', () => {
    for (const accessories of ['bucket', 5, {}, true]) {
      expect(
        () => checkLoosely({ ...good, articles: [machine({ accessories: accessories as never })] }),
        String(accessories),
      ).toThrowError(expect.objectContaining({ name: 'RiggingError', path: 'articles[0].accessories' }));
    }
    expect(withArticle({ accessories: [null] })).toMatchObject({
      code: 'MISSING_FIELD',
      path: expect.stringContaining('articles[0].accessories[0]'),
    });
    expect(withArticle({ accessories: [{ id: 'bucket', lowered: 'yes' }] })).toMatchObject({
      code: 'UNKNOWN_VALUE',
      path: 'articles[0].accessories[0].lowered',
    });
    expect(withArticle({ accessories: [{ id: 'bucket', locked: 1 }] })).toMatchObject({
      code: 'UNKNOWN_VALUE',
      path: 'articles[0].accessories[0].locked',
    });
  });
});

describe('names', () => {
  it('are needed', () => {
    for (const id of [undefined, '', 5, null, {}]) {
      expect(withArticle({ id })).toMatchObject({ code: 'MISSING_FIELD', path: 'articles[0].id' });
      expect(withTieDown({ id })).toMatchObject({ code: 'MISSING_FIELD', path: 'tieDowns[0].id' });
      expect(withArticle({ accessories: [{ id }] })).toMatchObject({
        code: 'MISSING_FIELD',
        path: 'articles[0].accessories[0].id',
      });
    }
  });
  it('are used once in a plan', () => {
    expect(issue({ articles: [machine(), crate({ id: 'tractor' })] })).toMatchObject({
      code: 'DUPLICATE_ID',
      path: 'articles[1].id',
      received: "'tractor'",
    });
    expect(issue({ tieDowns: [rated('one', '1 lb'), rated('one', '1 lb')] })).toMatchObject({
      code: 'DUPLICATE_ID',
      path: 'tieDowns[1].id',
    });
    expect(issue({ tieDowns: [rated('tractor', '1 lb')] })).toMatchObject({
      code: 'DUPLICATE_ID',
      path: 'tieDowns[0].id',
    });
    expect(withArticle({ accessories: [{ id: 'bucket' }, { id: 'bucket' }] })).toMatchObject({
      code: 'DUPLICATE_ID',
      path: 'articles[0].accessories[1].id',
    });
    expect(withArticle({ accessories: [{ id: 'tractor' }] })).toMatchObject({
      code: 'DUPLICATE_ID',
      path: 'articles[0].accessories[0].id',
    });
    expect(issue({ articles: [machine({ accessories: [{ id: 'crate' }] }), crate()] }).code).toBe('DUPLICATE_ID');
  });
  it('of parts are used once in a tie-down, and may come again in another', () => {
    const chain = { id: 'chain', kind: 'chain', size: '3/8', grade: 70 } as const;
    expect(() => check([machine()], [ofParts('a', [chain]), ofParts('b', [chain])])).not.toThrow();
    expect(issueOf(() => check([machine()], [ofParts('a', [chain]), ofParts('b', [chain, chain])]))).toMatchObject({
      code: 'DUPLICATE_ID',
      path: 'tieDowns[1].parts[1].id',
    });
  });
  it('may be any text', () => {
    for (const id of ['__proto__', 'constructor', 'toString', 'a/b', '0']) {
      const result = check(
        [machine({ id })],
        [rated('one', '9000 lb', { holds: id }), rated('two', '9000 lb', { holds: id })],
      );
      expect(result).toMatchObject({ verdict: 'pass', articles: [{ id, count: 2 }] });
      expect(Object.getPrototypeOf(result.articles[0])).toBe(Object.prototype);
    }
  });
});

describe('what a tie-down holds', () => {
  it('is an article or an accessory of the plan', () => {
    for (const holds of ['trailer', '', undefined, 5, null, 'one', '__proto__']) {
      expect(withTieDown({ holds }), String(holds)).toMatchObject({
        code: holds === undefined ? 'MISSING_FIELD' : 'UNKNOWN_REFERENCE',
        path: 'tieDowns[0].holds',
      });
    }
    expect(withTieDown({ holds: 'trailer' }).expected).toContain('tractor');
  });
  it('is no other tie-down', () => {
    expect(issue({ tieDowns: [rated('one', '1 lb'), rated('two', '1 lb', { holds: 'one' })] })).toMatchObject({
      code: 'UNKNOWN_REFERENCE',
      path: 'tieDowns[1].holds',
    });
  });
});

describe('words', () => {
  it('of an article', () => {
    for (const kind of ['tractor', 'Machinery', null, 1, '__proto__']) {
      expect(withArticle({ kind })).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'articles[0].kind' });
    }
    expect(withArticle({ kind: undefined })).toMatchObject({ code: 'MISSING_FIELD', path: 'articles[0].kind' });
    for (const flag of ['blockedForward', 'articulated', 'articulationLocked', 'specialMethods']) {
      for (const value of ['yes', 0, 1, null, {}]) {
        expect(withArticle({ [flag]: value })).toMatchObject({ code: 'UNKNOWN_VALUE', path: `articles[0].${flag}` });
      }
    }
    expect(withArticle({ securedUnder: '393.116' })).toMatchObject({
      code: 'UNKNOWN_VALUE',
      path: 'articles[0].securedUnder',
    });
  });
  it('of a tie-down', () => {
    for (const path of ['direct', null, '__proto__', 'constructor']) {
      expect(withTieDown({ path }), String(path)).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'tieDowns[0].path' });
    }
    expect(withTieDown({ path: undefined })).toMatchObject({ code: 'MISSING_FIELD', path: 'tieDowns[0].path' });
    for (const end of ['middle', 'left', null, 1])
      expect(withTieDown({ end })).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'tieDowns[0].end' });
  });
  it('parts or capacities, one of the two', () => {
    expect(withTieDown({ capacities: undefined })).toMatchObject({
      code: 'CONFLICTING_FIELDS',
      path: 'tieDowns[0]',
      received: "'neither'",
    });
    expect(withTieDown({ parts: [{ id: 'chain', kind: 'chain', size: '3/8', grade: 70 }] })).toMatchObject({
      code: 'CONFLICTING_FIELDS',
      path: 'tieDowns[0]',
      received: "'both'",
    });
    expect(withTieDown({ capacities: undefined, parts: [] })).toMatchObject({
      code: 'EMPTY_LIST',
      path: 'tieDowns[0].parts',
    });
    for (const capacities of [null, 5, '9000 lb']) {
      expect(
        () => checkLoosely({ ...good, tieDowns: [{ ...rated('one', '9000 lb'), capacities }] }),
        String(capacities),
      ).toThrowError(expect.objectContaining({ name: 'RiggingError' }));
    }
  });
});

describe('quantities', () => {
  it('of an article', () => {
    expect(withArticle({ mass: '8,000 lb' })).toMatchObject({ code: 'AMBIGUOUS_NUMBER', path: 'articles[0].mass' });
    expect(withArticle({ mass: '4 ton' })).toMatchObject({ code: 'AMBIGUOUS_UNIT', path: 'articles[0].mass' });
    expect(withArticle({ mass: { value: Number.NaN, unit: 'lb' } })).toMatchObject({
      code: 'NOT_FINITE',
      path: 'articles[0].mass',
    });
    expect(withArticle({ mass: 8000 })).toMatchObject({ code: 'NOT_A_QUANTITY', path: 'articles[0].mass' });
    expect(withArticle({ mass: undefined })).toMatchObject({ code: 'MISSING_FIELD', path: 'articles[0].mass' });
    expect(withArticle({ length: '0 ft' })).toMatchObject({ code: 'NOT_POSITIVE', path: 'articles[0].length' });
    expect(withArticle({ length: '10' })).toMatchObject({ code: 'TEXT_NOT_A_QUANTITY', path: 'articles[0].length' });
    expect(withArticle({ length: { value: 10, unit: 'feet' } })).toMatchObject({
      code: 'UNKNOWN_UNIT',
      path: 'articles[0].length',
    });
  });
  it('of a tie-down', () => {
    expect(withTieDown({ capacities: { workingLoadLimit: '0 lb' } })).toMatchObject({
      code: 'NOT_POSITIVE',
      path: 'tieDowns[0].capacities.workingLoadLimit',
    });
    expect(withTieDown({ capacities: { workingLoadLimit: '5 ft' } })).toMatchObject({
      code: 'WRONG_KIND',
      path: 'tieDowns[0].capacities.workingLoadLimit',
    });
    const part = (more: Record<string, unknown>) =>
      withTieDown({ capacities: undefined, parts: [{ id: 'chain', kind: 'chain', size: '3/8', ...more }] });
    expect(part({ markedWll: '-5 lb' })).toMatchObject({ code: 'NEGATIVE', path: 'tieDowns[0].parts[0].markedWll' });
    expect(part({ size: '5/17' })).toMatchObject({ code: 'UNKNOWN_SIZE', path: 'tieDowns[0].parts[0].size' });
    expect(part({ grade: 75 })).toMatchObject({ code: 'UNKNOWN_GRADE', path: 'tieDowns[0].parts[0].grade' });
    expect(part({ kind: 'rope' })).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'tieDowns[0].parts[0].kind' });
  });
  it('of a size that cannot be added up are refused, not turned into infinity', () => {
    const huge = { value: 1e308, unit: 'lb' } as const;
    const call = () => check([crate()], several(4, huge, { holds: 'crate', path: 'over-other-side' }));
    expect(call).toThrowError(expect.objectContaining({ name: 'RiggingError', code: 'NOT_FINITE' }));
  });
});

describe('the call', () => {
  it('names a rule set', () => {
    for (const value of [undefined, null, 'us-49cfr393-2024', {}, 393]) {
      expect(issue({ rules: value })).toMatchObject({ code: 'UNKNOWN_RULE_SET', path: 'rules' });
    }
  });
  it('has units it knows', () => {
    for (const units of ['SI', 'metric', null])
      expect(issue({ units })).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'units' });
  });
  it('has an argument', () => {
    for (const input of [undefined, null])
      expect(() => checkLoosely(input)).toThrowError(expect.objectContaining({ name: 'RiggingError' }));
  });
  it('does not change what it is given', () => {
    const plan = {
      articles: [machine({ accessories: [{ id: 'bucket', locked: true }] })],
      tieDowns: several(2, '9000 lb'),
    };
    const before = JSON.stringify(plan);
    check(plan.articles, plan.tieDowns);
    check(plan.articles, plan.tieDowns, { working: false });
    expect(JSON.stringify(plan)).toBe(before);
    const freeze = (value: unknown): void => {
      if (typeof value !== 'object' || value === null) return;
      Object.freeze(value);
      for (const item of Object.values(value)) freeze(item);
    };
    freeze(plan);
    expect(() => check(plan.articles, plan.tieDowns)).not.toThrow();
  });
  it('keeps the answer when the input changes afterwards', () => {
    const article = { ...machine(), mass: { value: 8000, unit: 'lb' as 'lb' } };
    // `inputs` is the caller's own object; nothing else in the result is.
    const { inputs: _, ...answer } = check([article], several(2, '9000 lb'));
    const before = JSON.stringify(answer);
    article.mass.value = 90_000;
    expect(JSON.stringify(answer)).toBe(before);
  });
});

describe('JSON', () => {
  it('of a plan says what its objects say', () => {
    const plan: Plan = {
      vehicle: {
        units: [{ id: 'truck', kind: 'power', grossWeightRating: kg(4536.37729237) }],
        interstateCommerce: true,
      },
      articles: [machine({ mass: lb(8000), length: m(3.048), accessories: [{ id: 'bucket', locked: true }] })],
      tieDowns: [...several(2, lb(4000)), ofParts('three', [{ id: 'chain', kind: 'chain', size: '3/8', grade: 70 }])],
    };
    const direct = checkLoosely({ rules, ...plan });
    const parsed = checkLoosely({ rules, ...throughJson(plan) });
    expect(throughJson(parsed)).toEqual(throughJson(direct));
    expect(direct).toMatchObject({ verdict: 'pass', applicability: { verdict: 'applies' } });
  });
  it('of a result is the result, and names the rule set by its id', () => {
    const result = check([machine()], several(2, '9000 lb'));
    expect(throughJson(result)).toEqual({ ...result });
    expect(result.rules).toBe('us-49cfr393-2024');
    expect((result.inputs as { rules: unknown }).rules).toBe('us-49cfr393-2024');
    expect(result.inputs).not.toHaveProperty('working');
  });
  it('a field of the plan that is called rules or ratings stays what it was', () => {
    const article = { ...machine(), rules: null, ratings: 5 };
    const result = checkLoosely({ rules, articles: [article], tieDowns: several(2, '9000 lb') });
    expect(result.verdict).toBe('pass');
  });
});
