import type { QuantityLike } from '../../../quantities/quantity.js';
import type { MassUnit, UnitSystem } from '../../../quantities/units.js';
import { us49cfr393102Criteria } from '../../../tables/generated/us-49cfr393-102-criteria.js';
import { type Check, metCheck, notApplicableCheck } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { forceAgainstLimit, weightOf } from '../../counting/performance.js';
import type { DirectionalRequirement } from '../../rule-set.js';
import { aboutRule, cite } from './cite.js';

/**
 * 393.102(a)-(b): the restraint each direction must have, F = a · W, held separately against the breaking
 * strength of the tie-downs and against their working load limit. `down` is the downward force that cargo
 * needs where the vehicle's structure does not contain it.
 *
 * Rearward the regulation prints 0.5 in both columns: against the working load limit that is more than forward.
 */
export function performance(
  mass: QuantityLike<MassUnit>,
  units: UnitSystem,
  working: Working,
): readonly DirectionalRequirement[] {
  cite(working, '393.102(a)-(b)');
  const weight = weightOf(mass, units);
  return Object.entries(us49cfr393102Criteria.rows).map(([name, row]) => {
    const direction = name === 'vertical' ? 'down' : (name as 'forward' | 'rearward' | 'lateral');
    const clause = `49 CFR ${row.clause}`;
    return {
      direction,
      againstWorkingLoadLimit: forceAgainstLimit(direction, row.g_against_wll, weight, clause, working),
      againstBreakingStrength: { value: weight.value * row.g_against_breaking_strength, unit: weight.unit },
      clause,
    };
  });
}

/** 393.102(c)(3): cargo secured as 393.104 to 393.136 ask is deemed to meet the performance criteria. */
export function deemedPerformance(subject: string, met: boolean, working: Working): Check {
  const about = aboutRule(
    working,
    '393.102(c)',
    'Performance criteria, deemed met as far as checked',
    subject,
    'memory',
  );
  return met ? metCheck(about) : notApplicableCheck(about, NOT_DEEMED);
}

const NOT_DEEMED: Note = /* @__PURE__ */ note('NOT_DEEMED_TO_PERFORM');
