// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaUs29cfr19262512019 = {
  rows: {
    'chain': {
      'wear-depth': { comparison: '>', unit: 'in', basis: 'wear table', clause: '1926.251(b)(5)' },
      'mark-missing': { comparison: 'any', clause: '1926.251(b)(1)' },
      'damage': { comparison: 'any', clause: '1926.251(a)(6)' },
    },
  },
} as const;
