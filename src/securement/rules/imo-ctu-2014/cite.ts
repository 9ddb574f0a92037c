import type { GeneratedTable } from '../../../tables/rating-table.js';
import type { CheckSubject } from '../../../working/check.js';
import type { Provenance } from '../../../working/source.js';
import type { Working } from '../../../working/step.js';

const CODE = 'CTU Code';

/** What a check of the force balance is about. The code could not be read: its clauses are from memory. */
export function aboutBalance(working: Working, subject: string, title: string, article: string): CheckSubject {
  const clause = 'Annex 7, section 4';
  if (working.shown) working.cite({ document: CODE, edition: '2014', clause, provenance: 'memory' });
  return { id: `${subject}/${article}`, title, clause: `${CODE}, ${clause}`, weight: 'requirement', subject: article };
}

/** Cites a table with the provenance of the row that was taken. */
export function citeTable(working: Working, { source }: GeneratedTable<unknown>, row?: Provenance): void {
  if (working.shown) working.cite(row === undefined ? source : { ...source, provenance: row });
}
