import { euEn81842008Grade8 } from './generated/eu-en818-4-2008-grade-8.js';
import { euEn81852008Grade4 } from './generated/eu-en818-5-2008-grade-4.js';
import { euSlingTemperature } from './generated/eu-sling-temperature.js';
import type { SlingRatings } from './sling-ratings.js';

/**
 * Working load limits of chain slings by the uniform load method: class 8 (EN 818-4) and class 4 (EN 818-5), each with its
 * amendment of 2008. Two ranges of angle from the vertical, to 45 degrees and over 45 to 60; 45 belongs to the first. Class
 * 4 has columns for chokers, class 8 for 4 mm alone.
 *
 * @example
 * euEn818_2008.grades[8].rows['10 mm'].triple_60_kg
 * // => 4750
 */
export const euEn818_2008 = {
  id: 'eu-en818-2008',
  title: 'EN 818-4 and EN 818-5, chain slings',
  asOf: '2008',
  units: 'si',
  columns: {
    single: 'single',
    double: 'double',
    triple: 'triple',
    quad: 'triple',
    choker: 'choke_single',
    'double-choker': 'choke_double',
    'endless-choker': 'endless_choke',
  },
  ranges: [
    { column: 45, toFromVertical: 45 },
    { column: 60, toFromVertical: 60 },
  ],
  flatter: { rule: 'greatest-angle-from-vertical', qualifiedPersonMay: false },
  grades: { '8': euEn81842008Grade8, '4': euEn81852008Grade4 },
  formula: {
    clause: 'EN 818-4, annex A, trigonometric method',
    provenance: 'memory',
    step: 10,
    choker: 'choke-factor-eu',
    endlessChoker: 'endless-choke-factor-eu',
  },
  unlike: 'half',
  heat: { table: euSlingTemperature, unit: 'C', fullBelow: false },
} as const satisfies SlingRatings;
