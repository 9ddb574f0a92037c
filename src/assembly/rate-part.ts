import { CHAIN_GRADES, isTradeSize } from '../chain/trade-size.js';
import { checkList, checkOneOf, fail, failAt } from '../errors.js';
import { compareExactSums } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import { chainCell, printedRating, type RatedCell, type RatedRows, type RatingTable, rowOf } from '../tables/rating-table.js';
import { type Note, note, type Words } from '../working/note.js';
import type { Provenance } from '../working/source.js';
import type { ChainPart, FittingPart, Part, PartKind } from './part.js';

/** Why a part has the rating it has. */
export type PartBasis =
  | 'marked'
  | 'table'
  | 'unmarked default'
  | 'as chain of its grade and size'
  | 'share of nominal strength'
  | 'equal legs'
  | 'weakest leg'
  | 'damaged, counts zero'
  | 'unknown';

/** What one part may be counted on for, and why. */
interface PartLimit {
  /** As marked or as printed in the table; null when it is not known. */
  readonly workingLoadLimit: QuantityLike | null;
  readonly basis: PartBasis;
  readonly provenance?: Provenance;
  /** What must be known to rate it. */
  readonly missing?: Note;
}

/** One part's contribution to the weakest link. */
export interface PartRating extends PartLimit {
  readonly id: string;
  readonly kind: PartKind;
}

/** The parts of a series rated one by one, and the least of them. */
export interface SeriesRating {
  /** The least rating; null when a part is unknown, unless another already counts zero. */
  readonly workingLoadLimit: QuantityLike | null;
  /** Ids of the parts that have the least rating. */
  readonly weakest: readonly string[];
  /** The least among the parts that are known: the series carries no more than this. */
  readonly atMost: QuantityLike | null;
  readonly missing: readonly Note[];
  /** Ids of the parts that are damaged. */
  readonly damaged: readonly string[];
}

/**
 * Rates parts under one table. It remembers the last chain and the last fitting it looked up, because the
 * tie-downs of a plan are mostly alike.
 */
export class PartRater {
  readonly ratings: RatingTable;
  private lastChain: { size: string; grade: number | undefined; limit: PartLimit } | undefined;
  private lastFitting: { size: string; grade: number; limit: PartLimit } | undefined;

  constructor(ratings: RatingTable) {
    this.ratings = ratings;
  }

  /**
   * Rates a series by its weakest part: WLL = min(WLL of every part). An unknown part makes the whole unknown,
   * never zero and never infinite; a part that counts zero makes the whole zero, whatever is unknown beside it.
   *
   * @param each receives every part's own rating, for a caller that shows them
   */
  rateSeries(parts: readonly Part[], each?: PartRating[]): SeriesRating {
    checkList(parts, 'parts');
    checkIds(parts, 'parts');
    let least: QuantityLike | null = null;
    let weakest: string[] = [];
    let missing: Note[] | undefined;
    let damaged: string[] | undefined;
    for (let index = 0; index < parts.length; index++) {
      try {
        const part = parts[index] as Part;
        const limit = this.limitOf(part);
        each?.push({ id: part.id, kind: part.kind, ...limit });
        const { workingLoadLimit } = limit;
        if (workingLoadLimit === null) {
          missing ??= [];
          if (limit.missing !== undefined) missing.push(limit.missing);
          continue;
        }
        if (limit.basis === 'damaged, counts zero') {
          damaged ??= [];
          damaged.push(part.id);
        }
        const order = least === null ? -1 : compareRated(workingLoadLimit, least);
        if (order < 0) {
          least = workingLoadLimit;
          weakest = [part.id];
        } else if (order === 0) weakest.push(part.id);
      } catch (error) {
        failAt(`parts[${index}]`, error);
      }
    }
    const known = missing === undefined || (least !== null && least.value === 0);
    return {
      workingLoadLimit: known ? least : null,
      weakest: known ? weakest : NONE,
      atMost: least,
      missing: missing ?? NONE,
      damaged: damaged ?? NONE,
    };
  }

