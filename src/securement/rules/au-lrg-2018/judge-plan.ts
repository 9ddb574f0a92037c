import { newRater } from '../../../assembly/rate-part.js';
import { newLog, noteAssumptions } from '../../../assembly/show-parts.js';
import { mapAt } from '../../../errors.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { auLrg_2018_chain } from '../../../tables/au-lrg-2018-chain.js';
import type { Check } from '../../../working/check.js';
import { type Note, note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { HEADINGS } from '../../forces.js';
import { forceUnitOf, pretensionOf, type RatedLayout, ratedLayouts, type SumUnit } from '../../held.js';
import { type ArticleLayout, readLayout } from '../../layout.js';
import type { Plan, ReadArticle } from '../../plan.js';
import { rateTieDown, type TieDownRating } from '../../rate-tie-down.js';
import type { Applicability, ArticleOutcome, CountedTieDown, PlanOutcome, RuleContext } from '../../rule-set.js';
import { showRating } from '../../show-rating.js';
import { sharingCautions } from '../../unequal-sharing.js';
import { GUIDE, SCHEDULE_7 } from './cite.js';
import { adviseOnPlant, recommendedCount } from './plant-advice.js';
import { adviseLeastPretension, judgeAgainstCapacity } from './pretension.js';
import { judgeRestraint } from './schedule-7-restraint.js';

/** Holds a plan against the loading performance standards, article by article, by the methods of the guide. */
export function judgePlan(plan: Plan, _articles: readonly ReadArticle[], { working, units }: RuleContext): PlanOutcome {
  const unit = forceUnitOf(units);
  const layouts = readLayout(plan);
  const log = working.shown ? newLog() : undefined;
  const rater = newRater(auLrg_2018_chain, log);
  const ratings = mapAt(plan.tieDowns, 'tieDowns', (tieDown) => rateTieDown(rater, tieDown, working));
  if (log !== undefined) {
    for (const rating of ratings) showRating(working, rating, 'LC', unit, GUIDE);
    for (const source of log.sources) working.cite(source);
    noteAssumptions(working, log);
    if (log.sources.length > 0) working.cautions.push(CHAIN_FROM_MEMORY);
  }
  const checks: Check[] = [];
  const outcomes = mapAt(layouts, 'articles', (layout) =>
    judgeArticle(layout, ratedLayouts(layout, ratings), checks, unit, working),
  );
  working.cautions.push(NOT_LOOKED_AT);
  return {
    applicability: NOT_DECIDED,
    articles: outcomes,
    tieDowns: ratings.map((rating) => countedTieDown(rating, layouts, unit)),
    checks,
    inspections: [],
  };
}

function judgeArticle(
  article: ArticleLayout,
  held: readonly RatedLayout[],
  checks: Check[],
  unit: SumUnit,
  working: Working,
): ArticleOutcome {
  const {
    article: { id, ...rest },
  } = article;
  const isOver = ({ layout }: RatedLayout) => layout.tieDown.path === 'over-other-side';
  const over = held.filter(isOver);
  const direct = held.filter((each) => !isOver(each));
  const sound = held.filter(({ rating }) => rating.damaged.length === 0);
  if (working.shown) {
    if (rest.blockedForward === undefined) working.assumptions.push(note(TAKEN_AS_NOT_BLOCKED, { article: id }));
    if (over.length > 0) working.assumptions.push(note(AVERAGE_PRETENSION, { tieDowns: namesOf(over) }));
  }
  checks.push(
    ...judgeRestraint({ article, direct, over, unit, working }),
    ...over.map((each) => judgeAgainstCapacity(each, unit, working)),
    ...held.flatMap((each) => adviseLeastPretension(each, unit, working)),
    ...adviseOnPlant(article.article, sound, working),
  );
  if (rest.blockedForward === true) working.cautions.push(note(BLOCKING_NOT_LOOKED_AT, { article: id }));
  working.cautions.push(...HEADINGS.flatMap((heading) => sharingCautions(article, heading)));
  return {
    id,
    rule: 'Schedule 7',
    count: sound.length,
    minimumCount: 0, // no number is asked
    recommendedCount: recommendedCount(article.article),
    requiredAggregate: null,
    aggregate: null,
    options: [],
  };
}

const namesOf = (tieDowns: readonly RatedLayout[]): string =>
  tieDowns.map(({ layout }) => layout.tieDown.id).join(', ');

/** By its pretension over the load, by its lashing capacity direct; one that holds an accessory counts for no article. */
function countedTieDown(
  { tieDown, capacity, weakest }: TieDownRating,
  articles: readonly ArticleLayout[],
  unit: 'N' | 'lbf',
): CountedTieDown {
  const { id, holds, path } = tieDown;
  const over = path === 'over-other-side';
  const counted = over ? pretensionOf(tieDown).known : capacity;
  const rating = counted === null ? null : ratedLoadIn(counted, unit);
  const credit = articles.some(({ article }) => article.id === holds) ? 1 : 0;
  return {
    id,
    holds,
    path,
    counts: over ? 'pretension' : 'lashingCapacity',
    rating,
    credit,
    counted: rating === null ? null : { value: rating.value * credit, unit },
    weakest: over ? [] : weakest,
  };
}

const NOT_DECIDED: Applicability = {
  verdict: 'undetermined',
  because: {
    code: 'SCOPE_NOT_DECIDED',
    params: {},
    text: 'Written for heavy vehicles; light ones have a guide of their own. The plan is checked as if it applied.',
  },
  clause: SCHEDULE_7,
};
const TAKEN_AS_NOT_BLOCKED: Words = [
  'TAKEN_AS_NOT_BLOCKED',
  '{article}: nothing is said of blocking, so nothing stops it from moving forward but its tie-downs.',
];
const AVERAGE_PRETENSION: Words = [
  'AVERAGE_PRETENSION',
  'The stated pretension is the average of both sides: {tieDowns}. On the far side of the tensioner it is less.',
];
const BLOCKING_NOT_LOOKED_AT: Words = [
  'BLOCKING_NOT_LOOKED_AT',
  '{article}: what blocks it must hold it forward by itself; its strength was not looked at.',
];
const CHAIN_FROM_MEMORY: Note = /* @__PURE__ */ note([
  'CHAIN_FROM_MEMORY',
  'Lashing capacities from the table are recalled, not read; the tag on the chain decides.',
]);
const NOT_LOOKED_AT: Note = /* @__PURE__ */ note([
  'NOT_LOOKED_AT',
  'Not looked at: tipping, limited vertical displacement, what blocks the load, hooks that cut the capacity of a chain.',
]);
