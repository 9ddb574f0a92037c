import { inUnit } from '../../../quantities/convert.js';
import { us49cfr393Thresholds as thresholds } from '../../../tables/generated/us-49cfr393-thresholds.js';
import { note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { type CountByLength, countByLength, noteBlocking, showCountByLength } from '../../counting/count-by-length.js';
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
  noteBlocking(working, read.article);
  if (read.article.specialMethods === true) return exempt(read, working);
  const counted = countByLength(read, rows);
  if (working.shown) {
    const paragraph = PARAGRAPHS[counted.because];
    cite(working, paragraph, counted.because === 'middle' ? 'memory' : 'read');
    showCountByLength(working, read, rows, counted, `49 CFR ${paragraph}`);
  }
  return counted.count;
}

const PARAGRAPHS: Readonly<Record<CountByLength['because'], string>> = {
  'blocked forward': '393.110(c)',
  'short and light': '393.110(b)(1)',
  'short and heavy': '393.110(b)(2)(i)',
  middle: '393.110(b)(2)(ii)',
  long: '393.110(b)(3)',
};

function exempt({ article, length }: ReadArticle, working: Working): 0 {
  if (working.shown) {
    const expression = 'no count: fastened by special methods';
    cite(working, '393.110(d)', 'memory');
    working.step(article.id, 'n by length', expression, { L: inUnit(length, 'ft') }, 0, '49 CFR 393.110(d)');
    working.assumptions.push(note(SPECIAL_METHODS, { article: article.id }));
  }
  return 0;
}

const SPECIAL_METHODS: Words = [
  'SPECIAL_METHODS',
  '{article} is fastened by special methods: only the count by length does not bind it.',
];
