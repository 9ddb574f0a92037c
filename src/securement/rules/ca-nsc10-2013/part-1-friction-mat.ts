import { caNsc102013Unmarked as table } from '../../../tables/generated/ca-nsc10-2013-unmarked.js';
import { note, type Words } from '../../../working/note.js';
import { MAT_NOT_COUNTED, readFrictionMat, showResistance } from '../../counting/friction-mat.js';
import type { ReadArticle } from '../../plan.js';
import type { RuleContext } from '../../rule-set.js';

/**
 * A friction mat must be marked to count, since the edition of June 2013: without a mark it resists nothing. Shown
 * for the reader; the aggregate counts tie-downs only.
 */
export function showFrictionMat(read: ReadArticle, context: RuleContext): void {
  const mat = readFrictionMat(read);
  if (mat === undefined) return;
  const { working } = context;
  const article = read.article.id;
  working.cautions.push(note(mat.ratedResistance === undefined ? MAT_NOT_MARKED : MAT_NOT_COUNTED, { article }));
  if (!working.shown) return;
  working.cite({ ...table.source, clause: 'friction mats' });
  const unmarked = { share: 0, expression: `not marked: ${table.rows['friction-mat'].rating.counts_as}` };
  showResistance(mat, article, unmarked, context);
}

const MAT_NOT_MARKED: Words = [
  'FRICTION_MAT_NOT_MARKED',
  'The friction mat under {article} carries no mark and counts as nothing; in the United States it would count half of the weight on it.',
];
