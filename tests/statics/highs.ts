// HiGHS as an independent judge: the equations are written here anew, about the origin of the deck and in weights, and
// share nothing with src/statics.
import loadHighs, { type Model, type ModelData } from 'highs';
import type { Coulomb, Loading, RigidLoad } from '../../src/statics/rigid-load.js';
import type { Vec3 } from '../../src/statics/vector.js';

export const highs = await loadHighs();

/** A model that solves to tolerances of 1e-9 and says nothing. */
export function makeModel(data: ModelData): Model {
  const model = highs.createModel(data);
  model.options.set({
    output_flag: false,
    primal_feasibility_tolerance: 1e-9,
    dual_feasibility_tolerance: 1e-9,
    qp_iteration_limit: 500, // it may go round in circles
  });
  return model;
}

export type Judged = { readonly status: 'optimal'; readonly objective: number } | { readonly status: string };

const { modelStatus } = highs.constants;
let shared: Model | undefined;

export function judge(data: ModelData): Judged {
  shared ??= makeModel(data);
  shared.clearModel();
  shared.passModel(data);
  shared.run();
  const status = shared.getModelStatus();
  if (status === modelStatus.optimal) return { status: 'optimal', objective: shared.getObjectiveValue() };
  return { status: Object.entries(modelStatus).find(([, code]) => code === status)?.[0] ?? `${status}` };
}

/** A force along `direction` at `at`, per unit, as entries of the six equations about the origin of the deck. */
export function wrench(at: Vec3, direction: Vec3): number[] {
  const [x, y, z] = at;
  const [fx, fy, fz] = direction;
  return [fx, fy, fz, y * fz - z * fy, z * fx - x * fz, x * fy - y * fx];
}

export function unitPull(anchor: Vec3, attachment: Vec3): Vec3 {
  const [x, y, z] = [anchor[0] - attachment[0], anchor[1] - attachment[1], anchor[2] - attachment[2]];
  const length = Math.sqrt(x * x + y * y + z * z);
  return [x / length, y / length, z / length];
}

/** Dense columns to the sparse form of HiGHS. */
export function sparse(columns: readonly (readonly number[])[], numRows: number): ModelData['matrix'] {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const column of columns) {
    column.forEach((value, row) => {
      if (value === 0) return;
      indices.push(row);
      values.push(value);
    });
    starts.push(indices.length);
  }
  return { format: 'csc', numRows, numCols: columns.length, starts, indices, values };
}

/** The limit problem: corners of the friction pyramids, members, factor; factor is the last variable. */
export function limitModel(load: RigidLoad, loading: Loading, friction: 'none' | Coulomb, factor?: number): ModelData {
  const columns: number[][] = [];
  const upper: number[] = [];
  for (const contact of load.contacts) {
    const mu = friction === 'none' ? 0 : contact.friction * friction.multiplier;
    const sides = friction === 'none' || mu === 0 ? 1 : friction.coneSides;
    for (let side = 0; side < sides; side++) {
      const angle = (side / sides) * 2 * Math.PI;
      columns.push(wrench(contact.at, [mu * Math.cos(angle), mu * Math.sin(angle), 1]));
      upper.push(highs.infinity);
    }
  }
  for (const { anchor, attachment, capacity } of load.members) {
    columns.push(wrench(attachment, unitPull(anchor, attachment)));
    upper.push(capacity / load.weight);
  }
  columns.push(wrench(load.centerOfGravity, loading.varying));
  upper.push(factor ?? highs.infinity);
  const rows = wrench(load.centerOfGravity, loading.steady).map((value) => -value);
  return {
    numCols: columns.length,
    numRows: 6,
    sense: highs.constants.objectiveSense.maximize,
    colCost: columns.map((_, at) => (at === columns.length - 1 ? 1 : 0)),
    colLower: columns.map(() => 0),
    colUpper: upper,
    rowLower: rows,
    rowUpper: rows,
    matrix: sparse(columns, 6),
  };
}

/** What the limit problem answers, by HiGHS alone. */
export function judgeLimit(load: RigidLoad, loading: Loading, friction: 'none' | Coulomb): Judged {
  if (judge(limitModel(load, loading, friction, 0)).status !== 'optimal') return { status: 'impossible' };
  return judge(limitModel(load, loading, friction));
}
