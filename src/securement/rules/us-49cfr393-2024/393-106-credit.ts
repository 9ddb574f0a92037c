import { us49cfr393106Credit } from '../../../tables/generated/us-49cfr393-106-credit.js';
import type { TieDownPath } from '../../plan.js';

/** 393.106(d)(1)-(3): the share of a tie-down's limit that counts, by the way it runs. Angle and material play no part. */
export function creditOf(path: TieDownPath): number {
  return us49cfr393106Credit.rows[path].credit;
}
