import type { QuantityLike } from '../../quantities/quantity.js';
import { ratedLoadIn } from '../../quantities/rated.js';
import type { UnitSystem } from '../../quantities/units.js';
import type { Working } from '../../working/step.js';
import type { DirectionalRequirement } from '../rule-set.js';

/** What a mass weighs, in the unit that forces are shown in. */
export function weightOf(mass: QuantityLike, units: UnitSystem): QuantityLike<'N' | 'lbf'> {
  return ratedLoadIn(mass, units === 'si' ? 'N' : 'lbf');
}

/** F = a · W in one direction, held against working load limits, shown. */
export function forceAgainstLimit(
  direction: DirectionalRequirement['direction'],
  a: number,
  weight: QuantityLike,
  clause: string,
  working: Working,
): QuantityLike {
  const force = { value: weight.value * a, unit: weight.unit };
  const expression = 'a · W, against the working load limit';
  if (working.shown) working.step(`restraint ${direction}`, 'F', expression, { a, W: weight }, force, clause);
  return force;
}
