import { checkOneOf } from '../../../input-checks.js';
import { imoCtu2014Accelerations as accelerations } from '../../../tables/generated/imo-ctu-2014-accelerations.js';
import { imoCtu2014SeaAreas as seaAreas } from '../../../tables/generated/imo-ctu-2014-sea-areas.js';
import { note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { type Heading, SIDE } from '../../forces/directions.js';
import type { Plan } from '../../plan.js';
import { citeTable } from './cite.js';

/** How the cargo travels, as the table of accelerations calls it. */
export type Mode = keyof typeof accelerations.rows;

/** Horizontal and least vertical coefficient of a heading. */
export interface Coefficients {
  readonly c: number;
  readonly cz: number;
}

const AREAS = { A: 'sea-a', B: 'sea-b', C: 'sea-c' } as const;

/** By road, or by sea in the area that the plan names; what the area means goes into the assumptions. */
export function modeOf({ seaArea }: Pick<Plan, 'seaArea'>, working: Working): Mode {
  citeTable(working, accelerations);
  if (seaArea === undefined) {
    working.assumptions.push({ code: 'BY_ROAD', params: {}, text: 'By road: no sea area is stated.' });
    return 'road';
  }
  checkOneOf(seaArea, Object.keys(AREAS), 'seaArea');
  const mode = AREAS[seaArea];
  const row: { readonly wave_height_over_m?: number; readonly wave_height_to_m?: number } = seaAreas.rows[mode];
  const { wave_height_over_m: over, wave_height_to_m: to } = row;
  const waves = [over === undefined ? '' : `over ${over} m`, to === undefined ? '' : `up to ${to} m`];
  citeTable(working, seaAreas);
  working.assumptions.push(note('SEA_AREA', { area: seaArea, waves: waves.join(' ').trim() }));
  return mode;
}

/** The row of a mode and heading. At sea, the vertical one is below 1 along the ship, which leaves less friction. */
export function coefficientsOf(mode: Mode, heading: Heading): Coefficients {
  return accelerations.rows[mode][SIDE[heading]];
}
