import { newRater } from '../../../assembly/rate-part.js';
import { newLog, noteAssumptions } from '../../../assembly/show-parts.js';
import { mapAt } from '../../../errors.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { massUnitOf } from '../../../quantities/shared-units.js';
import { nzTlc2017RatedStrength as fractions } from '../../../tables/generated/nz-tlc-2017-rated-strength.js';
import { statedOnly } from '../../../tables/stated-only.js';
import { type Check, countCheck } from '../../../working/check.js';
import { type Note, note, type Words } from '../../../working/note.js';
import type { Plan, ReadArticle } from '../../plan.js';
import { rateTieDown, type TieDownRating } from '../../rate-tie-down.js';
import type { Applicability, ArticleOutcome, CountedTieDown, PlanOutcome, RuleContext } from '../../rule-set.js';
import { showRating } from '../../show-rating.js';
import { CLAUSE, judgeRatedStrength } from './rigid-loads.js';

/** Holds a plan against the rule for rigid loads, article by article. */
export function judgePlan(plan: Plan, articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working, units } = context;
  const unit = massUnitOf(units);
  const log = working.shown ? newLog() : undefined;
  // the code rates nothing by size: a part counts by the rated strength that is stated for it
  const rater = newRater(statedOnly('nz-tlc-2017', '2017', 'ratedStrength', fractions.source), log);
  const ratings = mapAt(plan.tieDowns, 'tieDowns', (tieDown) => rateTieDown(rater, tieDown, working));
  if (log !== undefined) {
    for (const rating of ratings) showRating(working, rating, 'rated strength', unit, CLAUSE);
    noteAssumptions(working, log);
    working.cite(fractions.source);
    const { chain, webbing } = fractions.rows;
    working.assumptions.push(note(RATED_NOT_BREAKING, { chain: chain.fraction, webbing: webbing.fraction }));
  }
  const checks: Check[] = [];
  const outcomes = mapAt(articles, 'articles', (read) => judgeArticle(read, ratings, checks, context));
  working.cautions.push(DIRECTION_NOT_CHECKED);
  if (articles.some(({ article }) => article.kind === 'machinery')) working.cautions.push(CONSTRUCTION_EQUIPMENT);
  return {
    applicability: NOT_DECIDED,
    articles: outcomes,
    tieDowns: ratings.map((rating) => countedTieDown(rating, articles, unit)),
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
  const recommended = recommendedCount(article.kind);
  checks.push(
    check,
    countCheck(
      {
        id: `practice/count/${article.id}`,
        title: 'Number of tie-downs, as haulers do',
        clause: 'common practice',
        weight: 'practice',
        subject: article.id,
      },
      recommended,
      sound.length,
    ),
  );
  return {
    id: article.id,
    rule: 'rigid loads',
    count: sound.length,
    minimumCount: 0, // no number is asked
    recommendedCount: recommended,
    requiredAggregate: required,
    aggregate,
    options: [],
  };
}

/** Four for machines and vehicles, two for anything else: practice, the code as read asks for none. */
export const recommendedCount = (kind: ReadArticle['article']['kind']): number => (kind === 'general' ? 2 : 4);

/** Every tie-down counts in full; one that holds an accessory counts for no article. */
function countedTieDown(
  { tieDown: { id, holds, path }, capacity, weakest }: TieDownRating,
  articles: readonly ReadArticle[],
  unit: 'lb' | 'kg',
): CountedTieDown {
  const credit = articles.some(({ article }) => article.id === holds) ? 1 : 0;
  const rating = capacity === null ? null : ratedLoadIn(capacity, unit);
  const counted = rating === null ? null : { value: rating.value * credit, unit };
  return { id, holds, path, counts: 'ratedStrength', rating, credit, counted, weakest };
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
const RATED_NOT_BREAKING: Words = [
  'RATED_NOT_BREAKING',
  'Stated rated strengths are within the code: at most {chain} of the breaking force for chain and wire rope, {webbing} for webbing and rope.',
];
const DIRECTION_NOT_CHECKED: Note = /* @__PURE__ */ note([
  'DIRECTION_NOT_CHECKED',
  'A plain sum: neither angles nor directions are looked at, and friction adds nothing.',
]);
const CONSTRUCTION_EQUIPMENT: Note = /* @__PURE__ */ note([
  'CONSTRUCTION_EQUIPMENT',
  'The code has a section of its own on track and wheel construction equipment, which was not read.',
]);
