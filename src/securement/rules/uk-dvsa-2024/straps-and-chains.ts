import { holdsKind } from '../../../assembly/holds-kind.js';
import type { PartKind } from '../../../assembly/part.js';
import { type Check, failedCheck, metCheck, undeterminedCheck } from '../../../working/check.js';
import { note, type Words } from '../../../working/note.js';
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
  if (has('chain') && has('webbing')) return failedCheck(about, note(MIXED));
  const unknown = tieDowns.filter(({ parts }) => parts === undefined);
  if (unknown.length === 0 || tieDowns.length === 1) return metCheck(about);
  return undeterminedCheck(about, [note(OF_WHAT, { tieDowns: unknown.map(({ id }) => id).join(', ') })]);
}

const MIXED: Words = ['STRAPS_AND_CHAINS', 'Some are chain and some are webbing: they stretch unequally.'];
const OF_WHAT: Words = ['PARTS_NOT_LISTED', 'What these are made of: {tieDowns}.'];
