import { mapAt } from '../../../errors.js';
import { massUnitOf } from '../../../quantities/shared-units.js';
import { nzTlc2017RatedStrength as fractions } from '../../../tables/generated/nz-tlc-2017-rated-strength.js';
import { marksAlone } from '../../../tables/rating-table.js';
import type { Check } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import { outcomeByForce } from '../../forces/outcome.js';
import { countedTieDown, rateTieDowns } from '../../forces/tie-downs.js';
import type { Plan, ReadArticle } from '../../plan.js';
import { adviseOnCount, usualCount } from '../../practice.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import type { Applicability, ArticleOutcome, PlanOutcome, RuleContext } from '../../rule-set.js';
import { CLAUSE, judgeRatedStrength } from './rigid-loads.js';

/** Holds a plan against the rule for rigid loads, article by article. */
export function judgePlan(plan: Plan, articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working, units } = context;
  const unit = massUnitOf(units);
  // the code rates nothing by size: a part counts by the rated strength that is stated for it
  const table = marksAlone('ratedStrength', 'nz-tlc-2017');
  const ratings = rateTieDowns(table, plan.tieDowns, working, 'rated strength', unit, CLAUSE);
  if (working.shown) {
    working.cite(fractions.source);
    const { chain, webbing } = fractions.rows;
    working.assumptions.push(note('RATED_NOT_BREAKING', { chain: chain.fraction, webbing: webbing.fraction }));
  }
  const checks: Check[] = [];
  const outcomes = mapAt(articles, 'articles', (read) => judgeArticle(read, ratings, checks, context));
  working.cautions.push(DIRECTION_NOT_CHECKED);
  if (articles.some(({ article }) => article.kind === 'machinery')) working.cautions.push(CONSTRUCTION_EQUIPMENT);
  return {
    applicability: NOT_DECIDED,
    articles: outcomes,
    // every one counts in full; one that holds an accessory counts for no article
    tieDowns: ratings.map((rating) => {
      const credit = articles.some(({ article }) => article.id === rating.tieDown.holds) ? 1 : 0;
      return countedTieDown(rating, 'ratedStrength', rating.capacity, credit, unit);
    }),
    checks,
    inspections: [],
  };
}

function judgeArticle(
  read: ReadArticle,
  ratings: readonly TieDownRating[],
  checks: Check[],
  context: RuleContext,
): ArticleOutcome {
  const { article } = read;
  const held = ratings.filter(({ tieDown }) => tieDown.holds === article.id);
  const sound = held.filter(({ damaged }) => damaged.length === 0);
  const { required, aggregate, check } = judgeRatedStrength(read, held, context);
  checks.push(check, adviseOnCount(article.id, usualCount(article), sound.length));
  const outcome = outcomeByForce(article, 'rigid loads', sound.length);
  return { ...outcome, requiredAggregate: required, aggregate };
}

const NOT_DECIDED: Applicability = {
  verdict: 'undetermined',
  because: {
    code: 'SCOPE_NOT_DECIDED',
    params: {},
    text: 'Which vehicles the code reaches was not read. The plan is checked as if it applied.',
  },
  clause: 'The Truck Loading Code 2017',
};
const DIRECTION_NOT_CHECKED: Note = /* @__PURE__ */ note('PLAIN_SUM');
const CONSTRUCTION_EQUIPMENT: Note = /* @__PURE__ */ note('CONSTRUCTION_EQUIPMENT');
