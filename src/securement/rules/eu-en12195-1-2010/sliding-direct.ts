import { note } from '../../../working/note.js';
import { type Heading, heldDirectly, holdingBack } from '../../forces.js';
import type { Run } from '../../layout.js';
import type { Lashing } from './lashing.js';
import { NOTHING, plus, times, upTo } from './range.js';
import { alike, type Held, POINTS_NOT_STATED } from './sliding-over-top.js';

/**
 * Sliding, direct lashing: sum(LC · (cos α · cos β + fμ · μ · sin α)) over the legs that hold back in the heading, with
 * `mu` = fμ · μ. Diagonal, slope and spring lashing and the half loop are all this sum. No fs.
 */
export function heldByDirect(lashings: readonly Lashing[], heading: Heading, mu: number): Held {
  let force = NOTHING;
  const missing: Held['missing'][number][] = [];
  const shares: [string, number | null][] = [];
  for (const lashing of lashings) {
    if (!mayHoldDirectly(lashing, heading)) continue;
    const { tieDown, runs, legs, capacity, missing: facts } = lashing;
    missing.push(...facts.capacity);
    if (runs.length < legs) {
      missing.push(note(POINTS_NOT_STATED, { tieDown: tieDown.id }));
      force = plus(force, upTo(capacity, legs * Math.hypot(1, mu))); // the most that any angle gives
      shares.push([tieDown.id, null]);
      continue;
    }
    const share = heldDirectly(alike(runs), heading, mu);
    force = plus(force, times(capacity, share));
    shares.push([tieDown.id, share]);
  }
  return { force, missing, shares };
}

/** True for a direct lashing that holds back in a heading, or may where its points are not known. */
export function mayHoldDirectly({ method, runs, legs }: Lashing, heading: Heading): boolean {
  return method === 'direct' && (runs.length < legs || holdBackTogether(runs, heading));
}

/** The legs of a loop hold back together or not at all: a loop is not fixed to the load and slips around it. */
export const holdBackTogether = (runs: readonly Run[], heading: Heading): boolean =>
  runs.every((run) => holdingBack(run, heading) > 0);
