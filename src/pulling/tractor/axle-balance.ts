import type { GravityShares, PullOnTractor } from './pull-on-tractor.js';
import type { ReadTractor } from './tractor.js';

/**
 * What the axles of a tractor carry, square to the ground, as a straight line over the pull, in newtons: `near` the axle
 * at the hitch, `far` the other, which a pull along the ground lifts.
 */
export interface AxleBalance {
  readonly near: number;
  readonly nearPerPull: number;
  readonly far: number;
  readonly farPerPull: number;
  /** The pulls at which an axle lifts; infinite where a pull adds to it. */
  readonly farLiftsAt: number;
  readonly nearLiftsAt: number;
  /** Set where an axle carries nothing even without a pull. */
  readonly tips: 'tips-rearward' | 'tips-forward' | undefined;
}

/**
 * Moments about the wheels at the end where the chain pulls: rear wheels for a chain behind, front wheels for a chain
 * ahead. Driving thrust and rolling resistance act in the ground and have no moment about a line in it.
 */
export function axleBalance(
  { weight, wheelbase: L, ahead, height = 0 }: ReadTractor,
  { rearward, down }: Pick<GravityShares, 'rearward' | 'down'>,
  { height: h, beyond, forward, below, press }: Omit<PullOnTractor, 'force' | 'sideways'>,
): AxleBalance {
  const turning = height * rearward;
  const own = weight * (forward ? (L - ahead) * down + turning : ahead * down - turning);
  const far = (own - press * beyond) / L;
  const near = weight * down + press - far;
  const farPerPull = -(h * Math.cos(below) + beyond * Math.sin(below)) / L;
  const nearPerPull = Math.sin(below) - farPerPull;
  const [front, rear] = forward ? [near, far] : [far, near];
  return {
    near,
    nearPerPull,
    far,
    farPerPull,
    farLiftsAt: pullToZero(far, farPerPull),
    nearLiftsAt: pullToZero(near, nearPerPull),
    tips: front <= 0 ? 'tips-rearward' : rear <= 0 ? 'tips-forward' : undefined,
  };
}

function pullToZero(load: number, perPull: number): number {
  return perPull < 0 ? load / -perPull : Number.POSITIVE_INFINITY;
}
