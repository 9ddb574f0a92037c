import { ROWS } from '../rigid-load.js';
/**
 * A linear program with six equations, for the balance of one rigid body:
 *
 *     maximize x[goal]   subject to   A x = rhs,   0 <= x[j] <= upper[j]
 *
 * solved by the primal simplex method for bounded variables in two phases, with an explicit inverse of the 6 by 6 basis
 * (Dantzig 1963; Chvatal, Linear Programming, 1983, chapters 7 and 8; from memory). Cycling is ended by Bland's rule.
 * Small and dense on purpose: with six rows the bookkeeping of a general solver costs more than the arithmetic.
 */
export interface Program {
  /** A by columns: entry i of column j at [6 j + i]. Entries of about 1, so that one tolerance fits all. */
  readonly columns: Float64Array;
  /** Infinity for a variable without an upper bound. */
  readonly upper: Float64Array;
  readonly rhs: Float64Array;
}

/** A basic solution: which variables are basic, and where the others rest. */
export interface Basis {
  /** The basic variable of each row. `count + i` is the artificial variable of row i, count being the variables. */
  readonly variables: Int32Array;
  /** Row of a variable in the basis, else `AT_LOWER` or `AT_UPPER`; artificial variables come last. */
  readonly place: Int8Array;
  /** Inverse of the basis matrix, by rows. */
  readonly inverse: Float64Array;
  /** Values of the basic variables. */
  readonly values: Float64Array;
  /** +1 or -1 on the diagonal of the artificial columns. */
  readonly signs: Float64Array;
}

export const AT_LOWER = -1;
const AT_UPPER = -2;

/** Reduced costs below this are none; columns have entries of about 1. */
const COST_TOLERANCE = 1e-10;
/** A smaller entry is no pivot. */
const PIVOT_TOLERANCE = 1e-9;
/** By how much a basic variable may pass its bound for the sake of a larger pivot. */
const BOUND_TOLERANCE = 1e-12;
/** What may be left of the artificial variables in a balance, in units of the right-hand side. */
const BALANCE_TOLERANCE = 1e-11;
/** Values that miss the equations by more have gathered too much rounding. */
const DRIFT = 1e-11;
const STEPS_BEFORE_BLAND = 40;
const STEPS_BETWEEN_INVERSIONS = 25;
const MOST_STEPS = 3000;

export type SimplexEnd = 'optimal' | 'unbounded' | 'infeasible' | 'not-solved';

/** All variables at zero and one artificial variable in each row, which takes up the right-hand side. */
export function artificialBasis({ columns, rhs }: Program): Basis {
  const count = columns.length / ROWS;
  const place = new Int8Array(count + ROWS).fill(AT_LOWER);
  const variables = new Int32Array(ROWS);
  const inverse = new Float64Array(ROWS * ROWS);
  const values = new Float64Array(ROWS);
  const signs = new Float64Array(ROWS);
  for (let row = 0; row < ROWS; row++) {
    variables[row] = count + row;
    place[count + row] = row;
    signs[row] = rhs[row]! < 0 ? -1 : 1;
    inverse[row * ROWS + row] = signs[row]!;
    values[row] = Math.abs(rhs[row]!);
  }
  return { variables, place, inverse, values, signs };
}

export const copyBasis = ({ variables, place, inverse, values, signs }: Basis): Basis => ({
  variables: variables.slice(),
  place: place.slice(),
  inverse: inverse.slice(),
  values: values.slice(),
  signs,
});

/**
 * Phase one: moves the basis to one that balances the right-hand side, with variable `fixed` kept at zero. Variables
 * before `preferredEnd` come first; the others enter only when those do not suffice.
 */
export function findBalance(program: Program, basis: Basis, fixed: number, preferredEnd: number): SimplexEnd {
  const end = run(program, basis, { goal: -1, fixed, preferredEnd });
  if (end !== 'optimal') return 'not-solved';
  return artificialSum(program, basis) <= BALANCE_TOLERANCE ? 'optimal' : 'infeasible';
}

/** Phase two: from a balance to the greatest value of variable `goal`. */
export function maximize(program: Program, basis: Basis, goal: number): SimplexEnd {
  return run(program, basis, { goal, fixed: -1, preferredEnd: 0 });
}

/** The amount of a variable at a basis, inside its bounds. */
export function amountOf({ upper }: Program, { place, values }: Basis, variable: number): number {
  const at = place[variable]!;
  if (at === AT_LOWER) return 0;
  return at === AT_UPPER ? upper[variable]! : Math.min(Math.max(values[at]!, 0), upper[variable]!);
}

interface Task {
  /** The variable to maximize; -1 in phase one, where the artificial variables are driven out. */
  readonly goal: number;
  readonly fixed: number;
  readonly preferredEnd: number;
}

