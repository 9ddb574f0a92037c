import { inUnit } from './convert.js';
import type { Quantity, QuantityLike } from './quantity.js';
import { UNITS } from './units.js';

/** Standard gravity in m/s², exact (CGPM 1901). Crossing between a load's mass and its force uses this and nothing else. */
export const STANDARD_GRAVITY = 9.80665;

/** True when a rated load is stated as a force (kN, daN, lbf) and not as a mass (kg, t, lb). */
export function isForce(quantity: QuantityLike): boolean {
  return UNITS[quantity.unit].dimension === 'force';
}

/**
 * A rated load in a unit of either kind. Where it crosses between mass and force, standard gravity is used (one
 * pound of mass weighs one pound-force, one kilogram one kilogram-force) and the caller owes the reader a step
 * that says so.
 */
export function ratedLoadIn<U extends 'lb' | 'kg' | 'lbf' | 'N' | 'kN' | 'daN'>(
  rated: QuantityLike,
  unit: U,
): Quantity<U> {
  if (rated.unit === unit) return inUnit(rated, unit);
  const toForce = UNITS[unit].dimension === 'force';
  if (isForce(rated) === toForce) return inUnit(rated, unit);
  const [mass, force] = unit === 'lb' || unit === 'lbf' ? (['lb', 'lbf'] as const) : (['kg', 'kgf'] as const);
  const [before, after] = toForce ? [mass, force] : [force, mass];
  return inUnit({ value: inUnit(rated, before).value, unit: after }, unit);
}
