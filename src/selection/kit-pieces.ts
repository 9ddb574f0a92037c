import type { Part } from '../assembly/part.js';
import { newRater, type PartRater, rateSeries } from '../assembly/rate-part.js';
import type { TradeSize } from '../chain/trade-size.js';
import { RiggingError } from '../errors.js';
import { fits } from '../hardware/fits.js';
import { inUnit } from '../quantities/convert.js';
import { compareExact, ratioOf } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import type { Demands } from './kit-demand.js';
import type { FittingKind, KitItem, KitKind, ReadItem } from './kit-item.js';

/** An item that may go into a kit, with what a search asks of it. */
export interface Piece extends ReadItem {
  /** Its number among all pieces. */
  readonly place: number;
  readonly kind: KitKind;
  /** In the unit of the rule set; of a chain with fittings on it the least of them all. */
  readonly rating: number;
  /** Of one piece, in the unit of the rule set. */
  readonly weight: number;
  /** Of chain: for how many of the wanted lengths, the shortest first, it is long enough. */
  readonly reach: number;
  /** Pieces of one key go with the same chain, or as chain with the same fittings. */
  readonly key: string;
}

/** What there is to choose from. */
export interface Pieces {
  readonly chains: readonly Piece[];
  readonly fittings: ReadonlyMap<FittingKind, readonly Piece[]>;
  /** The wanted lengths of chain, the shortest first. */
  readonly lengths: readonly QuantityLike[];
  /** Items that cannot be counted on, as nothing rates them. */
  readonly unrated: readonly ReadItem[];
  /** Items that are rated, chain that is too short for any tie-down among them. */
  readonly rated: readonly ReadItem[];
  readonly goesWith: (fitting: Piece, chain: Piece) => boolean;
}

/** Rates the items by the rule set's own table, and finds which fitting goes with which chain. */
export function readPieces(items: readonly ReadItem[], { demands, ratings, unit }: Demands): Pieces {
  const rater = newRater(ratings);
  const lengths = distinctLengths(demands.map(({ chainLength }) => chainLength));
  const chains: Piece[] = [];
  const fittings = new Map<FittingKind, Piece[]>();
  const unrated: ReadItem[] = [];
  const rated: ReadItem[] = [];
  for (const [place, read] of items.entries()) {
    const { item } = read;
    const rating = ratingOf(rater, item, unit);
    if (rating === null) {
      unrated.push(read);
      continue;
    }
    rated.push(read);
    const { kind, size, chainSizes, includes } = item;
    const weight = inUnit(read.mass, unit).value;
    if (kind === 'chain') {
      const reach = lengths.filter((needed) => isAtLeast(read.length as QuantityLike, needed)).length;
      const key = `${size} ${[...(includes ?? [])].sort().join(' ')}`;
      if (reach > 0) chains.push(pieceOf(read, place, rating, weight, reach, key));
    } else {
      const list = fittings.get(kind) ?? [];
      fittings.set(kind, list);
      const key = chainSizes === undefined ? `${size}` : [...chainSizes].sort().join(' ');
      list.push(pieceOf(read, place, rating, weight, 0, key));
    }
  }
  return { chains, fittings, lengths, unrated, rated, goesWith: newFitter() };
}

/** Written out: copying the fields of ten thousand rows one by one costs a third of copying them with a spread. */
function pieceOf(
  { item, source, mass, length, price, count }: ReadItem,
  place: number,
  rating: number,
  weight: number,
  reach: number,
  key: string,
): Piece {
  return { item, source, mass, length, price, count, kind: item.kind, place, rating, weight, reach, key };
}

function ratingOf(rater: PartRater, item: KitItem, unit: 'lb' | 'kg'): number | null {
  const { workingLoadLimit } = rateSeries(rater, partsOf(item, 'part'));
  return workingLoadLimit === null ? null : ratedLoadIn(workingLoadLimit, unit).value;
}

/** An item as parts of a plan: itself, and what is sold on it. */
export function partsOf(item: KitItem, id: string): Part[] {
  const own = partOf(item.kind, id, item);
  return [own, ...(item.includes ?? []).map((kind, index) => partOf(kind, `${id} ${kind} ${index + 1}`, item))];
}

function partOf(kind: KitKind, id: string, { size, grade, markedWll }: KitItem): Part {
  return {
    id,
    kind,
    ...(size !== undefined && { size }),
    ...(grade !== undefined && { grade }),
    ...(markedWll !== undefined && { markedWll }),
  } as Part;
}

function distinctLengths(lengths: readonly QuantityLike[]): QuantityLike[] {
  const sorted = [...lengths].sort(compareExact);
  return sorted.filter((each, index) => index === 0 || compareExact(each, sorted[index - 1] as QuantityLike) !== 0);
}

/** Whether a length is at least another, decided exactly. */
function isAtLeast(length: QuantityLike, needed: QuantityLike): boolean {
  return ratioOf(inUnit(needed, 'mm').value, inUnit(length, 'mm').value, () => compareExact(needed, length)).fits;
}

/** Remembers what was asked: a catalog has thousands of hooks and a dozen sizes. */
function newFitter(): Pieces['goesWith'] {
  const known = new Map<string, boolean>();
  return (fitting, chain) => {
    const size = chain.item.size as TradeSize;
    const key = `${fitting.kind} ${fitting.key} ${size}`;
    let answer = known.get(key);
    if (answer === undefined) {
      answer = goesWith(fitting.item, size);
      known.set(key, answer);
    }
    return answer;
  };
}

/**
 * Hooks as {@link fits} says; connecting links and clevises are made for chain of their own size; binders and turnbuckles
 * for the sizes that are marked on them. Shackles and master links join hooks and points, not links of the chain.
 */
function goesWith({ kind, size, chainSizes }: KitItem, chain: TradeSize): boolean {
  switch (kind) {
    case 'grab-hook':
    case 'slip-hook':
      return hookFits(kind, size as TradeSize, chain);
    case 'connecting-link':
    case 'clevis':
      return size === chain;
    case 'binder':
    case 'turnbuckle':
      return chainSizes?.includes(chain) === true;
    default:
      return true;
  }
}

function hookFits(kind: 'grab-hook' | 'slip-hook', size: TradeSize, chain: TradeSize): boolean {
  try {
    return fits({ hook: { kind, size }, chain: { size: chain }, working: false }).verdict === 'pass';
  } catch (error) {
    if (error instanceof RiggingError) return false; // a size whose hooks nobody has compared
    throw error;
  }
}
