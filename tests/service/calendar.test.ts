// Days held against the calendar of the JavaScript engine, which src does not use.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { later, readDate, writeDate } from '../../src/service/calendar.js';
import { issueOf } from '../quantities/issue-of.js';

const DAY = 86_400_000;
const first = Date.UTC(1583, 0, 1);
const days = fc.integer({ min: 0, max: (Date.UTC(9999, 11, 31) - first) / DAY });
const textOf = (offset: number) => new Date(first + offset * DAY).toISOString().slice(0, 10);

describe('a day', () => {
  it('has the number that its distance from another tells', () => {
    fc.assert(
      fc.property(days, days, (a, b) => {
        expect(readDate(textOf(a), '') - readDate(textOf(b), '')).toBe(a - b);
        expect(writeDate(readDate(textOf(a), ''))).toBe(textOf(a));
      }),
    );
  });

  it('has no text outside of the years 1583 to 9999', () => {
    expect(writeDate(readDate('1583-01-01', '') - 1)).toBeUndefined();
    expect(writeDate(readDate('9999-12-31', '') + 1)).toBeUndefined();
    expect(writeDate(Number.NaN)).toBeUndefined();
    expect(writeDate(Number.POSITIVE_INFINITY)).toBeUndefined();
  });

  test.each([
    '2026-02-29',
    '1900-02-29',
    '2026-04-31',
    '2026-00-10',
    '2026-13-01',
    '2026-01-00',
    '2026-01-32',
    '1582-12-31',
    '26-01-01',
    '2026-1-1',
    '2026/01/01',
    '01-02-2026',
    ' 2026-01-01',
    '2026-01-01\n',
    '2026-01-01T00:00:00Z',
    '٢٠٢٦-01-01',
    '',
    20260101,
    null,
    undefined,
  ])('is not %j', (text) => {
    expect(issueOf(() => readDate(text, 'date'))).toMatchObject({ code: 'NOT_A_DATE', path: 'date' });
  });
  test.each(['2024-02-29', '2000-02-29', '2026-12-31', '1583-01-01', '9999-12-31'])('is %s', (text) => {
    expect(writeDate(readDate(text, ''))).toBe(text);
  });
});

describe('later', () => {
  test.each([
    ['2026-01-31', 1, 'month', '2026-02-28'],
    ['2024-01-31', 1, 'month', '2024-02-29'],
    ['2024-02-29', 12, 'month', '2025-02-28'],
    ['2026-03-31', 3, 'month', '2026-06-30'],
    ['2026-12-15', 1, 'month', '2027-01-15'],
    ['2026-11-30', 3, 'month', '2027-02-28'],
    ['2026-12-31', 36, 'month', '2029-12-31'],
    ['2026-02-22', 1, 'week', '2026-03-01'],
    ['2026-12-31', 1, 'day', '2027-01-01'],
  ] as const)('%s and %d %s: %s', (from, count, unit, to) => {
    expect(writeDate(later(readDate(from, ''), count, unit))).toBe(to);
  });
});
