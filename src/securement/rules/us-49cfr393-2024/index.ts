import { us49cfr393_108_2024 } from '../../../tables/us-49cfr393-108-2024.js';
import type { CountRules, RuleSet } from '../../rule-set.js';
import { judgePlan } from './judge-plan.js';
import { requirementOf } from './required-of-article.js';

const JURISDICTION = 'United States, federal';

/**
 * The counting part of {@link us49cfr393_2024} alone, for an application that only asks how many tie-downs an
 * article needs: 49 CFR 393.102, 393.106, 393.110, 393.128 and 393.130, as of 2024. Its id is that of the whole.
 *
 * @example
 * tieDownsRequired({ rules: us49cfr393_110_2024, article: { kind: 'general', mass: '1100 lb', length: '5 ft' } }).minimumCount
 * // => 1
 */
export const us49cfr393_110_2024: CountRules = {
  id: 'us-49cfr393-2024',
  title: '49 CFR 393.110 with 393.102, 393.106, 393.128 and 393.130, what an article needs',
  jurisdiction: JURISDICTION,
  asOf: '2024',
  units: 'us',
  requirementOf,
};

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
  jurisdiction: JURISDICTION,
  asOf: '2024',
  units: 'us',
  ratings: us49cfr393_108_2024,
  requirementOf,
  judgePlan,
};
