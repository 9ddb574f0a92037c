import { inUnit } from '../quantities/convert.js';
import { compareExactSums, type ExactTerm } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { sumOfMasses } from './exact-totals.js';
import { type Assembly, type AssemblyGroup, assembliesOf, type Measures, withoutDominated } from './kit-assemblies.js';
import type { Demands } from './kit-demand.js';
import { PRICE_SCALE } from './kit-item.js';
import type { Piece, Pieces } from './kit-pieces.js';
import { MOST_EFFORT, type Reach, searchLeastCost } from './kit-search.js';

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

const scaledPrice = ({ price = 0 }: { readonly price?: number | undefined }): number => Math.round(price * PRICE_SCALE);
const nothing = (): number => 0;
const one = (): number => 1;
const weightOf = ({ weight }: Piece): number => weight;
const boughtOf = ({ source }: Piece): number => (source === 'catalog' ? 1 : 0);
/** Masses of kits that differ by less than this share of the heaviest piece count as equal. */
const MASS_STEP = 1e-9;
/** How many combinations a kit that is equal by the objective and better beside it is worth. */
const SECOND_EFFORT = 20_000;
/** What a search may take at the end, when all effort went into what ran out. */
const LAST_EFFORT = 1e6;
const BESIDE = { price: 'mass', mass: 'price', parts: 'price', bought: 'mass' } as const;

/** A kit that was found. */
export interface Solved {
  readonly kit: Chosen;
  /** Null where it was proved that none is better; otherwise none is below this, prices as whole numbers. */
  readonly atLeast: number | null;
}

/** Finds kits by one objective under ceilings. */
export class KitSolver {
  /** In which masses are measured. */
  readonly unit: 'lb' | 'kg';
  private readonly demands: Demands;
  private readonly pieces: Pieces;
  private readonly passes: (chosen: Chosen) => boolean;
  /** What ran out in an earlier search is likely to run out again. */
  private readonly scarce: Piece[] = [];
  /** No two kits differ by less. */
  private readonly steps: { readonly price: number; readonly mass: number };

  /** @param passes whether the rule set passes a choice; asked only where sums are too close for doubles */
  constructor(demands: Demands, pieces: Pieces, passes: (chosen: Chosen) => boolean) {
    this.unit = demands.unit;
    this.demands = demands;
    // what no objective and no ceiling can make worth taking is left out once
    this.pieces = withoutDominated(demands.demands, pieces, EVERYTHING, ({ count }) => count);
    this.passes = passes;
    const all = [pieces.chains, ...pieces.fittings.values()].flat();
    const heaviest = all.reduce((most, { weight }) => Math.max(most, weight), 0);
    const masses = all.map(({ weight }) => weight * PRICE_SCALE);
    this.steps = {
      price: all.reduce((step, piece) => commonStep(step, scaledPrice(piece)), 0) || 1,
      mass: masses.every(Number.isInteger)
        ? masses.reduce(commonStep, 0) / PRICE_SCALE || MASS_STEP
        : MASS_STEP * heaviest,
    };
  }

  /** The best kit by a goal, or null where there is none. */
  solve(goal: Goal, ceilings: Ceilings): Solved | null {
    return this.search(goal, ceilings);
  }

  /** A kit that is as good by its objective and lighter, or for mass and parts cheaper, as far as a short search finds one. */
  refine(kit: Chosen, objective: KitObjective, ceilings: Ceilings): Chosen {
    const second = BESIDE[objective];
    const pieces = kit.flat();
    const reached: Ceilings = {
      ...ceilings,
      ...(objective === 'price' && { price: sumOf(pieces, scaledPrice) / PRICE_SCALE }),
      ...(objective === 'mass' && { mass: totalMass(pieces, this.unit) }),
      ...(objective === 'parts' && { parts: pieces.length }),
    };
    const below = sumOf(pieces, second === 'mass' ? weightOf : scaledPrice);
    return this.search(second, reached, { below, effort: SECOND_EFFORT })?.kit ?? kit;
  }

