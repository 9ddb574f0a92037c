import { compareExact } from '../../../quantities/exact.js';
import { caNsc102013Thresholds as thresholds } from '../../../tables/generated/ca-nsc10-2013-thresholds.js';
import { type Check, countCheck, undeterminedCheck } from '../../../working/check.js';
import type { Working } from '../../../working/step.js';
import { checkBothEnds, checkCount } from '../../counting/checks.js';
import { ratingNotKnown } from '../../counting/rated-tie-down.js';
import type { ReadArticle } from '../../plan.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import type { CountOption } from '../../rule-set.js';
import { countOf } from './22-count.js';
import { aboutRule, cite, clauseOf } from './cite.js';

/** The rule an article falls under; the standard leaves no choice. */
export interface RuleOfArticle extends CountOption {
  readonly rule: 'section 22' | 'section 88(2)' | 'section 89';
  /** The count of section 22, whether it binds or not. */
  readonly byLength: number;
}

/**
 * Division 7, transport of vehicles: over 4,500 kg a machine or vehicle is heavy, section 89; exactly 4,500 kg is not.
 * A light one takes two tie-downs, front and rear, whatever section 22 says, section 88(2). Anything else is under
 * section 22.
 *
 * That 88(2) holds for light machines on wheels or tracks as it does for cars, and that a long heavy one takes no
 * fewer than section 22 asks, are interpretations.
 */
export function ruleOf(read: ReadArticle, working: Working): RuleOfArticle {
  const { article, mass } = read;
  const byLength = countOf(read, working);
  if (article.kind === 'general') return { rule: 'section 22', minimumCount: byLength, byLength };
  const { 'heavy-vehicle-mass': limit, 'heavy-vehicle-count': heavy, 'light-vehicle-count': light } = thresholds.rows;
  cite(working, limit.clause);
  if (compareExact(mass, limit) > 0) {
    cite(working, heavy.clause, heavy.provenance);
    if (byLength > heavy.value) cite(working, `${heavy.clause} with section 22: the larger count`, 'interpretation');
    return { rule: 'section 89', minimumCount: Math.max(heavy.value, byLength), byLength };
  }
  cite(working, light.clause);
  if (article.kind === 'machinery') cite(working, `${light.clause} for machines that are not heavy`, 'interpretation');
  return { rule: 'section 88(2)', minimumCount: light.value, byLength };
}

/** Number, ends and strength of single tie-downs, as the rule asks. */
export function checkTieDowns(
  { rule, minimumCount }: RuleOfArticle,
  article: string,
  counted: readonly TieDownRating[],
  working: Working,
): Check[] {
  const title = 'Number of tie-downs';
  switch (rule) {
    case 'section 22':
      return [checkCount(aboutRule(working, { clause: rule }, title, article, 'memory'), minimumCount, counted)];
    case 'section 88(2)': {
      const ends = aboutRule(working, { clause: rule, part: 'ends' }, 'Restraint at front and rear', article);
      return [
        checkCount(aboutRule(working, { clause: rule }, title, article), minimumCount, counted),
        checkBothEnds(ends, counted),
      ];
    }
    case 'section 89': {
      const { clause, provenance } = thresholds.rows['heavy-vehicle-count'];
      const about = aboutRule(working, { clause, part: 'count' }, title, article, provenance);
      return [checkCount(about, minimumCount, counted), checkStrong(article, counted, working)];
    }
  }
}

/** Division 7: four of them have a working load limit of 2,268 kg or more each, whatever they add up to. */
function checkStrong(article: string, counted: readonly TieDownRating[], working: Working): Check {
  const { value: least } = thresholds.rows['heavy-vehicle-count'];
  const { value, unit, clause, provenance } = thresholds.rows['heavy-vehicle-tie-down-wll'];
  const about = aboutRule(
    working,
    { clause, part: 'strength' },
    'Tie-downs strong enough for a heavy vehicle',
    article,
    provenance,
  );
  const floor = { value, unit };
  const reach = (limitOf: (tieDown: TieDownRating) => TieDownRating['capacity']) =>
    counted.filter((each) => {
      const limit = limitOf(each);
      return limit !== null && compareExact(limit, floor) >= 0;
    }).length;
  const strong = reach(({ capacity }) => capacity);
  const most = reach(({ capacity, atMost }) => capacity ?? atMost ?? floor);
  if (working.shown) {
    working.step(
      article,
      'n strong enough',
      `count(WLL ≥ ${value} ${unit})`,
      counted.map(({ tieDown, capacity }) => [tieDown.id, capacity] as const),
      strong,
      clauseOf(clause),
    );
  }
  return strong < least && least <= most
    ? undeterminedCheck(about, [ratingNotKnown(counted)])
    : countCheck(about, least, strong);
}
