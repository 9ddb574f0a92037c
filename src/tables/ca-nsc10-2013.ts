import { us49cfr393108Chain } from './generated/us-49cfr393-108-chain.js';
import type { RatingTable } from './rating-table.js';

/**
 * Working load limits of chain marked with its grade only, in Canada: National Safety Code Standard 10, 2013. Its
 * tables are taken as those of 49 CFR 393.108, from memory; the kg column decides. Chain 1/4 to 5/8 in, grades 30 to 100.
 *
 * An unmarked chain has no rating in it, and webbing, rope and strapping have none but their mark: since 2010 an
 * unmarked tie-down may not be used, and {@link caNsc10_2013} counts it as nothing.
 *
 * @example
 * chainRating({ ratings: caNsc10_chain_2013, size: '5/16', grade: 70 }).workingLoadLimit
 * // => 2130 kg
 */
export const caNsc10_chain_2013 = {
  id: 'ca-nsc10-chain-2013',
  title: 'National Safety Code Standard 10, working load limits of chain marked with its grade',
  asOf: '2013',
  system: 'workingLoadLimit',
  units: 'si',
  chain: /* @__PURE__ */ chainTable(),
  unmarkedChain: null,
  market: 'north-america',
} as const satisfies RatingTable;

/** The rows of the United States under the document that they stand for here. */
function chainTable() {
  return {
    source: {
      document: 'National Safety Code for Motor Carriers, Standard 10, Cargo Securement',
      edition: '2013',
      clause: 'table of working load limits of chain',
      provenance: 'memory',
      note: 'taken as the same figures as 49 CFR 393.108',
    },
    rows: us49cfr393108Chain.rows,
  } as const;
}
