import { Quantity } from '../../../quantities/quantity.js';
import { note } from '../../../working/note.js';
import type { ReadArticle } from '../../plan.js';
import { recommendedCount } from '../../practice.js';
import type { ArticleRequirement, RuleContext } from '../../rule-set.js';
import { ruleOf } from './88-89-vehicles.js';
import { requiredOf } from './part-1-aggregate.js';
import { showBlocking } from './part-1-blocking.js';
import { performance } from './part-1-performance.js';

/** What the standard asks of one article: how many tie-downs, how strong together, how much each way. */
export function requirementOf(read: ReadArticle, context: RuleContext): ArticleRequirement {
  const { working, units } = context;
  const { rule, minimumCount, byLength } = ruleOf(read, working);
  const { value, unit } = requiredOf(read, context).required;
  showBlocking(read, context);
  if (rule === 'section 88(2)' && read.article.kind === 'machinery' && byLength > minimumCount) {
    working.cautions.push(note('LENGTH_COUNT_WERE_IT_NO_LIGHT_VEHICLE', { count: byLength }));
  }
  return {
    minimumCount,
    recommendedCount: recommendedCount(read, minimumCount),
    requiredAggregate: new Quantity(value, unit),
    options: [{ rule, minimumCount }],
    perDirection: performance(read.mass, units, working),
  };
}
