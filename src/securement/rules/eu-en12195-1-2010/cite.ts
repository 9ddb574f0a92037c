import { euEn1219512010Accelerations } from '../../../tables/generated/eu-en12195-1-2010-accelerations.js';
import { euEn1219512010Factors } from '../../../tables/generated/eu-en12195-1-2010-factors.js';
import type { CheckSubject } from '../../../working/check.js';
import type { Provenance } from '../../../working/source.js';
import type { Working } from '../../../working/step.js';
import { type Heading, SIDE } from '../../forces/directions.js';

/** The standard was not read; its parts go by their subject, and formulas that were recalled say so. */
export const STANDARD = 'EN 12195-1:2010';

/** Cites a part of the standard by its subject. */
export function cite(working: Working, clause: string, provenance: Provenance = 'memory'): void {
  const { document, edition } = euEn1219512010Factors.source;
  if (working.shown) working.cite({ document, edition, clause, provenance });
}

/** What a check is about; the part of the standard is cited with it. */
export function aboutRule(
  working: Working,
  id: string,
  title: string,
  subject: string,
  clause: string,
  provenance?: Provenance,
): CheckSubject {
  cite(working, clause, provenance);
  return { id: `${id}/${subject}`, title, clause: `${STANDARD}, ${clause}`, weight: 'requirement', subject };
}

type Factors = typeof euEn1219512010Factors.rows;

/** A factor, number or limit of the standard. */
export function factor(working: Working, name: keyof Factors): number {
  const row = euEn1219512010Factors.rows[name];
  const { source } = euEn1219512010Factors;
  if (working.shown) working.cite('provenance' in row ? { ...source, provenance: row.provenance } : source);
  return row.value;
}

/** fs of over-top lashing: 1.25 forward, 1.1 to the side and to the rear. */
export function safetyFactor(working: Working, heading: Heading): number {
  return factor(working, `safety-factor-${SIDE[heading]}`);
}

/** Acceleration coefficients, as shares of standard gravity. */
export interface Coefficients {
  readonly c: number;
  readonly cz: number;
}

type Rows = typeof euEn1219512010Accelerations.rows;

/** c and cz of a check in a heading; undefined where the standard has no such check there. */
export function coefficients(working: Working, check: keyof Rows, heading: Heading): Coefficients | undefined {
  const { rows, source } = euEn1219512010Accelerations;
  const byDirection: { readonly [direction: string]: Coefficients & { readonly provenance?: Provenance } } =
    rows[check];
  const row = byDirection[SIDE[heading]];
  if (working.shown && row !== undefined) {
    working.cite(row.provenance === undefined ? source : { ...source, provenance: row.provenance });
  }
  return row;
}
