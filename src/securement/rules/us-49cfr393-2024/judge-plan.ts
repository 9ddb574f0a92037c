import { newRater } from '../../../assembly/rate-part.js';
import { newLog, noteAssumptions } from '../../../assembly/show-parts.js';
import { mapAt } from '../../../errors.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { massUnitOf } from '../../../quantities/shared-units.js';
import { us49cfr393_108_2024 } from '../../../tables/us-49cfr393-108-2024.js';
import { type Check, countCheck, overallVerdict, undeterminedCheck, type Verdict } from '../../../working/check.js';
import { type Note, plainNote } from '../../../working/note.js';
import type { Plan, ReadArticle } from '../../plan.js';
import type { ArticleOutcome, CountedTieDown, CountOption, PlanOutcome, RuleContext } from '../../rule-set.js';
import { applicability } from './390-5-applicability.js';
import { inspections } from './392-9-inspection.js';
import { deemedPerformance } from './393-102-performance.js';
import { checkCondition } from './393-104-condition.js';
import { checkAggregate } from './393-106-aggregate.js';
import { showFrictionMat } from './393-108-friction-mat.js';
import { checkRated, type RatedTieDown, rateTieDown, ratingNotKnown } from './393-108-weakest-part.js';
import { checkAccessory, checkArticulation, checkBothEnds } from './393-128-130-machines.js';
import { aboutRule, cite } from './cite.js';
import { openRules } from './open-rules.js';
import { addPracticeChecks, recommendedCount } from './practice.js';

/** Holds a plan against 49 CFR 390.5, 392.9 and 393.102 to 393.130, article by article. */
export function judgePlan(plan: Plan, articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working, units } = context;
  const log = working.shown ? newLog() : undefined;
  const rater = newRater(us49cfr393_108_2024, log);
  const rated = mapAt(plan.tieDowns, 'tieDowns', (tieDown) => rateTieDown(rater, tieDown, context));
  if (log !== undefined) {
    cite(working, '393.108(a)-(f)');
    for (const source of log.sources) working.cite(source);
    noteAssumptions(working, log);
  }
  const checks: Check[] = [checkCondition(rated, working)];
  const outcomes = mapAt(articles, 'articles', (read) => judgeArticle(read, rated, checks, context));
  const unit = massUnitOf(units);
  const tieDowns = rated.map((each) => countedTieDown(each, articles, unit));
  if (rated.some(({ tieDown }) => tieDown.path === 'vehicle-to-cargo')) working.cautions.push(HALF_CREDIT);
  working.cautions.push(DIRECTION_NOT_CHECKED, NOT_LOOKED_AT);
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
  rated: readonly RatedTieDown[],
  checks: Check[],
  context: RuleContext,
): ArticleOutcome {
  const { working } = context;
  const { article } = read;
  const start = checks.length;
  const { heavy, byLength, options } = openRules(read, working);
  const holds = ({ tieDown }: RatedTieDown) => tieDown.holds === article.id;
  const holding = rated.filter(holds);
  const counted = holding.filter(isSound);
  const { required, aggregate, check: strength } = checkAggregate(read, holding, context);
  const { option, checks: optionChecks, verdict } = chooseOption(read, options, counted, context);
  const enough = strength.verdict === 'pass' && verdict === 'pass';
  checks.push(strength, checkRated(article.id, holding, enough, working), ...optionChecks);
  const strict = option.rule === '393.130'; // by weight, or because the caller chose it
  article.accessories?.forEach((accessory) => {
    const ties = rated.filter(({ tieDown, damaged }) => tieDown.holds === accessory.id && damaged.length === 0);
    checks.push(checkAccessory(accessory, article.kind, strict, ties, working));
  });
  const articulation = checkArticulation(read, strict, working);
  if (articulation !== undefined) checks.push(articulation);
  const met = overallVerdict(checks, start) === 'pass' && checks[0]?.verdict === 'pass';
  checks.push(deemedPerformance(article.id, met, working));
  showFrictionMat(read, context);
  const recommended = recommendedCount(read, option.minimumCount);
  addPracticeChecks(checks, read, { heavy, byLength, rule: option.rule, recommended }, counted, working);
  return {
    id: article.id,
    rule: option.rule,
    count: counted.length,
    minimumCount: option.minimumCount,
    recommendedCount: recommended,
    requiredAggregate: required,
    aggregate,
    options,
  };
}

const isSound = ({ damaged }: RatedTieDown): boolean => damaged.length === 0;
const isRated = ({ workingLoadLimit }: RatedTieDown): boolean => workingLoadLimit !== null;

interface TriedOption {
  readonly option: CountOption;
  readonly checks: readonly Check[];
  readonly verdict: Verdict;
}

/** The open rule that is met, else one that may be, else the least demanding one; each the first of its sort. */
function chooseOption(
  read: ReadArticle,
  options: readonly CountOption[],
  counted: readonly RatedTieDown[],
  context: RuleContext,
): TriedOption {
  let best: TriedOption | undefined;
  for (const option of options) {
    const checks = checksOfOption(read, option, counted, context);
    const tried = { option, checks, verdict: overallVerdict(checks) };
    if (tried.verdict === 'pass') return tried;
    if (best === undefined || (best.verdict === 'fail' && tried.verdict === 'undetermined')) best = tried;
  }
  return best as TriedOption;
}

/** A tie-down whose rating is not known may be no tie-down at all: what rests on it is not decided. */
function checksOfOption(
  read: ReadArticle,
  { rule, minimumCount }: CountOption,
  counted: readonly RatedTieDown[],
  { working }: RuleContext,
): Check[] {
  const known = counted.filter(isRated);
  const provenance = rule === '393.128' ? 'memory' : 'read';
  const about = aboutRule(working, rule, 'Number of tie-downs', read.article.id, provenance);
  const open = known.length < minimumCount && minimumCount <= counted.length;
  const count = open
    ? undeterminedCheck(about, [ratingNotKnown(counted)])
    : countCheck(about, minimumCount, counted.length);
  return rule === '393.110' ? [count] : [count, checkBothEnds(rule, read, counted, known, working)];
}

/** A tie-down that holds an accessory is shown with its rating; it counts in no article's number or aggregate. */
function countedTieDown(
  { tieDown, workingLoadLimit, weakest, credit }: RatedTieDown,
  articles: readonly ReadArticle[],
  unit: 'lb' | 'kg',
): CountedTieDown {
  const { id, holds, path } = tieDown;
  const share = articles.some(({ article }) => article.id === holds) ? credit : 0;
  const limit =
    workingLoadLimit === null || workingLoadLimit.unit === unit
      ? workingLoadLimit
      : ratedLoadIn(workingLoadLimit, unit);
  const counted = limit === null ? null : { value: limit.value * share, unit };
  return { id, holds, path, counts: 'workingLoadLimit', rating: limit, credit: share, counted, weakest };
}

const HALF_CREDIT: Note = /* @__PURE__ */ plainNote(
  'HALF_CREDIT',
  "A tie-down from vehicle to cargo counts half; the agency's handbook counts it in full.",
);
const DIRECTION_NOT_CHECKED: Note = /* @__PURE__ */ plainNote(
  'DIRECTION_NOT_CHECKED',
  'Directions are not checked: of four direct chains only two resist forward movement.',
);
const NOT_LOOKED_AT: Note = /* @__PURE__ */ plainNote(
  'NOT_LOOKED_AT',
  'Nor are chocks, brakes, edge protection, cargo side by side, front-end structure, adjustability.',
);
