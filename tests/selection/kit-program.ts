// The choice of a kit as an integer program, for HiGHS: an independent judge that shares nothing with src/selection.
//
// For each tie-down t:
//   y[t,i]    1 where its chain is item i (long enough)
//   x[t,k,i]  how many of its slots of kind k take item i
//   z[t,l]    1 where it is rated at level l, of the ratings that its parts can have
// subject to
//   sum_i y[t,i] = 1,  sum_l z[t,l] = 1
//   sum_i x[t,k,i] + sum_i (slots of kind k that chain i brings along) · y[t,i] = slots of kind k
//   sum of x[t,k,·] over fittings alike in what they go with <= slots of k · sum of y[t,·] over the chains they go with
//   a part rated below level l is taken only where the level is lower:  y[t,i] and x[t,k,i] against sum of z below
//   sum_t credit · level · z >= half the mass of each article
//   sum_t pieces of item i <= count of i;  price, mass, pieces, bought within their ceilings
import type { Model, ModelData } from 'highs';
import type { KitInput } from '../../src/index.js';
import { highs, makeModel } from '../statics/highs.js';
import { creditTwice, goesWith, numberOf, type Row, rowsOf, slotsOf, type Totals } from './random-kits.js';

/** A row of the program, as sparse entries. */
interface Constraint {
  readonly entries: Map<number, number>;
  readonly lower: number;
  readonly upper: number;
}

const { variableType } = highs.constants;

export function kitProgram(input: KitInput, goal: keyof Totals, ceilings: Partial<Totals> = {}): ModelData {
  const rows = rowsOf(input);
  const columns: { readonly upper: number; readonly of: Totals }[] = [];
  const constraints: Constraint[] = [];
  const nothing: Totals = { bought: 0, cents: 0, mass: 0, parts: 0 };
  const column = (upper: number, of: Totals = nothing) => columns.push({ upper, of }) - 1;
  const constrain = (entries: Iterable<readonly [number, number]>, lower: number, upper: number) => {
    constraints.push({ entries: new Map(entries), lower, upper });
  };
  const uses: Map<number, number>[] = rows.map(() => new Map());
  const sums = new Map<string, [number, number][]>(input.articles.map(({ id }) => [id, []]));

  for (const tieDown of input.tieDowns) {
    const { fittings = [], spares = [] } = tieDown;
    const anchor = Math.min(...tieDown.anchors.map(({ markedWll }) => numberOf(markedWll)));
    const chainPieces = 1 + spares.filter((kind) => kind === 'chain').length;
    const chains = rows.flatMap((row, index) => {
      const { kind, length } = row.item;
      if (kind !== 'chain' || numberOf(length) < numberOf(tieDown.chainLength)) return [];
      const at = column(1, times(row, chainPieces));
      uses[index]!.set(at, chainPieces);
      return [{ row, at }];
    });
    constrain(
      chains.map(({ at }) => [at, 1]),
      1,
      1,
    );
    const taken: { readonly at: number; readonly rating: number; readonly slots: number; readonly kind: string }[] =
      chains.map(({ row, at }) => ({ at, rating: row.rating, slots: 1, kind: 'chain' }));

    const kinds = [...new Set([...fittings, ...spares.filter((kind) => kind !== 'chain')])];
    for (const kind of kinds) {
      const slots = [...fittings, ...spares].filter((each) => each === kind).length;
      const candidates = rows.flatMap((row, index) => {
        if (row.item.kind !== kind) return [];
        const at = column(slots, times(row, 1));
        uses[index]!.set(at, 1);
        taken.push({ at, rating: row.rating, slots, kind });
        return [{ row, at }];
      });
      const brought = chains.map(({ row, at }) => {
        const left = slotsOf(tieDown, row.item).filter((each) => each === kind).length;
        return [at, slots - left] as const;
      });
      constrain([...candidates.map(({ at }) => [at, 1] as const), ...brought.filter(([, n]) => n > 0)], slots, slots);
      const alike = new Map<string, typeof candidates>();
      for (const each of candidates) {
        const key = `${each.row.item.size} ${each.row.item.chainSizes}`;
        alike.set(key, [...(alike.get(key) ?? []), each]);
      }
      for (const group of alike.values()) {
        const fit = chains.filter(({ row }) => goesWith(group[0]!.row.item, row.item));
        const entries = [...group.map(({ at }) => [at, 1] as const), ...fit.map(({ at }) => [at, -slots] as const)];
        constrain(entries, -highs.infinity, 0);
      }
    }

    const credit = creditTwice(tieDown);
    if (credit === 0) continue;
    const ratings = [...new Set([anchor, ...taken.map(({ rating }) => rating).filter((rating) => rating < anchor)])];
    const levels = ratings.sort((a, b) => a - b).map((rating) => ({ rating, at: column(1) }));
    constrain(
      levels.map(({ at }) => [at, 1]),
      1,
      1,
    );
    levels.forEach(({ rating }, level) => {
      for (const kind of ['chain', ...kinds]) {
        const weaker = taken.filter((each) => each.kind === kind && each.rating < rating);
        if (weaker.length === 0) continue;
        const below = levels.slice(0, level).map(({ at }) => [at, -weaker[0]!.slots] as const);
        constrain([...weaker.map(({ at }) => [at, 1] as const), ...below], -highs.infinity, 0);
      }
    });
    sums.get(tieDown.holds)!.push(...levels.map(({ rating, at }) => [at, credit * rating] as [number, number]));
  }

  for (const { id, mass } of input.articles) constrain(sums.get(id)!, numberOf(mass), highs.infinity);
  rows.forEach(({ item }, index) => {
    if (item.count !== undefined) constrain(uses[index]!, -highs.infinity, item.count);
  });
  const { limits = {} } = input;
  const most: Partial<Totals> = {
    ...(limits.price !== undefined && { cents: limits.price * 100 }),
    ...(limits.mass !== undefined && { mass: numberOf(limits.mass) }),
    ...(limits.parts !== undefined && { parts: limits.parts }),
    ...ceilings,
  };
  for (const key of Object.keys(most) as (keyof Totals)[]) {
    constrain(
      columns.map(({ of }, at) => [at, of[key]] as const).filter(([, value]) => value !== 0),
      -highs.infinity,
      most[key]!,
    );
  }
  return {
    numCols: columns.length,
    numRows: constraints.length,
    sense: highs.constants.objectiveSense.minimize,
    colCost: columns.map(({ of }) => of[goal]),
    colLower: columns.map(() => 0),
    colUpper: columns.map(({ upper }) => upper),
    rowLower: constraints.map(({ lower }) => lower),
    rowUpper: constraints.map(({ upper }) => upper),
    integrality: columns.map(() => variableType.integer),
    matrix: byColumns(columns.length, constraints),
  };
}

