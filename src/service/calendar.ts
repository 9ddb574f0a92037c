import { fail } from '../errors.js';
import type { CalendarUnit } from '../tables/interval-set.js';

/** A day of the calendar as its number: day 1 is 0001-01-01, counted in the Gregorian calendar. */
export type DayNumber = number;

const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const FIRST_YEAR = 1583; // the first whole year of the Gregorian calendar
const LAST_YEAR = 9999;

const isLeap = (year: number) => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
const daysIn = (year: number, month: number) => (month === 2 && isLeap(year) ? 29 : (MONTH_DAYS[month - 1] as number));
const daysBeforeYear = (year: number) => {
  const before = year - 1;
  return 365 * before + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400);
};

function dayNumber(year: number, month: number, day: number): DayNumber {
  let days = daysBeforeYear(year) + day;
  for (let each = 1; each < month; each++) days += daysIn(year, each);
  return days;
}

/** Reads a day written as YYYY-MM-DD, and nothing else: no other order, no time, no day that does not exist. */
export function readDate(text: unknown, path: string): DayNumber {
  const [, year, month, day] = (typeof text === 'string' && /^(\d{4})-(\d{2})-(\d{2})$/.exec(text)) || [];
  const [y, m, d] = [Number(year), Number(month), Number(day)];
  const exists = y >= FIRST_YEAR && m >= 1 && m <= 12 && d >= 1 && d <= daysIn(y, m);
  if (!exists) fail('NOT_A_DATE', path, 'a day as YYYY-MM-DD', text, 'Write such as 2026-03-31.');
  return dayNumber(y, m, d);
}

/** The day as YYYY-MM-DD; undefined beyond the years that this can write. */
export function writeDate(day: DayNumber): string | undefined {
  if (!(day > daysBeforeYear(FIRST_YEAR) && day <= daysBeforeYear(LAST_YEAR + 1))) return undefined;
  const { year, month, dayOfMonth } = civil(day);
  return [String(year), ...[month, dayOfMonth].map((each) => String(each).padStart(2, '0'))].join('-');
}

function civil(day: DayNumber): { year: number; month: number; dayOfMonth: number } {
  let year = Math.floor(day / 365.2425) + 1;
  while (daysBeforeYear(year) >= day) year -= 1;
  while (daysBeforeYear(year + 1) < day) year += 1;
  let left = day - daysBeforeYear(year);
  let month = 1;
  while (left > daysIn(year, month)) {
    left -= daysIn(year, month);
    month += 1;
  }
  return { year, month, dayOfMonth: left };
}

/** So many days, weeks or months later. The same day of a later month, or its last where it has no such day. */
export function later(day: DayNumber, count: number, unit: CalendarUnit): DayNumber {
  if (unit !== 'month') return day + count * (unit === 'week' ? 7 : 1);
  const { year, month, dayOfMonth } = civil(day);
  const months = 12 * year + (month - 1) + count;
  const [toYear, toMonth] = [Math.floor(months / 12), (months % 12) + 1];
  return dayNumber(toYear, toMonth, Math.min(dayOfMonth, daysIn(toYear, toMonth)));
}
