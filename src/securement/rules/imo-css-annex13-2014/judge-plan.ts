import { mapAt } from '../../../errors.js';
import { imoCssAnnex132014Factors as factors } from '../../../tables/generated/imo-css-annex13-2014-factors.js';
import type { Check } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import { rateTieDowns } from '../../counted-force.js';
import { decimalIn } from '../../force-checks.js';
import { HEADINGS } from '../../forces.js';
import { readLayout } from '../../layout.js';
import type { Plan, ReadArticle } from '../../plan.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import type { Applicability, ArticleOutcome, CountedTieDown, PlanOutcome, RuleContext } from '../../rule-set.js';
import { sharingCautions } from '../../unequal-sharing.js';
import { calculationStrength, countedTieDown, MARKS_ALONE } from './annex-13-4-calculation-strength.js';
import { checkRuleOfThumb } from './annex-13-5-rule-of-thumb.js';
import { frictionCoefficient } from './annex-13-7-friction.js';
import { checkSliding, type Load } from './annex-13-7-sliding.js';
import { checkTipping } from './annex-13-7-tipping.js';
import { EDITION, FORCES_ARE_YOURS, outcomeOf, readShipForces } from './required-of-article.js';

/** Holds a plan against the balances of Annex 13: sliding all four ways, tipping across, and the rule of thumb. */
export function judgePlan(plan: Plan, _articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working } = context;
  const layouts = readLayout(plan);
  const all = rateTieDowns(MARKS_ALONE, 'MSL', plan.tieDowns, context);
  const checks: Check[] = [];
  const articles: ArticleOutcome[] = [];
  const tieDowns = new Map<string, CountedTieDown>();
  mapAt(layouts, 'articles', (layout) => {
    const ratings = layout.tieDowns.map(({ tieDown }) => all[plan.tieDowns.indexOf(tieDown)] as TieDownRating);
    const counted = layout.tieDowns.map((each, index) => {
      const rating = ratings[index] as TieDownRating;
      const force = calculationStrength(each, rating, context);
      tieDowns.set(each.tieDown.id, countedTieDown(force, rating, context));
      return force;
    });
    const weight = [decimalIn(layout.mass, 'kg'), factors.rows.gravity.value] as const;
    const mu = frictionCoefficient(layout.article, working);
    const load: Load = { layout, weight, mu, external: readShipForces(layout.article.shipForces), counted };
    for (const heading of HEADINGS) {
      checks.push(checkSliding(load, heading, context));
      working.cautions.push(...sharingCautions(layout, heading));
    }
    for (const side of ['left', 'right'] as const) {
      checks.push(checkTipping(load, side, context), checkRuleOfThumb({ layout, weight, ratings }, side, context));
    }
    articles.push(outcomeOf(layout.article, counted.length));
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
const NOT_LOOKED_AT: Note = /* @__PURE__ */ note([
  'NOT_LOOKED_AT',
  'Not looked at: tipping along the ship, the strength of the deck, two tie-downs on one point. The length of the plan lies along the ship, left is port.',
]);
