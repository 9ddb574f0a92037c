import { mapAt } from '../../../errors.js';
import { marksAlone } from '../../../tables/rating-table.js';
import type { Check } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import { outcomeByForce } from '../../forces/outcome.js';
import { forceUnitOf } from '../../forces/sums.js';
import { countedTieDown, ratedLayouts, rateTieDowns } from '../../forces/tie-downs.js';
import { sharingCautions } from '../../forces/unequal-sharing.js';
import { type ArticleLayout, readLayout } from '../../layout.js';
import type { Plan, ReadArticle } from '../../plan.js';
import { adviseOnCount, usualCount } from '../../practice.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import type { Applicability, ArticleOutcome, PlanOutcome, RuleContext } from '../../rule-set.js';
import { citeGuidance, GUIDANCE } from './cite.js';
import { judgeForces } from './forces.js';
import { judgeAnchorages } from './one-lashing-per-anchorage.js';
import { adviseOnMixing } from './straps-and-chains.js';

/** Holds a plan against the guidance, article by article. */
export function judgePlan(plan: Plan, _articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working, units } = context;
  const unit = forceUnitOf(units);
  const layouts = readLayout(plan);
  // the guidance rates nothing by size: the maker's rating counts, which is taken to be the lashing capacity
  const table = marksAlone('lashingCapacity', 'uk-dvsa-2024');
  const ratings = rateTieDowns(table, plan.tieDowns, working, 'LC', unit, GUIDANCE);
  const checks: Check[] = [judgeAnchorages(plan.tieDowns, working)];
  const outcomes = mapAt(layouts, 'articles', (layout) => judgeArticle(layout, ratings, checks, context));
  working.cautions.push(NOT_LOOKED_AT);
  if (layouts.some(({ article }) => article.kind === 'machinery')) {
    citeGuidance(working, 'heavy plant', 'read', 'read in a page quoting it');
    working.cautions.push(HEAVY_PLANT);
  }
  return {
    applicability: NOT_DECIDED,
    articles: outcomes,
    // direct ones by their maker's rating; one over the load, or one that holds an accessory, with nothing
    tieDowns: ratings.map((rating) => {
      const { holds, path } = rating.tieDown;
      const counts = path !== 'over-other-side' && layouts.some(({ article }) => article.id === holds);
      return countedTieDown(rating, 'lashingCapacity', rating.capacity, counts ? 1 : 0, unit);
    }),
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
  // one that holds an accessory is no restraint of the machine
  const held = ratedLayouts(layout, ratings).filter(({ rating }) => rating.tieDown.holds === article.id);
  const sound = held.filter(({ rating }) => rating.damaged.length === 0);
  if (working.shown && article.blockedForward === undefined) {
    working.assumptions.push(note('TAKEN_AS_NOT_BLOCKED', { article: article.id }));
  }
  const tieDowns = held.map(({ rating }) => rating.tieDown);
  checks.push(
    ...judgeForces(layout, held, context),
    adviseOnMixing(article.id, tieDowns, working),
    adviseOnCount(article.id, usualCount(article), sound.length),
  );
  working.cautions.push(...sharingCautions(layout));
  return outcomeByForce(article, 'forces on the load', sound.length);
}

const NOT_DECIDED: Applicability = {
  verdict: 'undetermined',
  because: {
    code: 'SCOPE_NOT_DECIDED',
    params: {},
    text: 'Guidance for goods vehicles; whether yours is one was not decided. The plan is checked as if it applied.',
  },
  clause: GUIDANCE,
};
const HEAVY_PLANT: Note = /* @__PURE__ */ note('HEAVY_PLANT_ON_LIGHT_VEHICLE');
const NOT_LOOKED_AT: Note = /* @__PURE__ */ note('UK_NOT_LOOKED_AT');
