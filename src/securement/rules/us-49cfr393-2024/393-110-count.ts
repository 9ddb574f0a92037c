import { us49cfr393Thresholds as thresholds } from '../../../tables/generated/us-49cfr393-thresholds.js';
import type { Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { type CountByLength, countByLength, showCountByLength } from '../../counting/count-by-length.js';
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
  const counted = read.article.specialMethods === true ? EXEMPT : countByLength(read, rows);
  if (working.shown) {
    const paragraph = PARAGRAPHS[counted.because];
    const recalled = paragraph === PARAGRAPHS.middle || paragraph === PARAGRAPHS['special methods'];
    cite(working, paragraph, recalled ? 'memory' : 'read');
    showCountByLength(working, read, rows, counted, `49 CFR ${paragraph}`, SPECIAL_METHODS);
  }
  return counted.count;
}

const EXEMPT: CountByLength = { count: 0, because: 'special methods' };
const PARAGRAPHS = {
  'special methods': '393.110(d)',
  'blocked forward': '393.110(c)',
  'short and light': '393.110(b)(1)',
  'short and heavy': '393.110(b)(2)(i)',
  middle: '393.110(b)(2)(ii)',
  long: '393.110(b)(3)',
} as const;
const SPECIAL_METHODS: Words = [
  'SPECIAL_METHODS',
  '{article} is fastened by special methods: only the count by length does not bind it.',
];
