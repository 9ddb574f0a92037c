import { checkOneOf } from '../../../input-checks.js';
import { compareExact } from '../../../quantities/exact.js';
import { us49cfr393Thresholds as thresholds } from '../../../tables/generated/us-49cfr393-thresholds.js';
import type { Working } from '../../../working/step.js';
import type { ReadArticle } from '../../plan.js';
import type { CountOption } from '../../rule-set.js';
import { countOf } from './393-110-count.js';
import { cite } from './cite.js';

/** The rules open for an article: the weight class and each lawful way with its count, the least demanding first. */
export interface OpenRules {
  /** 393.130 binds it: a machine of 10,000 lb or more, or a vehicle too heavy for 393.128. */
  readonly heavy: boolean;
  readonly byLength: number;
  readonly options: readonly CountOption[];
}

/**
 * Which rule an article falls under, 393.106(a), 393.128(a) and 393.130(a).
 *
 * A machine on wheels or tracks of 10,000 lb **or more** is under 393.130; below that the hauler may secure it
 * under 393.130, under 393.128 or under the general rules. A car, light truck or van of 10,000 lb **or less**
 * is under 393.128. At exactly 10,000 lb the kind of thing decides. Anything else is under 393.110.
 *
 * For 393.130 the count is max(4, count by length); that the count by length also binds is an interpretation.
 */
export function openRules(read: ReadArticle, working: Working): OpenRules {
  const { article, mass } = read;
  const { rows } = thresholds;
  const byLength = countOf(read, working);
  const general: CountOption = { rule: '393.110', minimumCount: byLength };
  let heavy = false;
  let options: readonly CountOption[] = [general];
  if (article.kind !== 'general') {
    const { value: four } = rows['heavy-machinery-count'];
    const machine: CountOption = { rule: '393.130', minimumCount: Math.max(four, byLength) };
    const vehicle: CountOption = { rule: '393.128', minimumCount: rows['light-vehicle-count'].value };
    const isMachine = article.kind === 'machinery';
    heavy = isMachine
      ? compareExact(mass, rows['heavy-machinery-mass']) >= 0
      : compareExact(mass, rows['light-vehicle-mass']) > 0;
    cite(working, isMachine || heavy ? '393.130(a)' : '393.128(a)');
    if (heavy && byLength > four) cite(working, '393.130(c) with 393.110: max(4, count by length)', 'interpretation');
    if (heavy) options = [machine];
    else if (!isMachine) options = [vehicle];
    else options = byLength <= vehicle.minimumCount ? [general, vehicle, machine] : [vehicle, general, machine];
  }
  const { securedUnder } = article;
  if (securedUnder !== undefined) {
    const rules = options.map(({ rule }) => rule);
    checkOneOf(securedUnder, rules, 'securedUnder');
    options = options.filter(({ rule }) => rule === securedUnder);
  }
  return { heavy, byLength, options };
}
