import { note } from '../../../working/note.js';
import { pressingDown } from '../../forces/directions.js';
import { exactly, type Held, pressedDown } from '../../forces/held.js';
import type { CountedForce } from '../../forces/tie-downs.js';
import { type Lashing, tensions } from './lashing.js';

/**
 * Sliding, over-top lashing: sum(μ · FT · sin α) / fs over both legs of each lashing, whichever the heading. It is the
 * published n ≥ fs · (c − μ · cz) · m · g / (2 · μ · sin α · FT) for lashings that need not be alike. Nothing is
 * divided by sin α: a flat lashing clamps nothing, and its points want another look.
 */
export const heldByOverTop = (lashings: readonly Lashing[], fs: number, mu: number): Held =>
  pressedDown(tensions(lashings).map(unlessFlat), exactly(mu / fs));

function unlessFlat(counted: CountedForce): CountedForce {
  const { layout, missing } = counted;
  if (layout.runs.every((run) => pressingDown(run) >= FLAT)) return counted;
  const fact = note('OVER_TOP_FLAT', { tieDown: layout.tieDown.id });
  return { ...counted, layout: { ...layout, runs: [] }, missing: [...missing, fact] };
}

/** sin α below this is a flat lashing drawn in numbers that are not exact. */
const FLAT = 1e-9;