  private limitOf(part: Part): PartLimit {
    if (part.kind === 'parallel') return this.limitOfLegs(part);
    const { condition, capacities } = part;
    if (condition !== undefined && condition !== 'sound') {
      const state = stateOf(condition);
      if (state === 'damaged' || state === 'remove') return DAMAGED;
      if (state === 'undetermined') return unknown(part, CONDITION_UNDETERMINED);
    }
    const marked = part.markedWll ?? capacities?.workingLoadLimit;
    if (marked !== undefined) {
      const workingLoadLimit = readPositive(marked, 'ratedLoad', part.markedWll === undefined ? 'capacities.workingLoadLimit' : 'markedWll');
      return { workingLoadLimit, basis: 'marked' };
    }
    if (capacities !== undefined) return unknown(part, OTHER_SYSTEM);
    const { ratings } = this;
    switch (part.kind) {
      case 'chain':
        return this.limitOfChain(part);
      case 'grab-hook':
      case 'slip-hook':
      case 'connecting-link':
      case 'master-link':
      case 'clevis':
        return this.limitOfFitting(part);
      case 'webbing':
        return this.limitOfRow(part, ratings.webbing?.rows, part.width);
      case 'strapping':
        return this.limitOfRow(part, rowOf<RatedRows>(ratings.strapping?.rows ?? NO_ROWS, part.width ?? ''), part.thickness);
      case 'wire-rope': {
        if (part.nominalStrength === undefined) return this.limitOfRow(part, ratings.wireRope?.rows, part.size);
        if (ratings.wireRopeByStrength === undefined) return unknown(part, NO_MARK);
        const { value, unit } = readPositive(part.nominalStrength, 'force', 'nominalStrength');
        const { fraction } = ratings.wireRopeByStrength.rows['wire-rope'].WLL;
        return { workingLoadLimit: { value: value * fraction, unit }, basis: 'share of nominal strength' };
      }
      case 'fiber-rope': {
        const material = part.material ?? ratings.unknownFiberRope?.material ?? '';
        const rows = rowOf<RatedRows>(ratings.fiberRope?.rows ?? NO_ROWS, material);
        if (part.material !== undefined && ratings.fiberRope !== undefined) checkOneOf(material, Object.keys(ratings.fiberRope.rows), 'material');
        return this.limitOfRow(part, rows, part.size, part.material === undefined ? 'unmarked default' : 'table');
      }
      case 'anchor':
        return unknown(part, ANCHOR_NOT_RATED, { at: part.at });
      case 'binder':
      case 'shackle':
      case 'turnbuckle':
      case 'winch':
        return unknown(part, NO_MARK);
      default:
        return fail('UNKNOWN_VALUE', 'kind', 'a kind of part, such as chain, grab-hook, binder or anchor', (part as Part).kind, 'The type Part lists them.');
    }
  }

  private limitOfChain(part: ChainPart): PartLimit {
    const { size, grade } = part;
    const last = this.lastChain;
    if (last !== undefined && last.size === size && last.grade === grade) return last.limit;
    const { ratings } = this;
    const counted = grade ?? ratings.unmarkedChain?.grade;
    if (counted === undefined) return unknown(part, UNMARKED_CHAIN);
    const cell = rowOf<RatedCell>(rowOf(ratings.chain.rows, size) ?? NO_ROWS, counted);
    if (cell === undefined) {
      // A real chain that this table does not list needs its mark; a size or grade nobody makes is a mistake.
      const exists = isTradeSize(size) && (grade === undefined || CHAIN_GRADES.includes(grade));
      if (!exists) chainCell(ratings, size, counted);
      return unknown(part, NOT_LISTED, { size, grade: counted, table: ratings.id });
    }
    const limit = this.fromCell(cell, grade === undefined ? 'unmarked default' : 'table');
    this.lastChain = { size, grade, limit };
    return limit;
  }

  /** ASTM A952 sizes fittings by chain: one marked with grade and size carries that chain's limit. A lower mark governs. */
  private limitOfFitting(part: FittingPart): PartLimit {
    const { size, grade } = part;
    if (size === undefined || grade === undefined) return unknown(part, NO_MARK);
    const last = this.lastFitting;
    if (last !== undefined && last.size === size && last.grade === grade) return last.limit;
    const { ratings } = this;
    const cell = rowOf<RatedCell>(rowOf(ratings.chain.rows, size) ?? NO_ROWS, grade);
    if (cell === undefined) return unknown(part, NOT_LISTED, { size, grade, table: ratings.id });
    const limit: PartLimit = {
      workingLoadLimit: printedRating(cell, ratings.units),
      basis: 'as chain of its grade and size',
      provenance: 'derived',
    };
    this.lastFitting = { size, grade, limit };
    return limit;
  }

  private limitOfRow(part: Part, rows: RatedRows | undefined, key: string | undefined, basis: PartBasis = 'table'): PartLimit {
    if (rows === undefined || key === undefined) return unknown(part, NO_MARK);
    const cell = rowOf(rows, key);
    if (cell === undefined) {
      return unknown(part, NO_ROW, { size: key, table: this.ratings.id, listed: Object.keys(rows).join(', ') });
    }
    return this.fromCell(cell, basis);
  }

  private fromCell(cell: RatedCell, basis: PartBasis): PartLimit {
    const { units, chain } = this.ratings;
    const own = cell.provenance ?? (units === 'us' ? cell.wll_provenance : cell.wll_kg_provenance);
    return { workingLoadLimit: printedRating(cell, units), basis, provenance: own ?? chain.source.provenance };
  }

