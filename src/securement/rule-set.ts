import { fail } from '../errors.js';
import type { QuantityLike } from '../quantities/quantity.js';
import type { UnitSystem } from '../quantities/units.js';
import type { CapacitySystem, CapacityTable } from '../tables/rating-table.js';
import type { Check } from '../working/check.js';
import type { Note } from '../working/note.js';
import type { Working } from '../working/step.js';
import type { Plan, ReadArticle, TieDownPath } from './plan.js';

/** One lawful way to secure an article, where a rule set offers several. */
export interface CountOption {
  /** The paragraph, such as `393.130`. */
  readonly rule: string;
  readonly minimumCount: number;
}

/** The force that must be held in one direction, stated against the strengths that a rule compares it with. */
export interface DirectionalRequirement {
  readonly direction: 'forward' | 'rearward' | 'lateral' | 'down' | 'up';
  readonly againstWorkingLoadLimit?: QuantityLike;
  readonly againstBreakingStrength?: QuantityLike;
  readonly againstLashingCapacity?: QuantityLike;
  readonly againstMaximumSecuringLoad?: QuantityLike;
  readonly againstRatedStrength?: QuantityLike;
  readonly clause: string;
}

/** What a rule set asks of one article. */
export interface ArticleRequirement {
  /** The least number of tie-downs any open rule allows. */
  readonly minimumCount: number;
  /** What the library recommends; never below the minimum. */
  readonly recommendedCount: number;
  /** The aggregate rating the tie-downs must reach, after credits; null where the rule set has no such test. */
  readonly requiredAggregate: QuantityLike | null;
  readonly options: readonly CountOption[];
  readonly perDirection: readonly DirectionalRequirement[];
}

/** How one tie-down was counted. */
export interface CountedTieDown {
  readonly id: string;
  readonly holds: string;
  readonly path: TieDownPath;
  /** The capacity that the rule set counts. */
  readonly counts: CapacitySystem | 'pretension';
  /** That capacity: of the weakest part, its mark or its row; null while it is not known. */
  readonly rating: QuantityLike | null;
  /** Share of the rating that counts. */
  readonly credit: number;
  /** Rating times credit. */
  readonly counted: QuantityLike | null;
  readonly weakest: readonly string[];
}

/** What was found for one article. */
export interface ArticleOutcome {
  readonly id: string;
  /** The rule it was judged under. */
  readonly rule: string;
  readonly count: number;
  readonly minimumCount: number;
  readonly recommendedCount: number;
  /** What the tie-downs must reach together; null where the rule set has no such test. */
  readonly requiredAggregate: QuantityLike | null;
  /** Sum of rating times credit; null while a tie-down's rating is not known, and where there is no such test. */
  readonly aggregate: QuantityLike | null;
  readonly options: readonly CountOption[];
}

/** Whether the rule reaches this vehicle and trip at all; the plan is checked either way. */
export interface Applicability {
  readonly verdict: 'applies' | 'does-not-apply' | 'undetermined';
  readonly because: Note;
  readonly clause: string;
}

/** When the load must be looked at again. */
export interface InspectionDue {
  readonly when: string;
  readonly distance?: QuantityLike;
  readonly time?: QuantityLike;
  readonly clause: string;
}

/** What a rule set makes of a plan. */
export interface PlanOutcome {
  readonly applicability: Applicability;
  readonly articles: readonly ArticleOutcome[];
  readonly tieDowns: readonly CountedTieDown[];
  readonly checks: readonly Check[];
  readonly inspections: readonly InspectionDue[];
}

/** How a rule set is asked. */
export interface RuleContext {
  readonly working: Working;
  readonly units: UnitSystem;
}

/** What a rule set asks of one article: the part of it that {@link tieDownsRequired} needs. */
export interface CountRules {
  readonly id: string;
  readonly title: string;
  readonly jurisdiction: string;
  readonly asOf: string;
  readonly units: UnitSystem;
  readonly requirementOf: (article: ReadArticle, context: RuleContext) => ArticleRequirement;
}

/**
 * The securement rules of one jurisdiction and edition, as an exported constant that the caller names. Rule
 * sets never import each other, and nothing picks one by default.
 */
export interface RuleSet extends CountRules {
  /** The table it rates parts by, for a caller that rates chains beside a plan; absent where it has none. */
  readonly ratings?: CapacityTable;
  readonly judgePlan: (plan: Plan, articles: readonly ReadArticle[], context: RuleContext) => PlanOutcome;
}

/** Refuses anything that is not a rule set able to do what is asked. */
export function checkRules(rules: unknown, able: 'requirementOf' | 'judgePlan'): void {
  if (typeof (rules as Partial<RuleSet> | null | undefined)?.[able] !== 'function') {
    fail(
      'UNKNOWN_RULE_SET',
      'rules',
      'a rule set constant',
      rules,
      'Import one, such as us49cfr393_2024, or ask chain-rigging/registry.',
    );
  }
}
