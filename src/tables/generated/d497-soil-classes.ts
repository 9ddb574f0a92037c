// Generated from reference-tables/d497-soil-classes by `npm run tables`. Do not edit.
export const d497SoilClasses = {
  source: {
    document: 'ASABE D497, Agricultural Machinery Management Data',
    edition: 'edition not recalled',
    clause: 'traction: cone index and wheel numeric by soil',
    provenance: 'memory',
    note: 'for normally loaded tires',
  },
  rows: {
    'hard': { cone_index_kpa: 1800, wheel_numeric: 80 },
    'firm': { cone_index_kpa: 1200, wheel_numeric: 55 },
    'tilled': { cone_index_kpa: 900, wheel_numeric: 40 },
    'soft-or-sandy': { cone_index_kpa: 450, wheel_numeric: 20 },
  },
} as const;