  private limitOfLegs(part: Extract<Part, { kind: 'parallel' }>): PartLimit {
    const { legs, loadSharing } = part;
    checkList(legs, 'legs', 2);
    checkOneOf(loadSharing, ['equal', 'one-leg'], 'loadSharing');
    let least: QuantityLike | null = null;
    let missing: Note | undefined;
    for (let index = 0; index < legs.length; index++) {
      let leg: SeriesRating;
      try {
        leg = this.rateSeries(legs[index] as readonly Part[]);
      } catch (error) {
        failAt(`legs[${index}]`, error);
      }
      if (leg.workingLoadLimit === null) missing ??= leg.missing[0];
      else if (least === null || compareRated(leg.workingLoadLimit, least) < 0) least = leg.workingLoadLimit;
    }
    const basis = loadSharing === 'equal' ? 'equal legs' : 'weakest leg';
    if (least !== null && least.value === 0) return { workingLoadLimit: ZERO, basis };
    if (missing !== undefined || least === null) {
      return { workingLoadLimit: null, basis: 'unknown', ...(missing === undefined ? {} : { missing }) };
    }
    const count = loadSharing === 'equal' ? legs.length : 1;
    return { workingLoadLimit: { value: least.value * count, unit: least.unit }, basis };
  }
}

/** Which of two rated loads is larger, exactly, mass or force units alike. */
export function compareRated(left: QuantityLike, right: QuantityLike): -1 | 0 | 1 {
  if (left.unit === right.unit) return left.value < right.value ? -1 : left.value > right.value ? 1 : 0;
  return compareExactSums([{ quantity: left }], [{ quantity: right }]);
}

/** Every item of a list is an object with an id, used once in that list. */
export function checkIds(list: readonly { readonly id: string }[], name: string): void {
  for (let index = 0; index < list.length; index++) {
    const id = list[index]?.id;
    if (typeof id !== 'string' || id === '') {
      fail('MISSING_FIELD', `${name}[${index}].id`, 'a name', id, 'Give it an id; results name it by that.');
    }
  }
  const twice = list.length > 16 ? secondUse(list) : secondUseInShort(list);
  if (twice >= 0) {
    fail('DUPLICATE_ID', `${name}[${twice}].id`, 'an id used once in its list', list[twice]?.id, 'Rename one of the two.');
  }
}

function secondUse(list: readonly { readonly id: string }[]): number {
  const seen = new Set<string>();
  return list.findIndex(({ id }) => seen.size === seen.add(id).size);
}

function secondUseInShort(list: readonly { readonly id: string }[]): number {
  for (let index = 1; index < list.length; index++) {
    const id = list[index]?.id;
    for (let earlier = 0; earlier < index; earlier++) if (list[earlier]?.id === id) return index;
  }
  return -1;
}

function stateOf(condition: unknown): unknown {
  const state = typeof condition === 'object' && condition !== null && 'verdict' in condition ? condition.verdict : condition;
  checkOneOf(state, ['sound', 'damaged', 'fit', 'remove', 'undetermined'], 'condition');
  return state;
}

function unknown(part: Part, words: Words, params: Readonly<Record<string, string | number>> = {}): PartLimit {
  return { workingLoadLimit: null, basis: 'unknown', missing: note(words, { part: part.id, kind: part.kind, ...params }) };
}

const NONE: readonly never[] = [];
const NO_ROWS = {};
const ZERO: QuantityLike = { value: 0, unit: 'lb' };
const DAMAGED: PartLimit = { workingLoadLimit: ZERO, basis: 'damaged, counts zero' };

// Each says what must be known; the place it is told in adds that it is missing.
const NO_MARK = { code: 'PART_NOT_MARKED', text: 'The working load limit marked on {kind} {part}: no table gives one.' };
const UNMARKED_CHAIN = { code: 'CHAIN_NOT_MARKED', text: 'The grade or working load limit marked on chain {part}.' };
const NOT_LISTED = {
  code: 'PAIR_NOT_LISTED',
  text: 'The working load limit marked on {kind} {part}: {table} has none for {size} grade {grade}.',
};
const NO_ROW = {
  code: 'SIZE_NOT_LISTED',
  text: 'The working load limit marked on {kind} {part}: {table} has none for {size}, only for {listed}.',
};
const OTHER_SYSTEM = {
  code: 'OTHER_CAPACITY_SYSTEM',
  text: 'The working load limit of {kind} {part}: another capacity is not converted into one.',
};
const CONDITION_UNDETERMINED = {
  code: 'CONDITION_UNDETERMINED',
  text: 'Whether {kind} {part} may stay in service: its inspection is undetermined.',
};
const ANCHOR_NOT_RATED = {
  code: 'ANCHOR_NOT_RATED',
  text: 'The rating of anchor point {part} on the {at}: an unrated point is unknown, not unlimited.',
};
