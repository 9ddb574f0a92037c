import { fail } from '../../errors.js';
import { checkObject, checkOneOf } from '../../input-checks.js';
import { inUnit, valueIn } from '../../quantities/convert.js';
import type { Quantity, QuantityInput, QuantityLike } from '../../quantities/quantity.js';
import { ratedLoadIn } from '../../quantities/rated.js';
import { readOptional, readPositive, readQuantity } from '../../quantities/read.js';
import { type Note, note } from '../../working/note.js';
import type { Working } from '../../working/step.js';

/** What drives a tractor: it says whose weight gives grip. */
export type Drive = 'rear-wheels' | 'all-wheels' | 'tracks';

/**
 * The machine that pulls, as it works. Give what its front axle carries, or where its center of gravity is: one of
 * the two. On tracks, the ends of the track on the ground stand for the axles.
 */
export interface Tractor {
  /** As it works: with ballast, operator, implements and what is in the loader. */
  readonly mass: QuantityInput<'mass'>;
  /** What the front axle carries on a level scale, in the same state. */
  readonly frontAxleMass?: QuantityInput<'mass'>;
  /** Center of gravity ahead of the rear axle; negative where a heavy rear implement brings it behind. */
  readonly centerOfGravityAhead?: QuantityInput<'length'>;
  readonly wheelbase: QuantityInput<'length'>;
  /** Above the ground; needed on a slope. */
  readonly centerOfGravityHeight?: QuantityInput<'length'>;
  /** Between the middles of the two rear tires; needed for a pull to the side and for a side slope. */
  readonly trackWidth?: QuantityInput<'length'>;
  readonly drive: Drive;
}

/** A tractor in newtons and meters. */
export interface ReadTractor {
  readonly weight: number;
  readonly wheelbase: number;
  /** Center of gravity ahead of the rear axle. */
  readonly ahead: number;
  readonly height: number | undefined;
  readonly track: number | undefined;
  readonly drive: Drive;
  /** What was given with a unit, for the units of the answer. */
  readonly given: readonly (QuantityLike | undefined)[];
}

/** Reads a tractor and records its weight and its center of gravity; errors name the field after `tractor.`. */
export function readTractor(tractor: Tractor, working: Working): ReadTractor {
  checkObject(tractor, 'tractor', 'a tractor { mass, frontAxleMass, wheelbase, drive }');
  const mass = readPositive(tractor.mass, 'mass', 'tractor.mass');
  const wheelbase = readPositive(tractor.wheelbase, 'length', 'tractor.wheelbase');
  const height = readOptional(tractor.centerOfGravityHeight, 'length', 'tractor.centerOfGravityHeight');
  const track = readOptional(tractor.trackWidth, 'length', 'tractor.trackWidth');
  const { drive, frontAxleMass, centerOfGravityAhead } = tractor;
  checkOneOf(drive, ['rear-wheels', 'all-wheels', 'tracks'], 'tractor.drive');
  if ((frontAxleMass === undefined) === (centerOfGravityAhead === undefined)) {
    fail(
      frontAxleMass === undefined ? 'MISSING_FIELD' : 'CONFLICTING_FIELDS',
      'tractor.frontAxleMass',
      'frontAxleMass or centerOfGravityAhead, one of them',
      frontAxleMass === undefined ? undefined : 'both',
      'Weigh the front axle on level ground, or say where the center of gravity is.',
    );
  }
  const front = frontAxleMass === undefined ? undefined : readFrontAxle(frontAxleMass, mass);
  const ahead =
    front === undefined ? readQuantity(centerOfGravityAhead, 'length', 'tractor.centerOfGravityAhead') : undefined;
  const meters = (length: QuantityLike) => inUnit(length, 'm').value;
  const read: ReadTractor = {
    weight: ratedLoadIn(mass, 'N').value,
    wheelbase: meters(wheelbase),
    ahead: ahead === undefined ? meters(wheelbase) * shareOf(front as Quantity, mass) : meters(ahead),
    height: height && meters(height),
    track: track && meters(track),
    drive,
    given: [mass, wheelbase, front, ahead, height, track],
  };
  if (working.shown && front !== undefined) {
    const x = inUnit({ value: read.ahead, unit: 'm' }, wheelbase.unit);
    working.step('tractor', 'x', 'L · front axle / m', { L: wheelbase, 'front axle': front, m: mass }, x);
  }
  return read;
}

function readFrontAxle(input: QuantityInput<'mass'>, mass: Quantity): Quantity {
  const path = 'tractor.frontAxleMass';
  const front = readQuantity(input, 'mass', path);
  if (front.value < 0 || shareOf(front, mass) > 1) {
    fail(
      front.value < 0 ? 'NEGATIVE' : 'IMPOSSIBLE_GEOMETRY',
      path,
      `what a scale can show: nothing to ${mass}`,
      `${front}`,
      'Where the center of gravity lies beyond an axle, give centerOfGravityAhead.',
    );
  }
  return front;
}

const shareOf = (part: QuantityLike, whole: QuantityLike): number => inUnit(part, whole.unit).value / whole.value;

/** The slope in radians, positive nose up; left out, the ground is taken as level and the working says so. */
export function readSlope(slope: QuantityInput<'angle'> | undefined, working: Working, path = 'slope'): number {
  if (slope === undefined) {
    working.assumptions.push(LEVEL_GROUND);
    return 0;
  }
  return readAngle(slope, path);
}

/** An angle in radians, short of a right one. */
export function readAngle(input: QuantityInput<'angle'>, path: string): number {
  const angle = readQuantity(input, 'angle', path);
  const radians = valueIn(angle, 'rad');
  if (!(Math.abs(radians) < Math.PI / 2 - 1e-9)) {
    fail(
      'IMPOSSIBLE_GEOMETRY',
      path,
      'an angle between -90 and 90 deg',
      `${angle}`,
      'A grade in percent is percent-grade.',
    );
  }
  return radians;
}

const LEVEL_GROUND: Note = /* @__PURE__ */ note('LEVEL_GROUND');
