import { compareExact } from '../../../quantities/exact.js';
import type { Point } from '../../../quantities/point.js';
import { readQuantity } from '../../../quantities/read.js';
import { type Check, failedCheck, metCheck, undeterminedCheck } from '../../../working/check.js';
import { note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { TieDown } from '../../plan.js';
import { aboutGuidance, citeGuidance } from './cite.js';

/** One lashing to each anchorage: no two tie-downs are fixed to the vehicle at one point, told by its coordinates. */
export function judgeAnchorages(tieDowns: readonly TieDown[], working: Working): Check {
  citeGuidance(working, 'one lashing per anchorage', 'read');
  const about = aboutGuidance('anchorages', 'One lashing per anchorage', 'tie-downs');
  const shared = tieDowns.flatMap((one, index) =>
    tieDowns
      .slice(index + 1)
      .filter((other) => anchorsOf(one).some((point) => anchorsOf(other).some((at) => isSamePoint(point, at))))
      .map((other) => `${one.id} and ${other.id}`),
  );
  if (shared.length > 0) return failedCheck(about, note('ANCHORAGE_SHARED', { tieDowns: shared.join(', ') }));
  const unknown = tieDowns.filter((each) => anchorsOf(each).length < (each.path === 'vehicle-to-cargo' ? 1 : 2));
  if (unknown.length === 0 || tieDowns.length === 1) return metCheck(about);
  return undeterminedCheck(about, [
    note('ANCHORAGES_NOT_STATED', { tieDowns: unknown.map(({ id }) => id).join(', ') }),
  ]);
}

const anchorsOf = ({ anchor, otherAnchor }: TieDown): Point[] =>
  [anchor, otherAnchor].filter((point) => point !== undefined);

const isSamePoint = (one: Point, other: Point): boolean =>
  one.every(
    (coordinate, axis) =>
      compareExact(readQuantity(coordinate, 'length', 'anchor'), readQuantity(other[axis], 'length', 'anchor')) === 0,
  );
