import { massUnitOf } from '../../../quantities/shared-units.js';
import { caNsc102013Credit as credits } from '../../../tables/generated/ca-nsc10-2013-credit.js';
import { caNsc102013Thresholds as thresholds } from '../../../tables/generated/ca-nsc10-2013-thresholds.js';
import type { Working } from '../../../working/step.js';
import {
  type Aggregate,
  judgeAggregate,
  type RequiredAggregate,
  requiredAggregate,
  showRequired,
} from '../../counting/aggregate.js';
import type { ReadArticle, TieDownPath } from '../../plan.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import type { RuleContext } from '../../rule-set.js';
import { aboutRule, cite, clauseOf } from './cite.js';

/**
 * The share of a tie-down's limit that counts, by the way it runs: all of it. The standard counts one half for each
 * end section that is fastened to an anchor point, and an anchor point may be on the cargo.
 */
export function creditOf(path: TieDownPath): number {
  return credits.rows[path].credit;
}

/** Cites what {@link creditOf} says of a path. */
export function citeCredit(path: TieDownPath, working: Working): void {
  const row = credits.rows[path];
  cite(working, credits.source.clause, 'provenance' in row ? row.provenance : credits.source.provenance);
}

/** 0.5 · W, shown. */
export function requiredOf({ article, mass }: ReadArticle, { working, units }: RuleContext): RequiredAggregate {
  const { value, clause } = thresholds.rows['aggregate-fraction'];
  const required = requiredAggregate(mass, value, massUnitOf(units));
  cite(working, `${clause}, aggregate`);
  showRequired(working, article.id, required, clauseOf(clause));
  return required;
}

/** Part 1: sum(credit · WLL) ≥ 0.5 · W. At least half: equality passes. */
export function checkAggregate(
  article: string,
  required: RequiredAggregate,
  tieDowns: readonly TieDownRating[],
  working: Working,
): Aggregate {
  const { clause } = thresholds.rows['aggregate-fraction'];
  const about = aboutRule(working, { clause, part: 'aggregate' }, 'Aggregate working load limit', article);
  return judgeAggregate(about, required, tieDowns, creditOf, working);
}
