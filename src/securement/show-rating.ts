import { isForce, ratedLoadIn, STANDARD_GRAVITY } from '../quantities/rated.js';
import type { Working } from '../working/step.js';
import type { SumUnit } from './held.js';
import type { TieDownRating } from './rate-tie-down.js';

/** Records the capacity of a tie-down, the least of its parts, and first each load that crosses between mass and force. */
export function showRating(
  working: Working,
  { tieDown, series, capacity }: TieDownRating,
  symbol: string,
  unit: SumUnit,
  clause: string,
): void {
  const whole = `tie-down ${tieDown.id}`;
  const parts = tieDown.parts?.map(({ id }, index) => [id, series?.limits[index]?.workingLoadLimit ?? null] as const);
  for (const [id, load] of parts ?? [[null, capacity] as const]) {
    if (load === null || load.value === 0 || isForce(load) === isForce({ value: 1, unit })) continue;
    const [name, expression] = isForce(load) ? ['F', 'F / g'] : ['m', 'm · g'];
    working.step(
      id === null ? whole : `${whole}, ${id}`,
      symbol,
      expression,
      { [name]: load, g: { value: STANDARD_GRAVITY, unit: 'm/s2' } },
      ratedLoadIn(load, unit),
    );
  }
  if (parts === undefined) return;
  working.step(
    whole,
    symbol,
    `min(${symbol} of every part)`,
    parts,
    capacity === null ? null : ratedLoadIn(capacity, unit),
    clause,
  );
}
