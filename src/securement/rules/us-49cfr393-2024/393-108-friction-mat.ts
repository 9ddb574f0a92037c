import { us49cfr393108Unmarked } from '../../../tables/generated/us-49cfr393-108-unmarked.js';
import { showFrictionMat } from '../../counting/friction-mat.js';
import type { ReadArticle } from '../../plan.js';
import type { RuleContext } from '../../rule-set.js';
import { cite } from './cite.js';

/**
 * 393.108(g): a friction mat without a rating of its own resists horizontal movement with half of the weight
 * that rests **on the mat**. Shown for the reader; the aggregate of 393.106(d) does not count it.
 */
export function showMat(read: ReadArticle, context: RuleContext): void {
  const mat = read.article.frictionMat;
  if (mat === undefined) return;
  cite(context.working, '393.108(g)');
  const { fraction: share } = us49cfr393108Unmarked.rows['friction-mat'].rating;
  const caution = 'FRICTION_MAT_NOT_COUNTED';
  const unmarked = { share, expression: `${share} · weight on the mat`, caution } as const;
  showFrictionMat(read, mat, unmarked, context, '49 CFR 393.108(g)');
}
