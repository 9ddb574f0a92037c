// The line and its interval against other ways to them.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { crossing, fitLine, studentQuantile } from '../../src/service/trend.js';

describe("Student's t with 2.5 percent in each tail", () => {
  // published tables of the distribution, from memory
  test.each([
    [1, 12.706],
    [2, 4.303],
    [3, 3.182],
    [4, 2.776],
    [5, 2.571],
    [6, 2.447],
    [7, 2.365],
    [8, 2.306],
    [9, 2.262],
    [10, 2.228],
    [15, 2.131],
    [20, 2.086],
    [30, 2.042],
    [60, 2.0],
    [120, 1.98],
  ])('%d degrees of freedom: %d', (degrees, printed) => {
    expect(Math.abs(studentQuantile(degrees) - printed)).toBeLessThanOrEqual(0.0005);
  });

  it('is the area under its density, summed by Simpson', () => {
    for (const degrees of [1, 2, 3, 4, 7, 12]) {
      const t = studentQuantile(degrees);
      const density = (x: number) => (1 + (x * x) / degrees) ** (-(degrees + 1) / 2);
      // the area from 0 to infinity by x = tan(u)
      const area = (to: number) => {
        const n = 20_000;
        const f = (u: number) => (u >= Math.PI / 2 ? (degrees === 1 ? 1 : 0) : density(Math.tan(u)) / Math.cos(u) ** 2);
        const h = to / n;
        let sum = f(0) + f(to);
        for (let i = 1; i < n; i++) sum += (i % 2 === 0 ? 2 : 4) * f(i * h);
        return (sum * h) / 3;
      };
      expect(area(Math.atan(t)) / area(Math.PI / 2)).toBeCloseTo(0.95, 5);
    }
  });
});

const points = fc
  .array(fc.record({ x: fc.integer({ min: 0, max: 3000 }), y: fc.integer({ min: 0, max: 9000 }) }), {
    minLength: 3,
    maxLength: 12,
  })
  .filter((list) => new Set(list.map(({ x }) => x)).size >= 3);

describe('a line', () => {
  it('has no lesser sum of squares beside it', () => {
    fc.assert(
      fc.property(
        points,
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: -9, max: 9, noNaN: true }),
        (list, turn, shift) => {
          const line = fitLine(list)!;
          const squares = (slope: number, up: number) =>
            list.reduce((sum, { x, y }) => sum + (y - line.meanY - up - slope * (x - line.meanX)) ** 2, 0);
          const least = squares(line.slope, 0);
          expect(squares(line.slope + turn, shift)).toBeGreaterThanOrEqual(least * (1 - 1e-9));
          expect(line.scatter ** 2 * (list.length - 2)).toBeCloseTo(least, Math.max(0, 3 - Math.log10(least + 1)));
        },
      ),
    );
  });

  it('meets a limit between ends where the limit lies on the edge of its band', () => {
    let ends = 0;
    fc.assert(
      fc.property(points, fc.integer({ min: -20_000, max: 20_000 }), (list, limit) => {
        const line = fitLine(list)!;
        const met = crossing(line, limit);
        if (met === undefined) return;
        ends += 1;
        expect(line.meanY + line.slope * (met.at - line.meanX)).toBeCloseTo(limit, 3);
        expect(met.from).toBeLessThanOrEqual(met.at);
        expect(met.to).toBeGreaterThanOrEqual(met.at);
        const t = studentQuantile(list.length - 2);
        for (const end of [met.from, met.to]) {
          const gap = Math.abs(line.meanY + line.slope * (end - line.meanX) - limit);
          const band = t * line.scatter * Math.sqrt(1 / line.n + (end - line.meanX) ** 2 / line.sxx);
          expect(gap / Math.max(band, 1e-6)).toBeCloseTo(1, 4);
        }
      }),
      { numRuns: 2000, seed: 7 },
    );
    expect(ends).toBeGreaterThan(50);
  });
});
