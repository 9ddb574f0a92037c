import { ROWS } from '../rigid-load.js';

/** A square matrix of six rows taken apart; see {@link factorize}. */
export interface Factors {
  /** Elimination factors below the diagonal, the remaining upper triangle on and above it, rows and columns exchanged. */
  readonly matrix: Float64Array;
  readonly rowOrder: readonly number[];
  readonly columnOrder: readonly number[];
  /** How many of the six rows are independent. */
  readonly rank: number;
}

/** A pivot below this part of the largest entry is rounding. */
const RANK_TOLERANCE = 1e-14;
/** What a dependent row may have on its right-hand side, as part of the largest, and still count as no contradiction. */
const CONSISTENCY_TOLERANCE = 1e-8;

/** Gaussian elimination with complete pivoting, which shows the rank. The matrix is by rows and is overwritten. */
export function factorize(matrix: Float64Array): Factors {
  const rowOrder = [0, 1, 2, 3, 4, 5];
  const columnOrder = [0, 1, 2, 3, 4, 5];
  let largest = 0;
  let rank = 0;
  for (; rank < ROWS; rank++) {
    let pivotRow = rank;
    let pivotColumn = rank;
    let pivot = 0;
    for (let row = rank; row < ROWS; row++) {
      for (let column = rank; column < ROWS; column++) {
        const entry = Math.abs(matrix[row * ROWS + column]!);
        if (entry > pivot) {
          pivot = entry;
          pivotRow = row;
          pivotColumn = column;
        }
      }
    }
    largest = Math.max(largest, pivot);
    if (!(pivot > RANK_TOLERANCE * largest)) break;
    exchange(matrix, rank, pivotRow, rank, pivotColumn);
    [rowOrder[rank], rowOrder[pivotRow]] = [rowOrder[pivotRow]!, rowOrder[rank]!];
    [columnOrder[rank], columnOrder[pivotColumn]] = [columnOrder[pivotColumn]!, columnOrder[rank]!];
    for (let row = rank + 1; row < ROWS; row++) {
      const times = matrix[row * ROWS + rank]! / matrix[rank * ROWS + rank]!;
      matrix[row * ROWS + rank] = times;
      if (times === 0) continue;
      for (let column = rank + 1; column < ROWS; column++) {
        matrix[row * ROWS + column]! -= times * matrix[rank * ROWS + column]!;
      }
    }
  }
  return { matrix, rowOrder, columnOrder, rank };
}

function exchange(matrix: Float64Array, row: number, otherRow: number, column: number, otherColumn: number): void {
  if (row !== otherRow) {
    for (let i = 0; i < ROWS; i++) swap(matrix, row * ROWS + i, otherRow * ROWS + i);
  }
  if (column !== otherColumn) {
    for (let i = 0; i < ROWS; i++) swap(matrix, i * ROWS + column, i * ROWS + otherColumn);
  }
}

function swap(matrix: Float64Array, a: number, b: number): void {
  const kept = matrix[a]!;
  matrix[a] = matrix[b]!;
  matrix[b] = kept;
}

/**
 * A solution of matrix x = side, with zero in the directions that are free; undefined when there is none, or, if
 * `anyway`, one that leaves the contradiction.
 */
export function solve(
  { matrix, rowOrder, columnOrder, rank }: Factors,
  side: Float64Array,
  anyway = false,
): Float64Array | undefined {
  const work = new Float64Array(ROWS);
  let largest = 0;
  for (let row = 0; row < ROWS; row++) {
    let value = side[rowOrder[row]!]!;
    largest = Math.max(largest, Math.abs(value));
    for (let column = 0; column < Math.min(row, rank); column++) value -= matrix[row * ROWS + column]! * work[column]!;
    work[row] = value;
  }
  for (let row = rank; row < ROWS; row++) {
    if (!anyway && Math.abs(work[row]!) > CONSISTENCY_TOLERANCE * largest) return undefined;
  }
  const x = new Float64Array(ROWS);
  for (let row = rank - 1; row >= 0; row--) {
    let value = work[row]!;
    for (let column = row + 1; column < rank; column++)
      value -= matrix[row * ROWS + column]! * x[columnOrder[column]!]!;
    x[columnOrder[row]!] = value / matrix[row * ROWS + row]!;
  }
  return x;
}

/** The part of a vector that lies among the motions x with matrix x = 0. */
export function freePart({ matrix, columnOrder, rank }: Factors, vector: Float64Array): Float64Array {
  const axes: Float64Array[] = [];
  const part = new Float64Array(ROWS);
  for (let free = rank; free < ROWS; free++) {
    const axis = new Float64Array(ROWS);
    axis[columnOrder[free]!] = 1;
    for (let row = rank - 1; row >= 0; row--) {
      let value = -matrix[row * ROWS + free]!;
      for (let column = row + 1; column < rank; column++) {
        value -= matrix[row * ROWS + column]! * axis[columnOrder[column]!]!;
      }
      axis[columnOrder[row]!] = value / matrix[row * ROWS + row]!;
    }
    for (const other of axes) addTo(axis, other, -inner(axis, other));
    const length = Math.sqrt(inner(axis, axis));
    for (let i = 0; i < ROWS; i++) axis[i]! /= length;
    axes.push(axis);
    addTo(part, axis, inner(axis, vector));
  }
  return part;
}

export const inner = (a: Float64Array, b: Float64Array): number =>
  a[0]! * b[0]! + a[1]! * b[1]! + a[2]! * b[2]! + a[3]! * b[3]! + a[4]! * b[4]! + a[5]! * b[5]!;

export function addTo(sum: Float64Array, vector: Float64Array, times: number): void {
  for (let i = 0; i < ROWS; i++) sum[i]! += times * vector[i]!;
}

/** matrix + times * a b^T, by rows. */
export function addProduct(matrix: Float64Array, a: Float64Array, b: Float64Array, times: number): void {
  for (let row = 0; row < ROWS; row++) {
    const factor = times * a[row]!;
    if (factor === 0) continue;
    for (let column = 0; column < ROWS; column++) matrix[row * ROWS + column]! += factor * b[column]!;
  }
}
