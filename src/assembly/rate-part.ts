import { checkChain } from '../chain/trade-size.js';
import { describe, fail, failAt } from '../errors.js';
import { checkIds, checkList, checkObject, checkOneOf } from '../input-checks.js';
import { decimalProduct } from '../quantities/decimal.js';
import { compareExact } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { readOptional, readPositive } from '../quantities/read.js';
import {
  type GeneratedTable,
  printedRating,
  type RatedCell,
  type RatedRows,
  type RatingTable,
  rowOf,
  sourceOfCell,
} from '../tables/rating-table.js';
import { type Note, note, type Words } from '../working/note.js';
import type { Provenance, SourceRef } from '../working/source.js';
import type { Capacities, ChainPart, FiberRopePart, FittingPart, Part, PartKind, WireRopePart } from './part.js';

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
export interface PartLimit {
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
  /** What each part may be counted on for, in their order. */
  readonly limits: readonly PartLimit[];
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
  /** The lowest grade of a chain among the parts, 0 for one without grade or mark; infinite where none has a grade. */
  readonly lowestGrade: number;
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
 * parts of a plan are mostly alike.
 */
export class PartRater {
  readonly ratings: RatingTable;
  readonly log: RatingLog | undefined;
  private depth = 0;
  private lastChain: LastRow | undefined;
  private lastFitting: LastRow | undefined;

  constructor(ratings: RatingTable, log?: RatingLog) {
    this.ratings = ratings;
    this.log = log;
  }

  /**
   * Rates a series by its weakest part: WLL = min(WLL of every part). An unknown part makes the whole unknown,
   * never zero and never infinite; a part that counts zero makes the whole zero, whatever is unknown beside it.
   */
  rateSeries(parts: readonly Part[], name = 'parts'): SeriesRating {
    checkList(parts, name);
    checkIds(parts, name);
    const found: Findings = {
      missing: NONE,
      damaged: NONE,
      vehicleAnchors: 0,
      cargoAnchors: 0,
      lowestGrade: Number.POSITIVE_INFINITY,
    };
    // mapAt written out: this loop runs for every part of a plan, and the callback would cost it a few percent
    const limits = new Array<PartLimit>(parts.length);
    let index = 0;
    try {
      for (; index < parts.length; index++) limits[index] = this.limitOf(parts[index] as Part, found);
    } catch (error) {
      failAt(`${name}[${index}]`, error);
    }
    let least: QuantityLike | null = null;
    let ties = 0;
    let unknownParts = false;
    for (const { workingLoadLimit } of limits) {
      if (workingLoadLimit === null) {
        unknownParts = true;
        continue;
      }
      const order = least === null ? -1 : compareExact(workingLoadLimit, least);
      if (order < 0) {
        least = workingLoadLimit;
        ties = 1;
      } else if (order === 0) ties++;
    }
    const known = !unknownParts || (least !== null && least.value === 0);
    const { missing, damaged, vehicleAnchors, cargoAnchors, lowestGrade } = found;
    return {
      limits,
      workingLoadLimit: known ? least : null,
      weakest: known && least !== null ? weakestOf(parts, limits, least, ties) : NONE,
      atMost: least,
      missing,
      damaged,
      vehicleAnchors,
      cargoAnchors,
      lowestGrade,
    };
  }

  /** The kind decides first, so that each branch meets parts of one shape. */
  private limitOf(part: Part, found: Findings): PartLimit {
    const { webbing, strapping, wireRope } = this.ratings;
    switch (part.kind) {
      case 'chain':
        return this.limitByChain(part, found, 'table');
      case 'grab-hook':
      case 'slip-hook':
      case 'connecting-link':
      case 'master-link':
      case 'clevis':
        return this.limitByChain(part, found, 'as chain of its grade and size');
      case 'anchor':
        checkOneOf(part.at, ANCHORED_AT, 'at');
        if (part.at === 'cargo') found.cargoAnchors++;
        else found.vehicleAnchors++;
        return this.stated(part, found) ?? missing(part, ANCHOR_NOT_RATED, found, { at: part.at });
      case 'binder':
      case 'shackle':
      case 'turnbuckle':
      case 'winch':
        return this.stated(part, found) ?? missing(part, NO_MARK, found);
      case 'webbing':
        return this.limitOfRow(part, found, webbing, webbing?.rows, part.width);
      case 'strapping':
        return this.limitOfRow(
          part,
          found,
          strapping,
          rowOf<RatedRows>(strapping?.rows ?? NO_ROWS, part.width ?? ''),
          part.thickness,
        );
      case 'wire-rope':
        return this.limitByStrength(part, found) ?? this.limitOfRow(part, found, wireRope, wireRope?.rows, part.size);
      case 'fiber-rope':
        return this.limitOfFiberRope(part, found);
      case 'parallel':
        return this.limitOfLegs(part, found);
      default:
        return fail(
          (part as Part).kind === undefined ? 'MISSING_FIELD' : 'UNKNOWN_VALUE',
          'kind',
          'a kind of part, such as chain, grab-hook, binder or anchor',
          (part as Part).kind,
          'The type Part lists them.',
        );
    }
  }

