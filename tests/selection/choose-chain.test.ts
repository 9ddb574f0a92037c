import { describe, expect, it } from 'vitest';
import {
  type ChainChoiceInput,
  chooseChain,
  euEn12195_1_2010,
  planPull,
  us49cfr393_108_2024,
  us49cfr393_2024,
} from '../../src/index.js';
import { issueOf } from '../quantities/issue-of.js';

const names = (chains: readonly { size: string; grade: number }[]) =>
  chains.map(({ size, grade }) => `${size} ${grade}`);
const codes = ({ rejected }: ReturnType<typeof chooseChain>, size: string, grade: number) =>
  rejected.find((each) => each.size === size && each.grade === grade)?.because.map(({ code }) => code);

const pull: ChainChoiceInput = {
  task: { kind: 'pull', requiredLimit: '1500 lb', length: '20 ft' },
  ratings: us49cfr393_108_2024,
  objective: 'mass',
};

describe('the ordinary pulling of a subcompact tractor', () => {
  // common practice: about 1,500 lb with its operator, it cannot pull more than it weighs; 1/4 in grade 70 has 3,150 lb
  const choice = chooseChain(pull);

  it('takes 1/4 in grade 70, whose limit exceeds what the tractor can pull', () => {
    expect(choice.verdict).toBe('pass');
    expect(choice.chosen).toMatchObject({ size: '1/4', grade: 70, workingLoadLimit: { value: 3150, unit: 'lb' } });
    expect(choice.chosen!.utilization).toBe(1500 / 3150);
    expect(choice.chosen!.heavierBy.value).toBe(0);
  });

  it('shows what it costs to buy bigger to be safe', () => {
    // mass per meter of short link, 0.02207 · d² kg with d in mm (derived in the tables of chain mass): 7, 8, 8.7, 10 mm
    const pounds = (wire: number) => (0.02207 * wire ** 2 * 20 * 0.3048) / 0.45359237;
    const heavier = Object.fromEntries(
      choice.candidates.map(({ size, grade, heavierBy }) => [`${size} ${grade}`, heavierBy.value]),
    );
    expect(heavier['5/16 70']).toBeCloseTo(pounds(8.7) - pounds(7), 1); // about 8 lb on 14.5
    expect(heavier['3/8 70']).toBeCloseTo(pounds(10) - pounds(7), 1); // twice as heavy, for nothing it can use
    expect(choice.candidates.map(({ mass }) => mass.value)).toEqual(
      choice.candidates.map(({ mass }) => mass.value).sort((a, b) => a - b),
    );
  });

  it('has a grab hook at the tractor and a slip hook with a latch at the load: common practice', () => {
    expect(choice.fittings).toMatchObject([
      { kind: 'grab-hook', size: '1/4', grade: 70 },
      { kind: 'slip-hook', size: '1/4', grade: 70, latch: true },
    ]);
    expect(choice.sources.map(({ provenance }) => provenance)).toContain('common practice');
  });
});