function run(program: Program, basis: Basis, task: Task): SimplexEnd {
  const prices = new Float64Array(ROWS);
  const change = new Float64Array(ROWS);
  const reaches = new Float64Array(ROWS);
  let stalled = 0;
  let sinceInversion = 0;
  for (let step = 0; step < MOST_STEPS; step++) {
    if (sinceInversion >= STEPS_BETWEEN_INVERSIONS) {
      if (!invert(program, basis)) return 'not-solved';
      sinceInversion = 0;
    }
    const bland = stalled > STEPS_BEFORE_BLAND;
    priceRows(program, basis, task, prices);
    const entering = chooseEntering(program, basis, task, prices, bland);
    if (entering < 0) {
      // what rounding has gathered must not decide: where it shows, take the inverse anew and look once more
      if (sinceInversion === 0 || correct(program, basis) < DRIFT) return 'optimal';
      if (!invert(program, basis)) return 'not-solved';
      sinceInversion = 0;
      continue;
    }
    const moved = advance(program, basis, task, entering, change, reaches, bland);
    if (moved === Number.POSITIVE_INFINITY) {
      if (sinceInversion === 0) return 'unbounded';
      if (!invert(program, basis)) return 'not-solved';
      sinceInversion = 0;
      continue;
    }
    stalled = moved > BOUND_TOLERANCE ? 0 : stalled + 1;
    sinceInversion++;
  }
  return 'not-solved';
}

/** y = c_B B^-1: what one unit of each equation's right-hand side is worth. */
function priceRows({ columns }: Program, { variables, inverse }: Basis, { goal }: Task, prices: Float64Array): void {
  const count = columns.length / ROWS;
  prices.fill(0);
  for (let row = 0; row < ROWS; row++) {
    const variable = variables[row]!;
    const cost = goal < 0 ? (variable >= count ? -1 : 0) : variable === goal ? 1 : 0;
    if (cost !== 0) for (let i = 0; i < ROWS; i++) prices[i]! += cost * inverse[row * ROWS + i]!;
  }
}

/** The variable whose change helps most (Dantzig), or the first that helps (Bland); -1 when none does. */
function chooseEntering(program: Program, basis: Basis, task: Task, prices: Float64Array, bland: boolean): number {
  const { goal, preferredEnd } = task;
  const count = program.columns.length / ROWS;
  if (goal >= 0 && basis.place[goal]! < 0) return goal;
  const preferred = bestOf(program, basis, task, prices, bland, 0, preferredEnd);
  return preferred >= 0 ? preferred : bestOf(program, basis, task, prices, bland, preferredEnd, count);
}

function bestOf(
  { columns, upper }: Program,
  { place }: Basis,
  { fixed }: Task,
  prices: Float64Array,
  bland: boolean,
  from: number,
  to: number,
): number {
  const [y0, y1, y2, y3, y4, y5] = prices as unknown as [number, number, number, number, number, number];
  let best = -1;
  let greatest = COST_TOLERANCE;
  for (let j = from; j < to; j++) {
    const at = place[j]!;
    if (at >= 0 || j === fixed || upper[j] === 0) continue;
    const k = j * ROWS;
    const worth =
      y0 * columns[k]! +
      y1 * columns[k + 1]! +
      y2 * columns[k + 2]! +
      y3 * columns[k + 3]! +
      y4 * columns[k + 4]! +
      y5 * columns[k + 5]!;
    // the reduced cost is -worth: a variable at its lower bound may rise, one at its upper bound may fall
    const gain = at === AT_LOWER ? -worth : worth;
    if (gain > greatest) {
      if (bland) return j;
      greatest = gain;
      best = j;
    }
  }
  return best;
}

/** Moves the entering variable until something stops it, and pivots. Returns how far; Infinity when nothing stops it. */
function advance(
  program: Program,
  basis: Basis,
  task: Task,
  entering: number,
  change: Float64Array,
  reaches: Float64Array,
  bland: boolean,
): number {
  const { columns, upper } = program;
  const { variables, place, inverse, values } = basis;
  const direction = place[entering] === AT_UPPER ? -1 : 1;
  const k = entering * ROWS;
  for (let row = 0; row < ROWS; row++) {
    const r = row * ROWS;
    let sum = 0;
    for (let i = 0; i < ROWS; i++) sum += inverse[r + i]! * columns[k + i]!;
    change[row] = sum;
  }

  // Harris: first how far if every bound may be passed by a hair, then the largest pivot within that
  const allowance = bland ? 0 : BOUND_TOLERANCE;
  let furthest = upper[entering]!;
  for (let row = 0; row < ROWS; row++) {
    const rate = -direction * change[row]!;
    if (Math.abs(rate) <= PIVOT_TOLERANCE) {
      reaches[row] = Number.POSITIVE_INFINITY;
      continue;
    }
    const slack = rate < 0 ? values[row]! : upperOf(program, task, variables[row]!) - values[row]!;
    reaches[row] = Math.max(slack, 0) / Math.abs(rate);
    furthest = Math.min(furthest, reaches[row]! + allowance / Math.abs(rate));
  }
  if (furthest === Number.POSITIVE_INFINITY) return furthest;
  let leaving = -1;
  for (let row = 0; row < ROWS; row++) {
    if (reaches[row]! > furthest) continue;
    const better =
      leaving < 0 ||
      (bland ? variables[row]! < variables[leaving]! : Math.abs(change[row]!) > Math.abs(change[leaving]!));
    if (better) leaving = row;
  }
  let distance = leaving < 0 ? upper[entering]! : reaches[leaving]!;
  if (leaving >= 0 && upper[entering]! < distance) {
    leaving = -1;
    distance = upper[entering]!;
  }

  for (let row = 0; row < ROWS; row++) values[row]! -= direction * distance * change[row]!;
  if (leaving < 0) {
    place[entering] = direction > 0 ? AT_UPPER : AT_LOWER; // it went from bound to bound
    return distance;
  }
  const left = variables[leaving]!;
  place[left] = -direction * change[leaving]! < 0 ? AT_LOWER : AT_UPPER;
  if (upperOf(program, task, left) === 0) place[left] = AT_LOWER;
  variables[leaving] = entering;
  place[entering] = leaving;
  values[leaving] = direction > 0 ? distance : upper[entering]! - distance;
  pivot(inverse, leaving, change);
  return distance;
}

