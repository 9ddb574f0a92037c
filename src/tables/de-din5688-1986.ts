import { deDin56881986Grade5 } from './generated/de-din5688-1986-grade-5.js';
import { euSlingTemperature } from './generated/eu-sling-temperature.js';
import type { SlingRatings } from './sling-ratings.js';

/**
 * Working load limits of chain slings of class 5, DIN 5688-1:1986, an older kind still in use: ranges of angle as in
 * {@link euEn818_2008}. It says what counts of legs that are not alike. 40 and 45 mm have no value for three or four legs.
 *
 * @example
 * deDin5688_1986.grades[5].rows['26 mm'].double_45_kg
 * // => 18000
 */
export const deDin5688_1986 = {
  id: 'de-din5688-1986',
  title: 'DIN 5688-1, chain slings of class 5',
  asOf: '1986',
  units: 'si',
  columns: { single: 'single', double: 'double', triple: 'triple', quad: 'triple' },
  ranges: [
    { column: 45, toFromVertical: 45 },
    { column: 60, toFromVertical: 60 },
  ],
  flatter: { rule: 'greatest-angle-from-vertical', qualifiedPersonMay: false },
  grades: { '5': deDin56881986Grade5 },
  formula: null,
  unlike: 'factors',
  heat: { table: euSlingTemperature, unit: 'C', fullBelow: false },
} as const satisfies SlingRatings;
