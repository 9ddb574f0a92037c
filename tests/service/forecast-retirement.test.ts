import {
  type ChainMeasurements,
  deBgBau3074_intervals,
  euEn12195_3_2001_criteria,
  type ForecastRetirementInput,
  forecastRetirement,
  housePolicy,
  us29cfr1910_184_2011_intervals,
  us29cfr1919_25_2024,
  usAsmeB30_9_2010_intervals,
  usAsmeB30_10_2005_intervals,
} from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

const codes = (notes: readonly { readonly code: string }[]) => notes.map(({ code }) => code);
// biome-ignore lint/suspicious/noExplicitAny: text that the types of a test need not know
const inspected = (date: string, length: any, more: ChainMeasurements = {}) => ({
  date,
  measurements: { section: { links: 10, length }, found: [], ...more } as ChainMeasurements,
});
const forecast = (inspections: ForecastRetirementInput['history']['inspections'], more: object = {}) =>
  forecastRetirement({
    criteria: us29cfr1919_25_2024,
    chain: { pitch: '30 mm' },
    history: { inspections },
    asOf: '2026-03-01',
    ...more,
  });

describe('a trend', () => {
  it('on a line meets its limit where the line does', () => {
    // 300 mm when new; 1 mm in 100 days; 5 % is 15 mm, 1400 days after the first record:
    // 2024 has 366 days, 2025 to 2027 1095: 2024-01-01 + 1400 = 2027-11-01 (334 days into 2027 is day 305 of the year, from 0: 304)
    const result = forecast([
      inspected('2024-01-01', '301 mm'),
      inspected('2024-04-10', '302 mm'), // 100 days on: 31 + 29 + 31 + 9
      inspected('2024-07-19', '303 mm'), // 200: 30 - 9 = 21, 52 with May, 82 with June, 100 on July 19
    ]);
    expect(result.trends).toHaveLength(1);
    expect(result.trends[0]).toMatchObject({
      id: 'elongation/chain',
      records: 3,
      limit: { value: 5, unit: '%' },
      projected: { date: '2027-11-01', earliest: '2027-11-01', latest: '2027-11-01' },
    });
    expect(result.retire).toEqual({ by: 'elongation/chain', date: '2027-11-01', earliest: '2027-11-01' });
    // 1/3 % in 100 days
    expect(result.trends[0]?.perYear).toMatchObject({ value: expect.closeTo(365.25 / 300, 10), unit: '%' });
  });

  it('has an interval as wide as its scatter: three records by hand', () => {
    // x = 0, 100, 200 days; growth 1/3, 1, 1 % (301, 303, 303 mm). Means 100 and 7/9; Sxx 20000; b = 1/300 a day;
    // residuals -1/9, 2/9, -1/9: s² = 6/81, s = 0.272166. t(1) = 12.706 (table of Student's t): g = (12.706 · 0.272166)² / (b² · Sxx)
    // = 11.96 / 0.2222 > 1: no ends.
    const scattered = forecast([
      inspected('2024-01-01', '301 mm'),
      inspected('2024-04-10', '303 mm'),
      inspected('2024-07-19', '303 mm'),
    ]);
    expect(scattered.trends[0]).toMatchObject({ projected: null, because: { code: 'TREND_NOT_CLEAR' } });
    expect(scattered.retire).toBeNull();
  });

  it('of four records by hand', () => {
    // x = 0, 100, 200, 300; y = 0, 1, 2.1, 3 % (300, 303, 306.3, 309 mm). Means 150, 1.525; Sxx 50000;
    // Sxy = (-150)(-1.525) + (-50)(-0.525) + 50 · 0.575 + 150 · 1.475 = 505; b = 0.0101. Residuals about 1.525 + b (x - 150):
    // -0.01, -0.02, 0.07, -0.04: sum of squares 0.0070, s² = 0.0035, s = 0.0591608. t(2) = 4.302653: t s = 0.254548.
    // g = 0.0647947 / (0.00010201 · 50000) = 0.0127035. D = (5 - 1.525) / 0.0101 = 344.059.
    // half = 0.254548 / 0.0101 · sqrt(344.059² / 50000 + (1 - g) / 4) = 25.2028 · sqrt(2.367537 + 0.246824) = 40.7502.
    // at = 494.06; from = 150 + (344.059 - 40.7502) / 0.9872965 = 457.21; to = 150 + (344.059 + 40.7502) / 0.9872965 = 539.76
    const result = forecast([
      inspected('2023-01-01', '300 mm'),
      inspected('2023-04-11', '303 mm'),
      inspected('2023-07-20', '306.3 mm'),
      inspected('2023-10-28', '309 mm'),
    ]);
    // 2023-01-01 + 365 = 2024-01-01; 494 - 365 = 129: May 9 (31 + 29 + 31 + 30 = 121); 457 - 365 = 92: April 2; 539 - 365 = 174: June 23
    expect(result.trends[0]?.projected).toEqual({ date: '2024-05-09', earliest: '2024-04-02', latest: '2024-06-23' });
  });

  it('counts a falling diameter toward its limit too', () => {
    // 10, 9.9, 9.8 mm in steps of 100 days: 9 mm after 1000 days; the dates do not depend on the order of the records
    const worn = (date: string, reading: '10 mm' | '9.9 mm' | '9.8 mm') => ({
      date,
      measurements: { diameters: [{ readings: [reading] }] } as ChainMeasurements,
    });
    const records = [worn('2024-04-10', '9.9 mm'), worn('2024-07-19', '9.8 mm'), worn('2024-01-01', '10 mm')];
    const wear = forecast(records, { criteria: euEn12195_3_2001_criteria, chain: { size: '10 mm' } });
    // 2024-01-01 + 1000: 366 + 365 = 731, 269 days into 2026: September 27 (243 before September 1)
    expect(wear.trends[0]).toMatchObject({ id: 'wear/chain', projected: { date: '2026-09-27' } });
    const least = forecast(records, {
      criteria: { ...euEn12195_3_2001_criteria, removal: { rows: { chain: { 'mean-diameter': MEAN } } } },
      chain: { size: '10 mm' },
    });
    expect(least.trends).toEqual([]); // a mean of one reading is none
  });
  const MEAN = { comparison: '<', limit: 90, unit: '%', clause: 'x' } as const;

  it('over tensionings, where they are recorded', () => {
    const result = forecast(
      [inspected('2024-01-01', '301 mm'), inspected('2024-04-10', '302 mm'), inspected('2024-07-19', '303 mm')],
      {
        history: {
          inspections: [
            inspected('2024-01-01', '301 mm'),
            inspected('2024-04-10', '302 mm'),
            inspected('2024-07-19', '303 mm'),
          ],
          tensionings: [
            { date: '2024-01-01', count: 20 },
            { date: '2024-07-01', count: 20 }, // in any order, each since the one before it
            { date: '2024-04-01', count: 20 },
            { date: '2024-08-01', count: 99 }, // after the last inspection
          ],
        },
      },
    );
    // 1 mm in 20 tensionings, 15 mm in 300
    expect(result.trends[0]?.afterTensionings).toEqual({ count: 300, fewest: 300, most: 300 });
    expect(codes(result.cautions)).toContain('NO_COUNT_IN_STANDARDS');
  });

  it('says nothing with two days, or without movement, or past the limit, or beyond the calendar', () => {
    const two = forecast([inspected('2024-01-01', '301 mm'), inspected('2024-04-10', '302 mm')]);
    expect(two.trends[0]).toMatchObject({ perYear: null, projected: null, because: { code: 'THREE_RECORDS' } });
    expect(codes(two.missing)).toContain('THREE_RECORDS');
    const sameDay = ['2024-01-01', '2024-01-01', '2024-04-10'].map((date, i) => inspected(date, `${301 + i} mm`));
    expect(forecast(sameDay).trends[0]?.because?.code).toBe('THREE_RECORDS');
    const still = ['2024-01-01', '2024-04-10', '2024-07-19'].map((date) => inspected(date, '301 mm'));
    expect(forecast(still).trends[0]?.because?.code).toBe('NO_TREND');
    const shrinking = ['2024-01-01', '2024-04-10', '2024-07-19'].map((date, i) => inspected(date, `${303 - i} mm`));
    expect(forecast(shrinking).trends[0]?.because?.code).toBe('NO_TREND');
    const slow = ['2024-01-01', '2024-04-10', '2024-07-19'].map((date, i) => inspected(date, `${300 + i / 10_000} mm`));
    expect(forecast(slow).trends[0]?.because?.code).toBe('BEYOND_CALENDAR');
    const past = ['2024-01-01', '2024-04-10', '2024-07-19'].map((date, i) => inspected(date, `${310 + 3 * i} mm`));
    const over = forecast(past);
    expect(over.trends[0]?.because?.code).toBe('PAST_LIMIT');
    expect(over).toMatchObject({ verdict: 'remove', retire: { by: 'elongation/chain', date: '2026-03-01' } });
    expect(forecast([{ date: '2024-01-01', measurements: {} }]).trends).toEqual([]);
  });
});

