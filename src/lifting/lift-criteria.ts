import { fail } from '../errors.js';
import type { Provenance } from '../working/source.js';

/** What one code says of a lift beyond the sling, as an exported constant that the caller names. */
export interface LiftCriteria {
  readonly id: string;
  readonly title: string;
  /** Rigging used in towing may not lift. */
  readonly towedMayNotLift: { readonly clause: string; readonly provenance: Provenance };
}

/**
 * Alberta, Occupational Health and Safety Code, Part 21: rigging used in towing must not be used for hoisting. As it was
 * read; the copy carried no date. Its shares of the breaking strength (section 292) are not in it.
 *
 * @example
 * caAlbertaOhs_21.towedMayNotLift.clause
 * // => 'section 292.1(2)'
 */
export const caAlbertaOhs_21 = {
  id: 'ca-alberta-ohs-21',
  title: 'Alberta, Occupational Health and Safety Code, Part 21',
  towedMayNotLift: { clause: 'section 292.1(2)', provenance: 'read' },
} as const satisfies LiftCriteria;

/** Refuses anything that is not what a code says of a lift. */
export function checkLiftCriteria(criteria: unknown): asserts criteria is LiftCriteria {
  const { id, title, towedMayNotLift } = (criteria ?? {}) as Partial<LiftCriteria>;
  if (typeof id !== 'string' || typeof title !== 'string' || typeof towedMayNotLift?.clause !== 'string') {
    const remedy = 'Import one, such as caAlbertaOhs_21; a set to inspect by belongs in inspectChain.';
    fail('UNKNOWN_CRITERIA_SET', 'criteria', 'what a code says of a lift', criteria, remedy);
  }
}
