import { fail } from '../errors.js';
import { checkOneOf } from '../input-checks.js';
import type { QuantityLike } from './quantity.js';
import type { Unit, UnitSystem } from './units.js';

/** Units of the US customary system; degrees, standard gravity and time belong to both and are not asked here. */
const US_UNITS: readonly Unit[] = [
  'in',
  'ft',
  'yd',
  'mi',
  'lb',
  'short-ton',
  'long-ton',
  'lbf',
  'kip',
  'mph',
  'ft/s',
  'F',
  'lb/ft',
  'lb/ft3',
];

/** The units of a result that has a system of its own, unless the caller asks for the other. */
export function readSystem(asked: UnitSystem | undefined, own: UnitSystem): UnitSystem {
  if (asked === undefined) return own;
  checkOneOf(asked, ['us', 'si'], 'units');
  return asked;
}

/** The unit that a mass, or a load rated as one, is shown in. */
export function massUnitOf(units: UnitSystem): 'lb' | 'kg' {
  return units === 'si' ? 'kg' : 'lb';
}

/** The units of a result: as asked, else the system that all inputs share, else a typed error. */
export function sharedUnits(asked: UnitSystem | undefined, inputs: readonly (QuantityLike | undefined)[]): UnitSystem {
  if (asked !== undefined) return readSystem(asked, asked);
  const given = inputs.filter((input) => input !== undefined);
  const us = given.filter(({ unit }) => US_UNITS.includes(unit)).length;
  if (us === given.length) return 'us';
  if (us === 0) return 'si';
  return fail('UNITS_REQUIRED', 'units', "'us' or 'si'", undefined, 'The inputs mix both systems: say which to use.');
}
