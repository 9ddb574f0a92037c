import { chainLimit } from '../chain/chain-rating.js';
import { CHAIN_GRADES, isTradeSize } from '../chain/trade-size.js';
import { fail } from '../errors.js';
import { compareExactSums } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import { printedRating, type RatedCell, type RatingTable, rowOf } from '../tables/rating-table.js';
import { type Note, note } from '../working/note.js';
import type { Provenance } from '../working/source.js';
import type { Capacities, ChainPart, FittingPart, Part, PartKind } from './part.js';

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

/** One part's contribution to the weakest link. */
export interface PartRating {
  readonly id: string;
  readonly kind: PartKind;
  /** As marked or as printed in the table; null when it is not known. */
  readonly workingLoadLimit: QuantityLike | null;
  readonly basis: PartBasis;
  readonly provenance?: Provenance;
  /** What must be known to rate it. */
  readonly missing?: Note;
}

const ZERO: QuantityLike = { value: 0, unit: 'lb' };

/** The parts of a series rated one by one, and the least of them. */
export interface SeriesRating {
  readonly parts: readonly PartRating[];
  /** The least rating; null when a part is unknown, unless another already counts zero. */
  readonly workingLoadLimit: QuantityLike | null;
  /** Ids of the parts that have the least rating. */
  readonly weakest: readonly string[];
  /** The least among the parts that are known: the series carries no more than this. */
  readonly atMost: QuantityLike | null;
  readonly missing: readonly Note[];
}

/**
 * Rates a series by its weakest part: WLL = min(WLL of every part). An unknown part makes the whole unknown,
 * never zero and never infinite; a part that counts zero makes the whole zero, whatever is unknown beside it.
 */
export function rateSeries(ratings: RatingTable, parts: readonly Part[], path: string): SeriesRating {
  if (!Array.isArray(parts) || parts.length === 0) {
    return fail('EMPTY_LIST', `${path}parts`, 'at least one part', parts, 'List every part of the series: chain, hooks, binder, anchors.');
  }
  const rated: PartRating[] = [];
  const missing: Note[] = [];
  let least: QuantityLike | null = null;
  let weakest: string[] = [];
  for (let index = 0; index < parts.length; index++) {
    const part = parts[index] as Part;
    checkPart(part, rated, `${path}parts[${index}]`);
    const rating = ratePart(ratings, part, `${path}parts[${index}].`);
    rated.push(rating);
    const { workingLoadLimit } = rating;
    if (workingLoadLimit === null) {
      if (rating.missing !== undefined) missing.push(rating.missing);
      continue;
    }
    const order = least === null ? -1 : compareRated(workingLoadLimit, least);
    if (order < 0) {
      least = workingLoadLimit;
      weakest = [rating.id];
    } else if (order === 0) weakest.push(rating.id);
  }
  const known = missing.length === 0 || (least !== null && least.value === 0);
  return { parts: rated, workingLoadLimit: known ? least : null, weakest: known ? weakest : [], atMost: least, missing };
}

/** Which of two rated loads is larger, exactly, mass or force units alike. */
export function compareRated(left: QuantityLike, right: QuantityLike): -1 | 0 | 1 {
  if (left.unit === right.unit) return left.value < right.value ? -1 : left.value > right.value ? 1 : 0;
  return compareExactSums([{ quantity: left }], [{ quantity: right }]);
}

function checkPart(part: Part, earlier: readonly PartRating[], path: string): void {
  if (typeof part !== 'object' || part === null) {
    fail('MISSING_FIELD', path, 'a part { id, kind, ... }', part, 'See the Part type for the kinds.');
  }
  if (typeof part.id !== 'string' || part.id === '') {
    fail('MISSING_FIELD', `${path}.id`, 'a name for the part', part.id, 'Give every part an id; results name parts by it.');
  }
  for (const { id } of earlier) {
    if (id === part.id) fail('DUPLICATE_ID', `${path}.id`, 'an id used once in its list', id, 'Rename one of the two parts.');
  }
}

