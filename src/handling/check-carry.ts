import { checkObject, checkOneOf } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { Quantity, type QuantityLike } from '../quantities/quantity.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { usNiosh1994Constants } from '../tables/generated/us-niosh-1994-constants.js';
import { usNiosh1994Coupling } from '../tables/generated/us-niosh-1994-coupling.js';
import { usNiosh1994Duration } from '../tables/generated/us-niosh-1994-duration.js';
import { type Note, note } from '../working/note.js';
import { makeResult, type ResultBase } from '../working/result.js';
import { type StepValue, Working } from '../working/step.js';
import {
  type CarriedLoad,
  type HandPosition,
  type LiftDestination,
  type LiftFrequency,
  type ReadLoad,
  readDestination,
  readFrequency,
  readHands,
  readLoad,
} from './carry-input.js';
import {
  type Coupling,
  type Lift,
  type LiftDuration,
  type LiftingConstants,
  liftingIndexOf,
  type MultiplierName,
  multipliersOf,
  rateOfTable,
  weightLimitOf,
} from './lifting-equation.js';
import { CHAIN_MASS } from './weighed-chain.js';

export interface CarryInput {
  readonly load: CarriedLoad;
  readonly origin: HandPosition;
  readonly destination: LiftDestination;
  readonly frequency: LiftFrequency;
  readonly duration: LiftDuration;
  /** Left out: `'poor'`. */
  readonly coupling?: Coupling;
  readonly units?: UnitSystem;
  /** `false` leaves the steps out. */
  readonly working?: boolean;
}

/** The equation at one end of the lift. */
export interface CarryPoint {
  readonly at: 'origin' | 'destination';
  readonly recommendedWeightLimit: Quantity<'lb' | 'kg'>;
  /** Load over limit; null where the limit is zero. */
  readonly liftingIndex: number | null;
  readonly multipliers: Readonly<Record<MultiplierName, number>>;
  /** The multiplier that takes most off; null where none takes anything. */
  readonly costsMost: MultiplierName | null;
}

export interface CarryCheck extends ResultBase<'checkCarry'> {
  /** `pass`: a lifting index of 1 at most, at each end that counts. */
  readonly verdict: 'pass' | 'fail';
  /** The end with the lower limit; the next three are of it. */
  readonly governs: CarryPoint['at'];
  readonly liftingIndex: number | null;
  /** A load of it has the index 1. */
  readonly recommendedWeightLimit: Quantity<'lb' | 'kg'>;
  readonly costsMost: MultiplierName | null;
  readonly load: Quantity<'lb' | 'kg'>;
  /** Of chain: the longest piece with an index of 1 at most, rounded down to hundredths; null where there is none. */
  readonly longestPiece?: Quantity<'ft' | 'm'> | null;
  readonly points: readonly CarryPoint[];
}

/**
 * Whether one person may lift a load from here to there, such as chain out of its box onto a deck, by the revised NIOSH
 * lifting equation.
 *
 * RWL = LC · HM · VM · DM · AM · FM · CM and LI = load / RWL; it passes up to LI = 1. In lb and in: LC = 51, HM = 10/H,
 * VM = 1 − 0.0075 · |V − 30|, DM = 0.82 + 1.8/D, AM = 1 − 0.0032 · A; in kg and cm: LC = 23, HM = 25/H,
 * VM = 1 − 0.003 · |V − 75|, DM = 0.82 + 4.5/D. FM and CM are looked up; between two rates the next higher one counts.
 * H and D below 10 in (25 cm) count as that. H over 25 in (63 cm), V or D over 70 in (175 cm), A over 135 deg and more than
 * 15 lifts a minute leave no load at all. The systems are roundings of one another (51 lb is 23.13 kg): one is used, never both.
 *
 * @param input.load a mass; or `{ chain, fittings? }`, a result of {@link chainMass}, whose greatest mass counts, and the mass of
 * its hooks
 * @param input.origin `{ horizontal, height, asymmetry }` of the hands: H, V and A
 * @param input.destination `{ control: true, horizontal, height, asymmetry }` where the load is placed with care;
 * `{ control: false, height }` where it is let go. D is the difference of the heights
 * @param input.frequency F, lifts per minute; or `{ lifts, within }`, counted within 15 minutes at most
 * @param input.duration `'short'` (up to 1 h), `'moderate'` (2 h) or `'long'` (8 h)
 * @param input.coupling `'good'`, `'fair'` or `'poor'`; omitted: poor, as an assumption
 * @param input.units `'us'` (lb, in) or `'si'` (kg, cm); omitted: the system that all inputs share
 * @throws RiggingError `MISSING_FIELD`, `NOT_A_QUANTITY`, `UNITS_REQUIRED`, `NOT_POSITIVE`, `NEGATIVE` (a height),
 * `NOT_A_WHOLE_NUMBER` (lifts), `TOO_LARGE` (lifts counted over more than 15 min), `UNKNOWN_VALUE`, `WRONG_KIND`,
 * `NOT_FINITE`
 * @validity two hands, standing, smooth lifting, firm footing, mild air, up to 8 h. Not for carrying, one hand, kneeling or a
 * load that shifts: for a loose chain it is a screening figure
 * @source Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) 94-110, 1994, from memory
 * @example
 * checkCarry({
 *   load: { chain: chainMass({ size: '3/8', grade: 70, length: '20 ft' }) },
 *   origin: { horizontal: '14 in', height: '6 in', asymmetry: '30 deg' },
 *   destination: { control: false, height: '38 in' },
 *   frequency: 0.2,
 *   duration: 'short',
 * }).longestPiece
 * // => 13.94 ft
 */
