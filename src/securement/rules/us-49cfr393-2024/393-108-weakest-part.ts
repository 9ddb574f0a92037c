import type { Capacities } from '../../../assembly/part.js';
import { type PartRater, rateSeries, readCapacity, type SeriesRating } from '../../../assembly/rate-part.js';
import { showSeries } from '../../../assembly/show-parts.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { massUnitOf } from '../../../quantities/shared-units.js';
import { type Check, metCheck, notApplicableCheck, undeterminedCheck } from '../../../working/check.js';
import { type Note, note, plainNote, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { TieDown, TieDownPath } from '../../plan.js';
import type { RuleContext } from '../../rule-set.js';
import { creditOf } from './393-106-credit.js';
import { aboutRule } from './cite.js';

/** A tie-down with its rating: the least of its parts and of the anchor points at both ends. */
export interface RatedTieDown {
  readonly tieDown: TieDown;
  /** Share of its limit that counts, 393.106(d). */
  readonly credit: number;
  readonly workingLoadLimit: QuantityLike | null;
  /** While the rating is not known: it is no more than this, as far as the known parts say. */
  readonly atMost: QuantityLike | null;
  readonly weakest: readonly string[];
  readonly missing: readonly Note[];
  /** Ids of the parts that count zero. */
  readonly damaged: readonly string[];
  /** The lowest grade that a chain in it counts as; infinite where none counts by grade. */
  readonly lowestGrade: number;
}

/**
 * 393.108(a): the working load limit of a tie-down is the least of its components, tensioner included, and of
 * the anchor points it is fixed to. (b)-(g): the maker's mark governs; without one the tables do, and an
 * unmarked chain counts as grade 30.
 *
 * An anchor point that is not listed is a fact that is missing: it is neither unlimited nor zero.
 */
export function rateTieDown(rater: PartRater, tieDown: TieDown, { working, units }: RuleContext): RatedTieDown {
  const { parts } = tieDown;
  if (parts === undefined) return rateAsWhole(tieDown, working);
  const series = rateSeries(rater, parts);
  const anchors = missingAnchors(tieDown.path, series);
  const known = anchors.length === 0 || series.workingLoadLimit?.value === 0;
  if (working.shown) {
    showSeries(working, series, parts, `tie-down ${tieDown.id}`, massUnitOf(units), '49 CFR 393.108(a)');
  }
  return {
    tieDown,
    credit: creditOf(tieDown.path),
    workingLoadLimit: known ? series.workingLoadLimit : null,
    atMost: series.atMost,
    weakest: known ? series.weakest : NONE,
    missing:
      known && series.missing.length === 0
        ? NONE
        : [...series.missing, ...anchors].map((each) => inTieDown(tieDown.id, each)),
    damaged: series.damaged,
    lowestGrade: series.lowestGrade,
  };
}

function rateAsWhole(tieDown: TieDown, working: Working): RatedTieDown {
  const workingLoadLimit = readCapacity(tieDown.capacities as Capacities, 'workingLoadLimit') ?? null;
  const missing = workingLoadLimit === null ? [inTieDown(tieDown.id, note(NO_WORKING_LOAD_LIMIT))] : NONE;
  if (working.shown && workingLoadLimit !== null) {
    working.assumptions.push(note(STATED_AS_WHOLE, { tieDown: tieDown.id, limit: workingLoadLimit }));
  }
  return {
    tieDown,
    credit: creditOf(tieDown.path),
    workingLoadLimit,
    atMost: workingLoadLimit,
    weakest: NONE,
    missing,
    damaged: NONE,
    lowestGrade: Number.POSITIVE_INFINITY,
  };
}

/** Each end of a tie-down has an anchor point: on the vehicle, and for a direct one on the cargo. */
function missingAnchors(path: TieDownPath, { vehicleAnchors, cargoAnchors }: SeriesRating): readonly Note[] {
  const direct = path === 'vehicle-to-cargo';
  const vehicle = vehicleAnchors >= (direct ? 1 : 2);
  const cargo = !direct || cargoAnchors >= 1;
  if (vehicle && cargo) return NONE;
  const missing: Note[] = [];
  if (!vehicle) missing.push(note(ANCHOR_NOT_LISTED, { at: 'vehicle' }));
  if (!cargo) missing.push(note(ANCHOR_NOT_LISTED, { at: 'cargo' }));
  return missing;
}

/** 393.108(a) for one article: every tie-down rated, or what is missing, unless strength, number and ends are enough without it. */
export function checkRated(
  article: string,
  holding: readonly RatedTieDown[],
  enough: boolean,
  working: Working,
): Check {
  const about = aboutRule(working, '393.108(a)', 'Every part and anchor point rated', article);
  let missing: Note[] | undefined;
  for (const { workingLoadLimit, missing: facts } of holding) {
    if (workingLoadLimit !== null) continue;
    missing ??= [];
    missing.push(...facts);
  }
  if (missing === undefined) return metCheck(about);
  if (enough) return notApplicableCheck(about, RATING_NOT_NEEDED);
  return undeterminedCheck(about, missing);
}

const NONE: readonly never[] = [];

function inTieDown(tieDown: string, missing: Note): Note {
  return { code: missing.code, params: { tieDown, ...missing.params }, text: `Tie-down ${tieDown}: ${missing.text}` };
}

const ANCHOR_NOT_LISTED: Words = ['ANCHOR_NOT_LISTED', 'The anchor points on the {at}, as rated parts of kind anchor.'];
const NO_WORKING_LOAD_LIMIT: Words = [
  'NO_WORKING_LOAD_LIMIT',
  'Its working load limit: no other capacity stands for it.',
];
const STATED_AS_WHOLE: Words = ['STATED_AS_WHOLE', '{tieDown} is stated as a whole: {limit}, anchor points included.'];
const RATING_NOT_NEEDED: Note = /* @__PURE__ */ plainNote('RATING_NOT_NEEDED', 'One is not; the others are enough.');
const RATING_NOT_KNOWN: Words = ['RATING_NOT_KNOWN', 'The working load limit of {tieDowns}, see 393.108(a).'];

/** Names the tie-downs whose rating is not known. */
export function ratingNotKnown(tieDowns: readonly RatedTieDown[]): Note {
  const unknown = tieDowns.filter(({ workingLoadLimit }) => workingLoadLimit === null);
  return note(RATING_NOT_KNOWN, { tieDowns: unknown.map(({ tieDown }) => tieDown.id).join(', ') });
}
