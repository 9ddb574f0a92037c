import { type Heading, heldDirectly, holdingBack } from '../../forces.js';
import { addUp, alike, capacityOf, type Held } from './held.js';
import type { Lashing } from './lashing.js';

/**
 * Sliding, direct lashing: sum(LC · (cos α · cos β + fμ · μ · sin α)) over the legs that hold back in the heading, with
 * `mu` = fμ · μ. Diagonal, slope and spring lashing and the half loop are all this sum. No fs.
 */
export function heldByDirect(lashings: readonly Lashing[], heading: Heading, mu: number): Held {
  const best = Math.hypot(1, mu); // of any angle
  return addUp(direct(lashings, heading), capacityOf, (runs) => heldDirectly(alike(runs), heading, mu), best);
}

/**
 * The direct lashings that hold back in a heading, or may where their points are not known. The legs of a loop hold
 * back together or not at all: a loop is not fixed to the load and slips around it.
 */
export function direct(lashings: readonly Lashing[], heading: Heading): readonly Lashing[] {
  return lashings.filter(
    ({ method, runs, legs }) =>
      method === 'direct' && (runs.length < legs || runs.every((run) => holdingBack(run, heading) > 0)),
  );
}
