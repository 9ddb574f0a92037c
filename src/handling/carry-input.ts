import type { ChainMass } from '../chain/chain-mass.js';
import { fail } from '../errors.js';
import { checkObject, checkOneOf } from '../input-checks.js';
import { inUnit, valueIn } from '../quantities/convert.js';
import { Quantity, type QuantityInput } from '../quantities/quantity.js';
import { readOptional, readPositive, readQuantity } from '../quantities/read.js';
import type { LengthUnit, MassUnit } from '../quantities/units.js';
import { usNiosh1994Constants } from '../tables/generated/us-niosh-1994-constants.js';
import { readWeighedChain } from './weighed-chain.js';

/** Where the hands are at one end of a lift. */
export interface HandPosition {
  /** From the middle between the ankles forward to the middle of the hands. */
  readonly horizontal: QuantityInput<'length'>;
  /** Of the hands above the floor. */
  readonly height: QuantityInput<'length'>;
  /** How far the load stands to the side of straight ahead; left or right counts alike. */
  readonly asymmetry: QuantityInput<'angle'>;
}

/** The other end: set down with care, the hands count there too; let go, only the height. */
export type LiftDestination =
  | ({ readonly control: true } & HandPosition)
  | { readonly control: false; readonly height: QuantityInput<'length'> };

/** Lifts per minute, or lifts counted within a time of 15 minutes at most. */
export type LiftFrequency = number | { readonly lifts: number; readonly within: QuantityInput<'duration'> };

type Length = Quantity<LengthUnit>;

export interface ReadHands {
  readonly horizontal: Length;
  readonly height: Length;
  /** In degrees. */
  readonly asymmetry: number;
}

export function readHands(hands: HandPosition, path: string): ReadHands {
  checkObject(hands, path, '{ horizontal, height, asymmetry }');
  const turn = readQuantity(hands.asymmetry, 'angle', `${path}.asymmetry`);
  return {
    horizontal: readPositive(hands.horizontal, 'length', `${path}.horizontal`),
    height: readHeight(hands.height, path),
    asymmetry: Math.abs(valueIn(turn, 'deg')),
  };
}

function readHeight(given: QuantityInput<'length'>, path: string): Length {
  const height = readQuantity(given, 'length', `${path}.height`);
  if (height.value >= 0) return height;
  return fail('NEGATIVE', `${path}.height`, 'a height above the floor', `${height}`, 'Measure from the feet.');
}

/** The height of the destination, and the hands there where they count. */
export function readDestination(given: LiftDestination): { readonly height: Length; readonly hands?: ReadHands } {
  const path = 'destination';
  checkObject(given, path, '{ control, height }');
  checkOneOf(given.control, [true, false], `${path}.control`);
  if (!given.control) return { height: readHeight(given.height, path) };
  const hands = readHands(given, path);
  return { height: hands.height, hands };
}

/** Lifts per minute. */
export function readFrequency(given: LiftFrequency): number {
  const path = 'frequency';
  if (typeof given === 'number') {
    if (given > 0 && given < Number.POSITIVE_INFINITY) return given;
    fail(
      Number.isFinite(given) ? 'NOT_POSITIVE' : 'NOT_FINITE',
      path,
      'lifts per minute',
      given,
      'Give a rate above zero.',
    );
  }
  checkObject(given, path, 'lifts per minute, or { lifts, within }');
  const { lifts } = given;
  if (!Number.isSafeInteger(lifts) || lifts < 1) {
    fail('NOT_A_WHOLE_NUMBER', `${path}.lifts`, 'lifts, 1 or more', lifts, 'Count them.');
  }
  const time = readPositive(given.within, 'duration', `${path}.within`);
  const most = usNiosh1994Constants.rows.us.sampling_min;
  const { value } = inUnit(time, 'min');
  if (value <= most) return lifts / value;
  return fail('TOO_LARGE', `${path}.within`, `${most} min at most`, `${time}`, 'Count in the busiest 15 min.');
}

/** What is lifted: a mass, or chain and its fittings. */
export type CarriedLoad =
  | QuantityInput<'mass'>
  | {
      /** What `chainMass` found: its greatest mass counts. */
      readonly chain: ChainMass;
      /** Mass of hooks and other fittings; left out, none. */
      readonly fittings?: QuantityInput<'mass'>;
    };

export interface ReadLoad {
  readonly mass: Quantity<MassUnit>;
  /** Of chain: its length, and the fittings that stay on a shorter piece. */
  readonly chain?: { readonly length: Quantity<'ft' | 'm'>; readonly fittings: Quantity<MassUnit> | undefined };
}

export function readLoad(load: CarriedLoad): ReadLoad {
  if (typeof load !== 'object' || load === null || !('chain' in load)) {
    return { mass: readPositive(load, 'mass', 'load') };
  }
  const { chain } = load;
  const { length } = readWeighedChain(chain, 'load.chain');
  const most = readPositive(chain.range?.most, 'mass', 'load.chain.range.most');
  const fittings = readOptional(load.fittings, 'mass', 'load.fittings');
  const more = fittings === undefined ? 0 : inUnit(fittings, most.unit).value;
  return { mass: new Quantity(most.value + more, most.unit, 'load'), chain: { length, fittings } };
}
