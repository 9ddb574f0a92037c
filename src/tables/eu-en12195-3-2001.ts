import { euEn1219532001Chain } from './generated/eu-en12195-3-2001-chain.js';
import type { CapacityTable } from './rating-table.js';

/**
 * Lashing capacities (LC) of lashing chain of class 8, 6 to 22 mm: EN 12195-3:2001. LC is for a straight pull and half
 * of the breaking force. A chain that carries no class has no capacity in it, and neither has any other kind of part.
 *
 * @example
 * euEn12195_3_2001.chain.rows['10 mm']['8'].lc_kn
 * // => 63
 */
export const euEn12195_3_2001 = {
  id: 'eu-en12195-3-2001',
  title: 'EN 12195-3, lashing capacities of lashing chain',
  asOf: '2001',
  system: 'lashingCapacity',
  units: 'si',
  chain: euEn1219532001Chain,
  unmarkedChain: null,
} as const satisfies CapacityTable;
