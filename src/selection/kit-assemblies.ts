import { compareExact } from '../quantities/exact.js';
import type { Demand, Demands } from './kit-demand.js';
import type { FittingKind } from './kit-item.js';
import type { Piece, Pieces } from './kit-pieces.js';
import type { Choice, ChoiceGroup } from './search-problem.js';

/** What a search adds up of pieces: its cost, and what is limited. */
export interface Measures {
  readonly cost: (piece: Piece) => number;
  readonly takes: readonly ((piece: Piece) => number)[];
  /** The sum that is made as great as possible, in place of a cost. */
  readonly strength?: number;
}

/** One way to make a tie-down: its pieces, chain first, spares among them. */
export interface Assembly extends Choice {
  readonly pieces: readonly Piece[];
}

/** Tie-downs that are alike, and the assemblies that would do for each. */
export interface AssemblyGroup extends ChoiceGroup<Assembly> {
  /** Their places in the list of demands. */
  readonly members: readonly number[];
  /** Their fittings and spares. */
  readonly kinds: string;
}

/** An assembly while it grows. */
interface Partial {
  readonly cost: number;
  readonly takes: readonly number[];
  /** What it adds to a sum, as far as it has grown. */
  readonly adds: number;
  readonly rating: number;
  readonly uses: readonly number[];
  readonly last: Link;
}

interface Link {
  readonly piece: Piece;
  readonly before: Link | null;
}

/** More pieces of one item than any tie-down has. */
const MOST_ALIKE = 64;
/** Where a sum is reached by one tie-down alone, more strength is worth nothing. */
const CAP = 2;

/**
 * The assemblies of each group of tie-downs, without those that another one can always replace: it costs no more, takes
 * no more of what is limited, is as strong and uses no scarce piece that the other does not.
 *
 * @param scarce the pieces of which there may be too few; of the others there are taken to be enough
 */
export function assembliesOf(
  { demands, required }: Demands,
  pieces: Pieces,
  measures: Measures,
  scarce: readonly Piece[],
): AssemblyGroup[] {
  const scarceAt = new Map(scarce.map((piece, index) => [piece, index]));
  const kept = withoutDominated(demands, pieces, measures, (piece) =>
    scarceAt.has(piece) ? piece.count : Number.POSITIVE_INFINITY,
  );
  const groups = new Map<string, { readonly demand: Demand; readonly members: number[] }>();
  demands.forEach((demand, index) => {
    const { sum, credit, chainLength, anchorLimit, fittings, spares } = demand;
    const length = pieces.lengths.findIndex((each) => compareExact(each, chainLength) === 0);
    const key = [sum, credit, length, anchorLimit, [...fittings].sort(), [...spares].sort()].join('|');
    const group = groups.get(key) ?? { demand, members: [] };
    group.members.push(index);
    groups.set(key, group);
  });
  const made = [...groups.values()].map(({ demand, members }): AssemblyGroup => {
    const { sum, fittings, spares } = demand;
    const kinds = [[...fittings].sort(), [...spares].sort()].join('|');
    const most = sum === undefined ? 0 : CAP * (required[sum] as number);
    const choices = grow(demand, kept, measures, scarceAt, most).map(({ takes, adds, uses, last, cost }) => {
      const own = listOf(last);
      return {
        cost: measures.strength === undefined ? cost : measures.strength === sum ? -adds : 0,
        adds,
        takes,
        uses,
        marks: marksOf(own),
        pieces: own,
      };
    });
    return { places: members.length, choices, members, kinds, ...(sum !== undefined && { sum }) };
  });
  return joinAlike(made);
}

/** Groups to which the same choices are open, for instance because no anchor point is the weakest, are one. */
function joinAlike(groups: readonly AssemblyGroup[]): AssemblyGroup[] {
  const joined = new Map<string, AssemblyGroup>();
  for (const group of groups) {
    const key = `${group.sum} ${group.kinds} ${group.choices.map(({ marks, adds }) => `${adds}:${marks.join()}`).join(';')}`;
    const known = joined.get(key);
    const members = [...(known?.members ?? []), ...group.members];
    joined.set(key, { ...group, places: members.length, members });
  }
  return [...joined.values()];
}

/**
 * The pieces that no others can always stand in for.
 *
 * @param countOf how many there are of a piece, or are taken to be
 */
export function withoutDominated(
  demands: readonly Demand[],
  pieces: Pieces,
  measures: Measures,
  countOf: (piece: Piece) => number,
): Pieces {
  const wanted = (kind: string) =>
    demands.reduce(
      (sum, demand) => sum + [...demand.fittings, ...demand.spares].filter((each) => each === kind).length,
      0,
    );
  const fittings = new Map<FittingKind, readonly Piece[]>();
  for (const [kind, list] of pieces.fittings) fittings.set(kind, undominated(list, wanted(kind), measures, countOf));
  const chains = undominated(pieces.chains, demands.length + wanted('chain'), measures, countOf);
  return { ...pieces, chains, fittings };
}

type Scarce = ReadonlyMap<Piece, number>;

/**
 * A piece is left out where those that are better or as good in everything are enough for all places: whoever takes it
 * could take one of them that is still free.
 */
