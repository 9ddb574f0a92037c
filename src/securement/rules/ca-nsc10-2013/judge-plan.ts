import { mapAt } from '../../../errors.js';
import { massUnitOf } from '../../../quantities/shared-units.js';
import { caNsc10_chain_2013 } from '../../../tables/ca-nsc10-2013.js';
import { type Check, countCheck, overallVerdict } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import { NOT_LOOKED_AT } from '../../counting/cautions.js';
import { checkBothEnds, checkCondition, checkRated } from '../../counting/checks.js';
import { countedTieDown, thatHold } from '../../counting/rated-tie-down.js';
import type { Plan, ReadArticle } from '../../plan.js';
import { aboutPractice, adviseOnCount, checkGrade, recommendedCount } from '../../practice.js';
import { ratingUnder } from '../../rate-tie-down.js';
import type { ArticleOutcome, PlanOutcome, RuleContext } from '../../rule-set.js';
import { checkMarked, type MarkedTieDown, mayBeUsed, rateMarked } from './11-marking.js';
import { checkTieDowns, type RuleOfArticle, ruleOf } from './88-89-vehicles.js';
import { checkAccessory, checkArticulation } from './89-2-equipment.js';
import { aboutRule } from './cite.js';
import { inspections } from './inspection.js';
import { checkAggregate, creditOf, requiredOf } from './part-1-aggregate.js';
import { applicability } from './part-1-applicability.js';
import { showBlocking } from './part-1-blocking.js';
import { showMat } from './part-1-friction-mat.js';

/** Holds a plan against Part 1 and Division 7 of the standard, article by article. */
export function judgePlan(plan: Plan, articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working, units } = context;
  const rated = ratingUnder(caNsc10_chain_2013, working, (rater) =>
    mapAt(plan.tieDowns, 'tieDowns', (tieDown) => rateMarked(rater, tieDown, context)),
  );
  const condition = aboutRule(
    working,
    { clause: 'Part 1', part: 'condition' },
    'No damaged part',
    'tie-downs',
    'memory',
  );
  const checks: Check[] = [checkCondition(condition, rated), checkMarked(rated, working)];
  const outcomes = mapAt(articles, 'articles', (read) => judgeArticle(read, rated, checks, context));
  if (rated.some(({ tieDown }) => tieDown.path !== 'over-other-side')) working.cautions.push(FULL_CREDIT);
  working.cautions.push(...NOT_LOOKED_AT);
  return {
    applicability: applicability(plan.vehicle, working),
    articles: outcomes,
    tieDowns: rated.map((each) => countedTieDown(each, creditOf, articles, massUnitOf(units))),
    checks,
    inspections: inspections(working),
  };
}

/** Judges one article and adds its checks to the list. */
function judgeArticle(
  read: ReadArticle,
  rated: readonly MarkedTieDown[],
  checks: Check[],
  context: RuleContext,
): ArticleOutcome {
  const { working } = context;
  const { article } = read;
  const rule = ruleOf(read, working);
  const heavy = rule.rule === 'section 89';
  const holding = thatHold(rated, article.id);
  const counted = holding.filter(mayBeUsed);
  const required = requiredOf(read, context);
  const { aggregate, check: strength } = checkAggregate(article.id, required, holding, working);
  const ofRule = checkTieDowns(rule, article.id, counted, working);
  const enough = overallVerdict([strength, ...ofRule]) === 'pass';
  const everyPart = { clause: 'Part 1', part: 'rating' };
  const about = aboutRule(working, everyPart, 'Every part and anchor point rated', article.id, 'memory');
  checks.push(strength, checkRated(about, holding, enough), ...ofRule);
  for (const accessory of article.accessories ?? []) {
    const ties = thatHold(rated, accessory.id).filter(mayBeUsed);
    checks.push(checkAccessory(accessory, heavy, ties, working));
  }
  const articulation = checkArticulation(read, heavy, working);
  if (articulation !== undefined) checks.push(articulation);
  showBlocking(read, context);
  showMat(read, context);
  const recommended = recommendedCount(read, rule.minimumCount);
  checks.push(adviseOnCount(article.id, recommended, counted.length), ...practiceChecks(read, rule, counted));
  return {
    id: article.id,
    rule: rule.rule,
    count: counted.length,
    minimumCount: rule.minimumCount,
    recommendedCount: recommended,
    requiredAggregate: required.required,
    aggregate,
    options: [{ rule: rule.rule, minimumCount: rule.minimumCount }],
  };
}

/** Beyond the standard as far as it was read: grade 70, both ends of a heavy machine, the count by length of a light one. */
function practiceChecks(
  { article }: ReadArticle,
  { rule, byLength, minimumCount }: RuleOfArticle,
  counted: readonly MarkedTieDown[],
): Check[] {
  const checks: Check[] = [];
  if (rule === 'section 89') {
    checks.push(checkBothEnds(aboutPractice('ends', 'Restraint at front and rear', article.id), counted));
  }
  if (rule === 'section 88(2)' && article.kind === 'machinery' && byLength > minimumCount) {
    const about = aboutPractice('length', 'Count by length, were it no light vehicle', article.id, 'section 22');
    checks.push(countCheck(about, byLength, counted.length));
  }
  const grade = checkGrade(article.id, counted);
  if (grade !== undefined) checks.push(grade);
  return checks;
}

const FULL_CREDIT: Note = /* @__PURE__ */ note('FULL_CREDIT');
