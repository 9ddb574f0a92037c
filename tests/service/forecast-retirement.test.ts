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
    // 300 mm when new; 3 mm in 100 days; 5 % is 15 mm, 400 days after the first record, which lies 3 mm on:
    // 2024 has 366 days: 2024-01-01 + 400 = 2025-02-04
    const records = [
      inspected('2024-01-01', '303 mm'),
      inspected('2024-04-10', '306 mm'), // 100 days on: 31 + 29 + 31 + 9
      inspected('2024-07-19', '309 mm'), // 200: 30 - 9 = 21, 52 with May, 82 with June, 100 on July 19
    ];
    const result = forecast(records, { asOf: '2025-02-04' });
    expect(result.trends).toHaveLength(1);
    expect(result.trends[0]).toMatchObject({
      id: 'elongation/chain',
      records: 3,
      limit: { value: 5, unit: '%' },
      projected: { date: '2025-02-04', earliest: '2025-02-04', latest: '2025-02-04' },
    });
    expect(result.retire).toEqual({ by: 'elongation/chain', date: '2025-02-04', earliest: '2025-02-04' });
    // 1 % in 100 days
    expect(result.trends[0]?.perYear).toMatchObject({ value: expect.closeTo(3.6525, 10), unit: '%' });
    expect(codes(result.assumptions)).toEqual(expect.arrayContaining(['STRAIGHT_LINE', 'INTERVAL_OF_SCATTER']));
    expect(codes(result.cautions)).not.toContain('LIMIT_OVERDUE');
    // a day later it lies in the past, which is said
    const late = forecast(records, { asOf: '2025-02-05' });
    expect(late).toMatchObject({ verdict: 'fit', retire: { date: '2025-02-04', overdue: true } });
    expect(late.trends[0]?.projected?.overdue).toBe(true);
    expect(codes(late.cautions)).toContain('LIMIT_OVERDUE');
  });

  it('reaches three times as far as its records span, and no further', () => {
    // 2 mm in 100 days: from 303 mm on day 200 to 315 mm 600 days later, three times the 200 days of the records
    const days = ['2024-01-01', '2024-04-10', '2024-07-19'];
    const at = (lengths: readonly string[]) =>
      forecast(
        days.map((date, i) => inspected(date, lengths[i])),
        { asOf: '2024-08-01' },
      ).trends[0];
    // 2024-01-01 + 800: 366 + 365 = 731 to 2026-01-01, 69 more: March 11
    expect(at(['299 mm', '301 mm', '303 mm'])?.projected?.date).toBe('2026-03-11');
    expect(at(['298.9 mm', '300.9 mm', '302.9 mm'])).toMatchObject({
      projected: null,
      because: { code: 'TREND_TOO_SHORT', params: { times: 3 } },
    });
    expect(at(['299.1 mm', '301.1 mm', '303.1 mm'])?.projected?.date).toBe('2026-03-06'); // 5 days sooner
    // three days in a row say nothing of the years to come
    const inARow = ['2026-01-01', '2026-01-02', '2026-01-03'].map((date, i) => inspected(date, `${301 + i / 1000} mm`));
    expect(forecast(inARow)).toMatchObject({ retire: null, trends: [{ because: { code: 'TREND_TOO_SHORT' } }] });
  });

  it('near its limit is said to be, of one record already', () => {
    // nine tenths of 5 % of 300 mm are 13.5 mm
    const near = (length: string) => codes(forecast([inspected('2026-01-01', length)]).cautions).includes('NEAR_LIMIT');
    expect([near('313.499 mm'), near('313.5 mm'), near('315 mm'), near('315.001 mm')]).toEqual([
      false,
      true,
      true,
      false, // past it
    ]);
    // a least diameter of 90 % of 10 mm, and a hundredth more: 9.09 mm
    const mean = (reading: '9.09 mm' | '9.1 mm') =>
      forecast([{ date: '2026-01-01', measurements: { diameters: [{ readings: [reading, reading] }] } }], {
        criteria: { ...euEn12195_3_2001_criteria, removal: { rows: { chain: { 'mean-diameter': MEAN } } } },
        chain: { size: '10 mm' },
      });
    expect(codes(mean('9.09 mm').cautions)).toContain('NEAR_LIMIT');
    expect(codes(mean('9.1 mm').cautions)).not.toContain('NEAR_LIMIT');
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
    const result = forecast(
      [
        inspected('2023-01-01', '300 mm'),
        inspected('2023-04-11', '303 mm'),
        inspected('2023-07-20', '306.3 mm'),
        inspected('2023-10-28', '309 mm'),
      ],
      { asOf: '2023-11-01' },
    );
    // 2023-01-01 + 365 = 2024-01-01; 494 - 365 = 129: May 9 (31 + 29 + 31 + 30 = 121); 457 - 365 = 92: April 2; 539 - 365 = 174: June 23
    expect(result.trends[0]?.projected).toEqual({ date: '2024-05-09', earliest: '2024-04-02', latest: '2024-06-23' });
  });

  it('counts a falling diameter toward its limit too', () => {
    // 9.7, 9.6, 9.5 mm in steps of 100 days: 9 mm after 700 days; the dates do not depend on the order of the records
    const worn = (date: string, reading: '9.7 mm' | '9.6 mm' | '9.5 mm') => ({
      date,
      measurements: { diameters: [{ readings: [reading] }] } as ChainMeasurements,
    });
    const records = [worn('2024-04-10', '9.6 mm'), worn('2024-07-19', '9.5 mm'), worn('2024-01-01', '9.7 mm')];
    const wear = forecast(records, { criteria: euEn12195_3_2001_criteria, chain: { size: '10 mm' } });
    // 2024-01-01 + 700: 366 in 2024, 334 days into 2025: December 1
    expect(wear.trends[0]).toMatchObject({ id: 'wear/chain', projected: { date: '2025-12-01' } });
    const least = forecast(records, {
      criteria: { ...euEn12195_3_2001_criteria, removal: { rows: { chain: { 'mean-diameter': MEAN } } } },
      chain: { size: '10 mm' },
    });
    expect(least.trends).toEqual([]); // a mean of one reading is none
  });
  const MEAN = { comparison: '<', limit: 90, unit: '%', clause: 'x' } as const;

  it('over tensionings, where they are recorded', () => {
    const result = forecast([], {
      history: {
        inspections: [
          inspected('2024-01-01', '303 mm'),
          inspected('2024-04-10', '306 mm'),
          inspected('2024-07-19', '309 mm'),
        ],
        tensionings: [
          { date: '2024-01-01', count: 20 },
          { date: '2024-07-01', count: 20 }, // in any order, each since the one before it
          { date: '2024-04-01', count: 20 },
          { date: '2024-08-01', count: 99 }, // after the last inspection
        ],
      },
    });
    // 3 mm in 20 tensionings, 15 mm in 100
    expect(result.trends[0]?.afterTensionings).toEqual({ count: 100, fewest: 100, most: 100 });
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
    expect(forecast(slow).trends[0]?.because?.code).toBe('TREND_TOO_SHORT');
    // 2 mm in a thousand years: the 8 mm left in 7000 take until 11000, which three times the records reach
    const beyond = ['5000-01-01', '6000-01-01', '7000-01-01'].map((date, i) => inspected(date, `${303 + 2 * i} mm`));
    expect(forecast(beyond, { asOf: '9000-01-01' }).trends[0]?.because?.code).toBe('BEYOND_CALENDAR');
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
    expect([counted([100, 99]).verdict, counted([100, 100]).verdict, counted([100, 101]).verdict]).toEqual([
      'fit',
      'remove',
      'remove',
    ]);
  });

  it('goes on after the last inspection', () => {
    const result = forecastRetirement({
      criteria: housePolicy({ tensionings: 200 }),
      chain: {},
      history: {
        inspections: [{ date: '2024-02-01', measurements: { found: [] } }],
        tensionings: [
          { date: '2024-01-01', count: 150 },
          { date: '2024-03-01', count: 100 },
        ],
      },
      asOf: '2024-04-10',
    });
    expect(result).toMatchObject({
      verdict: 'remove',
      countLimit: { done: 250, left: -50 },
      retire: { by: 'tensionings/chain', date: '2024-04-10' },
    });
  });

  it('is whichever record says most', () => {
    const stated = (tensionings: number, later: object[]) =>
      forecastRetirement({
        criteria: housePolicy({ tensionings: 200 }),
        chain: {},
        history: {
          inspections: [{ date: '2024-02-01', measurements: { found: [], tensionings } }],
          tensionings: later as never,
        },
        asOf: '2024-04-10',
      });
    const january = { date: '2024-01-15', count: 10 };
    const march = { date: '2024-03-15', count: 10 };
    expect(stated(250, [january])).toMatchObject({ verdict: 'remove', countLimit: { done: 250 } });
    expect(stated(189, [january, march])).toMatchObject({ verdict: 'fit', countLimit: { done: 199, left: 1 } });
    expect(stated(190, [january, march])).toMatchObject({ verdict: 'remove', countLimit: { done: 200 } });
    expect(stated(5, [january, march])).toMatchObject({ verdict: 'fit', countLimit: { done: 20 } });
    expect(stated(199, [])).toMatchObject({ verdict: 'fit', countLimit: { done: 199, date: null } });
  });
});

