import { mapAt } from '../../../errors.js';
import { imoCssAnnex132014Factors as factors } from '../../../tables/generated/imo-css-annex13-2014-factors.js';
import { marksAlone } from '../../../tables/rating-table.js';
import type { Check } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import { HEADINGS } from '../../forces/directions.js';
import { outcomeByForce } from '../../forces/outcome.js';
import { forceUnitOf, weightUnder } from '../../forces/sums.js';
import { ratedLayouts, rateTieDowns } from '../../forces/tie-downs.js';
import { sharingCautions } from '../../forces/unequal-sharing.js';
import { readLayout } from '../../layout.js';
import type { Plan, ReadArticle } from '../../plan.js';
import type { Applicability, CountedTieDown, PlanOutcome, RuleContext } from '../../rule-set.js';
import { calculationStrength, resultOf } from './annex-13-4-calculation-strength.js';
import { checkRuleOfThumb } from './annex-13-5-rule-of-thumb.js';
import { frictionCoefficient } from './annex-13-7-friction.js';
import { checkSliding, type Load } from './annex-13-7-sliding.js';
import { checkTipping } from './annex-13-7-tipping.js';
import { EDITION, FORCES_ARE_YOURS, readShipForces } from './required-of-article.js';

/** Holds a plan against the balances of Annex 13: sliding all four ways, tipping across, and the rule of thumb. */
export function judgePlan(plan: Plan, _articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working, units } = context;
  const layouts = readLayout(plan);
  // the annex rates nothing by size: every maximum securing load is a mark, or what the caller states
  const table = marksAlone('maximumSecuringLoad', 'imo-css-annex13-2014');
  const ratings = rateTieDowns(
    table,
    plan.tieDowns,
    working,
    'MSL',
    forceUnitOf(units),
    'CSS Code, Annex 13, section 4',
  );
  const checks: Check[] = [];
  const tieDowns = new Map<string, CountedTieDown>();
  const articles = mapAt(layouts, 'articles', (layout) => {
    const rated = ratedLayouts(layout, ratings);
    const load: Load = {
      layout,
      weight: weightUnder(factors.rows.gravity.value, layout.mass),
      mu: frictionCoefficient(layout.article, working),
      external: readShipForces(layout.article.shipForces),
      counted: rated.map((tieDown) => calculationStrength(tieDown, context)),
    };
    for (const tieDown of rated) tieDowns.set(tieDown.rating.tieDown.id, resultOf(tieDown, context));
    for (const heading of HEADINGS) checks.push(checkSliding(load, heading, context));
    for (const side of ['left', 'right'] as const) {
      checks.push(checkTipping(load, side, context), checkRuleOfThumb(load, rated, side, context));
    }
    working.cautions.push(...sharingCautions(layout));
    return outcomeByForce(layout.article, 'Annex 13', rated.length);
  });
  working.cautions.push(EDITION, FORCES_ARE_YOURS, NOT_LOOKED_AT);
  return {
    applicability: APPLICABILITY,
    articles,
    tieDowns: plan.tieDowns.flatMap(({ id }) => tieDowns.get(id) ?? []),
    checks,
    inspections: [],
  };
}

const APPLICABILITY: Applicability = {
  verdict: 'undetermined',
  because: {
    code: 'ABOARD_SHIP',
    params: {},
    text: "For cargo that is no standard unit aboard a ship with a cargo securing manual: the ship's manual decides. The plan is checked as if it did.",
  },
  clause: 'CSS Code, Annex 13, sections 1 and 2',
};
const NOT_LOOKED_AT: Note = /* @__PURE__ */ note('CSS_NOT_LOOKED_AT');
