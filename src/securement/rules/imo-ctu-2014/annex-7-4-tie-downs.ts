import { imoCtu2014Factors as factors } from '../../../tables/generated/imo-ctu-2014-factors.js';
import type { CapacityTable } from '../../../tables/rating-table.js';
import { note, type Words } from '../../../working/note.js';
import { type CountedForce, capacitySpan, missingPoints } from '../../counted-force.js';
import { ifKnown, shareOf, shownForce } from '../../force-checks.js';
import type { TieDownLayout } from '../../layout.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import type { CountedTieDown, RuleContext } from '../../rule-set.js';
import { citeTable } from './cite.js';

/** The code rates nothing by size: every maximum securing load is a mark, or what the caller states. */
export const MARKS_ALONE: CapacityTable = {
  id: 'imo-ctu-2014',
  title: 'CTU Code, maximum securing loads as marked',
  asOf: '2014',
  system: 'maximumSecuringLoad',
  units: 'si',
  chain: {
    source: { document: 'CTU Code', edition: '2014', clause: 'Annex 7', provenance: 'memory' },
    rows: {},
  },
  unmarkedChain: null,
};

/**
 * Annex 7: a direct tie-down counts its maximum securing load in each run. One over the load counts its pretension, up
 * to half of its maximum securing load, and never that load itself: sliding does not stretch it.
 */
export function countForce(
  layout: TieDownLayout,
  rating: TieDownRating,
  { working, units }: RuleContext,
): CountedForce {
  const load = capacitySpan(rating);
  const points = missingPoints(layout);
  if (layout.tieDown.path !== 'over-other-side') {
    return { layout, force: load, missing: [...rating.missing, ...points] };
  }
  const share = factors.rows['tension-share-of-msl'].value;
  const { pretension } = layout;
  const cap = shareOf(share, load);
  const most = Math.min(pretension ?? Number.POSITIVE_INFINITY, cap.most);
  const least = pretension === undefined ? 0 : Math.min(pretension, cap.least);
  const id = layout.tieDown.id;
  const missing = [...rating.missing, ...points];
  if (pretension === undefined) missing.push(note(PRETENSION_NOT_STATED, { tieDown: id }));
  if (working.shown) {
    citeTable(working, factors);
    working.step(
      `tie-down ${id}`,
      'F',
      `min(pretension, ${share} · MSL)`,
      {
        pretension: pretension === undefined ? null : shownForce(pretension, units),
        MSL: rating.capacity,
      },
      ifKnown({ least, most }, (newtons) => shownForce(newtons, units)),
      'CTU Code, Annex 7',
    );
  }
  return { layout, force: { least, most }, missing };
}

/** How a tie-down was counted, for the result. */
export function countedTieDown(
  { layout, force }: CountedForce,
  { capacity, weakest }: TieDownRating,
  { units }: RuleContext,
): CountedTieDown {
  const { tieDown, pretension } = layout;
  const { id, holds, path } = tieDown;
  const byPretension = path === 'over-other-side';
  const newtons = byPretension ? pretension : capacity === null ? undefined : force.least;
  const known = newtons !== undefined && force.least === force.most;
  return {
    id,
    holds,
    path,
    counts: byPretension ? 'pretension' : 'maximumSecuringLoad',
    rating: newtons === undefined ? null : shownForce(newtons, units),
    credit: known && newtons > 0 ? force.least / newtons : 1,
    counted: known ? shownForce(force.least, units) : null,
    weakest,
  };
}

const PRETENSION_NOT_STATED: Words = [
  'PRETENSION_NOT_STATED',
  'Tie-down {tieDown}: the tension that its tensioner leaves in it. Over the load that counts, not its strength.',
];
