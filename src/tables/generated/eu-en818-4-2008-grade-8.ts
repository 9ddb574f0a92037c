// Generated from reference-tables/eu-en818-4-2008-grade-8 by `npm run tables`. Do not edit.
export const euEn81842008Grade8 = {
  source: {
    document: 'DGUV Information 209-021, after DIN EN 818-4:1996+A1:2008',
    edition: '2021',
    clause: 'table, grade 8',
    provenance: 'read',
  },
  rows: {
    '4 mm': { single_kg: 500, double_45_kg: 710, double_60_kg: 500, triple_45_kg: 1060, triple_60_kg: 750, choke_single_kg: 400, choke_double_45_kg: 560, choke_double_60_kg: 400, endless_choke_kg: 800 },
    '6 mm': { single_kg: 1120, double_45_kg: 1600, double_60_kg: 1120, triple_45_kg: 2360, triple_60_kg: 1700 },
    '7 mm': { single_kg: 1500, double_45_kg: 2120, double_60_kg: 1500, triple_45_kg: 3150, triple_60_kg: 2240, provenance: 'memory' },
    '8 mm': { single_kg: 2000, double_45_kg: 2800, double_60_kg: 2000, triple_45_kg: 4250, triple_60_kg: 3000 },
    '10 mm': { single_kg: 3150, double_45_kg: 4250, double_60_kg: 3150, triple_45_kg: 6700, triple_60_kg: 4750 },
    '13 mm': { single_kg: 5300, double_45_kg: 7500, double_60_kg: 5300, triple_45_kg: 11200, triple_60_kg: 8000 },
    '16 mm': { single_kg: 8000, double_45_kg: 11200, double_60_kg: 8000, triple_45_kg: 17000, triple_60_kg: 11800 },
    '18 mm': { single_kg: 10000, double_45_kg: 14000, double_60_kg: 10000, triple_45_kg: 21200, triple_60_kg: 15000 },
    '20 mm': { single_kg: 12500, double_45_kg: 17000, double_60_kg: 12500, triple_45_kg: 26500, triple_60_kg: 19000 },
    '22 mm': { single_kg: 15000, double_45_kg: 21200, double_60_kg: 15000, triple_45_kg: 31500, triple_60_kg: 22400 },
    '26 mm': { single_kg: 21200, double_45_kg: 30000, double_60_kg: 21200, triple_45_kg: 45000, triple_60_kg: 31500 },
    '28 mm': { single_kg: 25000, double_45_kg: 33500, double_60_kg: 25000, triple_45_kg: 50000, triple_60_kg: 37500 },
    '32 mm': { single_kg: 31500, double_45_kg: 45000, double_60_kg: 31500, triple_45_kg: 67000, triple_60_kg: 47500 },
    '36 mm': { single_kg: 40000, double_45_kg: 56000, double_60_kg: 40000, triple_45_kg: 85000, triple_60_kg: 60000 },
    '40 mm': { single_kg: 50000, double_45_kg: 71000, double_60_kg: 50000, triple_45_kg: 106000, triple_60_kg: 75000 },
    '45 mm': { single_kg: 63000, double_45_kg: 90000, double_60_kg: 63000, triple_45_kg: 132000, triple_60_kg: 95000 },
  },
} as const;