function times(row: Row, pieces: number): Totals {
  return {
    bought: row.bought ? pieces : 0,
    cents: pieces * row.cents,
    mass: pieces * row.mass,
    parts: pieces,
  };
}

function byColumns(numCols: number, constraints: readonly Constraint[]): ModelData['matrix'] {
  const columns: [number, number][][] = Array.from({ length: numCols }, () => []);
  constraints.forEach(({ entries }, row) => {
    for (const [column, value] of entries) columns[column]!.push([row, value]);
  });
  const starts = [0];
  for (const column of columns) starts.push(starts.at(-1)! + column.length);
  const entries = columns.flat();
  return {
    format: 'csc',
    numRows: constraints.length,
    numCols,
    starts,
    indices: entries.map(([row]) => row),
    values: entries.map(([, value]) => value),
  };
}

/** HiGHS told to prove the optimum itself, not one within a ten-thousandth of it. */
export function makeKitModel(program: ModelData): Model {
  const model = makeModel(program);
  model.options.set({ mip_rel_gap: 0, mip_abs_gap: 1e-6 });
  return model;
}

/** The least of the goal, rounded to the whole number that it is; null where there is no kit. */
export function solveProgram(model: Model): number | null {
  model.run();
  const status = model.getModelStatus();
  const { modelStatus } = highs.constants;
  if (status === modelStatus.optimal) return Math.round(model.getObjectiveValue());
  if (status === modelStatus.infeasible || status === modelStatus.unboundedOrInfeasible) return null;
  throw new Error(`HiGHS stopped with status ${status}`);
}
