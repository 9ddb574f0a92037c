import { massUnitOf } from '../../../quantities/shared-units.js';
import { us49cfr393Thresholds as thresholds } from '../../../tables/generated/us-49cfr393-thresholds.js';
import type { Working } from '../../../working/step.js';
import {
  type Aggregate,
  judgeAggregate,
  type RequiredAggregate,
  requiredAggregate,
  showRequired,
} from '../../counting/aggregate.js';
import type { ReadArticle } from '../../plan.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import type { RuleContext } from '../../rule-set.js';
import { creditOf } from './393-106-credit.js';
import { aboutRule } from './cite.js';

/** 393.106(d): half of the weight, 0.5 · W. */
export function requiredOf({ mass }: ReadArticle, { units }: RuleContext): RequiredAggregate {
  return requiredAggregate(mass, thresholds.rows['aggregate-fraction'].value, massUnitOf(units));
}

/**
 * 393.106(d): sum(credit · WLL) ≥ 0.5 · W. Half of the limit counts for a tie-down from the vehicle to the cargo
 * or back to the same side, all of it for one that runs over to the other side. At least half: equality passes.
 */
export function checkAggregate(
  article: string,
  required: RequiredAggregate,
  tieDowns: readonly TieDownRating[],
  working: Working,
): Aggregate {
  const about = aboutRule(working, '393.106(d)', 'Aggregate working load limit', article);
  const outcome = judgeAggregate(about, required, tieDowns, creditOf, working);
  showRequired(working, article, required, about.clause);
  return outcome;
}
