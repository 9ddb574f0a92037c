import type { CheckSubject } from '../../../working/check.js';
import type { Provenance } from '../../../working/source.js';
import type { Working } from '../../../working/step.js';

/** A clause of the standard as checks and steps name it. */
export const clauseOf = (clause: string): string => `NSC Standard 10, ${clause}`;

/** Cites a clause of the standard; `memory` and `interpretation` stay visible to the reader. */
export function cite(working: Working, clause: string, provenance: Provenance = 'read'): void {
  if (!working.shown) return;
  working.cite({
    document: 'National Safety Code for Motor Carriers, Standard 10, Cargo Securement',
    edition: '2013',
    clause,
    provenance,
  });
}

/** What a check of a clause is about; the clause is cited with it. `part` tells two checks of one clause apart. */
export function aboutRule(
  working: Working,
  { clause, part }: { readonly clause: string; readonly part?: string },
  title: string,
  subject: string,
  provenance?: Provenance,
): CheckSubject {
  cite(working, part === undefined ? clause : `${clause}, ${part}`, provenance);
  return {
    id: `${part === undefined ? clause : `${clause} ${part}`}/${subject}`,
    title,
    clause: clauseOf(clause),
    weight: 'requirement',
    subject,
  };
}
