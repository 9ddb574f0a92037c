import type { QuantityLike } from '../../../quantities/quantity.js';
import type { MassUnit, UnitSystem } from '../../../quantities/units.js';
import { caNsc102013Criteria as criteria } from '../../../tables/generated/ca-nsc10-2013-criteria.js';
import type { Working } from '../../../working/step.js';
import { forceAgainstLimit, weightOf } from '../../counting/performance.js';
import type { DirectionalRequirement } from '../../rule-set.js';
import { clauseOf } from './cite.js';

/**
 * Performance criteria: F = a · W in each direction by itself, at which no working load limit may be exceeded. Forward
 * and sideways that is about twice what the United States asks of a working load limit. No vertical figure was found.
 */
export function performance(
  mass: QuantityLike<MassUnit>,
  units: UnitSystem,
  working: Working,
): readonly DirectionalRequirement[] {
  if (working.shown) working.cite(criteria.source);
  const weight = weightOf(mass, units);
  const clause = clauseOf(criteria.source.clause);
  return Object.entries(criteria.rows).map(([name, { g_against_wll: a }]) => {
    const direction = name === 'sideways' ? 'lateral' : (name as 'forward' | 'rearward');
    return { direction, againstWorkingLoadLimit: forceAgainstLimit(direction, a, weight, clause, working), clause };
  });
}
