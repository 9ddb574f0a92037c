import { ukDvsa2024Accelerations as accelerations } from '../../../tables/generated/uk-dvsa-2024-accelerations.js';
import type { CheckSubject } from '../../../working/check.js';
import type { SourceRef } from '../../../working/source.js';
import type { Working } from '../../../working/step.js';

export const GUIDANCE = 'Guidance on securing loads on goods vehicles, December 2024';

/** Cites a part of the guidance; `memory` and `interpretation` stay visible to the reader. */
export function citeGuidance(
  working: Working,
  clause: string,
  provenance: SourceRef['provenance'],
  about?: string,
): void {
  const { document, edition } = accelerations.source;
  if (working.shown) {
    working.cite({ document, edition, clause, provenance, ...(about === undefined ? {} : { note: about }) });
  }
}

/** What a check is about. */
export function aboutGuidance(
  about: string,
  title: string,
  subject: string,
  weight: CheckSubject['weight'] = 'requirement',
): CheckSubject {
  const id = weight === 'practice' ? `practice/${about}/${subject}` : `${about}/${subject}`;
  return { id, title, clause: GUIDANCE, weight, subject };
}
