import { checkObject } from '../input-checks.js';
import { readSystem } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { FOLLOW_THE_MARK, STAND_CLEAR, STRAIGHT_PULL } from '../working/cautions.js';
import { type Check, governingCheck, overallVerdict, type Verdict } from '../working/check.js';
import { EmptyResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import { type Plan, readPlan } from './plan.js';
import {
  type Applicability,
  type ArticleOutcome,
  type CountedTieDown,
  checkRules,
  type InspectionDue,
  type RuleSet,
} from './rule-set.js';

export interface SecurementCheck extends ResultBase<'checkSecurement'> {
  readonly verdict: Verdict;
  readonly rules: string;
  /** Id of the check that decides; null when nothing applied. */
  readonly governing: string | null;
  readonly articles: readonly ArticleOutcome[];
  readonly tieDowns: readonly CountedTieDown[];
  /** Every check, each with its clause. Those of weight `practice` never decide the verdict. */
  readonly checks: readonly Check[];
  readonly applicability: Applicability;
  readonly inspections: readonly InspectionDue[];
}

/** A plan and the rule set to hold it against. */
export interface CheckSecurementInput extends Plan {
  readonly rules: RuleSet;
  readonly units?: UnitSystem;
  readonly working?: boolean;
}

/**
 * Whether a plan meets a rule set, each requirement as its own check with its clause. A tie-down is rated by the least
 * of its parts and anchor points, in the capacity that the rule set counts. Counting rule sets (United States, Canada)
 * look at the number of tie-downs, their aggregate rating by path, attachments and articulation; rule sets by force
 * (Europe, IMO, Australia, United Kingdom) at sliding or restraint in each heading, and where they have it at tipping.
 *
 * Aggregate = sum(credit of the path · WLL of the tie-down). Forces = sum(F · share of the run in the heading), with
 * friction where the rule set counts it.
 * The verdict is `fail` when a requirement fails, else `undetermined` when a fact is missing, else `pass`.
 * A missing fact (an unrated anchor, an unmarked binder) never becomes a pass, unless the rest is enough without it.
 *
 * @param input.rules the rule set, such as {@link us49cfr393_2024}
 * @param input.vehicle units and ratings; only says whether the rule applies
 * @param input.articles what is on the deck; a detached attachment is an article of its own
 * @param input.tieDowns each with `holds`, `path`, and `parts` or `capacities`
 * @param input.units `'us'` or `'si'` for the figures shown; omitted: the rule set's own. The law decides in its own units
 * @param input.working `false` leaves the steps, sources and assumptions out: for bulk work
 * @throws RiggingError `UNKNOWN_RULE_SET`, `EMPTY_LIST`, `DUPLICATE_ID`, `UNKNOWN_REFERENCE`, `UNKNOWN_VALUE`,
 * `CONFLICTING_FIELDS`, `MISSING_FIELD` and what the parts and quantities throw
 * @validity rule sets that count look at counts and ratings alone, not at angles or at which way a tie-down pulls; those
 * by force need the points of the tie-downs, and take for granted that tie-downs share the load up to their capacity
 * @source the rule set's own clauses
 * @example
 * checkSecurement({
 *   rules: us49cfr393_2024,
 *   articles: [{ id: 'tractor', kind: 'machinery', mass: '3940 lb', length: '10 ft' }],
 *   tieDowns: [
 *     { id: 'front', holds: 'tractor', path: 'vehicle-to-cargo', capacities: { workingLoadLimit: '3150 lb' } },
 *     { id: 'rear', holds: 'tractor', path: 'vehicle-to-cargo', capacities: { workingLoadLimit: '3150 lb' } },
 *   ],
 * }).verdict
 * // => 'pass'
 */
export function checkSecurement(input: CheckSecurementInput): SecurementCheck {
  checkObject(input, '', '{ rules, articles, tieDowns }');
  const { rules, vehicle, seaArea, articles, tieDowns, units } = input;
  checkRules(rules, 'judgePlan');
  const working = new Working(input.working !== false);
  const context = { working, units: readSystem(units, rules.units) };
  const outcome = rules.judgePlan(input, readPlan(input), context);
  const { checks } = outcome;
  const verdict = overallVerdict(checks);
  working.cautions.push(STRAIGHT_PULL, STAND_CLEAR, FOLLOW_THE_MARK);
  const result = new EmptyResult() as { -readonly [field in keyof SecurementCheck]: SecurementCheck[field] };
  result.result = 'checkSecurement';
  result.verdict = verdict;
  result.rules = rules.id;
  result.governing = governingCheck(checks, verdict)?.id ?? null;
  result.articles = outcome.articles;
  result.tieDowns = outcome.tieDowns;
  result.checks = checks;
  result.applicability = outcome.applicability;
  result.inspections = outcome.inspections;
  result.inputs = { rules: rules.id, vehicle, seaArea, articles, tieDowns, units };
  result.steps = working.steps;
  result.sources = working.sources;
  result.assumptions = working.assumptions;
  result.cautions = working.cautions;
  return result;
}