describe('hauling', () => {
  const haul = (mass: number): ChainChoiceInput => ({
    task: {
      kind: 'haul',
      rules: us49cfr393_2024,
      article: { kind: 'machinery', mass: { value: mass, unit: 'lb' }, length: '11 ft' },
      tieDowns: 2,
      path: 'vehicle-to-cargo',
      length: '16 ft',
    },
    objective: 'mass',
  });

  // 49 CFR 393.106(d): two direct tie-downs count half each, so each needs 0.5 W / (2 · 0.5) = W / 2
  it.each([
    [6299.9, '1/4 70'],
    [6300, '1/4 70'], // exactly 2 · 3150
    // grade 80 and 100 are of the same wire, thinner than that of grade 70: of two as light, the stronger
    [6300.1, '5/16 100'],
    [11_400, '5/16 100'], // exactly 2 · 5700
    [11_400.1, '3/8 100'],
  ])('of %s lb on two chains takes %s', (mass, name) => {
    expect(names([chooseChain(haul(mass)).chosen!])).toEqual([name]);
  });

  it('a larger compact needs 5/16 in grade 70, where that is the grade wanted: common practice', () => {
    const larger = { ...haul(7000), grades: [70] as const };
    expect(names([chooseChain(larger).chosen!])).toEqual(['5/16 70']);
    expect(names([chooseChain({ ...haul(3940), grades: [70] }).chosen!])).toEqual(['1/4 70']);
  });

  it('says why each of the others does not do', () => {
    const choice = chooseChain(haul(7000));
    expect(codes(choice, '1/4', 70)).toEqual(['TOO_WEAK']);
    expect(codes(choice, '1/4', 30)).toEqual(['TOO_WEAK', 'GRADE_NOT_USUAL']);
    expect(codes(choice, '3/8', 43)).toEqual(['GRADE_NOT_USUAL']);
    expect(codes(choice, '7/16', 80)).toEqual(['NOT_RATED_BY_TABLE']); // 49 CFR 393.108 has no such row
    expect(codes(choice, '1/4', 100)).toEqual(['MASS_NOT_KNOWN']); // its links are listed as 9/32
    // six sizes and five grades, each either a candidate or rejected
    expect(choice.candidates.length + choice.rejected.length).toBe(30);
  });

  it('asks for a binder marked for the chain and at least its share', () => {
    const { fittings, requiredLimit } = chooseChain(haul(7000));
    expect(requiredLimit).toMatchObject({ value: 3500, unit: 'lb' });
    expect(fittings.map(({ kind }) => kind)).toEqual(['binder', 'grab-hook', 'grab-hook']);
    expect(fittings[0]!.markedWll).toMatchObject({ value: 3500, unit: 'lb' });
  });

  it('says when the rule set asks for more tie-downs', () => {
    // 11 ft, not blocked: 2 and 1 more for the foot beyond ten is 3, but a machine may be secured under 393.128 with 2
    const { task } = haul(12_000); // 393.130: four
    expect(chooseChain({ ...haul(12_000), task }).cautions.map(({ code }) => code)).toContain('FEWER_THAN_REQUIRED');
    expect(chooseChain(haul(7000)).cautions.map(({ code }) => code)).not.toContain('FEWER_THAN_REQUIRED');
  });
});

describe('wrapping a load', () => {
  it('takes any grade that is strong enough, with a grab hook on its own chain', () => {
    const choice = chooseChain({ ...pull, task: { kind: 'wrap', requiredLimit: '1300 lb', length: '14 ft' } });
    expect(codes(choice, '1/4', 30)).toBeUndefined(); // 1,300 lb, exactly
    expect(names(choice.candidates)).toContain('1/4 30');
    expect(choice.fittings.map(({ kind }) => kind)).toEqual(['grab-hook']);
    const more = chooseChain({ ...pull, task: { kind: 'wrap', requiredLimit: '1300.1 lb', length: '14 ft' } });
    expect(codes(more, '1/4', 30)).toEqual(['TOO_WEAK']);
  });
});

describe('a planned pull', () => {
  const planned = planPull({
    ratings: us49cfr393_108_2024,
    tractor: { mass: '3300 lb', frontAxleMass: '1155 lb', wheelbase: '64 in', drive: 'rear-wheels' },
    hitch: { kind: 'drawbar', height: '15 in' },
    traction: { coefficient: 0.55, kind: 'net' },
    rolling: { coefficient: 0.05 },
    load: { kind: 'rolling', mass: '4000 lb', rolling: { coefficient: 0.15 } },
    chain: { pitch: '0.88 in' },
    ends: [{ at: 'hook' }, { at: 'hook' }],
    standoff: '18 ft',
    takeUp: 'slow',
  });

  it('brings its limit and its length', () => {
    const choice = chooseChain({ ...pull, task: { kind: 'pull', pull: planned } });
    expect(choice.requiredLimit.value).toBe(600); // 0.15 · 4000
    expect(choice.length.value).toBe(planned.length.value);
    expect(choice.inputs).not.toHaveProperty('task.pull');
  });
});

