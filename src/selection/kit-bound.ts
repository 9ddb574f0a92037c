import { type Bounded, type Choice, CLEAR_GAP, least, most } from './search-problem.js';

/** What no combination can be better than. */
export interface Bounds {
  /** No combination costs less than this. */
  readonly bound: number;
  /** By group: by how much the cost must be above the bound where a choice is made, in the order of its choices. */
  readonly excesses: readonly (readonly number[])[];
  /** What rounding may have cost the bound. */
  readonly rounding: number;
  /** By group: how much of each choice, where choices may be mixed. */
  readonly mix: readonly (readonly number[])[];
}

/** A limited sum with the least that it can be: what the choices may take beyond that. */
export interface Side {
  readonly excesses: readonly (readonly number[])[];
  readonly room: number;
}

/** The bound of the multipliers: a Lagrangian bound, which holds for any that are not negative. */
export function boundsOf(problem: Bounded): Bounds {
  const { groups, required, pieces, limits } = problem;
  const { multipliers, mix } = mixChoices(problem);
  let bound = 0;
  let size = 0;
  const add = (term: number) => {
    bound += term;
    size += Math.abs(term);
  };
  required.forEach((each, sum) => {
    add((multipliers.sums[sum] as number) * each);
  });
  pieces.forEach((count, thing) => {
    add(-(multipliers.pieces[thing] as number) * count);
  });
  limits.forEach((limit, at) => {
    add(-(multipliers.limits[at] as number) * limit);
  });
  const excesses = groups.map(({ places, choices, sum }) => {
    const reduced = choices.map((choice) => reducedCost(choice, sum, multipliers));
    const lowest = least(reduced);
    add(places * lowest);
    return reduced.map((each) => each - lowest);
  });
  return { bound, excesses, rounding: 1e-13 * size, mix };
}

/** True where the bound is above what any combination costs: nothing will do. */
export function isBeyondAll({ bound, rounding }: Bounds, { groups }: Bounded): boolean {
  const greatest = groups.reduce((sum, { places, choices }) => sum + places * most(choices.map(({ cost }) => cost)), 0);
  return bound > greatest + rounding + 1e-9 * Math.abs(greatest);
}

/** Each limit as a cost of its own, under the other constraints. */
export function sidesOf(problem: Bounded): Side[] {
  const { groups, limits } = problem;
  return limits.map((limit, own) => {
    const others = {
      ...problem,
      limits: limits.filter((_, at) => at !== own),
      groups: groups.map((group) => ({
        ...group,
        choices: group.choices.map((choice) => ({
          ...choice,
          cost: choice.takes[own] as number,
          takes: choice.takes.filter((_, at) => at !== own),
        })),
      })),
    };
    const { bound, excesses, rounding } = boundsOf(others);
    return { excesses, room: limit - bound + rounding + CLEAR_GAP * Math.abs(limit) };
  });
}

/** What a constraint is worth: the least cost falls by so much for each unit that it asks less, or leaves more. */
interface Multipliers {
  readonly sums: readonly number[];
  readonly pieces: readonly number[];
  readonly limits: readonly number[];
}

/** Reduced costs below this are none; the program is scaled to costs and entries of about 1. */
const COST_TOLERANCE = 1e-9;
const PIVOT_TOLERANCE = 1e-9;
const STEPS_BEFORE_BLAND = 60;
/** Stands against what is still missing: beyond any price that a constraint can have in a scaled program. */
const PENALTY = 1e4;

/** The optimum of a problem whose choices may be mixed. */
interface Mixed {
  readonly multipliers: Multipliers;
  /** By group: how much of each choice. */
  readonly mix: readonly (readonly number[])[];
}

/**
 * A search problem whose choices may be mixed: its linear program with the dual,
 *
 *     minimize sum(cost · x)   subject to   sum(x) = places of each group,   x >= 0
 *     sum(adds · x) >= required,   sum(uses · x) <= pieces,   sum(takes · x) <= limits
 *
 * by the primal simplex method with an explicit inverse of the basis (Chvatal, Linear Programming, 1983, chapter 7; from
 * memory). A bound that is made of them holds whatever they are: rounding, or an end before the optimum, weakens it only.
 */
