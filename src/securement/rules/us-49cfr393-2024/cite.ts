import type { SourceRef } from '../../../working/source.js';
import type { Working } from '../../../working/step.js';

const DOCUMENT = '49 CFR';

/** Cites a paragraph of 49 CFR; `memory` and `interpretation` stay visible to the reader. */
export function cite(working: Working, clause: string, provenance: SourceRef['provenance'] = 'read', remark?: string): void {
  if (!working.shown) return;
  for (const known of working.sources) if (known.clause === clause && known.document === DOCUMENT) return;
  working.cite({ document: DOCUMENT, edition: '2024', clause, provenance, ...(remark === undefined ? {} : { note: remark }) });
}
