import { fail } from '../errors.js';
import { checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { Quantity, type QuantityInput } from '../quantities/quantity.js';
import { readOptional } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { STAND_CLEAR } from '../working/cautions.js';
import { type Check, governingCheck, overallVerdict, type Verdict } from '../working/check.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import type { SourceRef } from '../working/source.js';
import { Working } from '../working/step.js';
import { axleBalance } from './tractor/axle-balance.js';
import { type ChainAngle, type Hitch, readHitch } from './tractor/hitch.js';
import { belowAxleCheck, hitchCheck, judgeSides, liftCheck, reserveCheck } from './tractor/hitch-checks.js';
import type { GravityShares, PullOnTractor } from './tractor/pull-on-tractor.js';
import { type ReadTractor, readAngle, readSlope, readTractor, type Tractor } from './tractor/tractor.js';

/** How it stands: on all wheels, with an axle lifted by the pull, or tipping without any pull. */
export type Stance = 'stands' | 'front-lifts' | 'rear-lifts' | 'tips-rearward' | 'tips-forward';

type Force = Quantity<'lbf' | 'kN'>;
type ShortLength = Quantity<'in' | 'mm'>;

export interface HitchStability extends ResultBase<'hitchStability'> {
  readonly verdict: Verdict;
  /** Id of the check that decides. */
  readonly governing: string | null;
  readonly checks: readonly Check[];
  /** Under the pull, or without one where none was given. */
  readonly stance: Stance;
  /** What the axles carry, square to the ground. Negative: no balance is possible, the axle has lifted. */
  readonly frontReaction: Force;
  readonly rearReaction: Force;
  /** The pull at which an axle lifts; null where no pull of this direction lifts one, zero where it tips without. */
  readonly liftPull: Force | null;
  /** For a pull behind the tractor: the friction factor that the wheels need to lift the front before they slip. */
  readonly frictionToLift?: number;
  /** With `friction`: what comes first as the pull grows. */
  readonly first?: 'slips' | 'lifts';
  /** Greatest height of the hitch for this pull, with the reserve where one was asked for; null: no height is low enough. */
  readonly greatestHeight?: ShortLength | null;
  /** The slope, nose up, at which it tips rearward without a pull. */
  readonly noPullTipAngle?: { readonly fromHorizontal: Quantity<'deg'> };
  /** The angle, nose up, from which it falls over backward by itself once its front is up, turning about the rear axle. */
  readonly pointOfNoReturn?: { readonly fromHorizontal: Quantity<'deg'> };
  readonly hitchToAxle?: 'below' | 'at' | 'above';
  /** With a side slope or a pull to the side, of a frame rigid across its width: what each side carries. */
  readonly sides?: { readonly high: Force; readonly low: Force };
}

/**
 * Whether a tractor stays on all its wheels under a pull, and where the chain may be hooked.
 *
 * For a pull P behind the tractor at height h above the ground and c behind the rear axle, on a slope α (nose up) with
 * the chain β below the line of the tractor:
 * R_f = (W · (x · cos α − z · sin α) − P · (h · cos β + c · sin β)) / L, R_r = W · cos α + P · sin β − R_f.
 * The front lifts at P = W · (x · cos α − z · sin α) / (h · cos β + c · sin β). Reverse pull on a front hitch is the mirror
 * image of it and unloads the rear axle. The torque of the engine is inside the tractor and does not appear while its
 * wheels can turn.
 *
 * The hitch decides the verdict too, though its rule is guidance and no law: a chain on the three-point arms, the top
 * link, a quick hitch or the axle fails whatever the forces say. A pull to the side, or a side slope, fails where even
 * a frame rigid across its width tips, passes where the tractor stands with its front axle free to pivot, and is
 * undetermined between.
 *
 * @param input.tractor as it works; on a slope its center of gravity height is needed, for the sides its track width
 * @param input.hitch kind, and height above the GROUND; `behindAxle` (or `aheadOfFrontAxle`) where the chain slopes or pulls to the side
 * @param input.pull steady tension of the chain; a jerk is a multiple of it, see {@link shockTension}. Omitted: the pull that
 * lifts an axle is told, and the verdict stays open
 * @param input.slope along the tractor, positive nose up; omitted: level, as an assumption
 * @param input.chainAngle from the line of the tractor, or from the horizontal; omitted: along the ground
 * @param input.weightOnHitch what the load itself puts on the hitch, square to the ground, such as one end of a log; omitted: nothing
 * @param input.steeringReserve share of the tractor's weight that the front axle shall keep, such as 0.2; omitted: only the
 * lifting is judged
 * @param input.friction greatest friction factor between driven wheels and ground: tells whether it slips or lifts first
 * @param input.rearAxleHeight of the middle of the rear axle above the ground: the loaded radius of its tires
 * @param input.frontPivotHeight of the pin that the front axle pivots on, above the ground; omitted: anywhere up to the center of
 * gravity, and the worst counts
 * @param input.sidePull angle of the pull from straight behind (reverse pull: from straight ahead), toward the low side
 * @param input.sideSlope across the tractor
 * @param input.units `'us'` (lbf, in) or `'si'` (kN, mm); omitted: the system that all inputs share
 * @throws RiggingError `MISSING_FIELD` (a field; the center of gravity height on a slope; the distance of the hitch from its
 * axle with a chain that slopes or pulls to the side), `CONFLICTING_FIELDS`, `IMPOSSIBLE_GEOMETRY`, `UNKNOWN_VALUE`, `NOT_POSITIVE`, `NOT_FINITE`,
 * `NEGATIVE`, `UNITS_REQUIRED`, `WRONG_KIND`
 * @validity a steady pull on firm ground, wheels free to turn; no wheel in a hole or blocked; crawling speed
 * @source statics about the wheels, derived; kinds of hitch: CDC/NIOSH guidance on hitching, 2009, read in a page quoting it
 * @example
 * hitchStability({
 *   tractor: { mass: '3300 lb', frontAxleMass: '1155 lb', wheelbase: '64 in', drive: 'rear-wheels' },
 *   hitch: { kind: 'drawbar', height: '15 in' },
 *   pull: '1500 lbf',
 * }).frontReaction.value.toFixed(0)
 * // => '803'
 */
export function hitchStability(input: {
  readonly tractor: Tractor;
  readonly hitch: Hitch;
  readonly pull?: QuantityInput<'force'>;
  readonly slope?: QuantityInput<'angle'>;
  readonly chainAngle?: ChainAngle;
  readonly weightOnHitch?: QuantityInput<'force'>;
  readonly steeringReserve?: number;
  readonly friction?: number;
  readonly rearAxleHeight?: QuantityInput<'length'>;
  readonly frontPivotHeight?: QuantityInput<'length'>;
  readonly sidePull?: { readonly fromStraight: QuantityInput<'angle'> };
  readonly sideSlope?: QuantityInput<'angle'>;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}): HitchStability {
  checkObject(input, '', '{ tractor, hitch, pull }');
  const working = new Working(input.working !== false);
  const tractor = readTractor(input.tractor, working);
  const { weight: W, wheelbase: L, ahead: x, height: z } = tractor;
  const slope = readSlope(input.slope, working);
  const sideSlope = input.sideSlope === undefined ? 0 : Math.abs(readAngle(input.sideSlope, 'sideSlope'));
  if (z === undefined && slope !== 0) {
    fail(
      'MISSING_FIELD',
      'tractor.centerOfGravityHeight',
      'its height, on a slope',
      undefined,
      'Give it, or an estimate on the high side.',
    );
  }
  const gravity = sharesOf(slope, sideSlope);
  const sideways = readSidePull(input.sidePull);
  const hitch = readHitch(input, slope, sideways !== 0, working);
  const pull = readOptional(input.pull, 'force', 'pull');
  const reserve = readShare(input.steeringReserve, 'steeringReserve', 1);
  const friction = readShare(input.friction, 'friction', 2);
  const axleHeight = readOptional(input.rearAxleHeight, 'length', 'rearAxleHeight');
  const pin = readOptional(input.frontPivotHeight, 'length', 'frontPivotHeight');
  const units = sharedUnits(input.units, [...tractor.given, ...hitch.given, pull, axleHeight, pin]);
  const [forceUnit, lengthUnit] = units === 'us' ? (['lbf', 'in'] as const) : (['kN', 'mm'] as const);
  const force = (newtons: number): Force => inUnit({ value: newtons, unit: 'N' }, forceUnit);
  const short = (meters: number): ShortLength => inUnit({ value: meters, unit: 'm' }, lengthUnit);

  const P = pull === undefined ? 0 : inUnit(pull, 'N').value;
  const { forward, height: h, beyond: c, below, press } = hitch;
  const chain = { force: P, height: h, beyond: c, forward, below, press, sideways };
  const balance = axleBalance(tractor, gravity, chain);
  const { tips, farLiftsAt, nearLiftsAt } = balance;
  const far = balance.far + P * balance.farPerPull;
  const near = balance.near + P * balance.nearPerPull;
  const [front, rear] = forward ? [near, far] : [far, near];
  const stance = tips ?? (front < 0 ? 'front-lifts' : rear < 0 ? 'rear-lifts' : 'stands');
  const liftsAt = tips === undefined ? Math.min(farLiftsAt, nearLiftsAt) : 0;
  const liftPull = liftsAt === Number.POSITIVE_INFINITY ? null : force(liftsAt);
  const [frontReaction, rearReaction] = [force(front), force(rear)];

  const liftsFront = !forward && liftPull !== null && tips === undefined && liftsAt === farLiftsAt;
  const frictionToLift = liftsFront ? frictionAt(liftsAt, chain, W, gravity) : undefined;
  const first =
    frictionToLift === undefined || friction === undefined ? undefined : frictionToLift < friction ? 'lifts' : 'slips';

  const kept = forward ? 0 : (reserve ?? 0);
  const highest = pull && (((balance.far - kept * W) * L) / P - c * Math.sin(below)) / Math.cos(below);
  const greatestHeight = highest === undefined ? undefined : highest > 0 ? short(highest) : null;

  if (working.shown) {
    const found = { frictionToLift, kept, greatestHeight, liftPull, liftsFar: liftsAt === farLiftsAt };
    showSteps(
      working,
      tractor,
      chain,
      { slope, sideSlope, down: gravity.down },
      { front, rear, ...found },
      force,
      short,
    );
  }
  const checks: Check[] = [
    hitchCheck(hitch),
    liftCheck(tips, pull, liftPull),
    ...reserveCheck(reserve, pull, W, front, force),
  ];
  const sides =
    input.sidePull === undefined && input.sideSlope === undefined
      ? undefined
      : judgeSides(tractor, gravity, pull && chain, pin && inUnit(pin, 'm').value, checks);
  const axle = axleHeight && inUnit(axleHeight, 'm').value;
  const hitchToAxle = axle === undefined || forward ? undefined : h < axle ? 'below' : h > axle ? 'above' : 'at';
  if (hitchToAxle !== undefined) checks.push(belowAxleCheck(hitchToAxle));

  working.cite(STATICS);
  working.cite(GUIDANCE);
  working.cite(OVERTURN_TIME);
  if (pull === undefined) working.assumptions.push(NO_PULL_GIVEN);
  if (tractor.drive === 'tracks') working.assumptions.push(TRACK_ENDS_AS_AXLES);
  if (reserve === undefined) working.cautions.push(NO_STEERING_RESERVE);
  if (first === 'lifts') working.cautions.push(LIFTS_BEFORE_SLIPPING);
  if (forward) working.cautions.push(REVERSE_PULL);
  working.cautions.push(LIFT_PULL_IS_NO_ALLOWANCE, JERK_ADDS_TO_PULL, OVERTURN_IS_QUICK, WHEELS_MUST_TURN, STAND_CLEAR);
  const verdict = overallVerdict(checks);
  return makeResult(
    'hitchStability',
    {
      verdict,
      governing: governingCheck(checks, verdict)?.id ?? null,
      stance,
      frontReaction,
      rearReaction,
      liftPull,
      ...(frictionToLift !== undefined && { frictionToLift }),
      ...(first && { first }),
      ...(greatestHeight !== undefined && { greatestHeight }),
      ...(z !== undefined && { noPullTipAngle: { fromHorizontal: degrees(Math.atan2(x, z)) } }),
      ...(z !== undefined &&
        axle !== undefined && { pointOfNoReturn: { fromHorizontal: degrees(Math.atan2(x, z - axle)) } }),
      ...(hitchToAxle && { hitchToAxle }),
      ...(sides && { sides: { high: force(sides.high), low: force(sides.low) } }),
      checks,
    },
    input,
    working,
  );
}

const degrees = (radians: number): Quantity<'deg'> => new Quantity((radians * 180) / Math.PI, 'deg');

/** A number above zero and below what it can be at most, or none. */
function readShare(share: unknown, path: string, most: number): number | undefined {
  if (share === undefined) return undefined;
  if (typeof share === 'number' && share > 0 && share < most) return share;
  const expected = `a number above 0 and below ${most}`;
  const remedy = 'Give a plain number, such as 0.2, not 20.';
  if (typeof share !== 'number' || !Number.isFinite(share)) return fail('NOT_FINITE', path, expected, share, remedy);
  return fail(share <= 0 ? 'NOT_POSITIVE' : 'TOO_LARGE', path, expected, share, remedy);
}

/** Slope and side slope are the angles of the tractor's own lines from the horizontal, so the rest is square to the ground. */
function sharesOf(slope: number, sideSlope: number): GravityShares {
  const rearward = Math.sin(slope);
  const sideward = Math.sin(sideSlope);
  if (sideward === 0) return { rearward, sideward, down: Math.cos(slope) };
  const rest = 1 - rearward * rearward - sideward * sideward;
  if (!(rest > 0)) {
    fail(
      'IMPOSSIBLE_GEOMETRY',
      'sideSlope',
      'a ground that can be',
      `${degrees(sideSlope)}`,
      'Both angles together are steeper than upright.',
    );
  }
  return { rearward, sideward, down: Math.sqrt(rest) };
}

/** The balance in symbols, as it was computed. */
function showSteps(
  working: Working,
  { weight, ahead, height, wheelbase }: ReadTractor,
  { force: pull, height: h, beyond, below, forward, press }: PullOnTractor,
  { slope, sideSlope, down }: { readonly slope: number; readonly sideSlope: number; readonly down: number },
  found: {
    readonly front: number;
    readonly rear: number;
    readonly liftPull: Force | null;
    readonly liftsFar: boolean;
    readonly frictionToLift: number | undefined;
    readonly kept: number;
    readonly greatestHeight: ShortLength | null | undefined;
  },
  force: (newtons: number) => Force,
  short: (meters: number) => ShortLength,
): void {
  const [far, near] = forward ? ['R_r', 'R_f'] : ['R_f', 'R_r'];
  const [R_far, R_near] = forward ? [found.rear, found.front] : [found.front, found.rear];
  const free = forward ? '(L − x) · n + z · sin α' : 'x · n − z · sin α';
  const square = sideSlope === 0 ? 'cos α' : '√(1 − sin² α − sin² σ)';
  const tilt = { α: degrees(slope), ...(sideSlope !== 0 && { σ: degrees(sideSlope) }) };
  const own = {
    W: force(weight),
    x: short(ahead),
    ...(height !== undefined && { z: short(height) }),
    L: short(wheelbase),
  };
  const onHitch = press === 0 ? '' : ' − V · c';
  const led = {
    P: force(pull),
    h: short(h),
    c: short(beyond),
    β: degrees(below),
    ...(press !== 0 && { V: force(press) }),
  };
  working.step('tractor', 'n', square, tilt, down);
  const moments = `(W · (${free})${onHitch} − P · (h · cos β + c · sin β)) / L`;
  working.step('tractor', far as string, moments, { ...own, ...led }, force(R_far));
  working.step('tractor', near as string, `W · n${press === 0 ? '' : ' + V'} + P · sin β − ${far}`, {}, force(R_near));
  const { liftPull, liftsFar, frictionToLift, kept, greatestHeight } = found;
  if (liftsFar && liftPull !== null) {
    working.step('tractor', 'P_lift', `(W · (${free})${onHitch}) / (h · cos β + c · sin β)`, {}, liftPull);
  }
  if (frictionToLift !== undefined) {
    working.step('tractor', 'μ', '(P_lift · cos β + W · sin α) / (W · n + P_lift · sin β)', {}, frictionToLift);
  }
  if (greatestHeight !== undefined) {
    const expression = `((${far} without pull − ${kept} · W) · L / P − c · sin β) / cos β`;
    working.step('tractor', 'h_max', expression, {}, greatestHeight);
  }
}

function readSidePull(sidePull: { readonly fromStraight: QuantityInput<'angle'> } | undefined): number {
  if (sidePull === undefined) return 0;
  checkObject(sidePull, 'sidePull', '{ fromStraight }');
  return Math.abs(readAngle(sidePull.fromStraight, 'sidePull.fromStraight'));
}

/** All weight is on the rear wheels at that moment, whatever is driven. */
function frictionAt(
  pull: number,
  { below, press }: PullOnTractor,
  weight: number,
  { rearward, down }: GravityShares,
): number {
  return (pull * Math.cos(below) + weight * rearward) / (weight * down + press + pull * Math.sin(below));
}

const STATICS: SourceRef = { document: 'Statics of a tractor about its wheels', provenance: 'derived' };
const GUIDANCE: SourceRef = {
  document: 'CDC/NIOSH guidance on hitching to a tractor',
  edition: '2009',
  provenance: 'read',
  note: 'read in a page quoting it: hitch to the drawbar alone, never to the axle or the three-point hitch; free a stuck machine front to front, in reverse',
};

const OVERTURN_TIME: SourceRef = {
  document: 'Safety guidance on tractor overturns: about 0.75 s to the point of no return',
  provenance: 'memory',
};

const NO_PULL_GIVEN: Note = /* @__PURE__ */ note('NO_PULL_GIVEN');
const TRACK_ENDS_AS_AXLES: Note = /* @__PURE__ */ note('TRACK_ENDS_AS_AXLES');
const NO_STEERING_RESERVE: Note = /* @__PURE__ */ note('NO_STEERING_RESERVE');
const LIFTS_BEFORE_SLIPPING: Note = /* @__PURE__ */ note('LIFTS_BEFORE_SLIPPING');
const REVERSE_PULL: Note = /* @__PURE__ */ note('REVERSE_PULL');
const LIFT_PULL_IS_NO_ALLOWANCE: Note = /* @__PURE__ */ note('LIFT_PULL_IS_NO_ALLOWANCE');
const JERK_ADDS_TO_PULL: Note = /* @__PURE__ */ note('JERK_ADDS_TO_PULL');
const OVERTURN_IS_QUICK: Note = /* @__PURE__ */ note('OVERTURN_IS_QUICK');
const WHEELS_MUST_TURN: Note = /* @__PURE__ */ note('WHEELS_MUST_TURN');
