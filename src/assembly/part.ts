import type { AnyGrade, TradeSize } from '../chain/trade-size.js';
import type { QuantityInput } from '../quantities/quantity.js';

/**
 * Whether a part may be used: in words, or the result of an inspection. Left out, the part is taken as
 * inspected and sound, and the result says so. Damage counts zero; there is no part-credit for a worn part.
 */
export type Condition = 'sound' | 'damaged' | { readonly verdict: 'fit' | 'remove' | 'undetermined' };

/**
 * Capacities as marked, each in the system it was marked in. They are different quantities: a rule set takes
 * its own and never another's.
 */
export interface Capacities {
  readonly workingLoadLimit?: QuantityInput<'ratedLoad'>;
  /** LC of EN 12195. */
  readonly lashingCapacity?: QuantityInput<'ratedLoad'>;
  /** MSL of the IMO codes. */
  readonly maximumSecuringLoad?: QuantityInput<'ratedLoad'>;
  /** STF of EN 12195: the pretension a tensioner was tested to give. */
  readonly standardTensionForce?: QuantityInput<'force'>;
  readonly ratedStrength?: QuantityInput<'ratedLoad'>;
  /** The force at which it may break, as its maker states it. */
  readonly breakingStrength?: QuantityInput<'ratedLoad'>;
}

interface PartBase {
  /** Unique within its assembly; results name parts by it. */
  readonly id: string;
  /** The working load limit marked by the maker; short for `capacities.workingLoadLimit`. */
  readonly markedWll?: QuantityInput<'ratedLoad'>;
  readonly capacities?: Capacities;
  readonly condition?: Condition;
}

export interface ChainPart extends PartBase {
  readonly kind: 'chain';
  readonly size: TradeSize;
  /** A number, or for European chain its class as text; left out when it cannot be read from the chain. */
  readonly grade?: AnyGrade;
}

export interface WebbingPart extends PartBase {
  readonly kind: 'webbing';
  /** Width in inches as the table writes it: `'2'`, `'1-3/4'`. */
  readonly width?: string;
}

export interface WireRopePart extends PartBase {
  readonly kind: 'wire-rope';
  /** Diameter in inches as the table writes it: `'3/8'`. */
  readonly size?: string;
  /** Nominal strength of this construction; left out when the construction is not known. */
  readonly nominalStrength?: QuantityInput<'force'>;
}

export interface FiberRopePart extends PartBase {
  readonly kind: 'fiber-rope';
  readonly size?: string;
  /** `'manila'`, `'polypropylene'`, `'polyester'`, `'nylon'`, `'double-braided-nylon'`; left out when a synthetic rope is of unknown composition. */
  readonly material?: string;
}

export interface StrappingPart extends PartBase {
  readonly kind: 'strapping';
  readonly width?: string;
  readonly thickness?: string;
}

/** Hooks and links. Marked with grade and size only, one is rated as the chain of that grade and size. */
export interface FittingPart extends PartBase {
  readonly kind: 'grab-hook' | 'slip-hook' | 'connecting-link' | 'master-link' | 'clevis';
  readonly size?: TradeSize;
  readonly grade?: AnyGrade;
  readonly latch?: boolean;
}

/** Parts that no table rates by size: their mark is the only rating they have. */
export interface MarkedPart extends PartBase {
  readonly kind: 'binder' | 'shackle' | 'turnbuckle' | 'winch';
  readonly size?: string;
  /** For a binder. */
  readonly style?: 'lever' | 'ratchet';
}

/** The point on the vehicle or on the cargo that the tie-down is fixed to. It is part of the tie-down. */
export interface AnchorPart extends PartBase {
  readonly kind: 'anchor';
  readonly at: 'vehicle' | 'cargo';
}

/** Legs side by side in place of one part of the series. */
export interface ParallelPart {
  readonly kind: 'parallel';
  readonly id: string;
  /** Each leg is a series of parts of its own. */
  readonly legs: readonly (readonly Part[])[];
  /**
   * `'equal'`: something makes the legs share alike, such as a ring they pull through, so n legs carry n times
   * the weakest. `'one-leg'`: nothing makes them share, so the weakest leg may have to carry it all.
   */
  readonly loadSharing: 'equal' | 'one-leg';
}

/** One part of an assembly. */
export type Part =
  | ChainPart
  | WebbingPart
  | WireRopePart
  | FiberRopePart
  | StrappingPart
  | FittingPart
  | MarkedPart
  | AnchorPart
  | ParallelPart;

export type PartKind = Part['kind'];
