import { usAsmeB3092010Temperature } from './generated/us-asme-b30-9-2010-temperature.js';
import { usOshaSlings2011Grade80 } from './generated/us-osha-slings-2011-grade-80.js';
import { usOshaSlings2011Grade100 } from './generated/us-osha-slings-2011-grade-100.js';
import type { SlingRatings } from './sling-ratings.js';

/**
 * Rated loads of alloy chain slings, grades 80 and 100, 7/32 to 1-1/4 in, as the OSHA Guidance on Safe Sling Use
 * prints them: by angle from the horizontal, 60, 45 and 30 degrees, the next lower row between. A sling of four legs is
 * credited with three. Of chokers it prints none: see the formula.
 *
 * @example
 * usAlloySling_2011.grades[80].rows['3/8'].double_45_lb
 * // => 10000
 */
export const usAlloySling_2011 = {
  id: 'us-alloy-sling-2011',
  title: 'OSHA Guidance on Safe Sling Use, alloy chain slings',
  asOf: '2011',
  units: 'us',
  columns: {
    single: 'single',
    double: 'double',
    triple: 'triple',
    quad: 'triple',
    basket: 'double',
    'double-basket': 'triple',
  },
  ranges: [
    { column: 60, toFromVertical: 30 },
    { column: 45, toFromVertical: 45 },
    { column: 30, toFromVertical: 60 },
  ],
  flatter: { rule: 'least-angle-from-horizontal', qualifiedPersonMay: true },
  grades: { 80: usOshaSlings2011Grade80, 100: usOshaSlings2011Grade100 },
  formula: { clause: 'ASME B30.9, chapter 9-1', provenance: 'read', step: 100, choker: 'choke-factor-us' },
  chokeAngle: 'least-choke-angle',
  plumbBasket: 'vertical-within',
  unlike: 'not rated',
  heat: { table: usAsmeB3092010Temperature, unit: 'F', fullBelow: true },
} as const satisfies SlingRatings;
