import type { CheckSubject } from '../../../working/check.js';
import type { SourceRef } from '../../../working/source.js';
import type { Working } from '../../../working/step.js';

/** The law: what restraint has to withstand. */
export const SCHEDULE_7 = 'Heavy Vehicle (Mass, Dimension and Loading) National Regulation, Schedule 7';
/** The guide: how to show that it does. */
export const GUIDE = 'Load Restraint Guide 2018';

/** Cites a part of the guide; `memory` and `interpretation` stay visible to the reader. */
export function citeGuide(working: Working, clause: string, provenance: SourceRef['provenance'], about?: string): void {
  if (!working.shown) return;
  working.cite({
    document: 'Load Restraint Guide',
    edition: '2018',
    clause,
    provenance,
    ...(about === undefined ? {} : { note: about }),
  });
}

/** What a check of the law is about. */
export function aboutRule(id: string, title: string, subject: string, clause = SCHEDULE_7): CheckSubject {
  return { id: `${id}/${subject}`, title, clause, weight: 'requirement', subject };
}
