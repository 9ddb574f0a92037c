import { type Heading, holdingBack } from '../../forces/directions.js';
import { exactly, type Held, heldDirectly } from '../../forces/held.js';
import { absentRuns, type CountedForce, runsOver } from '../../forces/tie-downs.js';
import type { Lashing } from './lashing.js';

/**
 * Sliding, direct lashing: sum(LC · (cos α · cos β + fμ · μ · sin α)) over the legs that hold back in the heading, with
 * `mu` = fμ · μ. Diagonal, slope and spring lashing and the half loop are all this sum. No fs.
 */
export const heldByDirect = (pulling: readonly CountedForce[], heading: Heading, mu: number): Held =>
  heldDirectly(pulling, heading, exactly(mu));

/**
 * LC of the direct lashings that hold back in a heading, or may where their points are not known. The legs of a loop
 * hold back together or not at all: a loop is not fixed to the load and slips around it.
 */
export const direct = (lashings: readonly Lashing[], heading: Heading): readonly CountedForce[] =>
  lashings.flatMap((lashing) => {
    const { layout, capacity } = lashing;
    if (runsOver(lashing)) return [];
    if (absentRuns(layout) > 0) return [{ ...capacity, layout: { ...layout, runs: [] } }];
    return layout.runs.every((run) => holdingBack(run, heading) > 0) ? [capacity] : [];
  });
