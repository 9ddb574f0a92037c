import { us49cfr3929Inspection } from '../../../tables/generated/us-49cfr392-9-inspection.js';
import type { Working } from '../../../working/step.js';
import type { InspectionDue } from '../../rule-set.js';
import { cite } from './cite.js';

/**
 * 392.9: the driver looks at the load before driving, within the first 50 mi, and then at a change of duty
 * status, after 3 h or after 150 mi of driving, whichever comes first.
 */
export function inspections(working: Working): readonly InspectionDue[] {
  cite(working, '392.9');
  return INSPECTIONS;
}

const INSPECTIONS: readonly InspectionDue[] = /* @__PURE__ */ Object.entries(us49cfr3929Inspection.rows).map(
  ([when, row]) => ({
    when,
    ...('distance_mi' in row ? { distance: { value: row.distance_mi, unit: 'mi' } as const } : {}),
    ...('time_h' in row ? { time: { value: row.time_h, unit: 'h' } as const } : {}),
    clause: `49 CFR ${row.clause}`,
  }),
);
