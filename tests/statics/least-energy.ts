// A hanging load by brute force, to hold the closed form against: the pose of the load in the room (where its center of
// gravity is, and how it is turned) is moved downhill in potential energy until nothing is left to gain.
//
//     E = W z + sum over legs of k / 2 max(0, |hook - pick| - S)²
//
// Newton steps in six freedoms, with a Hessian from differences of the gradient, made safe by damping and a line search.
// After each descent the springs are shortened by their stretch (the multiplier method), so that legs end at their length
// to rounding although the springs are soft enough to compute with. Nothing here knows that legs are concurrent, that the
// center of gravity ends below the hook, or which legs are taut.

export interface Spring {
  readonly at: readonly number[];
  readonly length: number;
  readonly stiffness: number;
}

export interface Settled {
  readonly tensions: readonly number[];
  /** The vertical in the axes of the load. */
  readonly up: readonly number[];
  readonly converged: boolean;
}

interface Pose {
  /** Center of gravity in the room; the hook is its origin. */
  center: number[];
  /** Rows: the axes of the room in the axes of the load. */
  turn: number[][];
}

const cross = (a: readonly number[], b: readonly number[]) => [
  a[1]! * b[2]! - a[2]! * b[1]!,
  a[2]! * b[0]! - a[0]! * b[2]!,
  a[0]! * b[1]! - a[1]! * b[0]!,
];
const times = (m: readonly (readonly number[])[], v: readonly number[]) =>
  m.map((row) => row[0]! * v[0]! + row[1]! * v[1]! + row[2]! * v[2]!);

/** Rodrigues: the rotation by a vector, in front of another. */
function turned(turn: number[][], [a, b, c]: number[]): number[][] {
  const angle = Math.hypot(a!, b!, c!);
  if (angle === 0) return turn;
  const axis = [a! / angle, b! / angle, c! / angle];
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const columns = [0, 1, 2].map((j) => {
    const v = [turn[0]![j]!, turn[1]![j]!, turn[2]![j]!];
    const along = axis[0]! * v[0]! + axis[1]! * v[1]! + axis[2]! * v[2]!;
    const side = cross(axis, v);
    return v.map((each, i) => each * cos + side[i]! * sin + axis[i]! * along * (1 - cos));
  });
  return [0, 1, 2].map((i) => columns.map((column) => column[i]!));
}

/** Energy and its gradient to moving the center and to turning about it. */
function look(weight: number, arms: number[][], legs: readonly Spring[], offsets: number[], { center, turn }: Pose) {
  let energy = weight * center[2]!;
  const slope = [0, 0, weight, 0, 0, 0];
  const tensions = legs.map(({ length, stiffness }, i) => {
    const arm = times(turn, arms[i]!);
    const at = arm.map((each, axis) => each + center[axis]!);
    const reach = Math.hypot(at[0]!, at[1]!, at[2]!);
    const stretch = reach - length + offsets[i]!;
    if (stretch <= 0) return 0;
    const tension = stiffness * stretch;
    energy += (tension * stretch) / 2;
    const away = at.map((each) => (tension * each) / reach);
    const moment = cross(arm, away);
    for (let axis = 0; axis < 3; axis++) {
      slope[axis]! += away[axis]!;
      slope[axis + 3]! += moment[axis]!;
    }
    return tension;
  });
  return { energy, slope, tensions };
}

const moved = ({ center, turn }: Pose, by: number[]): Pose => ({
  center: center.map((each, axis) => each + by[axis]!),
  turn: turned(turn, by.slice(3)),
});

/** Gauss with row exchange; small and dense. */
function solved(matrix: number[][], side: number[]): number[] {
  const rows = matrix.map((row, i) => [...row, side[i]!]);
  const n = rows.length;
  for (let c = 0; c < n; c++) {
    let best = c;
    for (let r = c + 1; r < n; r++) if (Math.abs(rows[r]![c]!) > Math.abs(rows[best]![c]!)) best = r;
    [rows[c], rows[best]] = [rows[best]!, rows[c]!];
    for (let r = c + 1; r < n; r++) {
      const f = rows[r]![c]! / rows[c]![c]!;
      for (let k = c; k <= n; k++) rows[r]![k]! -= f * rows[c]![k]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let r = n - 1; r >= 0; r--) {
    let v = rows[r]![n]!;
    for (let k = r + 1; k < n; k++) v -= rows[r]![k]! * x[k]!;
    x[r] = v / rows[r]![r]!;
  }
  return x;
}

/**
 * Lets a load settle from where it stands, its center of gravity below the hook at the depth given.
 * `rigid`: legs do not stretch; else they are the springs that they are.
 */
export function settle(
  weight: number,
  centerOfGravity: readonly number[],
  legs: readonly Spring[],
  start: { readonly center: readonly number[] },
  rigid: boolean,
): Settled {
  const arms = legs.map(({ at }) => at.map((each, axis) => each - centerOfGravity[axis]!));
  let pose: Pose = {
    center: [...start.center],
    turn: [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
  };
  const offsets = legs.map(() => 0);
  let seen = look(weight, arms, legs, offsets, pose);
  let converged = false;
  for (let round = 0; round < (rigid ? 40 : 1); round++) {
    let damping = 1e-3;
    for (let step = 0; step < 400; step++) {
      if (Math.hypot(...seen.slope) < 1e-11 * weight) break;
      const small = 1e-6;
      const hessian = [0, 1, 2, 3, 4, 5].map((axis) => {
        const by = [0, 0, 0, 0, 0, 0];
        by[axis] = small;
        const plus = look(weight, arms, legs, offsets, moved(pose, by)).slope;
        by[axis] = -small;
        const minus = look(weight, arms, legs, offsets, moved(pose, by)).slope;
        return plus.map((each, i) => (each - minus[i]!) / (2 * small));
      });
      let gained = false;
      for (let tries = 0; tries < 60; tries++) {
        const damped = hessian.map((row, i) =>
          row.map((each, j) => (each + hessian[j]![i]!) / 2 + (i === j ? damping * weight : 0)),
        );
        const by = solved(
          damped,
          seen.slope.map((each) => -each),
        );
        const downhill = by.reduce((sum, each, i) => sum + each * seen.slope[i]!, 0) < 0;
        const long = Math.hypot(...by);
        if (downhill && Number.isFinite(long)) {
          const shortened = long > 0.3 ? by.map((each) => (each * 0.3) / long) : by;
          const next = moved(pose, shortened);
          const then = look(weight, arms, legs, offsets, next);
          if (
            then.energy < seen.energy ||
            (then.energy <= seen.energy + 1e-12 * weight && Math.hypot(...then.slope) < Math.hypot(...seen.slope))
          ) {
            pose = next;
            seen = then;
            gained = true;
            damping = Math.max(damping / 4, 1e-9);
            break;
          }
        }
        damping *= 4;
      }
      if (!gained) break;
    }
    const before = [...offsets];
    if (rigid) {
      seen.tensions.forEach((tension, i) => {
        offsets[i] = tension / legs[i]!.stiffness;
      });
      seen = look(weight, arms, legs, offsets, pose);
    }
    const changed = Math.max(...offsets.map((each, i) => Math.abs(each - before[i]!)));
    converged = changed < 1e-10 && Math.hypot(...seen.slope) < 1e-7 * weight;
    if (converged) break;
  }
  return { tensions: seen.tensions, up: pose.turn[2]!, converged };
}
