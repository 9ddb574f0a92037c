import { checkChain } from '../chain/trade-size.js';
import { checkList, checkObject, checkOneOf, fail, failAt } from '../errors.js';
import { decimalProduct } from '../quantities/decimal.js';
import { compareExact } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import { type GeneratedTable, printedRating, type RatedCell, type RatedRows, type RatingTable, rowOf, sourceOfCell } from '../tables/rating-table.js';
import { type Note, note, type Words } from '../working/note.js';
import type { Provenance, SourceRef } from '../working/source.js';
import type { Capacities, Part, PartKind } from './part.js';

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
  /** What must be known, in legs too. */
  readonly missing: readonly Note[];
  /** Ids of the parts that are damaged, in legs too. */
  readonly damaged: readonly string[];
  /** Anchor points among the parts; of legs side by side, those that every leg has. */
  readonly vehicleAnchors: number;
  readonly cargoAnchors: number;
}

/** What is worth saying about the parts rated so far, in legs too; kept only for a caller that shows its working. */
export interface RatingLog {
  readonly sources: SourceRef[];
  /** Parts without a mark that count as something all the same. */
  readonly unmarked: { readonly id: string; readonly kind: 'chain' | 'fiber-rope' }[];
  fittingsAsChain: boolean;
  takenAsSound: boolean;
}

/**
 * Rates parts under one table. It remembers the last chain and the last fitting it looked up, because the
 * tie-downs of a plan are mostly alike.
 */
export class PartRater {
  readonly ratings: RatingTable;
  readonly log: RatingLog | undefined;
  private lastChain: { size: string; grade: number | undefined; limit: PartLimit } | undefined;
  private lastFitting: { size: string; grade: number; limit: PartLimit } | undefined;

  constructor(ratings: RatingTable, log?: RatingLog) {
    this.ratings = ratings;
    this.log = log;
  }

  /**
   * Rates a series by its weakest part: WLL = min(WLL of every part). An unknown part makes the whole unknown,
   * never zero and never infinite; a part that counts zero makes the whole zero, whatever is unknown beside it.
   *
   * @param each receives every part's own rating, for a caller that shows them
   */
  rateSeries(parts: readonly Part[], each?: PartRating[], name = 'parts'): SeriesRating {
    checkList(parts, name);
    let least: QuantityLike | null = null;
    let weakest: string[] = [];
    let unknownParts = false;
    const seen = seenIds(parts);
    const found: Findings = { missing: NONE, damaged: NONE, vehicleAnchors: 0, cargoAnchors: 0 };
    for (let index = 0; index < parts.length; index++) {
      try {
        checkId(parts, index, seen);
        const part = parts[index] as Part;
        const limit = part.kind === 'parallel' ? this.limitOfLegs(part, found) : this.limitOf(part, found);
        each?.push({ id: part.id, kind: part.kind, ...limit });
        const { workingLoadLimit } = limit;
        if (workingLoadLimit === null) {
          unknownParts = true;
          continue;
        }
        const order = least === null ? -1 : compareExact(workingLoadLimit, least);
        if (order < 0) {
          least = workingLoadLimit;
          weakest = [part.id];
        } else if (order === 0) weakest.push(part.id);
      } catch (error) {
        failAt(`${name}[${index}]`, error);
      }
    }
    const known = !unknownParts || (least !== null && least.value === 0);
    const { missing, damaged, vehicleAnchors, cargoAnchors } = found;
    return {
      workingLoadLimit: known ? least : null,
      weakest: known ? weakest : NONE,
      atMost: least,
      missing,
      damaged,
      vehicleAnchors,
      cargoAnchors,
    };
  }

