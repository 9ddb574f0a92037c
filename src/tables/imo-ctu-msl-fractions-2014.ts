import type { FractionTable } from './fraction-table.js';
import { imoCtu2014MslFractions } from './generated/imo-ctu-2014-msl-fractions.js';

/**
 * Maximum securing load as a share of the breaking strength under the CTU Code, edition of 2014, from memory: chain,
 * webbing, wire rope, steel band.
 *
 * @example
 * maximumSecuringLoad({ ratings: imoCtuMslFractions_2014, device: 'webbing', use: 'single-use', breakingForce: '40 kN' }).maximumSecuringLoad
 * // => 30 kN
 */
export const imoCtuMslFractions_2014 = {
  id: 'imo-ctu-2014-msl-fractions',
  title: 'CTU Code, Annex 7, maximum securing load as a share of the breaking strength',
  asOf: '2014',
  fractions: imoCtu2014MslFractions,
} as const satisfies FractionTable;
