import { caNsc102013Unmarked as table } from '../../../tables/generated/ca-nsc10-2013-unmarked.js';
import { showFrictionMat } from '../../counting/friction-mat.js';
import type { ReadArticle } from '../../plan.js';
import type { RuleContext } from '../../rule-set.js';

/**
 * A friction mat must be marked to count, since the edition of June 2013: without a mark it resists nothing. Shown
 * for the reader; the aggregate counts tie-downs only.
 */
export function showMat(read: ReadArticle, context: RuleContext): void {
  const { working } = context;
  const mat = read.article.frictionMat;
  if (mat === undefined) return;
  if (working.shown) working.cite({ ...table.source, clause: 'friction mats' });
  const expression = `not marked: ${table.rows['friction-mat'].rating.counts_as}`;
  showFrictionMat(read, mat, { share: 0, expression, caution: 'FRICTION_MAT_NOT_MARKED' }, context);
}
