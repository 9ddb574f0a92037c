import type { Part } from '../assembly/part.js';
import { newRater, rateSeries, type SeriesRating } from '../assembly/rate-part.js';
import { newLog, noteAssumptions, showSeries } from '../assembly/show-parts.js';
import { chainMass } from '../chain/chain-mass.js';
import { checkRatings } from '../chain/chain-rating.js';
import { lightestChain, type RatedChain } from '../chain/rated-chains.js';
import type { ChainGrade, TradeSize } from '../chain/trade-size.js';
import { fail, RiggingError, within } from '../errors.js';
import { checkObject, defined } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { compareExact } from '../quantities/exact.js';
import { Quantity, type QuantityInput, type QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn, STANDARD_GRAVITY } from '../quantities/rated.js';
import { readOptional, readPositive } from '../quantities/read.js';
import { massUnitOf, readSystem } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import type { RatingTable } from '../tables/rating-table.js';
import { FOLLOW_THE_MARK, STAND_CLEAR } from '../working/cautions.js';
import { type Check, governingCheck, overallVerdict, type Verdict } from '../working/check.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import { type AvailablePull, type AvailablePullInput, availablePull } from './available-pull.js';
import { type BridleAngles, type BridleTension, bridleTension, readAngles } from './bridle-tension.js';
import { type HitchStability, hitchStability } from './hitch-stability.js';
import {
  againstTractor,
  lengthCheck,
  stabilityChecks,
  strengthCheck,
  takeUpChecks,
  takeUpUnknown,
  tractionCheck,
} from './plan-checks.js';
import { dangerZone, type PullChainLength, pullChainLength, type Standoff } from './pull-chain-length.js';
import { type PullResistance, type PullResistanceInput, pullResistance } from './pull-resistance.js';
import { type ShockTension, shockTension, type TakeUp } from './shock-tension.js';
import { TAKE_UP_AT_A_CRAWL } from './take-up-speed.js';
import { pullsInReverse, readHitch } from './tractor/hitch.js';
import { readAngle } from './tractor/tractor.js';
import type { ChainEnd } from './wrap-length.js';

type Without<Input, Key extends PropertyKey> = Input extends unknown ? Omit<Input, Key> : never;

/** The chain itself: what its links are like, and how long it is if it is there already. */
export interface PullChain {
  readonly pitch: QuantityInput<'length'>;
  /** Left out, that of the thickest chain of the rigging, by its size and grade. */
  readonly wireDiameter?: QuantityInput<'length'>;
  /** Left out, the length that is needed. */
  readonly length?: QuantityInput<'length'>;
}

/** Two legs at the load that meet in the chain. */
export interface PullBridle {
  readonly angles: BridleAngles;
  /** Every part in line of one leg; both are alike. */
  readonly parts?: readonly Part[];
}