describe('what else may be asked', () => {
  it('the cheapest, by prices for a length', () => {
    const prices = [
      { size: '1/4', grade: 70, price: 3, per: '1 ft' },
      { size: '5/16', grade: 70, price: 28, per: '10 ft' },
    ] as const;
    const choice = chooseChain({ ...pull, objective: 'price', prices });
    expect(choice.candidates.map(({ size, price }) => [size, price])).toEqual([
      ['5/16', 56],
      ['1/4', 60],
    ]);
    expect(codes(choice, '3/8', 70)).toEqual(['PRICE_NOT_STATED']);
  });

  it('the least mass for each unit of limit', () => {
    const { candidates } = chooseChain({ ...pull, objective: 'mass-per-limit' });
    const shares = candidates.map(({ mass, workingLoadLimit }) => mass.value / workingLoadLimit.value);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    // 0.02207 · 8² / 5,700 is less than 0.02207 · 7² / 3,150
    expect(names(candidates)[0]).not.toBe('1/4 70');
  });

  it('no more than is carried', () => {
    const at = (limit: number) =>
      chooseChain({ ...pull, carryLimit: { value: limit, unit: 'lb' }, task: { ...pull.task } as never });
    const { mass } = chooseChain(pull).chosen!;
    expect(at(mass.value).verdict).toBe('pass');
    const none = at(mass.value - 0.001);
    expect(none.verdict).toBe('fail');
    expect(none.candidates).toEqual([]);
    expect(none.fittings).toEqual([]);
    expect(codes(none, '1/4', 70)).toEqual(['TOO_HEAVY_TO_CARRY']);
  });

  it('one that a hook takes', () => {
    // common practice: a 3/8 grab hook takes its neighbors 5/16 and 7/16, not 1/4
    const choice = chooseChain({ ...pull, hook: { kind: 'grab-hook', size: '3/8' } });
    expect(codes(choice, '1/4', 70)).toEqual(['HOOK_DOES_NOT_TAKE']);
    expect(choice.chosen!.size).toBe('5/16');
  });

  it('answers in kilograms and meters', () => {
    const { requiredLimit, length, chosen } = chooseChain({ ...pull, units: 'si' });
    expect(requiredLimit).toMatchObject({ unit: 'kg' });
    expect(length).toMatchObject({ unit: 'm' });
    expect(chosen!.mass.unit).toBe('kg');
  });

  it('needs not more than a chain can carry', () => {
    const choice = chooseChain({ ...pull, task: { kind: 'pull', requiredLimit: '30000 lb', length: '20 ft' } });
    expect(choice).toMatchObject({ verdict: 'fail', chosen: null, candidates: [], fittings: [] });
  });
});

describe('refuses', () => {
  const haul = {
    kind: 'haul',
    rules: us49cfr393_2024,
    article: { kind: 'machinery', mass: '3940 lb', length: '10 ft' },
    tieDowns: 2,
    path: 'vehicle-to-cargo',
    length: '16 ft',
  } as const;
  it.each([
    ['no task', { task: undefined }, 'MISSING_FIELD', 'task'],
    ['another task', { task: { kind: 'lift' } }, 'UNKNOWN_VALUE', 'task.kind'],
    ['no table', { ratings: undefined }, 'UNKNOWN_RATING_TABLE', 'ratings'],
    ['no objective', { objective: undefined }, 'MISSING_FIELD', 'objective'],
    ['no prices', { objective: 'price' }, 'MISSING_FIELD', 'prices'],
    [
      'a price below zero',
      { prices: [{ size: '1/4', grade: 70, price: -1, per: '1 ft' }] },
      'NEGATIVE',
      'prices[0].price',
    ],
    ['a limit of zero', { task: { ...pull.task, requiredLimit: '0 lb' } }, 'NOT_POSITIVE', 'task.requiredLimit'],
    ['a length in pounds', { task: { ...pull.task, length: '20 lb' } }, 'WRONG_KIND', 'task.length'],
    ['a grade nobody makes', { grades: [75] }, 'UNKNOWN_GRADE', 'grades[0]'],
    ['a table beside the rule set', { task: haul }, 'CONFLICTING_FIELDS', 'ratings'],
    [
      'half a tie-down',
      { task: { ...haul, tieDowns: 1.5 }, ratings: undefined },
      'NOT_A_WHOLE_NUMBER',
      'task.tieDowns',
    ],
    [
      'a rule set by forces',
      { task: { ...haul, rules: euEn12195_1_2010 }, ratings: undefined },
      'UNKNOWN_RULE_SET',
      'task.rules',
    ],
    ['a hook of no size', { hook: { kind: 'grab-hook', size: '9/17' } }, 'UNKNOWN_SIZE', 'hook.size'],
  ])('%s', (_, change, code, path) => {
    expect(issueOf(() => chooseChain({ ...pull, ...change } as never))).toMatchObject({ code, path });
  });
});
