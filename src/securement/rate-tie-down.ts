import type { Capacities } from '../assembly/part.js';
import {
  newRater,
  type PartRater,
  rateSeries,
  readCapacity,
  type SeriesRating,
  wordsOf,
} from '../assembly/rate-part.js';
import { newLog, noteAssumptions } from '../assembly/show-parts.js';
import type { QuantityLike } from '../quantities/quantity.js';
import type { CapacityTable } from '../tables/rating-table.js';
import { type Note, note } from '../working/note.js';
import type { Working } from '../working/step.js';
import type { TieDown, TieDownPath } from './plan.js';

/**
 * Rates things with a rater of its own for one table, and says what was looked up and what was taken for granted.
 */
export function ratingUnder<Rated>(table: CapacityTable, working: Working, rate: (rater: PartRater) => Rated): Rated {
  const log = working.shown ? newLog() : undefined;
  const rated = rate(newRater(table, log));
  if (log !== undefined) {
    for (const source of log.sources) working.cite(source);
    noteAssumptions(working, log);
  }
  return rated;
}

/** A tie-down with its capacity in the system of a rule set: the least of its parts and of its anchor points. */
export interface TieDownRating {
  readonly tieDown: TieDown;
  /** Null while a part or an anchor point is not known. */
  readonly capacity: QuantityLike | null;
  /** While it is not known: no more than this, as far as the known parts say. */
  readonly atMost: QuantityLike | null;
  readonly weakest: readonly string[];
  readonly missing: readonly Note[];
  /** Ids of the parts that count zero. */
  readonly damaged: readonly string[];
  /** The lowest grade that a chain in it counts as; infinite where none counts by grade. */
  readonly lowestGrade: number;
  /** Its parts one by one; absent where it is stated as a whole. */
  readonly series?: SeriesRating;
}

/**
 * The capacity of a tie-down: the least of its components, tensioner included, and of the anchor points it is fixed
 * to. An anchor point that is not listed is a fact that is missing: it is neither unlimited nor zero.
 */
export function rateTieDown(rater: PartRater, tieDown: TieDown, working: Working): TieDownRating {
  const { parts, id } = tieDown;
  if (parts === undefined) return rateAsWhole(rater, tieDown, working);
  const series = rateSeries(rater, parts);
  const anchors = missingAnchors(tieDown.path, series);
  const known = anchors.length === 0 || series.workingLoadLimit?.value === 0;
  return {
    tieDown,
    capacity: known ? series.workingLoadLimit : null,
    atMost: series.atMost,
    weakest: known ? series.weakest : [],
    missing: known ? inTieDown(id, series.missing) : inTieDown(id, [...series.missing, ...anchors]),
    damaged: series.damaged,
    lowestGrade: series.lowestGrade,
    series,
  };
}

function rateAsWhole({ ratings: { system } }: PartRater, tieDown: TieDown, working: Working): TieDownRating {
  const { id } = tieDown;
  const capacity = readCapacity(tieDown.capacities as Capacities, system) ?? null;
  if (working.shown && capacity !== null) {
    working.assumptions.push(note('STATED_AS_WHOLE', { tieDown: id, limit: capacity }));
  }
  const missing = capacity === null ? inTieDown(id, [note('CAPACITY_NOT_STATED', { capacity: wordsOf(system) })]) : [];
  return {
    tieDown,
    capacity,
    atMost: capacity,
    weakest: [],
    missing,
    damaged: [],
    lowestGrade: Number.POSITIVE_INFINITY,
  };
}

/** Each end of a tie-down has an anchor point: on the vehicle, and for a direct one on the cargo. */
function missingAnchors(path: TieDownPath, { vehicleAnchors, cargoAnchors }: SeriesRating): Note[] {
  const direct = path === 'vehicle-to-cargo';
  const missing: Note[] = [];
  if (vehicleAnchors < (direct ? 1 : 2)) missing.push(note('ANCHOR_NOT_LISTED', { at: 'vehicle' }));
  if (direct && cargoAnchors < 1) missing.push(note('ANCHOR_NOT_LISTED', { at: 'cargo' }));
  return missing;
}

const inTieDown = (tieDown: string, facts: readonly Note[]): readonly Note[] =>
  facts.map(({ code, params, text }) => ({
    code,
    params: { tieDown, ...params },
    text: `Tie-down ${tieDown}: ${text}`,
  }));
