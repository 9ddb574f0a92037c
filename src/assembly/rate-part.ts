import { type AnyGrade, checkChain } from '../chain/trade-size.js';
import { describe, fail, failAt } from '../errors.js';
import { checkIds, checkList, checkObject, checkOneOf } from '../input-checks.js';
import { decimalProduct } from '../quantities/decimal.js';
import { compareExact } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { readOptional } from '../quantities/read.js';
import {
  type CapacitySystem,
  type CapacityTable,
  type FindRow,
  type GeneratedTable,
  type LashingCell,
  printedCapacity,
  type RatedCell,
  type RowKind,
  sourceOfCell,
} from '../tables/rating-table.js';
import { type Note, note } from '../working/note.js';
import type { Provenance, SourceRef } from '../working/source.js';
import type { Capacities, ChainPart, FittingPart, ParallelPart, Part, PartKind } from './part.js';

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
  /** Parts without a mark that count as something all the same, and by which clause. */
  readonly unmarked: { readonly kind: PartKind; readonly part: string; readonly as: string; readonly clause: string }[];
  fittingsAsChain: boolean;
  takenAsSound: boolean;
}

/** Rates parts under one table. It remembers the last chain and the last fitting, because the parts of a plan are mostly alike. */
export interface PartRater {
  readonly ratings: CapacityTable;
  readonly log: RatingLog | undefined;
  depth: number;
  lastChain: LastRow | undefined;
  lastFitting: LastRow | undefined;
}

export function newRater(ratings: CapacityTable, log?: RatingLog): PartRater {
  return { ratings, log, depth: 0, lastChain: undefined, lastFitting: undefined };
}

/** A series while its parts are being rated. */
type Series = { -readonly [field in keyof SeriesRating]: SeriesRating[field] };

/**
 * Rates a series by its weakest part: WLL = min(WLL of every part). An unknown part makes the whole unknown,
 * never zero and never infinite; a part that counts zero makes the whole zero, whatever is unknown beside it.
 */
export function rateSeries(rater: PartRater, parts: readonly Part[], name = 'parts'): SeriesRating {
  checkList(parts, name);
  checkIds(parts, name);
  const limits = new Array<PartLimit>(parts.length);
  const series: Series = {
    limits,
    workingLoadLimit: null,
    weakest: NONE,
    atMost: null,
    missing: NONE,
    damaged: NONE,
    vehicleAnchors: 0,
    cargoAnchors: 0,
    lowestGrade: Number.POSITIVE_INFINITY,
  };
  let least: QuantityLike | null = null;
  let weakest: string[] = [];
  let known = true;
  for (let index = 0; index < parts.length; index++) {
    const part = parts[index] as Part;
    let limit: PartLimit;
    // mapAt written out: this loop runs for every part of a plan, and the callback would cost it a few percent
    try {
      limit = limitOf(rater, part, series);
    } catch (error) {
      failAt(`${name}[${index}]`, error);
    }
    limits[index] = limit;
    const { workingLoadLimit } = limit;
    if (workingLoadLimit === null) known = false;
    else {
      const order = least === null ? -1 : compareExact(workingLoadLimit, least);
      if (order < 0) {
        least = workingLoadLimit;
        weakest = [part.id];
      } else if (order === 0) weakest.push(part.id);
    }
  }
  series.atMost = least;
  if (known || least?.value === 0) {
    series.workingLoadLimit = least;
    series.weakest = weakest;
  }
  return series;
}

/** The kind decides first, so that each branch meets parts of one shape. */
function limitOf(rater: PartRater, part: Part, series: Series): PartLimit {
  switch (part.kind) {
    case 'chain':
    case 'grab-hook':
    case 'slip-hook':
    case 'connecting-link':
    case 'master-link':
    case 'clevis':
      return limitByChain(rater, part, series);
    case 'anchor':
      checkOneOf(part.at, ANCHORED_AT, 'at');
      if (part.at === 'cargo') series.cargoAnchors++;
      else series.vehicleAnchors++;
      return stated(rater, part, series) ?? unknown(series, note('ANCHOR_NOT_RATED', { part: part.id, at: part.at }));
    case 'binder':
    case 'shackle':
    case 'turnbuckle':
    case 'winch':
      return limitByMark(rater, part, series);
    case 'webbing':
    case 'wire-rope':
    case 'fiber-rope':
    case 'strapping': {
      const find = rater.ratings.others?.[part.kind];
      return find === undefined ? limitByMark(rater, part, series) : limitByRow(rater, part, series, find);
    }
    case 'parallel':
      return limitOfLegs(rater, part, series);
    default:
      return fail(
        (part as Part).kind === undefined ? 'MISSING_FIELD' : 'UNKNOWN_VALUE',
        'kind',
        'a kind of part, such as chain or anchor',
        (part as Part).kind,
        'The type Part lists them.',
      );
  }
}

