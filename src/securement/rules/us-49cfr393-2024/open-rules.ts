import { fail } from '../../../errors.js';
import { compareExact } from '../../../quantities/exact.js';
import type { Working } from '../../../working/step.js';
import type { ReadArticle } from '../../plan.js';
import type { CountOption } from '../../rule-set.js';
import { countByLength } from './393-110-count.js';
import { cite, parameter, threshold } from './parameters.js';

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
  const { article, mass, path } = read;
  const byLength = countByLength(read, working);
  const four = Math.max(parameter('heavy-machinery-count'), byLength);
  const lightVehicleCount = parameter('light-vehicle-count');
  let heavy = false;
  let options: CountOption[] = [{ rule: '393.110', minimumCount: byLength }];
  if (article.kind === 'machinery') {
    heavy = compareExact(mass, threshold('heavy-machinery-mass')) >= 0;
    cite(working, '393.130(a)');
    if (heavy) options = [{ rule: '393.130', minimumCount: four }];
    else {
      options.push({ rule: '393.128', minimumCount: lightVehicleCount }, { rule: '393.130', minimumCount: four });
      options.sort((a, b) => a.minimumCount - b.minimumCount);
    }
  } else if (article.kind === 'light-vehicle') {
    heavy = compareExact(mass, threshold('light-vehicle-mass')) > 0;
    cite(working, heavy ? '393.130(a)' : '393.128(a)');
    options = heavy ? [{ rule: '393.130', minimumCount: four }] : [{ rule: '393.128', minimumCount: lightVehicleCount }];
  }
  if (heavy && four > parameter('heavy-machinery-count')) {
    cite(working, '393.130(c) with 393.110', 'interpretation', 'max(4, count by length)');
  }
  if (article.securedUnder !== undefined) {
    const chosen = options.filter(({ rule }) => rule === article.securedUnder);
    if (chosen.length === 0) {
      fail('UNKNOWN_VALUE', `${path}.securedUnder`, `a rule open for it: ${options.map(({ rule }) => rule).join(', ')}`, article.securedUnder, 'Leave it out to be judged under the least demanding one.');
    }
    options = chosen;
  }
  return { heavy, byLength, options };
}

/** Four for machines and vehicles, two for anything else: practice, never below what the law asks. */
export function recommendedCount({ article }: ReadArticle, minimumCount: number): number {
  return Math.max(article.kind === 'general' ? 2 : 4, minimumCount);
}