function mixChoices(problem: Bounded): Mixed {
  const { groups, required, pieces, limits } = problem;
  const program = new Program(problem);
  program.solve();
  const prices = program.prices();
  const from = groups.length;
  const atPieces = from + required.length;
  const atLimits = atPieces + pieces.length;
  const { costScale, rowScale } = program;
  const priceAt = (row: number, sign: number) =>
    Math.max(0, (sign * (prices[row] as number) * costScale) / (rowScale[row] as number));
  const multipliers = {
    sums: required.map((_, sum) => priceAt(from + sum, 1)),
    pieces: pieces.map((_, thing) => priceAt(atPieces + thing, -1)),
    limits: limits.map((_, limit) => priceAt(atLimits + limit, -1)),
  };
  let column = 0;
  const amounts = program.mix();
  const mix = groups.map(({ choices }) => choices.map(() => amounts[column++] as number));
  return { multipliers, mix };
}

class Program {
  readonly costScale: number;
  readonly rowScale: Float64Array;
  private readonly size: number;
  private readonly rows: Int32Array;
  private readonly values: Float64Array;
  private readonly starts: Int32Array;
  private readonly costs: Float64Array;
  private readonly basis: Int32Array;
  private readonly inBasis: Uint8Array;
  private readonly inverse: Float64Array;
  private readonly amounts: Float64Array;

  constructor({ groups, required, pieces, limits }: Bounded) {
    const sums = groups.length;
    const things = sums + required.length;
    const caps = things + pieces.length;
    const size = caps + limits.length;
    this.size = size;
    this.rowScale = new Float64Array(size).fill(1);
    required.forEach((each, sum) => {
      if (each > 0) this.rowScale[sums + sum] = each;
    });
    limits.forEach((each, limit) => {
      if (each > 0) this.rowScale[caps + limit] = each;
    });
    let greatest = 0;
    for (const { choices } of groups) for (const { cost } of choices) greatest = Math.max(greatest, Math.abs(cost));
    this.costScale = greatest === 0 ? 1 : greatest;

    const rows: number[] = [];
    const values: number[] = [];
    const starts = [0];
    const costs: number[] = [];
    const enter = (row: number, value: number) => {
      if (value === 0) return;
      rows.push(row);
      values.push(value / (this.rowScale[row] as number));
    };
    const close = (cost: number) => {
      costs.push(cost);
      starts.push(rows.length);
    };
    groups.forEach(({ choices, sum }, group) => {
      for (const { cost, adds, takes, uses } of choices) {
        enter(group, 1);
        if (sum !== undefined) enter(sums + sum, adds);
        for (const thing of uses) enter(things + thing, 1); // entries of one row add up
        takes.forEach((amount, limit) => {
          enter(caps + limit, amount);
        });
        close(cost / this.costScale);
      }
    });
    // what is beyond a sum, and what is left of pieces and limits
    for (let row = sums; row < size; row++) {
      rows.push(row);
      values.push(row < things ? -1 : 1);
      close(0);
    }
    const slack = costs.length - size; // column of the slack of a row, from the first sum on
    // what is missing of groups and sums
    const missing = costs.length;
    for (let row = 0; row < things; row++) {
      rows.push(row);
      values.push(1);
      close(PENALTY);
    }
    this.rows = Int32Array.from(rows);
    this.values = Float64Array.from(values);
    this.starts = Int32Array.from(starts);
    this.costs = Float64Array.from(costs);
    this.basis = new Int32Array(size);
    this.inBasis = new Uint8Array(costs.length);
    this.inverse = new Float64Array(size * size);
    this.amounts = new Float64Array(size);
    const right = [...groups.map(({ places }) => places), ...required, ...pieces, ...limits];
    for (let row = 0; row < size; row++) {
      const column = row < things ? missing + row : slack + row;
      this.basis[row] = column;
      this.inBasis[column] = 1;
      this.inverse[row * size + row] = 1;
      this.amounts[row] = (right[row] as number) / (this.rowScale[row] as number);
    }
  }

