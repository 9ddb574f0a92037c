import { inspectionIntervalsDeBgBau3074 } from './generated/inspection-intervals-de-bg-bau-3074.js';
import { inspectionIntervalsUkLoler1998 } from './generated/inspection-intervals-uk-loler-1998.js';
import { inspectionIntervalsUs29cfr19101842011 } from './generated/inspection-intervals-us-29cfr1910-184-2011.js';
import { inspectionIntervalsUsAsmeB3092010 } from './generated/inspection-intervals-us-asme-b30-9-2010.js';
import { inspectionIntervalsUsAsmeB30102005 } from './generated/inspection-intervals-us-asme-b30-10-2005.js';
import { inspectionIntervalsUsNavfacP307 } from './generated/inspection-intervals-us-navfac-p-307.js';
import { inspectionIntervalsUsWac296155558002013 } from './generated/inspection-intervals-us-wac-296-155-55800-2013.js';
import type { IntervalSet } from './interval-set.js';

/**
 * Chain slings in general industry in the United States: each day before use, and a recorded inspection at least every 12 months.
 *
 * @example
 * us29cfr1910_184_2011_intervals.due.rows.sling.any.thorough.most
 * // => 12
 */
export const us29cfr1910_184_2011_intervals = {
  id: 'us-29cfr1910-184-2011',
  title: 'Chain slings, United States, general industry',
  document: '29 CFR Part 1910, Occupational Safety and Health Standards',
  short: '29 CFR',
  asOf: '2011',
  due: inspectionIntervalsUs29cfr19101842011,
} as const satisfies IntervalSet;

/**
 * Chain slings in construction in Washington State, by class of service.
 *
 * @example
 * usWac296_155_55800_2013_intervals.due.rows.sling.severe.thorough.most
 * // => 3
 */
export const usWac296_155_55800_2013_intervals = {
  id: 'us-wac-296-155-55800-2013',
  title: 'Chain slings, Washington State, construction',
  document: 'Washington Administrative Code, Safety Standards for Construction Work',
  short: 'WAC 296-155-55800',
  asOf: '2013',
  due: inspectionIntervalsUsWac296155558002013,
} as const satisfies IntervalSet;

/**
 * Chain slings by ASME B30.9: yearly in normal service, monthly to quarterly in severe service (from memory).
 *
 * @example
 * usAsmeB30_9_2010_intervals.due.rows.sling.severe.thorough.least
 * // => 1
 */
export const usAsmeB30_9_2010_intervals = {
  id: 'us-asme-b30-9-2010',
  title: 'Chain slings, ASME',
  document: 'ASME B30.9, Slings',
  short: 'ASME B30.9',
  asOf: '2010',
  due: inspectionIntervalsUsAsmeB3092010,
} as const satisfies IntervalSet;

/**
 * Hooks by ASME B30.10: frequent inspections by class of service.
 *
 * @example
 * usAsmeB30_10_2005_intervals.due.rows.hook.normal.frequent.most
 * // => 1
 */
export const usAsmeB30_10_2005_intervals = {
  id: 'us-asme-b30-10-2005',
  title: 'Hooks, ASME',
  document: 'ASME B30.10, Hooks',
  short: 'ASME B30.10',
  asOf: '2005',
  due: inspectionIntervalsUsAsmeB30102005,
} as const satisfies IntervalSet;

/**
 * Chain slings in leaflets of a German statutory accident insurer: half-yearly when heavily used, yearly else, a crack test every
 * third year.
 *
 * @example
 * deBgBau3074_intervals.due.rows.sling.any['crack-test'].most
 * // => 36
 */
export const deBgBau3074_intervals = {
  id: 'de-bg-bau-3074',
  title: 'Chain slings, leaflets of a German statutory accident insurer',
  document: 'Accident insurer leaflets 3074 and 30481',
  short: 'Accident insurer',
  asOf: '',
  due: inspectionIntervalsDeBgBau3074,
} as const satisfies IntervalSet;

/**
 * Lifting accessories in the United Kingdom: thorough examination every six months (from memory), or as a scheme of examination says.
 *
 * @example
 * ukLoler_1998_intervals.due.rows['lifting-accessory'].any.thorough.most
 * // => 6
 */
export const ukLoler_1998_intervals = {
  id: 'uk-loler-1998',
  title: 'Lifting accessories, United Kingdom',
  document: 'Lifting Operations and Lifting Equipment Regulations 1998',
  short: 'LOLER',
  asOf: '1998',
  due: inspectionIntervalsUkLoler1998,
} as const satisfies IntervalSet;

/**
 * Chain slings for ship repair and cargo in the United States Navy: every three months, read only through a weak page.
 *
 * @example
 * usNavfacP307_intervals.due.rows.sling.any.thorough.most
 * // => 3
 */
export const usNavfacP307_intervals = {
  id: 'us-navfac-p-307',
  title: 'Chain slings for ship repair and cargo, United States Navy',
  document: 'NAVFAC P-307',
  short: 'NAVFAC P-307',
  asOf: '',
  due: inspectionIntervalsUsNavfacP307,
} as const satisfies IntervalSet;
