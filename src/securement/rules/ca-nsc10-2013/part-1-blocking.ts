import { inUnit } from '../../../quantities/convert.js';
import { massUnitOf } from '../../../quantities/shared-units.js';
import { caNsc102013Thresholds as thresholds } from '../../../tables/generated/ca-nsc10-2013-thresholds.js';
import { note } from '../../../working/note.js';
import type { ReadArticle } from '../../plan.js';
import type { RuleContext } from '../../rule-set.js';
import { cite, clauseOf } from './cite.js';

/**
 * Part 1: what blocks an article forward has a working load limit of at least 0.5 · W. A plan does not state the
 * strength of its blocking, so the figure is shown and a caution says that nothing is held against it.
 */
export function showBlocking({ article, mass }: ReadArticle, { working, units }: RuleContext): void {
  if (article.blockedForward !== true) return;
  const { value: share, clause, provenance } = thresholds.rows['blocking-fraction'];
  const weight = inUnit(mass, massUnitOf(units));
  const required = { value: weight.value * share, unit: weight.unit };
  working.cautions.push(note('BLOCKING_NOT_CHECKED', { article: article.id, required }));
  if (!working.shown) return;
  cite(working, `${clause}, blocking`, provenance);
  working.step(article.id, 'WLL of the blocking', `${share} · W`, { W: weight }, required, clauseOf(clause));
}
