import { type Check, countCheck } from '../../working/check.js';
import type { Article } from '../plan.js';
import type { ArticleOutcome } from '../rule-set.js';

/** What haulers use, so that each way is held by two: four on a machine or a vehicle, two on anything else. */
export const usualCount = ({ kind }: Pick<Article, 'kind'>): number => (kind === 'general' ? 2 : 4); // common practice

/** Advice on the number of tie-downs, for a code that asks for none. */
export const adviseOnCount = (article: Article, count: number): Check =>
  countCheck(
    {
      id: `practice/count/${article.id}`,
      title: 'Number of tie-downs, as haulers do',
      clause: 'common practice',
      weight: 'practice',
      subject: article.id,
    },
    usualCount(article),
    count,
  );

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