  /** What is stated on the part itself: its condition, then its mark. Undefined where the tables must say. */
  private stated(part: SinglePart, found: Findings): PartLimit | undefined {
    const { id, condition, capacities, markedWll } = part;
    if (condition !== undefined) {
      const state = stateOf(condition);
      if (state === 'damaged') {
        found.damaged = [...found.damaged, id];
        return DAMAGED;
      }
      if (state === 'undetermined') return missing(part, CONDITION_UNDETERMINED, found);
    } else if (this.log !== undefined) this.log.takenAsSound = true;
    const capacity = capacities === undefined ? undefined : readCapacity(capacities);
    const marked = markedWll === undefined ? capacity : readPositive(markedWll, 'ratedLoad', 'markedWll');
    if (marked === undefined) return undefined;
    if (capacity !== undefined && compareExact(capacity, marked) !== 0) {
      fail(
        'CONFLICTING_FIELDS',
        'capacities.workingLoadLimit',
        'the same limit as markedWll',
        `${capacity}`,
        'Give it once.',
      );
    }
    return { workingLoadLimit: marked, basis: 'marked' };
  }

  /**
   * Chain by its table row. A hook or link marked with grade and size only is rated as that chain, which is how
   * ASTM A952 sizes them; without both it is unknown.
   */
  private limitByChain(part: ChainPart | FittingPart, found: Findings, basis: PartBasis): PartLimit {
    const { kind, size, grade } = part;
    const isChain = kind === 'chain';
    const { ratings, log } = this;
    const last = isChain ? this.lastChain : this.lastFitting;
    const asLast = last !== undefined && last.size === size && last.grade === grade;
    if (!asLast && (isChain || size !== undefined)) checkChain(size, grade);
    const stated = log === undefined && saysNothing(part) ? undefined : this.stated(part, found);
    if (isChain) {
      const lowest = grade ?? (stated === undefined ? 0 : found.lowestGrade);
      if (lowest < found.lowestGrade) found.lowestGrade = lowest;
    }
    if (stated !== undefined) return stated;
    if (isChain && grade === undefined) log?.unmarked.push({ id: part.id, kind });
    if (asLast) return last.limit;
    const counted = isChain ? (grade ?? ratings.unmarkedChain?.grade) : grade;
    if (size === undefined || counted === undefined) return missing(part, NO_MARK, found);
    const cell = rowOf<RatedCell>(rowOf(ratings.chain.rows, size) ?? NO_ROWS, counted);
    // a real chain that this table does not list needs its mark; a size nobody makes was refused above
    if (cell === undefined)
      return missing(part, NOT_LISTED, found, { size: `${size} grade ${counted}`, table: ratings.id });
    const limit = this.fromCell(ratings.chain, cell, isChain && grade === undefined ? 'unmarked default' : basis);
    if (!isChain && log !== undefined) {
      log.fittingsAsChain = true;
      log.sources.push(SIZED_BY_CHAIN);
    }
    if (isChain) this.lastChain = { size, grade, limit };
    else this.lastFitting = { size, grade, limit };
    return limit;
  }

  /** 393.108(e)(1): a share of the nominal strength, where the construction is known. */
  private limitByStrength(part: WireRopePart, found: Findings): PartLimit | undefined {
    const { wireRopeByStrength } = this.ratings;
    if (part.nominalStrength === undefined || wireRopeByStrength === undefined) return undefined;
    const { value, unit } = readPositive(part.nominalStrength, 'force', 'nominalStrength');
    const { fraction } = wireRopeByStrength.rows['wire-rope'].WLL;
    this.log?.sources.push(wireRopeByStrength.source);
    return (
      this.stated(part, found) ?? {
        workingLoadLimit: { value: decimalProduct(value, fraction), unit },
        basis: 'share of nominal strength',
      }
    );
  }

  private limitOfFiberRope(part: FiberRopePart, found: Findings): PartLimit {
    const { fiberRope, unknownFiberRope } = this.ratings;
    const { id, kind, material = unknownFiberRope?.material ?? '' } = part;
    if (fiberRope !== undefined) checkOneOf(material, Object.keys(fiberRope.rows), 'material');
    const rows = rowOf<RatedRows>(fiberRope?.rows ?? NO_ROWS, material);
    const limit = this.limitOfRow(
      part,
      found,
      fiberRope,
      rows,
      part.size,
      part.material === undefined ? 'unmarked default' : 'table',
    );
    if (limit.basis === 'unmarked default') this.log?.unmarked.push({ id, kind });
    return limit;
  }

  private limitOfRow(
    part: SinglePart,
    found: Findings,
    table: GeneratedTable<unknown> | undefined,
    rows: RatedRows | undefined,
    key: string | undefined,
    basis: PartBasis = 'table',
  ): PartLimit {
    const stated = this.stated(part, found);
    if (stated !== undefined) return stated;
    if (table === undefined || key === undefined) return missing(part, NO_MARK, found);
    const cell = rowOf<RatedCell>(rows ?? NO_ROWS, key);
    return cell === undefined
      ? missing(part, NOT_LISTED, found, { size: describe(key), table: this.ratings.id })
      : this.fromCell(table, cell, basis);
  }

