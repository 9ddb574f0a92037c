import { inUnit } from '../../quantities/convert.js';
import { compareExact, stepsToCover } from '../../quantities/exact.js';
import type { QuantityLike } from '../../quantities/quantity.js';
import type { LengthUnit, MassUnit } from '../../quantities/units.js';
import { type NoteWith, note } from '../../working/note.js';
import type { Working } from '../../working/step.js';
import type { ReadArticle } from '../plan.js';

/** Where a count by length and mass steps up, as rows of a rule set's table; each limit itself belongs to the smaller count. */
export interface CountLimits {
  /** One tie-down will do up to this length and this mass. */
  readonly 'one-tie-down-length': QuantityLike<LengthUnit>;
  readonly 'one-tie-down-mass': QuantityLike<MassUnit>;
  /** Two will do up to this length. */
  readonly 'two-tie-down-length': QuantityLike<LengthUnit>;
  /** Every further step of length, or fraction of one, takes one more. */
  readonly 'length-step': QuantityLike<LengthUnit>;
}

/** What a rule set says of each case of its count: the paragraph and the formula. */
interface CountCase {
  readonly paragraph: string;
  readonly formula: string;
}

export interface CountCases {
  readonly blocked: CountCase;
  readonly shortAndLight: CountCase;
  readonly shortAndHeavy: CountCase;
  readonly middle: CountCase;
  readonly long: CountCase;
}

/** A count with the case that it falls under. */
export interface CountByLength {
  readonly count: number;
  readonly as: CountCase;
}

/**
 * The least number of tie-downs by length and mass, as North American rules count.
 *
 * Blocked forward: one for each step of length or fraction. Not blocked: one if short and light, two up to the length
 * for two, beyond that two and one more for each step or fraction.
 */
export function countByLength(
  { article, mass, length }: ReadArticle,
  limits: CountLimits,
  { blocked, shortAndLight, shortAndHeavy, middle, long }: CountCases,
): CountByLength {
  const step = limits['length-step'];
  if (article.blockedForward === true) return { count: stepsToCover(length, step), as: blocked };
  if (compareExact(length, limits['one-tie-down-length']) <= 0) {
    const light = compareExact(mass, limits['one-tie-down-mass']) <= 0;
    return light ? { count: 1, as: shortAndLight } : { count: 2, as: shortAndHeavy };
  }
  if (compareExact(length, limits['two-tie-down-length']) <= 0) return { count: 2, as: middle };
  // 2 + ceil((L − step) / step), as the first two steps end at the same length, is one more than ceil(L / step)
  return { count: stepsToCover(length, step) + 1, as: long };
}

/** The step of {@link countByLength}, and what is taken for granted; `special` says what special methods of fastening change. */
export function showCountByLength(
  working: Working,
  { article, mass, length }: ReadArticle,
  limits: CountLimits,
  { count, as: { formula } }: CountByLength,
  clause: string,
  special: NoteWith<'article'>,
): void {
  const L = inUnit(length, limits['length-step'].unit);
  const values = formula.includes('W') ? { L, W: inUnit(mass, limits['one-tie-down-mass'].unit) } : { L };
  working.step(article.id, 'n by length', formula, values, count, clause);
  if (article.blockedForward === undefined)
    working.assumptions.push(note('NOT_BLOCKED_FORWARD', { article: article.id }));
  if (article.specialMethods === true) working.assumptions.push(note(special, { article: article.id }));
}
