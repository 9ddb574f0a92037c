import { ukDvsa2024Accelerations as accelerations } from '../../../tables/generated/uk-dvsa-2024-accelerations.js';
import { inForce, times } from '../../forces/sums.js';
import type { ReadArticle } from '../../plan.js';
import { usualCount } from '../../practice.js';
import type { ArticleRequirement, DirectionalRequirement, RuleContext, RuleSet } from '../../rule-set.js';
import { GUIDANCE } from './cite.js';
import { judgePlan } from './judge-plan.js';

/**
 * Load securing in the United Kingdom: the guidance for goods vehicles as updated in December 2024, as far as it was
 * read. All of the weight forward, half of it rearward and sideways, against makers' ratings; no friction.
 *
 * @example
 * tieDownsRequired({
 *   rules: ukDvsa_2024,
 *   article: { kind: 'machinery', mass: '1000 kg', length: '3 m' },
 * }).perDirection[0].againstLashingCapacity
 * // => 9.80665 kN
 */
export const ukDvsa_2024: RuleSet = {
  id: 'uk-dvsa-2024',
  title: 'Guidance on securing loads on goods vehicles',
  jurisdiction: 'United Kingdom',
  asOf: '2024',
  units: 'si',
  requirementOf,
  judgePlan,
};

/** What the guidance asks of one article: F = a · W each way, forward from tie-downs and blocking together. */
function requirementOf({ article, mass }: ReadArticle, { working, units }: RuleContext): ArticleRequirement {
  const weight = [{ quantity: mass }];
  const show = inForce(units);
  working.cite(accelerations.source);
  const { forward, rearward, sideways } = accelerations.rows;
  const directions: readonly (readonly [DirectionalRequirement['direction'], number])[] = [
    ['forward', forward.c],
    ['rearward', rearward.c],
    ['lateral', sideways.c],
  ];
  return {
    minimumCount: 0, // no number is asked
    recommendedCount: usualCount(article),
    requiredAggregate: null,
    options: [],
    perDirection: directions.map(([direction, a]) => {
      const force = show(times(weight, a));
      working.step(`restraint ${direction}`, 'F', 'a · W', { a, W: show(weight) }, force, GUIDANCE);
      return { direction, againstLashingCapacity: force, clause: GUIDANCE };
    }),
  };
}
