/** A column rises above the remainder when their product passes this; all lengths are about 1. */
const SLOPE_TOLERANCE = 1e-12;

/**
 * The point of a cone nearest to a target: minimizes |sum x_j column_j - target| over x >= 0 (Lawson and Hanson, Solving
 * Least Squares Problems, 1974, algorithm NNLS; from memory). Returns what is left, target - nearest point: it is
 * perpendicular to the nearest point and makes no acute angle with any column. Columns and target of length about 1.
 * Undefined when the method does not come to an end.
 */
export function coneRemainder(
  columns: readonly (readonly number[])[],
  target: readonly number[],
): number[] | undefined {
  const amounts = columns.map(() => 0);
  let used: number[] = [];
  let refused: number[] = []; // columns that depend on those used, but for rounding
  let remainder = [...target];
  for (let step = 0; step < 20 * (columns.length + 1); step++) {
    const entering = steepestColumn(columns, remainder, [...used, ...refused]);
    if (entering < 0) return remainder;
    let wanted = leastSquares(columns, [...used, entering], target);
    if (wanted === undefined || !(wanted.at(-1)! > 0)) {
      refused.push(entering);
      continue;
    }
    used.push(entering);
    refused = [];
    while (wanted?.some((amount) => amount <= 0)) {
      used = stepToward(amounts, used, wanted);
      wanted = leastSquares(columns, used, target);
    }
    if (wanted === undefined) return undefined;
    for (const [at, index] of used.entries()) amounts[index] = wanted[at]!;
    remainder = target.map((value, row) =>
      used.reduce((left, index) => left - amounts[index]! * columns[index]![row]!, value),
    );
  }
  return undefined;
}

function steepestColumn(
  columns: readonly (readonly number[])[],
  remainder: readonly number[],
  except: readonly number[],
): number {
  let best = -1;
  let steepest = SLOPE_TOLERANCE;
  for (const [index, column] of columns.entries()) {
    const slope = inner(column, remainder);
    if (slope <= steepest || except.includes(index)) continue;
    steepest = slope;
    best = index;
  }
  return best;
}

/** Moves the amounts toward the wanted ones as far as all stay positive; returns the columns without those at zero. */
function stepToward(amounts: number[], used: readonly number[], wanted: readonly number[]): number[] {
  let part = 1;
  let first = -1;
  for (const [at, index] of used.entries()) {
    const reach = amounts[index]! / (amounts[index]! - wanted[at]!);
    if (wanted[at]! > 0 || (first >= 0 && reach >= part)) continue;
    part = reach;
    first = index;
  }
  for (const [at, index] of used.entries()) amounts[index]! += part * (wanted[at]! - amounts[index]!);
  amounts[first] = 0;
  return used.filter((index) => index !== first);
}

/** x that minimizes |sum x_j column_j - target|, by Gram and Schmidt; undefined when the columns depend on each other. */
function leastSquares(
  all: readonly (readonly number[])[],
  used: readonly number[],
  target: readonly number[],
): number[] | undefined {
  const columns = used.map((index) => all[index]!);
  const axes: number[][] = [];
  const upper: number[][] = [];
  for (const column of columns) {
    let rest = [...column];
    const parts = axes.map(() => 0);
    for (let round = 0; round < 2; round++) {
      axes.forEach((axis, at) => {
        const part = inner(axis, rest);
        parts[at]! += part;
        rest = rest.map((value, row) => value - part * axis[row]!);
      });
    }
    const length = Math.sqrt(inner(rest, rest));
    if (!(length > 1e-12)) return undefined;
    axes.push(rest.map((value) => value / length));
    upper.push([...parts, length]);
  }
  const x = columns.map(() => 0);
  let left = [...target];
  const sides = axes.map((axis) => {
    const part = inner(axis, left);
    left = left.map((value, row) => value - part * axis[row]!);
    return part;
  });
  for (let at = columns.length - 1; at >= 0; at--) {
    let side = sides[at]!;
    for (let later = at + 1; later < columns.length; later++) side -= x[later]! * upper[later]![at]!;
    x[at] = side / upper[at]![at]!;
  }
  return x;
}

const inner = (a: readonly number[], b: readonly number[]) => a.reduce((sum, value, at) => sum + value * b[at]!, 0);
