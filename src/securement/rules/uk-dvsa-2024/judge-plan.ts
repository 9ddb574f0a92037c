import { newRater } from '../../../assembly/rate-part.js';
import { newLog, noteAssumptions } from '../../../assembly/show-parts.js';
import { mapAt } from '../../../errors.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { ukDvsa2024Accelerations as accelerations } from '../../../tables/generated/uk-dvsa-2024-accelerations.js';
import { statedOnly } from '../../../tables/stated-only.js';
import { type Check, countCheck } from '../../../working/check.js';
import { type Note, note, type Words } from '../../../working/note.js';
import { HEADINGS } from '../../forces.js';
import { forceUnitOf, ratedLayouts } from '../../held.js';
import { type ArticleLayout, readLayout } from '../../layout.js';
import type { Article, Plan, ReadArticle } from '../../plan.js';
import { rateTieDown, type TieDownRating } from '../../rate-tie-down.js';
import type { Applicability, ArticleOutcome, CountedTieDown, PlanOutcome, RuleContext } from '../../rule-set.js';
import { showRating } from '../../show-rating.js';
import { sharingCautions } from '../../unequal-sharing.js';
import { aboutGuidance, citeGuidance, GUIDANCE } from './cite.js';
import { judgeForces } from './forces.js';
import { judgeAnchorages } from './one-lashing-per-anchorage.js';
import { adviseOnMixing } from './straps-and-chains.js';

/** Holds a plan against the guidance, article by article. */
export function judgePlan(plan: Plan, _articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working, units } = context;
  const unit = forceUnitOf(units);
  const layouts = readLayout(plan);
  const log = working.shown ? newLog() : undefined;
  // the guidance rates nothing by size: the maker's rating counts, which is taken to be the lashing capacity
  const rater = newRater(statedOnly('uk-dvsa-2024', '2024', 'lashingCapacity', accelerations.source), log);
  const ratings = mapAt(plan.tieDowns, 'tieDowns', (tieDown) => rateTieDown(rater, tieDown, working));
  if (log !== undefined) {
    for (const rating of ratings) showRating(working, rating, 'LC', unit, GUIDANCE);
    noteAssumptions(working, log);
  }
  const checks: Check[] = [judgeAnchorages(plan.tieDowns, working)];
  const outcomes = layouts.map((layout) => judgeArticle(layout, ratings, checks, context));
  working.cautions.push(NOT_LOOKED_AT);
  if (layouts.some(({ article }) => article.kind === 'machinery')) {
    citeGuidance(working, 'heavy plant', 'read', 'read in a page quoting it');
    working.cautions.push(HEAVY_PLANT);
  }
  return {
    applicability: NOT_DECIDED,
    articles: outcomes,
    tieDowns: ratings.map((rating) => countedTieDown(rating, layouts, unit)),
    checks,
    inspections: [],
  };
}

function judgeArticle(
  layout: ArticleLayout,
  ratings: readonly TieDownRating[],
  checks: Check[],
  { working, units }: RuleContext,
): ArticleOutcome {
  const { article } = layout;
  const held = ratedLayouts(layout, ratings);
  const sound = held.filter(({ rating }) => rating.damaged.length === 0);
  const recommended = recommendedCount(article);
  if (working.shown && article.blockedForward === undefined) {
    working.assumptions.push(note(TAKEN_AS_NOT_BLOCKED, { article: article.id }));
  }
  checks.push(
    ...judgeForces(layout, held, forceUnitOf(units), working),
    adviseOnMixing(
      article.id,
      held.map(({ rating }) => rating.tieDown),
      working,
    ),
    countCheck(
      {
        ...aboutGuidance('count', 'Number of tie-downs, as haulers do', article.id, 'practice'),
        clause: 'common practice',
      },
      recommended,
      sound.length,
    ),
  );
  working.cautions.push(...HEADINGS.flatMap((heading) => sharingCautions(layout, heading)));
  return {
    id: article.id,
    rule: 'forces on the load',
    count: sound.length,
    minimumCount: 0, // no number is asked
    recommendedCount: recommended,
    requiredAggregate: null,
    aggregate: null,
    options: [],
  };
}

/** Four for machines and vehicles, two for anything else: practice, the guidance as read asks for none. */
export const recommendedCount = ({ kind }: Pick<Article, 'kind'>): number => (kind === 'general' ? 2 : 4);

/** Direct ones by their maker's rating; one over the load, or one that holds an accessory, with nothing. */
function countedTieDown(
  { tieDown: { id, holds, path }, capacity, weakest }: TieDownRating,
  articles: readonly ArticleLayout[],
  unit: 'N' | 'lbf',
): CountedTieDown {
  const counts = path !== 'over-other-side' && articles.some(({ article }) => article.id === holds);
  const credit = counts ? 1 : 0;
  const rating = capacity === null ? null : ratedLoadIn(capacity, unit);
  const counted = rating === null ? null : { value: rating.value * credit, unit };
  return { id, holds, path, counts: 'lashingCapacity', rating, credit, counted, weakest };
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
const TAKEN_AS_NOT_BLOCKED: Words = [
  'TAKEN_AS_NOT_BLOCKED',
  '{article}: nothing is said of blocking, so nothing stops it from moving forward but its tie-downs.',
];
const HEAVY_PLANT: Note = /* @__PURE__ */ note([
  'HEAVY_PLANT_ON_LIGHT_VEHICLE',
  'Tractors and plant may not go on light goods vehicles or trailers (3500 kg or less), says a page quoting the guidance: ask.',
]);
const NOT_LOOKED_AT: Note = /* @__PURE__ */ note([
  'NOT_LOOKED_AT',
  'Not looked at: tipping, what blocks the load, whether an anchorage is one (hooks for ropes and sheets are not).',
]);
