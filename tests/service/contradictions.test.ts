// What cannot all be true of one chain, and what an uncertainty or an unknown wear leaves open.
import {
  type ChainMeasurements,
  type ChainWhenNew,
  type CriteriaSet,
  deDguv109_004,
  housePolicy,
  inspectChain,
  us29cfr1910_184_2011,
  us29cfr1919_25_2024,
  usAsmeB30_9_2010,
  usAsmeB30_10_2005,
  usWac296_155_55800_2013,
} from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

const inspect = (criteria: CriteriaSet, chain: ChainWhenNew, measurements: ChainMeasurements) =>
  inspectChain({ criteria, chain, measurements });
const refused = (chain: object, measurements: object) => {
  try {
    inspect(us29cfr1919_25_2024, chain, measurements as ChainMeasurements);
    return 'taken';
  } catch {
    const { code, path } = issueOf(() => inspect(us29cfr1919_25_2024, chain, measurements as ChainMeasurements));
    return `${code} ${path}`;
  }
};

describe('one chain is not both', () => {
  it('without a hook and with one that was measured', () => {
    const hook = { throat: '1 in', twist: '40 deg', found: ['crack'] };
    expect(refused({ withoutHook: true }, { hook })).toBe('CONFLICTING_FIELDS measurements.hook');
    expect(refused({}, { hook })).toBe('taken');
  });

  test.each([
    // 5 % of 10 mm either way
    ['10 mm', '9.5 mm', true],
    ['10 mm', '9.499 mm', false],
    ['10 mm', '9 mm', false],
    ['10 mm', '10.5 mm', true],
    ['10 mm', '10.501 mm', false],
    // 3/8 in is 9.525 mm: from 9.04875 to 12.3825 mm
    ['3/8', '9.04875 mm', true],
    ['3/8', '9.048 mm', false],
    ['3/8', '12.3825 mm', true],
    ['3/8', '12.383 mm', false],
    ['3/8', '3 mm', false],
    ['1/8', '4 mm', true], // 26 % over 3.175 mm, the thickest wire for its size in the trade (from memory)
    ['1-1/8', '28.6 mm', true],
    ['1-1/8', '10 mm', false],
  ])('of size %s with wire of %s: %s', (size, wireDiameter, taken) => {
    expect(refused({ size, wireDiameter }, {})).toBe(taken ? 'taken' : 'CONFLICTING_FIELDS chain.wireDiameter');
  });

  test.each([
    // 11 · 30 mm = 330 mm; 3 % is 9.9 mm
    ['339.9 mm', true],
    ['339.901 mm', false],
    ['320.1 mm', true],
    ['320.099 mm', false],
    ['350 mm', false],
  ])('of pitch 30 mm with 11 links of %s when new', (whenNew, taken) => {
    const section = { links: 11, length: '345 mm', whenNew };
    expect(refused({ pitch: '30 mm' }, { section })).toBe(
      taken ? 'taken' : 'CONFLICTING_FIELDS measurements.section.whenNew',
    );
  });

  test.each([
    // 330 mm over 11 links is 30 mm; 1 % less is 29.7 mm
    ['29.7 mm', true],
    ['29.699 mm', false],
  ])('with a longest link of %s in a section of 30 mm each', (inside, taken) => {
    expect(refused({}, { section: { links: 11, length: '330 mm' }, link: { inside } })).toBe(
      taken ? 'taken' : 'CONFLICTING_FIELDS measurements.link.inside',
    );
  });

  test.each([
    ['gouge', 'notchDepth'],
    ['bent-link', 'bend'],
  ])('with a %s found and none of it', (defect, field) => {
    const path = `CONFLICTING_FIELDS measurements.${field}`;
    expect(refused({}, { found: [defect], [field]: '0 mm' })).toBe(path);
    expect(refused({}, { found: [defect], [field]: '0.001 mm' })).toBe('taken');
    expect(refused({}, { found: [], [field]: '0 mm' })).toBe('taken');
    expect(
      issueOf(() => inspect(deDguv109_004, { size: '10 mm' }, { found: [defect], [field]: '0 in' } as never)).code,
    ).toBe('CONFLICTING_FIELDS');
  });
});

describe('no chain is more than 3 % shorter than new', () => {
  const chain = { pitch: '30 mm', outsideLength: '50 mm' };
  test.each([
    // 330, 30 and 50 mm less 3 %
    [{ section: { links: 11, length: '320.1 mm' } }, 'taken'],
    [{ section: { links: 11, length: '320.099 mm' } }, 'IMPOSSIBLE_GEOMETRY measurements.section.length'],
    [{ section: { links: 11, length: '100 mm' } }, 'IMPOSSIBLE_GEOMETRY measurements.section.length'],
    [
      { section: { links: 11, length: '310 mm', whenNew: '325 mm' } },
      'IMPOSSIBLE_GEOMETRY measurements.section.length',
    ],
    [{ link: { inside: '29.1 mm' } }, 'taken'],
    [{ link: { inside: '29.099 mm' } }, 'IMPOSSIBLE_GEOMETRY measurements.link.inside'],
    [{ link: { outside: '48.5 mm' } }, 'taken'],
    [{ link: { outside: '48.499 mm' } }, 'IMPOSSIBLE_GEOMETRY measurements.link.outside'],
  ])('%j', (measurements, expected) => {
    expect(refused(chain, measurements)).toBe(expected);
  });
});

