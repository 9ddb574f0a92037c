import {
  assemblyRating,
  auQldDoggers_2010,
  type ChainInspection,
  type ChainMeasurements,
  type ChainWhenNew,
  type CheckSecurementInput,
  type CriteriaSet,
  type CriterionCheck,
  checkSecurement,
  deBgBau3072,
  deDguv109_004,
  deDguv209_021_2021,
  euEn818_6_2000,
  euEn12195_3_2001_criteria,
  explain,
  inspectChain,
  us29cfr1910_184_2011,
  us29cfr1919_25_2024,
  us29cfr1926_251_2019,
  us49cfr393_104_2024,
  us49cfr393_108_2024,
  us49cfr393_2024,
  usAsmeB30_9_2010,
  usAsmeB30_10_2005,
  usDoeStd1090_1996,
  usOshaCourse600,
  usWac296_155_55800_2013,
} from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

const ALL_SETS: readonly CriteriaSet[] = [
  us29cfr1910_184_2011,
  us29cfr1926_251_2019,
  us29cfr1919_25_2024,
  us49cfr393_104_2024,
  usAsmeB30_9_2010,
  usAsmeB30_10_2005,
  usWac296_155_55800_2013,
  usDoeStd1090_1996,
  usOshaCourse600,
  euEn818_6_2000,
  euEn12195_3_2001_criteria,
  deDguv209_021_2021,
  deDguv109_004,
  deBgBau3072,
  auQldDoggers_2010,
];

const inspect = (criteria: CriteriaSet, chain: ChainWhenNew, measurements: ChainMeasurements): ChainInspection =>
  inspectChain({ criteria, chain, measurements });
const checkOf = ({ checks }: ChainInspection, id: string): CriterionCheck => {
  const found = checks.find((check) => check.id === id);
  if (found === undefined) throw new Error(`no check ${id}`);
  return found;
};
const codes = (notes: readonly { readonly code: string }[]) => notes.map(({ code }) => code);
// biome-ignore lint/suspicious/noExplicitAny: text of every form a length can have
type AnyLength = any;