/** In phase two an artificial variable may not come back. */
function upperOf({ columns, upper }: Program, { goal }: Task, variable: number): number {
  if (variable < columns.length / ROWS) return upper[variable]!;
  return goal < 0 ? Number.POSITIVE_INFINITY : 0;
}

/** The inverse after the column of row `leaving` was replaced by one whose image under the old inverse is `change`. */
function pivot(inverse: Float64Array, leaving: number, change: Float64Array): void {
  const l = leaving * ROWS;
  const by = 1 / change[leaving]!;
  for (let i = 0; i < ROWS; i++) inverse[l + i]! *= by;
  for (let row = 0; row < ROWS; row++) {
    const times = change[row]!;
    if (row === leaving || times === 0) continue;
    const r = row * ROWS;
    for (let i = 0; i < ROWS; i++) inverse[r + i]! -= times * inverse[l + i]!;
  }
}

/** Takes inverse and values anew from the columns (Gauss and Jordan, row pivoting); false when the basis is singular. */
function invert(program: Program, basis: Basis): boolean {
  const { columns } = program;
  const { variables, inverse, values, signs } = basis;
  const count = columns.length / ROWS;
  const width = 2 * ROWS;
  const work = new Float64Array(ROWS * width);
  for (let row = 0; row < ROWS; row++) {
    work[row * width + ROWS + row] = 1;
    for (let at = 0; at < ROWS; at++) work[row * width + at] = entryOf(columns, signs, variables[at]!, row, count);
  }
  for (let at = 0; at < ROWS; at++) {
    let from = at;
    for (let row = at + 1; row < ROWS; row++) {
      if (Math.abs(work[row * width + at]!) > Math.abs(work[from * width + at]!)) from = row;
    }
    const lead = work[from * width + at]!;
    if (!(Math.abs(lead) > 1e-13)) return false;
    for (let i = 0; i < width; i++) {
      const moved = work[from * width + i]! / lead;
      work[from * width + i] = work[at * width + i]!;
      work[at * width + i] = moved;
    }
    for (let row = 0; row < ROWS; row++) {
      const times = work[row * width + at]!;
      if (row === at || times === 0) continue;
      for (let i = at; i < width; i++) work[row * width + i]! -= times * work[at * width + i]!;
    }
  }
  for (let row = 0; row < ROWS; row++) {
    for (let i = 0; i < ROWS; i++) inverse[row * ROWS + i] = work[row * width + ROWS + i]!;
  }

  values.fill(0);
  correct(program, basis);
  correct(program, basis); // the second round corrects the first by what it leaves over
  return true;
}

/** Corrects the values of the basic variables by what they leave over of the equations; returns the most that was left. */
function correct(program: Program, { variables, place, inverse, values, signs }: Basis): number {
  const { columns, upper, rhs } = program;
  const count = columns.length / ROWS;
  const over = rhs.slice();
  const take = (variable: number, amount: number) => {
    if (variable >= count) over[variable - count]! -= amount * signs[variable - count]!;
    else for (let i = 0; i < ROWS; i++) over[i]! -= amount * columns[variable * ROWS + i]!;
  };
  for (let j = 0; j < count; j++) if (place[j] === AT_UPPER) take(j, upper[j]!);
  for (let row = 0; row < ROWS; row++) take(variables[row]!, values[row]!);
  let most = 0;
  for (let i = 0; i < ROWS; i++) most = Math.max(most, Math.abs(over[i]!));
  for (let row = 0; row < ROWS; row++) {
    for (let i = 0; i < ROWS; i++) values[row]! += inverse[row * ROWS + i]! * over[i]!;
  }
  return most;
}

function entryOf(columns: Float64Array, signs: Float64Array, variable: number, row: number, count: number): number {
  if (variable < count) return columns[variable * ROWS + row]!;
  return variable - count === row ? signs[row]! : 0;
}

function artificialSum({ columns }: Program, { variables, values }: Basis): number {
  const count = columns.length / ROWS;
  let sum = 0;
  for (let row = 0; row < ROWS; row++) if (variables[row]! >= count) sum += Math.abs(values[row]!);
  return sum;
}