  private limitOf(part: SinglePart, found: Findings): PartLimit {
    const { condition, capacities, markedWll } = part;
    if (part.kind === 'anchor') {
      if (part.at === 'cargo') found.cargoAnchors++;
      else if (part.at === 'vehicle') found.vehicleAnchors++;
      else checkOneOf(part.at, ['vehicle', 'cargo'], 'at');
    }
    if (condition !== undefined) {
      checkOneOf(part.kind, KINDS, 'kind');
      const state = stateOf(condition);
      if (state === 'damaged') {
        found.damaged = [...found.damaged, part.id];
        return DAMAGED;
      }
      if (state === 'undetermined') return missing(part, CONDITION_UNDETERMINED, found);
    } else if (this.log !== undefined) this.log.takenAsSound = true;
    const stated = capacities === undefined ? undefined : readCapacity(capacities);
    if (markedWll === undefined && stated === undefined) return this.limitOfUnmarked(part, found);
    checkOneOf(part.kind, KINDS, 'kind');
    if (part.kind === 'chain') checkChain(part.size, part.grade);
    const workingLoadLimit = markedWll === undefined ? stated : readPositive(markedWll, 'ratedLoad', 'markedWll');
    if (stated !== undefined && compareExact(stated, workingLoadLimit as QuantityLike) !== 0) {
      fail('CONFLICTING_FIELDS', 'capacities.workingLoadLimit', 'the same limit as markedWll', `${stated}`, 'Give the marked limit once.');
    }
    return { workingLoadLimit: workingLoadLimit as QuantityLike, basis: 'marked' };
  }

  private limitOfUnmarked(part: SinglePart, found: Findings): PartLimit {
    const { ratings } = this;
    switch (part.kind) {
      case 'chain':
        return this.limitOfChain(part, found);
      case 'grab-hook':
      case 'slip-hook':
      case 'connecting-link':
      case 'master-link':
      case 'clevis':
        return this.limitOfFitting(part, found);
      case 'webbing':
        return this.limitOfRow(part, found, ratings.webbing, ratings.webbing?.rows, part.width);
      case 'strapping': {
        const rows = part.width === undefined ? undefined : rowOf<RatedRows>(ratings.strapping?.rows ?? NO_ROWS, part.width);
        return this.limitOfRow(part, found, ratings.strapping, rows, part.thickness);
      }
      case 'wire-rope': {
        const { wireRopeByStrength } = ratings;
        if (part.nominalStrength === undefined || wireRopeByStrength === undefined) {
          return this.limitOfRow(part, found, ratings.wireRope, ratings.wireRope?.rows, part.size);
        }
        const { value, unit } = readPositive(part.nominalStrength, 'force', 'nominalStrength');
        const { fraction } = wireRopeByStrength.rows['wire-rope'].WLL;
        this.log?.sources.push(wireRopeByStrength.source);
        return { workingLoadLimit: { value: decimalProduct(value, fraction), unit }, basis: 'share of nominal strength' };
      }
      case 'fiber-rope': {
        const { fiberRope, unknownFiberRope } = ratings;
        if (fiberRope === undefined || unknownFiberRope === undefined) return missing(part, NO_MARK, found);
        const { id, kind, material = unknownFiberRope.material } = part;
        checkOneOf(material, Object.keys(fiberRope.rows), 'material');
        if (part.material === undefined) this.log?.unmarked.push({ id, kind });
        const basis = part.material === undefined ? 'unmarked default' : 'table';
        return this.limitOfRow(part, found, fiberRope, rowOf(fiberRope.rows, material), part.size, basis);
      }
      case 'anchor':
        return missing(part, ANCHOR_NOT_RATED, found, { at: part.at });
      default:
        checkOneOf(part.kind, KINDS, 'kind');
        return missing(part, NO_MARK, found);
    }
  }

  private limitOfChain(part: Extract<Part, { kind: 'chain' }>, found: Findings): PartLimit {
    const { id, kind, size, grade } = part;
    if (grade === undefined) this.log?.unmarked.push({ id, kind });
    const last = this.lastChain;
    if (last !== undefined && last.size === size && last.grade === grade) return last.limit;
    const { ratings } = this;
    checkChain(size, grade);
    const counted = grade ?? ratings.unmarkedChain?.grade;
    if (counted === undefined) return missing(part, UNMARKED_CHAIN, found);
    const cell = rowOf<RatedCell>(rowOf(ratings.chain.rows, size) ?? NO_ROWS, counted);
    // a real chain that this table does not list needs its mark; a size nobody makes was refused above
    if (cell === undefined) return missing(part, NOT_LISTED, found, { size, grade: counted, table: ratings.id });
    const limit = this.fromCell(ratings.chain, cell, grade === undefined ? 'unmarked default' : 'table');
    this.lastChain = { size, grade, limit };
    return limit;
  }

