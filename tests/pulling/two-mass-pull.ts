// Another way to the peak of a snatch: the motion of both masses, step by step, by velocity Verlet. No energy balance.

export interface TwoMassPull {
  /** In kg, N, N/m and m/s. The load has no mass given when it is anchored. */
  readonly towingMass: number;
  readonly loadMass?: number;
  readonly breaksLooseAt?: number;
  readonly resists?: number;
  /** At a time in s, for one that is raised slowly. */
  readonly thrust: (time: number) => number;
  readonly stiffness: number;
  readonly speed: number;
}

/** The greatest tension until a time, in N. */
export function peakByMotion(pull: TwoMassPull, until: number, steps: number): number {
  const { towingMass, loadMass, breaksLooseAt = 0, resists = breaksLooseAt, thrust, stiffness, speed } = pull;
  const dt = until / steps;
  const tension = (machine: number, load: number) => Math.max(0, stiffness * (machine - load));
  let [machine, load, machineSpeed, loadSpeed] = [0, 0, speed, 0];
  let holds = true;
  let peak = 0;
  const accelerations = (time: number) => {
    const pulled = tension(machine, load);
    peak = Math.max(peak, pulled);
    if (pulled > breaksLooseAt) holds = false;
    const loadMoves = loadMass !== undefined && !holds;
    return [(thrust(time) - pulled) / towingMass, loadMoves ? (pulled - resists) / loadMass : 0] as const;
  };
  let [a, b] = accelerations(0);
  for (let step = 1; step <= steps; step++) {
    machine += machineSpeed * dt + (a * dt * dt) / 2;
    load += loadSpeed * dt + (b * dt * dt) / 2;
    const [nextA, nextB] = accelerations(step * dt);
    machineSpeed += ((a + nextA) / 2) * dt;
    loadSpeed += ((b + nextB) / 2) * dt;
    if (loadSpeed < 0) loadSpeed = 0; // what resists the load does not push it back
    [a, b] = [nextA, nextB];
  }
  return peak;
}
