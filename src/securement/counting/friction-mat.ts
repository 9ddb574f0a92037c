import { fail } from '../../errors.js';
import { compareExact } from '../../quantities/exact.js';
import { ratedLoadIn } from '../../quantities/rated.js';
import { readOptional, readPositive } from '../../quantities/read.js';
import { massUnitOf } from '../../quantities/shared-units.js';
import { type NoteWith, note } from '../../working/note.js';
import type { FrictionMat, ReadArticle } from '../plan.js';
import type { RuleContext } from '../rule-set.js';

/** What a rule set makes of a friction mat that is not marked. */
export interface UnmarkedMat {
  /** Share of the weight on it that it resists with. */
  readonly share: number;
  readonly expression: string;
  readonly caution: NoteWith<'article'>;
}

/**
 * Shows what a friction mat under an article resists: as marked, or else by the share of the weight on it. It bears no
 * more than the article's mass.
 */
export function showFrictionMat(
  { article, mass }: ReadArticle,
  mat: FrictionMat,
  unmarked: UnmarkedMat,
  { working, units }: RuleContext,
  clause?: string,
): void {
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
  const marked = readOptional(mat.ratedResistance, 'ratedLoad', 'frictionMat.ratedResistance');
  working.cautions.push(
    note(marked === undefined ? unmarked.caution : 'FRICTION_MAT_NOT_COUNTED', { article: article.id }),
  );
  const weight = ratedLoadIn(onMat, massUnitOf(units));
  working.step(
    article.id,
    'mat resistance',
    marked === undefined ? unmarked.expression : 'as marked',
    { 'weight on the mat': weight },
    marked ?? { value: weight.value * unmarked.share, unit: weight.unit },
    clause,
  );
}
