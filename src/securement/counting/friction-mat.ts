import { fail } from '../../errors.js';
import { compareExact } from '../../quantities/exact.js';
import type { QuantityLike } from '../../quantities/quantity.js';
import { readOptional, readPositive } from '../../quantities/read.js';
import type { ReadArticle } from '../plan.js';

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
      'Give the part of it that rests on the mat.',
    );
  }
  return {
    massOnMat,
    ratedResistance: readOptional(mat.ratedResistance, 'ratedLoad', 'frictionMat.ratedResistance'),
  };
}
