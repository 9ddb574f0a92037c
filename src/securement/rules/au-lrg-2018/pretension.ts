import { auLrg2018Pretension } from '../../../tables/generated/au-lrg-2018-pretension.js';
import { rowOf } from '../../../tables/rating-table.js';
import { type Check, undeterminedCheck } from '../../../working/check.js';
import { judgeHeld, known } from '../../forces/held.js';
import { inForce } from '../../forces/sums.js';
import { byCapacity, byPretension, knownLoad, pretensionNotStated, type RatedLayout } from '../../forces/tie-downs.js';
import type { TieDown } from '../../plan.js';
import { aboutPractice } from '../../practice.js';
import type { RuleContext } from '../../rule-set.js';
import { aboutRule, citeGuide, GUIDE } from './cite.js';

/**
 * A tie-down over the load counts with its pretension, which no part of it may be too weak for: T ≤ LC. That is our
 * reading; a damaged part counts zero, so that a pretension through it fails here.
 */
export function judgeAgainstCapacity(tieDown: RatedLayout, { working, units }: RuleContext): Check {
  citeGuide(working, 'pretension', 'interpretation', 'no more than the lashing capacity');
  const { id } = tieDown.layout.tieDown;
  const about = aboutRule('pretension', 'Pretension within the lashing capacity', id, GUIDE);
  const tension = byPretension(tieDown).force;
  const stated = knownLoad(tension);
  if (stated === null) return undeterminedCheck(about, [pretensionNotStated(id)]);
  const { force, missing } = byCapacity(tieDown);
  const held = { least: [{ quantity: force.least }], most: [{ quantity: force.most }], missing };
  return judgeHeld(about, [{ quantity: stated }], held, inForce(units));
}

/**
 * The least pretension, as advice: 750 kgf for 8 and 10 mm chain, 1000 kgf for 8 mm
 * chain with a turnbuckle or ratchet (from memory), 300 kgf for 50 mm webbing with a hand ratchet.
 */
export function adviseLeastPretension(tieDown: RatedLayout, { working, units }: RuleContext): Check[] {
  const stated = knownLoad(byPretension(tieDown).force);
  const least = leastPretension(tieDown.layout.tieDown);
  if (stated === null || least === undefined) return [];
  if (working.shown) working.cite({ ...auLrg2018Pretension.source, provenance: least.provenance ?? 'read' });
  const about = aboutPractice(
    'pretension',
    'Least pretension of its chain or webbing',
    tieDown.layout.tieDown.id,
    GUIDE,
  );
  const asked = [{ quantity: { value: least.pretension_kgf, unit: 'kgf' as const } }];
  return [judgeHeld(about, asked, known([{ quantity: stated }]), inForce(units))];
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
