import { mapAt } from '../../../errors.js';
import { auLrg_2018_chain } from '../../../tables/au-lrg-2018-chain.js';
import type { Check } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import { outcomeByForce } from '../../forces/outcome.js';
import { forceUnitOf } from '../../forces/sums.js';
import {
  byCapacity,
  byPretension,
  countedTieDown,
  knownLoad,
  namesOf,
  ratedLayouts,
  rateTieDowns,
  runsOver,
} from '../../forces/tie-downs.js';
import { sharingCautions } from '../../forces/unequal-sharing.js';
import { type ArticleLayout, readLayout } from '../../layout.js';
import type { Plan, ReadArticle } from '../../plan.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import type { Applicability, ArticleOutcome, CountedTieDown, PlanOutcome, RuleContext } from '../../rule-set.js';
import { GUIDE, SCHEDULE_7 } from './cite.js';
import { adviseOnPlant } from './plant-advice.js';
import { adviseLeastPretension, judgeAgainstCapacity } from './pretension.js';
import { judgeRestraint } from './schedule-7-restraint.js';

/** Holds a plan against the loading performance standards, article by article, by the methods of the guide. */
export function judgePlan(plan: Plan, _articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working, units } = context;
  const layouts = readLayout(plan);
  const ratings = rateTieDowns(auLrg_2018_chain, plan.tieDowns, working, 'LC', forceUnitOf(units), GUIDE);
  const fromTable = ratings.some(({ series }) => series?.limits.some(({ provenance }) => provenance !== undefined));
  if (fromTable) working.cautions.push(CHAIN_FROM_MEMORY);
  const checks: Check[] = [];
  const articles = mapAt(layouts, 'articles', (layout) => judgeArticle(layout, ratings, checks, context));
  working.cautions.push(NOT_LOOKED_AT);
  const ids = layouts.map(({ article }) => article.id);
  return {
    applicability: NOT_DECIDED,
    articles,
    tieDowns: ratings.map((rating) => resultOf(rating, ids, context)),
    checks,
    inspections: [],
  };
}

function judgeArticle(
  layout: ArticleLayout,
  ratings: readonly TieDownRating[],
  checks: Check[],
  context: RuleContext,
): ArticleOutcome {
  const { working } = context;
  const { article } = layout;
  const { id, blockedForward } = article;
  // one that holds an accessory is no restraint of the machine
  const held = ratedLayouts(layout, ratings).filter(({ rating }) => rating.tieDown.holds === id);
  const over = held.filter(runsOver);
  const direct = held.filter((each) => !runsOver(each));
  const sound = held.filter(({ rating }) => rating.damaged.length === 0);
  if (working.shown) {
    if (blockedForward === undefined) working.assumptions.push(note('TAKEN_AS_NOT_BLOCKED', { article: id }));
    if (over.length > 0) working.assumptions.push(note('AVERAGE_PRETENSION', { tieDowns: namesOf(over) }));
  }
  const restraint = { article: layout, direct: direct.map(byCapacity), over: over.map(byPretension), context };
  checks.push(
    ...judgeRestraint(restraint),
    ...over.map((each) => judgeAgainstCapacity(each, context)),
    ...held.flatMap((each) => adviseLeastPretension(each, context)),
    ...adviseOnPlant(article, sound, working),
  );
  if (blockedForward === true) working.cautions.push(note('BLOCKING_NOT_LOOKED_AT', { article: id }));
  working.cautions.push(...sharingCautions(layout));
  return outcomeByForce(article, 'Schedule 7', sound.length);
}

/** By its pretension over the load, by its lashing capacity direct; one that holds an accessory counts for no article. */
function resultOf(rating: TieDownRating, articles: readonly string[], { units }: RuleContext): CountedTieDown {
  const { tieDown, capacity } = rating;
  const credit = articles.includes(tieDown.holds) ? 1 : 0;
  const layout = { tieDown, runs: [] };
  if (!runsOver({ layout })) return countedTieDown(rating, 'lashingCapacity', capacity, credit, forceUnitOf(units));
  const load = knownLoad(byPretension({ layout }).force);
  return { ...countedTieDown(rating, 'pretension', load, credit, forceUnitOf(units)), weakest: [] };
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
const CHAIN_FROM_MEMORY: Note = /* @__PURE__ */ note('CHAIN_FROM_MEMORY');
const NOT_LOOKED_AT: Note = /* @__PURE__ */ note('LRG_NOT_LOOKED_AT');
