import type { PartRater } from '../../../assembly/rate-part.js';
import { showSeries } from '../../../assembly/show-parts.js';
import { massUnitOf } from '../../../quantities/shared-units.js';
import { caNsc102013Unmarked as unmarkedRules } from '../../../tables/generated/ca-nsc10-2013-unmarked.js';
import { type Check, failedCheck, metCheck } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { isSound } from '../../counting/rated-tie-down.js';
import type { TieDown } from '../../plan.js';
import { rateTieDown, type TieDownRating } from '../../rate-tie-down.js';
import type { RuleContext } from '../../rule-set.js';
import { aboutRule, clauseOf } from './cite.js';
import { citeCredit } from './part-1-aggregate.js';

/** A tie-down with its rating under the standard. */
export interface MarkedTieDown extends TieDownRating {
  /** Ids of its parts that carry no mark: with one of them it counts as nothing. */
  readonly unmarked: readonly string[];
}

const CLAUSE = 'section 11(4)';

/** What stands for the tie-down itself. That none of them may be unmarked was read of tie-downs in general. */
const TIE_DOWN_KINDS = ['chain', 'webbing', 'wire-rope', 'fiber-rope', 'strapping'];

/**
 * The least of its parts and anchor points, as marked; a chain marked with its grade only counts by the table. 11(4):
 * one with a chain, webbing, rope or strapping that carries no mark counts as nothing. A mark that is not stated is
 * taken as none, as an illegible one is. A fitting or an anchor point without a mark is a missing fact.
 */
export function rateMarked(rater: PartRater, tieDown: TieDown, { working, units }: RuleContext): MarkedTieDown {
  const rating = rateTieDown(rater, tieDown, working);
  const { series } = rating;
  citeCredit(tieDown.path, working);
  const unit = massUnitOf(units);
  const subject = `tie-down ${tieDown.id}`;
  if (working.shown && series !== undefined) {
    showSeries(working, series, tieDown.parts ?? [], subject, unit, clauseOf('Part 1'));
  }
  const unmarked = rating.missing.filter(isUnmarked).map(({ params }) => String(params.part));
  if (unmarked.length === 0) return { ...rating, unmarked };
  const nothing = { value: 0, unit };
  working.step(
    subject,
    'WLL',
    `not marked: ${unmarkedRules.rows.chain['grade and WLL'].counts_as}`,
    unmarked.map((part) => [part, null] as const),
    nothing,
    clauseOf(CLAUSE),
  );
  const missing = rating.missing.filter((fact) => !isUnmarked(fact));
  return { ...rating, capacity: nothing, weakest: unmarked, missing, unmarked };
}

function isUnmarked({ code, params }: Note): boolean {
  return code === 'PART_NOT_MARKED' && TIE_DOWN_KINDS.includes(String(params.kind));
}

/** Neither damaged nor unmarked: it may be used, and counts in the number. */
export const mayBeUsed = (tieDown: MarkedTieDown): boolean => isSound(tieDown) && tieDown.unmarked.length === 0;

/** 11(4): since 2010 no tie-down may be used that is not marked. */
export function checkMarked(tieDowns: readonly MarkedTieDown[], working: Working): Check {
  const about = aboutRule(working, { clause: CLAUSE }, 'Every tie-down marked', 'tie-downs');
  const parts = tieDowns.flatMap(({ tieDown, unmarked }) => unmarked.map((part) => `${tieDown.id} ${part}`));
  return parts.length === 0
    ? metCheck(about)
    : failedCheck(about, note('UNMARKED_TIE_DOWN', { parts: parts.join(', ') }));
}
