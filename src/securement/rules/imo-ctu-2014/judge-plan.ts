import { mapAt } from '../../../errors.js';
import { imoCtu2014Factors as factors } from '../../../tables/generated/imo-ctu-2014-factors.js';
import { marksAlone } from '../../../tables/rating-table.js';
import type { Check } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import { HEADINGS } from '../../forces/directions.js';
import { outcomeByForce } from '../../forces/outcome.js';
import { forceUnitOf, weightUnder } from '../../forces/sums.js';
import { ratedLayouts, rateTieDowns, runsOver } from '../../forces/tie-downs.js';
import { sharingCautions } from '../../forces/unequal-sharing.js';
import { readLayout } from '../../layout.js';
import type { Plan, ReadArticle } from '../../plan.js';
import type { Applicability, CountedTieDown, PlanOutcome, RuleContext } from '../../rule-set.js';
import { staticFriction } from './annex-7-2-friction.js';
import { checkSliding, type Load } from './annex-7-4-sliding.js';
import { countForce, resultOf } from './annex-7-4-tie-downs.js';
import { checkTipping } from './annex-7-4-tipping.js';
import { modeOf } from './chapter-5-accelerations.js';

/** Holds a plan against the force balances of the CTU Code: sliding and tipping of every article, all four ways. */
export function judgePlan(plan: Plan, _articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working, units } = context;
  const layouts = readLayout(plan);
  const mode = modeOf(plan, working);
  // the code rates nothing by size: every maximum securing load is a mark, or what the caller states
  const table = marksAlone('maximumSecuringLoad', 'imo-ctu-2014');
  const ratings = rateTieDowns(table, plan.tieDowns, working, 'MSL', forceUnitOf(units), 'CTU Code, Annex 7');
  const checks: Check[] = [];
  const counted = new Map<string, CountedTieDown>();
  const articles = mapAt(layouts, 'articles', (layout) => {
    const forces = ratedLayouts(layout, ratings).map((tieDown) => {
      const force = countForce(tieDown, context);
      counted.set(tieDown.layout.tieDown.id, resultOf(tieDown, force, context));
      return force;
    });
    const load: Load = {
      layout,
      mode,
      weight: weightUnder(factors.rows.gravity.value, layout.mass),
      mu: staticFriction(layout.article, working),
      direct: forces.filter((force) => !runsOver(force)),
      overTop: forces.filter(runsOver),
    };
    for (const heading of HEADINGS)
      checks.push(checkSliding(load, heading, context), checkTipping(load, heading, context));
    working.cautions.push(...sharingCautions(layout));
    return outcomeByForce(layout.article, 'Annex 7', forces.length);
  });
  working.cautions.push(NOT_LOOKED_AT, TENSION_LEFT);
  return {
    applicability: APPLICABILITY,
    articles,
    tieDowns: plan.tieDowns.flatMap(({ id }) => counted.get(id) ?? []),
    checks,
    inspections: [],
  };
}

const APPLICABILITY: Applicability = {
  verdict: 'undetermined',
  because: {
    code: 'CODE_OF_PRACTICE',
    params: {},
    text: 'A code of practice for cargo in and on transport units that change carriers: a state or a contract makes it binding. The plan is checked as if one did.',
  },
  clause: 'CTU Code, chapter 1',
};
const NOT_LOOKED_AT: Note = /* @__PURE__ */ note('CTU_NOT_LOOKED_AT');
const TENSION_LEFT: Note = /* @__PURE__ */ note('TENSION_LEFT');