export function checkCarry(input: CarryInput): CarryCheck {
  checkObject(input, '', '{ load, origin, destination, frequency, duration }');
  const { duration, coupling } = input;
  const working = new Working(input.working !== false);
  const load = readLoad(input.load);
  const origin = readHands(input.origin, 'origin');
  const destination = readDestination(input.destination);
  const lifts = readFrequency(input.frequency);
  checkOneOf(duration, Object.keys(usNiosh1994Duration.rows), 'duration');
  if (coupling !== undefined) checkOneOf(coupling, Object.keys(usNiosh1994Coupling.rows), 'coupling');
  const lengths = [origin.horizontal, origin.height, destination.height, destination.hands?.horizontal];
  const units = sharedUnits(input.units, [...lengths, load.mass, load.chain?.fittings]);

  const constants = usNiosh1994Constants.rows[units];
  const length = (given: QuantityLike) => finely(inUnit(given, constants.length_unit).value);
  const distance = finely(Math.abs(length(destination.height) - length(origin.height)));
  const rate = rateOfTable(lifts);
  const same = { distance, rate, duration, coupling: coupling ?? ('poor' as const) };
  const points = [origin, destination.hands].flatMap((hands, index) => {
    if (hands === undefined) return [];
    const { asymmetry } = hands;
    const lift = { ...same, horizontal: length(hands.horizontal), height: length(hands.height), asymmetry };
    return [carryPoint(index === 0 ? 'origin' : 'destination', lift, constants, load.mass, working)];
  });
  const [one, other] = points as [CarryPoint, CarryPoint?];
  const lower = other !== undefined && other.recommendedWeightLimit.value < one.recommendedWeightLimit.value;
  const { at, recommendedWeightLimit, liftingIndex, costsMost } = lower ? other : one;
  // each index was decided exactly; the last digit of a limit decides nothing
  const passes = points.every((point) => point.liftingIndex !== null && point.liftingIndex <= 1);

  working.cite(usNiosh1994Constants.source);
  if (coupling === undefined) working.assumptions.push(POOR_GRIP_TAKEN);
  if (destination.hands === undefined) working.assumptions.push(LET_GO_AT_DESTINATION);
  if (rate !== undefined && rate !== lifts) working.assumptions.push(note('RATE_TAKEN_AS', { lifts, rate }));
  for (const { at, multipliers } of points) {
    for (const [multiplier, value] of Object.entries(multipliers)) {
      if (value === 0) working.cautions.push(note('BEYOND_LIFTING_METHOD', { multiplier, at }));
    }
  }
  if (!passes) working.cautions.push(TWO_ARE_NOT_TWICE);
  if (load.chain !== undefined) {
    working.cautions.push(LOOSE_CHAIN);
    working.cite(CHAIN_MASS);
  }
  const { up_to_h, ...rest } = usNiosh1994Duration.rows[duration];
  if ('recovery_per_work' in rest) {
    working.cautions.push(note('RECOVERY_NEEDED', { hours: up_to_h, times: rest.recovery_per_work }));
  }
  working.cautions.push(LIFTING_METHOD_LIMITS);
  return makeResult(
    'checkCarry',
    {
      verdict: passes ? ('pass' as const) : ('fail' as const),
      governs: at,
      liftingIndex,
      recommendedWeightLimit,
      costsMost,
      load: inUnit(load.mass, constants.mass_unit),
      ...(load.chain && { longestPiece: longestPiece(load, recommendedWeightLimit, units) }),
      points,
    },
    input,
    working,
  );
}

