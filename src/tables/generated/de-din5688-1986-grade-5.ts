// Generated from reference-tables/de-din5688-1986-grade-5 by `npm run tables`. Do not edit.
export const deDin56881986Grade5 = {
  source: {
    document: 'DGUV Information 201-030, after DIN 5688-1:1986',
    edition: 'section 6.3',
    clause: 'table, grade 5, symmetric',
    provenance: 'read',
  },
  rows: {
    '6 mm': { single_kg: 750, double_45_kg: 1000, double_60_kg: 750, triple_45_kg: 1600, triple_60_kg: 1120 },
    '8 mm': { single_kg: 1250, double_45_kg: 1700, double_60_kg: 1250, triple_45_kg: 2650, triple_60_kg: 1800 },
    '10 mm': { single_kg: 2000, double_45_kg: 2800, double_60_kg: 2000, triple_45_kg: 4250, triple_60_kg: 3000 },
    '13 mm': { single_kg: 3200, double_45_kg: 4500, double_60_kg: 3200, triple_45_kg: 6700, triple_60_kg: 4750 },
    '16 mm': { single_kg: 5000, double_45_kg: 7100, double_60_kg: 5000, triple_45_kg: 10000, triple_60_kg: 7500 },
    '18 mm': { single_kg: 6300, double_45_kg: 9000, double_60_kg: 6300, triple_45_kg: 13200, triple_60_kg: 9500 },
    '20 mm': { single_kg: 8000, double_45_kg: 11200, double_60_kg: 8000, triple_45_kg: 17000, triple_60_kg: 11800 },
    '23 mm': { single_kg: 10000, double_45_kg: 14000, double_60_kg: 10000, triple_45_kg: 21200, triple_60_kg: 15000 },
    '26 mm': { single_kg: 12500, double_45_kg: 18000, double_60_kg: 12500, triple_45_kg: 25000, triple_60_kg: 18000 },
    '28 mm': { single_kg: 16000, double_45_kg: 22400, double_60_kg: 16000, triple_45_kg: 32000, triple_60_kg: 23600 },
    '32 mm': { single_kg: 20000, double_45_kg: 28000, double_60_kg: 20000, triple_45_kg: 40000, triple_60_kg: 30000 },
    '36 mm': { single_kg: 25000, double_45_kg: 35500, double_60_kg: 25000, triple_45_kg: 50000, triple_60_kg: 37500 },
    '40 mm': { single_kg: 32000, double_45_kg: 45000, double_60_kg: 32000 },
    '45 mm': { single_kg: 40000, double_45_kg: 56000, double_60_kg: 40000 },
  },
} as const;
