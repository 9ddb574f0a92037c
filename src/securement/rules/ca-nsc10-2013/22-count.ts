import { caNsc102013Thresholds as thresholds } from '../../../tables/generated/ca-nsc10-2013-thresholds.js';
import type { Working } from '../../../working/step.js';
import { type CountCases, countByLength, showCountByLength } from '../../counting/count-by-length.js';
import type { ReadArticle } from '../../plan.js';
import { cite, clauseOf } from './cite.js';

/**
 * Section 22: the least number of tie-downs by length and mass.
 *
 * Blocked forward: one for each 3.04 m or fraction. Not blocked: 1.52 m or less and 500 kg or less, one; else up to
 * 3.04 m, two; longer, two and one more for each 3.04 m or fraction beyond the first 3.04 m. Meters and kilograms
 * decide: 10 ft is 3.048 m and takes three. No exception for special methods was read, so the count always binds.
 */
export function countOf(read: ReadArticle, working: Working): number {
  const { rows } = thresholds;
  const counted = countByLength(read, rows, CASES);
  if (working.shown) {
    const { paragraph } = counted.as;
    cite(working, paragraph, rows['length-step'].provenance);
    showCountByLength(working, read, rows, counted, clauseOf(paragraph), 'SPECIAL_METHODS_NOT_READ');
  }
  return counted.count;
}

const CASES: CountCases = {
  blocked: { paragraph: 'section 22', formula: 'ceil(L / 3.04 m), blocked forward' },
  shortAndLight: { paragraph: 'section 22', formula: '1 for L ≤ 1.52 m and W ≤ 500 kg' },
  shortAndHeavy: { paragraph: 'section 22', formula: '2 for L ≤ 1.52 m and W > 500 kg' },
  middle: { paragraph: 'section 22', formula: '2 for 1.52 m < L ≤ 3.04 m' },
  long: { paragraph: 'section 22', formula: '2 + ceil((L − 3.04 m) / 3.04 m)' },
};
