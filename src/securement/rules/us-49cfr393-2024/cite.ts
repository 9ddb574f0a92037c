import type { SourceRef } from '../../../working/source.js';
import type { Working } from '../../../working/step.js';

/** Cites a paragraph of 49 CFR, or another document; `memory` and `interpretation` stay visible to the reader. */
export function cite(working: Working, clause: string, provenance: SourceRef['provenance'] = 'read', document = '49 CFR'): void {
  if (!working.shown) return;
  for (const known of working.sources) if (known.clause === clause && known.document === document) return;
  working.cite({ document, edition: '2024', clause, provenance });
}
