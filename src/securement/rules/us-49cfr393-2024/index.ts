import { us49cfr393_108_2024 } from '../../../tables/us-49cfr393-108-2024.js';
import type { CountRules, RuleSet } from '../../rule-set.js';
import { checkForces } from './393-102-force-check.js';
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

/**
 * The optional force check of 49 CFR 393.102 as of 2024: what {@link us49cfr393_2024} deems met, worked out from the
 * geometry of the plan, direction by direction, against working load limits and against breaking strengths.
 *
 * @example
 * const at = (x: number, y: number, z: number) => [{ value: x, unit: 'ft' }, { value: y, unit: 'ft' }, { value: z, unit: 'ft' }] as const;
 * const chain = (id: string, x: number, y: number) => ({
 *   id, holds: 'tractor', path: 'vehicle-to-cargo', capacities: { workingLoadLimit: '4700 lb', breakingStrength: '18800 lb' },
 *   anchor: at(x < -6 ? x - 4 : x + 4, y * 3, 0), attachment: at(x, y * 1.5, 2),
 * } as const);
 * checkSecurement({
 *   rules: us49cfr393_102_2024,
 *   articles: [{ id: 'tractor', kind: 'machinery', mass: '4680 lb', length: '12 ft' }],
 *   tieDowns: [chain('front left', -3, 1), chain('front right', -3, -1), chain('rear left', -9, 1), chain('rear right', -9, -1)],
 * }).verdict
 * // => 'pass'
 */
export const us49cfr393_102_2024: RuleSet = {
  id: 'us-49cfr393-102-2024',
  title: '49 CFR 393.102, performance criteria, by forces',
  jurisdiction: JURISDICTION,
  asOf: '2024',
  units: 'us',
  ratings: us49cfr393_108_2024,
  requirementOf,
  judgePlan: (plan, _, context) => checkForces(plan, context),
};
