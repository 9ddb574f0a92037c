import { auLrg_2018_chain } from '../../../tables/au-lrg-2018-chain.js';
import type { RuleSet } from '../../rule-set.js';
import { judgePlan } from './judge-plan.js';
import { requirementOf } from './required-of-article.js';

/**
 * Load restraint in Australia: the loading performance standards of Schedule 7 by the methods of the Load Restraint
 * Guide 2018. Tie-downs over the load count by their pretension, direct ones by their lashing capacity and their
 * angle. The accelerations were read; friction and chain figures are from memory and are its weakest part.
 *
 * @example
 * tieDownsRequired({
 *   rules: auLrg_2018,
 *   article: { kind: 'machinery', mass: '1000 kg', length: '3 m' },
 * }).perDirection[0].againstLashingCapacity
 * // => 7.84532 kN
 */
export const auLrg_2018: RuleSet = {
  id: 'au-lrg-2018',
  title: 'Load Restraint Guide 2018, loading performance standards of Schedule 7',
  jurisdiction: 'Australia',
  asOf: '2018',
  units: 'si',
  ratings: auLrg_2018_chain,
  requirementOf,
  judgePlan,
};
