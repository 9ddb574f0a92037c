import { usWeldedChainRating } from './generated/us-welded-chain-rating.js';
import type { RatingTable } from './rating-table.js';

/**
 * Working load limits, design factors and minimum breaking forces of North American welded chain, grades 30
 * to 100, sizes 1/8 to 1-1/4 in. It is a product specification, no road rule: an unmarked chain has no rating
 * in it. Rows that 49 CFR 393.108 or the OSHA sling tables also print were read there; the rest is from memory.
 *
 * @example
 * chainRating({ ratings: usWeldedChain_2003, size: '3/8', grade: 43 }).designFactor
 * // => 3
 */
export const usWeldedChain_2003 = {
  id: 'us-welded-chain-2003',
  title: 'Welded steel chain by grade, NACM Welded Steel Chain Specifications, ASTM A413, A391 and A973',
  asOf: '2003',
  system: 'workingLoadLimit',
  units: 'us',
  chain: usWeldedChainRating,
  unmarkedChain: null,
  market: 'north-america',
} as const satisfies RatingTable;
