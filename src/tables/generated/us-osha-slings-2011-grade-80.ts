// Generated from reference-tables/us-osha-slings-2011-grade-80 by `npm run tables`. Do not edit.
export const usOshaSlings2011Grade80 = {
  source: {
    document: 'Occupational Safety and Health Administration, Guidance on Safe Sling Use, Tables and Figures',
    edition: 'after the rule of June 8, 2011 (76 FR 33590)',
    clause: 'Table 1',
    provenance: 'read',
  },
  rows: {
    '7/32': { single_lb: 2100, double_60_lb: 3600, double_45_lb: 3000, double_30_lb: 2100, triple_60_lb: 5500, triple_45_lb: 4400, triple_30_lb: 3200 },
    '9/32': { single_lb: 3500, double_60_lb: 6100, double_45_lb: 4900, double_30_lb: 3500, triple_60_lb: 9100, triple_45_lb: 7400, triple_30_lb: 5200 },
    '5/16': { single_lb: 4500, double_60_lb: 7800, double_45_lb: 6400, double_30_lb: 4500, triple_60_lb: 11700, triple_45_lb: 9500, triple_30_lb: 6800 },
    '3/8': { single_lb: 7100, double_60_lb: 12300, double_45_lb: 10000, double_30_lb: 7100, triple_60_lb: 18400, triple_45_lb: 15100, triple_30_lb: 10600 },
    '1/2': { single_lb: 12000, double_60_lb: 20800, double_45_lb: 17000, double_30_lb: 12000, triple_60_lb: 31200, triple_45_lb: 25500, triple_30_lb: 18000 },
    '5/8': { single_lb: 18100, double_60_lb: 31300, double_45_lb: 25600, double_30_lb: 18100, triple_60_lb: 47000, triple_45_lb: 38400, triple_30_lb: 27100 },
    '3/4': { single_lb: 28300, double_60_lb: 49000, double_45_lb: 40000, double_30_lb: 28300, triple_60_lb: 73500, triple_45_lb: 60000, triple_30_lb: 42400 },
    '7/8': { single_lb: 34200, double_60_lb: 59200, double_45_lb: 48400, double_30_lb: 34200, triple_60_lb: 88900, triple_45_lb: 72500, triple_30_lb: 51300 },
    '1': { single_lb: 47700, double_60_lb: 82600, double_45_lb: 67400, double_30_lb: 47700, triple_60_lb: 123900, triple_45_lb: 101200, triple_30_lb: 71500 },
    '1-1/4': { single_lb: 72300, double_60_lb: 125200, double_45_lb: 102200, double_30_lb: 72300, triple_60_lb: 187800, triple_45_lb: 153400, triple_30_lb: 108400 },
  },
} as const;
