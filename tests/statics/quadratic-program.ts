// The elastic problem without sliding as a convex quadratic program in the forces (complementary energy; Castigliano):
//   minimize sum (T - pretension)^2 / (2 k) + sum N^2 / (2 k) + sum t^2 / (2 k)   subject to balance, T >= 0, N >= 0
import type { ModelData } from 'highs';
import type { ElasticLoad } from '../../src/statics/elastic/elastic-model.js';
import type { Loading } from '../../src/statics/rigid-load.js';
import { highs, sparse, unitPull, wrench } from './highs.js';

/** As the documentation has it: a rigid contact is a million times as stiff as anything else. */
function rigidStiffness(load: ElasticLoad): number {
  const reach = Math.max(
    ...[...load.contacts.map(({ at }) => at), ...load.members.map(({ attachment }) => attachment)].map((at) =>
      Math.hypot(...at.map((value, axis) => value - load.centerOfGravity[axis]!)),
    ),
  );
  const given = [...load.members, ...load.contacts].map((one) => one.stiffness ?? 0);
  return 1e6 * Math.max(load.weight / reach, ...given);
}

/** Forces in weights: members, then normal forces, then with sticking contacts their friction along x and y. */
export function elasticProgram(
  load: ElasticLoad,
  { steady, varying }: Loading,
  factor: number,
  friction: 'none' | 'sticking',
): ModelData {
  const rigid = rigidStiffness(load);
  const columns: number[][] = [];
  const compliances: number[] = [];
  const costs: number[] = [];
  const lower: number[] = [];
  // energy in units of W^2 / (a typical stiffness), so that HiGHS sees numbers of about 1
  const unit = Math.max(1, ...load.members.map(({ stiffness }) => stiffness));
  const put = (column: number[], stiffness: number, pretension: number, least: number) => {
    columns.push(column);
    compliances.push(unit / stiffness);
    costs.push((-pretension / load.weight) * (unit / stiffness));
    lower.push(least);
  };
  for (const { anchor, attachment, stiffness, pretension = 0 } of load.members) {
    put(wrench(attachment, unitPull(anchor, attachment)), stiffness, pretension, 0);
  }
  for (const { at, stiffness } of load.contacts) put(wrench(at, [0, 0, 1]), stiffness ?? rigid, 0, 0);
  if (friction === 'sticking') {
    for (const { at } of load.contacts) {
      put(wrench(at, [1, 0, 0]), rigid, 0, -highs.infinity);
      put(wrench(at, [0, 1, 0]), rigid, 0, -highs.infinity);
    }
  }
  const acceleration = steady.map((part, axis) => part + factor * varying[axis]!) as unknown as Loading['steady'];
  const rows = wrench(load.centerOfGravity, acceleration).map((value) => -value);
  return {
    numCols: columns.length,
    numRows: 6,
    colCost: costs,
    colLower: lower,
    colUpper: columns.map(() => highs.infinity),
    rowLower: rows,
    rowUpper: rows,
    matrix: sparse(columns, 6),
    hessian: {
      format: 'triangular',
      dimension: columns.length,
      starts: Array.from({ length: columns.length + 1 }, (_, at) => at),
      indices: columns.map((_, at) => at),
      values: compliances,
    },
  };
}

/** The objective of the program at given forces, in its unit. */
export function energyOf(data: ModelData, forces: readonly number[]): number {
  const { values } = data.hessian!;
  return forces.reduce((sum, force, at) => sum + (values[at]! * force * force) / 2 + data.colCost[at]! * force, 0);
}
