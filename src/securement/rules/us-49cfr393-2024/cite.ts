import type { CheckSubject } from '../../../working/check.js';
import type { SourceRef } from '../../../working/source.js';
import type { Working } from '../../../working/step.js';

const CFR = '49 CFR';

/** Cites a paragraph of 49 CFR, or another document; `memory` and `interpretation` stay visible to the reader. */
export function cite(
  working: Working,
  clause: string,
  provenance: SourceRef['provenance'] = 'read',
  document = CFR,
): void {
  if (working.shown) working.cite({ document, ...(document === CFR ? { edition: '2024' } : {}), clause, provenance });
}

/** What a check of a paragraph is about; the paragraph is cited with it. */
export function aboutRule(
  working: Working,
  paragraph: string,
  title: string,
  subject: string,
  provenance?: SourceRef['provenance'],
  document = CFR,
): CheckSubject {
  cite(working, paragraph, provenance, document);
  return { id: `${paragraph}/${subject}`, title, clause: `${document} ${paragraph}`, weight: 'requirement', subject };
}
