import type { Provenance } from '../working/source.js';
import type { GeneratedTable } from './rating-table.js';

/** One cause for taking a chain or a hook out of service, as its source words it. */
export interface Criterion {
  /** Removed when what is measured compares so with the limit; `any`: when it is found at all. */
  readonly comparison: '<' | '>' | '>=' | 'any';
  /** Left out for `any`, and where a wear table has it by size. */
  readonly limit?: number;
  readonly unit?: CriterionUnit;
  /** What a percentage is of. */
  readonly basis?: string;
  readonly clause: string;
  /** `read` where it is left out. */
  readonly provenance?: Provenance;
}

export type CriterionUnit = '%' | 'deg' | 'F' | 'C' | 'in';

/** What a source measures or looks for on a chain. */
export type ChainQuantity =
  | ChainDefect
  | 'damage'
  | 'least-diameter'
  | 'wear-depth'
  | 'wear'
  | 'mean-diameter'
  | 'mean-wear'
  | 'elongation'
  | 'link-elongation'
  | 'link-elongation-beyond-wear'
  | 'stretch'
  | 'notch-depth'
  | 'bend'
  | 'highest-temperature'
  | 'temperature-class-4'
  | 'temperature-class-8'
  | 'tensionings';

/** What a source measures or looks for on a hook. */
export type HookQuantity = HookDefect | 'damage' | 'throat-opening' | 'throat-increase' | 'twist' | 'wear';

/** What is seen on a chain without an instrument. */
export type ChainDefect = (typeof CHAIN_DEFECTS)[number];

/**
 * Every {@link ChainDefect}, for a form to tick.
 *
 * @example
 * CHAIN_DEFECTS.includes('crack')
 * // => true
 */
export const CHAIN_DEFECTS = [
  'crack',
  'bent-link',
  'visible-stretch',
  'bad-weld',
  'gouge',
  'corrosion',
  'heat-damage',
  'weld-spatter',
  'stiff-link',
  'makeshift-repair',
  'mark-missing',
  'other-damage',
] as const;

/** What is seen on a hook without an instrument. */
export type HookDefect = (typeof HOOK_DEFECTS)[number];

/**
 * Every {@link HookDefect}.
 *
 * @example
 * HOOK_DEFECTS.includes('latch-fails')
 * // => true
 */
export const HOOK_DEFECTS = ['crack', 'bend-or-twist', 'latch-fails', 'other-damage'] as const;

/** The rows of one set: by what is inspected and what is measured. */
export interface CriteriaRows {
  readonly chain?: { readonly [quantity in ChainQuantity]?: Criterion };
  readonly hook?: { readonly [quantity in HookQuantity]?: Criterion };
}

/** Least sizes of worn links by the size of the chain: numbers, or fractions as printed. */
export interface WearRow {
  readonly minimum_in: number | string;
  readonly wear_in?: string;
  readonly minimum_provenance?: Provenance;
  readonly wear_provenance?: Provenance;
}

/**
 * The causes for removal of one source and edition, as an exported constant that the caller names. Sources differ by a
 * factor of two; an inspection names one and never mixes them.
 */
export interface CriteriaSet {
  readonly id: string;
  readonly title: string;
  readonly document: string;
  /** What its clauses are cited with, such as `29 CFR`. */
  readonly short: string;
  readonly asOf: string;
  /** What its word is worth: a guide and a training text are neither law nor standard, a policy is the owner's own. */
  readonly standing: 'regulation' | 'standard' | 'guide' | 'training text' | 'policy';
  readonly removal: { readonly rows: CriteriaRows };
  readonly wearTable?: GeneratedTable<{ readonly [size: string]: WearRow }>;
}
