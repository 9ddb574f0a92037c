import type { GravityShares, PullOnTractor } from './pull-on-tractor.js';
import type { ReadTractor } from './tractor.js';

/** What the axles of a tractor carry, square to the ground, in newtons. */
export interface PitchBalance {
  /** Under the pull; negative: that axle has lifted. */
  readonly front: number;
  readonly rear: number;
  /** The axle away from the hitch, which a pull along the ground lifts, without any pull. */
  readonly farUnpulled: number;
  /** Set where an axle carries nothing even without a pull. */
  readonly tips: 'tips-rearward' | 'tips-forward' | undefined;
  /** Pull at which the axle away from the hitch lifts, and the one at the hitch; infinite where a pull adds to it. */
  readonly farLiftsAt: number;
  readonly nearLiftsAt: number;
}

/**
 * Moments about the wheels at the end where the chain pulls: rear wheels for a chain behind, front wheels for a chain
 * ahead. Driving thrust and rolling resistance act in the ground and have no moment about a line in it.
 */
export function pitchBalance(
  { weight, wheelbase: L, ahead, height = 0 }: ReadTractor,
  { rearward, down }: GravityShares,
  { force, height: h, beyond, forward, below }: PullOnTractor,
): PitchBalance {
  const arm = h * Math.cos(below) + beyond * Math.sin(below);
  const turning = height * rearward;
  const far = (weight * (forward ? (L - ahead) * down + turning : ahead * down - turning)) / L;
  const near = weight * down - far;
  const nearPerPull = Math.sin(below) + arm / L;
  const farUnderPull = far - (force * arm) / L;
  const nearUnderPull = near + force * nearPerPull;
  const [front, rear] = forward ? [nearUnderPull, farUnderPull] : [farUnderPull, nearUnderPull];
  const [frontUnpulled, rearUnpulled] = forward ? [near, far] : [far, near];
  return {
    front,
    rear,
    farUnpulled: far,
    tips: frontUnpulled <= 0 ? 'tips-rearward' : rearUnpulled <= 0 ? 'tips-forward' : undefined,
    farLiftsAt: pullToZero(far, -arm / L),
    nearLiftsAt: pullToZero(near, nearPerPull),
  };
}

function pullToZero(reaction: number, perPull: number): number {
  return perPull < 0 ? reaction / -perPull : Number.POSITIVE_INFINITY;
}
