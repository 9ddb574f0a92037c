import { caNsc102013Thresholds as thresholds } from '../../../tables/generated/ca-nsc10-2013-thresholds.js';
import type { Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { countByLength, showCountByLength } from '../../counting/count-by-length.js';
import type { ReadArticle } from '../../plan.js';
import { cite, clauseOf } from './cite.js';

const CLAUSE = 'section 22';

/**
 * Section 22: the least number of tie-downs by length and mass.
 *
 * Blocked forward: one for each 3.04 m or fraction. Not blocked: 1.52 m or less and 500 kg or less, one; else up to
 * 3.04 m, two; longer, two and one more for each 3.04 m or fraction beyond the first 3.04 m. Meters and kilograms
 * decide: 10 ft is 3.048 m and takes three. No exception for special methods was read, so the count always binds.
 */
export function countOf(read: ReadArticle, working: Working): number {
  const { rows } = thresholds;
  const counted = countByLength(read, rows);
  if (working.shown) {
    cite(working, CLAUSE, rows['length-step'].provenance);
    showCountByLength(working, read, rows, counted, clauseOf(CLAUSE), SPECIAL_METHODS);
  }
  return counted.count;
}

const SPECIAL_METHODS: Words = [
  'SPECIAL_METHODS_NOT_READ',
  '{article} is stated as fastened by special methods; no exception for that was read here, so the count binds.',
];
