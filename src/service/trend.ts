// A straight line through records, and where it meets a limit. Plain numbers; what they are is the caller's.

export interface RecordPoint {
  /** Days, or tensionings. */
  readonly x: number;
  readonly y: number;
}

/** Where the line meets the limit, with the ends of the 95 percent interval. */
export interface Crossing {
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

export interface Line {
  readonly slope: number;
  readonly n: number;
  readonly meanX: number;
  readonly meanY: number;
  /** Sum of squares of x about their mean. */
  readonly sxx: number;
  /** Standard deviation of the records about the line, with n - 2 degrees of freedom. */
  readonly scatter: number;
}

/** Ordinary least squares; undefined with fewer than three different x. */
export function fitLine(points: readonly RecordPoint[]): Line | undefined {
  const n = points.length;
  if (new Set(points.map(({ x }) => x)).size < 3) return undefined;
  const mean = (pick: (point: RecordPoint) => number) => points.reduce((sum, point) => sum + pick(point), 0) / n;
  const meanX = mean(({ x }) => x);
  const meanY = mean(({ y }) => y);
  const sum = (pick: (dx: number, dy: number) => number) =>
    points.reduce((total, { x, y }) => total + pick(x - meanX, y - meanY), 0);
  const sxx = sum((dx) => dx * dx);
  const slope = sum((dx, dy) => dx * dy) / sxx;
  const residual = sum((dx, dy) => (dy - slope * dx) ** 2);
  return { slope, n, meanX, meanY, sxx, scatter: Math.sqrt(residual / (n - 2)) };
}

/**
 * Where the line meets a limit, with its 95 percent confidence interval after Fieller: every x at which the limit lies
 * within the band of the mean line, |ȳ + b · (x − x̄) − L| ≤ t · s · √(1/n + (x − x̄)² / Sxx). The interval has ends only
 * where the slope differs from zero with the same confidence, g = t² · s² / (b² · Sxx) < 1; undefined where it does not.
 */
export function crossing({ slope, n, meanX, meanY, sxx, scatter }: Line, limit: number): Crossing | undefined {
  const t = studentQuantile(n - 2);
  const g = (t * scatter) ** 2 / (slope * slope * sxx);
  if (!(g < 1)) return undefined;
  const distance = (limit - meanY) / slope;
  const half = ((t * scatter) / Math.abs(slope)) * Math.sqrt(distance ** 2 / sxx + (1 - g) / n);
  return {
    at: meanX + distance,
    from: meanX + (distance - half) / (1 - g),
    to: meanX + (distance + half) / (1 - g),
  };
}

const CONFIDENCE = 0.95;

/** Student's t that is exceeded to either side with 5 percent, by bisection of the exact distribution. */
export function studentQuantile(degrees: number): number {
  let low = 0;
  let high = 1000;
  for (let step = 0; step < 100; step++) {
    const middle = (low + high) / 2;
    if (withinT(middle, degrees) < CONFIDENCE) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Probability that |T| stays within t: the finite sums for whole degrees of freedom (Abramowitz and Stegun, 26.7.3, 26.7.4). */
function withinT(t: number, degrees: number): number {
  const angle = Math.atan(t / Math.sqrt(degrees));
  const cosine = Math.cos(angle);
  const isOdd = degrees % 2 === 1;
  let term = isOdd ? cosine : 1;
  let sum = degrees === 1 ? 0 : term;
  for (let k = isOdd ? 3 : 2; k <= degrees - 2; k += 2) {
    term *= ((k - 1) / k) * cosine ** 2;
    sum += term;
  }
  const series = Math.sin(angle) * sum;
  return isOdd ? (2 / Math.PI) * (angle + series) : series;
}
