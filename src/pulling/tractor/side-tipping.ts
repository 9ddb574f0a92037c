import type { GravityShares, PullOnTractor } from './pull-on-tractor.js';
import type { ReadTractor } from './tractor.js';

export interface SideTipping {
  /** What the wheels of the high and of the low side carry, for a frame that is rigid across its width. */
  readonly high: number;
  readonly low: number;
  /** Whether it stands with its front axle free to pivot about a pin at such a height. */
  readonly standsOnPivot: (pinHeight: number) => boolean;
}

/**
 * Whether a tractor tips to its low side.
 *
 * With front wheels as stiff across as the rear ones it stands on a rectangle: if it tips there it tips in any case. A
 * front axle that pivots lets the frame tip about the line from the low rear tire to its pivot pin until it meets its
 * stop. About that line the moment is, times its length, W · t / 2 · (L − x) and so on for a pin on the ground, and grows
 * or falls evenly with its height: front tires push sideways at the pin, and the thrust is at the low rear tire by then.
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
    const { force, below, sideways, beyond, forward, press } = pull;
    const flat = force * Math.cos(below);
    const along = flat * Math.cos(sideways);
    forces.push([
      forward ? along : -along,
      flat * Math.sin(sideways),
      force * Math.sin(below) + press,
      forward ? L + beyond : -beyond,
      pull.height,
    ]);
  }
  let [high, down, onGround, perHeight] = [0, 0, 0, 0];
  for (const [along, aside, onto, x, z] of forces) {
    high += (onto * half - aside * z) / track;
    down += onto;
    onGround += onto * half * (L - x) - (along * half + aside * L) * z;
    perHeight += along * half + aside * x;
  }
  return { high, low: down - high, standsOnPivot: (pinHeight) => onGround + perHeight * pinHeight >= 0 };
}