describe('thresholds, at the limit, just below and just above, in every form of input', () => {
  const overSection = (criteria: CriteriaSet, pitch: AnyLength, links: number, length: AnyLength) =>
    checkOf(inspect(criteria, { pitch }, { section: { links, length }, found: [] }), 'elongation/chain').verdict;

  // 10 links of 30 mm are 300 mm when new: 3 % is 309 mm, 5 % is 315 mm, 10 % is 330 mm
  test.each([
    [euEn12195_3_2001_criteria, '> 3 %', '308.999 mm', '309 mm', 'pass', '309.001 mm'],
    [usOshaCourse600, '> 3 %', '308.999 mm', '309 mm', 'pass', '309.001 mm'],
    [us29cfr1919_25_2024, '> 5 %', '314.999 mm', '315 mm', 'pass', '315.001 mm'],
    [euEn818_6_2000, '> 5 %', '314.999 mm', '315 mm', 'pass', '315.001 mm'],
    [deDguv209_021_2021, '>= 5 %', '314.999 mm', '315 mm', 'fail', '315.001 mm'],
    [auQldDoggers_2010, '> 10 %', '329.999 mm', '330 mm', 'pass', '330.001 mm'],
  ] as const)('$id: growth $1', (criteria, _, below, at, there, above) => {
    expect([below, at, above].map((length) => overSection(criteria, '30 mm', 10, length))).toEqual([
      'pass',
      there,
      'fail',
    ]);
  });

  test.each([
    ['30 mm', 10, { value: 315, unit: 'mm' }],
    ['30 mm', 10, { value: 31.5, unit: 'cm' }],
    ['30 mm', 10, '0.315 m'],
    [{ value: 0.03, unit: 'm' }, 10, '315 mm'],
    ['3 cm', 10, '31.5 cm'],
    ['1.1 in', 11, '12.705 in'], // 11 · 1.1 in = 12.1 in; 12.1 · 1.05 = 12.705; doubles miss both
    ['1.1 in', 11, '322.707 mm'], // 12.705 · 25.4
    ['1 1/4 in', 8, '10 1/2 in'], // 8 · 1.25 in = 10 in
    ['1 1/4 in', 8, { value: 266.7, unit: 'mm' }], // 10.5 · 25.4
  ])('5 %% in every form: %j, %d links, %j', (pitch, links, length) => {
    expect(overSection(us29cfr1919_25_2024, pitch, links, length)).toBe('pass');
    expect(overSection(deDguv209_021_2021, pitch, links, length)).toBe('fail');
    const measured: AnyLength = { section: { links, length }, found: [] };
    const check = checkOf(inspect(us29cfr1919_25_2024, { pitch } as AnyLength, measured), 'elongation/chain');
    expect(check).toMatchObject({ measured: { value: 5, unit: '%' }, left: { value: 0, unit: '%' }, removedWhen: '>' });
  });

  const least = (criteria: CriteriaSet, size: AnyLength, reading: AnyLength, id = 'least-diameter/chain') =>
    checkOf(inspect(criteria, { size }, { diameters: [{ readings: [reading] }] }), id).verdict;

  // 3/8: 19/64 in = 0.296875 in = 7.540625 mm; equal to the table value is still acceptable
  test.each([
    ['19/64 in', 'pass'],
    ['0.296875 in', 'pass'],
    [{ value: 0.296875, unit: 'in' }, 'pass'],
    ['7.540625 mm', 'pass'],
    [{ value: 0.7540625, unit: 'cm' }, 'pass'],
    ['0.2968749 in', 'fail'],
    ['7.540624 mm', 'fail'],
    ['0.2968751 in', 'pass'],
    ['7.540626 mm', 'pass'],
  ])('least link size of 29 CFR 1910.184 for 3/8: %j %s', (reading, verdict) => {
    expect(least(us29cfr1910_184_2011, '3/8', reading)).toBe(verdict);
    // the other form of the table: wear over 5/64 of 3/8
    expect(least(us29cfr1926_251_2019, '3/8', reading, 'wear-depth/chain')).toBe(verdict);
    expect(least(usDoeStd1090_1996, '3/8', reading, 'wear-depth/chain')).toBe(verdict);
  });

  // ASME B30.9, from memory: 0.342 in for 3/8
  test.each([
    ['0.342 in', 'pass'],
    ['8.6868 mm', 'pass'], // 0.342 · 25.4
    ['0.3419 in', 'fail'],
    ['8.6867 mm', 'fail'],
    ['0.3421 in', 'pass'],
  ])('least thickness of ASME B30.9 for 3/8: %s %s', (reading, verdict) => {
    expect(least(usAsmeB30_9_2010, '3/8', reading)).toBe(verdict);
    expect(least(usWac296_155_55800_2013, '3/8', reading)).toBe(verdict);
  });

  // 10 % of 10 mm and of 5.5 mm, which no double holds
  test.each([
    ['10 mm', '9 mm', 'pass'],
    ['10 mm', '8.999 mm', 'fail'],
    ['10 mm', '9.001 mm', 'pass'],
    ['5.5 mm', '4.95 mm', 'pass'],
    ['5.5 mm', '4.949 mm', 'fail'],
    ['10 mm', { value: 0.9, unit: 'cm' }, 'pass'],
  ])('wear over 10 %% of %s: %j %s', (size, reading, verdict) => {
    expect(least(euEn12195_3_2001_criteria, size, reading, 'wear/chain')).toBe(verdict);
    expect(least(auQldDoggers_2010, size, reading, 'wear/chain')).toBe(verdict);
    expect(least(deBgBau3072, size, reading, 'wear/chain')).toBe(verdict);
  });

  // the mean of two diameters below 90 % of 10 mm
  test.each([
    [['9 mm', '9 mm'], 'pass'],
    [['8.9 mm', '9.1 mm'], 'pass'],
    [['0.91 cm', '8.9 mm'], 'pass'],
    [['8.9 mm', '9.099 mm'], 'fail'],
    [['8.9 mm', '9.101 mm'], 'pass'],
  ] as const)('mean of %j: %s', (readings, verdict) => {
    const measurements = { diameters: [{ readings }] } as ChainMeasurements;
    expect(checkOf(inspect(euEn818_6_2000, { size: '10 mm' }, measurements), 'mean-diameter/chain').verdict).toBe(
      verdict,
    );
    expect(checkOf(inspect(deDguv209_021_2021, { size: '10 mm' }, measurements), 'mean-wear/chain').verdict).toBe(
      verdict,
    );
  });

  const throat = (criteria: CriteriaSet, when: AnyLength, now: AnyLength) => {
    const { checks } = inspect(criteria, { hook: { throat: when } }, { hook: { throat: now, found: [] } });
    return checks.filter(({ id }) => id.startsWith('throat')).some(({ verdict }) => verdict === 'fail');
  };
  test.each([
    [us29cfr1910_184_2011, '1 in', '1.15 in', false],
    [us29cfr1910_184_2011, '1 in', '1.1501 in', true],
    [us29cfr1910_184_2011, '30 mm', '34.5 mm', false],
    [us29cfr1910_184_2011, '30 mm', '34.501 mm', true],
    [usDoeStd1090_1996, '1 in', '29.21 mm', false], // 1.15 · 25.4
    [euEn818_6_2000, '30 mm', '33 mm', false],
    [euEn818_6_2000, '30 mm', '33.001 mm', true],
    [auQldDoggers_2010, '1 in', '1.05 in', false],
    [auQldDoggers_2010, '1 in', '1.0501 in', true],
    [usAsmeB30_10_2005, '1 in', '1.05 in', true],
    [usAsmeB30_10_2005, '1 in', '1.0499 in', false],
    [usWac296_155_55800_2013, '1 in', '26.67 mm', true], // 1.05 · 25.4
    // 5 %, not to exceed 1/4 in: the two meet at a throat of 5 in
    [usAsmeB30_10_2005, '6 in', '6 1/4 in', true],
    [usAsmeB30_10_2005, '6 in', '6.2499 in', false],
    [usAsmeB30_10_2005, '5 in', '5.25 in', true],
    [usAsmeB30_10_2005, '5 in', '5.2499 in', false],
    [usAsmeB30_10_2005, '4 in', '4.2 in', true],
    [usAsmeB30_10_2005, '4 in', '4.1999 in', false],
  ])('throat under $id: %s to %s', (criteria, when, now, removed) => {
    expect(throat(criteria, when, now)).toBe(removed);
  });

  const hookCheck = (criteria: CriteriaSet, chain: ChainWhenNew, hook: ChainMeasurements['hook'], id: string) =>
    checkOf(inspect(criteria, chain, { hook: hook ?? {} }), id).verdict;
  test.each([
    ['10 deg', 'pass'],
    ['10.001 deg', 'fail'],
    ['9.999 deg', 'pass'],
    ['-10.001 deg', 'fail'],
    ['0.17 rad', 'pass'], // 9.74 deg
    ['0.18 rad', 'fail'], // 10.3 deg
  ] as const)('twist of %s: %s', (twist, verdict) => {
    expect(hookCheck(us29cfr1910_184_2011, {}, { twist }, 'twist/hook')).toBe(verdict);
    expect(hookCheck(usDoeStd1090_1996, {}, { twist }, 'twist/hook')).toBe(verdict);
  });
  test.each([
    ['18 mm', 'pass'],
    ['17.999 mm', 'fail'],
    ['18.001 mm', 'pass'],
  ] as const)('hook section of 20 mm worn to %s: %s', (section, verdict) => {
    for (const set of [usAsmeB30_10_2005, usWac296_155_55800_2013, auQldDoggers_2010]) {
      expect(hookCheck(set, { hook: { section: '20 mm' } }, { section }, 'wear/hook')).toBe(verdict);
    }
  });

  const heat = (criteria: CriteriaSet, highestTemperature: AnyLength, grade: AnyLength, id: string) =>
    checkOf(inspect(criteria, { grade }, { highestTemperature }), id).verdict;
  test.each([
    ['1000 F', 'pass'],
    ['1000.001 F', 'fail'],
    ['999.999 F', 'pass'],
    ['537.7 C', 'pass'], // 999.86 F
    ['537.8 C', 'fail'], // 1000.04 F
  ])('1000 F: %s %s', (temperature, verdict) => {
    for (const set of [us29cfr1910_184_2011, usAsmeB30_9_2010, usWac296_155_55800_2013]) {
      expect(heat(set, temperature, undefined, 'highest-temperature/chain')).toBe(verdict);
    }
  });
  test.each([
    ['400 C', '8', 'pass'],
    ['752 F', '8', 'pass'], // 400 · 9/5 + 32
    ['752.1 F', '8', 'fail'],
    ['400.1 C', '8', 'fail'],
    ['399.9 C', '8', 'pass'],
  ] as const)('class 8 at %s', (temperature, grade, verdict) => {
    expect(heat(euEn818_6_2000, temperature, grade, 'temperature-class-8/chain')).toBe(verdict);
  });
  test.each([
    ['475 C', 'pass'],
    ['475.1 C', 'fail'],
    ['474.9 C', 'pass'],
  ])('class 4 at %s', (temperature, verdict) => {
    expect(heat(euEn818_6_2000, temperature, '4', 'temperature-class-4/chain')).toBe(verdict);
    expect(heat(euEn818_6_2000, temperature, '4', 'temperature-class-8/chain')).toBe('not-applicable');
  });
  test.each([
    ['400 C', 'pass'],
    ['450 C', 'undetermined'], // class 4 bears it, class 8 does not
    ['476 C', 'fail'], // neither does
  ])('a class that is not known at %s: %s', (temperature, verdict) => {
    expect(heat(euEn818_6_2000, temperature, undefined, 'temperature-class-8/chain')).toBe(verdict);
  });

  // DGUV Regel 109-004: 1.05 · 30 mm + (10 mm − 9.5 mm) = 32 mm
  test.each([
    ['32 mm', 'pass'],
    ['32.001 mm', 'fail'],
    ['31.999 mm', 'pass'],
    [{ value: 3.2, unit: 'cm' }, 'pass'],
  ])('one link of %j beyond one depth of wear: %s', (inside, verdict) => {
    const measured = { diameters: [{ readings: ['9.5 mm'] }], link: { inside } } as ChainMeasurements;
    const result = inspect(deDguv109_004, { size: '10 mm', pitch: '30 mm' }, measured);
    expect(checkOf(result, 'link-elongation-beyond-wear/chain').verdict).toBe(verdict);
  });
  test.each([
    ['notchDepth', 'notch-depth/chain'],
    ['bend', 'bend/chain'],
  ])('%s over 10 %% of the remaining 9 mm', (field, id) => {
    const verdicts = ['0.9 mm', '0.9001 mm', '0.8999 mm', '0 mm'].map((depth) => {
      const measured = { diameters: [{ readings: ['9 mm'] }], [field]: depth } as ChainMeasurements;
      return checkOf(inspect(deDguv109_004, { size: '10 mm' }, measured), id).verdict;
    });
    expect(verdicts).toEqual(['pass', 'fail', 'pass', 'pass']);
  });
});

