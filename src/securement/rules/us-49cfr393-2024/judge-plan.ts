import { Quantity } from '../../../quantities/quantity.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { us49cfr393_108_2024 } from '../../../tables/us-49cfr393-108-2024.js';
import { type Check, overallVerdict } from '../../../working/check.js';
import type { Note } from '../../../working/note.js';
import type { Plan, ReadArticle } from '../../plan.js';
import type { ArticleOutcome, CountedTieDown, CountOption, PlanOutcome, RuleContext } from '../../rule-set.js';
import { applicability } from './390-5-applicability.js';
import { inspections } from './392-9-inspection.js';
import { deemedPerformance } from './393-102-performance.js';
import { checkCondition } from './393-104-condition.js';
import { checkAggregate, creditOf } from './393-106-aggregate.js';
import { showFrictionMat } from './393-108-friction-mat.js';
import { type RatedTieDown, rateTieDown } from './393-108-weakest-part.js';
import { checkAccessory, checkArticulation, checkBothEnds } from './393-128-130-machines.js';
import { openRules, recommendedCount } from './open-rules.js';
import { cite } from './parameters.js';
import { countRatio, practiceChecks } from './practice.js';

/** Holds a plan against 49 CFR 390.5, 392.9 and 393.102 to 393.130, article by article. */
export function judgePlan(plan: Plan, articles: readonly ReadArticle[], context: RuleContext): PlanOutcome {
  const { working, units } = context;
  const unit = units === 'si' ? 'kg' : 'lb';
  const rated = plan.tieDowns.map((tieDown, index) => rateTieDown(us49cfr393_108_2024, tieDown, `tieDowns[${index}].`, context));
  const checks: Check[] = rated.map((each) => checkCondition(each, working));
  const outcomes: ArticleOutcome[] = [];
  for (const read of articles) {
    const outcome = judgeArticle(read, rated, context);
    outcomes.push(outcome.article);
    checks.push(...outcome.checks);
  }
  if (plan.tieDowns.some(({ path }) => path === 'vehicle-to-cargo')) working.cautions.push(HALF_CREDIT);
  working.cautions.push(DIRECTION_NOT_CHECKED);
  return {
    applicability: applicability(plan.vehicle, working),
    articles: outcomes,
    tieDowns: rated.map(({ tieDown, workingLoadLimit, weakest }): CountedTieDown => {
      const credit = creditOf(tieDown.path);
      const limit = workingLoadLimit === null ? null : ratedLoadIn(workingLoadLimit, unit);
      const counts = articles.some(({ article }) => article.id === tieDown.holds);
      return {
        id: tieDown.id,
        holds: tieDown.holds,
        path: tieDown.path,
        workingLoadLimit: limit,
        credit: counts ? credit : 0,
        counted: limit === null ? null : new Quantity(limit.value * (counts ? credit : 0), unit),
        weakest,
      };
    }),
    checks,
    inspections: inspections(working),
  };
}

function judgeArticle(read: ReadArticle, rated: readonly RatedTieDown[], context: RuleContext): { article: ArticleOutcome; checks: readonly Check[] } {
  const { working } = context;
  const { article } = read;
  const { heavy, byLength, options } = openRules(read, working);
  const holding = rated.filter(({ tieDown }) => tieDown.holds === article.id);
  const counted = holding.filter(({ damaged }) => damaged.length === 0);
  const { required, aggregate, check: strength } = checkAggregate(read, holding, context);
  const checks: Check[] = [strength, ...weakestPartChecks(holding, strength)];

  const { option, checks: countChecks } = chooseOption(read, options, counted, context);
  checks.push(...countChecks);
  for (const accessory of article.accessories ?? []) {
    const ties = rated.filter(({ tieDown, damaged }) => tieDown.holds === accessory.id && damaged.length === 0);
    checks.push(checkAccessory(accessory, heavy, ties.length, working));
  }
  const articulation = checkArticulation(read, heavy, working);
  if (articulation !== undefined) checks.push(articulation);
  checks.push(deemedPerformance(article.id, checks, working));
  showFrictionMat(read, context);

  const minimumCount = Math.min(...options.map(({ minimumCount: count }) => count));
  const recommended = recommendedCount(read, minimumCount);
  checks.push(...practiceChecks(read, heavy, recommended, byLength, option.rule, counted, working));
  return {
    article: {
      id: article.id,
      rule: option.rule,
      count: counted.length,
      minimumCount: option.minimumCount,
      recommendedCount: recommended,
      requiredAggregate: required,
      aggregate,
      options,
    },
    checks,
  };
}

/** The first open rule whose count and ends are met, the least demanding one when none is. */
function chooseOption(read: ReadArticle, options: readonly CountOption[], counted: readonly RatedTieDown[], context: RuleContext): { option: CountOption; checks: readonly Check[] } {
  const tries = options.map((option) => ({ option, checks: checksOfOption(read, option, counted, context) }));
  const met = tries.find(({ checks }) => overallVerdict(checks) === 'pass');
  return met ?? (tries[0] as (typeof tries)[number]);
}

function checksOfOption(read: ReadArticle, { rule, minimumCount }: CountOption, counted: readonly RatedTieDown[], { working }: RuleContext): Check[] {
  const paragraph = rule === '393.130' ? '393.130(c)' : rule === '393.128' ? '393.128(b)' : '393.110';
  cite(working, paragraph);
  const count: Check = {
    id: `${rule}/count/${read.article.id}`,
    title: 'Number of tie-downs',
    clause: `49 CFR ${paragraph}`,
    weight: 'requirement',
    subject: read.article.id,
    ...countRatio(minimumCount, counted.length),
  };
  return rule === '393.110' ? [count] : [count, checkBothEnds(rule, read, counted, working)];
}

/** 393.108(a) for each tie-down: rated, or what is missing, unless the others are enough without it. */
function weakestPartChecks(holding: readonly RatedTieDown[], strength: Check): Check[] {
  return holding.map(({ tieDown, workingLoadLimit, missing }): Check => {
    const base = {
      id: `393.108(a)/${tieDown.id}`,
      title: 'Weakest part, anchor points included',
      clause: '49 CFR 393.108(a)',
      weight: 'requirement',
      subject: tieDown.id,
    } as const;
    if (workingLoadLimit !== null) return { ...base, verdict: 'pass', because: RATED };
    if (strength.verdict === 'pass') return { ...base, verdict: 'not-applicable', because: NOT_NEEDED };
    return { ...base, verdict: 'undetermined', missing };
  });
}

const RATED: Note = {
  code: 'EVERY_PART_RATED',
  params: {},
  text: 'Every part and both anchor points have a rating.',
};
const NOT_NEEDED: Note = {
  code: 'RATING_NOT_NEEDED',
  params: {},
  text: 'Its rating is not known; the aggregate reaches half of the weight without it.',
};
const HALF_CREDIT: Note = {
  code: 'HALF_CREDIT',
  params: {},
  text: "A tie-down from the vehicle to the cargo counts half (393.106(d)(1)). A driver's handbook of the same agency counts it in full; the regulation governs.",
};
const DIRECTION_NOT_CHECKED: Note = {
  code: 'DIRECTION_NOT_CHECKED',
  params: {},
  text: 'Counts and ratings do not look at direction: of four direct chains only two resist forward movement.',
};
