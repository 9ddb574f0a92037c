import type { SeriesRating } from '../assembly/rate-part.js';
import { inUnit } from '../quantities/convert.js';
import { compareExact, ratioOf } from '../quantities/exact.js';
import type { Quantity, QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import {
  type Check,
  type CheckSubject,
  failedCheck,
  notApplicableCheck,
  ratioCheck,
  shownCheck,
  undeterminedCheck,
} from '../working/check.js';
import { type Note, note } from '../working/note.js';
import type { AvailablePull } from './available-pull.js';
import type { HitchStability } from './hitch-stability.js';
import type { PullChainLength } from './pull-chain-length.js';
import type { PullResistance } from './pull-resistance.js';
import type { ShockTension } from './shock-tension.js';

type Force = Quantity<'lbf' | 'kN'>;
type Rated = Quantity<'lb' | 'kg'>;

const about = (id: string, title: string, clause: string): CheckSubject => ({
  id,
  title,
  clause,
  weight: 'requirement',
  subject: 'pull',
});

/** Whether the tractor can give what the load takes; a load that may run by itself is no load for a chain. */
export function tractionCheck(available: AvailablePull, resistance: PullResistance, needed: Force | null): Check {
  const check = about('available-pull', 'The tractor can give the pull', 'statics and the traction given');
  if (needed === null) return failedCheck(check, note('LOAD_RUNS_BY_ITSELF'));
  if (available.pull === null) return failedCheck(check, note('TRACTOR_CANNOT_PULL', { outcome: available.outcome }));
  const judged = shownCheck(check, needed, available.pull);
  return judged.verdict === 'pass' && resistance.push !== undefined
    ? undeterminedCheck(check, [note('LOAD_MAY_RUN_BY_ITSELF', { push: resistance.push })])
    : judged;
}

/** The checks of the hitch; without a reserve for steering the pull is not judged to the end. */
export function stabilityChecks({ checks }: HitchStability): Check[] {
  if (checks.some(({ id }) => id === 'steering-reserve')) return [...checks];
  const check = about('steering-reserve', 'The front axle keeps what steering needs', "the caller's reserve");
  return [...checks, undeterminedCheck(check, [note('STEERING_RESERVE_UNKNOWN')])];
}

/** Parts in line against what they see; `open` is what must be known beside their ratings. */
export function strengthCheck(
  id: 'rigging' | 'at-load' | 'bridle',
  required: Rated | null,
  parts: SeriesRating | undefined,
  open: readonly Note[],
): Check {
  const check = about(id, TITLES[id], 'weakest part');
  if (required === null) return notApplicableCheck(check, note('NOTHING_PULLS'));
  if (parts === undefined) return undeterminedCheck(check, open);
  const { workingLoadLimit, atMost, missing } = parts;
  const limit = workingLoadLimit ?? atMost;
  if (limit !== null) {
    const judged = shownCheck(check, required, ratedLoadIn(limit, required.unit));
    if (judged.verdict === 'fail') return judged;
    if (workingLoadLimit !== null && open.length === 0) return judged;
  }
  return undeterminedCheck(check, [...missing, ...open]);
}

/** Whether the rigging bears all that the tractor may give, as practice asks of a pull that is only estimated. */
export function againstTractor(most: Force, limit: QuantityLike): Check {
  const check = about('rigging-against-tractor', 'The rigging bears all that the tractor may give', 'common practice');
  return shownCheck({ ...check, weight: 'practice' }, most, ratedLoadIn(limit, most.unit));
}

const TITLES = {
  rigging: 'Every part from hitch to load is strong enough',
  'at-load': 'Every part between tackle and load is strong enough',
  bridle: 'Every part of a leg of the bridle is strong enough',
} as const;

export function lengthCheck(owned: QuantityLike | undefined, { required, length }: PullChainLength): Check {
  const check = about('chain-length', 'The chain is long enough', 'geometry');
  if (owned === undefined) return notApplicableCheck(check, note('LENGTH_TO_BE_CUT', { length }));
  const { fits, utilization } = ratioOf(required.value, inUnit(owned, required.unit).value, () =>
    compareExact(required, owned),
  );
  return ratioCheck(check, fits, required, owned, utilization);
}

/** What a snatch does to the chain, and to the axle that it lifts. */
export function takeUpChecks({ checks, peakTension }: ShockTension, { liftPull }: HitchStability): Check[] {
  const lift = about('take-up/axle-lift', 'The peak lifts no axle', 'statics, derived');
  return [
    ...checks.map((check) => ({ ...check, id: `take-up/${check.id}` })),
    ...(liftPull === null ? [] : [shownCheck(lift, peakTension, liftPull)]),
  ];
}

export function takeUpUnknown(missing: Note): Check {
  return undeterminedCheck(
    about('take-up/working-load-limit', 'The peak stays within the working load limit', 'energy'),
    [missing],
  );
}
