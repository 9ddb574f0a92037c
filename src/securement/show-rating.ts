import { isForce, ratedLoadIn, STANDARD_GRAVITY } from '../quantities/rated.js';
import type { Working } from '../working/step.js';
import type { SumUnit } from './held.js';
import type { TieDownRating } from './rate-tie-down.js';

/** Records the capacity of a tie-down, the least of its parts, and its crossing between mass and force where there is one. */
export function showRating(
  working: Working,
  rating: TieDownRating,
  symbol: string,
  unit: SumUnit,
  clause: string,
): void {
  const { tieDown, series, capacity } = rating;
  const subject = `tie-down ${tieDown.id}`;
  if (series !== undefined && tieDown.parts !== undefined) {
    working.step({
      subject,
      symbol,
      expression: `min(${symbol} of every part)`,
      values: tieDown.parts.map(({ id }, index) => [id, series.limits[index]?.workingLoadLimit ?? null] as const),
      result: capacity,
      clause,
    });
  }
  if (capacity === null || isForce(capacity) === isForce({ value: 1, unit })) return;
  working.step({
    subject,
    symbol,
    expression: isForce(capacity) ? 'F / g' : 'm · g',
    values: [
      [isForce(capacity) ? 'F' : 'm', capacity],
      ['g', { value: STANDARD_GRAVITY, unit: 'm/s2' }],
    ],
    result: ratedLoadIn(capacity, unit),
    clause,
  });
}
