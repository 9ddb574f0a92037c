import { us49cfr393Thresholds as thresholds } from '../../../tables/generated/us-49cfr393-thresholds.js';
import type { Working } from '../../../working/step.js';
import {
  type CountByLength,
  type CountCases,
  countByLength,
  showCountByLength,
} from '../../counting/count-by-length.js';
import type { ReadArticle } from '../../plan.js';
import { cite } from './cite.js';

/**
 * 393.110: the least number of tie-downs by length and weight.
 *
 * Blocked forward, (c): one for each 10 ft or fraction. Not blocked, (b): 5 ft or less and 1,100 lb or less,
 * one; else up to 10 ft, two; longer, two and one more for each 10 ft or fraction beyond the first 10 ft.
 * 5 ft, 10 ft and 1,100 lb themselves belong to the smaller count. The metric figures printed beside them are
 * not equal to them: feet and pounds decide. (d): the count does not bind cargo that must be fastened by
 * special methods; only the caller can say so.
 */
export function countOf(read: ReadArticle, working: Working): number {
  const { rows } = thresholds;
  const counted = read.article.specialMethods === true ? EXEMPT : countByLength(read, rows, CASES);
  if (working.shown) {
    const { paragraph } = counted.as;
    cite(working, paragraph, counted === EXEMPT || counted.as === CASES.middle ? 'memory' : 'read');
    showCountByLength(working, read, rows, counted, `49 CFR ${paragraph}`, 'SPECIAL_METHODS');
  }
  return counted.count;
}

const CASES: CountCases = {
  blocked: { paragraph: '393.110(c)', formula: 'ceil(L / 10 ft), blocked forward' },
  shortAndLight: { paragraph: '393.110(b)(1)', formula: '1 for L ≤ 5 ft and W ≤ 1100 lb' },
  shortAndHeavy: { paragraph: '393.110(b)(2)(i)', formula: '2 for L ≤ 5 ft and W > 1100 lb' },
  middle: { paragraph: '393.110(b)(2)(ii)', formula: '2 for 5 ft < L ≤ 10 ft' },
  long: { paragraph: '393.110(b)(3)', formula: '2 + ceil((L − 10 ft) / 10 ft)' },
};
const EXEMPT: CountByLength = {
  count: 0,
  as: { paragraph: '393.110(d)', formula: 'no count: fastened by special methods' },
};
