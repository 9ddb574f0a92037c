import { imoCssAnnex132014Factors as factors } from '../../../tables/generated/imo-css-annex13-2014-factors.js';
import type { CapacityTable } from '../../../tables/rating-table.js';
import { note, type Words } from '../../../working/note.js';
import { type CountedForce, capacitySpan, missingPoints } from '../../counted-force.js';
import { decimalIn, shownForce } from '../../force-checks.js';
import type { TieDownLayout } from '../../layout.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import type { CountedTieDown, RuleContext } from '../../rule-set.js';

/** The annex rates nothing by size: every maximum securing load is a mark, or what the caller states. */
export const MARKS_ALONE: CapacityTable = {
  id: 'imo-css-annex13-2014',
  title: 'CSS Code, Annex 13, maximum securing loads as marked',
  asOf: '2014',
  system: 'maximumSecuringLoad',
  units: 'si',
  chain: {
    source: { document: 'CSS Code, Annex 13', clause: 'section 4', provenance: 'read' },
    rows: {},
  },
  unmarkedChain: null,
};

/**
 * A tie-down with its MSL in each run, of which CS = MSL / 1.5 counts: the divisor stands for tie-downs that do not
 * share alike. The balances multiply the rest by it, which is exact.
 */
export function calculationStrength(
  layout: TieDownLayout,
  rating: TieDownRating,
  { working, units }: RuleContext,
): CountedForce {
  const load = capacitySpan(rating);
  const id = layout.tieDown.id;
  const divisor = factors.rows['msl-over-calculation-strength'].value;
  if (working.shown && rating.capacity !== null) {
    working.step(
      `tie-down ${id}`,
      'CS',
      `MSL / ${divisor}`,
      { MSL: shownForce(load.least, units) },
      shownForce(load.least / divisor, units),
      'CSS Code, Annex 13, section 6',
    );
  }
  const missing = [...rating.missing, ...missingPoints(layout)];
  if (layout.tieDown.path !== 'over-other-side') return { layout, force: load, missing };
  // What such a tie-down holds is not said: nothing that is certain, and at best as much as at the best angles.
  return {
    layout: { ...layout, runs: [] },
    force: { least: 0, most: load.most },
    missing: [...missing, note(OVER_THE_TOP, { tieDown: id })],
  };
}

/** How a tie-down was counted, for the result. */
export function countedTieDown(
  { layout: { tieDown }, force }: CountedForce,
  { capacity, weakest }: TieDownRating,
  { units }: RuleContext,
): CountedTieDown {
  const { id, holds, path } = tieDown;
  const divisor = factors.rows['msl-over-calculation-strength'].value;
  const load = capacity === null ? undefined : decimalIn(capacity, 'N');
  return {
    id,
    holds,
    path,
    counts: 'maximumSecuringLoad',
    rating: load === undefined ? null : shownForce(load, units),
    credit: path === 'over-other-side' ? 0 : 1 / divisor,
    counted: load === undefined ? null : shownForce(force.least / divisor, units),
    weakest,
  };
}

const OVER_THE_TOP: Words = [
  'OVER_THE_TOP_NOT_COVERED',
  'What tie-down {tieDown} holds: the method is for tie-downs that end on the cargo or come back to their side, and has no figure for one that runs over to the other.',
];
