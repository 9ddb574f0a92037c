import type { ReadArticle } from '../../plan.js';
import { usualCount } from '../../practice.js';
import type { ArticleRequirement, RuleContext, RuleSet } from '../../rule-set.js';
import { judgePlan } from './judge-plan.js';
import { requiredStrength } from './rigid-loads.js';

/**
 * Load securing in New Zealand: the rule of the Truck Loading Code 2017 for rigid loads. It counts rated strength,
 * for chain up to the breaking force, for webbing half of it: never a lashing capacity or a working load limit.
 *
 * @example
 * tieDownsRequired({ rules: nzTlc_2017, article: { kind: 'general', mass: '10 t', length: '5 m' } }).requiredAggregate
 * // => 20000 kg
 */
export const nzTlc_2017: RuleSet = {
  id: 'nz-tlc-2017',
  title: 'The Truck Loading Code, rigid loads',
  jurisdiction: 'New Zealand',
  asOf: '2017',
  units: 'si',
  requirementOf,
  judgePlan,
};

/** What the code asks of one article: the total rated strength, and no number or force in any direction. */
function requirementOf(read: ReadArticle, context: RuleContext): ArticleRequirement {
  return {
    minimumCount: 0, // no number is asked
    recommendedCount: usualCount(read.article),
    requiredAggregate: requiredStrength(read, context),
    options: [],
    perDirection: [],
  };
}
