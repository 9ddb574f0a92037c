import type { RuleSet } from '../../rule-set.js';
import { judgePlan } from './judge-plan.js';
import { requirementOf } from './required-of-article.js';

/**
 * Cargo on an open platform by road, or by sea in the area that `plan.seaArea` names: the force balances of the CTU
 * Code, chapter 5 and Annex 7, edition of 2014. Counts maximum securing loads, and pretension in tie-downs over the
 * load; g = 9.81 m/s². Most of its figures are from memory: see `sources`.
 *
 * @example
 * const article = { kind: 'machinery', mass: '2000 kg', length: '3 m', friction: 0.4 } as const;
 * tieDownsRequired({ rules: imoCtu_2014, article }).perDirection[0]?.againstMaximumSecuringLoad?.value.toFixed(2)
 * // => '9.81'
 */
export const imoCtu_2014: RuleSet = {
  id: 'imo-ctu-2014',
  title: 'IMO/ILO/UNECE Code of Practice for Packing of Cargo Transport Units, chapter 5 and Annex 7',
  jurisdiction: 'international, carriage by road and sea',
  asOf: '2014',
  units: 'si',
  requirementOf,
  judgePlan,
};