  private fromCell(table: GeneratedTable<unknown>, cell: RatedCell, basis: PartBasis): PartLimit {
    const { units } = this.ratings;
    const source = sourceOfCell(table, cell, units);
    this.log?.sources.push(source);
    const provenance = basis === 'as chain of its grade and size' ? 'derived' : source.provenance;
    return { workingLoadLimit: printedRating(cell, units), basis, provenance };
  }

  private limitOfLegs({ legs, loadSharing }: Extract<Part, { kind: 'parallel' }>, found: Findings): PartLimit {
    checkList(legs, 'legs', 2);
    if (++this.depth > MOST_DEPTH) {
      fail(
        'TOO_LARGE',
        'legs',
        `legs within legs at most ${MOST_DEPTH} deep`,
        'more',
        'Legs that contain themselves have no end.',
      );
    }
    checkOneOf(loadSharing, ['equal', 'one-leg'], 'loadSharing');
    let least: QuantityLike | null = null;
    let first: Note | undefined;
    let vehicleAnchors = Number.POSITIVE_INFINITY;
    let cargoAnchors = Number.POSITIVE_INFINITY;
    for (let index = 0; index < legs.length; index++) {
      const leg = this.rateSeries(legs[index] as readonly Part[], `legs[${index}]`);
      found.damaged = [...found.damaged, ...leg.damaged];
      found.missing = [...found.missing, ...leg.missing];
      vehicleAnchors = Math.min(vehicleAnchors, leg.vehicleAnchors);
      cargoAnchors = Math.min(cargoAnchors, leg.cargoAnchors);
      found.lowestGrade = Math.min(found.lowestGrade, leg.lowestGrade);
      if (leg.workingLoadLimit === null) first ??= leg.missing[0];
      else if (least === null || compareExact(leg.workingLoadLimit, least) < 0) least = leg.workingLoadLimit;
    }
    this.depth--;
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

/** Legs within legs, as far as anybody builds them. */
const MOST_DEPTH = 16;

interface LastRow {
  readonly size: string;
  readonly grade: number | undefined;
  readonly limit: PartLimit;
}

type SinglePart = Exclude<Part, { kind: 'parallel' }>;

/** What a series gathers beside its rating. */
interface Findings {
  missing: readonly Note[];
  damaged: readonly string[];
  vehicleAnchors: number;
  cargoAnchors: number;
  lowestGrade: number;
}

function weakestOf(
  parts: readonly Part[],
  limits: readonly PartLimit[],
  least: QuantityLike,
  ties: number,
): readonly string[] {
  const ids = new Array<string>(ties);
  let next = 0;
  for (let index = 0; next < ties; index++) {
    const limit = limits[index]?.workingLoadLimit ?? null;
    if (limit !== null && (limit === least || compareExact(limit, least) === 0))
      ids[next++] = (parts[index] as Part).id;
  }
  return ids;
}

/** The working load limit among capacities, if it is there. */
export function readCapacity(capacities: Capacities): QuantityLike | undefined {
  checkObject(capacities, 'capacities', '{ workingLoadLimit: ... }');
  const { workingLoadLimit } = capacities;
  return readOptional(workingLoadLimit, 'ratedLoad', 'capacities.workingLoadLimit');
}

/** Most chains and hooks carry neither condition nor mark of their own; in bulk that is seen at a glance. */
function saysNothing({ condition, markedWll, capacities }: ChainPart | FittingPart): boolean {
  return condition === undefined && markedWll === undefined && capacities === undefined;
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

function missing(
  part: SinglePart,
  words: Words,
  found: Findings,
  params: Readonly<Record<string, string | number>> = {},
): PartLimit {
  const said = words === NO_MARK && part.capacities !== undefined ? OTHER_SYSTEM : words;
  const fact = note(said, { part: part.id, kind: part.kind, ...params });
  found.missing = [...found.missing, fact];
  return { workingLoadLimit: null, basis: 'unknown', missing: fact };
}

const NONE: readonly never[] = [];
const NO_ROWS = {};
const ANCHORED_AT = ['vehicle', 'cargo'];
const ZERO: QuantityLike = { value: 0, unit: 'lb' };
const DAMAGED: PartLimit = { workingLoadLimit: ZERO, basis: 'damaged, counts zero' };
const SIZED_BY_CHAIN: SourceRef = {
  document: 'ASTM A952, forged lifting components',
  clause: 'sized by chain grade and size',
  provenance: 'derived',
  note: 'the loads themselves are those of the chain',
};

// Each says what must be known; the place it is told in adds that it is missing.
const NO_MARK = { code: 'PART_NOT_MARKED', text: 'The working load limit marked on {kind} {part}.' };
const NOT_LISTED = {
  code: 'NOT_IN_TABLE',
  text: 'The working load limit marked on {kind} {part}: {table} has none for {size}.',
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
