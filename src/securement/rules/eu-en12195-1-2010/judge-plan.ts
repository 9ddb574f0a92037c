import { newRater } from '../../../assembly/rate-part.js';
import { newLog, noteAssumptions } from '../../../assembly/show-parts.js';
import { mapAt } from '../../../errors.js';
import { checkOneOf } from '../../../input-checks.js';
import type { UnitSystem } from '../../../quantities/units.js';
import { euEn12195_3_2001 } from '../../../tables/eu-en12195-3-2001.js';
import { type Check, undeterminedCheck } from '../../../working/check.js';
import { type Note, note, type Words } from '../../../working/note.js';
import { HEADINGS } from '../../forces.js';
import { type ArticleLayout, readLayout } from '../../layout.js';
import type { Plan, ReadArticle } from '../../plan.js';
import type { ArticleOutcome, CountedTieDown, PlanOutcome, RuleContext } from '../../rule-set.js';
import { sharingCautions } from '../../unequal-sharing.js';
import { aboutRule } from './cite.js';
import { frictionOf } from './friction.js';
import { type Lashing, readLashing } from './lashing.js';
import type { Load } from './load.js';
import { checkNumber } from './minimum-number.js';
import type { Range } from './range.js';
import { recommendedCount, waysToSecure, weightOf } from './required-of-article.js';
import { applicability } from './scope.js';
import { shown } from './settle.js';
import { checkSliding } from './sliding.js';
import { checkTilting } from './tilting.js';

/** Holds a plan against EN 12195-1: each article against sliding and tilting in four headings, and the least number. */
export function judgePlan(plan: Plan, _articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working, units } = context;
  const layouts = readLayout(plan);
  const log = working.shown ? newLog() : undefined;
  const rater = newRater(euEn12195_3_2001, log);
  const byTieDown = layouts.flatMap(({ tieDowns }) => tieDowns);
  const lashings = mapAt(plan.tieDowns, 'tieDowns', (tieDown) => {
    const layout = byTieDown.find((each) => each.tieDown === tieDown);
    return readLashing(rater, layout as (typeof byTieDown)[number], working);
  });
  if (log !== undefined) {
    for (const source of log.sources) working.cite(source);
    noteAssumptions(working, log);
  }
  const checks: Check[] = plan.seaArea === undefined ? [] : [seaNotJudged(plan.seaArea, context)];
  const articles = mapAt(layouts, 'articles', (layout) => judgeArticle(layout, lashings, checks, context));
  noteCautions(layouts, lashings, context);
  return {
    applicability: applicability(plan.vehicle, working),
    articles,
    tieDowns: lashings.map((lashing) => countedTieDown(lashing, units)),
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
  const lashings = all.filter(({ tieDown }) => layout.tieDowns.some((each) => each.tieDown === tieDown));
  const friction = frictionOf(article, working);
  const load: Load = { layout, weight: weightOf(article.id, layout.mass, working), friction, lashings };
  checks.push(
    ...HEADINGS.map((heading) => checkSliding(load, heading, context)),
    ...HEADINGS.map((heading) => checkTilting(load, heading, context)),
    checkNumber(article.id, lashings, working),
  );
  const options = waysToSecure(working);
  const overTopOnly = lashings.length > 0 && lashings.every(({ method }) => method === 'over-top');
  const { rule, minimumCount } = options[overTopOnly ? 0 : 1] as (typeof options)[number];
  return {
    id: article.id,
    rule,
    count: lashings.filter(({ rating }) => rating.capacity?.value !== 0).length,
    minimumCount,
    recommendedCount: recommendedCount(article, minimumCount, working),
    requiredAggregate: null,
    aggregate: null,
    options,
  };
}

/** The coefficients here are those of the road. */
function seaNotJudged(area: string, { working }: RuleContext): Check {
  checkOneOf(area, ['A', 'B', 'C'], 'seaArea');
  const about = aboutRule(working, 'sea-leg', 'Forces of a sea leg', 'plan', 'acceleration coefficients');
  return undeterminedCheck(about, [note(SEA_NOT_ENTERED, { area })]);
}

/** What a lashing counts along itself: LC of each leg of a direct one, FT of each leg of one over the top. */
function countedTieDown(lashing: Lashing, units: UnitSystem): CountedTieDown {
  const { tieDown, method, rating, legs, capacity, tension } = lashing;
  const { id, holds, path } = tieDown;
  const overTop = method === 'over-top';
  const force = known(overTop ? tension : capacity);
  return {
    id,
    holds,
    path,
    counts: overTop ? 'pretension' : 'lashingCapacity',
    rating: force === null ? null : shown(force, units),
    credit: legs,
    counted: force === null ? null : shown(legs * force, units),
    weakest: rating.weakest,
  };
}

const known = ({ least, most }: Range): number | null => (least === most ? least : null);

function noteCautions(layouts: readonly ArticleLayout[], lashings: readonly Lashing[], context: RuleContext): void {
  const { cautions } = context.working;
  for (const layout of layouts) {
    for (const heading of HEADINGS) cautions.push(...sharingCautions(layout, heading));
  }
  for (const { tieDown, rating } of lashings) {
    if (rating.damaged.length === 0) continue;
    cautions.push(note(DAMAGED, { tieDown: tieDown.id, parts: rating.damaged.join(', ') }));
  }
  const overTop = lashings.some(({ method }) => method === 'over-top');
  if (overTop && layouts.some(({ article }) => article.kind !== 'general')) cautions.push(SETTLES);
  if (lashings.some(({ method }) => method === 'direct')) cautions.push(SYMMETRICAL);
}

const SEA_NOT_ENTERED: Words = [
  'SEA_NOT_ENTERED',
  'Acceleration coefficients of the standard for sea area {area}: only those of the road are known here.',
];
const DAMAGED: Words = ['DAMAGED_PART', 'Tie-down {tieDown} counts nothing and may not be used: {parts} damaged.'];
const SETTLES: Note = /* @__PURE__ */ note([
  'OVER_TOP_ON_TIRES',
  'An over-top lashing loses its tension when a machine settles on its tires, tracks or springs: no formula shows that.',
]);
const SYMMETRICAL: Note = /* @__PURE__ */ note([
  'SYMMETRICAL_LASHINGS',
  'Direct lashings are summed as if each reached its LC: the equations are for lashings that lie symmetrically and are alike.',
]);
