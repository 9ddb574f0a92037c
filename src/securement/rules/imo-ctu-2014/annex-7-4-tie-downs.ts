import { imoCtu2014Factors as factors } from '../../../tables/generated/imo-ctu-2014-factors.js';
import { forceUnitOf, shownLoad } from '../../forces/sums.js';
import {
  byCapacity,
  byPretension,
  type CountedForce,
  countedTieDown,
  knownLoad,
  lesserOf,
  type RatedLayout,
  runsOver,
  shareOfLoad,
} from '../../forces/tie-downs.js';
import type { CountedTieDown, RuleContext } from '../../rule-set.js';
import { citeTable } from './cite.js';

/**
 * Annex 7: a direct tie-down counts its maximum securing load in each run. One over the load counts its pretension, up
 * to half of its maximum securing load, and never that load itself: sliding does not stretch it.
 */
export function countForce(tieDown: RatedLayout, { working, units }: RuleContext): CountedForce {
  const strength = byCapacity(tieDown);
  if (!runsOver(tieDown)) return strength;
  const { layout, rating } = tieDown;
  const tension = byPretension(tieDown);
  const share = factors.rows['tension-share-of-msl'].value;
  const force = lesserOf(tension.force, shareOfLoad(share, strength.force));
  if (working.shown) {
    citeTable(working, factors);
    working.step(
      `tie-down ${layout.tieDown.id}`,
      'F',
      `min(pretension, ${share} · MSL)`,
      { pretension: shownLoad(knownLoad(tension.force), units), MSL: rating.capacity },
      shownLoad(knownLoad(force), units),
      'CTU Code, Annex 7',
    );
  }
  const facts = rating.capacity === null ? rating.missing : [];
  return { layout, force, missing: [...facts, ...tension.missing] };
}

/** How a tie-down was counted, for the result: of its pretension or its MSL, the share that counts. */
export function resultOf(tieDown: RatedLayout, { force }: CountedForce, { units }: RuleContext): CountedTieDown {
  const { rating } = tieDown;
  const counted = shownLoad(knownLoad(force), units);
  if (!runsOver(tieDown)) return countedTieDown(rating, 'maximumSecuringLoad', rating.capacity, 1, forceUnitOf(units));
  const tension = knownLoad(byPretension(tieDown).force);
  const whole = shownLoad(tension, units);
  const credit = counted !== null && whole !== null && whole.value > 0 ? counted.value / whole.value : 1;
  const result = countedTieDown(rating, 'pretension', tension, credit, forceUnitOf(units));
  return { ...result, counted };
}