function ratePart(ratings: RatingTable, part: Part, path: string): PartRating {
  if (part.kind === 'parallel') return rateLegs(ratings, part, path);
  const state = conditionOf(part.condition, path);
  if (state === 'damaged') return { id: part.id, kind: part.kind, workingLoadLimit: ZERO, basis: 'damaged, counts zero' };
  if (state === 'unknown') return unknown(part, CONDITION_UNDETERMINED);
  const marked = part.markedWll ?? readCapacity(part.capacities, path);
  if (marked !== undefined) {
    const limit = readPositive(marked, 'ratedLoad', `${path}markedWll`);
    return { id: part.id, kind: part.kind, workingLoadLimit: limit, basis: 'marked' };
  }
  if (part.capacities !== undefined) return unknown(part, OTHER_SYSTEM);
  switch (part.kind) {
    case 'chain':
      return rateChain(ratings, part, path);
    case 'webbing':
      return rateByRow(part, ratings.webbing?.rows, part.width, ratings);
    case 'strapping':
      return rateByRow(part, part.width === undefined ? undefined : rowOf(ratings.strapping?.rows ?? {}, part.width), part.thickness, ratings);
    case 'wire-rope': {
      if (part.nominalStrength === undefined) return rateByRow(part, ratings.wireRope?.rows, part.size, ratings);
      if (ratings.wireRopeByStrength === undefined) return unknown(part, NO_MARK);
      const { fraction } = ratings.wireRopeByStrength.rows['wire-rope'].WLL;
      const { value, unit } = readPositive(part.nominalStrength, 'force', `${path}nominalStrength`);
      return { id: part.id, kind: part.kind, workingLoadLimit: { value: value * fraction, unit }, basis: 'share of nominal strength' };
    }
    case 'fiber-rope': {
      const material = part.material ?? ratings.unknownFiberRope?.material;
      const rows = material === undefined ? undefined : rowOf(ratings.fiberRope?.rows ?? {}, material);
      if (part.material !== undefined && ratings.fiberRope !== undefined && rows === undefined) {
        return fail('UNKNOWN_VALUE', `${path}material`, `one of ${Object.keys(ratings.fiberRope.rows).join(', ')}`, part.material, 'Leave material out for a synthetic rope of unknown composition.');
      }
      return rateByRow(part, rows, part.size, ratings, part.material === undefined ? 'unmarked default' : 'table');
    }
    case 'grab-hook':
    case 'slip-hook':
    case 'connecting-link':
    case 'master-link':
    case 'clevis':
      return rateFitting(ratings, part);
    case 'anchor':
      return unknown(part, part.at === 'cargo' ? CARGO_ANCHOR : VEHICLE_ANCHOR);
    case 'binder':
    case 'shackle':
    case 'turnbuckle':
    case 'winch':
      return unknown(part, NO_MARK);
    default:
      return fail('UNKNOWN_VALUE', `${path}kind`, 'a kind of part, such as chain, grab-hook, binder or anchor', (part as Part).kind, 'See the Part type for the kinds.');
  }
}

function rateChain(ratings: RatingTable, part: ChainPart, path: string): PartRating {
  const listed = rowOf(ratings.chain.rows, part.size);
  const grade = part.grade ?? ratings.unmarkedChain?.grade;
  if (grade === undefined) return unknown(part, UNMARKED_CHAIN);
  if (listed === undefined || rowOf(listed, grade) === undefined) {
    // A real chain that this table does not list needs its mark; a size or grade nobody makes is a mistake.
    if (!isKnownChain(part)) chainLimit(ratings, part.size, grade, undefined, path);
    return unknown(part, NOT_LISTED, { size: part.size, grade, table: ratings.id });
  }
  const { limit, basis, cell } = chainLimit(ratings, part.size, part.grade, undefined, path);
  return fromCell(part, limit, basis === 'unmarked' ? 'unmarked default' : 'table', cell, ratings);
}

/** ASTM A952 sizes fittings by chain: one marked with grade and size carries that chain's limit. A lower mark governs. */
function rateFitting(ratings: RatingTable, part: FittingPart): PartRating {
  if (part.size === undefined || part.grade === undefined) return unknown(part, NO_MARK);
  const cell = rowOf(rowOf(ratings.chain.rows, part.size) ?? {}, part.grade);
  if (cell === undefined) return unknown(part, NOT_LISTED, { size: part.size, grade: part.grade, table: ratings.id });
  return {
    id: part.id,
    kind: part.kind,
    workingLoadLimit: printedRating(cell, ratings.units),
    basis: 'as chain of its grade and size',
    provenance: 'derived',
  };
}

function rateByRow(
  part: Exclude<Part, { kind: 'parallel' }>,
  rows: { readonly [key: string]: RatedCell } | undefined,
  key: string | undefined,
  ratings: RatingTable,
  basis: PartBasis = 'table',
): PartRating {
  if (rows === undefined || key === undefined) return unknown(part, NO_MARK);
  const cell = rowOf(rows, key);
  if (cell === undefined) return unknown(part, NO_ROW, { size: key, table: ratings.id, listed: Object.keys(rows).join(', ') });
  return fromCell(part, printedRating(cell, ratings.units), basis, cell, ratings);
}

function fromCell(part: Part, limit: QuantityLike, basis: PartBasis, cell: RatedCell | undefined, ratings: RatingTable): PartRating {
  const own = cell?.provenance ?? (ratings.units === 'us' ? cell?.wll_provenance : cell?.wll_kg_provenance);
  return { id: part.id, kind: part.kind, workingLoadLimit: limit, basis, provenance: own ?? ratings.chain.source.provenance };
}

