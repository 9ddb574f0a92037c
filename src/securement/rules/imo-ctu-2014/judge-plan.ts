import { mapAt } from '../../../errors.js';
import { imoCtu2014Factors as factors } from '../../../tables/generated/imo-ctu-2014-factors.js';
import type { Check } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import { type CountedForce, rateTieDowns } from '../../counted-force.js';
import { decimalIn } from '../../force-checks.js';
import { HEADINGS } from '../../forces.js';
import { type ArticleLayout, readLayout } from '../../layout.js';
import type { Plan, ReadArticle } from '../../plan.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import type { Applicability, ArticleOutcome, CountedTieDown, PlanOutcome, RuleContext } from '../../rule-set.js';
import { sharingCautions } from '../../unequal-sharing.js';
import { staticFriction } from './annex-7-2-friction.js';
import { checkSliding, type Load } from './annex-7-4-sliding.js';
import { countedTieDown, countForce, MARKS_ALONE } from './annex-7-4-tie-downs.js';
import { checkTipping } from './annex-7-4-tipping.js';
import { type Mode, modeOf } from './chapter-5-accelerations.js';
import { outcomeOf } from './required-of-article.js';

/** Holds a plan against the force balances of the CTU Code: sliding and tipping of every article, all four ways. */
export function judgePlan(plan: Plan, _articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working } = context;
  const layouts = readLayout(plan);
  const mode = modeOf(plan, working);
  const ratings = rateTieDowns(MARKS_ALONE, 'MSL', plan.tieDowns, context);
  const checks: Check[] = [];
  const articles: ArticleOutcome[] = [];
  const counted = new Map<string, CountedTieDown>();
  mapAt(layouts, 'articles', (layout) => {
    const forces = layout.tieDowns.map((each) => {
      const rating = ratings[plan.tieDowns.indexOf(each.tieDown)] as TieDownRating;
      const force = countForce(each, rating, context);
      counted.set(each.tieDown.id, countedTieDown(force, rating, context));
      return force;
    });
    const load = loadOf(layout, mode, forces, context);
    for (const heading of HEADINGS) {
      checks.push(checkSliding(load, heading, context), checkTipping(load, heading, context));
      working.cautions.push(...sharingCautions(layout, heading));
    }
    articles.push(outcomeOf(layout.article, forces.length));
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

function loadOf(layout: ArticleLayout, mode: Mode, forces: readonly CountedForce[], { working }: RuleContext): Load {
  const overTop = ({ layout: { tieDown } }: CountedForce) => tieDown.path === 'over-other-side';
  return {
    layout,
    mode,
    weight: [decimalIn(layout.mass, 'kg'), factors.rows.gravity.value],
    mu: staticFriction(layout.article, working),
    direct: forces.filter((force) => !overTop(force)),
    overTop: forces.filter(overTop),
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
const NOT_LOOKED_AT: Note = /* @__PURE__ */ note([
  'NOT_LOOKED_AT',
  'Not looked at: walls and blocking (an open platform, r = 0), rail, two tie-downs on one point, the vehicle and its lashing to the ship.',
]);
const TENSION_LEFT: Note = /* @__PURE__ */ note([
  'TENSION_LEFT',
  'A tie-down over the load counts its tension in both runs; corners take some of it, and a load that settles on tires or springs takes more.',
]);
