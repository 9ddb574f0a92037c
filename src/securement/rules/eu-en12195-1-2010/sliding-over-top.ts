import { note, type Words } from '../../../working/note.js';
import { heldByFriction, pressingDown } from '../../forces.js';
import { addUp, alike, type Held, overTop, tensionOf } from './held.js';
import type { Lashing } from './lashing.js';

/**
 * Sliding, over-top lashing: sum(μ · FT · sin α) / fs over both legs of each lashing, whichever the heading. It is the
 * published n ≥ fs · (c − μ · cz) · m · g / (2 · μ · sin α · FT) for lashings that need not be alike. Nothing is
 * divided by sin α: a flat lashing clamps nothing, and its points want another look.
 */
export function heldByOverTop(lashings: readonly Lashing[], fs: number, mu: number): Held {
  return addUp(
    overTop(lashings),
    tensionOf,
    (runs, { tieDown }) =>
      runs.some((run) => pressingDown(run) < FLAT)
        ? note(OVER_TOP_FLAT, { tieDown: tieDown.id })
        : heldByFriction(alike(runs), mu) / fs,
    mu / fs,
  );
}

/** sin α below this is a flat lashing drawn in numbers that are not exact. */
const FLAT = 1e-9;

const OVER_TOP_FLAT: Words = [
  'OVER_TOP_FLAT',
  'Where over-top tie-down {tieDown} presses down: a leg of it runs flat or upward, and clamps nothing.',
];
