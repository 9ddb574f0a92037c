import type { Quantity, QuantityInput, QuantityLike } from '../quantities/quantity.js';
import type { Verdict } from '../working/check.js';
import type { Note } from '../working/note.js';
import type { ResultBase } from '../working/result.js';

/** The way a load would go: forward is what braking asks to be held. */
export type Direction = 'forward' | 'rearward' | 'left' | 'right' | 'up';

export const DIRECTIONS = ['forward', 'rearward', 'left', 'right', 'up'] as const satisfies readonly Direction[];

/** The acceleration to hold in each direction; one left out is not looked at. */
export type Accelerations = { readonly [D in Direction]?: QuantityInput<'acceleration'> };

/** What the load does when it gives way. */
export type Mode = 'holds' | 'slides' | 'tips' | 'lifts';

/** The force in one tie-down. */
export interface Tension {
  readonly id: string;
  readonly tension: Quantity<'lbf' | 'N'>;
  /** Tension over capacity. */
  readonly utilization: number;
}

/** The greatest load that forces within capacities and friction can balance. */
export interface LimitAnswer {
  /** Multiple of the acceleration asked for; null where nothing ever gives way. */
  readonly factor: number | null;
  /** How it gives way beyond that. */
  readonly mode: Mode;
  /** One way the forces can balance at that factor. */
  readonly tensions: readonly Tension[];
  /** Tie-downs at their capacity there. */
  readonly governing: readonly string[];
  /** What is left of the balance, as a share of the weight. */
  readonly residual: number;
}

/** How the load really shares, with every tie-down a spring. */
export interface ElasticAnswer {
  /** Tensions at the acceleration asked for. */
  readonly tensions: readonly Tension[];
  /** The multiple of the acceleration at which the first tie-down reaches its capacity; null: none does. */
  readonly firstAtCapacity: { readonly id: string; readonly factor: number } | null;
  /** The multiple at which the load first slips, and first lifts off a contact; null: it does not. */
  readonly firstSlip: number | null;
  readonly firstLift: number | null;
  readonly residual: number;
}

/** One direction of one article. */
export interface DirectionAnswer {
  readonly direction: Direction;
  readonly acceleration: Quantity<'g'>;
  readonly verdict: Verdict;
  readonly mode: Mode;
  readonly limit: LimitAnswer;
  /** Only where every tie-down has a stiffness. */
  readonly elastic: ElasticAnswer | null;
  /** The limit again with each tie-down gone. */
  readonly withoutOne: readonly { readonly id: string; readonly factor: number | null; readonly verdict: Verdict }[];
  /** The lowest limit factor when a stated tolerance is used up. */
  readonly ifOff: readonly { readonly what: string; readonly factor: number | null }[];
  readonly missing: readonly Note[];
}

export interface Restraint extends ResultBase<'solveRestraint'> {
  readonly verdict: Verdict;
  readonly article: string;
  /** The direction that decides. */
  readonly governing: Direction | null;
  readonly directions: readonly DirectionAnswer[];
  readonly capacities: readonly { readonly id: string; readonly capacity: QuantityLike | null }[];
}