function rateLegs(ratings: RatingTable, part: Extract<Part, { kind: 'parallel' }>, path: string): PartRating {
  if (!Array.isArray(part.legs) || part.legs.length < 2) {
    return fail('EMPTY_LIST', `${path}legs`, 'two legs or more', part.legs, 'A single leg is a part of the series itself.');
  }
  if (part.loadSharing !== 'equal' && part.loadSharing !== 'one-leg') {
    return fail('UNKNOWN_VALUE', `${path}loadSharing`, "'equal' or 'one-leg'", part.loadSharing, 'Say equal only where something makes the legs share alike.');
  }
  let least: QuantityLike | null = null;
  let missing: Note | undefined;
  for (let index = 0; index < part.legs.length; index++) {
    const leg = rateSeries(ratings, part.legs[index] ?? [], `${path}legs[${index}].`);
    missing ??= leg.workingLoadLimit === null ? leg.missing[0] : undefined;
    if (leg.workingLoadLimit !== null && (least === null || compareRated(leg.workingLoadLimit, least) < 0)) least = leg.workingLoadLimit;
  }
  const basis = part.loadSharing === 'equal' ? 'equal legs' : 'weakest leg';
  if (least !== null && least.value === 0) return { id: part.id, kind: part.kind, workingLoadLimit: ZERO, basis };
  if (missing !== undefined || least === null) {
    return { id: part.id, kind: part.kind, workingLoadLimit: null, basis: 'unknown', ...(missing === undefined ? {} : { missing }) };
  }
  const count = part.loadSharing === 'equal' ? part.legs.length : 1;
  return { id: part.id, kind: part.kind, workingLoadLimit: { value: least.value * count, unit: least.unit }, basis };
}

/** True for a size and grade that exist as chain, whether or not a given table lists them. */
function isKnownChain(part: ChainPart): boolean {
  return isTradeSize(part.size) && (part.grade === undefined || CHAIN_GRADES.includes(part.grade));
}

function conditionOf(condition: unknown, path: string): 'sound' | 'damaged' | 'unknown' {
  if (condition === undefined || condition === 'sound') return 'sound';
  if (condition === 'damaged') return 'damaged';
  const verdict = typeof condition === 'object' && condition !== null && 'verdict' in condition ? condition.verdict : undefined;
  if (verdict === 'fit') return 'sound';
  if (verdict === 'remove') return 'damaged';
  if (verdict === 'undetermined') return 'unknown';
  return fail('UNKNOWN_VALUE', `${path}condition`, "'sound', 'damaged' or an inspection result", condition, "Leave it out when the part was inspected and is sound, or say 'sound'.");
}

function readCapacity(capacities: Capacities | undefined, path: string): unknown {
  if (capacities === undefined) return undefined;
  if (typeof capacities !== 'object' || capacities === null) {
    return fail('MISSING_FIELD', `${path}capacities`, '{ workingLoadLimit: ... }', capacities, 'Name the capacity that is marked.');
  }
  return capacities.workingLoadLimit;
}

function unknown(part: Part, words: { code: string; text: string }, params: Readonly<Record<string, string | number>> = {}): PartRating {
  return {
    id: part.id,
    kind: part.kind,
    workingLoadLimit: null,
    basis: 'unknown',
    missing: note(words, { part: part.id, kind: part.kind, ...params }),
  };
}

const NO_MARK = { code: 'PART_NOT_MARKED', text: 'The working load limit marked on {kind} {part}: no table gives one for it.' };
const UNMARKED_CHAIN = { code: 'CHAIN_NOT_MARKED', text: 'The grade or working load limit marked on chain {part}: unmarked it counts as nothing.' };
const NOT_LISTED = {
  code: 'PAIR_NOT_LISTED',
  text: 'The working load limit marked on {kind} {part}: {table} has no value for {size} grade {grade}.',
};
const NO_ROW = {
  code: 'SIZE_NOT_LISTED',
  text: 'The working load limit marked on {kind} {part}: {table} has no row {size} (it lists {listed}).',
};
const OTHER_SYSTEM = {
  code: 'OTHER_CAPACITY_SYSTEM',
  text: 'The working load limit of {kind} {part}: it states another capacity, and one is not converted into another.',
};
const CONDITION_UNDETERMINED = {
  code: 'CONDITION_UNDETERMINED',
  text: 'Whether {kind} {part} may stay in service: its inspection came out undetermined.',
};
const VEHICLE_ANCHOR = { code: 'ANCHOR_NOT_RATED', text: 'The rating of vehicle anchor point {part}: an unrated point is unknown, not unlimited.' };
const CARGO_ANCHOR = {
  code: 'ATTACHMENT_NOT_RATED',
  text: 'The rating of attachment point {part} on the cargo: an unrated point is unknown, not unlimited.',
};
