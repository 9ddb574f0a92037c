import { holdsKind } from '../../../assembly/holds-kind.js';
import type { PartKind } from '../../../assembly/part.js';
import { type Check, failedCheck, metCheck, undeterminedCheck } from '../../../working/check.js';
import { note } from '../../../working/note.js';
import type { Working } from '../../../working/step.js';
import type { TieDown } from '../../plan.js';
import { aboutGuidance, citeGuidance } from './cite.js';

/**
 * Lashing straps and chains are not combined on one article. The line was read in part only, so the check is of
 * practice and decides nothing.
 */
export function adviseOnMixing(article: string, tieDowns: readonly TieDown[], working: Working): Check {
  citeGuidance(working, 'chains', 'read', 'in part');
  const about = aboutGuidance('no-mixing', 'Straps and chains not combined', article, 'practice');
  const has = (kind: PartKind) => tieDowns.some(({ parts = [] }) => holdsKind(parts, kind));
  if (has('chain') && has('webbing')) return failedCheck(about, note('STRAPS_AND_CHAINS'));
  const unknown = tieDowns.filter(({ parts }) => parts === undefined);
  if (unknown.length === 0 || tieDowns.length === 1) return metCheck(about);
  return undeterminedCheck(about, [note('PARTS_NOT_LISTED', { tieDowns: unknown.map(({ id }) => id).join(', ') })]);
}
