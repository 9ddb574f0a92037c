import { fail } from '../../../errors.js';
import { compareExact } from '../../../quantities/exact.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { readOptional, readPositive } from '../../../quantities/read.js';
import { massUnitOf } from '../../../quantities/shared-units.js';
import { us49cfr393108Unmarked } from '../../../tables/generated/us-49cfr393-108-unmarked.js';
import { note, type Words } from '../../../working/note.js';
import type { ReadArticle } from '../../plan.js';
import type { RuleContext } from '../../rule-set.js';
import { cite } from './cite.js';

/**
 * 393.108(g): a friction mat without a rating of its own resists horizontal movement with half of the weight
 * that rests **on the mat**. Shown for the reader; the aggregate of 393.106(d) does not count it.
 */
export function showFrictionMat({ article, mass }: ReadArticle, { working, units }: RuleContext): void {
  const mat = article.frictionMat;
  if (mat === undefined) return;
  const onMat = readPositive(mat.massOnMat, 'mass', 'frictionMat.massOnMat');
  if (compareExact(onMat, mass) > 0) {
    fail(
      'CONFLICTING_FIELDS',
      'frictionMat.massOnMat',
      'at most the mass of the article',
      `${onMat}`,
      'Give what rests on the mat.',
    );
  }
  const rated = readOptional(mat.ratedResistance, 'ratedLoad', 'frictionMat.ratedResistance');
  working.cautions.push(note(MAT_NOT_COUNTED, { article: article.id }));
  if (!working.shown) return;
  cite(working, '393.108(g)');
  const { fraction } = us49cfr393108Unmarked.rows['friction-mat'].rating;
  const weight = ratedLoadIn(onMat, massUnitOf(units));
  working.step(
    article.id,
    'mat resistance',
    rated === undefined ? `${fraction} · weight on the mat` : 'as marked',
    { 'weight on the mat': weight },
    rated ?? { value: weight.value * fraction, unit: weight.unit },
    '49 CFR 393.108(g)',
  );
}

const MAT_NOT_COUNTED: Words = [
  'FRICTION_MAT_NOT_COUNTED',
  'The friction mat under {article} is not counted in the aggregate.',
];
