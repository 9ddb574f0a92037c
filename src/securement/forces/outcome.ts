import type { Article } from '../plan.js';
import { usualCount } from '../practice.js';
import type { ArticleOutcome } from '../rule-set.js';

/** What is found for an article beside its checks, by a code that asks for no number and adds nothing up whatever its direction. */
export const outcomeByForce = (article: Article, rule: string, count: number): ArticleOutcome => ({
  id: article.id,
  rule,
  count,
  minimumCount: 0,
  recommendedCount: usualCount(article),
  requiredAggregate: null,
  aggregate: null,
  options: [],
});
