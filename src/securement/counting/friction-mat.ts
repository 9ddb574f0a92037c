import { fail } from '../../errors.js';
import { compareExact } from '../../quantities/exact.js';
import type { QuantityLike } from '../../quantities/quantity.js';
import { ratedLoadIn } from '../../quantities/rated.js';
import { readOptional, readPositive } from '../../quantities/read.js';
import { massUnitOf } from '../../quantities/shared-units.js';
import type { Words } from '../../working/note.js';
import type { ReadArticle } from '../plan.js';
import type { RuleContext } from '../rule-set.js';

/** A friction mat with its quantities read. */
export interface ReadFrictionMat {
  readonly massOnMat: QuantityLike;
  /** Horizontal resistance as marked; undefined where it is not. */
  readonly ratedResistance: QuantityLike | undefined;
}

/** The friction mat under an article, if there is one: it bears no more than the article's mass. */
export function readFrictionMat({ article, mass }: ReadArticle): ReadFrictionMat | undefined {
  const mat = article.frictionMat;
  if (mat === undefined) return undefined;
  const massOnMat = readPositive(mat.massOnMat, 'mass', 'frictionMat.massOnMat');
  if (compareExact(massOnMat, mass) > 0) {
    fail(
      'CONFLICTING_FIELDS',
      'frictionMat.massOnMat',
      'at most the mass of the article',
      `${massOnMat}`,
      'Give what rests on the mat.',
    );
  }
  return {
    massOnMat,
    ratedResistance: readOptional(mat.ratedResistance, 'ratedLoad', 'frictionMat.ratedResistance'),
  };
}

/** The step of a friction mat: as marked, or without a mark the share of the weight on it that the rule set gives it. */
export function showResistance(
  { massOnMat, ratedResistance }: ReadFrictionMat,
  article: string,
  unmarked: { readonly share: number; readonly expression: string },
  { working, units }: RuleContext,
  clause?: string,
): void {
  const weight = ratedLoadIn(massOnMat, massUnitOf(units));
  working.step(
    article,
    'mat resistance',
    ratedResistance === undefined ? unmarked.expression : 'as marked',
    { 'weight on the mat': weight },
    ratedResistance ?? { value: weight.value * unmarked.share, unit: weight.unit },
    clause,
  );
}

export const MAT_NOT_COUNTED: Words = [
  'FRICTION_MAT_NOT_COUNTED',
  'The friction mat under {article} is not counted in the aggregate.',
];
