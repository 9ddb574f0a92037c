import { type Note, note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import { type Heading, heldByFriction, pressingDown } from '../../forces.js';
import type { Run } from '../../layout.js';
import { safetyFactor } from './cite.js';
import type { Lashing } from './lashing.js';
import { NOTHING, plus, type Range, times, upTo } from './range.js';

/** What lashings hold, and what must be known to say it. */
export interface Held {
  readonly force: Range;
  readonly missing: readonly Note[];
  /** The share of FT or LC of each lashing that counts, for the working; null where its points are not known. */
  readonly shares: readonly (readonly [tieDown: string, share: number | null])[];
}

/**
 * Sliding, over-top lashing: sum(μ · FT · sin α) / fs over both legs of each lashing, whichever the heading. It is the
 * published n ≥ fs · (c − μ · cz) · m · g / (2 · μ · sin α · FT) for lashings that need not be alike. Nothing is
 * divided by sin α: a flat lashing clamps nothing, and its points want another look.
 */
export function heldByOverTop(lashings: readonly Lashing[], heading: Heading, mu: number, working: Working): Held {
  const fs = safetyFactor(working, heading);
  let force = NOTHING;
  const missing: Note[] = [];
  const shares: [string, number | null][] = [];
  for (const { method, tieDown, runs, legs, tension, missing: facts } of lashings) {
    if (method !== 'over-top') continue;
    missing.push(...facts.tension);
    const flat = runs.some((run) => pressingDown(run) < FLAT);
    if (runs.length < legs || flat) {
      missing.push(note(flat ? OVER_TOP_FLAT : POINTS_NOT_STATED, { tieDown: tieDown.id }));
      force = plus(force, upTo(tension, (legs * mu) / fs));
      shares.push([tieDown.id, null]);
      continue;
    }
    const share = heldByFriction(alike(runs), mu) / fs;
    force = plus(force, times(tension, share));
    shares.push([tieDown.id, share]);
  }
  return { force, missing, shares };
}

/** Runs that all count one newton: what they hold then is their share. */
export const alike = (runs: readonly Run[]) => runs.map((run) => ({ run, force: 1 }));

/** sin α below this is a flat lashing drawn in numbers that are not exact. */
const FLAT = 1e-9;

const OVER_TOP_FLAT = {
  code: 'OVER_TOP_FLAT',
  text: 'Where over-top tie-down {tieDown} presses down: a leg of it runs flat or upward, and clamps nothing.',
};
export const POINTS_NOT_STATED = {
  code: 'POINTS_NOT_STATED',
  text: 'Where tie-down {tieDown} runs: its points on the vehicle and on the cargo, of both ends if it runs over.',
};
