import { mapAt } from '../../../errors.js';
import { checkOneOf } from '../../../input-checks.js';
import { euEn12195_3_2001 } from '../../../tables/eu-en12195-3-2001.js';
import { type Check, undeterminedCheck } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { HEADINGS } from '../../forces/directions.js';
import { outcomeByForce } from '../../forces/outcome.js';
import { forceUnitOf } from '../../forces/sums.js';
import { countedTieDown, knownLoad, legsOf, rateTieDowns, runsOver } from '../../forces/tie-downs.js';
import { sharingCautions } from '../../forces/unequal-sharing.js';
import { type ArticleLayout, readLayout } from '../../layout.js';
import type { Plan, ReadArticle } from '../../plan.js';
import type { ArticleOutcome, CountedTieDown, PlanOutcome, RuleContext } from '../../rule-set.js';
import { aboutRule, STANDARD } from './cite.js';
import { frictionFactor } from './friction.js';
import { type Lashing, type Load, readLashing } from './lashing.js';
import { checkNumber } from './minimum-number.js';
import { recommendedCount, waysToSecure, weightOf } from './required-of-article.js';
import { applicability } from './scope.js';
import { checkSliding } from './sliding.js';
import { checkTilting } from './tilting.js';

/** Holds a plan against EN 12195-1: each article against sliding and tilting in four headings, and the least number. */
export function judgePlan(plan: Plan, _articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working, units } = context;
  const layouts = readLayout(plan);
  const ratings = rateTieDowns(
    euEn12195_3_2001,
    plan.tieDowns,
    working,
    'LC',
    forceUnitOf(units),
    `${STANDARD}, lashing capacity`,
  );
  const byTieDown = layouts.flatMap(({ tieDowns }) => tieDowns);
  const lashings = mapAt(ratings, 'tieDowns', (rating) => {
    const layout = byTieDown.find(({ tieDown }) => tieDown === rating.tieDown);
    return readLashing({ layout: layout as (typeof byTieDown)[number], rating }, context);
  });
  const checks: Check[] = plan.seaArea === undefined ? [] : [seaNotJudged(plan.seaArea, context)];
  const articles = mapAt(layouts, 'articles', (layout) => judgeArticle(layout, lashings, checks, context));
  noteCautions(layouts, lashings, working);
  return {
    applicability: applicability(plan.vehicle, working),
    articles,
    tieDowns: lashings.map((lashing) => resultOf(lashing, context)),
    checks,
    inspections: [],
  };
}

function judgeArticle(
  layout: ArticleLayout,
  all: readonly Lashing[],
  checks: Check[],
  context: RuleContext,
): ArticleOutcome {
  const { working } = context;
  const { article } = layout;
  const lashings = all.filter((lashing) => layout.tieDowns.includes(lashing.layout));
  const load: Load = {
    layout,
    weight: weightOf(article.id, layout.mass, context),
    friction: frictionFactor(article, working),
    lashings,
  };
  checks.push(
    ...HEADINGS.map((heading) => checkSliding(load, heading, context)),
    ...HEADINGS.map((heading) => checkTilting(load, heading, context)),
    checkNumber(article.id, lashings, working),
  );
  const options = waysToSecure(working);
  const overTopOnly = lashings.length > 0 && lashings.every(runsOver);
  const { rule, minimumCount } = options[overTopOnly ? 0 : 1] as (typeof options)[number];
  const count = lashings.filter(({ rating }) => rating.capacity?.value !== 0).length;
  return {
    ...outcomeByForce(article, rule, count),
    minimumCount,
    recommendedCount: recommendedCount(article, minimumCount, working),
    options,
  };
}

/** The coefficients here are those of the road. */
function seaNotJudged(area: string, { working }: RuleContext): Check {
  checkOneOf(area, ['A', 'B', 'C'], 'seaArea');
  const about = aboutRule(working, 'sea-leg', 'Forces of a sea leg', 'plan', 'acceleration coefficients');
  return undeterminedCheck(about, [note('SEA_NOT_ENTERED', { area })]);
}

/** What a lashing counts along itself: LC of each leg of a direct one, FT of each leg of one over the top. */
function resultOf({ layout, rating, capacity, tension }: Lashing, { units }: RuleContext): CountedTieDown {
  const load = knownLoad((tension ?? capacity).force);
  const counts = tension === undefined ? 'lashingCapacity' : 'pretension';
  return countedTieDown(rating, counts, load, legsOf(layout.tieDown), forceUnitOf(units));
}

function noteCautions(layouts: readonly ArticleLayout[], lashings: readonly Lashing[], { cautions }: Working): void {
  cautions.push(...layouts.flatMap(sharingCautions));
  if (lashings.some(runsOver) && layouts.some(({ article }) => article.kind !== 'general')) cautions.push(SETTLES);
  if (!lashings.every(runsOver)) cautions.push(SYMMETRICAL);
}
const SETTLES: Note = /* @__PURE__ */ note('OVER_TOP_ON_TIRES');
const SYMMETRICAL: Note = /* @__PURE__ */ note('SYMMETRICAL_LASHINGS');