describe("a number of tensionings, the owner's policy", () => {
  const counted = (counts: readonly number[], asOf = '2024-04-10') =>
    forecastRetirement({
      criteria: housePolicy({ tensionings: 200 }),
      chain: {},
      history: {
        inspections: [{ date: '2024-01-01', measurements: { found: [] } }],
        tensionings: counts.map((count, i) => ({ date: `2024-0${i + 1}-01`, count })),
      },
      asOf,
    });

  it('is counted and goes on at the average pace', () => {
    // 50 in 100 days from January 1: 150 left are 300 days from April 10: 20 + 31 + 30 + 31 + 31 + 30 + 31 + 30 + 31 = 265 to
    // the end of December, 35 more: February 4, 2025
    const result = counted([20, 20, 10]);
    expect(result.countLimit).toEqual({ limit: 200, done: 50, left: 150, date: '2025-02-04', basis: "owner's policy" });
    expect(codes(result.cautions)).toContain('OWNERS_POLICY');
    expect(codes(result.assumptions)).toContain('AVERAGE_PACE');
    expect(result.retire).toMatchObject({ by: 'tensionings/chain', date: '2025-02-04' });
  });

  it('is reached at the number itself', () => {
    expect(counted([100, 99]).countLimit).toMatchObject({ done: 199, left: 1 });
    expect(counted([100, 100])).toMatchObject({ countLimit: { left: 0, date: null }, retire: { date: '2024-04-10' } });
    expect(counted([100, 101]).countLimit).toMatchObject({ left: -1 });
    expect(counted([0]).countLimit).toMatchObject({ left: 200, date: null });
  });
});

