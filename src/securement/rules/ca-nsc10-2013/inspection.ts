import { caNsc102013Inspection as table } from '../../../tables/generated/ca-nsc10-2013-inspection.js';
import type { Working } from '../../../working/step.js';
import type { InspectionDue } from '../../rule-set.js';
import { clauseOf } from './cite.js';

/** The driver looks at the load within the first 80 km, and then every 240 km or 3 h, whichever comes first: from memory. */
export function inspections(working: Working): readonly InspectionDue[] {
  if (working.shown) working.cite(table.source);
  return Object.entries(table.rows).map(([when, row]) => ({
    when,
    distance: { value: row.distance_km, unit: 'km' },
    ...('time_h' in row ? { time: { value: row.time_h, unit: 'h' } as const } : {}),
    clause: clauseOf(table.source.clause),
  }));
}