  /** ASTM A952 sizes fittings by chain: one marked with grade and size carries that chain's limit. A lower mark governs. */
  private limitOfFitting(part: Extract<Part, { latch?: boolean }>, found: Findings): PartLimit {
    const { size, grade } = part;
    if (size === undefined || grade === undefined) return missing(part, NO_MARK, found);
    const last = this.lastFitting;
    if (last !== undefined && last.size === size && last.grade === grade) return last.limit;
    const { ratings } = this;
    checkChain(size, grade);
    const cell = rowOf<RatedCell>(rowOf(ratings.chain.rows, size) ?? NO_ROWS, grade);
    if (cell === undefined) return missing(part, NOT_LISTED, found, { size, grade, table: ratings.id });
    const limit: PartLimit = {
      workingLoadLimit: printedRating(cell, ratings.units),
      basis: 'as chain of its grade and size',
      provenance: 'derived',
    };
    if (this.log !== undefined) {
      this.log.fittingsAsChain = true;
      this.log.sources.push(SIZED_BY_CHAIN, sourceOfCell(ratings.chain, cell, ratings.units));
    }
    this.lastFitting = { size, grade, limit };
    return limit;
  }

  private limitOfRow(
    part: SinglePart,
    found: Findings,
    table: GeneratedTable<unknown> | undefined,
    rows: RatedRows | undefined,
    key: unknown,
    basis: PartBasis = 'table',
  ): PartLimit {
    if (table === undefined || rows === undefined || key === undefined) return missing(part, NO_MARK, found);
    if (typeof key !== 'string') {
      return fail('UNKNOWN_SIZE', '', `one of ${Object.keys(rows).join(', ')}`, key, 'Write the size as text, as the table does.');
    }
    const cell = rowOf(rows, key);
    return cell === undefined
      ? missing(part, NO_ROW, found, { size: key, table: this.ratings.id, listed: Object.keys(rows).join(', ') })
      : this.fromCell(table, cell, basis);
  }

  private fromCell(table: GeneratedTable<unknown>, cell: RatedCell, basis: PartBasis): PartLimit {
    const { units } = this.ratings;
    const source = sourceOfCell(table, cell, units);
    this.log?.sources.push(source);
    return { workingLoadLimit: printedRating(cell, units), basis, provenance: source.provenance };
  }

  private limitOfLegs({ legs, loadSharing }: Extract<Part, { kind: 'parallel' }>, found: Findings): PartLimit {
    checkList(legs, 'legs', 2);
    checkOneOf(loadSharing, ['equal', 'one-leg'], 'loadSharing');
    let least: QuantityLike | null = null;
    let first: Note | undefined;
    let vehicleAnchors = Number.POSITIVE_INFINITY;
    let cargoAnchors = Number.POSITIVE_INFINITY;
    for (let index = 0; index < legs.length; index++) {
      const leg = this.rateSeries(legs[index] as readonly Part[], undefined, `legs[${index}]`);
      found.damaged = [...found.damaged, ...leg.damaged];
      found.missing = [...found.missing, ...leg.missing];
      vehicleAnchors = Math.min(vehicleAnchors, leg.vehicleAnchors);
      cargoAnchors = Math.min(cargoAnchors, leg.cargoAnchors);
      if (leg.workingLoadLimit === null) first ??= leg.missing[0];
      else if (least === null || compareExact(leg.workingLoadLimit, least) < 0) least = leg.workingLoadLimit;
    }
    found.vehicleAnchors += vehicleAnchors;
    found.cargoAnchors += cargoAnchors;
    const basis = loadSharing === 'equal' ? 'equal legs' : 'weakest leg';
    if (least !== null && least.value === 0) return { workingLoadLimit: ZERO, basis };
    if (first !== undefined || least === null) {
      return { workingLoadLimit: null, basis: 'unknown', ...(first === undefined ? {} : { missing: first }) };
    }
    const count = loadSharing === 'equal' ? legs.length : 1;
    return { workingLoadLimit: { value: decimalProduct(least.value, count), unit: least.unit }, basis };
  }
}