describe('the next inspection', () => {
  const due = (
    intervals: object,
    service: string | undefined,
    dates: readonly (readonly [string, string?])[],
    asOf = '2026-03-01',
  ) =>
    forecastRetirement({
      criteria: us29cfr1919_25_2024,
      chain: {},
      history: {
        inspections: dates.map(([date, kind]) => ({ date, measurements: { found: [] }, ...(kind && { kind }) })),
      },
      asOf,
      intervals,
      ...(service && { service }),
    } as ForecastRetirementInput).due;

  it('is each day and once in 12 months under 29 CFR 1910.184', () => {
    const [each, thorough] = due(us29cfr1910_184_2011_intervals, undefined, [['2024-05-31'], ['2025-03-01']]);
    expect(each).toMatchObject({ kind: 'each-use', because: { code: 'BEFORE_EACH_USE' } });
    expect(thorough).toMatchObject({ kind: 'thorough', last: '2025-03-01', by: '2026-03-01', overdue: false });
    expect(due(us29cfr1910_184_2011_intervals, undefined, [['2025-02-28']])[1]).toMatchObject({
      by: '2026-02-28',
      overdue: true,
    });
  });

  it('is by class of service under ASME B30.9, with the range it gives', () => {
    const asme = (service: string) => due(usAsmeB30_9_2010_intervals, service, [['2025-11-30']]);
    expect(asme('normal')).toMatchObject([{ by: '2026-11-30' }]);
    expect(asme('severe')).toMatchObject([
      { from: '2025-12-30', by: '2026-02-28', overdue: true, provenance: 'memory' },
    ]);
    expect(asme('special')).toMatchObject([{ because: { code: 'QUALIFIED_PERSON' } }]);
    expect(asme('light')).toEqual([]);
    expect(due(usAsmeB30_9_2010_intervals, undefined, [['2025-11-30']])).toEqual([]);
  });

  it('is weekly to monthly, and a thorough one counts as a frequent one', () => {
    expect(due(usAsmeB30_10_2005_intervals, 'heavy', [['2026-02-01', 'thorough']])).toMatchObject([
      { kind: 'frequent', from: '2026-02-08', by: '2026-03-01', overdue: false },
    ]);
    expect(due(usAsmeB30_10_2005_intervals, 'severe', [['2026-02-01'], ['2026-02-20', 'frequent']])).toMatchObject([
      { from: '2026-02-21', by: '2026-02-27' },
    ]);
  });

  it('waits for a crack test that was never recorded', () => {
    const [crack, half] = due(deBgBau3074_intervals, 'heavy', [['2025-10-31']]);
    expect(crack).toMatchObject({ kind: 'crack-test', because: { code: 'LAST_NOT_RECORDED' } });
    expect(half).toMatchObject({ kind: 'thorough', by: '2026-04-30' });
    expect(due(deBgBau3074_intervals, 'light', [['2024-02-29', 'crack-test']])[0]).toMatchObject({ by: '2027-02-28' });
  });

  it('says so where the set lists none', () => {
    const result = forecast([inspected('2024-01-01', '301 mm')], { intervals: usAsmeB30_9_2010_intervals });
    expect(codes(result.missing)).toContain('INTERVAL_NOT_LISTED');
  });
});

