import type { FractionTable } from './fraction-table.js';
import { imoCssAnnex132014MslFractions } from './generated/imo-css-annex13-2014-msl-fractions.js';

/**
 * Maximum securing load as a share of the breaking strength under the CSS Code, Annex 13, before its replacement of
 * December 2020: mild steel fittings, fiber rope, webbing, wire rope, steel band, chain.
 *
 * @example
 * maximumSecuringLoad({ ratings: imoCssMslFractions_2014, device: 'wire-rope', use: 'single-use', breakingForce: '100 kN' }).maximumSecuringLoad
 * // => 80 kN
 */
export const imoCssMslFractions_2014 = {
  id: 'imo-css-annex13-2014-msl-fractions',
  title: 'CSS Code, Annex 13, Table 1, maximum securing load as a share of the breaking strength',
  asOf: '2014',
  fractions: imoCssAnnex132014MslFractions,
} as const satisfies FractionTable;