describe('the figures of a check', () => {
  it('are what was measured, the limit with its comparator, and what is left', () => {
    const result = inspect(euEn12195_3_2001_criteria, { pitch: '30 mm' }, { section: { links: 11, length: '336 mm' } });
    const check = checkOf(result, 'elongation/chain');
    // 6 mm of 330 mm
    expect(check).toMatchObject({
      clause: 'EN 12195-3 annex',
      removedWhen: '>',
      limit: { value: 3, unit: '%' },
      provenance: 'memory',
    });
    const { measured, left } = check as { measured: { value: number }; left: { value: number } } & typeof check;
    expect(measured.value).toBeCloseTo(600 / 330, 12);
    expect(left.value).toBeCloseTo(3 - 600 / 330, 12);
  });

  it('never contradict the exact comparison', () => {
    // 1e-13 of a millimeter past 5 %, where the percentage itself rounds to 5
    const result = inspect(
      us29cfr1919_25_2024,
      { pitch: '30 mm' },
      { section: { links: 10, length: '315.0000000001 mm' } },
    );
    const check = checkOf(result, 'elongation/chain') as { verdict: string; measured: { value: number } };
    expect(check.verdict).toBe('fail');
    expect(check.measured.value).toBeGreaterThan(5);
  });

  it('name the worst place', () => {
    const diameters = [
      { readings: ['9.8 mm', '9.6 mm'] },
      { readings: ['9.2 mm', '9.4 mm'] },
      { readings: ['9.9 mm'] },
    ];
    const result = inspect(euEn12195_3_2001_criteria, { size: '10 mm' }, { diameters } as ChainMeasurements);
    expect(checkOf(result, 'wear/chain')).toMatchObject({ measured: { unit: '%' } });
    const { measured } = checkOf(result, 'wear/chain') as { measured: { value: number } } & CriterionCheck;
    expect(measured.value).toBeCloseTo(8, 12); // 9.2 of 10
  });

  it('carry the weaker word of a row of the wear table', () => {
    // 1-3/4 in was cut off in the copy that was read: 1-13/32 in = 1.40625 in from memory
    const result = inspect(us29cfr1910_184_2011, { size: '1-3/4' }, { diameters: [{ readings: ['1 13/32 in'] }] });
    expect(checkOf(result, 'least-diameter/chain')).toMatchObject({ verdict: 'pass', provenance: 'memory' });
    const other = inspect(us29cfr1910_184_2011, { size: '1-3/8' }, { diameters: [{ readings: ['1.0937 in'] }] });
    expect(checkOf(other, 'least-diameter/chain')).toMatchObject({ verdict: 'fail', provenance: 'read' }); // 1-3/32 = 1.09375
  });
});

