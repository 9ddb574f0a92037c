import { us49cfr393108Unmarked } from '../../../tables/generated/us-49cfr393-108-unmarked.js';
import { note } from '../../../working/note.js';
import { MAT_NOT_COUNTED, readFrictionMat, showResistance } from '../../counting/friction-mat.js';
import type { ReadArticle } from '../../plan.js';
import type { RuleContext } from '../../rule-set.js';
import { cite } from './cite.js';

/**
 * 393.108(g): a friction mat without a rating of its own resists horizontal movement with half of the weight
 * that rests **on the mat**. Shown for the reader; the aggregate of 393.106(d) does not count it.
 */
export function showFrictionMat(read: ReadArticle, context: RuleContext): void {
  const mat = readFrictionMat(read);
  if (mat === undefined) return;
  const { working } = context;
  const article = read.article.id;
  working.cautions.push(note(MAT_NOT_COUNTED, { article }));
  if (!working.shown) return;
  cite(working, '393.108(g)');
  const { fraction: share } = us49cfr393108Unmarked.rows['friction-mat'].rating;
  const unmarked = { share, expression: `${share} · weight on the mat` };
  showResistance(mat, article, unmarked, context, '49 CFR 393.108(g)');
}
