import { compareExactSums, utilizationOf } from '../../../quantities/exact.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { compareRated } from '../../../assembly/rate-part.js';
import type { Check } from '../../../working/check.js';
import { note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { ReadArticle } from '../../plan.js';
import type { RatedTieDown } from './393-108-weakest-part.js';
import { cite, threshold } from './parameters.js';

/**
 * What haulers do beyond the regulation, and what a handbook of the agency asks. None of it is a clause of
 * 49 CFR 393, and none of it decides the verdict.
 */
export function practiceChecks(read: ReadArticle, heavy: boolean, recommended: number, byLength: number, rule: string, counted: readonly RatedTieDown[], working: Working): Check[] {
  const { article } = read;
  const checks: Check[] = [];
  const base = { clause: 'common practice', weight: 'practice', subject: article.id } as const;
  checks.push({
    ...base,
    id: `practice/count/${article.id}`,
    title: `${recommended} tie-downs, as haulers do`,
    ...countRatio(recommended, counted.length),
  });
  if (rule === '393.128' && byLength > 2) {
    checks.push({
      ...base,
      id: `practice/length/${article.id}`,
      title: 'Count by length under 393.128, where readings differ',
      ...countRatio(byLength, counted.length),
    });
  }
  const chains = counted.flatMap(({ tieDown }) => (tieDown.parts ?? []).filter((part) => part.kind === 'chain'));
  if (chains.length > 0) {
    const light = chains.filter(({ grade, markedWll, capacities }) => grade === undefined ? markedWll === undefined && capacities === undefined : grade < 70);
    checks.push({
      ...base,
      id: `practice/grade/${article.id}`,
      title: 'Chain of grade 70 or higher, as haulers do',
      verdict: light.length === 0 ? 'pass' : 'fail',
      because: light.length === 0 ? note(GRADE_70) : note(BELOW_GRADE_70, { chains: light.map(({ id }) => id).join(', ') }),
    });
  }
  const weakest = heavy ? leastOf(counted) : undefined;
  if (weakest !== undefined) {
    const floor = threshold('handbook-tie-down-wll');
    cite(working, "Driver's Handbook on Cargo Securement, chapter 10", 'read', 'a handbook of the agency, not the regulation');
    checks.push({
      ...base,
      clause: floor.clause,
      id: `practice/handbook/${article.id}`,
      title: 'Each tie-down at least 5000 lb, by the handbook',
      verdict: compareExactSums([{ quantity: floor }], [{ quantity: weakest }]) <= 0 ? 'pass' : 'fail',
      demand: { value: floor.value, unit: floor.unit },
      capacity: weakest,
      utilization: utilizationOf([{ quantity: floor }], [{ quantity: weakest }]),
    });
  }
  return checks;
}

/** A count held against what there is: whole numbers, so the comparison is exact as it stands. */
export function countRatio(demand: number, capacity: number): { verdict: 'pass' | 'fail'; demand: number; capacity: number; utilization: number | null } {
  return { verdict: demand <= capacity ? 'pass' : 'fail', demand, capacity, utilization: capacity === 0 ? null : demand / capacity };
}

function leastOf(tieDowns: readonly RatedTieDown[]): QuantityLike | undefined {
  let least: QuantityLike | undefined;
  for (const { workingLoadLimit } of tieDowns) {
    if (workingLoadLimit === null) return undefined;
    if (least === undefined || compareRated(workingLoadLimit, least) < 0) least = workingLoadLimit;
  }
  return least;
}

const GRADE_70 = { code: 'GRADE_70_OR_HIGHER', text: 'Every chain is grade 70 or higher, or carries its own mark.' };
const BELOW_GRADE_70 = { code: 'BELOW_GRADE_70', text: 'Below grade 70 or unmarked: {chains}. Lawful at its rating; haulers use grade 70 or higher.' };