describe('what is missing', () => {
  it('is undetermined, with what to measure', () => {
    const result = inspect(us29cfr1910_184_2011, { size: '3/8' }, {});
    expect(result.verdict).toBe('undetermined');
    expect(codes(result.missing)).toEqual([
      'DIAMETER',
      'SECTION_LENGTH',
      'NOT_LOOKED_AT',
      'TEMPERATURE',
      'HOOK_NOT_INSPECTED',
    ]);
  });

  it('does not matter where another criterion says remove', () => {
    const result = inspect(us29cfr1910_184_2011, { size: '3/8' }, { diameters: [{ readings: ['0.29 in'] }] });
    expect(result).toMatchObject({ verdict: 'remove', governing: 'least-diameter/chain' });
    expect(result.missing.length).toBeGreaterThan(0);
  });

  test.each(['7/32', '9/32', '5/16'] as const)('29 CFR 1910.184 has no wear for %s: ask the maker', (size) => {
    const result = inspect(us29cfr1910_184_2011, { size }, { diameters: [{ readings: ['0.01 in'] }] });
    expect(checkOf(result, 'least-diameter/chain')).toMatchObject({ verdict: 'undetermined' });
    expect(codes(result.missing)).toContain('SIZE_NOT_IN_WEAR_TABLE');
  });

  it('is a metric size where a wear table goes by inches, and the size itself', () => {
    const metric = inspect(us29cfr1910_184_2011, { size: '10 mm' }, { diameters: [{ readings: ['9 mm'] }] });
    expect(codes(metric.missing)).toContain('SIZE_NOT_IN_WEAR_TABLE');
    for (const set of [us29cfr1910_184_2011, us29cfr1926_251_2019]) {
      expect(codes(inspect(set, {}, { diameters: [{ readings: ['9 mm'] }] }).missing)).toContain('SIZE_NOT_STATED');
    }
  });

  it('is the nominal wire of an inch size, which does not name it', () => {
    const diameters = [{ readings: ['9.5 mm', '9.5 mm'] }] as const;
    for (const set of [euEn818_6_2000, euEn12195_3_2001_criteria, deDguv109_004]) {
      expect(codes(inspect(set, { size: '3/8' }, { diameters }).missing)).toContain('NOMINAL_WIRE');
      expect(codes(inspect(set, { size: '3/8', wireDiameter: '10 mm' }, { diameters }).missing)).not.toContain(
        'NOMINAL_WIRE',
      );
    }
  });

  it('is the second diameter, where a source judges the mean', () => {
    const chain = { size: '10 mm' } as const;
    expect(codes(inspect(euEn818_6_2000, chain, { diameters: [{ readings: ['9.9 mm'] }] }).missing)).toContain(
      'TWO_DIAMETERS',
    );
    const pair = { readings: ['9.9 mm', '9.8 mm'] } as const;
    // one place with a pair does not clear the other
    const mixed = inspect(euEn818_6_2000, chain, { diameters: [pair, { readings: ['9.9 mm'] }] });
    expect(checkOf(mixed, 'mean-diameter/chain').verdict).toBe('undetermined');
    // but it can remove the chain
    const worn = { readings: ['8.9 mm', '9 mm'] } as const;
    const removed = inspect(euEn818_6_2000, chain, { diameters: [worn, { readings: ['9.9 mm'] }] });
    expect(checkOf(removed, 'mean-diameter/chain')).toMatchObject({ verdict: 'fail', bound: 'at least' });
  });

  it('is the length when new', () => {
    const result = inspect(euEn12195_3_2001_criteria, {}, { section: { links: 11, length: '341 mm' } });
    expect(codes(result.missing)).toContain('PITCH_WHEN_NEW');
    const own = inspect(euEn12195_3_2001_criteria, {}, { section: { links: 11, length: '341 mm', whenNew: '331 mm' } });
    // 10 of 331 mm is 3.02 %
    expect(checkOf(own, 'elongation/chain').verdict).toBe('fail');
    expect(codes(own.cautions)).not.toContain('NOMINAL_PITCH');
  });

  it('is a hook that was not inspected; one that is not there asks nothing', () => {
    const set = us29cfr1910_184_2011;
    expect(codes(inspect(set, {}, { found: [] }).missing)).toContain('HOOK_NOT_INSPECTED');
    const without = inspect(set, { withoutHook: true }, { found: [] });
    expect(codes(without.missing)).not.toContain('HOOK_NOT_INSPECTED');
    expect(checkOf(without, 'twist/hook').verdict).toBe('not-applicable');
    expect(codes(inspect(set, {}, { hook: { throat: '1 in', found: [] } }).missing)).toContain('THROAT_WHEN_NEW');
    expect(codes(inspect(set, { hook: { throat: '1 in' } }, { hook: {} }).missing)).toEqual(
      expect.arrayContaining(['THROAT', 'TWIST']),
    );
    expect(codes(inspect(usAsmeB30_10_2005, {}, { hook: { found: [] } }).missing)).toContain('HOOK_SECTION');
  });

  it('is the depth of a notch that was seen', () => {
    const worn = { diameters: [{ readings: ['9.5 mm'] }] } as const;
    expect(codes(inspect(deDguv109_004, { size: '10 mm' }, { ...worn, found: ['gouge'] }).missing)).toContain('DEPTH');
    expect(codes(inspect(deDguv109_004, { size: '10 mm' }, { ...worn, found: [] }).missing)).not.toContain('DEPTH');
  });

  it('is never a pass: a set of hooks alone says nothing of a chain without one', () => {
    expect(inspect(usAsmeB30_10_2005, { withoutHook: true }, {}).verdict).toBe('undetermined');
  });
});

