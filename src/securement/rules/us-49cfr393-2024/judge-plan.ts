import { mapAt } from '../../../errors.js';
import { massUnitOf } from '../../../quantities/shared-units.js';
import { us49cfr393_108_2024 } from '../../../tables/us-49cfr393-108-2024.js';
import { type Check, overallVerdict, type Verdict } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { NOT_LOOKED_AT } from '../../counting/cautions.js';
import { checkCount } from '../../counting/checks.js';
import { countedTieDown, isSound, thatHold } from '../../counting/rated-tie-down.js';
import type { Plan, ReadArticle } from '../../plan.js';
import { recommendedCount } from '../../practice.js';
import { ratingUnder, type TieDownRating } from '../../rate-tie-down.js';
import type { ArticleOutcome, CountOption, PlanOutcome, RuleContext } from '../../rule-set.js';
import { applicability } from './390-5-applicability.js';
import { inspections } from './392-9-inspection.js';
import { deemedPerformance } from './393-102-performance.js';
import { checkNoDamage } from './393-104-condition.js';
import { checkAggregate, requiredOf } from './393-106-aggregate.js';
import { creditOf } from './393-106-credit.js';
import { showMat } from './393-108-friction-mat.js';
import { checkEveryPart, rateByWeakest } from './393-108-weakest-part.js';
import { checkAccessory, checkArticulation, checkEnds } from './393-128-130-machines.js';
import { aboutRule, cite } from './cite.js';
import { openRules } from './open-rules.js';
import { addPracticeChecks } from './practice.js';

/** Holds a plan against 49 CFR 390.5, 392.9 and 393.102 to 393.130, article by article. */
export function judgePlan(plan: Plan, articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working, units } = context;
  cite(working, '393.108(a)-(f)');
  const rated = ratingUnder(us49cfr393_108_2024, working, (rater) =>
    mapAt(plan.tieDowns, 'tieDowns', (tieDown) => rateByWeakest(rater, tieDown, context)),
  );
  const checks: Check[] = [checkNoDamage(rated, working)];
  const outcomes = mapAt(articles, 'articles', (read) => judgeArticle(read, rated, checks, context));
  const unit = massUnitOf(units);
  const tieDowns = rated.map((each) => countedTieDown(each, creditOf, articles, unit));
  if (rated.some(({ tieDown }) => tieDown.path === 'vehicle-to-cargo')) working.cautions.push(HALF_CREDIT);
  working.cautions.push(...NOT_LOOKED_AT);
  return {
    applicability: applicability(plan.vehicle, working),
    articles: outcomes,
    tieDowns,
    checks,
    inspections: inspections(working),
  };
}

/** Judges one article and adds its checks to the list, whose first is the condition of all parts. */
function judgeArticle(
  read: ReadArticle,
  rated: readonly TieDownRating[],
  checks: Check[],
  context: RuleContext,
): ArticleOutcome {
  const { working } = context;
  const { article } = read;
  const start = checks.length;
  const open = openRules(read, working);
  const holding = thatHold(rated, article.id);
  const counted = holding.filter(isSound);
  const required = requiredOf(read, context);
  const { aggregate, check: strength } = checkAggregate(article.id, required, holding, working);
  const { option, checks: optionChecks, verdict } = chooseOption(article.id, open.options, counted, working);
  const enough = strength.verdict === 'pass' && verdict === 'pass';
  checks.push(strength, checkEveryPart(article.id, holding, enough, working), ...optionChecks);
  const strict = option.rule === '393.130'; // by weight, or because the caller chose it
  article.accessories?.forEach((accessory) => {
    const ties = thatHold(rated, accessory.id).filter(isSound);
    checks.push(checkAccessory(accessory, article.kind, strict, ties, working));
  });
  const articulation = checkArticulation(read, strict, working);
  if (articulation !== undefined) checks.push(articulation);
  const met = overallVerdict(checks, start) === 'pass' && checks[0]?.verdict === 'pass';
  checks.push(deemedPerformance(article.id, met, working));
  showMat(read, context);
  const recommended = recommendedCount(read, option.minimumCount);
  addPracticeChecks(checks, article.id, open, { rule: option.rule, recommended }, counted, working);
  return {
    id: article.id,
    rule: option.rule,
    count: counted.length,
    minimumCount: option.minimumCount,
    recommendedCount: recommended,
    requiredAggregate: required.required,
    aggregate,
    options: open.options,
  };
}

interface TriedOption {
  readonly option: CountOption;
  readonly checks: readonly Check[];
  readonly verdict: Verdict;
}

/** The open rule that is met, else one that may be, else the least demanding one; each the first of its sort. */
function chooseOption(
  article: string,
  options: readonly CountOption[],
  counted: readonly TieDownRating[],
  working: Working,
): TriedOption {
  let best: TriedOption | undefined;
  for (const option of options) {
    const checks = checksOfOption(article, option, counted, working);
    const tried = { option, checks, verdict: overallVerdict(checks) };
    if (tried.verdict === 'pass') return tried;
    if (best === undefined || (best.verdict === 'fail' && tried.verdict === 'undetermined')) best = tried;
  }
  return best as TriedOption;
}

function checksOfOption(
  article: string,
  { rule, minimumCount }: CountOption,
  counted: readonly TieDownRating[],
  working: Working,
): Check[] {
  const provenance = rule === '393.128' ? 'memory' : 'read';
  const about = aboutRule(working, rule, 'Number of tie-downs', article, provenance);
  const count = checkCount(about, minimumCount, counted);
  return rule === '393.110' ? [count] : [count, checkEnds(rule, article, counted, working)];
}

const HALF_CREDIT: Note = /* @__PURE__ */ note('HALF_CREDIT');
