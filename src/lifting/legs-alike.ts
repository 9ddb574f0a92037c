import { compareExactSums } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { slingRules } from '../tables/generated/sling-rules.js';
import { compareLean, type ReadAngle } from './angle.js';

/** True when all legs lean alike. */
export function leanAlike(angles: readonly ReadAngle[]): boolean {
  return spreadOf(angles.map(({ fromVertical }) => fromVertical)) === 0;
}

/**
 * The test of EN 818-6 by which a sling may be taken as symmetric: the load under 80 percent of the limit, every leg
 * 15 degrees or more from the vertical and within 15 degrees of the others, and so the angles between three or four
 * legs in plan. What is not known does not pass.
 */
export function nearlyAlike(
  angles: readonly ReadAngle[],
  legs: number,
  planAngles: readonly number[] | undefined,
  load: QuantityLike | undefined,
  limit: QuantityLike,
): boolean {
  const { rows: rules } = slingRules;
  const spread = rules['symmetric-spread'].value;
  const share = rules['symmetric-load-share'].value;
  if (load === undefined || compareExactSums([{ quantity: load }], [{ quantity: limit, times: [share] }]) >= 0)
    return false;
  if (angles.some((angle) => compareLean(angle, rules['symmetric-least-angle-from-vertical'].value) < 0)) return false;
  if (spreadOf(angles.map(({ fromVertical }) => fromVertical)) > spread) return false;
  return planAngles === undefined ? legs < 3 : spreadOf(planAngles) <= spread;
}

/** Greatest less least, freed of what doubles add to the decimals that people write. */
export function spreadOf(degrees: readonly number[]): number {
  return Number((Math.max(...degrees) - Math.min(...degrees)).toFixed(9));
}