describe('where any growth is too much', () => {
  const elongation = (length: string, uncertainty: string) => {
    const measurements = { section: { links: 10, length }, uncertainty } as ChainMeasurements;
    return inspect(us29cfr1910_184_2011, { pitch: '30 mm' }, measurements).checks.find(
      ({ id }) => id === 'elongation/chain',
    );
  };

  test.each([
    // 0.5 % of 300 mm is 1.5 mm
    ['301 mm', '1.5 mm', 'pass'],
    ['301 mm', '1.501 mm', 'undetermined'],
    ['301.5 mm', '1.5 mm', 'pass'],
    ['301.501 mm', '1.5 mm', 'fail'],
    ['324 mm', '0.9 in', 'fail'], // 24 mm beyond 22.86 mm
    ['320 mm', '0.9 in', 'undetermined'],
    ['300 mm', '0.9 in', 'pass'], // not longer at all
  ])('%s, known to %s, is %s', (length, uncertainty, verdict) => {
    expect(elongation(length, uncertainty)).toMatchObject({ verdict });
  });

  it('says to measure more exactly', () => {
    expect(elongation('320 mm', '0.9 in')).toMatchObject({ missing: [{ code: 'UNCERTAINTY_TOO_LARGE' }] });
  });
});

describe('stretch that wear is not known to explain', () => {
  const stretch = (set: CriteriaSet, chain: object, measurements: object) =>
    inspect(set, chain, { uncertainty: '0.1 mm', ...measurements } as ChainMeasurements).checks.find(
      ({ id }) => id === 'stretch/chain',
    );
  const unchanged = { pitch: '1.1 in', outsideLength: '1.9 in' };
  const worn = { diameters: [{ readings: ['0.37 in'] }] };

  it.each([usAsmeB30_9_2010, usWac296_155_55800_2013])('is open: $id', (set) => {
    // 10 links of 1.1 in are 11 in: 11.9 in is 8 % longer
    const section = { section: { links: 10, length: '11.9 in' }, link: { outside: '1.9 in' } };
    expect(stretch(set, { size: '3/8', ...unchanged }, { ...worn, ...section })).toMatchObject({
      verdict: 'undetermined',
      missing: [{ code: 'NOMINAL_WIRE' }],
    });
    // a longest link as new beside it is no longest link
    const asNew = { ...section, link: { inside: '1.1 in' } };
    expect(issueOf(() => stretch(set, unchanged, { ...worn, ...asNew })).code).toBe('CONFLICTING_FIELDS');
    // inside 9 % longer, outside unchanged
    const inside = { link: { inside: '1.2 in', outside: '1.9 in' } };
    expect(stretch(set, { size: '3/8', ...unchanged }, { ...worn, ...inside })?.verdict).toBe('undetermined');
    expect(stretch(set, { wireDiameter: '0.394 in', ...unchanged }, inside)).toMatchObject({
      missing: [{ code: 'DIAMETER' }],
    });
  });

  it('is told by the wear where both are known', () => {
    // 0.1 in inside: wear of 0.05 in at each crown explains it, wear of 0.024 in does not
    const inside = { link: { inside: '1.2 in', outside: '1.9 in' } };
    const chain = { wireDiameter: '0.394 in', ...unchanged };
    const at = (reading: string) =>
      stretch(usAsmeB30_9_2010, chain, { ...inside, diameters: [{ readings: [reading] }] })?.verdict;
    expect([at('0.344 in'), at('0.37 in')]).toEqual(['pass', 'fail']);
  });

  it('is open where a section grew and its longest link did not, within what measuring tells', () => {
    // 302 mm over 10 links of 30 mm is 0.67 %
    const measured = { section: { links: 10, length: '302 mm' }, link: { inside: '30 mm' } };
    const metric = { size: '10 mm', pitch: '30 mm' };
    const diameters = [{ readings: ['9.8 mm'] }]; // explains up to 4 mm
    expect(stretch(usAsmeB30_9_2010, metric, { ...measured, diameters })?.verdict).toBe('undetermined');
  });
});

describe('a set of hooks alone', () => {
  const hook = { found: [], throat: '1 in', section: '20 mm' } as const;
  const chain = { hook: { throat: '1 in', section: '20 mm' } } as const;
  it.each([usAsmeB30_10_2005, housePolicy({ throatOpening: { limit: 0.05, over: true } })])(
    'counts what was seen of the chain: $id',
    (set) => {
      expect(inspect(set, chain, { hook }).verdict).toBe('fit');
      expect(inspect(set, chain, { hook, found: [] }).verdict).toBe('fit');
      expect(inspect(set, chain, { hook, found: ['crack'] })).toMatchObject({
        verdict: 'remove',
        governing: 'damage/chain',
      });
      expect(inspect(set, chain, { hook, found: ['visible-stretch'] }).verdict).toBe('remove');
    },
  );
});

it('a list that is none is called so', () => {
  expect(issueOf(() => inspect(us29cfr1919_25_2024, {}, { found: 'none' } as never))).toMatchObject({
    code: 'EMPTY_LIST',
    expected: 'a list',
    remedy: 'Give a list of what is meant.',
  });
});
