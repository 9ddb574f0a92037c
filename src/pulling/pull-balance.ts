import type { PullOnTractor } from './pull-on-tractor.js';
import type { ReadTractor } from './tractor.js';

/** How the chain pulls on the tractor. */
type ChainPull = Pick<PullOnTractor, 'height' | 'beyond' | 'forward' | 'below'>;

/**
 * What the axles carry as a straight line over the pull, in newtons: `near` the one at the hitch, `far` the other. Moments
 * about the wheels at the hitch; thrust and rolling resistance act in the ground and have no moment there.
 */
export interface PullBalance {
  readonly near: number;
  readonly nearPerPull: number;
  readonly far: number;
  readonly farPerPull: number;
  /** W · cos α, what the ground carries without a pull. */
  readonly across: number;
  /** W · sin α against the way it pulls. */
  readonly grade: number;
  readonly below: number;
  /** The pulls at which an axle lifts; infinite where the pull does not. */
  readonly farLiftsAt: number;
  readonly nearLiftsAt: number;
}

export function pullBalance(
  { weight, wheelbase: L, ahead, height: z = 0 }: ReadTractor,
  { height: h, beyond: c, forward, below }: ChainPull,
  slope: number,
): PullBalance {
  const across = weight * Math.cos(slope);
  const grade = weight * Math.sin(slope) * (forward ? -1 : 1);
  const x = forward ? L - ahead : ahead;
  const far = (x * across - z * grade) / L;
  const near = across - far;
  const farPerPull = -(h * Math.cos(below) + c * Math.sin(below)) / L;
  const nearPerPull = Math.sin(below) - farPerPull;
  return {
    near,
    nearPerPull,
    far,
    farPerPull,
    across,
    grade,
    below,
    farLiftsAt: pullToZero(far, farPerPull),
    nearLiftsAt: pullToZero(near, nearPerPull),
  };
}

const pullToZero = (load: number, perPull: number): number =>
  perPull < 0 ? load / -perPull : Number.POSITIVE_INFINITY;

/** What the axles carry under a pull; once the far one has lifted the near one carries all. */
export function axleLoads(balance: PullBalance, pull: number): { readonly near: number; readonly far: number } {
  const { near, nearPerPull, far, farPerPull, across, below } = balance;
  const onFar = far + farPerPull * pull;
  return onFar < 0
    ? { near: across + pull * Math.sin(below), far: 0 }
    : { near: near + nearPerPull * pull, far: onFar };
}

/**
 * The pull at which thrust and resistance are in balance along the ground, K + k_near · near + k_far · far − W · sin α =
 * P · cos β, in closed form: on both axles, and where that is past the lifting of the far one, on the near one alone.
 * Zero or less: there is nothing left to pull with. Infinite: the pull presses the wheels down as fast as it grows.
 */
export function solvePull(balance: PullBalance, thrust: number, onNear: number, onFar: number): number {
  const { near, nearPerPull, far, farPerPull, across, grade, below, farLiftsAt } = balance;
  const atRest = thrust + onNear * near + onFar * far - grade;
  if (atRest <= 0) return atRest;
  const onBoth = ratio(atRest, Math.cos(below) - onNear * nearPerPull - onFar * farPerPull);
  if (onBoth <= farLiftsAt) return onBoth;
  return ratio(thrust + onNear * across - grade, Math.cos(below) - onNear * Math.sin(below));
}

const ratio = (rest: number, perPull: number): number => (perPull > 0 ? rest / perPull : Number.POSITIVE_INFINITY);

/** The same where the ratios depend on the loads themselves: the first pull at which nothing is left, by bisection. */
export function searchPull(balance: PullBalance, leftAt: (near: number, far: number) => number): number {
  const leftOver = (pull: number): number => {
    const { near, far } = axleLoads(balance, pull);
    return leftAt(near, far) - balance.grade - pull * Math.cos(balance.below);
  };
  const atRest = leftOver(0);
  if (!(atRest > 0)) return atRest;
  let low = 0;
  let high = atRest;
  // 60 doublings and 100 halvings leave nothing of a double undecided
  for (let step = 0; leftOver(high) > 0; step++) {
    if (step === 60) return Number.POSITIVE_INFINITY;
    low = high;
    high *= 2;
  }
  for (let step = 0; step < 100; step++) {
    const middle = (low + high) / 2;
    if (leftOver(middle) > 0) low = middle;
    else high = middle;
  }
  return low;
}
