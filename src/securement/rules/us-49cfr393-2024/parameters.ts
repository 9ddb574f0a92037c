import type { QuantityLike } from '../../../quantities/quantity.js';
import { us49cfr393Thresholds } from '../../../tables/generated/us-49cfr393-thresholds.js';
import type { SourceRef } from '../../../working/source.js';
import type { Working } from '../../../working/step.js';

type Thresholds = typeof us49cfr393Thresholds.rows;

/** A threshold of the regulation as a quantity in the regulation's own unit. */
export function threshold<Item extends { [K in keyof Thresholds]: Thresholds[K] extends { unit: string } ? K : never }[keyof Thresholds]>(
  item: Item,
): Thresholds[Item] & QuantityLike {
  return us49cfr393Thresholds.rows[item] as Thresholds[Item] & QuantityLike;
}

/** A plain number of the regulation: a count or a fraction. */
export function parameter(item: 'heavy-machinery-count' | 'light-vehicle-count' | 'aggregate-fraction'): number {
  return us49cfr393Thresholds.rows[item].value;
}

/** Cites a paragraph of 49 CFR; `memory` and `interpretation` stay visible to the reader. */
export function cite(working: Working, clause: string, provenance: SourceRef['provenance'] = 'read', remark?: string): void {
  if (!working.shown) return;
  working.cite({ document: '49 CFR', edition: '2024', clause, provenance, ...(remark === undefined ? {} : { note: remark }) });
}
