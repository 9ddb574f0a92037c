import { type Note, note, type Words } from '../../../working/note.js';
import type { Run } from '../../layout.js';
import type { Lashing } from './lashing.js';
import { NOTHING, plus, type Range, times, upTo } from './range.js';

/** What lashings hold together, and what must be known to say it. */
export interface Held {
  /** N against sliding, N m against tilting. */
  readonly amount: Range;
  readonly missing: readonly Note[];
  /** Each lashing that counts, with the share of its force that does; null where that is not known. */
  readonly shares: readonly (readonly [lashing: Lashing, share: number | null])[];
}

/** Which force of a lashing counts, and what must be known to say it. */
export interface CountedForce {
  readonly force: Range;
  readonly missing: readonly Note[];
}

/**
 * sum(force · share). The share is that of all legs together, or what must be known to say it; a lashing whose share is
 * not known holds nothing for certain and at best `most` for each newton.
 */
export function addUp(
  lashings: readonly Lashing[],
  forceOf: (lashing: Lashing) => CountedForce,
  shareOf: (runs: readonly Run[], lashing: Lashing) => number | Note,
  most: number,
): Held {
  let amount = NOTHING;
  const missing: Note[] = [];
  const shares: [Lashing, number | null][] = [];
  for (const lashing of lashings) {
    const { tieDown, runs, legs } = lashing;
    const { force, missing: facts } = forceOf(lashing);
    missing.push(...facts);
    const share = runs.length < legs ? note(POINTS_NOT_STATED, { tieDown: tieDown.id }) : shareOf(runs, lashing);
    const known = typeof share === 'number';
    if (!known) missing.push(share);
    amount = plus(amount, known ? times(force, share) : upTo(force, legs * most));
    shares.push([lashing, known ? share : null]);
  }
  return { amount, missing, shares };
}

/** Runs that all count one newton: what they hold then is their share. */
export const alike = (runs: readonly Run[]) => runs.map((run) => ({ run, force: 1 }));

export const overTop = (lashings: readonly Lashing[]): readonly Lashing[] =>
  lashings.filter(({ method }) => method === 'over-top');

/** FT of each leg. */
export const tensionOf = ({ tension, missing }: Lashing): CountedForce => ({
  force: tension,
  missing: missing.tension,
});

/** LC of each leg. */
export const capacityOf = ({ capacity, missing }: Lashing): CountedForce => ({
  force: capacity,
  missing: missing.capacity,
});

const POINTS_NOT_STATED: Words = [
  'POINTS_NOT_STATED',
  'Where tie-down {tieDown} runs: its points on the vehicle and on the cargo, of both ends if it runs over.',
];