  solve(): void {
    const { size, basis, inBasis, inverse, amounts, rows, values, starts, costs } = this;
    const change = new Float64Array(size);
    let stalled = 0;
    for (let step = 0; step < 40 * size + 400; step++) {
      const prices = this.prices();
      const bland = stalled > STEPS_BEFORE_BLAND;
      let entering = -1;
      let lowest = -COST_TOLERANCE;
      for (let column = 0; column < costs.length; column++) {
        if (inBasis[column] === 1) continue;
        let reduced = costs[column] as number;
        for (let at = starts[column] as number; at < (starts[column + 1] as number); at++) {
          reduced -= (prices[rows[at] as number] as number) * (values[at] as number);
        }
        if (reduced < lowest) {
          entering = column;
          if (bland) break;
          lowest = reduced;
        }
      }
      if (entering < 0) return;
      for (let row = 0; row < size; row++) {
        let sum = 0;
        for (let at = starts[entering] as number; at < (starts[entering + 1] as number); at++) {
          sum += (inverse[row * size + (rows[at] as number)] as number) * (values[at] as number);
        }
        change[row] = sum;
      }
      let leaving = -1;
      let furthest = Number.POSITIVE_INFINITY;
      for (let row = 0; row < size; row++) {
        if ((change[row] as number) <= PIVOT_TOLERANCE) continue;
        const reach = Math.max(0, amounts[row] as number) / (change[row] as number);
        const tied = leaving >= 0 && reach === furthest;
        const prefer = bland
          ? (basis[row] as number) < (basis[leaving] as number)
          : (change[row] as number) > (change[leaving] as number);
        if (reach < furthest || (tied && prefer)) {
          furthest = reach;
          leaving = row;
        }
      }
      if (leaving < 0) return; // cannot be: places of a group bound its choices
      stalled = furthest > 1e-12 ? 0 : stalled + 1;
      this.exchange(leaving, entering, change, furthest);
    }
  }

  /** What one unit of each row's right-hand side is worth. */
  prices(): Float64Array {
    const { size, basis, costs, inverse } = this;
    const prices = new Float64Array(size);
    for (let row = 0; row < size; row++) {
      const cost = costs[basis[row] as number] as number;
      if (cost === 0) continue;
      for (let at = 0; at < size; at++)
        prices[at] = (prices[at] as number) + cost * (inverse[row * size + at] as number);
    }
    return prices;
  }

  /** The amount of every column. */
  mix(): Float64Array {
    const amounts = new Float64Array(this.costs.length);
    this.basis.forEach((column, row) => {
      amounts[column] = this.amounts[row] as number;
    });
    return amounts;
  }

  private exchange(leaving: number, entering: number, change: Float64Array, furthest: number): void {
    const { size, basis, inBasis, inverse, amounts } = this;
    for (let row = 0; row < size; row++) {
      amounts[row] = (amounts[row] as number) - furthest * (change[row] as number);
    }
    amounts[leaving] = furthest;
    inBasis[basis[leaving] as number] = 0;
    inBasis[entering] = 1;
    basis[leaving] = entering;
    const by = 1 / (change[leaving] as number);
    const own = leaving * size;
    for (let at = 0; at < size; at++) inverse[own + at] = (inverse[own + at] as number) * by;
    for (let row = 0; row < size; row++) {
      const times = change[row] as number;
      if (row === leaving || times === 0) continue;
      for (let at = 0; at < size; at++) {
        inverse[row * size + at] = (inverse[row * size + at] as number) - times * (inverse[own + at] as number);
      }
    }
  }
}

/** The cost of a choice after the multipliers of what it adds to, uses and takes. */
function reducedCost({ cost, adds, takes, uses }: Choice, sum: number | undefined, by: Multipliers): number {
  let reduced = sum === undefined ? cost : cost - (by.sums[sum] as number) * adds;
  for (const thing of uses) reduced += by.pieces[thing] as number;
  for (let at = 0; at < takes.length; at++) reduced += (by.limits[at] as number) * (takes[at] as number);
  return reduced;
}