describe('a section and its longest link', () => {
  const chain = { pitch: '30 mm' } as const;
  const judge = (criteria: CriteriaSet, measurements: ChainMeasurements, id: string) =>
    checkOf(inspect(criteria, chain, { ...measurements, found: [] }), id);

  it('the longest link bounds every section', () => {
    expect(judge(us29cfr1919_25_2024, { link: { inside: '31 mm' } }, 'elongation/chain').verdict).toBe('pass');
    expect(judge(us29cfr1919_25_2024, { link: { inside: '32 mm' } }, 'elongation/chain').verdict).toBe('fail');
  });

  it('one link of eleven that is past the limit removes a chain whose section is not', () => {
    const measured = { section: { links: 11, length: '332 mm' }, link: { inside: '32 mm' } } as const;
    expect(judge(us29cfr1919_25_2024, measured, 'elongation/chain').verdict).toBe('fail');
    const alone = inspect(us29cfr1919_25_2024, chain, { section: { links: 11, length: '332 mm' }, found: [] });
    expect(alone.verdict).toBe('fit');
    expect(codes(alone.cautions)).toContain('WORST_LINK');
  });

  it('a section past the limit of one link has a link past it, one below it clears none', () => {
    const past = judge(deBgBau3072, { section: { links: 11, length: '347 mm' } }, 'link-elongation/chain');
    expect(past).toMatchObject({ verdict: 'fail', bound: 'at least' });
    expect(judge(deBgBau3072, { section: { links: 11, length: '331 mm' } }, 'link-elongation/chain')).toMatchObject({
      verdict: 'undetermined',
      missing: [{ code: 'LONGEST_LINK' }],
    });
  });

  it('growth outside is growth inside at least: it can remove and cannot clear', () => {
    const outer = { pitch: '30 mm', outsideLength: '50 mm' } as const;
    const at = (outside: '51 mm' | '52 mm') =>
      checkOf(inspect(us29cfr1919_25_2024, outer, { link: { outside } }), 'elongation/chain').verdict;
    expect([at('51 mm'), at('52 mm')]).toEqual(['undetermined', 'fail']); // 3.3 % and 6.7 % of 30 mm
  });
});

describe('where any growth is too much', () => {
  const increase = (measurements: ChainMeasurements, chain: ChainWhenNew = { pitch: '30 mm' }) =>
    checkOf(inspect(us29cfr1910_184_2011, chain, measurements), 'elongation/chain');
  const section = (length: AnyLength) => ({ links: 10, length });

  it('is cleared by none, found beyond the uncertainty, and open without one', () => {
    expect(increase({ section: section('300 mm') }).verdict).toBe('pass');
    expect(increase({ section: section('299 mm') }).verdict).toBe('pass');
    expect(increase({ section: section('300.5 mm') })).toMatchObject({
      verdict: 'undetermined',
      missing: [{ code: 'UNCERTAINTY_NOT_STATED' }],
    });
    const uncertainty = '0.5 mm';
    expect(increase({ section: section('300.5 mm'), uncertainty }).verdict).toBe('pass');
    expect(increase({ section: section('300.501 mm'), uncertainty }).verdict).toBe('fail');
    expect(increase({ section: section('300.499 mm'), uncertainty }).verdict).toBe('pass');
    expect(increase({ section: section('300.001 mm'), uncertainty: '0 mm' }).verdict).toBe('fail');
  });

  const stretched = (measurements: ChainMeasurements, chain: ChainWhenNew) =>
    checkOf(inspect(usAsmeB30_9_2010, chain, { uncertainty: '0.1 mm', ...measurements }), 'stretch/chain').verdict;
  const outer = { size: '10 mm', pitch: '30 mm', outsideLength: '50 mm' } as const;

  it('stretch is told by the outside length of a link', () => {
    expect(stretched({ link: { outside: '50.1 mm' } }, outer)).toBe('pass');
    expect(stretched({ link: { outside: '50.101 mm' } }, outer)).toBe('fail');
  });

  it('stretch is growth inside that wear does not explain', () => {
    // both crowns worn by 0.5 mm: 31 mm inside without any stretch
    const worn = { diameters: [{ readings: ['9.5 mm'] }] } as const;
    expect(stretched({ ...worn, link: { inside: '31 mm' } }, outer)).toBe('undetermined');
    expect(stretched({ ...worn, link: { inside: '31.1 mm' } }, outer)).toBe('undetermined');
    expect(stretched({ ...worn, link: { inside: '31.101 mm' } }, outer)).toBe('fail');
    expect(stretched({ ...worn, section: { links: 11, length: '341 mm' } }, outer)).toBe('undetermined');
    expect(stretched({ ...worn, section: { links: 11, length: '341.2 mm' } }, outer)).toBe('fail');
    expect(stretched({ link: { inside: '30.1 mm' } }, outer)).toBe('pass'); // no growth, no stretch
    expect(stretched({ section: { links: 11, length: '330 mm' } }, outer)).toBe('undetermined'); // one link is lost in eleven
  });
});

