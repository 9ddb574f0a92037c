import { us49cfr393_108_2024 } from '../../../tables/us-49cfr393-108-2024.js';
import type { RuleSet } from '../../rule-set.js';
import { judgePlan } from './judge-plan.js';
import { requirementOf } from './requirement.js';

/**
 * Cargo securement in the United States: 49 CFR 390.5, 392.9 and 393.102 to 393.130 as far as chain and mixed
 * tie-downs on machines and general cargo go, as of 2024. Feet and pounds decide.
 *
 * @example
 * tieDownsRequired({ rules: us49cfr393_2024, article: { kind: 'general', mass: '1100 lb', length: '5 ft' } }).minimumCount
 * // => 1
 */
export const us49cfr393_2024: RuleSet = {
  id: 'us-49cfr393-2024',
  title: '49 CFR Part 393, Subpart I, Protection Against Shifting and Falling Cargo',
  jurisdiction: 'United States, federal',
  asOf: '2024',
  units: 'us',
  ratings: us49cfr393_108_2024,
  requirementOf,
  judgePlan,
};
