// Generated from reference-tables/eu-en818-5-2008-grade-4 by `npm run tables`. Do not edit.
export const euEn81852008Grade4 = {
  source: {
    document: 'DGUV Information 209-021, after DIN EN 818-5:1999+A1:2008',
    edition: '2021',
    clause: 'table, grade 4',
    provenance: 'read',
  },
  rows: {
    '8 mm': { single_kg: 1000, double_45_kg: 1400, double_60_kg: 1000, triple_45_kg: 2120, triple_60_kg: 1500, choke_single_kg: 800, choke_double_45_kg: 1120, choke_double_60_kg: 800, endless_choke_kg: 1600 },
    '10 mm': { single_kg: 1600, double_45_kg: 2240, double_60_kg: 1600, triple_45_kg: 3250, triple_60_kg: 2360, choke_single_kg: 1280, choke_double_45_kg: 1790, choke_double_60_kg: 1280, endless_choke_kg: 2500 },
    '13 mm': { single_kg: 2650, double_45_kg: 3750, double_60_kg: 2650, triple_45_kg: 5600, triple_60_kg: 4000, choke_single_kg: 2120, choke_double_45_kg: 2960, choke_double_60_kg: 2120, endless_choke_kg: 4250 },
    '16 mm': { single_kg: 4000, double_45_kg: 5600, double_60_kg: 4000, triple_45_kg: 8500, triple_60_kg: 6000, choke_single_kg: 3200, choke_double_45_kg: 4480, choke_double_60_kg: 3200, endless_choke_kg: 6300 },
    '18 mm': { single_kg: 5000, double_45_kg: 7100, double_60_kg: 5000, triple_45_kg: 10600, triple_60_kg: 7500, choke_single_kg: 4000, choke_double_45_kg: 5600, choke_double_60_kg: 4000, endless_choke_kg: 8000 },
    '20 mm': { single_kg: 6300, double_45_kg: 8500, double_60_kg: 6300, triple_45_kg: 13200, triple_60_kg: 9500, choke_single_kg: 5040, choke_double_45_kg: 7050, choke_double_60_kg: 5040, endless_choke_kg: 10000 },
    '23 mm': { single_kg: 8000, double_45_kg: 11800, double_60_kg: 8000, triple_45_kg: 17000, triple_60_kg: 12500, choke_single_kg: 6400, choke_double_45_kg: 8960, choke_double_60_kg: 6400, endless_choke_kg: 13200 },
    '26 mm': { single_kg: 10600, double_45_kg: 15000, double_60_kg: 10600, triple_45_kg: 22400, triple_60_kg: 16000, choke_single_kg: 8480, choke_double_45_kg: 11870, choke_double_60_kg: 8480, endless_choke_kg: 17000 },
    '28 mm': { single_kg: 12500, double_45_kg: 17000, double_60_kg: 12500, triple_45_kg: 25000, triple_60_kg: 18000, choke_single_kg: 10000, choke_double_45_kg: 14000, choke_double_60_kg: 10000, endless_choke_kg: 20000 },
    '32 mm': { single_kg: 16000, double_45_kg: 22400, double_60_kg: 16000, triple_45_kg: 33500, triple_60_kg: 23600, choke_single_kg: 12800, choke_double_45_kg: 17920, choke_double_60_kg: 12800, endless_choke_kg: 25000 },
    '36 mm': { single_kg: 20000, double_45_kg: 28000, double_60_kg: 20000, triple_45_kg: 42500, triple_60_kg: 30000, choke_single_kg: 16000, choke_double_45_kg: 22400, choke_double_60_kg: 16000, endless_choke_kg: 31500 },
    '40 mm': { single_kg: 25000, double_45_kg: 35500, double_60_kg: 25000, triple_45_kg: 53000, triple_60_kg: 37500, choke_single_kg: 20000, choke_double_45_kg: 28000, choke_double_60_kg: 20000, endless_choke_kg: 40000 },
    '45 mm': { single_kg: 31500, double_45_kg: 45000, double_60_kg: 31500, triple_45_kg: 67000, triple_60_kg: 47500, choke_single_kg: 25200, choke_double_45_kg: 35280, choke_double_60_kg: 25200, endless_choke_kg: 50000 },
  },
} as const;