describe('wear and stretch told apart', () => {
  const chain = { size: '10 mm', grade: '8', pitch: '30 mm', outsideLength: '50 mm' } as const;

  it('by the outside length of the link: geometry of 2w inside and none outside', () => {
    const { growth } = inspect(euEn818_6_2000, chain, { link: { inside: '31.5 mm', outside: '51 mm' } });
    // 1.5 mm inside, of which 1 mm is stretch: 5 %, 3.33 %, the rest is wear of 0.25 mm at each crown
    expect(growth).toMatchObject({ total: { value: 5 }, by: 'outside length' });
    expect(growth?.stretch.value).toBeCloseTo(100 / 30, 12);
    expect(growth?.wear.value).toBeCloseTo(50 / 30, 12);
  });

  it('by the wear at the crowns, as a bound', () => {
    // 11 links worn to 9.5 mm: 2 · 0.5 · 11 = 11 mm of growth from wear, all there is
    const worn = { diameters: [{ readings: ['9.5 mm'] }], section: { links: 11, length: '341 mm' } } as const;
    const { growth, pastLoad } = inspect(euEn12195_3_2001_criteria, chain, worn);
    expect(growth).toMatchObject({ stretch: { value: 0 }, by: 'wear at the crowns' });
    expect(pastLoad).toBeUndefined();
  });

  it('or not at all, which is said', () => {
    const result = inspect(euEn12195_3_2001_criteria, { pitch: '30 mm' }, { section: { links: 11, length: '341 mm' } });
    expect(result.growth).toBeUndefined();
    expect(codes(result.cautions)).toContain('NOT_TOLD_APART');
  });
});

describe('stretch beyond wear means a load beyond the proof force', () => {
  const outer = { pitch: '30 mm', outsideLength: '50 mm' } as const;
  const past = (chain: ChainWhenNew, outside: AnyLength = '51.5 mm') =>
    inspect(us29cfr1919_25_2024, { ...outer, ...chain }, { link: { outside } }).pastLoad;

  it('with the proof factor of its grade and the ductility it has used up', () => {
    // 1.5 of 30 mm is 5 %, of 20 % (grades 80, 100, class 8) and 15 % (30, 43, 70) at break: from memory
    expect(past({ grade: 80 })).toMatchObject({ moreThanTimesWll: 2, ductilityUsed: 0.25 });
    expect(past({ grade: '8' })).toMatchObject({ moreThanTimesWll: 2.5, ductilityUsed: 0.25 });
    expect(past({ grade: 70 })?.ductilityUsed).toBeCloseTo(1 / 3, 12);
    expect(past({ grade: 43 })?.moreThanTimesWll).toBe(1.5);
  });

  it('and without it where the grade is not known', () => {
    expect(past({})).toMatchObject({ moreThanTimesWll: null, because: { code: 'ONCE_OVERLOADED' } });
    expect(past({}, '50 mm')).toBeUndefined();
  });

  it('and by what is seen', () => {
    const { pastLoad, assumptions } = inspect(us29cfr1919_25_2024, { grade: 70 }, { found: ['visible-stretch'] });
    expect(pastLoad).toMatchObject({
      moreThanTimesWll: 2,
      because: { code: 'ONCE_OVER_PROOF', params: { percent: 10 } },
    });
    expect(codes(assumptions)).toContain('PROOF_LOADED_WHEN_NEW');
  });
});

describe('what a set has no figure for', () => {
  test.each([
    [us49cfr393_104_2024, ['wear', 'growth in length']],
    [us29cfr1919_25_2024, ['wear']],
    [us29cfr1926_251_2019, ['growth in length']],
    [usAsmeB30_10_2005, ['wear', 'growth in length']],
    [us29cfr1910_184_2011, []],
    [usAsmeB30_9_2010, []],
    [euEn818_6_2000, []],
    [deBgBau3072, []],
  ])('is said: $id', (set, of) => {
    const said = inspect(set, {}, {}).cautions.filter(({ code }) => code === 'SAYS_NOTHING_OF');
    expect(said.map(({ params }) => params.of)).toEqual(of);
  });
});

describe('what is seen', () => {
  test.each(ALL_SETS.filter(({ removal }) => 'chain' in removal.rows))(
    'stretch without an instrument is past every limit: $id',
    (set) => {
      const result = inspect(set, { size: '3/8', grade: 70 }, { found: ['visible-stretch'] });
      expect(result.verdict).toBe('remove');
      for (const check of result.checks) {
        if (/elongation|stretch/.test(check.id)) expect([check.id, check.verdict]).toEqual([check.id, 'fail']);
      }
      expect(result.pastLoad).toBeDefined();
    },
  );

  it('a link that measures 10 % longer is stretch that is seen, under the loosest limit too', () => {
    const at = (inside: AnyLength) => inspect(auQldDoggers_2010, { pitch: '30 mm' }, { link: { inside }, found: [] });
    expect(checkOf(at('33 mm'), 'elongation/chain').verdict).toBe('pass'); // not over 10 %
    expect(checkOf(at('33 mm'), 'visible-stretch/chain').verdict).toBe('fail');
    expect(at('33 mm').pastLoad).toMatchObject({ because: { code: 'ONCE_OVERLOADED' } });
    expect(at('32.999 mm').pastLoad).toBeUndefined();
    // 10 % that wear of 1.5 mm at both crowns explains is no stretch
    const worn = { link: { inside: '33 mm' }, diameters: [{ readings: ['8.5 mm'] }], found: [] } as const;
    expect(inspect(auQldDoggers_2010, { size: '10 mm', pitch: '30 mm' }, worn).pastLoad).toBeUndefined();
    expect(checkOf(at('32.999 mm'), 'visible-stretch/chain').verdict).toBe('pass');
    expect(checkOf(at('33.001 mm'), 'elongation/chain').verdict).toBe('fail');
  });

  test.each(ALL_SETS.filter(({ removal }) => 'chain' in removal.rows))(
    'a crack removes under every set: $id',
    (set) => {
      expect(inspect(set, { size: '3/8' }, { found: ['crack'] }).verdict).toBe('remove');
    },
  );
  test.each(ALL_SETS.filter(({ removal }) => 'hook' in removal.rows))('and a cracked hook: $id', (set) => {
    expect(inspect(set, { size: '3/8' }, { hook: { found: ['crack'] } }).verdict).toBe('remove');
  });

  it('any visible bend or twist of a hook is too much by ASME B30.10, and not by 29 CFR 1910.184 as such', () => {
    const hook = { twist: '4 deg', found: ['bend-or-twist'] } as const;
    expect(checkOf(inspect(usAsmeB30_10_2005, {}, { hook }), 'bend-or-twist/hook').verdict).toBe('fail');
    expect(checkOf(inspect(us29cfr1910_184_2011, {}, { hook }), 'twist/hook').verdict).toBe('pass');
    expect(checkOf(inspect(us29cfr1910_184_2011, {}, { hook: { found: [] } }), 'twist/hook').verdict).toBe('pass');
  });

  it('a missing mark removes a sling and not a tie-down of the United States, which then counts as grade 30', () => {
    expect(inspect(us29cfr1910_184_2011, {}, { found: ['mark-missing'] }).verdict).toBe('remove');
    expect(inspect(us49cfr393_104_2024, {}, { found: ['mark-missing'] }).verdict).toBe('fit');
  });

  it('a gouge is damage, unless the set measures it', () => {
    const worn = { diameters: [{ readings: ['9.5 mm'] }], link: { inside: '30.1 mm' }, bend: '0 mm' } as const;
    const chain = { size: '10 mm', pitch: '30 mm' } as const;
    expect(inspect(euEn12195_3_2001_criteria, chain, { ...worn, found: ['gouge'] }).verdict).toBe('remove');
    expect(inspect(deDguv109_004, chain, { ...worn, notchDepth: '0.5 mm', found: ['gouge'] }).verdict).toBe('fit');
  });
});