  /**
   * Counts are looked at only where they matter: a kit that is the best while there is enough of everything, and uses no
   * more than there is, is the best. What it uses too much of becomes scarce, and the search is made again.
   */
  private search(goal: Goal, ceilings: Ceilings, reach: Reach = { effort: MOST_EFFORT }): Solved | null {
    const { demands, required, unit } = this.demands;
    const measures = measuresOf(goal, ceilings);
    const weak = typeof goal === 'object' || goal === 'unmade';
    for (let { effort } = reach; ; ) {
      const made = assembliesOf(this.demands, this.pieces, measures, this.scarce);
      const groups = goal === 'unmade' ? made.map(withNothing) : made;
      const found = searchLeastCost(
        {
          groups,
          required: weak ? required.map(() => 0) : required,
          pieces: this.scarce.map(({ count }) => count),
          limits: limitsOf(ceilings, unit),
          tolerance: this.toleranceOf(goal),
          holds: (chosen) => {
            const kit = inOrder(groups, chosen, demands.length);
            return withinCeilings(kit.flat(), ceilings) && (weak || this.passes(kit));
          },
        },
        { ...reach, effort },
      );
      if (found === null) return null;
      const kit = inOrder(groups, found.chosen, demands.length);
      const short = [...countPieces(kit.flat())].filter(([piece, used]) => used > piece.count).map(([piece]) => piece);
      if (short.length === 0) return { kit, atLeast: found.atLeast };
      effort = Math.max(effort - found.effort, Math.min(reach.effort, LAST_EFFORT));
      this.scarce.push(...short);
    }
  }

  /** Kits that differ at all differ by a step, so that less need not be looked for. */
  private toleranceOf(goal: Goal): number {
    if (typeof goal === 'object') return 1e-6 * (this.demands.required[goal.strength] as number);
    const step = goal === 'price' || goal === 'mass' ? this.steps[goal] : 1;
    return 0.999 * step;
  }
}

const EVERYTHING: Measures = { cost: scaledPrice, takes: [weightOf, boughtOf] };

function measuresOf(goal: Goal, { price, mass, parts, bought }: Ceilings): Measures {
  const takes = [
    ...(price === undefined ? [] : [scaledPrice]),
    ...(mass === undefined ? [] : [weightOf]),
    ...(parts === undefined ? [] : [one]),
    ...(bought === undefined ? [] : [boughtOf]),
  ];
  if (typeof goal === 'object') return { cost: nothing, takes, strength: goal.strength };
  return { cost: { price: scaledPrice, mass: weightOf, parts: one, bought: boughtOf, unmade: nothing }[goal], takes };
}

/** The greatest whole number that both are multiples of. */
function commonStep(one: number, other: number): number {
  let [a, b] = [one, other];
  while (b > 0) [a, b] = [b, a % b];
  return a;
}

const sumOf = (pieces: readonly Piece[], of: (piece: Piece) => number): number =>
  pieces.reduce((sum, piece) => sum + of(piece), 0);

const totalMass = (pieces: readonly Piece[], unit: 'lb' | 'kg'): QuantityLike => ({
  value: sumOfMasses(
    pieces.map(({ mass }) => ({ of: mass, pieces: 1 })),
    unit,
  ),
  unit,
});

/** A tie-down may also be left unmade, at a cost. */
function withNothing(group: AssemblyGroup): AssemblyGroup {
  return { ...group, choices: [...group.choices, { cost: 1, adds: 0, takes: [], uses: [], marks: [], pieces: [] }] };
}

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
function withinCeilings(pieces: readonly Piece[], { price, mass, parts, bought }: Ceilings): boolean {
  if (price !== undefined && sumOf(pieces, scaledPrice) > Math.floor(price * PRICE_SCALE + 1e-6)) return false;
  if (parts !== undefined && pieces.length > parts) return false;
  if (bought !== undefined && sumOf(pieces, boughtOf) > bought) return false;
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
