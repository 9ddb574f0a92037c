/** How gravity lies in the frame of the tractor: shares of its weight along it, to its low side and onto the ground. */
export interface GravityShares {
  /** Toward the rear: positive nose up. */
  readonly rearward: number;
  readonly sideward: number;
  readonly down: number;
}

/** A pull on the tractor, in newtons and meters: rearward from behind the rear axle, forward from ahead of the front axle. */
export interface PullOnTractor {
  readonly force: number;
  readonly height: number;
  /** Of the hitch beyond the axle that is nearest to it. */
  readonly beyond: number;
  readonly forward: boolean;
  /** Below the line of the tractor, in radians. */
  readonly below: number;
  /** What the load itself puts on the hitch, square to the ground, such as one end of a log; in newtons. */
  readonly press: number;
  /** From straight behind, or straight ahead, toward the low side; in radians. */
  readonly sideways: number;
}
