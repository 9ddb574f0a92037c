import type { ExactTerm } from '../../../quantities/exact.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { auLrg2018Pretension } from '../../../tables/generated/au-lrg-2018-pretension.js';
import { rowOf } from '../../../tables/rating-table.js';
import { type Check, undeterminedCheck } from '../../../working/check.js';
import type { Working } from '../../../working/step.js';
import { judgeHeld, pretensionOf, type RatedLayout, type SumUnit } from '../../held.js';
import type { TieDown } from '../../plan.js';
import { aboutPractice, aboutRule, citeGuide, GUIDE } from './cite.js';

/**
 * A tie-down over the load counts with its pretension, which no part of it may be too weak for: T ≤ LC. That is our
 * reading; a damaged part counts zero, so that a pretension through it fails here.
 */
export function judgeAgainstCapacity(
  { layout: { tieDown }, rating }: RatedLayout,
  unit: SumUnit,
  working: Working,
): Check {
  const { capacity, atMost, missing } = rating;
  citeGuide(working, 'pretension', 'interpretation', 'no more than the lashing capacity');
  const about = aboutRule('pretension', 'Pretension within the lashing capacity', tieDown.id, GUIDE);
  const pretension = pretensionOf(tieDown);
  if (pretension.known === null) return undeterminedCheck(about, pretension.missing);
  const most = capacity ?? atMost;
  const held = {
    known: termOf(capacity),
    most: most && termOf(most),
    missing: capacity === null ? missing : [],
    shares: [],
  };
  return judgeHeld(about, termOf(pretension.known), held, unit);
}

/**
 * The least pretension, as advice: 750 kgf for 8 and 10 mm chain, 1000 kgf for 8 mm
 * chain with a turnbuckle or ratchet (from memory), 300 kgf for 50 mm webbing with a hand ratchet.
 */
export function adviseLeastPretension({ layout: { tieDown } }: RatedLayout, unit: SumUnit, working: Working): Check[] {
  const { known } = pretensionOf(tieDown);
  const least = leastPretension(tieDown);
  if (known === null || least === undefined) return [];
  if (working.shown) working.cite({ ...auLrg2018Pretension.source, provenance: least.provenance ?? 'read' });
  const about = aboutPractice('pretension', 'Least pretension of its chain or webbing', tieDown.id);
  const held = { known: termOf(known), most: null, missing: [], shares: [] };
  return [judgeHeld(about, termOf({ value: least.pretension_kgf, unit: 'kgf' }), held, unit)];
}

interface LeastPretension {
  readonly pretension_kgf: number;
  readonly provenance?: 'memory';
}

/** The largest of the rows that the parts of a tie-down name. */
function leastPretension({ parts = [] }: TieDown): LeastPretension | undefined {
  const { chain, webbing } = auLrg2018Pretension.rows;
  const chains: {
    readonly [size: string]: { readonly any: LeastPretension; readonly 'turnbuckle-or-ratchet'?: LeastPretension };
  } = chain;
  const widths: { readonly [width: string]: { readonly 'hand-ratchet': LeastPretension } } = webbing;
  const screwed = parts.some(
    (part) => part.kind === 'turnbuckle' || (part.kind === 'binder' && part.style === 'ratchet'),
  );
  const rows = parts.map((part) => {
    if (part.kind === 'webbing') return rowOf(widths, part.width ?? '')?.['hand-ratchet'];
    const row = part.kind === 'chain' ? rowOf(chains, part.size) : undefined;
    return (screwed ? row?.['turnbuckle-or-ratchet'] : undefined) ?? row?.any;
  });
  return rows.reduce((most, row) => ((row?.pretension_kgf ?? 0) > (most?.pretension_kgf ?? 0) ? row : most), undefined);
}

const termOf = (quantity: QuantityLike | null): ExactTerm[] => (quantity === null ? [] : [{ quantity }]);
