// Published figures on the wear and stretch of chain, and what the library makes of them.
import {
  euEn818_6_2000,
  euEn12195_3_2001_criteria,
  inspectChain,
  type LimitCheck,
  us29cfr1910_184_2011,
  us29cfr1926_251_2019,
  usAsmeB30_9_2010,
  usAsmeB30_10_2005,
} from 'chain-rigging';
import { expect, it } from 'vitest';
import { readCsv, tablesFolder } from '../../.config/tables/tables.js';
import type { CriteriaSet } from '../../src/tables/criteria-set.js';
import type { SourceRef } from '../../src/working/source.js';
import { amount } from '../tables/amount.js';
import { verify } from './verify.js';

const limitOf = (criteria: CriteriaSet, input: Omit<Parameters<typeof inspectChain>[0], 'criteria'>, id: string) => {
  const check = inspectChain({ criteria, ...input }).checks.find((each) => each.id === id) as LimitCheck;
  const number = (each: LimitCheck['limit']) => (typeof each === 'number' ? each : each.value);
  return {
    measured: number(check.measured),
    limit: number(check.limit),
    left: number(check.left),
    verdict: check.verdict,
  };
};

const osha: SourceRef = {
  document: '29 CFR 1910.184',
  edition: '2011',
  clause: '(e)(8), wear table',
  provenance: 'read',
  note: 'read in a page quoting it',
};
const worn = (reading: '0.297 in' | '0.296 in') => ({
  chain: { size: '3/8' as const },
  measurements: { diameters: [{ readings: [reading] }] },
});

verify({
  id: 'osha-wear-3-8-minimum',
  domain: 'service',
  source: osha,
  what: 'least size of a worn link of 3/8 in chain, printed 19/64 in',
  printed: 19 / 64,
  unit: 'in',
  computed: limitOf(us29cfr1910_184_2011, worn('0.297 in'), 'least-diameter/chain').limit,
  tolerance: 0,
  why: '19/64 is 0.296875, exact',
});
it('passes 0.297 in and removes 0.296 in of 3/8 in chain', () => {
  const verdict = (reading: '0.297 in' | '0.296 in') =>
    limitOf(us29cfr1910_184_2011, worn(reading), 'least-diameter/chain').verdict;
  expect([verdict('0.297 in'), verdict('0.296 in')]).toEqual(['pass', 'fail']);
});

verify({
  id: 'osha-wear-3-8-maximum',
  domain: 'service',
  source: {
    document: '29 CFR 1926.251',
    edition: '2019',
    clause: '(b)(5), greatest wear',
    provenance: 'read',
    note: 'read in a page quoting it',
  },
  what: 'greatest wear of 3/8 in chain, printed 5/64 in',
  printed: 5 / 64,
  unit: 'in',
  computed: limitOf(us29cfr1926_251_2019, worn('0.297 in'), 'wear-depth/chain').limit,
  tolerance: 0,
  why: '5/64 is 0.078125, exact',
});

const lashing = {
  chain: { size: '10 mm' as const, grade: '8' as const, pitch: '30 mm' as const },
  measurements: { section: { links: 11, length: '341.0 mm' as const }, found: [] },
};
verify({
  id: 'elongation-11-links-341-mm',
  domain: 'service',
  source: { document: 'Geometry of a chain: growth over the length when new', provenance: 'derived' },
  what: '10 mm class 8, pitch 30 mm, 11 links at 341.0 mm',
  printed: 3.333,
  unit: '%',
  computed: limitOf(euEn12195_3_2001_criteria, lashing, 'elongation/chain').measured,
  tolerance: 0.0005,
  why: 'printed to three decimals',
});
it('removes that chain from lashing and keeps it in lifting', () => {
  expect(limitOf(euEn12195_3_2001_criteria, lashing, 'elongation/chain')).toMatchObject({ verdict: 'fail', limit: 3 });
  expect(limitOf(euEn818_6_2000, lashing, 'elongation/chain')).toMatchObject({ verdict: 'pass', limit: 5 });
});

const throat = (when: '5 in', now: '5.25 in') => ({
  chain: { hook: { throat: when } },
  measurements: { hook: { throat: now } },
});
verify({
  id: 'asme-hook-throat-crossover',
  domain: 'service',
  source: {
    document: 'ASME B30.10',
    edition: '2005',
    clause: '10-1.2.3',
    provenance: 'derived',
    note: 'from 5 percent, not to exceed 1/4 in, as read',
  },
  what: 'throat at which 5 percent is 1/4 in: what both limits leave of 5.25 in',
  printed: 0,
  unit: 'in',
  computed: limitOf(usAsmeB30_10_2005, throat('5 in', '5.25 in'), 'throat-increase/hook').left,
  tolerance: 0,
  why: '0.05 of 5 in is 0.25 in, exact',
});

// Cross-checks of whole tables: by arithmetic on the printed cells, not through the library
const rows = (id: string) => readCsv(`${tablesFolder}/${id}/table.csv`).rows;

it('the two forms of the wear table are one: size less minimum is the greatest wear, in all twelve rows', () => {
  const all = rows('us-29cfr1910-184-wear');
  expect(all).toHaveLength(12);
  for (const { size, minimum_in, wear_in } of all) {
    expect(amount(size!) - amount(minimum_in!), size).toBe(amount(wear_in!));
    const share = amount(minimum_in!) / amount(size!);
    expect(share, size).toBeGreaterThanOrEqual(0.775);
    expect(share, size).toBeLessThanOrEqual(0.8125);
  }
});

it('the thickness of ASME leaves three quarters of the section of the metric wire, to a few thousandths', () => {
  for (const { size, wire_mm, minimum_in, minimum_mm } of rows('us-asme-b30-9-thickness')) {
    const share = Number(minimum_mm) / Number(wire_mm);
    expect(share, size).toBeGreaterThan(Math.sqrt(0.75) - 0.001);
    expect(share, size).toBeLessThan(0.8735);
    // the columns are separate roundings: half a unit of the last place each
    expect(Math.abs(Number(minimum_in) * 25.4 - Number(minimum_mm)), size).toBeLessThan(0.0005 * 25.4 + 0.005);
  }
  expect(limitOf(usAsmeB30_9_2010, worn('0.297 in'), 'least-diameter/chain')).toMatchObject({
    limit: 0.342,
    verdict: 'fail',
  });
});
