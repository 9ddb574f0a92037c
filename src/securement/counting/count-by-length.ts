import { compareExact, stepsToCover } from '../../quantities/exact.js';
import type { QuantityLike } from '../../quantities/quantity.js';
import type { ReadArticle } from '../plan.js';

/** Where a count by length and mass steps up; each limit itself belongs to the smaller count. */
export interface CountLimits {
  /** One tie-down will do up to this length and this mass. */
  readonly oneLength: QuantityLike;
  readonly oneMass: QuantityLike;
  /** Two will do up to this length. */
  readonly twoLength: QuantityLike;
  /** Every further step of length, or fraction of one, takes one more. */
  readonly step: QuantityLike;
}

export interface CountByLength {
  readonly count: number;
  readonly because: 'blocked forward' | 'short and light' | 'short and heavy' | 'middle' | 'long';
}

/**
 * The least number of tie-downs by length and mass, as North American rules count.
 *
 * Blocked forward: one for each step of length or fraction. Not blocked: one if short and light, two up to
 * `twoLength`, beyond that two and one more for each step or fraction.
 */
export function countByLength({ article, mass, length }: ReadArticle, limits: CountLimits): CountByLength {
  const { oneLength, oneMass, twoLength, step } = limits;
  if (article.blockedForward === true) return { count: stepsToCover(length, step), because: 'blocked forward' };
  if (compareExact(length, oneLength) <= 0) {
    const light = compareExact(mass, oneMass) <= 0;
    return light ? { count: 1, because: 'short and light' } : { count: 2, because: 'short and heavy' };
  }
  if (compareExact(length, twoLength) <= 0) return { count: 2, because: 'middle' };
  // 2 + ceil((L − step) / step), as the first two steps end at the same length, is one more than ceil(L / step)
  return { count: stepsToCover(length, step) + 1, because: 'long' };
}
