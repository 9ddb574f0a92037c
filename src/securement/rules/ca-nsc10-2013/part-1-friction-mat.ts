import { ratedLoadIn } from '../../../quantities/rated.js';
import { massUnitOf } from '../../../quantities/shared-units.js';
import { caNsc102013Unmarked as unmarked } from '../../../tables/generated/ca-nsc10-2013-unmarked.js';
import { note, type Words } from '../../../working/note.js';
import { readFrictionMat } from '../../counting/friction-mat.js';
import type { ReadArticle } from '../../plan.js';
import type { RuleContext } from '../../rule-set.js';

/**
 * A friction mat must be marked to count, since the edition of June 2013: without a mark it resists nothing. Shown
 * for the reader; the aggregate counts tie-downs only.
 */
export function showFrictionMat(read: ReadArticle, { working, units }: RuleContext): void {
  const mat = readFrictionMat(read);
  if (mat === undefined) return;
  const article = read.article.id;
  const { ratedResistance } = mat;
  working.cautions.push(note(ratedResistance === undefined ? MAT_NOT_MARKED : MAT_NOT_COUNTED, { article }));
  if (!working.shown) return;
  working.cite({ ...unmarked.source, clause: 'friction mats' });
  const unit = massUnitOf(units);
  working.step(
    article,
    'mat resistance',
    ratedResistance === undefined ? `not marked: ${unmarked.rows['friction-mat'].rating.counts_as}` : 'as marked',
    { 'weight on the mat': ratedLoadIn(mat.massOnMat, unit) },
    ratedResistance ?? { value: 0, unit },
  );
}

const MAT_NOT_MARKED: Words = [
  'FRICTION_MAT_NOT_MARKED',
  'The friction mat under {article} carries no mark and counts as nothing; in the United States it would count half of the weight on it.',
];
const MAT_NOT_COUNTED: Words = [
  'FRICTION_MAT_NOT_COUNTED',
  'The friction mat under {article} is not counted in the aggregate.',
];
