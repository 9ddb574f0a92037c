import type { RuleSet } from '../../rule-set.js';
import { judgePlan } from './judge-plan.js';
import { requirementOf } from './required-of-article.js';

/**
 * Cargo aboard a ship: the balances of the CSS Code, Annex 13, in the text before its replacement of December 2020. The
 * forces of the ship's motion come from the caller (`shipForces`); CS = MSL / 1.5 and g = 9.81 m/s².
 *
 * @example
 * const shipForces = { transverse: '384 kN' } as const;
 * const article = { kind: 'general', mass: '62 t', length: '8 m', friction: 0.3, shipForces } as const;
 * tieDownsRequired({ rules: imoCssAnnex13_2014, article }).perDirection[0]?.againstMaximumSecuringLoad?.value.toFixed(1)
 * // => '302.3'
 */
export const imoCssAnnex13_2014: RuleSet = {
  id: 'imo-css-annex13-2014',
  title: 'CSS Code, Annex 13, before its replacement of December 2020, with forces stated by the caller',
  jurisdiction: 'international, carriage by sea',
  asOf: '2014',
  units: 'si',
  requirementOf,
  judgePlan,
};
