import { euEn12195_3_2001 } from '../../../tables/eu-en12195-3-2001.js';
import type { RuleSet } from '../../rule-set.js';
import { judgePlan } from './judge-plan.js';
import { requirementOf } from './required-of-article.js';

/**
 * Securing forces on road vehicles in Europe: EN 12195-1:2010, on the road. Sliding and tilting, by over-top lashing
 * with pretension, direct lashing with lashing capacity (LC) and both together. It needs the points of the tie-downs,
 * the friction of each article and, for tilting, its center of gravity and contacts.
 *
 * @example
 * tieDownsRequired({
 *   rules: euEn12195_1_2010,
 *   article: { kind: 'machinery', mass: '10 t', length: '5 m', friction: 0.4 },
 * }).perDirection[0].againstLashingCapacity
 * // => 49.05 kN
 */
export const euEn12195_1_2010: RuleSet = {
  id: 'eu-en12195-1-2010',
  title: 'EN 12195-1, Load restraining on road vehicles, Safety, Calculation of securing forces',
  jurisdiction: 'Europe',
  asOf: '2010',
  units: 'si',
  ratings: euEn12195_3_2001,
  requirementOf,
  judgePlan,
};
