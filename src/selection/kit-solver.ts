import { inUnit } from '../quantities/convert.js';
import { compareExactSums, type ExactTerm } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { type Assembly, type AssemblyGroup, assembliesOf, type Measures } from './kit-assemblies.js';
import type { Demands } from './kit-demand.js';
import { PRICE_DECIMALS } from './kit-item.js';
import type { Piece, Pieces } from './kit-pieces.js';
import { searchLeastCost } from './kit-search.js';

/** What may be made as small as possible. */
export type KitObjective = 'price' | 'mass' | 'parts';

/**
 * What else a search makes small or great: pieces that are bought, tie-downs that cannot be made, or the strength for one
 * article by its place.
 */
export type Goal = KitObjective | 'bought' | 'unmade' | { readonly strength: number };

/** The most that a kit may cost, weigh and count. */
export interface Ceilings {
  readonly price?: number;
  readonly mass?: QuantityLike;
  readonly parts?: number;
  readonly bought?: number;
}

/** The pieces of each tie-down, in the order of the demands. */
export type Chosen = readonly (readonly Piece[])[];

/** Prices as whole numbers, so that sums of them are exact. */
const PRICE_SCALE = 10 ** PRICE_DECIMALS;
export const scaledPrice = ({ price = 0 }: { readonly price?: number | undefined }): number =>
  Math.round(price * PRICE_SCALE);
const boughtOf = ({ source }: Piece): number => (source === 'catalog' ? 1 : 0);
/** A second objective decides between kits that are equal by the first; this is its share of the smallest step of that. */
const SECOND = 0.5;
/** Masses of kits that differ by less than this share count as equal. */
const MASS_STEP = 1e-9;

/** Finds kits by one objective under ceilings; each answer is proved. */
export class KitSolver {
  /** In which masses are measured. */
  readonly unit: 'lb' | 'kg';
  private readonly demands: Demands;
  private readonly pieces: Pieces;
  private readonly passes: (chosen: Chosen) => boolean;
  private readonly most: { readonly price: number; readonly mass: number };

  /** @param passes whether the rule set passes a choice; asked only where sums are too close for doubles */
  constructor(demands: Demands, pieces: Pieces, passes: (chosen: Chosen) => boolean) {
    this.unit = demands.unit;
    this.demands = demands;
    this.pieces = pieces;
    this.passes = passes;
    const slots = demands.demands.reduce((sum, { fittings, spares }) => sum + 1 + fittings.length + spares.length, 0);
    const all = [pieces.chains, ...pieces.fittings.values()].flat();
    this.most = {
      price: slots * all.reduce((most, piece) => Math.max(most, scaledPrice(piece)), 1),
      mass: slots * all.reduce((most, { weight }) => Math.max(most, weight), 0),
    };
  }

  /**
   * The best kit, or null where there is none.
   *
   * Counts are looked at only where they matter: a kit that is the best while there is enough of everything, and uses no
   * more than there is, is the best. What it uses too much of becomes scarce, and the search is made again.
   */
  solve(goal: Goal, ceilings: Ceilings): Chosen | null {
    const measures = this.measuresOf(goal, ceilings);
    const scarce: Piece[] = [];
    const weak = typeof goal === 'object' || goal === 'unmade';
    for (;;) {
      const made = assembliesOf(this.demands, this.pieces, measures, scarce);
      const groups = goal === 'unmade' ? made.map(withNothing) : made;
      const found = searchLeastCost({
        groups,
        required: weak ? this.demands.required.map(() => 0) : this.demands.required,
        pieces: scarce.map(({ count }) => count),
        limits: limitsOf(ceilings, this.demands.unit),
        tolerance: this.toleranceOf(goal),
        holds: (chosen) => {
          const kit = inOrder(groups, chosen, this.demands.demands.length);
          return withinCeilings(kit.flat(), ceilings) && (weak || this.passes(kit));
        },
      });
      if (found === null) return null;
      const kit = inOrder(groups, found, this.demands.demands.length);
      const short = [...countPieces(kit.flat())].filter(([piece, used]) => used > piece.count).map(([piece]) => piece);
      if (short.length === 0) return kit;
      scarce.push(...short);
    }
  }

