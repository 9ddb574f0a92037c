import type { Part } from '../assembly/part.js';
import { newRater, rateSeries, type SeriesRating } from '../assembly/rate-part.js';
import { newLog, noteAssumptions, showSeries } from '../assembly/show-parts.js';
import { chainMass } from '../chain/chain-mass.js';
import { checkRatings } from '../chain/chain-rating.js';
import { lightestChain, type RatedChain } from '../chain/rated-chains.js';
import type { ChainGrade, TradeSize } from '../chain/trade-size.js';
import { within } from '../errors.js';
import { checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { compareExact, ratioOf } from '../quantities/exact.js';
import { Quantity, type QuantityInput, type QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn, STANDARD_GRAVITY } from '../quantities/rated.js';
import { readOptional, readPositive } from '../quantities/read.js';
import { massUnitOf, readSystem } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import type { RatingTable } from '../tables/rating-table.js';
import { FOLLOW_THE_MARK, STAND_CLEAR } from '../working/cautions.js';
import {
  type Check,
  type CheckSubject,
  failedCheck,
  governingCheck,
  notApplicableCheck,
  overallVerdict,
  ratioCheck,
  undeterminedCheck,
  type Verdict,
} from '../working/check.js';
import { note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { Working } from '../working/step.js';
import { type AvailablePull, type AvailablePullInput, availablePull } from './available-pull.js';
import { type BridleAngles, type BridleTension, bridleTension } from './bridle-tension.js';
import { type HitchStability, hitchStability } from './hitch-stability.js';
import { type PullChainLength, pullChainLength, type Standoff } from './pull-chain-length.js';
import { type PullResistance, type PullResistanceInput, pullResistance } from './pull-resistance.js';
import { type ShockTension, shockTension, type TakeUp } from './shock-tension.js';
import { TAKE_UP_AT_A_CRAWL } from './take-up-speed.js';
import type { ChainEnd } from './wrap-length.js';

type Without<Input, Key extends PropertyKey> = Input extends unknown ? Omit<Input, Key> : never;

/** The chain itself: what its links are like, and how long it is if it is there already. */
export interface PullChain {
  readonly pitch: QuantityInput<'length'>;
  /** Left out, that of the first chain of the rigging, or of the recommended chain, by its size and grade. */
  readonly wireDiameter?: QuantityInput<'length'>;
  /** Left out, the length that is needed. */
  readonly length?: QuantityInput<'length'>;
}

export interface PullPlan extends Without<AvailablePullInput, 'units' | 'working'> {
  /** What holds the load, and what it weighs: see {@link pullResistance}. */
  readonly load: Without<PullResistanceInput, 'units' | 'working'>;
  readonly ratings: RatingTable;
  /** Every part in line from the hitch to the load; left out, a chain is recommended and the verdict stays open. */
  readonly rigging?: readonly Part[];
  readonly chain: PullChain;
  readonly ends: readonly ChainEnd[];
  readonly standoff?: Standoff;
  readonly dangerMargin?: number;
  /** Two legs at the load; left out, one chain runs straight to it. */
  readonly bridle?: BridleAngles;
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
  /** On the chain, the smaller of what is needed and what the tractor can give at best; null where nothing pulls. */
  readonly pull: Force | null;
  /** The working load limit that every part from hitch to load needs. */
  readonly requiredLimit: Rated | null;
  /** With a bridle: what each of its legs needs, in the order of the angles. */
  readonly requiredOfLegs?: readonly Rated[];
  /** The lightest chain of the table that will do, and what the length that is needed weighs; null where none does. */
  readonly recommended: RatedChain | null;
  /** Of the rigging; null while a part is not rated. */
  readonly riggingLimit?: Rated | null;
  readonly weakest?: readonly string[];
  readonly length: Quantity<'ft' | 'm'>;
  readonly links: number;
  readonly dangerRadius: Quantity<'ft' | 'm'>;
  /** At the moment the chain comes tight, with the same thrust; null where the thrust at once is too much. */
  readonly greatestTakeUpSpeed?: Quantity<'mph' | 'm/s'> | null;
  /** The slack over which the tractor reaches that speed with all its pull. */
  readonly permittedSlack?: Quantity<'ft' | 'm'>;
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
 * The chain sees P = min(needed, available at best): a load that gives way ends the pull, and so do wheels that slip.
 * Every part needs WLL ≥ P / g. The lightest chain of the table that has it is recommended: more chain is more to carry.
 * Taken up with a jerk the peak counts, and a load that is stuck fast counts as anchored. The slack that keeps the peak
 * within the limit is s = v² / (2 · a), with the greatest take-up speed v and a = P_available / m.
 *
 * @param input.tractor with `hitch`, `traction`, `rolling`, `engine`, `chainAngle` and `slope` as in {@link availablePull}
 * @param input.load what holds the load, as in {@link pullResistance}, its own `slope` included
 * @param input.ratings the rating table, such as {@link us49cfr393_108_2024}
 * @param input.rigging every part in line from hitch to load, as in {@link assemblyRating}; omitted: the verdict stays open
 * @param input.chain `{ pitch }`, with `length` where it is there already
 * @param input.ends with `standoff` and `dangerMargin` as in {@link pullChainLength}
 * @param input.takeUp as in {@link shockTension}: `'slow'`, `{ speed }`, or `{ slack }` taken up with all the tractor's pull
 * @param input.bridle two legs at the load, as in {@link bridleTension}
 * @param input.proofFactor proof load over working load limit of the weakest part
 * @param input.units `'us'` or `'si'`; omitted: the table's own
 * @throws RiggingError those of the functions named above, each with the field they name
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
 *   rigging: [{ id: 'chain', kind: 'chain', size: '1/4', grade: 70 }],
 *   chain: { pitch: '0.88 in', length: '20 ft' },
 *   ends: [{ at: 'hook' }, { at: 'hook' }],
 *   standoff: '18 ft',
 *   takeUp: 'slow',
 * }).verdict
 * // => 'pass'
 */
export function planPull(input: PullPlan): PlannedPull {
  checkObject(input, '', '{ tractor, hitch, traction, load, ratings, chain, ends, takeUp }');
  const { tractor, hitch, chainAngle, slope, ratings, rigging } = input;
  checkRatings(ratings);
  const units = readSystem(input.units, ratings.units);
  const working = new Working(input.working !== false);
  const options = { units, working: working.shown };
  checkObject(input.load, 'load', '{ kind, mass }');
  checkObject(input.chain, 'chain', '{ pitch }');
  const owned = readOptional(input.chain.length, 'length', 'chain.length');

  const available = availablePull({ ...onTractor(input), ...options });
  const resistance = within('load', () => pullResistance({ ...input.load, ...options } as PullResistanceInput));
  const needed = resistance.fallLine ?? resistance.pull;
  const most = available.atBest?.pull ?? available.pull;
  const pull = needed === null || most === null ? null : needed.value < most.value ? needed : most;
  const stability = hitchStability({
    tractor,
    hitch,
    ...(pull !== null && pull.value > 0 && { pull }),
    ...defined({
      slope,
      chainAngle,
      steeringReserve: input.steeringReserve,
      friction: input.friction,
      rearAxleHeight: input.rearAxleHeight,
    }),
    ...options,
  });

  const unit = massUnitOf(units);
  const requiredLimit = pull === null ? null : ratedLoadIn(pull, unit);
  const parts = rigging === undefined ? undefined : rateRigging(ratings, rigging, units, working);
  const chainLength = lengthOf(input, rigging, options);
  const recommended =
    requiredLimit === null || requiredLimit.value === 0
      ? null
      : lightestChain(ratings, requiredLimit, chainLength.length, units);
  const bridle =
    input.bridle === undefined || pull === null || pull.value === 0
      ? undefined
      : bridleTension({ pull, angles: input.bridle, ...options });
  const rated = parts === undefined ? recommended?.workingLoadLimit : parts.workingLoadLimit;
  const limit = rated == null ? null : ratedLoadIn(rated, unit);
  const snatch = snatchOf(input, { pull, needed, most, limit, chainLength, rigging, recommended }, options);

  if (working.shown && pull !== null && requiredLimit !== null) {
    working.step('chain', 'P', 'min(needed, available at best)', { needed, 'available at best': most }, pull);
    const g = { value: STANDARD_GRAVITY, unit: 'm/s2' } as const;
    working.step('chain', 'required WLL', 'P / g', { P: pull, g }, requiredLimit);
  }
  const checks: Check[] = [
    tractionCheck(available, resistance, needed),
    ...stability.checks,
    riggingCheck(requiredLimit, parts),
    lengthCheck(owned, chainLength),
    ...(snatch === undefined ? [] : takeUpChecks(snatch)),
  ];
  const greatest = snatch?.greatestTakeUpSpeed.withinWorkingLoadLimit;
  const permittedSlack = greatest === undefined ? undefined : slackFor(greatest, available, input, units, working);

  if (parts?.workingLoadLimit != null && most !== null && exceeds(most, parts.workingLoadLimit)) {
    working.cautions.push(note('TRACTOR_CAN_OVERLOAD_RIGGING', { most }));
  }
  if (recommended === null && requiredLimit !== null && requiredLimit.value > 0)
    working.cautions.push(note('NO_CHAIN_OF_TABLE_DOES', { ratings: ratings.id, required: requiredLimit }));
  working.cautions.push(note('STOP_IF_IT_DOES_NOT_MOVE'), TAKE_UP_AT_A_CRAWL, STAND_CLEAR, FOLLOW_THE_MARK);
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
      ...(bridle && { requiredOfLegs: bridle.legs.map((leg) => ratedLoadIn(leg, unit)) }),
      recommended,
      ...(parts && {
        riggingLimit: parts.workingLoadLimit && ratedLoadIn(parts.workingLoadLimit, unit),
        weakest: parts.weakest,
      }),
      length: chainLength.length,
      links: chainLength.links,
      dangerRadius: chainLength.dangerRadius,
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

/** What concerns the tractor alone. */
function onTractor(input: PullPlan): Without<AvailablePullInput, 'units' | 'working'> {
  const { tractor, hitch, traction, rolling, engine, chainAngle, slope } = input;
  return { tractor, hitch, traction, ...defined({ rolling, engine, chainAngle, slope }) };
}

/** The fields that are given. */
function defined<Fields extends object>(fields: Fields): { [Key in keyof Fields]?: Exclude<Fields[Key], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as never;
}

function rateRigging(ratings: RatingTable, parts: readonly Part[], units: UnitSystem, working: Working): SeriesRating {
  const log = newLog();
  const series = rateSeries(newRater(ratings, log), parts, 'rigging');
  if (working.shown) showSeries(working, series, parts, 'rigging', massUnitOf(units));
  for (const source of log.sources) working.cite(source);
  noteAssumptions(working, log);
  return series;
}

function lengthOf(input: PullPlan, rigging: readonly Part[] | undefined, options: Options): PullChainLength {
  const { ends, standoff, dangerMargin, chain } = input;
  const pitch = readPositive(chain.pitch, 'length', 'chain.pitch');
  const wire = readOptional(chain.wireDiameter, 'length', 'chain.wireDiameter') ?? wireOf(rigging);
  return pullChainLength({ ends, pitch, ...defined({ standoff, dangerMargin, wireDiameter: wire }), ...options });
}

/** The wire of the first chain among the parts, by its size and grade. */
function wireOf(rigging: readonly Part[] | undefined): QuantityLike<'mm'> | undefined {
  const chain = rigging?.find((part) => part.kind === 'chain');
  if (chain?.kind !== 'chain' || chain.size === undefined || typeof chain.grade === 'string') return undefined;
  return wireBy(chain.size, chain.grade);
}

function wireBy(size: string, grade: number | undefined): QuantityLike<'mm'> {
  const made = { size: size as TradeSize, ...(grade !== undefined && { grade: grade as ChainGrade }) };
  return chainMass({ ...made, length: '1 m', working: false }).wireDiameter;
}

interface Pulling {
  readonly pull: Force | null;
  readonly needed: Force | null;
  readonly most: Force | null;
  readonly limit: Rated | null;
  readonly chainLength: PullChainLength;
  readonly rigging: readonly Part[] | undefined;
  readonly recommended: RatedChain | null;
}

/** What the take-up does to the chain; nothing where nothing pulls, or where nobody knows the wire. */
function snatchOf(input: PullPlan, pulling: Pulling, options: Options): ShockTension | undefined {
  const { pull, needed, most, limit, chainLength, rigging, recommended } = pulling;
  if (pull === null || most === null || needed === null || pull.value === 0) return undefined;
  const { load, takeUp, chain, tractor, proofFactor } = input;
  const wire =
    chain.wireDiameter ?? wireOf(rigging) ?? (recommended ? wireBy(recommended.size, recommended.grade) : undefined);
  if (wire === undefined) return undefined;
  const gives = load.kind === 'rolling' || load.kind === 'soft-ground' || load.kind === 'log';
  return shockTension({
    towingMass: tractor.mass,
    load:
      gives && needed.value > 0 ? { mass: load.mass, breaksLooseAt: needed } : gives ? { mass: load.mass } : 'anchored',
    takeUp,
    thrust: takeUp === 'slow' ? pull : most,
    chain: { wireDiameter: wire, length: chain.length ?? chainLength.length },
    ...defined({ workingLoadLimit: limit ?? undefined, proofFactor: limit === null ? undefined : proofFactor }),
    ...options,
  });
}

const about = (id: string, title: string, clause: string): CheckSubject => ({
  id,
  title,
  clause,
  weight: 'requirement',
  subject: 'pull',
});

function tractionCheck(available: AvailablePull, resistance: PullResistance, needed: Force | null): Check {
  const check = about('available-pull', 'The tractor can give the pull', 'statics and the traction given');
  if (needed === null || resistance.outcome === 'overruns') return failedCheck(check, note('LOAD_RUNS_BY_ITSELF'));
  if (available.pull === null) return failedCheck(check, note('TRACTOR_CANNOT_PULL', { outcome: available.outcome }));
  return against(check, needed, available.pull);
}

function riggingCheck(required: Rated | null, parts: SeriesRating | undefined): Check {
  const check = about('rigging', 'Every part from hitch to load is strong enough', 'weakest part');
  if (required === null) return notApplicableCheck(check, note('NOTHING_PULLS'));
  if (parts === undefined) return undeterminedCheck(check, [note('RIGGING_UNKNOWN')]);
  const { workingLoadLimit, atMost, missing } = parts;
  if (workingLoadLimit !== null) return against(check, required, ratedLoadIn(workingLoadLimit, required.unit));
  if (atMost !== null && exceeds(required, atMost)) {
    return against(check, required, ratedLoadIn(atMost, required.unit));
  }
  return undeterminedCheck(check, missing);
}

function lengthCheck(owned: QuantityLike | undefined, { required, length }: PullChainLength): Check {
  const check = about('chain-length', 'The chain is long enough', 'geometry');
  if (owned === undefined) return notApplicableCheck(check, note('LENGTH_TO_BE_CUT', { length }));
  const { fits, utilization } = ratioOf(required.value, inUnit(owned, required.unit).value, () =>
    compareExact(required, owned),
  );
  return ratioCheck(check, fits, required, owned, utilization);
}

/** The checks of the snatch, by names of their own. */
function takeUpChecks({ checks }: ShockTension): Check[] {
  return checks.map((check) => ({ ...check, id: `take-up/${check.id}` }));
}

function exceeds(load: QuantityLike, limit: QuantityLike): boolean {
  return ratedLoadIn(load, 'N').value > ratedLoadIn(limit, 'N').value;
}

/** Both in one unit, as they are shown. */
function against(check: CheckSubject, demand: QuantityLike, capacity: QuantityLike): Check {
  const order = demand.value < capacity.value ? -1 : demand.value > capacity.value ? 1 : 0;
  const { fits, utilization } = ratioOf(demand.value, capacity.value, () => order);
  return ratioCheck(check, fits, demand, capacity, utilization);
}

/** s = v² / (2 · a), with all the pull that the tractor has; none where even a snug chain sees too much. */
function slackFor(
  speed: Quantity<'mph' | 'm/s'> | null,
  available: AvailablePull,
  { tractor }: PullPlan,
  units: UnitSystem,
  working: Working,
): Quantity<'ft' | 'm'> | undefined {
  const thrust = available.atBest?.pull ?? available.pull;
  if (thrust === null || thrust.value === 0) return undefined;
  const unit = units === 'us' ? 'ft' : 'm';
  if (speed === null) return new Quantity(0, unit);
  const mass = readPositive(tractor.mass, 'mass', 'tractor.mass');
  const a = inUnit(thrust, 'N').value / inUnit(mass, 'kg').value;
  const slack = inUnit({ value: inUnit(speed, 'm/s').value ** 2 / (2 * a), unit: 'm' }, unit);
  working.step('chain', 'permitted slack', 'v² / (2 · a)', { v: speed, a: { value: a, unit: 'm/s2' } }, slack);
  return slack;
}
