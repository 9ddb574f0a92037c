import type { Quantity } from '../../quantities/quantity.js';
import type { Verdict } from '../../working/check.js';
import type { Note } from '../../working/note.js';
import type { ResultBase } from '../../working/result.js';

/** The way a load would go. Braking throws it forward. */
export type Direction = 'forward' | 'rearward' | 'left' | 'right' | 'up';

/** What a load does as it gives way: the greatest part of its first motion. */
export type Mode = 'holds' | 'slides' | 'turns' | 'tips' | 'lifts';

/** The force in one tie-down. */
export interface Tension {
  readonly id: string;
  readonly tension: Quantity<'lbf' | 'N'>;
  /** Tension over capacity; null for one without capacity. */
  readonly utilization: number | null;
}

/**
 * The limit answer: the greatest load that forces within capacities and friction can balance at all. Necessary for
 * holding, not sufficient.
 */
export interface LimitAnswer {
  /**
   * `limited`: it gives way at `factor`. `unbounded`: under this acceleration it never does. `impossible`: it cannot even
   * stand at rest. `not-solved`: rounding won, and no answer is better than a wrong one.
   */
  readonly outcome: 'limited' | 'unbounded' | 'impossible' | 'not-solved';
  readonly verdict: Verdict;
  /** Multiple of the acceleration asked for; null unless `limited`. */
  readonly factor: number | null;
  /** How it gives way at that factor; null where that cannot be told. */
  readonly mode: Mode | null;
  /** One way in which the forces can balance there; the most favorable sharing, not the real one. */
  readonly tensions: readonly Tension[];
  /** Tie-downs at their capacity there. */
  readonly governing: readonly string[];
  /** What is left over of the balance, as a share of the weight; null without a balance. */
  readonly residual: number | null;
}

/** The elastic answer: how the load shares when every tie-down is a spring, a short flat stiff one first. */
export interface ElasticAnswer {
  /**
   * At the acceleration asked for. `equilibrium`: it comes to rest. `gives-way`: nothing stiff is left that resists.
   * `impossible`: it finds no rest without any acceleration. `not-solved`: no answer rather than a wrong one.
   */
  readonly outcome: 'equilibrium' | 'gives-way' | 'impossible' | 'not-solved';
  readonly verdict: Verdict;
  /** Tensions at the acceleration asked for; empty where it does not come to rest. */
  readonly tensions: readonly Tension[];
  /** The first tie-down to reach its capacity, and at which multiple of the acceleration; null: none does up to 10. */
  readonly firstAtCapacity: { readonly id: string; readonly factor: number } | null;
  /** The multiples at which the load first slips, first leaves a contact, and gives way; null: it does not up to 10. */
  readonly firstSlip: number | null;
  readonly firstLift: number | null;
  readonly givesWay: number | null;
  readonly residual: number | null;
}

/** One direction. */
export interface DirectionAnswer {
  readonly direction: Direction;
  readonly acceleration: Quantity<'g'>;
  readonly verdict: Verdict;
  /** `holds` where both answers hold what is asked. */
  readonly mode: Mode | null;
  readonly limit: LimitAnswer;
  /** Null where a tie-down has no stiffness: see `missing`. */
  readonly elastic: ElasticAnswer | null;
  /** The limit answer again with each tie-down gone. */
  readonly withoutOne: readonly { readonly id: string; readonly factor: number | null; readonly verdict: Verdict }[];
  /** The limit factor when each stated tolerance is used up the worse way. */
  readonly ifOff: readonly { readonly what: string; readonly factor: number | null }[];
}

export interface Restraint extends ResultBase<'solveRestraint'> {
  readonly verdict: Verdict;
  /** The worst verdict of the limit with one tie-down gone, in any direction. It does not decide `verdict`. */
  readonly withOneGone: Verdict;
  /** The article that was looked at. */
  readonly article: string;
  /** The direction that decides; null where nothing is asked. */
  readonly governing: Direction | null;
  readonly directions: readonly DirectionAnswer[];
  readonly missing: readonly Note[];
}
