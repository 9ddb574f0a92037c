import type { Check } from '../../../working/check.js';
import type { Working } from '../../../working/step.js';
import { checkCondition } from '../../counting/checks.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import { aboutRule } from './cite.js';

/**
 * 393.104(b)-(c): no damaged or weakened component, anchor points included. The regulation gives no
 * percentage of wear for chain; whether a part is damaged is the caller's finding. A damaged part also counts
 * zero in the aggregate and its tie-down does not count in the number.
 */
export function checkNoDamage(tieDowns: readonly TieDownRating[], working: Working): Check {
  return checkCondition(aboutRule(working, '393.104(b)', 'No damaged part', 'tie-downs'), tieDowns);
}
