import type { PartRater } from '../../../assembly/rate-part.js';
import { showSeries } from '../../../assembly/show-parts.js';
import { massUnitOf } from '../../../quantities/shared-units.js';
import type { Check } from '../../../working/check.js';
import { note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { checkRated } from '../../counting/checks.js';
import type { TieDown } from '../../plan.js';
import { rateTieDown, type TieDownRating } from '../../rate-tie-down.js';
import type { RuleContext } from '../../rule-set.js';
import { aboutRule } from './cite.js';

/**
 * 393.108(a): the working load limit of a tie-down is the least of its components, tensioner included, and of
 * the anchor points it is fixed to. (b)-(g): the maker's mark governs; without one the tables do, and an
 * unmarked chain counts as grade 30.
 */
export function rateByWeakest(rater: PartRater, tieDown: TieDown, { working, units }: RuleContext): TieDownRating {
  const rating = rateTieDown(rater, tieDown, working);
  const { series, capacity } = rating;
  const { id, parts = [] } = tieDown;
  if (working.shown && series !== undefined) {
    showSeries(working, series, parts, `tie-down ${id}`, massUnitOf(units), '49 CFR 393.108(a)');
  }
  if (series !== undefined || capacity !== null) return rating;
  return { ...rating, missing: [note('NO_WORKING_LOAD_LIMIT', { tieDown: id })] };
}

/** 393.108(a) for one article: every tie-down rated, or what is missing, unless strength, number and ends are enough without it. */
export function checkEveryPart(
  article: string,
  holding: readonly TieDownRating[],
  enough: boolean,
  working: Working,
): Check {
  return checkRated(aboutRule(working, '393.108(a)', 'Every part and anchor point rated', article), holding, enough);
}
