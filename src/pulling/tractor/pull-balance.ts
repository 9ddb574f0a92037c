import { type AxleBalance, axleBalance } from './axle-balance.js';
import type { PullOnTractor } from './pull-on-tractor.js';
import type { ReadTractor } from './tractor.js';

/** What the axles carry and what the ground asks, in newtons. */
export interface PullBalance extends AxleBalance {
  /** W · cos α, and what the load puts on the hitch: what the ground carries without a pull. */
  readonly across: number;
  /** W · sin α against the way it pulls. */
  readonly grade: number;
  readonly below: number;
}

export function pullBalance(
  tractor: ReadTractor,
  chain: Omit<PullOnTractor, 'force' | 'sideways'>,
  slope: number,
): PullBalance {
  const gravity = { rearward: Math.sin(slope), down: Math.cos(slope) };
  return {
    ...axleBalance(tractor, gravity, chain),
    across: tractor.weight * gravity.down + chain.press,
    grade: tractor.weight * gravity.rearward * (chain.forward ? -1 : 1),
    below: chain.below,
  };
}

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