describe('sources that disagree, each with its own verdict', () => {
  const chain = { size: '10 mm', grade: '8', pitch: '30 mm', withoutHook: true } as const;
  const sound = { found: [], neverHeated: true } as const;

  it('exactly 5 % of one link: guidance of the accident insurers removes, their leaflet does not', () => {
    const measured = { ...sound, diameters: [{ readings: ['10 mm', '10 mm'] }], link: { inside: '31.5 mm' } } as const;
    expect(inspect(deDguv209_021_2021, chain, measured).verdict).toBe('remove');
    expect(inspect(deBgBau3072, chain, measured).verdict).toBe('fit');
  });

  it('8 % of a section: removed at 3 and 5, fit at 10', () => {
    const measured = {
      ...sound,
      diameters: [{ readings: ['10 mm', '10 mm'] }],
      section: { links: 10, length: '324 mm' },
    } as const;
    expect(inspect(euEn12195_3_2001_criteria, chain, measured).verdict).toBe('remove');
    expect(inspect(us29cfr1919_25_2024, chain, measured).verdict).toBe('remove');
    expect(inspect(auQldDoggers_2010, chain, measured).verdict).toBe('fit');
  });

  it('a mean hides a deep flat: 8 and 10 mm of 10 mm', () => {
    const measured = {
      ...sound,
      diameters: [{ readings: ['8 mm', '10 mm'] }],
      section: { links: 10, length: '300 mm' },
    } as const;
    expect(inspect(euEn818_6_2000, chain, measured).verdict).toBe('fit');
    expect(inspect(euEn12195_3_2001_criteria, chain, measured).verdict).toBe('remove');
    expect(least('3/8')).toEqual(['fail', 'pass']); // 8 mm is under 0.342 in and over 19/64 in
    function least(size: '3/8') {
      return [usAsmeB30_9_2010, us29cfr1910_184_2011].map(
        (set) => checkOf(inspect(set, { size }, measured), 'least-diameter/chain').verdict,
      );
    }
  });

  it('a throat opened by 12 %: fit at 15, removed at 10 and at 5', () => {
    const verdict = (set: CriteriaSet) =>
      checkOf(inspect(set, { hook: { throat: '25 mm' } }, { hook: { throat: '28 mm' } }), 'throat-opening/hook')
        .verdict;
    expect(
      [us29cfr1910_184_2011, usDoeStd1090_1996, euEn818_6_2000, auQldDoggers_2010, usWac296_155_55800_2013].map(
        verdict,
      ),
    ).toEqual(['pass', 'pass', 'fail', 'fail', 'fail']);
  });

  it('an old text for seamen is not followed: 25 % of the metal thickness, twice what lifting standards leave', () => {
    // 0.375 in less 24 % is 0.285 in: within that text, and out under every set that has a figure for wear
    const measured = { diameters: [{ readings: ['0.285 in', '0.285 in'] }] } as const;
    const sets = ALL_SETS.filter(({ removal: { rows } }) =>
      Object.keys(rows.chain ?? {}).some((each) => /^(wear|mean-|least-)/.test(each)),
    );
    expect(sets.length).toBeGreaterThan(8);
    for (const set of sets) {
      expect([set.id, inspect(set, { size: '3/8', wireDiameter: '0.375 in' }, measured).verdict]).toEqual([
        set.id,
        'remove',
      ]);
    }
  });

  it('nor one that joins broken chain with a link and welds it: a makeshift repair is out everywhere', () => {
    for (const set of ALL_SETS.filter(({ removal }) => 'chain' in removal.rows)) {
      expect([set.id, inspect(set, {}, { found: ['makeshift-repair'] }).verdict]).toEqual([set.id, 'remove']);
    }
  });

  it('what is no rule says so', () => {
    expect(codes(inspect(auQldDoggers_2010, {}, {}).cautions)).toContain('NO_RULE');
    expect(codes(inspect(usOshaCourse600, {}, {}).cautions)).toContain('NO_RULE');
    expect(codes(inspect(euEn818_6_2000, {}, {}).cautions)).not.toContain('NO_RULE');
  });
});