const POOR_GRIP_TAKEN: Note = /* @__PURE__ */ note('POOR_GRIP_TAKEN');
const LET_GO_AT_DESTINATION: Note = /* @__PURE__ */ note('LET_GO_AT_DESTINATION');
const TWO_ARE_NOT_TWICE: Note = /* @__PURE__ */ note('TWO_ARE_NOT_TWICE');
const LOOSE_CHAIN: Note = /* @__PURE__ */ note('LOOSE_CHAIN');
const LIFTING_METHOD_LIMITS: Note = /* @__PURE__ */ note('LIFTING_METHOD_LIMITS');

/** Fifteen digits: a length converted from the decimal that was written is that decimal again. */
const finely = (value: number) => Number(value.toPrecision(15));

function longestPiece(
  { mass, chain }: ReadLoad,
  limit: Quantity<'lb' | 'kg'>,
  units: UnitSystem,
): Quantity<'ft' | 'm'> | null {
  if (chain === undefined) return null;
  const fittings = chain.fittings === undefined ? 0 : inUnit(chain.fittings, limit.unit).value;
  const share = (limit.value - fittings) / (inUnit(mass, limit.unit).value - fittings);
  const given = inUnit(chain.length, units === 'us' ? 'ft' : 'm');
  const piece = Math.floor(given.value * share * 100) / 100;
  return piece > 0 ? new Quantity(piece, given.unit) : null;
}

function carryPoint(
  at: CarryPoint['at'],
  lift: Lift,
  constants: LiftingConstants,
  load: QuantityLike,
  working: Working,
): CarryPoint {
  const unit = constants.mass_unit;
  const factors = multipliersOf(constants, lift);
  const limit = weightLimitOf(constants, factors);
  const recommendedWeightLimit: Quantity<'lb' | 'kg'> = new Quantity(limit, unit);
  const mass = inUnit(load, unit);
  const liftingIndex = liftingIndexOf(constants, factors, limit, load, mass.value).utilization;
  const named = Object.entries(factors).map(([name, { value }]) => [name as MultiplierName, value] as const);
  const [least] = [...named].sort(([, a], [, b]) => a - b) as [(typeof named)[number]];
  if (working.shown) {
    const formulas = formulasOf(lift, constants);
    for (const [name, value] of named) {
      const [symbol, formula, values] = formulas[name];
      working.step(at, symbol, value === 0 ? 'beyond the limit: no load' : formula, values, value);
    }
    const LC = { value: constants.load_constant, unit };
    working.step(at, 'RWL', 'LC · HM · VM · DM · AM · FM · CM', { LC }, recommendedWeightLimit);
    working.step(at, 'LI', 'load / RWL', { load: mass, RWL: recommendedWeightLimit }, liftingIndex);
  }
  const multipliers = Object.fromEntries(named) as CarryPoint['multipliers'];
  return { at, recommendedWeightLimit, liftingIndex, multipliers, costsMost: least[1] < 1 ? least[0] : null };
}

type Formula = readonly [symbol: string, formula: string, values: Readonly<Record<string, StepValue>>];

function formulasOf(
  { horizontal, height, distance, asymmetry, rate, duration, coupling }: Lift,
  constants: LiftingConstants,
): Readonly<Record<MultiplierName, Formula>> {
  const { horizontal_least, vertical_reference, vertical_slope, distance_base, distance_term } = constants;
  const length = (value: number) => ({ value, unit: constants.length_unit });
  return {
    horizontal: ['HM', `${horizontal_least} / H, 1 at most`, { H: length(horizontal) }],
    vertical: ['VM', `1 − ${vertical_slope} · |V − ${vertical_reference}|`, { V: length(height) }],
    distance: ['DM', `${distance_base} + ${distance_term} / D, 1 at most`, { D: length(distance) }],
    asymmetry: ['AM', `1 − ${constants.asymmetry_slope} · A`, { A: { value: asymmetry, unit: 'deg' } }],
    frequency: ['FM', 'table', { F: rate ?? 'above the table', duration }],
    coupling: ['CM', 'table', { coupling }],
  };
}
