import { caNsc10_chain_2013 } from '../../../tables/ca-nsc10-2013.js';
import type { RuleSet } from '../../rule-set.js';
import { judgePlan } from './judge-plan.js';
import { requirementOf } from './required-of-article.js';

/**
 * Cargo securement in Canada: National Safety Code Standard 10, June 2013, Part 1 and Division 7 as far as chain and
 * mixed tie-downs on machines, vehicles and general cargo go. Meters and kilograms decide.
 *
 * Each province adopts it with changes of its own. Much of it is from memory: every result says which clauses.
 *
 * @example
 * tieDownsRequired({ rules: caNsc10_2013, article: { kind: 'general', mass: '600 kg', length: '3.65 m' } }).minimumCount
 * // => 3
 */
export const caNsc10_2013: RuleSet = {
  id: 'ca-nsc10-2013',
  title: 'National Safety Code for Motor Carriers, Standard 10, Cargo Securement',
  jurisdiction: 'Canada',
  asOf: '2013',
  units: 'si',
  ratings: caNsc10_chain_2013,
  requirementOf,
  judgePlan,
};