type SinglePart = Exclude<Part, { kind: 'parallel' }>;

/** What a series gathers beside its rating. */
interface Findings {
  missing: readonly Note[];
  damaged: readonly string[];
  vehicleAnchors: number;
  cargoAnchors: number;
}

const KINDS: readonly PartKind[] = [
  'binder',
  'anchor',
  'shackle',
  'chain',
  'grab-hook',
  'slip-hook',
  'webbing',
  'connecting-link',
  'master-link',
  'clevis',
  'turnbuckle',
  'winch',
  'wire-rope',
  'fiber-rope',
  'strapping',
  'parallel',
];

/** Every item of a list is an object with an id, used once in that list. */
export function checkIds(list: readonly { readonly id: string }[], name: string): void {
  const seen = seenIds(list);
  for (let index = 0; index < list.length; index++) {
    try {
      checkId(list, index, seen);
    } catch (error) {
      failAt(`${name}[${index}]`, error);
    }
  }
}

/** A short list is compared item by item; a long one keeps a set. */
function seenIds(list: readonly unknown[]): Set<string> | undefined {
  return list.length > 16 ? new Set() : undefined;
}

function checkId(list: readonly { readonly id: string }[], index: number, seen: Set<string> | undefined): void {
  const id = list[index]?.id;
  if (typeof id !== 'string' || id === '') fail('MISSING_FIELD', 'id', 'a name', id, 'Give it an id; results name it by that.');
  let twice = seen?.has(id) === true;
  seen?.add(id);
  for (let earlier = seen === undefined ? index - 1 : -1; earlier >= 0; earlier--) twice ||= list[earlier]?.id === id;
  if (twice) fail('DUPLICATE_ID', 'id', 'an id used once', id, 'Rename one of the two.');
}

/** The working load limit among capacities, if it is there. */
export function readCapacity(capacities: Capacities): QuantityLike | undefined {
  checkObject(capacities, 'capacities', '{ workingLoadLimit: ... }');
  const { workingLoadLimit } = capacities;
  return workingLoadLimit === undefined ? undefined : readPositive(workingLoadLimit, 'ratedLoad', 'capacities.workingLoadLimit');
}

/** `sound`, `damaged` or `undetermined`, from a word or from the verdict of an inspection. */
function stateOf(condition: unknown): unknown {
  if (typeof condition === 'object' && condition !== null && 'verdict' in condition) {
    checkOneOf(condition.verdict, ['fit', 'remove', 'undetermined'], 'condition');
    return condition.verdict === 'remove' ? 'damaged' : condition.verdict;
  }
  checkOneOf(condition, ['sound', 'damaged'], 'condition');
  return condition;
}

function missing(part: SinglePart, words: Words, found: Findings, params: Readonly<Record<string, string | number>> = {}): PartLimit {
  const said = words === NO_MARK && part.capacities !== undefined ? OTHER_SYSTEM : words;
  const fact = note(said, { part: part.id, kind: part.kind, ...params });
  found.missing = [...found.missing, fact];
  return { workingLoadLimit: null, basis: 'unknown', missing: fact };
}

const NONE: readonly never[] = [];
const NO_ROWS = {};
const ZERO: QuantityLike = { value: 0, unit: 'lb' };
const DAMAGED: PartLimit = { workingLoadLimit: ZERO, basis: 'damaged, counts zero' };
const SIZED_BY_CHAIN: SourceRef = {
  document: 'ASTM A952, forged lifting components',
  clause: 'sized by chain grade and size',
  provenance: 'derived',
  note: 'the loads themselves are those of the chain',
};

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
