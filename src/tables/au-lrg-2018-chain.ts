import { auLrg2018Chain } from './generated/au-lrg-2018-chain.js';
import type { CapacityTable } from './rating-table.js';

/**
 * Lashing capacity of transport chain to AS/NZS 4344, as the Load Restraint Guide lists it: 6 to 13 mm, grade 70, in
 * tonnes of mass. Every figure is from memory, 8 mm is disputed, and the tag on the chain decides.
 *
 * @example
 * auLrg_2018_chain.chain.rows['10 mm'][70].lc_t
 * // => 6
 */
export const auLrg_2018_chain = {
  id: 'au-lrg-2018-chain',
  title: 'Load Restraint Guide, lashing capacity of transport chain',
  asOf: '2018',
  system: 'lashingCapacity',
  units: 'si',
  chain: auLrg2018Chain,
  unmarkedChain: null,
} as const satisfies CapacityTable;
