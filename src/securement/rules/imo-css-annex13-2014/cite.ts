import { imoCssAnnex132014Factors as factors } from '../../../tables/generated/imo-css-annex13-2014-factors.js';
import type { CheckSubject } from '../../../working/check.js';
import type { Provenance } from '../../../working/source.js';
import type { Working } from '../../../working/step.js';

const ANNEX = 'CSS Code, Annex 13 (before December 2020)';

/** What a check of the annex is about. Its numbers of sections differ between editions. */
export function aboutAnnex(
  working: Working,
  subject: string,
  title: string,
  article: string,
  clause: string,
  provenance: Provenance,
): CheckSubject {
  const { document, edition } = factors.source;
  if (working.shown) working.cite({ document, ...(edition && { edition }), clause, provenance });
  return { id: `${subject}/${article}`, title, clause: `${ANNEX}, ${clause}`, weight: 'requirement', subject: article };
}
