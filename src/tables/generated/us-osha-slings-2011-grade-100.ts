// Generated from reference-tables/us-osha-slings-2011-grade-100 by `npm run tables`. Do not edit.
export const usOshaSlings2011Grade100 = {
  source: {
    document: 'Occupational Safety and Health Administration, Guidance on Safe Sling Use, Tables and Figures',
    edition: 'after the rule of June 8, 2011 (76 FR 33590)',
    clause: 'Table 2',
    provenance: 'read',
  },
  rows: {
    '7/32': { single_lb: 2700, double_60_lb: 4700, double_45_lb: 3800, double_30_lb: 2700, triple_60_lb: 7000, triple_45_lb: 5700, triple_30_lb: 4000 },
    '9/32': { single_lb: 4300, double_60_lb: 7400, double_45_lb: 6100, double_30_lb: 4300, triple_60_lb: 11200, triple_45_lb: 9100, triple_30_lb: 6400 },
    '5/16': { single_lb: 5700, double_60_lb: 9900, double_45_lb: 8100, double_30_lb: 5700, triple_60_lb: 14800, triple_45_lb: 12100, triple_30_lb: 8500 },
    '3/8': { single_lb: 8800, double_60_lb: 15200, double_45_lb: 12400, double_30_lb: 8800, triple_60_lb: 22900, triple_45_lb: 18700, triple_30_lb: 13200 },
    '1/2': { single_lb: 15000, double_60_lb: 26000, double_45_lb: 21200, double_30_lb: 15000, triple_60_lb: 39000, triple_45_lb: 31800, triple_30_lb: 22500 },
    '5/8': { single_lb: 22600, double_60_lb: 39100, double_45_lb: 32000, double_30_lb: 22600, triple_60_lb: 58700, triple_45_lb: 47900, triple_30_lb: 33900, provenance: 'memory' },
    '3/4': { single_lb: 35300, double_60_lb: 61100, double_45_lb: 49900, double_30_lb: 35300, triple_60_lb: 91700, triple_45_lb: 74900, triple_30_lb: 53000, provenance: 'memory' },
    '7/8': { single_lb: 42700, double_60_lb: 74000, double_45_lb: 60400, double_30_lb: 42700, triple_60_lb: 110900, triple_45_lb: 90600, triple_30_lb: 64000, provenance: 'memory' },
    '1': { single_lb: 59700, double_60_lb: 103400, double_45_lb: 84400, double_30_lb: 59700, triple_60_lb: 155100, triple_45_lb: 126600, triple_30_lb: 89600, provenance: 'memory' },
    '1-1/4': { single_lb: 90400, double_60_lb: 156600, double_45_lb: 127800, double_30_lb: 90400, triple_60_lb: 234900, triple_45_lb: 191800, triple_30_lb: 135600, provenance: 'memory' },
  },
} as const;
