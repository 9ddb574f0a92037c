import type { PartRater } from '../../../assembly/rate-part.js';
import { inUnit } from '../../../quantities/convert.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { isForce, ratedLoadIn, STANDARD_GRAVITY } from '../../../quantities/rated.js';
import { type Note, note, type Words } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { Run, TieDownLayout } from '../../layout.js';
import type { TieDown } from '../../plan.js';
import { rateTieDown, type TieDownRating } from '../../rate-tie-down.js';
import { factor, STANDARD } from './cite.js';
import { NOTHING, type Range } from './range.js';
import { standardTensionForce } from './tensioner.js';

/** A lashing with what each of its legs counts. */
export interface Lashing {
  readonly tieDown: TieDown;
  readonly rating: TieDownRating;
  /** Over-top lashing holds by friction and pretension; the rest is direct and holds by its strength. */
  readonly method: 'direct' | 'over-top';
  /** Straight runs from cargo to vehicle that it has by its path. */
  readonly legs: 1 | 2;
  /** Those of them that the plan has points for. */
  readonly runs: readonly Run[];
  readonly axialStiffness: number | undefined;
  /** LC of each leg. */
  readonly capacity: Range;
  /** FT of each leg; of over-top lashing only. */
  readonly tension: Range;
  /** What must be known to say LC, and FT. */
  readonly missing: { readonly capacity: readonly Note[]; readonly tension: readonly Note[] };
}

/** Rates a lashing: LC by its least part and anchor point, FT by the pretension stated or the STF of its tensioner. */
export function readLashing(rater: PartRater, layout: TieDownLayout, working: Working): Lashing {
  const { tieDown, runs, axialStiffness } = layout;
  const rating = rateTieDown(rater, tieDown, working);
  const { capacity: known, atMost, missing } = rating;
  const capacity = {
    least: known === null ? 0 : ratedLoadIn(known, 'N').value,
    most: atMost === null ? Number.POSITIVE_INFINITY : ratedLoadIn(atMost, 'N').value,
  };
  if (working.shown) showCapacity(rating, working);
  const overTop = tieDown.path === 'over-other-side';
  const tensioned = overTop ? tensionOf(layout, capacity, missing, working) : { tension: NOTHING, missing: [] };
  return {
    tieDown,
    rating,
    method: overTop ? 'over-top' : 'direct',
    legs: tieDown.path === 'vehicle-to-cargo' ? 1 : 2,
    runs,
    axialStiffness,
    capacity,
    tension: tensioned.tension,
    missing: { capacity: missing, tension: tensioned.missing },
  };
}

/**
 * FT = min(pretension or STF, 0.5 · LC): what stands in each leg of an over-top lashing, however strong it is. A
 * pretension that is stated goes before the STF on the tag.
 */
function tensionOf(
  { tieDown, pretension }: TieDownLayout,
  capacity: Range,
  capacityMissing: readonly Note[],
  working: Working,
): { readonly tension: Range; readonly missing: readonly Note[] } {
  const stf = standardTensionForce(tieDown, working);
  const force = pretension ?? (stf && inUnit(stf, 'N').value);
  const share = factor(working, 'tension-share-of-lc');
  const tension = {
    least: Math.min(force ?? 0, share * capacity.least),
    most: Math.min(force ?? Number.POSITIVE_INFINITY, share * capacity.most),
  };
  const known = tension.least === tension.most;
  if (working.shown) {
    const stated = pretension === undefined ? 'STF' : 'pretension';
    working.step(
      `tie-down ${tieDown.id}`,
      'FT',
      `min(${stated}, ${share} · LC)`,
      { [stated]: inNewtons(force), LC: inNewtons(capacity.most) },
      known ? inNewtons(tension.least) : null,
      `${STANDARD}, over-top lashing`,
    );
  }
  if (known) return { tension, missing: [] };
  const unsaid = force === undefined ? [note(NO_PRETENSION, { tieDown: tieDown.id })] : [];
  return { tension, missing: [...unsaid, ...capacityMissing] };
}

function inNewtons(value: number | undefined): QuantityLike | null {
  return value === undefined || !Number.isFinite(value) ? null : { value, unit: 'N' };
}

/** Records the least of the parts, and first each capacity that crosses from mass to force. */
function showCapacity({ tieDown, series, capacity }: TieDownRating, working: Working): void {
  const stated: readonly (readonly [string, QuantityLike | null])[] = series?.limits.map(
    ({ workingLoadLimit }, index) => [tieDown.parts?.[index]?.id ?? '', workingLoadLimit],
  ) ?? [[tieDown.id, capacity]];
  for (const [id, limit] of stated) {
    if (limit === null || isForce(limit) || limit.value === 0) continue;
    working.step(
      `tie-down ${tieDown.id}, ${id}`,
      'LC',
      'm · g',
      { m: limit, g: { value: STANDARD_GRAVITY, unit: 'm/s2' } },
      ratedLoadIn(limit, 'N'),
    );
  }
  working.step(
    `tie-down ${tieDown.id}`,
    'LC',
    series === undefined ? 'as stated' : 'min(LC of every part and anchor point)',
    stated,
    capacity === null ? null : ratedLoadIn(capacity, 'N'),
    `${STANDARD}, lashing capacity`,
  );
}

const NO_PRETENSION: Words = [
  'PRETENSION_NOT_STATED',
  'The pretension in tie-down {tieDown}, or the standard tension force (STF) of its tensioner: strength does not press a load down.',
];
