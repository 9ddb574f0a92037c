import type { GravityShares, PullOnTractor } from './pull-on-tractor.js';
import type { ReadTractor } from './tractor.js';

export interface SideTipping {
  /** What the wheels of the high and of the low side carry, for a frame that is rigid across its width. */
  readonly high: number;
  readonly low: number;
  /** Moment in N m that holds it about the line between rear tire and front pivot, taken on the ground. */
  readonly holdsOnPivot: number;
}

/**
 * Whether a tractor tips to its low side.
 *
 * A front axle that pivots lets the frame tip about the line from the low rear tire to its pivot pin until it meets its
 * stop. With that pin on the ground the tractor stands on a triangle: if it stands there it stands in any case. With
 * front wheels as stiff as the rear ones it stands on a rectangle: if it tips there it tips in any case. Friction and
 * thrust act in the ground, so they have no moment about a line in it.
 */
export function sideTipping(
  { weight, wheelbase: L, ahead, height }: ReadTractor & { readonly height: number },
  track: number,
  gravity: GravityShares,
  pull: PullOnTractor | undefined,
): SideTipping {
  const half = track / 2;
  // [along, toward the low side, down, from the rear axle, above the ground] of each force
  const forces: (readonly [number, number, number, number, number])[] = [
    [-weight * gravity.rearward, weight * gravity.sideward, weight * gravity.down, ahead, height],
  ];
  if (pull !== undefined) {
    const { force, below, sideways, beyond, forward } = pull;
    const flat = force * Math.cos(below);
    const along = flat * Math.cos(sideways);
    forces.push([
      forward ? along : -along,
      flat * Math.sin(sideways),
      force * Math.sin(below),
      forward ? L + beyond : -beyond,
      pull.height,
    ]);
  }
  const edge = Math.hypot(L, half);
  let high = 0;
  let down = 0;
  let holdsOnPivot = 0;
  for (const [along, aside, onto, x, z] of forces) {
    high += (onto * half - aside * z) / track;
    down += onto;
    holdsOnPivot += (onto * half * (L - x) - (along * half + aside * L) * z) / edge;
  }
  return { high, low: down - high, holdsOnPivot };
}
