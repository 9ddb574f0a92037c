import { mapAt } from '../../../errors.js';
import { us49cfr393102Criteria as criteria } from '../../../tables/generated/us-49cfr393-102-criteria.js';
import { marksAlone } from '../../../tables/rating-table.js';
import { us49cfr393_108_2024 } from '../../../tables/us-49cfr393-108-2024.js';
import type { Check } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import { HEADINGS } from '../../forces/directions.js';
import {
  downShare,
  exactly,
  heldDown,
  heldLessLift,
  ifKnown,
  judgeHeld,
  known,
  pressedDown,
  shareLessLift,
  together,
} from '../../forces/held.js';
import { outcomeByForce } from '../../forces/outcome.js';
import { forceUnitOf, inForce, type Sum, times } from '../../forces/sums.js';
import {
  byCapacity,
  byPretension,
  type RatedLayout,
  ratedLayouts,
  rateTieDowns,
  runsOver,
  shareValues,
} from '../../forces/tie-downs.js';
import { sharingCautions } from '../../forces/unequal-sharing.js';
import { type ArticleLayout, readLayout } from '../../layout.js';
import type { Plan } from '../../plan.js';
import type { PlanOutcome, RuleContext } from '../../rule-set.js';
import { applicability } from './390-5-applicability.js';
import { inspections } from './392-9-inspection.js';
import { aboutRule, cite } from './cite.js';

/** Each paragraph of the performance criteria with the strength it looks at. */
const TESTS = [
  { paragraph: '393.102(a)(2)', column: 'g_against_wll', strength: 'working load limit' },
  { paragraph: '393.102(a)(1)', column: 'g_against_breaking_strength', strength: 'breaking strength' },
] as const;

type Test = (typeof TESTS)[number];

const ROW = { forward: 'forward', rearward: 'rearward', left: 'lateral', right: 'lateral' } as const;

/**
 * The force check of 393.102, an engineering look at the directions that the counting rules do not take:
 *
 *     sum(T · (cos α · cos β − μ · lift)) + μ · (W + sum(T0 · sin α)) ≥ a · W, the first sum over those that pull against
 *     the movement; lift is sin α of one that runs upward from the load and so takes weight off the deck
 *
 * with T0 the pretension where it is stated, T the working load limit and a of (a)(2), and again with T the breaking strength and a of (a)(1); for (b)
 * sum(T · sin α) ≥ 0.2 · W with the working load limit, which is the cautious reading. μ is 0 unless the article states it. A
 * tie-down that runs over to the other side holds nothing back by its strength and is left out.
 *
 * The sum takes for granted that the tie-downs share the load; a short stiff one reaches its limit first.
 */
export function checkForces(plan: Plan, context: RuleContext): PlanOutcome {
  const { working, units } = context;
  const layouts = readLayout(plan);
  const checks: Check[] = [];
  cite(working, '393.102(a)-(b)');
  const unit = forceUnitOf(units);
  const byLimit = rateTieDowns(us49cfr393_108_2024, plan.tieDowns, working, 'WLL', unit, '393.108');
  const marked = marksAlone('breakingStrength');
  const byStrength = rateTieDowns(marked, plan.tieDowns, working, 'breaking strength', unit, '393.102(a)(1)');
  const articles = mapAt(layouts, 'articles', (layout) => {
    const [limited, strong] = [ratedLayouts(layout, byLimit), ratedLayouts(layout, byStrength)];
    checks.push(...checksOf(layout, limited, TESTS[0], context), ...checksOf(layout, strong, TESTS[1], context));
    checks.push(checkDownward(layout, limited, context));
    working.cautions.push(...sharingCautions(layout));
    return { ...outcomeByForce(layout.article, '393.102', limited.length), recommendedCount: 0 };
  });
  if (layouts.some(({ article }) => article.friction === undefined)) working.assumptions.push(NO_FRICTION);
  working.cautions.push(SHARED_EVENLY);
  return {
    applicability: applicability(plan.vehicle, working),
    articles,
    tieDowns: byLimit.map(({ tieDown: { id, holds, path }, capacity, weakest }) => ({
      id,
      holds,
      path,
      counts: 'workingLoadLimit',
      rating: capacity,
      credit: 1,
      counted: capacity,
      weakest,
    })),
    checks,
    inspections: inspections(working),
  };
}

/** The four headings under one test. */
function checksOf(
  { article, mass }: ArticleLayout,
  tieDowns: readonly RatedLayout[],
  { paragraph, column, strength }: Test,
  { working, units }: RuleContext,
): Check[] {
  const weight: Sum = [{ quantity: mass }];
  const mu = article.friction ?? 0;
  const direct = tieDowns.filter((each) => !runsOver(each)).map(byCapacity);
  const tight = tieDowns.filter(({ layout }) => layout.pretension !== undefined).map(byPretension);
  const rubbing = together(known(times(weight, mu)), pressedDown(tight, exactly(mu)));
  const show = inForce(units);
  return HEADINGS.map((heading): Check => {
    const title = `Force ${heading}, against the ${strength}`;
    const about = aboutRule(working, paragraph, title, `${heading}/${article.id}`, 'interpretation');
    const held = together(heldLessLift(direct, heading, exactly(mu)), rubbing);
    if (working.shown) {
      const values = [
        ...shareValues(direct, 'cos α · cos β − μ · lift', (runs) => shareLessLift(runs, heading, mu)),
        ['μ', mu] as const,
        ['W', show(weight)] as const,
        ['sum(T0 · sin α)', ifKnown(pressedDown(tight), show)] as const,
      ];
      const expression = 'sum(T · (cos α · cos β − μ · lift)) + μ · (W + sum(T0 · sin α))';
      const subject = `${article.id}, ${heading}, against the ${strength}`;
      working.step(subject, 'R', expression, values, ifKnown(held, show), about.clause);
    }
    return judgeHeld(about, times(weight, criteria.rows[ROW[heading]][column]), held, show);
  });
}

/** 393.102(b): a downward force of a fifth of the weight, where the vehicle does not contain the cargo. */
function checkDownward(
  { article, mass }: ArticleLayout,
  tieDowns: readonly RatedLayout[],
  context: RuleContext,
): Check {
  const { working, units } = context;
  const title = 'Downward force, against the working load limit';
  const about = aboutRule(working, '393.102(b)', title, article.id, 'interpretation');
  const counted = tieDowns.map(byCapacity);
  const held = heldDown(counted);
  const show = inForce(units);
  const demand = times([{ quantity: mass }], criteria.rows.vertical.g_against_wll);
  if (working.shown) {
    working.step(
      `${article.id}, down`,
      'R',
      'sum(T · sin α)',
      shareValues(counted, 'sin α', downShare),
      ifKnown(held, show),
      about.clause,
    );
  }
  return judgeHeld(about, demand, held, show);
}

const NO_FRICTION: Note = /* @__PURE__ */ note('NO_FRICTION');
const SHARED_EVENLY: Note = /* @__PURE__ */ note('SHARED_EVENLY');
