import { inUnit } from '../../../quantities/convert.js';
import { caNsc102013Thresholds as thresholds } from '../../../tables/generated/ca-nsc10-2013-thresholds.js';
import { note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { type CountByLength, countByLength } from '../../counting/count-by-length.js';
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
  const { count, because } = countByLength(read, {
    oneLength: rows['one-tie-down-length'],
    oneMass: rows['one-tie-down-mass'],
    twoLength: rows['two-tie-down-length'],
    step: rows['length-step'],
  });
  if (!working.shown) return count;
  const { article, length, mass } = read;
  cite(working, CLAUSE, rows['length-step'].provenance);
  working.step(
    article.id,
    'n by length',
    expressionOf(because),
    [['L', inUnit(length, 'm')], ...(because.startsWith('short') ? [['W', inUnit(mass, 'kg')] as const] : [])],
    count,
    clauseOf(CLAUSE),
  );
  if (article.blockedForward === undefined) working.assumptions.push(note(NOT_BLOCKED, { article: article.id }));
  if (article.specialMethods === true) working.assumptions.push(note(SPECIAL_METHODS, { article: article.id }));
  return count;
}

function expressionOf(because: CountByLength['because']): string {
  const { rows } = thresholds;
  const [one, two] = [rows['one-tie-down-length'].value, rows['two-tie-down-length'].value];
  const [mass, step] = [rows['one-tie-down-mass'].value, rows['length-step'].value];
  switch (because) {
    case 'blocked forward':
      return `ceil(L / ${step} m), blocked forward`;
    case 'short and light':
      return `1 for L ≤ ${one} m and W ≤ ${mass} kg`;
    case 'short and heavy':
      return `2 for L ≤ ${one} m and W > ${mass} kg`;
    case 'middle':
      return `2 for ${one} m < L ≤ ${two} m`;
    case 'long':
      return `2 + ceil((L − ${two} m) / ${step} m)`;
  }
}

const NOT_BLOCKED: Words = ['NOT_BLOCKED_FORWARD', '{article} is taken as not blocked forward.'];
const SPECIAL_METHODS: Words = [
  'SPECIAL_METHODS_NOT_READ',
  '{article} is stated as fastened by special methods; no exception for that was read here, so the count binds.',
];