describe('input that cannot be read', () => {
  const good = {
    criteria: us29cfr1919_25_2024,
    chain: {},
    history: { inspections: [{ date: '2026-01-01', measurements: {} }] },
    asOf: '2026-03-01',
  };
  const record = good.history.inspections[0];
  test.each([
    [{ asOf: undefined }, 'NOT_A_DATE', 'asOf'],
    [{ asOf: '1.3.2026' }, 'NOT_A_DATE', 'asOf'],
    [{ asOf: '2025-12-31' }, 'CONFLICTING_FIELDS', 'history.inspections[0].date'],
    [{ criteria: {} }, 'UNKNOWN_CRITERIA_SET', 'criteria'],
    [{ intervals: {} }, 'UNKNOWN_CRITERIA_SET', 'intervals'],
    [{ service: 'hard' }, 'UNKNOWN_VALUE', 'service'],
    [{ history: undefined }, 'MISSING_FIELD', 'history'],
    [{ history: { inspections: [] } }, 'EMPTY_LIST', 'history.inspections'],
    [{ history: { inspections: [{ ...record, kind: 'quick' }] } }, 'UNKNOWN_VALUE', 'history.inspections[0].kind'],
    [
      { history: { inspections: [record, { ...record, measurements: { bend: '-1 mm' } }] } },
      'NEGATIVE',
      'history.inspections[1].measurements.bend',
    ],
    [
      { history: { ...good.history, tensionings: [{ date: '2026-02-30', count: 1 }] } },
      'NOT_A_DATE',
      'history.tensionings[0].date',
    ],
    [
      { history: { ...good.history, tensionings: [{ date: '2026-03-02', count: 1 }] } },
      'CONFLICTING_FIELDS',
      'history.tensionings[0].date',
    ],
    [
      { history: { ...good.history, tensionings: [{ date: '2026-02-02', count: 0.5 }] } },
      'NOT_A_WHOLE_NUMBER',
      'history.tensionings[0].count',
    ],
  ])('%j: %s', (spoil, code, path) => {
    expect(issueOf(() => forecastRetirement({ ...good, ...spoil } as never))).toMatchObject({ code, path });
  });
});
