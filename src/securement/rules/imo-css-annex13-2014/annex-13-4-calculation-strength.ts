import { imoCssAnnex132014Factors as factors } from '../../../tables/generated/imo-css-annex13-2014-factors.js';
import { note } from '../../../working/note.js';
import { forceUnitOf, inForce } from '../../forces/sums.js';
import {
  byCapacity,
  type CountedForce,
  countedTieDown,
  NOTHING,
  type RatedLayout,
  runsOver,
} from '../../forces/tie-downs.js';
import type { CountedTieDown, RuleContext } from '../../rule-set.js';

/** The divisor of CS = MSL / 1.5, which stands for tie-downs that do not share alike. */
export const divisorOf = (): number => factors.rows['msl-over-calculation-strength'].value;

/**
 * A tie-down with its MSL in each run, of which CS = MSL / 1.5 counts. The balances multiply the rest by the divisor,
 * which is exact.
 */
export function calculationStrength(tieDown: RatedLayout, { working, units }: RuleContext): CountedForce {
  const { layout, rating } = tieDown;
  const { id } = layout.tieDown;
  if (working.shown && rating.capacity !== null) {
    const strength = [{ quantity: rating.capacity }];
    working.step(
      `tie-down ${id}`,
      'CS',
      `MSL / ${divisorOf()}`,
      { MSL: inForce(units)(strength) },
      inForce(units, divisorOf())(strength),
      'CSS Code, Annex 13, section 6',
    );
  }
  const counted = byCapacity(tieDown);
  if (!runsOver(tieDown)) return counted;
  // What such a tie-down holds is not said: nothing that is certain, and at best as much as at the best angles.
  return {
    layout: { ...layout, runs: [] },
    force: { least: NOTHING, most: counted.force.most },
    missing: [...counted.missing, note('OVER_THE_TOP_NOT_COVERED', { tieDown: id })],
  };
}

/** How a tie-down was counted, for the result. */
export const resultOf = (tieDown: RatedLayout, { units }: RuleContext): CountedTieDown =>
  countedTieDown(
    tieDown.rating,
    'maximumSecuringLoad',
    tieDown.rating.capacity,
    runsOver(tieDown) ? 0 : 1 / divisorOf(),
    forceUnitOf(units),
  );