describe('an inspection is the condition of a part', () => {
  const chain = { id: 'chain', kind: 'chain', size: '5/16', grade: 70 } as const;
  const parts = (condition: ChainInspection) =>
    [
      { ...chain, condition },
      { id: 'binder', kind: 'binder', markedWll: '5400 lb' },
    ] as const;
  const inspected = (found: ChainMeasurements['found']) =>
    inspectChain({
      criteria: us49cfr393_104_2024,
      chain: { size: '5/16', grade: 70 },
      measurements: found === undefined ? {} : { found },
    });

  it('unchanged, from the caliper to the rating and the plan', () => {
    const rate = (condition: ChainInspection) =>
      assemblyRating({ ratings: us49cfr393_108_2024, parts: parts(condition) });
    expect(rate(inspected([]))).toMatchObject({ verdict: 'pass', workingLoadLimit: { value: 4700, unit: 'lb' } });
    expect(rate(inspected(['crack']))).toMatchObject({
      verdict: 'fail',
      workingLoadLimit: { value: 0 },
      weakest: ['chain'],
    });
    const open = rate(inspected(undefined));
    expect(open).toMatchObject({ verdict: 'undetermined', workingLoadLimit: null });
    expect(codes(open.missing)).toEqual(['CONDITION_UNDETERMINED']);
  });

  it('and through JSON', () => {
    const condition = JSON.parse(JSON.stringify(inspected(['gouge']))) as ChainInspection;
    expect(assemblyRating({ ratings: us49cfr393_108_2024, parts: parts(condition) }).verdict).toBe('fail');
    expect(explain(condition)).toBe(explain(inspected(['gouge'])));
  });

  it('a chain to be removed fails the plan', () => {
    const plan: CheckSecurementInput = {
      rules: us49cfr393_2024,
      articles: [{ id: 'tractor', kind: 'machinery', mass: '3000 lb', length: '9 ft' }],
      tieDowns: (['front', 'rear'] as const).map((end) => ({
        id: end,
        holds: 'tractor',
        path: 'vehicle-to-cargo',
        end,
        parts: [
          { id: 'deck', kind: 'anchor', at: 'vehicle', markedWll: '5000 lb' },
          ...parts(inspected(end === 'rear' ? ['bent-link'] : [])),
          { id: 'point', kind: 'anchor', at: 'cargo', markedWll: '5000 lb' },
        ],
      })),
    };
    expect(checkSecurement(plan).verdict).toBe('fail');
  });
});

describe('input that cannot be read', () => {
  const good = { criteria: euEn818_6_2000, chain: { size: '10 mm' }, measurements: {} };
  const issue = (spoil: object) => issueOf(() => inspectChain({ ...good, ...spoil } as never));
  test.each([
    [{ criteria: undefined }, 'UNKNOWN_CRITERIA_SET', 'criteria'],
    [{ criteria: 'eu-en818-6-2000' }, 'UNKNOWN_CRITERIA_SET', 'criteria'],
    [{ chain: undefined }, 'MISSING_FIELD', 'chain'],
    [{ measurements: null }, 'MISSING_FIELD', 'measurements'],
    [{ chain: { size: '0.3' } }, 'UNKNOWN_SIZE', 'chain.size'],
    [{ chain: { grade: 75 } }, 'UNKNOWN_GRADE', 'chain.grade'],
    [{ chain: { pitch: '0 mm' } }, 'NOT_POSITIVE', 'chain.pitch'],
    [{ chain: { hook: 5 } }, 'MISSING_FIELD', 'chain.hook'],
    [{ chain: { hook: { throat: '1 kg' } } }, 'WRONG_KIND', 'chain.hook.throat'],
    [{ chain: { hook: {}, withoutHook: true } }, 'CONFLICTING_FIELDS', 'chain.withoutHook'],
    [{ chain: { withoutHook: 'no' } }, 'UNKNOWN_VALUE', 'chain.withoutHook'],
    [{ measurements: { diameters: 5 } }, 'EMPTY_LIST', 'measurements.diameters'],
    [{ measurements: { diameters: [{ readings: [] }] } }, 'EMPTY_LIST', 'measurements.diameters[0].readings'],
    [
      { measurements: { diameters: [{ readings: ['1 mm', '1 mm', '1 mm'] }] } },
      'TOO_LARGE',
      'measurements.diameters[0].readings',
    ],
    [
      { measurements: { diameters: [{ readings: ['9 mm', '0 mm'] }] } },
      'NOT_POSITIVE',
      'measurements.diameters[0].readings[1]',
    ],
    [{ measurements: { diameters: [{ at: 5, readings: ['9 mm'] }] } }, 'UNKNOWN_VALUE', 'measurements.diameters[0].at'],
    [
      { measurements: { section: { links: 1.5, length: '30 mm' } } },
      'NOT_A_WHOLE_NUMBER',
      'measurements.section.links',
    ],
    [{ measurements: { section: { links: 11 } } }, 'MISSING_FIELD', 'measurements.section.length'],
    [{ measurements: { link: 5 } }, 'MISSING_FIELD', 'measurements.link'],
    [{ measurements: { uncertainty: '-1 mm' } }, 'NEGATIVE', 'measurements.uncertainty'],
    [{ measurements: { found: ['cracks'] } }, 'UNKNOWN_VALUE', 'measurements.found[0]'],
    [{ measurements: { hook: { found: ['cracks'] } } }, 'UNKNOWN_VALUE', 'measurements.hook.found[0]'],
    [{ measurements: { highestTemperature: '20 mm' } }, 'WRONG_KIND', 'measurements.highestTemperature'],
    [
      { measurements: { highestTemperature: '20 C', neverHeated: true } },
      'CONFLICTING_FIELDS',
      'measurements.neverHeated',
    ],
    [{ measurements: { tensionings: -1 } }, 'NOT_A_WHOLE_NUMBER', 'measurements.tensionings'],
  ])('%j: %s', (spoil, code, path) => {
    expect(issue(spoil)).toMatchObject({ code, path });
  });
  it('nothing at all', () => {
    expect(issueOf(() => inspectChain(undefined as never)).code).toBe('MISSING_FIELD');
  });
});