  private measuresOf(goal: Goal, { price, mass, parts, bought }: Ceilings): Measures {
    const takes = [
      ...(price === undefined ? [] : [scaledPrice]),
      ...(mass === undefined ? [] : [weightOf]),
      ...(parts === undefined ? [] : [one]),
      ...(bought === undefined ? [] : [boughtOf]),
    ];
    if (typeof goal === 'object') return { cost: () => 0, takes, strength: goal.strength };
    const lighter = (piece: Piece) => (SECOND * piece.weight) / Math.max(this.most.mass, Number.MIN_VALUE);
    const cheaper = (piece: Piece) => (SECOND * scaledPrice(piece)) / this.most.price;
    switch (goal) {
      case 'price':
        return { cost: (piece) => scaledPrice(piece) + lighter(piece), takes };
      case 'mass':
        return { cost: (piece) => piece.weight + MASS_STEP * this.most.mass * cheaper(piece), takes };
      case 'parts':
        return { cost: (piece) => 1 + cheaper(piece), takes };
      case 'unmade':
        return { cost: () => 0, takes };
      default:
        return { cost: (piece) => boughtOf(piece) + lighter(piece), takes };
    }
  }

  private toleranceOf(goal: Goal): number {
    if (typeof goal === 'object') return 1e-9 * (this.demands.required[goal.strength] as number);
    return goal === 'mass' ? 1e-4 * MASS_STEP * this.most.mass : 1e-7;
  }
}

/** A tie-down may also be left unmade, at a cost. */
function withNothing(group: AssemblyGroup): AssemblyGroup {
  return { ...group, choices: [...group.choices, { cost: 1, adds: 0, takes: [], uses: [], pieces: [] }] };
}

const one = (): number => 1;
const weightOf = ({ weight }: Piece): number => weight;

/** In the order that the pieces are measured in. */
function limitsOf({ price, mass, parts, bought }: Ceilings, unit: 'lb' | 'kg'): number[] {
  return [
    ...(price === undefined ? [] : [price * PRICE_SCALE]),
    ...(mass === undefined ? [] : [inUnit(mass, unit).value]),
    ...(parts === undefined ? [] : [parts]),
    ...(bought === undefined ? [] : [bought]),
  ];
}

/** Whether pieces stay within the ceilings, decided exactly. */
export function withinCeilings(pieces: readonly Piece[], { price, mass, parts, bought }: Ceilings): boolean {
  const sum = (of: (piece: Piece) => number) => pieces.reduce((total, piece) => total + of(piece), 0);
  if (price !== undefined && sum(scaledPrice) > Math.floor(price * PRICE_SCALE + 1e-6)) return false;
  if (parts !== undefined && pieces.length > parts) return false;
  if (bought !== undefined && sum(boughtOf) > bought) return false;
  if (mass === undefined) return true;
  const terms = pieces.map((piece): ExactTerm => ({ quantity: piece.mass }));
  return compareExactSums(terms, [{ quantity: mass }]) <= 0;
}

/** How often each piece is in a list. */
export function countPieces(pieces: readonly Piece[]): Map<Piece, number> {
  const counted = new Map<Piece, number>();
  for (const piece of pieces) counted.set(piece, (counted.get(piece) ?? 0) + 1);
  return counted;
}

/** From the choices of groups to the pieces of each tie-down. */
function inOrder(groups: readonly AssemblyGroup[], chosen: readonly (readonly Assembly[])[], length: number): Chosen {
  const kit = new Array<readonly Piece[]>(length);
  groups.forEach(({ members }, group) => {
    const ofGroup = chosen[group] as readonly Assembly[];
    members.forEach((member, place) => {
      kit[member] = (ofGroup[place] as Assembly).pieces;
    });
  });
  return kit;
}
