import { fail, within } from '../../errors.js';
import { checkObject } from '../../input-checks.js';
import { valueIn } from '../../quantities/convert.js';
import type { QuantityInput } from '../../quantities/quantity.js';
import { readOptional, readPositive, readQuantity } from '../../quantities/read.js';
import type { LimitOptions } from '../../statics/limit/limit-factor.js';
import type { Vec3 } from '../../statics/vector.js';
import { ALONG } from '../forces/directions.js';
import type { Direction } from './answer.js';

/** The acceleration to hold in each direction; one left out is not looked at. */
export type Accelerations = { readonly [D in Direction]?: QuantityInput<'acceleration'> };

/** How far off the figures may be. */
export interface Tolerances {
  /** Off the angle of each tie-down, to the deck and to either side. */
  readonly angle?: QuantityInput<'angle'>;
  /** Off the friction factor. */
  readonly friction?: number;
  /** Off the center of gravity along each axis. */
  readonly centerOfGravity?: QuantityInput<'length'>;
}

/** A deck that does not lie level. */
export interface DeckSlope {
  readonly noseUp?: QuantityInput<'angle'>;
  readonly leftUp?: QuantityInput<'angle'>;
}

/** The directions asked for, each with its acceleration in multiples of standard gravity. */
export function readAccelerations(
  accelerations: Accelerations,
): { readonly direction: Direction; readonly g: number }[] {
  checkObject(accelerations, 'accelerations', "{ forward: '0.8 g', ... }");
  for (const key of Object.keys(accelerations)) {
    if (!Object.hasOwn(ALONG, key)) {
      fail('UNKNOWN_FIELD', `accelerations.${key}`, Object.keys(ALONG).join(', '), key, 'Give one of these.');
    }
  }
  const asked = (Object.keys(ALONG) as Direction[]).filter((direction) => accelerations[direction] !== undefined);
  if (asked.length === 0) {
    fail(
      'MISSING_FIELD',
      'accelerations',
      'at least one direction',
      'none',
      "Give what to hold, such as forward: '0.8 g'.",
    );
  }
  return asked.map((direction) => {
    const path = `accelerations.${direction}`;
    return { direction, g: valueIn(readPositive(accelerations[direction], 'acceleration', path), 'g') };
  });
}

/** The sides of the polygon inside the circle of friction: at most 1 − cos(π/16), two percent, of friction is lost. */
const CONE_SIDES = 16;

/** How much of the friction counts. */
export function readFrictionOption(friction: 'none' | 'full' | number): LimitOptions {
  if (friction === 'none') return { friction };
  const multiplier = friction === 'full' ? 1 : friction;
  if (typeof multiplier !== 'number' || !(multiplier > 0 && multiplier <= 1)) {
    const code = friction === undefined ? 'MISSING_FIELD' : 'UNKNOWN_VALUE';
    fail(code, 'friction', "'none', 'full' or a share above 0 and up to 1", friction, 'Say how much of it counts.');
  }
  return { friction: { multiplier, coneSides: CONE_SIDES } };
}

/** The steepest deck that a load is hauled on. */
const STEEPEST = 45;

/** The direction of gravity in the axes of the deck: pitched first, then rolled. */
export function gravityOn(slope: DeckSlope | undefined): Vec3 {
  if (slope === undefined) return [0, 0, -1];
  checkObject(slope, 'deckSlope', '{ noseUp, leftUp }');
  const radians = (angle: QuantityInput<'angle'> | undefined, name: string) => {
    if (angle === undefined) return 0;
    const read = readQuantity(angle, 'angle', `deckSlope.${name}`);
    if (!(Math.abs(valueIn(read, 'deg')) <= STEEPEST)) {
      fail('IMPOSSIBLE_GEOMETRY', `deckSlope.${name}`, `at most ${STEEPEST} deg`, `${read}`, 'Check the angle.');
    }
    return valueIn(read, 'rad');
  };
  const pitch = radians(slope.noseUp, 'noseUp');
  const roll = radians(slope.leftUp, 'leftUp');
  return [-Math.sin(pitch), -Math.cos(pitch) * Math.sin(roll), -Math.cos(pitch) * Math.cos(roll)];
}

export interface ReadTolerances {
  /** rad */
  readonly angle?: number | undefined;
  readonly friction?: number | undefined;
  /** m */
  readonly centerOfGravity?: number | undefined;
}

export function readTolerances(tolerances: Tolerances = {}): ReadTolerances {
  return within('tolerances', () => {
    checkObject(tolerances, '', '{ angle, friction, centerOfGravity }');
    const { friction } = tolerances;
    if (friction !== undefined && !(typeof friction === 'number' && friction > 0 && friction <= 1)) {
      fail('NOT_POSITIVE', 'friction', 'a number above 0 and up to 1', friction, 'Give how far it may be off.');
    }
    const angle = readOptional(tolerances.angle, 'angle', 'angle');
    const length = readOptional(tolerances.centerOfGravity, 'length', 'centerOfGravity');
    if (angle !== undefined && !(valueIn(angle, 'deg') <= STEEPEST)) {
      fail('IMPOSSIBLE_GEOMETRY', 'angle', `at most ${STEEPEST} deg`, `${angle}`, 'Check the angle.');
    }
    return {
      angle: angle && valueIn(angle, 'rad'),
      friction,
      centerOfGravity: length && valueIn(length, 'm'),
    };
  });
}
