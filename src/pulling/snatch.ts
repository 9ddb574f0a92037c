/** A machine that runs into its tight chain, in SI: kg, N, N/m. */
export interface Snatch {
  readonly towingMass: number;
  /** Infinite for an anchored load. */
  readonly loadMass: number;
  /** What the load resists with before it moves, infinite for an anchored one; and once it moves. */
  readonly breaksLooseAt: number;
  readonly resists: number;
  /** That goes on driving the machine. */
  readonly thrust: number;
  readonly stiffness: number;
}

/** m1 · m2 / (m1 + m2): never more than the lighter of the two. */
export function reducedMass({ towingMass, loadMass }: Pick<Snatch, 'towingMass' | 'loadMass'>): number {
  return towingMass / (1 + towingMass / loadMass);
}

/** Peak tension of a chain that comes tight at a speed, and whether the load moves before that. */
export function snatchPeak(snatch: Snatch, speed: number): { readonly peak: number; readonly loose: boolean } {
  const { towingMass, breaksLooseAt, thrust, stiffness } = snatch;
  const anchored = thrust + Math.sqrt(thrust ** 2 + stiffness * towingMass * speed ** 2);
  if (anchored <= breaksLooseAt) return { peak: anchored, loose: false };
  const { mean, offset, gained } = afterBreakingLoose(snatch);
  const closing = Math.max(speed ** 2 + gained, 0); // rounding, where it breaks loose at the very peak
  return { peak: mean + Math.sqrt(offset ** 2 + stiffness * reducedMass(snatch) * closing), loose: true };
}

/**
 * The speed whose peak is a limit, in m/s; undefined where even a chain without slack goes beyond it.
 *
 * The peak grows with the speed without a gap: a load that resists twice the thrust or more breaks loose at its own
 * resistance. One that resists less breaks loose at any speed, and no peak is as low as what it resists.
 */
export function speedForPeak(snatch: Snatch, limit: number): number | undefined {
  const { towingMass, breaksLooseAt, thrust, stiffness } = snatch;
  let squared: number;
  if (limit <= breaksLooseAt) {
    if (limit < thrust) return undefined;
    squared = ((limit - thrust) ** 2 - thrust ** 2) / (stiffness * towingMass);
  } else {
    const { mean, offset, gained } = afterBreakingLoose(snatch);
    if (limit < mean) return undefined;
    squared = ((limit - mean) ** 2 - offset ** 2) / (stiffness * reducedMass(snatch)) - gained;
  }
  return squared >= 0 ? Math.sqrt(squared) : undefined;
}

/** The tension swings about a mean from where the load breaks loose; by then the square of the speed has changed. */
function afterBreakingLoose(snatch: Snatch) {
  const { towingMass, loadMass, breaksLooseAt, resists, thrust, stiffness } = snatch;
  const mean = reducedMass(snatch) * (thrust / towingMass + resists / loadMass);
  const gained = (2 * thrust * breaksLooseAt - breaksLooseAt ** 2) / (stiffness * towingMass);
  return { mean, offset: breaksLooseAt - mean, gained };
}