export interface PullPlan extends Without<AvailablePullInput, 'units' | 'working' | 'weightOnHitch'> {
  /** What holds the load, and what it weighs: see {@link pullResistance}. Its slope is that of the plan unless it has its own. */
  readonly load: Without<PullResistanceInput, 'units' | 'working'>;
  /** Of the ground in the way it pulls, uphill positive; left out, level. */
  readonly slope?: QuantityInput<'angle'>;
  readonly ratings: RatingTable;
  /** Every part in line from the hitch to the load, with the points at both ends as anchors `at: 'vehicle'` (the tractor) and `at: 'cargo'` (the load). */
  readonly rigging?: readonly Part[];
  /** With a tackle: every part in line between it and the load. */
  readonly atLoad?: readonly Part[];
  readonly chain: PullChain;
  readonly ends: readonly ChainEnd[];
  readonly standoff?: Standoff;
  readonly dangerMargin?: number;
  /** Left out, one chain runs straight to the load. */
  readonly bridle?: PullBridle;
  readonly takeUp: TakeUp;
  /** Of the weakest part, as a multiple of its working load limit; a chain past it is scrap. */
  readonly proofFactor?: number;
  readonly steeringReserve?: number;
  readonly friction?: number;
  readonly rearAxleHeight?: QuantityInput<'length'>;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

type Force = Quantity<'lbf' | 'kN'>;
type Rated = Quantity<'lb' | 'kg'>;

export interface PlannedPull extends ResultBase<'planPull'> {
  readonly verdict: Verdict;
  /** Id of the check that decides. */
  readonly governing: string | null;
  readonly checks: readonly Check[];
  /** On the chain at the tractor, the smaller of what is needed and the most that the tractor may give; null where nothing pulls. */
  readonly pull: Force | null;
  /** The working load limit that every part from the hitch on needs. */
  readonly requiredLimit: Rated | null;
  /** With a tackle: what every part between it and the load needs. */
  readonly requiredAtLoad?: Rated | null;
  /** With a bridle: what each of its legs needs, in the order of the angles. */
  readonly requiredOfLegs?: readonly Rated[];
  /**
   * The lightest chain of the table that will do, its peak included where slack is taken up, and what the length that is
   * needed weighs; null where none does.
   */
  readonly recommended: RatedChain | null;
  /** Of the rigging; null while a part is not rated. */
  readonly riggingLimit?: Rated | null;
  readonly weakest?: readonly string[];
  readonly length: Quantity<'ft' | 'm'>;
  readonly links: number;
  /** Of the chain that is needed, or of the one that is there where it is longer. */
  readonly dangerRadius: Quantity<'ft' | 'm'>;
  /**
   * At the moment the chain comes tight, with all the thrust that the tractor may have; null where the thrust at once is
   * too much.
   */
  readonly greatestTakeUpSpeed?: Quantity<'mph' | 'm/s'> | null;
  /** The slack over which the tractor may reach that speed; only where the height of its center of gravity is known. */
  readonly permittedSlack?: Quantity<'in' | 'mm'>;
  readonly available: AvailablePull;
  readonly resistance: PullResistance;
  readonly stability: HitchStability;
  readonly chainLength: PullChainLength;
  readonly bridle?: BridleTension;
  readonly snatch?: ShockTension;
}

/**
 * A whole pull: whether the tractor can, whether it stays on its wheels, whether every part from hitch to load is strong
 * enough, how long a chain it takes, and what slack does.
 *
 * The chain sees P = min(needed, most): a load that gives way ends the pull, and so do wheels that slip, on the best ground
 * of the range and without the limit of the engine's power, which does not hold a pull at a standstill. Every part needs
 * WLL ≥ P / g; parts beyond a tackle the whole resistance, legs of a bridle their share. The lightest chain of the table
 * that has it is recommended: more chain is more to carry. Taken up with a jerk the peak counts, for the chain and for the
 * axle that it lifts, and a load that is stuck fast counts as anchored. The slack that keeps the peak within the limit is
 * s = v² / (2 · a), with the greatest take-up speed v; a = P_z / m, where P_z is what the tractor could pull at the height
 * of its own center of gravity, for there its inertia holds it back.
 *
 * @param input.tractor with `hitch`, `traction`, `rolling`, `engine` and `chainAngle` as in {@link availablePull}; what a
 * held-up log leans on the hitch is counted
 * @param input.load what holds the load, as in {@link pullResistance}; the angle of the chain is that of the plan
 * @param input.slope of the ground in the way it pulls, uphill positive, for tractor and load; a load with a `slope` of its own
 * asks for this one too
 * @param input.ratings the rating table, such as {@link us49cfr393_108_2024}
 * @param input.rigging every part in line from hitch to load, as in {@link assemblyRating}, with the drawbar as an anchor
 * `at: 'vehicle'` and, where the chain is not wrapped round the load, its point as one `at: 'cargo'`; omitted: the verdict
 * stays open
 * @param input.atLoad with a tackle, every part between it and the load
 * @param input.chain `{ pitch }`, with `length` where it is there already
 * @param input.ends with `standoff` and `dangerMargin` as in {@link pullChainLength}, the end at the load last
 * @param input.takeUp as in {@link shockTension}: `'slow'`, `{ speed }`, or `{ slack }` taken up with all the tractor's thrust
 * @param input.bridle `{ angles, parts }`: two legs at the load, as in {@link bridleTension}
 * @param input.steeringReserve share of the tractor's weight that the front axle keeps, such as 0.2; omitted: the verdict stays open
 * @param input.proofFactor proof load over working load limit of the weakest part
 * @param input.units `'us'` or `'si'`; omitted: the table's own
 * @throws RiggingError those of the functions named above, each with the field they name; `MISSING_FIELD` for the slope or the
 * chain angle of the tractor where the load has one, and for the height of the center of gravity where slack is taken up
 * @validity a slow, steady pull in line on ground alike under all wheels, or one snatch; no winch, no swinging load
 * @source as the functions named above; that a light chain which surely does is the right one: common practice
 * @example
 * planPull({
 *   ratings: us49cfr393_108_2024,
 *   tractor: { mass: '3300 lb', frontAxleMass: '1155 lb', wheelbase: '64 in', drive: 'rear-wheels' },
 *   hitch: { kind: 'drawbar', height: '15 in' },
 *   traction: { coefficient: 0.55, kind: 'net' },
 *   rolling: { coefficient: 0.05 },
 *   load: { kind: 'rolling', mass: '4000 lb', rolling: { coefficient: 0.15 } },
 *   rigging: [
 *     { id: 'drawbar', kind: 'anchor', at: 'vehicle', markedWll: '4000 lb' },
 *     { id: 'chain', kind: 'chain', size: '1/4', grade: 70 },
 *     { id: 'tow hook', kind: 'anchor', at: 'cargo', markedWll: '5000 lb' },
 *   ],
 *   chain: { pitch: '0.88 in', length: '20 ft' },
 *   ends: [{ at: 'hook' }, { at: 'hook' }],
 *   standoff: '18 ft',
 *   steeringReserve: 0.2,
 *   takeUp: 'slow',
 * }).verdict
 * // => 'pass'
 */
export function planPull(input: PullPlan): PlannedPull {
  checkObject(input, '', '{ ratings, tractor, hitch, traction, load, chain, ends, takeUp }');
  const { ratings, rigging } = input;
  checkRatings(ratings);
  const units = readSystem(input.units, ratings.units);
  const working = new Working(input.working !== false);
  const options = { units, working: working.shown };
  checkObject(input.load, 'load', '{ kind, mass }');
  checkObject(input.chain, 'chain', '{ pitch }');
  if (input.takeUp !== 'slow') checkObject(input.takeUp, 'takeUp', "'slow', { speed } or { slack }");
  const { bridle: told } = input;
  if (told !== undefined) {
    checkObject(told, 'bridle', '{ angles, parts }');
    within('bridle.angles', () => readAngles(told.angles));
  }
  const owned = readOptional(input.chain.length, 'length', 'chain.length');
  const unit = massUnitOf(units);

  const β = chainSlope(input);
  const resistance = resistanceOf(input, β, options);
  const onTractor = tractorOf(input, resistance);
  const available = availablePull({ ...onTractor, ...options });
  const { thrust, acceleration } = mostThrust(input, onTractor, available, options);
  const needed = tensionFor(input, resistance, β, working);
  const pull = needed === null || thrust === null || needed.value === 0 ? null : smaller(needed, thrust);
  const atLoad = input.load.tackle === undefined ? pull : pull && resistance.pull;
  const stability = stabilityOf(input, onTractor, pull, options);

  const rate = (parts: readonly Part[] | undefined, name: string): SeriesRating | undefined =>
    parts && rateParts(ratings, parts, name, units, working);
  const [line, beyond, leg] = [
    rate(rigging, 'rigging'),
    rate(input.atLoad, 'atLoad'),
    within('bridle', () => rate(input.bridle?.parts, 'parts')),
  ];
  const wire = wireOf(input);
  const chainLength = lengthOf(input, wire, options);
  const bridle = input.bridle && atLoad ? tensionOf(input.bridle.angles, atLoad, options) : undefined;
  const requiredLimit = pull && ratedLoadIn(pull, unit);
  const requiredOfLegs = bridle?.legs.map((each) => ratedLoadIn(each, unit));

  const tight = owned !== undefined && compareExact(owned, chainLength.length) < 0 ? owned : chainLength.length;
  const peakIn = (wire: QuantityLike<'mm'>, limit: Rated | null, takeUp: Exclude<TakeUp, 'slow'>, working = false) =>
    peakOf(
      input,
      { wire, limit, takeUp, thrust: thrust as Force, needed: needed as Force, length: tight },
      {
        units,
        working,
      },
    );
  const jerk = pull === null || input.takeUp === 'slow' ? undefined : takenUp(input.takeUp, acceleration);
  const recommended =
    requiredLimit &&
    lightestChain(ratings, requiredLimit, chainLength.length, units, ({ size, grade, workingLoadLimit }) => {
      const wire = jerk && wireBy(size, grade);
      return jerk === undefined || (wire !== undefined && peakIn(wire, workingLoadLimit, jerk).verdict === 'pass');
    });
  const limit = line?.workingLoadLimit == null ? null : ratedLoadIn(line.workingLoadLimit, unit);
  const snatch =
    jerk && line && wire && (limit === null || limit.value > 0) ? peakIn(wire, limit, jerk, working.shown) : undefined;
  const atOnce =
    pull && wire && limit?.value
      ? peakIn(wire, limit, { slack: ZERO_SLACK, ...(acceleration && { acceleration }) })
      : undefined;
  const greatest = atOnce?.greatestTakeUpSpeed.withinWorkingLoadLimit;
  const permittedSlack = greatest === undefined ? undefined : slackFor(greatest, acceleration, units, working);

  if (working.shown && pull !== null && requiredLimit !== null) {
    working.step('chain', 'P', 'min(needed, most)', { needed, most: thrust }, pull);
    const g = { value: STANDARD_GRAVITY, unit: 'm/s2' } as const;
    working.step('chain', 'required WLL', 'P / g', { P: pull, g }, requiredLimit);
  }
  const checks: Check[] = [
    tractionCheck(available, resistance, needed),
    ...stabilityChecks(stability),
    strengthCheck('rigging', requiredLimit, line, openEnds(input, line)),
    ...(line?.workingLoadLimit == null || thrust === null ? [] : [againstTractor(thrust, line.workingLoadLimit)]),
    ...(input.load.tackle === undefined
      ? []
      : [
          strengthCheck(
            'at-load',
            atLoad && ratedLoadIn(atLoad, unit),
            beyond,
            beyond ? (input.bridle ? [] : openAtLoad(input.ends, beyond)) : [note('LOAD_SIDE_UNKNOWN')],
          ),
        ]),
    ...(input.bridle === undefined
      ? []
      : [
          strengthCheck(
            'bridle',
            greatestOf(requiredOfLegs),
            leg,
            leg ? openAtLoad(input.ends, leg) : [note('BRIDLE_PARTS_UNKNOWN')],
          ),
        ]),
    lengthCheck(owned, chainLength),
    ...(snatch ? takeUpChecks(snatch, stability) : jerk ? [takeUpUnknown(note('WIRE_UNKNOWN'))] : []),
  ];

  if (line?.workingLoadLimit != null && thrust !== null && exceeds(thrust, line.workingLoadLimit)) {
    working.cautions.push(note('TRACTOR_CAN_OVERLOAD_RIGGING', { most: thrust }));
  }
  if (requiredLimit !== null && recommended === null) {
    working.cautions.push(note('NO_CHAIN_OF_TABLE_DOES', { ratings: ratings.id, required: requiredLimit }));
  }
  working.cautions.push(note('STOP_IF_IT_DOES_NOT_MOVE'), TAKE_UP_AT_A_CRAWL, STAND_CLEAR, FOLLOW_THE_MARK);
  working.cautions.push(note('CHAIN_NOT_MADE_FOR_RECOVERY'));
  addMissing(working.cautions, [available, resistance, stability, chainLength, bridle, snatch]);
  working.cite({
    document: 'Common practice in choosing a pull chain',
    clause: 'the lightest that surely does',
    provenance: 'common practice',
  });
  const verdict = overallVerdict(checks);
  return makeResult(
    'planPull',
    {
      verdict,
      governing: governingCheck(checks, verdict)?.id ?? null,
      pull,
      requiredLimit,
      ...(input.load.tackle !== undefined && { requiredAtLoad: atLoad && ratedLoadIn(atLoad, unit) }),
      ...(requiredOfLegs && { requiredOfLegs }),
      recommended,
      ...(line && { riggingLimit: limit, weakest: line.weakest }),
      length: chainLength.length,
      links: chainLength.links,
      dangerRadius: dangerOf(owned, chainLength, input.dangerMargin, working),
      ...(greatest !== undefined && { greatestTakeUpSpeed: greatest }),
      ...(permittedSlack && { permittedSlack }),
      checks,
      available,
      resistance,
      stability,
      chainLength,
      ...(bridle && { bridle }),
      ...(snatch && { snatch }),
    },
    input,
    working,
  );
}

interface Options {
  readonly units: UnitSystem;
  readonly working: boolean;
}

/** Snug: the thrust comes at once. */
const ZERO_SLACK = { value: 0, unit: 'm' } as const;

/** How far the chain comes down from the hitch, from the line of the ground, in radians. */
function chainSlope(input: PullPlan): number {
  const { hitch, chainAngle, slope } = input;
  const up = slope === undefined ? 0 : readAngle(slope, 'slope') * (pullsInReverse(hitch) ? -1 : 1);
  return readHitch({ hitch, ...(chainAngle && { chainAngle }) }, up, false, new Working(false)).below;
}

/**
 * The tension of a chain that slopes: what holds a load holds it along the ground, so P = R / cos β. A whole log is told
 * with its chain already, and what a chain lifts off the load is not counted on.
 */
function tensionFor({ load }: PullPlan, { pull, fallLine }: PullResistance, β: number, working: Working): Force | null {
  const along = fallLine === undefined ? pull : fallLine;
  const told = load.kind === 'log' && load.lift === 'none' && load.tackle === undefined;
  if (along === null || β === 0 || told) return along;
  const tension = new Quantity(along.value / Math.cos(β), along.unit);
  working.step('chain', 'needed', 'R / cos β', { R: along, β: { value: β, unit: 'rad' } }, tension);
  return tension;
}

/** The load on the ground that the plan has; one with a slope of its own asks for the tractor's too. */
function resistanceOf(input: PullPlan, β: number, options: Options): PullResistance {
  const { load, slope } = input;
  const own = load as { readonly slope?: QuantityInput<'angle'>; readonly chainAngle?: unknown };
  if (own.slope !== undefined && slope === undefined) {
    fail('MISSING_FIELD', 'slope', 'the slope under the tractor too', undefined, "Give it, '0 deg' where it is level.");
  }
  if (own.chainAngle !== undefined) {
    const remedy = 'A chain that comes down from the hitch rises from the load: give chainAngle of the plan.';
    fail('CONFLICTING_FIELDS', 'load.chainAngle', 'one angle of the chain', 'that of the load', remedy);
  }
  const sloped = load.kind !== 'overturned' && load.kind !== 'nosed-in-ditch';
  const onSlope = sloped && slope !== undefined && own.slope === undefined ? { slope } : {};
  const rises = load.kind === 'log' && load.lift === 'none' && β !== 0 ? { chainAngle: { value: β, unit: 'rad' } } : {};
  return within('load', () => pullResistance({ ...load, ...onSlope, ...rises, ...options } as PullResistanceInput));
}

type OnTractor = Without<AvailablePullInput, 'units' | 'working'>;

/** What concerns the tractor alone. Its nose points uphill where it pulls uphill forward, and downhill where in reverse. */
function tractorOf(input: PullPlan, { onHitch }: PullResistance): OnTractor {
  const { tractor, hitch, traction, rolling, engine, chainAngle, slope } = input;
  const reverse = pullsInReverse(hitch);
  const noseUp =
    slope === undefined ? undefined : ({ value: readAngle(slope, 'slope') * (reverse ? -1 : 1), unit: 'rad' } as const);
  return {
    tractor,
    hitch,
    traction,
    ...defined({ rolling, engine, chainAngle, slope: noseUp, weightOnHitch: onHitch }),
  };
}

/** The most that the chain may see of the tractor, and the most that it may gather speed with. */
function mostThrust(
  { tractor, engine }: PullPlan,
  onTractor: OnTractor,
  available: AvailablePull,
  options: Options,
): { readonly thrust: Force | null; readonly acceleration: QuantityLike<'m/s2'> | undefined } {
  const best = (found: AvailablePull) => found.atBest?.pull ?? found.pull;
  const { engine: _, chainAngle: __, weightOnHitch: ___, ...ground } = onTractor;
  const gear = engine?.thrustLimit === undefined ? {} : { engine: { thrustLimit: engine.thrustLimit } };
  const standing =
    engine === undefined
      ? available
      : availablePull({
          ...onTractor,
          engine: undefined,
          ...gear,
          units: options.units,
          working: false,
        } as AvailablePullInput);
  const height = readOptional(tractor?.centerOfGravityHeight, 'length', 'tractor.centerOfGravityHeight');
  if (height === undefined) return { thrust: best(standing), acceleration: undefined };
  const { behindAxle, aheadOfFrontAxle, ...hitch } = ground.hitch;
  const at = aheadOfFrontAxle === undefined ? {} : { aheadOfFrontAxle: ZERO_SLACK };
  const free = availablePull({
    ...ground,
    ...gear,
    hitch: { ...hitch, ...at, height },
    units: options.units,
    working: false,
  });
  const force = best(free);
  if (force === null) return { thrust: best(standing), acceleration: undefined };
  const mass = inUnit(readPositive(tractor.mass, 'mass', 'tractor.mass'), 'kg').value;
  return { thrust: best(standing), acceleration: { value: inUnit(force, 'N').value / mass, unit: 'm/s2' } };
}

const smaller = (one: Force, other: Force): Force => (one.value < other.value ? one : other);

function stabilityOf(input: PullPlan, onTractor: OnTractor, pull: Force | null, options: Options): HitchStability {
  const { tractor, hitch, chainAngle, slope, weightOnHitch } = onTractor;
  const { steeringReserve, friction, rearAxleHeight } = input;
  return hitchStability({
    tractor,
    hitch,
    ...(pull && { pull }),
    ...defined({ slope, chainAngle, weightOnHitch, steeringReserve, friction, rearAxleHeight }),
    ...options,
  });
}

function rateParts(
  ratings: RatingTable,
  parts: readonly Part[],
  name: string,
  units: UnitSystem,
  working: Working,
): SeriesRating {
  const log = newLog();
  const series = rateSeries(newRater(ratings, log), parts, name);
  if (working.shown) showSeries(working, series, parts, name, massUnitOf(units));
  for (const source of log.sources) working.cite(source);
  noteAssumptions(working, log);
  return series;
}

/** What is missing at the ends of the line: the point of the tractor, and that of the load where nothing wraps round it. */
function openEnds({ ends, bridle, load }: PullPlan, line: SeriesRating | undefined): readonly Note[] {
  if (line === undefined) return [note('RIGGING_UNKNOWN')];
  const elsewhere = bridle !== undefined || load.tackle !== undefined;
  return [
    ...(line.vehicleAnchors > 0 ? [] : [note('HITCH_POINT_NOT_LISTED')]),
    ...(elsewhere ? [] : openAtLoad(ends, line)),
  ];
}

/** The point of the load among the parts that reach it; none where the chain is wrapped round the load. */
function openAtLoad(ends: readonly ChainEnd[], parts: SeriesRating): readonly Note[] {
  return ends.at(-1)?.at !== 'hook' || parts.cargoAnchors > 0 ? [] : [note('LOAD_POINT_NOT_LISTED')];
}

function lengthOf(input: PullPlan, wire: QuantityLike<'mm'> | undefined, options: Options): PullChainLength {
  const { ends, standoff, dangerMargin, chain } = input;
  const pitch = readPositive(chain.pitch, 'length', 'chain.pitch');
  return pullChainLength({
    ends,
    pitch,
    ...defined({ standoff, dangerMargin, wireDiameter: wire }),
    ...options,
  });
}

/** Errors name the angles by the field that they are here. */
function tensionOf(angles: BridleAngles, pull: Force, options: Options): BridleTension {
  return within('bridle', () => bridleTension({ pull, angles, ...options }));
}

/** That of the thickest chain, as told or by the table of links; nothing where a chain is in neither. */
function wireOf({ chain, rigging = [] }: PullPlan): QuantityLike<'mm'> | undefined {
  const told = readOptional(chain.wireDiameter, 'length', 'chain.wireDiameter');
  let thickest: QuantityLike<'mm'> | undefined = told && inUnit(told, 'mm');
  for (const part of rigging) {
    if (part.kind !== 'chain') continue;
    const wire = typeof part.grade === 'string' ? undefined : wireBy(part.size, part.grade);
    if (wire === undefined && told === undefined) return undefined;
    if (wire !== undefined && (thickest === undefined || wire.value > thickest.value)) thickest = wire;
  }
  return thickest;
}

function wireBy(size: string, grade: number | undefined): QuantityLike<'mm'> | undefined {
  const made = { size: size as TradeSize, ...(grade !== undefined && { grade: grade as ChainGrade }) };
  try {
    return chainMass({ ...made, length: '1 m', working: false }).wireDiameter;
  } catch (error) {
    if (error instanceof RiggingError) return undefined;
    throw error;
  }
}

/** Slack is taken up as hard as the tractor may: how hard its ground and its center of gravity tell. */
function takenUp(takeUp: Exclude<TakeUp, 'slow'>, acceleration: QuantityLike<'m/s2'> | undefined) {
  if (!('slack' in takeUp) || takeUp.acceleration !== undefined) return takeUp;
  if (acceleration !== undefined) return { ...takeUp, acceleration };
  const remedy = 'Give it, or takeUp.acceleration: how hard the tractor gathers speed follows from it.';
  return fail(
    'MISSING_FIELD',
    'tractor.centerOfGravityHeight',
    'the height of its center of gravity',
    undefined,
    remedy,
  );
}

interface Jerk {
  readonly wire: QuantityLike<'mm'>;
  readonly limit: Rated | null;
  readonly takeUp: Exclude<TakeUp, 'slow'>;
  readonly thrust: Force;
  readonly needed: Force;
  readonly length: QuantityLike<'ft' | 'm'> | QuantityLike;
}

/** What a jerk does to a chain; a load that rolls or slides breaks loose at what it resists with. */
function peakOf({ load, tractor, proofFactor }: PullPlan, jerk: Jerk, options: Options): ShockTension {
  const { wire, limit, takeUp, thrust, needed, length } = jerk;
  const gives = load.tackle === undefined && ['rolling', 'soft-ground', 'log'].includes(load.kind);
  return shockTension({
    towingMass: tractor.mass,
    load: gives ? { mass: load.mass, breaksLooseAt: needed } : 'anchored',
    takeUp,
    thrust,
    chain: { wireDiameter: wire, length: length as QuantityLike<'m'> },
    ...defined({ workingLoadLimit: limit ?? undefined, proofFactor: limit === null ? undefined : proofFactor }),
    ...options,
  });
}

function greatestOf(limits: readonly Rated[] | undefined): Rated | null {
  return limits?.reduce((one, other) => (one.value > other.value ? one : other)) ?? null;
}

/** Round the longest line that is used: a chain that is longer than needed reaches farther when it lets go. */
function dangerOf(
  owned: QuantityLike | undefined,
  { length, dangerRadius }: PullChainLength,
  margin = 1,
  working: Working,
): Quantity<'ft' | 'm'> {
  if (owned === undefined || compareExact(owned, length) <= 0) return dangerRadius;
  return dangerZone(inUnit(owned, length.unit), margin, working);
}

function exceeds(load: QuantityLike, limit: QuantityLike): boolean {
  return ratedLoadIn(load, 'N').value > ratedLoadIn(limit, 'N').value;
}

/** s = v² / (2 · a); none where even a snug chain sees too much. */
function slackFor(
  speed: Quantity<'mph' | 'm/s'> | null,
  acceleration: QuantityLike<'m/s2'> | undefined,
  units: UnitSystem,
  working: Working,
): Quantity<'in' | 'mm'> | undefined {
  if (acceleration === undefined) return undefined;
  const unit = units === 'us' ? 'in' : 'mm';
  if (speed === null) return new Quantity(0, unit);
  const meters = inUnit(speed, 'm/s').value ** 2 / (2 * acceleration.value);
  const slack = inUnit({ value: meters, unit: 'm' }, unit);
  working.step('chain', 'permitted slack', 'v² / (2 · a)', { v: speed, a: acceleration }, slack);
  return slack;
}

/** What the parts of the whole warn of, each thing once. */
function addMissing(cautions: Note[], results: readonly (ResultBase | undefined)[]): void {
  for (const result of results) {
    for (const caution of result?.cautions ?? []) {
      if (!cautions.some(({ code }) => code === caution.code)) cautions.push(caution);
    }
  }
}
