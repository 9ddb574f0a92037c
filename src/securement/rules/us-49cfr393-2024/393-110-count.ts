import { inUnit } from '../../../quantities/convert.js';
import { compareExact, stepsToCover } from '../../../quantities/exact.js';
import { us49cfr393Thresholds as thresholds } from '../../../tables/generated/us-49cfr393-thresholds.js';
import { note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
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
export function countByLength({ article, mass, length }: ReadArticle, working: Working): number {
  const step = thresholds.rows['length-step'];
  const tens = stepsToCover(length, step);
  let count: number;
  let expression: string;
  let paragraph: string;
  if (article.specialMethods === true) {
    count = 0;
    expression = 'no count: fastened by special methods';
    paragraph = '393.110(d)';
  } else if (article.blockedForward === true) {
    count = tens;
    expression = 'ceil(L / 10 ft), blocked forward';
    paragraph = '393.110(c)';
  } else if (compareExact(length, thresholds.rows['one-tie-down-length']) <= 0) {
    const light = compareExact(mass, thresholds.rows['one-tie-down-mass']) <= 0;
    count = light ? 1 : 2;
    expression = light ? '1 for L ≤ 5 ft and W ≤ 1100 lb' : '2 for L ≤ 5 ft and W > 1100 lb';
    paragraph = light ? '393.110(b)(1)' : '393.110(b)(2)(i)';
  } else if (compareExact(length, thresholds.rows['two-tie-down-length']) <= 0) {
    count = 2;
    expression = '2 for 5 ft < L ≤ 10 ft';
    paragraph = '393.110(b)(2)(ii)';
  } else {
    count = tens + 1; // 2 + ceil((L - 10) / 10) is one more than ceil(L / 10)
    expression = '2 + ceil((L − 10 ft) / 10 ft)';
    paragraph = '393.110(b)(3)';
  }
  if (working.shown) {
    const memory = paragraph === '393.110(d)' || paragraph === '393.110(b)(2)(ii)';
    cite(working, paragraph, memory ? 'memory' : 'read');
    const lengthValue = [['L', inUnit(length, 'ft')] as const];
    working.step(
      article.id,
      'n by length',
      expression,
      expression.includes('W') ? [...lengthValue, ['W', inUnit(mass, 'lb')]] : lengthValue,
      count,
      `49 CFR ${paragraph}`,
    );
    if (article.blockedForward === undefined) working.assumptions.push(note(NOT_BLOCKED, { article: article.id }));
    if (article.specialMethods === true) working.assumptions.push(note(SPECIAL_METHODS, { article: article.id }));
  }
  return count;
}

const NOT_BLOCKED: Words = ['NOT_BLOCKED_FORWARD', '{article} is taken as not blocked forward.'];
const SPECIAL_METHODS: Words = [
  'SPECIAL_METHODS',
  '{article} is fastened by special methods: only the count by length does not bind it.',
];
