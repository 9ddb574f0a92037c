import { inUnit } from '../../quantities/convert.js';
import type { Quantity, QuantityLike } from '../../quantities/quantity.js';
import {
  type Check,
  type CheckSubject,
  failedCheck,
  metCheck,
  shownCheck,
  undeterminedCheck,
} from '../../working/check.js';
import { type Note, note } from '../../working/note.js';
import type { AxleBalance } from './axle-balance.js';
import type { ReadHitch } from './hitch.js';
import type { GravityShares, PullOnTractor } from './pull-on-tractor.js';
import { sideTipping } from './side-tipping.js';
import type { ReadTractor } from './tractor.js';

type Force = Quantity<'lbf' | 'kN'>;

function about(
  id: string,
  title: string,
  clause: string,
  weight: CheckSubject['weight'] = 'requirement',
): CheckSubject {
  return { id, title, clause, weight, subject: 'tractor' };
}

const STATICS_CLAUSE = 'statics, derived';
const GUIDANCE_CLAUSE = 'CDC/NIOSH guidance on hitching';

export function hitchCheck({ kind, subframeTiedToFrame: tied }: ReadHitch): Check {
  const guided = kind !== 'frame' && kind !== 'attachment';
  const check = about(
    'hitch-point',
    'Hooked where a tractor may be pulled',
    guided ? GUIDANCE_CLAUSE : 'common practice',
  );
  if (kind === 'attachment') {
    if (tied === undefined) return undeterminedCheck(check, [SUBFRAME_UNKNOWN]);
    return tied ? metCheck(check) : failedCheck(check, SUBFRAME_NOT_TIED);
  }
  const good = kind === 'drawbar' || kind === 'frame' || kind === 'front-hitch';
  return good ? metCheck(check) : failedCheck(check, note('NO_POINT_TO_PULL_ON', { kind }));
}

export function liftCheck(tips: AxleBalance['tips'], pull: QuantityLike | undefined, lift: Force | null): Check {
  const check = about('axle-lift', 'No axle lifts', STATICS_CLAUSE);
  if (tips !== undefined) return failedCheck(check, tips === 'tips-rearward' ? TIPS_REARWARD : TIPS_FORWARD);
  if (pull === undefined) return undeterminedCheck(check, [PULL_UNKNOWN]);
  if (lift === null) return metCheck(check);
  return shownCheck(check, inUnit(pull, lift.unit), lift);
}

export function reserveCheck(
  reserve: number | undefined,
  pull: QuantityLike | undefined,
  weight: number,
  front: number,
  force: (newtons: number) => Force,
): Check[] {
  if (reserve === undefined) return [];
  const check = about('steering-reserve', `The front axle keeps ${reserve} of the weight`, "the caller's reserve");
  if (!(front > 0)) return [failedCheck(check, FRONT_CARRIES_NOTHING)];
  const [demand, capacity] = [force(reserve * weight), force(front)];
  const judged = shownCheck(check, demand, capacity);
  return judged.verdict === 'pass' && pull === undefined ? [undeterminedCheck(check, [PULL_UNKNOWN])] : [judged];
}

export function belowAxleCheck(hitchToAxle: 'below' | 'at' | 'above'): Check {
  const check = about('below-axle', 'The hitch is below the rear axle', 'common practice', 'practice');
  return hitchToAxle === 'below' ? metCheck(check) : failedCheck(check, HITCH_NOT_BELOW_AXLE);
}

/** Adds the check of the sides, and returns what they carry where that is known. */
export function judgeSides(
  tractor: ReadTractor,
  gravity: GravityShares,
  pull: PullOnTractor | undefined,
  pinHeight: number | undefined,
  checks: Check[],
): { readonly high: number; readonly low: number } | undefined {
  const check = about('side-tipping', 'It does not tip to the side', STATICS_CLAUSE);
  const { track, height, drive } = tractor;
  const rigid = drive === 'tracks';
  const needsHeight = height === undefined && gravity.sideward !== 0;
  const missing = [
    ...(track === undefined ? [TRACK_WIDTH_UNKNOWN] : []),
    ...(needsHeight || (height === undefined && pinHeight === undefined && !rigid) ? [HEIGHT_UNKNOWN] : []),
    ...(pull === undefined ? [PULL_UNKNOWN] : []),
  ];
  if (track === undefined || needsHeight) {
    checks.push(undeterminedCheck(check, missing));
    return undefined;
  }
  const sides = sideTipping({ ...tractor, height: height ?? 0 }, track, gravity, pull);
  // the pin is no higher than the center of gravity; between two heights the answer is even, so both ends will do
  const pins = pinHeight === undefined ? [0, height ?? 0] : [pinHeight];
  if (sides.high < 0) checks.push(failedCheck(check, TIPS_SIDEWAYS));
  else if (missing.length > 0) checks.push(undeterminedCheck(check, missing));
  else if (rigid || pins.every(sides.standsOnPivot)) checks.push(metCheck(check));
  else checks.push(undeterminedCheck(check, [FRONT_AXLE_PIVOTS]));
  return sides;
}
const SUBFRAME_UNKNOWN: Note = /* @__PURE__ */ note('SUBFRAME_UNKNOWN');
const SUBFRAME_NOT_TIED: Note = /* @__PURE__ */ note('SUBFRAME_NOT_TIED');
const TIPS_REARWARD: Note = /* @__PURE__ */ note('TIPS_REARWARD');
const TIPS_FORWARD: Note = /* @__PURE__ */ note('TIPS_FORWARD');
const PULL_UNKNOWN: Note = /* @__PURE__ */ note('PULL_UNKNOWN');
const TRACK_WIDTH_UNKNOWN: Note = /* @__PURE__ */ note('TRACK_WIDTH_UNKNOWN');
const HEIGHT_UNKNOWN: Note = /* @__PURE__ */ note('CENTER_OF_GRAVITY_HEIGHT_UNKNOWN');
const FRONT_CARRIES_NOTHING: Note = /* @__PURE__ */ note('FRONT_CARRIES_NOTHING');
const TIPS_SIDEWAYS: Note = /* @__PURE__ */ note('TIPS_SIDEWAYS');
const FRONT_AXLE_PIVOTS: Note = /* @__PURE__ */ note('FRONT_AXLE_PIVOTS');
const HITCH_NOT_BELOW_AXLE: Note = /* @__PURE__ */ note('HITCH_NOT_BELOW_AXLE');
