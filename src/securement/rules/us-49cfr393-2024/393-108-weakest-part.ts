import { noteAssumptions, assumeSound, showSeries } from '../../../assembly/assembly-rating.js';
import type { Part } from '../../../assembly/part.js';
import { rateSeries } from '../../../assembly/rate-part.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { readPositive } from '../../../quantities/read.js';
import type { RatingTable } from '../../../tables/rating-table.js';
import { type Note, note } from '../../../working/note.js';
import type { TieDown } from '../../plan.js';
import type { RuleContext } from '../../rule-set.js';
import { cite } from './parameters.js';

/** A tie-down with its rating: the least of its parts and of the anchor points at both ends. */
export interface RatedTieDown {
  readonly tieDown: TieDown;
  readonly workingLoadLimit: QuantityLike | null;
  /** While the rating is not known: it is no more than this, as far as the known parts say. */
  readonly atMost: QuantityLike | null;
  readonly weakest: readonly string[];
  readonly missing: readonly Note[];
  /** Ids of the parts that count zero. */
  readonly damaged: readonly string[];
}

/**
 * 393.108(a): the working load limit of a tie-down is the least of its components, tensioner included, and of
 * the anchor points it is fixed to. (b)-(g): the maker's mark governs; without one the tables do, and an
 * unmarked chain counts as grade 30.
 *
 * An anchor point that is not listed is a fact that is missing: it is neither unlimited nor zero.
 */
export function rateTieDown(ratings: RatingTable, tieDown: TieDown, path: string, { working, units }: RuleContext): RatedTieDown {
  if (tieDown.parts === undefined) return rateAsWhole(tieDown, path, working.shown ? working.assumptions : undefined);
  const series = rateSeries(ratings, tieDown.parts, path);
  const anchors = missingAnchors(tieDown);
  const damaged = series.parts.filter(({ basis }) => basis === 'damaged, counts zero').map(({ id }) => id);
  const known = anchors.length === 0 || series.workingLoadLimit?.value === 0;
  if (working.shown) {
    cite(working, '393.108(a)-(f)');
    showSeries(working, series, `tie-down ${tieDown.id}`, units === 'si' ? 'kg' : 'lb', '49 CFR 393.108(a)');
    for (const part of series.parts) noteAssumptions(working, { ...part, id: `${tieDown.id} ${part.id}` }, ratings);
    assumeSound(working, tieDown.parts);
  }
  return {
    tieDown,
    workingLoadLimit: known ? series.workingLoadLimit : null,
    atMost: series.atMost,
    weakest: known ? series.weakest : [],
    missing: series.missing.length + anchors.length === 0 ? series.missing : [...series.missing, ...anchors].map((each) => inTieDown(tieDown.id, each)),
    damaged,
  };
}

function rateAsWhole(tieDown: TieDown, path: string, assumptions: Note[] | undefined): RatedTieDown {
  const stated = tieDown.capacities?.workingLoadLimit;
  if (stated === undefined) {
    const missing = [note(NO_WORKING_LOAD_LIMIT, { tieDown: tieDown.id })];
    return { tieDown, workingLoadLimit: null, atMost: null, weakest: [], missing, damaged: [] };
  }
  const workingLoadLimit = readPositive(stated, 'ratedLoad', `${path}capacities.workingLoadLimit`);
  assumptions?.push(note(STATED_AS_WHOLE, { tieDown: tieDown.id, limit: workingLoadLimit }));
  return { tieDown, workingLoadLimit, atMost: workingLoadLimit, weakest: [], missing: [], damaged: [] };
}

function missingAnchors(tieDown: TieDown): readonly Note[] {
  let onVehicle = 0;
  let onCargo = 0;
  for (const part of tieDown.parts as readonly Part[]) {
    if (part.kind !== 'anchor') continue;
    if (part.at === 'cargo') onCargo++;
    else onVehicle++;
  }
  if (tieDown.path === 'vehicle-to-cargo') {
    if (onVehicle > 0 && onCargo > 0) return NONE;
    const missing = onVehicle > 0 ? [] : [note(VEHICLE_ANCHOR_NOT_LISTED)];
    return onCargo > 0 ? missing : [...missing, note(CARGO_ANCHOR_NOT_LISTED)];
  }
  return onVehicle > 1 ? NONE : [note(TWO_ANCHORS_NOT_LISTED)];
}

const NONE: readonly Note[] = [];

function inTieDown(tieDown: string, missing: Note): Note {
  return { code: missing.code, params: { tieDown, ...missing.params }, text: `Tie-down ${tieDown}: ${missing.text}` };
}

const VEHICLE_ANCHOR_NOT_LISTED = {
  code: 'ANCHOR_NOT_LISTED',
  text: 'The vehicle anchor point and its rating: add a part { kind: anchor, at: vehicle } with its marked limit.',
};
const CARGO_ANCHOR_NOT_LISTED = {
  code: 'ATTACHMENT_NOT_LISTED',
  text: 'The attachment point on the cargo and its rating: add a part { kind: anchor, at: cargo } with its marked limit.',
};
const TWO_ANCHORS_NOT_LISTED = {
  code: 'ANCHORS_NOT_LISTED',
  text: 'The vehicle anchor points at both ends and their ratings: add two parts { kind: anchor, at: vehicle } with their marked limits.',
};
const NO_WORKING_LOAD_LIMIT = {
  code: 'NO_WORKING_LOAD_LIMIT',
  text: 'Tie-down {tieDown}: its working load limit. Another capacity is not converted into one.',
};
const STATED_AS_WHOLE = {
  code: 'STATED_AS_WHOLE',
  text: 'Tie-down {tieDown} is stated as a whole: {limit} is taken to hold for every part and both anchor points.',
};