describe('what an earlier record says', () => {
  const sound = (date: string, more: object = {}) => ({ ...inspected(date, '301 mm'), ...more });
  const cracked = (date: string, more: object = {}) => ({
    ...inspected(date, '301 mm', { found: ['crack'] }),
    ...more,
  });

  it('is not undone by a later one that is clean, but by a repair', () => {
    const open = forecast([cracked('2025-01-01'), sound('2026-01-01')]);
    expect(open).toMatchObject({
      verdict: 'undetermined',
      missing: expect.arrayContaining([
        expect.objectContaining({ code: 'REPAIR_NOT_STATED', params: { date: '2025-01-01', check: 'damage/chain' } }),
      ]),
      retire: { by: 'damage/chain', date: '2026-03-01' },
    });
    const repaired = { repaired: true };
    expect(forecast([cracked('2025-01-01'), sound('2026-01-01', repaired)]).verdict).toBe('fit');
    expect(forecast([cracked('2025-01-01'), sound('2025-06-01', repaired), sound('2026-01-01')]).verdict).toBe('fit');
    // a repair before the crack, or of the same day, is none of it
    expect(forecast([sound('2024-01-01', repaired), cracked('2025-01-01'), sound('2026-01-01')]).verdict).toBe(
      'undetermined',
    );
    expect(forecast([cracked('2025-01-01', repaired), sound('2026-01-01')]).verdict).toBe('undetermined');
    expect(forecast([sound('2025-01-01'), cracked('2026-01-01')]).verdict).toBe('remove');
  });

  it('of one day is the worst of it, in any order', () => {
    const day = '2026-01-01';
    const long = inspected(day, '316 mm'); // 5.3 %
    for (const records of [
      [long, sound(day)],
      [sound(day), long],
    ]) {
      const result = forecast(records);
      expect(result).toMatchObject({ verdict: 'remove', retire: { by: 'elongation/chain' } });
      expect(result.trends[0]).toMatchObject({ because: { code: 'PAST_LIMIT' } });
    }
    const blank = { date: day, measurements: {} };
    expect([forecast([blank, sound(day)]).verdict, forecast([sound(day), blank]).verdict]).toEqual([
      'undetermined',
      'undetermined',
    ]);
  });

  it('of a chain before its repair is not in the line', () => {
    const records = ['2024-01-01', '2024-04-10', '2024-07-19'].map((date, i) => inspected(date, `${303 + 3 * i} mm`));
    expect(forecast(records).trends[0]?.records).toBe(3);
    expect(forecast(records.map((each, i) => ({ ...each, repaired: i === 1 }))).trends[0]?.records).toBe(2);
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
      chain: { pitch: '30 mm' },
      history: { inspections: dates.map(([date, kind]) => ({ ...inspected(date, '301 mm'), ...(kind && { kind }) })) },
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
    const missing = (intervals: object, service?: string) =>
      codes(forecast([inspected('2024-01-01', '301 mm')], { intervals, ...(service && { service }) }).missing);
    expect(missing(usAsmeB30_9_2010_intervals, 'light')).toContain('INTERVAL_NOT_LISTED');
    expect(missing(usAsmeB30_9_2010_intervals)).toContain('SERVICE_NOT_STATED');
    // its crack test is for any service, its thorough inspection for two classes
    expect(missing(deBgBau3074_intervals)).toContain('SERVICE_NOT_STATED');
    expect(missing(deBgBau3074_intervals, 'normal')).toContain('INTERVAL_NOT_LISTED');
    for (const said of [missing(deBgBau3074_intervals, 'light'), missing(us29cfr1910_184_2011_intervals)]) {
      expect(said).not.toContain('INTERVAL_NOT_LISTED');
      expect(said).not.toContain('SERVICE_NOT_STATED');
    }
  });

  it('counts from one that decided', () => {
    const following = (measurements: object, kind?: string) =>
      forecast(
        [inspected('2025-06-01', '301 mm'), { date: '2026-02-01', measurements, ...(kind && { kind }) } as never],
        {
          intervals: us29cfr1910_184_2011_intervals,
        },
      );
    const thorough = (result: ReturnType<typeof following>) => result.due.find(({ kind }) => kind === 'thorough')?.last;
    expect(thorough(following({}))).toBe('2025-06-01');
    expect(thorough(following({ found: [] }, 'thorough'))).toBe('2025-06-01');
    expect(codes(following({}).cautions)).toContain('OPEN_IS_NOT_THOROUGH');
    const decided = following(inspected('', '302 mm').measurements);
    expect(thorough(decided)).toBe('2026-02-01');
    expect(codes(decided.cautions)).not.toContain('OPEN_IS_NOT_THOROUGH');
    // a look that measured nothing is a frequent one, and a blank record none
    const frequent = (measurements: object) =>
      forecast([{ date: '2026-02-01', measurements } as never], {
        intervals: usAsmeB30_10_2005_intervals,
        service: 'normal',
      }).due[0];
    expect(frequent({ found: [] })).toMatchObject({ kind: 'frequent', last: '2026-02-01' });
    expect(frequent({})).toMatchObject({ because: { code: 'LAST_NOT_RECORDED' } });
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
    [
      { history: { inspections: [{ ...record, repaired: 'yes' }] } },
      'UNKNOWN_VALUE',
      'history.inspections[0].repaired',
    ],
    [
      { history: { inspections: [{ ...record, measurements: 5 }] } },
      'MISSING_FIELD',
      'history.inspections[0].measurements',
    ],
    [
      { history: { inspections: [{ ...record, measurements: { tensionings: 0.5 } }] } },
      'NOT_A_WHOLE_NUMBER',
      'history.inspections[0].measurements.tensionings',
    ],
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