/** What is stated on the part itself: its condition, then its mark. Undefined where the tables must say. */
function stated(rater: PartRater, part: SinglePart, series: Series): PartLimit | undefined {
  const { log } = rater;
  const { system } = rater.ratings;
  const { id, condition, capacities, markedWll } = part;
  if (condition !== undefined) {
    const state = stateOf(condition);
    if (state === 'damaged') {
      series.damaged = [...series.damaged, id];
      return DAMAGED;
    }
    if (state === 'undetermined')
      return unknown(series, note('CONDITION_UNDETERMINED', { kind: part.kind, part: part.id }));
  } else if (log !== undefined) log.takenAsSound = true;
  const capacity = capacities === undefined ? undefined : readCapacity(capacities, system);
  const short = system === 'workingLoadLimit' ? readOptional(markedWll, 'ratedLoad', 'markedWll') : undefined;
  const marked = short ?? capacity;
  if (marked === undefined) return undefined;
  if (capacity !== undefined && capacity !== marked && compareExact(capacity, marked) !== 0) {
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
 * ASTM A952 sizes them; without both it is unknown. Fittings of a European class are not made to that standard: they
 * need their own mark.
 */
function limitByChain(rater: PartRater, part: ChainPart | FittingPart, series: Series): PartLimit {
  const { id, kind, size, grade } = part;
  const { ratings, log } = rater;
  const isChain = kind === 'chain';
  const last = isChain ? rater.lastChain : rater.lastFitting;
  const asLast = last !== undefined && last.size === size && last.grade === grade;
  if (!asLast && (isChain || size !== undefined)) checkChain(size, grade);
  const own = log === undefined && saysNothing(part) ? undefined : stated(rater, part, series);
  if (isChain) {
    const lowest = numberOf(grade) ?? (own === undefined ? 0 : series.lowestGrade);
    if (lowest < series.lowestGrade) series.lowestGrade = lowest;
  }
  if (own !== undefined) return own;
  const unmarked = isChain && grade === undefined ? ratings.unmarkedChain : null;
  if (unmarked !== null) log?.unmarked.push({ kind, part: id, as: `grade ${unmarked.grade}`, clause: unmarked.clause });
  if (asLast) return last.limit;
  const counted = grade ?? unmarked?.grade;
  if (size === undefined || counted === undefined) return notMarked(rater, part, series);
  if (!isChain && typeof grade === 'string') return notMarked(rater, part, series);
  const cell = ratings.chain.rows[size]?.[counted]; // both were checked: no inherited name comes this far
  // a real chain that this table does not list needs its mark; a size nobody makes was refused above
  if (cell === undefined) return notListed(rater, part, series, `${size} grade ${counted}`);
  if (isChain) {
    const limit = limitOfCell(rater, ratings.chain, cell, unmarked === null ? 'table' : 'unmarked default');
    rater.lastChain = { size, grade, limit };
    return limit;
  }
  const limit = limitOfCell(rater, ratings.chain, cell, 'as chain of its grade and size');
  if (log !== undefined) {
    log.fittingsAsChain = true;
    log.sources.push(SIZED_BY_CHAIN);
  }
  rater.lastFitting = { size, grade, limit };
  return limit;
}

/** A European class as the number of the grade that is as strong: class 8 is 800 N/mm². */
function numberOf(grade: AnyGrade | undefined): number | undefined {
  return typeof grade === 'string' ? Number(grade) * 10 : grade;
}

function limitByMark(rater: PartRater, part: SinglePart, series: Series): PartLimit {
  return stated(rater, part, series) ?? notMarked(rater, part, series);
}

/** Webbing, rope and strapping by their row: the table finds it. */
function limitByRow(rater: PartRater, part: RowPart, series: Series, find: FindRow): PartLimit {
  const { log } = rater;
  const { table, size, cell, unmarked, share } = find(part);
  if (share !== undefined) log?.sources.push(share.source);
  const own = stated(rater, part, series);
  if (own !== undefined) return own;
  if (share !== undefined) return { workingLoadLimit: share.limit, basis: 'share of nominal strength' };
  if (size === undefined) return notMarked(rater, part, series);
  if (cell === undefined) return notListed(rater, part, series, describe(size));
  if (unmarked !== undefined) log?.unmarked.push({ kind: part.kind, part: part.id, ...unmarked });
  return limitOfCell(rater, table, cell, unmarked === undefined ? 'table' : 'unmarked default');
}

function limitOfCell(
  { ratings: { units }, log }: PartRater,
  table: GeneratedTable<unknown>,
  cell: RatedCell | LashingCell,
  basis: PartBasis,
): PartLimit {
  const source = sourceOfCell(table, cell, units);
  log?.sources.push(source);
  const provenance = basis === 'as chain of its grade and size' ? 'derived' : source.provenance;
  return { workingLoadLimit: printedCapacity(cell, units), basis, provenance };
}

function limitOfLegs(rater: PartRater, { legs, loadSharing }: ParallelPart, series: Series): PartLimit {
  checkList(legs, 'legs', 2);
  if (++rater.depth > MOST_DEPTH) {
    fail(
      'TOO_LARGE',
      'legs',
      `legs within legs at most ${MOST_DEPTH} deep`,
      'more',
      'Legs that contain themselves have no end.',
    );
  }
  checkOneOf(loadSharing, ['equal', 'one-leg'], 'loadSharing');
  const rated = Array.from(legs, (leg, index) => rateSeries(rater, leg, `legs[${index}]`));
  rater.depth--;
  let least: QuantityLike | null = null;
  let unknown: Note | undefined;
  for (const { damaged, missing, lowestGrade, workingLoadLimit } of rated) {
    series.damaged = [...series.damaged, ...damaged];
    series.missing = [...series.missing, ...missing];
    series.lowestGrade = Math.min(series.lowestGrade, lowestGrade);
    if (workingLoadLimit === null) unknown ??= missing[0];
    else if (least === null || compareExact(workingLoadLimit, least) < 0) least = workingLoadLimit;
  }
  series.vehicleAnchors += Math.min(...rated.map(({ vehicleAnchors }) => vehicleAnchors));
  series.cargoAnchors += Math.min(...rated.map(({ cargoAnchors }) => cargoAnchors));
  const equal = loadSharing === 'equal';
  const basis = equal ? 'equal legs' : 'weakest leg';
  if (least?.value === 0) return { workingLoadLimit: ZERO, basis };
  if (unknown !== undefined || least === null) {
    return { workingLoadLimit: null, basis: 'unknown', ...(unknown && { missing: unknown }) };
  }
  return { workingLoadLimit: { value: decimalProduct(least.value, equal ? legs.length : 1), unit: least.unit }, basis };
}

/** Legs within legs, as far as anybody builds them. */
const MOST_DEPTH = 16;

interface LastRow {
  readonly size: string;
  readonly grade: AnyGrade | undefined;
  readonly limit: PartLimit;
}

type SinglePart = Exclude<Part, ParallelPart>;
type RowPart = Extract<Part, { kind: RowKind }>;

/** The capacity of a system among those stated, if it is there. */
export function readCapacity(capacities: Capacities, system: CapacitySystem): QuantityLike | undefined {
  checkObject(capacities, 'capacities', `{ ${system}: ... }`);
  return readOptional(capacities[system], 'ratedLoad', `capacities.${system}`);
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

function unknown(series: Series, fact: Note): PartLimit {
  series.missing = [...series.missing, fact];
  return { workingLoadLimit: null, basis: 'unknown', missing: fact };
}

function notMarked({ ratings: { system } }: PartRater, part: SinglePart, series: Series): PartLimit {
  const marked = part.capacities ?? part.markedWll;
  const code = marked === undefined ? 'PART_NOT_MARKED' : 'OTHER_CAPACITY_SYSTEM';
  return unknown(series, note(code, { capacity: wordsOf(system), kind: part.kind, part: part.id }));
}

function notListed({ ratings: { system, id } }: PartRater, part: SinglePart, series: Series, size: string): PartLimit {
  const { kind, id: name } = part;
  return unknown(series, note('NOT_IN_TABLE', { capacity: wordsOf(system), kind, part: name, table: id, size }));
}

/** `workingLoadLimit` as it is said: working load limit. */
export function wordsOf(system: CapacitySystem): string {
  return system.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

const NONE: readonly never[] = [];
const ANCHORED_AT = ['vehicle', 'cargo'];
const ZERO: QuantityLike = { value: 0, unit: 'lb' };
const DAMAGED: PartLimit = { workingLoadLimit: ZERO, basis: 'damaged, counts zero' };
const SIZED_BY_CHAIN: SourceRef = {
  document: 'ASTM A952, forged lifting components',
  clause: 'sized by chain grade and size',
  provenance: 'derived',
  note: 'the loads are those of the chain',
};
