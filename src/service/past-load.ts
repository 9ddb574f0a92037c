import type { QuantityLike } from '../quantities/quantity.js';
import { chainElongationAtBreak } from '../tables/generated/chain-elongation-at-break.js';
import { removalCriteriaCommonPractice } from '../tables/generated/removal-criteria-common-practice.js';
import { usChainProof } from '../tables/generated/us-chain-proof.js';
import { rowOf } from '../tables/rating-table.js';
import { type Note, note } from '../working/note.js';
import { linkBeyondWear, ofInside, ofOutside, ofSection, sectionBeyondWear } from './chain-evidence.js';
import { finite } from './evidence.js';
import type { Judging } from './judge-criteria.js';

interface BreakRow {
  readonly elongation_percent: number;
  readonly proof_over_wll?: number;
}

type Percent = QuantityLike<'%'>;

/** Growth of the inside length told apart: links that wear at both crowns grow inside without stretching. */
export interface Growth {
  /** Inside, of the longest link or else of the section. */
  readonly total: Percent;
  readonly stretch: Percent;
  readonly wear: Percent;
  /** What told them apart: the outside length of one link, or the wear, which then is the most and the stretch the least. */
  readonly by: 'outside length' | 'wear at the crowns';
}

/** What the growth is made of; undefined where nothing measured tells. */
export function tellApart({ read, least, working }: Judging): Growth | undefined {
  const [ofLink] = ofInside(read);
  const [ofRun] = ofSection(read, 'equal');
  const [outside] = ofOutside(read, 'equal');
  const total = ofLink ?? ofRun;
  const stretch =
    ofLink === undefined ? sectionBeyondWear(read, least)[0] : (outside ?? linkBeyondWear(read, least)[0]);
  if (total === undefined || stretch === undefined || total.measured <= 0) return undefined;
  // a bound below zero says no more than zero does
  const most = stretch.bound === 'equal' ? stretch.measured : Math.max(stretch.measured, 0);
  working.step('chain', 'growth, %', total.expression, total.values, total.measured);
  working.step('chain', 'stretch, %', stretch.expression, stretch.values, stretch.measured);
  const percent = (value: number): Percent => ({ value: finite(value), unit: '%' });
  return {
    total: percent(total.measured),
    stretch: percent(most),
    wear: percent(total.measured - most),
    by: stretch === outside ? 'outside length' : 'wear at the crowns',
  };
}

/** What stretch says about the past: new chain was pulled to its proof force and did not stretch. */
export interface PastLoad {
  /** More than so many times its working load limit; null where the grade is not known. */
  readonly moreThanTimesWll: number | null;
  /** Share of the elongation at which new chain may break that its stretch has used up; only where both are known. */
  readonly ductilityUsed?: number;
  readonly because: Note;
}

/**
 * The load that must once have been there, if the chain is stretched beyond what wear and measuring explain.
 *
 * @param visible that it is stretched so far that everybody sees it, and nothing measured says that it is wear
 */
export function pastLoadOf({ read, least, working }: Judging, visible: boolean): PastLoad | undefined {
  const stretched = [
    ...ofOutside(read, 'equal'),
    ...linkBeyondWear(read, least),
    ...sectionBeyondWear(read, least),
  ].filter(({ exceeds }) => exceeds?.(read.uncertainty));
  const stretch = stretched.reduce((most, { measured }) => Math.max(most, measured), 0);
  if (stretch === 0 && !visible) return undefined;
  const { grade } = read;
  const own = grade === undefined ? undefined : rowOf<BreakRow>(chainElongationAtBreak.rows, String(grade));
  const us = typeof grade === 'number' ? rowOf(usChainProof.rows, grade) : undefined;
  const proof = us?.proof_factor ?? own?.proof_over_wll;
  working.assumptions.push(note('PROOF_LOADED_WHEN_NEW'));
  const percent = stretch === 0 ? removalCriteriaCommonPractice.rows.chain['visible-stretch'].limit : stretch;
  const shown = Number(percent.toPrecision(4));
  if (proof === undefined) return { moreThanTimesWll: null, because: note('ONCE_OVERLOADED', { percent: shown }) };
  working.cite(us === undefined ? chainElongationAtBreak.source : usChainProof.source);
  const because = note('ONCE_OVER_PROOF', { percent: shown, proof });
  if (stretch === 0 || own === undefined) return { moreThanTimesWll: proof, because };
  working.cite(chainElongationAtBreak.source);
  const atBreak = own.elongation_percent;
  const ductilityUsed = finite(stretch / atBreak);
  const values = { stretch, 'elongation at break': atBreak };
  working.step('chain', 'ductility used', 'stretch / elongation at break', values, ductilityUsed);
  return { moreThanTimesWll: proof, ductilityUsed, because };
}
