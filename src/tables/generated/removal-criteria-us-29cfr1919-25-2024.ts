// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaUs29cfr1919252024 = {
  rows: {
    'chain': {
      'elongation': { comparison: '>', limit: 5, unit: '%', basis: 'when new', clause: '1919.25' },
      'damage': { comparison: 'any', clause: '1919.25' },
    },
  },
} as const;
