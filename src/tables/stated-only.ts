import type { SourceRef } from '../working/source.js';
import type { CapacitySystem, CapacityTable } from './rating-table.js';

/** A document that rates no part by its size: only the capacity stated for a part counts. */
export function statedOnly(id: string, asOf: string, system: CapacitySystem, source: SourceRef): CapacityTable {
  return {
    id,
    title: 'Capacities as stated',
    asOf,
    system,
    units: 'si',
    chain: { source, rows: {} },
    unmarkedChain: null,
  };
}
