import { mapAt, within } from '../../../errors.js';
import { compareExact, compareExactSums } from '../../../quantities/exact.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { readOptional } from '../../../quantities/read.js';
import { euEn1219532001Chain } from '../../../tables/generated/eu-en12195-3-2001-chain.js';
import { type LashingCell, rowOf } from '../../../tables/rating-table.js';
import { note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { TieDown } from '../../plan.js';

/** The STF stated for the whole tie-down, or the least that a part of it states. */
export function standardTensionForce({ id, parts, capacities }: TieDown, working: Working): QuantityLike | undefined {
  if (parts === undefined) return stfOf(capacities);
  let least: QuantityLike | undefined;
  mapAt(parts, 'parts', (part) => {
    const stf = part.kind === 'parallel' ? undefined : stfOf(part.capacities);
    if (stf !== undefined && (least === undefined || compareExact(stf, least) < 0)) least = stf;
  });
  for (const part of parts) {
    if (part.kind === 'chain' && least !== undefined) cautionAboutShare(id, part.size, part.grade, least, working);
  }
  return least;
}

const stfOf = (capacities: TieDown['capacities']): QuantityLike | undefined =>
  within('capacities', () => readOptional(capacities?.standardTensionForce, 'force', 'standardTensionForce'));

type ChainCell = LashingCell & { readonly lc_kn: number; readonly stf_min_fraction: number };
type Grades = { readonly [grade: string]: ChainCell };

/**
 * EN 12195-3: the STF of a tensioner is at least 0.25 of the LC of its chain up to 10 mm and 0.15 above. So a 13 mm
 * chain may have less than a 10 mm one: a bigger chain is not more clamping.
 */
function cautionAboutShare(
  tieDown: string,
  size: string,
  grade: string | number | undefined,
  stf: QuantityLike,
  working: Working,
): void {
  const { rows, source } = euEn1219532001Chain;
  const cell = rowOf(rowOf<Grades>(rows, size) ?? {}, grade ?? '');
  if (cell === undefined) return;
  const lc = { value: cell.lc_kn, unit: 'kN' } as const;
  const share = cell.stf_min_fraction;
  if (compareExactSums([{ quantity: stf }], [{ quantity: lc, times: [share] }]) >= 0) return;
  working.cautions.push(note('STF_BELOW_SHARE', { tieDown, stf, share, lc, size }));
  if (working.shown) working.cite(source);
}
