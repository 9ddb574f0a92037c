// The load with dry friction as a thing that creeps: each small step of the load is taken up by viscous dampers, and the
// load creeps until it is still. Springs, gaps and sliders are evaluated anew at every instant; friction has its circle,
// and slides by what the step moves it. No events, no matrices of states: another method and other code.
import type { ElasticLoad } from '../../src/statics/elastic/elastic-model.js';
import type { Loading } from '../../src/statics/rigid-load.js';

export interface Creep {
  /** How much stiffer than the stiffest member a rigid contact and sticking friction are: creeping takes as many instants. */
  readonly rigid: number;
  readonly steps: number;
}

/** Tensions at a factor, in newtons, or undefined where the load does not come to a stand. */
export function creepTo(
  load: ElasticLoad,
  loading: Loading,
  factor: number,
  { rigid, steps }: Creep,
): number[] | undefined {
  const k0 = Math.max(load.weight, ...load.members.map(({ stiffness }) => stiffness));
  const kc = rigid * k0;
  const g = load.centerOfGravity;
  const arm = (at: readonly number[]) => [at[0]! - g[0], at[1]! - g[1], at[2]! - g[2]] as const;
  const moment = (r: readonly number[], f: readonly number[]) => [
    r[1]! * f[2]! - r[2]! * f[1]!,
    r[2]! * f[0]! - r[0]! * f[2]!,
    r[0]! * f[1]! - r[1]! * f[0]!,
  ];
  const members = load.members.map((one) => {
    const line = one.anchor.map((value, axis) => value - one.attachment[axis]!);
    const length = Math.hypot(...line);
    const pull = line.map((value) => value / length);
    return { ...one, wrench: [...pull, ...moment(arm(one.attachment), pull)] };
  });
  const contacts = load.contacts.map((one) => ({
    ...one,
    k: one.stiffness ?? kc,
    axes: [0, 1, 2].map((axis) => {
      const unit = [0, 1, 2].map((other) => (other === axis ? 1 : 0));
      return [...unit, ...moment(arm(one.at), unit)];
    }),
  }));
  const along = (wrench: readonly number[], q: readonly number[]) =>
    wrench.reduce((sum, part, at) => sum + part * q[at]!, 0);

  // the damper: the stiffness of everything stuck, which no state exceeds, so that creeping never overshoots
  const damper = Array.from({ length: 6 }, () => new Array<number>(6).fill(0));
  const dampen = (wrench: readonly number[], k: number) => {
    for (let i = 0; i < 6; i++) for (let j = 0; j < 6; j++) damper[i]![j]! += k * wrench[i]! * wrench[j]!;
  };
  for (const { wrench, stiffness } of members) dampen(wrench, stiffness);
  for (const { axes, k } of contacts) axes.forEach((axis, at) => void dampen(axis, at === 2 ? k : kc));
  const mobility = inverse(damper);

  const q = new Array<number>(6).fill(0);
  const shears = contacts.map(() => [0, 0]);
  const force = (applied: readonly number[], pretension: number, from: readonly number[]) => {
    const left = [...applied];
    const add = (wrench: readonly number[], by: number) => {
      for (let i = 0; i < 6; i++) left[i]! += by * wrench[i]!;
    };
    const tensions = members.map((one) => {
      const tension = Math.max(0, (one.pretension ?? 0) * pretension - one.stiffness * along(one.wrench, q));
      add(one.wrench, tension);
      return tension;
    });
    const friction = contacts.map(({ axes, k, friction: mu }, index) => {
      const normal = Math.max(0, -k * along(axes[2]!, q));
      const trial = [0, 1].map(
        (axis) => shears[index]![axis]! - kc * (along(axes[axis]!, q) - along(axes[axis]!, from)),
      );
      const size = Math.hypot(...trial);
      const part = size > mu * normal ? (mu * normal) / size : 1;
      add(axes[2]!, normal);
      const held = trial.map((value) => value * part);
      held.forEach((value, axis) => void add(axes[axis]!, value));
      return held;
    });
    return { left, tensions, friction };
  };

  const stages = [
    ...Array.from({ length: 10 }, (_, step) => ({ steady: (step + 1) / 10, varying: 0 })),
    ...Array.from({ length: steps }, (_, step) => ({ steady: 1, varying: ((step + 1) / steps) * factor })),
  ];
  let tensions: number[] = [];
  for (const { steady, varying } of stages) {
    const applied = [0, 1, 2].map(
      (axis) => load.weight * (steady * loading.steady[axis]! + varying * loading.varying[axis]!),
    );
    const from = [...q];
    let still = false;
    for (let instant = 0; instant < 400 * rigid && !still; instant++) {
      const now = force([...applied, 0, 0, 0], steady, from);
      const flow = mobility.map((row) => along(row, now.left));
      for (let i = 0; i < 6; i++) q[i]! += flow[i]!;
      still = Math.max(...now.left.map(Math.abs)) < 1e-5 * load.weight;
      if (Math.max(...q.map(Math.abs)) > 1) return undefined;
      if (still) {
        tensions = now.tensions;
        now.friction.forEach((held, index) => {
          shears[index] = held;
        });
      }
    }
    if (!still) return undefined;
  }
  return tensions;
}

function inverse(matrix: readonly (readonly number[])[]): number[][] {
  const n = matrix.length;
  const work = matrix.map((row, at) => [...row, ...Array.from({ length: n }, (_, column) => (column === at ? 1 : 0))]);
  for (let at = 0; at < n; at++) {
    const best = work
      .slice(at)
      .reduce((most, row, index) => (Math.abs(row[at]!) > Math.abs(work[most]![at]!) ? at + index : most), at);
    [work[at], work[best]] = [work[best]!, work[at]!];
    const pivot = work[at]![at]!;
    work[at] = work[at]!.map((value) => value / pivot);
    for (let row = 0; row < n; row++) {
      if (row === at) continue;
      const times = work[row]![at]!;
      work[row] = work[row]!.map((value, column) => value - times * work[at]![column]!);
    }
  }
  return work.map((row) => row.slice(n));
}
