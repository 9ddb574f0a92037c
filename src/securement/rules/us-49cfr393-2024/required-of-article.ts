import { Quantity } from '../../../quantities/quantity.js';
import { note } from '../../../working/note.js';
import { showRequired } from '../../counting/aggregate.js';
import type { ReadArticle } from '../../plan.js';
import { recommendedCount } from '../../practice.js';
import type { ArticleRequirement, RuleContext } from '../../rule-set.js';
import { performance } from './393-102-performance.js';
import { requiredOf } from './393-106-aggregate.js';
import { cite } from './cite.js';
import { openRules } from './open-rules.js';

/** What 49 CFR 393 asks of one article: how many tie-downs, how strong together, how much each way. */
export function requirementOf(read: ReadArticle, context: RuleContext): ArticleRequirement {
  const { working, units } = context;
  const { options, byLength } = openRules(read, working);
  const minimumCount = Math.min(...options.map(({ minimumCount: count }) => count));
  const required = requiredOf(read, context);
  const { value, unit } = required.required;
  cite(working, '393.106(d)');
  showRequired(working, read.article.id, required, '49 CFR 393.106(d)');
  if (byLength > minimumCount) working.cautions.push(note('LENGTH_COUNT_LARGER', { count: byLength }));
  return {
    minimumCount,
    recommendedCount: recommendedCount(read, minimumCount),
    requiredAggregate: new Quantity(value, unit),
    options,
    perDirection: performance(read.mass, units, working),
  };
}
