import { describe, expect, it } from 'vitest';
import {
  type Article,
  caNsc10_2013,
  checkSecurement,
  compareRules,
  type TieDown,
  us49cfr393_102_2024,
  us49cfr393_2024,
} from '../../src/index.js';
import { issueOf } from '../quantities/issue-of.js';

const rules = [us49cfr393_2024, caNsc10_2013];
const tractor: Article = { id: 'tractor', kind: 'machinery', mass: '9950 lb', length: '10 ft' };
const direct = (id: string, workingLoadLimit: `${number} lb`, end: 'front' | 'rear'): TieDown => ({
  id,
  holds: 'tractor',
  path: 'vehicle-to-cargo',
  end,
  capacities: { workingLoadLimit },
});
const four = (limit: `${number} lb`) => [
  direct('a', limit, 'front'),
  direct('b', limit, 'front'),
  direct('c', limit, 'rear'),
  direct('d', limit, 'rear'),
];

describe('compareRules', () => {
  it('asks each rule set by itself', () => {
    const plan = { articles: [tractor], tieDowns: four('5400 lb') };
    const { verdicts } = compareRules({ rules, ...plan });
    expect(verdicts.map((each) => each.rules)).toEqual(['us-49cfr393-2024', 'ca-nsc10-2013']);
    for (const [index, { verdict, governing }] of verdicts.entries()) {
      const alone = checkSecurement({ rules: rules[index]!, ...plan });
      expect(verdict).toBe(alone.verdict);
      expect(governing?.id ?? null).toBe(alone.governing);
    }
  });

  it('says why they differ: a direct chain counts half in the United States and in full in Canada', () => {
    // 9,950 lb needs 4,975 lb: four of 2,400 lb make 4,800 lb at half credit and 9,600 lb in full. In Canada the machine
    // (4,513 kg) is heavy, and each of its four must have 2,268 kg.
    const { verdicts, differences } = compareRules({ rules, articles: [tractor], tieDowns: four('2400 lb') });
    expect(verdicts[0]).toMatchObject({ verdict: 'fail', failed: ['393.106(d)/tractor'] });
    expect(verdicts[1]?.failed).not.toContainEqual(expect.stringContaining('aggregate'));
    const credit = differences.filter(({ code }) => code === 'CREDITS_ANOTHER_SHARE');
    expect(credit.map(({ params }) => params.ids)).toEqual(['a, b, c, d']);
    expect(credit[0]?.params.said).toBe('us-49cfr393-2024 0.5, ca-nsc10-2013 1');
    // 9,950 lb is above 4,500 kg and below 10,000 lb
    expect(differences.find(({ code }) => code === 'ASKS_ANOTHER_COUNT')?.params.said).toBe(
      'us-49cfr393-2024 2, ca-nsc10-2013 4',
    );
  });

  it('finds no difference where there is none', () => {
    const crate: Article = { id: 'tractor', kind: 'general', mass: '400 kg', length: '1 m' };
    const over: TieDown = {
      id: 'strap',
      holds: 'tractor',
      path: 'over-other-side',
      capacities: { workingLoadLimit: '2 t' },
    };
    const { verdicts, differences } = compareRules({ rules, articles: [crate], tieDowns: [over] });
    expect(verdicts.map(({ verdict }) => verdict)).toEqual(['pass', 'pass']);
    expect(differences).toEqual([]);
  });

  it('leaves open what one of them must know', () => {
    const { verdicts } = compareRules({
      rules: [us49cfr393_2024, us49cfr393_102_2024],
      articles: [tractor],
      tieDowns: four('5400 lb'),
    });
    expect(verdicts.map(({ verdict }) => verdict)).toEqual(['pass', 'undetermined']);
    expect(verdicts[1]?.open).toContain('393.102(a)(2)/forward/tractor');
  });

  it('wants two, and each once', () => {
    const plan = { articles: [tractor], tieDowns: four('5400 lb') };
    expect(issueOf(() => compareRules({ rules: [us49cfr393_2024], ...plan })).code).toBe('EMPTY_LIST');
    expect(issueOf(() => compareRules({ rules: [us49cfr393_2024, us49cfr393_2024], ...plan }))).toMatchObject({
      code: 'DUPLICATE_ID',
      path: 'rules[1]',
    });
    expect(issueOf(() => compareRules({ rules: [us49cfr393_2024, {} as never], ...plan })).code).toBe(
      'UNKNOWN_RULE_SET',
    );
  });
});