function undominated(
  list: readonly Piece[],
  places: number,
  { cost, takes }: Measures,
  countOf: (piece: Piece) => number,
): Piece[] {
  if (places === 0) return [];
  const byKey = new Map<string, Measured[]>();
  for (const piece of list) {
    if (piece.count === 0) continue;
    let same = byKey.get(piece.key);
    if (same === undefined) {
      same = [];
      byKey.set(piece.key, same);
    }
    same.push({ piece, cost: cost(piece), takes: takes.map((take) => take(piece)) });
  }
  return [...byKey.values()].flatMap((same) => {
    same.sort(
      (a, b) =>
        a.cost - b.cost ||
        compareLists(a.takes, b.takes) ||
        b.piece.rating - a.piece.rating ||
        b.piece.reach - a.piece.reach,
    );
    const kept: Measured[] = [];
    for (const each of same) {
      let better = 0;
      for (let at = 0; at < kept.length && better < places; at++) {
        const other = kept[at] as Measured;
        if (standsIn(other, each)) better += countOf(other.piece);
      }
      if (better < places) kept.push(each);
    }
    return kept.map(({ piece }) => piece);
  });
}

interface Measured {
  readonly piece: Piece;
  readonly cost: number;
  readonly takes: readonly number[];
}

function standsIn(one: Measured, other: Measured): boolean {
  return (
    one.cost <= other.cost &&
    one.piece.rating >= other.piece.rating &&
    one.piece.reach >= other.piece.reach &&
    noneAbove(one.takes, other.takes)
  );
}

function noneAbove(one: readonly number[], other: readonly number[]): boolean {
  for (let at = 0; at < one.length; at++) if ((one[at] as number) > (other[at] as number)) return false;
  return true;
}

function compareLists(one: readonly number[], other: readonly number[]): number {
  for (let at = 0; at < one.length; at++) {
    const gap = (one[at] as number) - (other[at] as number);
    if (gap !== 0) return gap;
  }
  return 0;
}

/** Adds piece after piece to every chain that is long enough, and drops what is dominated on the way. */
function grow(
  demand: Demand,
  { chains, fittings: kept, lengths, goesWith }: Pieces,
  { cost, takes }: Measures,
  scarce: Scarce,
  most: number,
): Partial[] {
  const { chainLength, fittings, spares, anchorLimit, credit } = demand;
  const reach = lengths.findIndex((each) => compareExact(each, chainLength) === 0) + 1;
  const ofChain = 1 + spares.filter((each) => each === 'chain').length;
  const spareFittings = spares.filter((each) => each !== 'chain');
  const grown = (before: Partial | null, piece: Piece, times: number): Partial => {
    const rating = Math.min(before === null ? anchorLimit : before.rating, piece.rating);
    const thing = scarce.get(piece);
    const uses = before === null ? [] : before.uses;
    let last: Link | null = before === null ? null : before.last;
    for (let time = 0; time < times; time++) last = { piece, before: last };
    return {
      cost: (before === null ? 0 : before.cost) + times * cost(piece),
      takes: takes.map((take, at) => (before === null ? 0 : (before.takes[at] as number)) + times * take(piece)),
      rating,
      adds: Math.min(credit * rating, most),
      uses: thing === undefined ? uses : withUses(uses, thing, times),
      last: last as Link,
    };
  };
  const all: Partial[] = [];
  for (const chain of chains) {
    if (chain.reach < reach) continue;
    let partials = [grown(null, chain, ofChain)];
    const slots = [...without(fittings, chain.item.includes ?? []), ...spareFittings];
    for (const kind of slots) {
      const candidates = (kept.get(kind) ?? []).filter((each) => goesWith(each, chain));
      const next: Partial[] = [];
      for (const partial of partials) for (const each of candidates) next.push(grown(partial, each, 1));
      partials = pareto(next);
    }
    all.push(...partials);
  }
  return pareto(all);
}

/** Indices of scarce pieces in order, one for each piece used. */
function withUses(uses: readonly number[], thing: number, times: number): number[] {
  return [...uses, ...new Array<number>(times).fill(thing)].sort((a, b) => a - b);
}

/** What of a list is left after taking out each of another once. */
function without(kinds: readonly FittingKind[], taken: readonly FittingKind[]): FittingKind[] {
  const left = [...kinds];
  for (const kind of taken) {
    const at = left.indexOf(kind);
    if (at >= 0) left.splice(at, 1);
  }
  return left;
}

/** Without those that another one can always replace. */
function pareto(partials: Partial[]): Partial[] {
  partials.sort(
    (a, b) => a.cost - b.cost || compareLists(a.takes, b.takes) || b.adds - a.adds || a.uses.length - b.uses.length,
  );
  const kept: Partial[] = [];
  for (const each of partials) {
    if (
      !kept.some(
        (other) => other.adds >= each.adds && noneAbove(other.takes, each.takes) && within(other.uses, each.uses),
      )
    )
      kept.push(each);
  }
  return kept;
}

/** True when every entry of one ordered list is in another, as often. */
function within(one: readonly number[], other: readonly number[]): boolean {
  let at = 0;
  for (const each of other) if (at < one.length && one[at] === each) at++;
  return at === one.length;
}

/** A number for each piece, and another for each further one of the same. */
function marksOf(pieces: readonly Piece[]): number[] {
  const times = new Map<Piece, number>();
  return pieces.map((piece) => {
    const before = times.get(piece) ?? 0;
    times.set(piece, before + 1);
    return piece.place * MOST_ALIKE + before;
  });
}

function listOf(last: Link | null): Piece[] {
  const pieces: Piece[] = [];
  for (let link = last; link !== null; link = link.before) pieces.push(link.piece);
  return pieces.reverse();
}
