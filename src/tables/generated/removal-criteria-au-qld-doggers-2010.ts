// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaAuQldDoggers2010 = {
  rows: {
    'chain': {
      'elongation': { comparison: '>', limit: 10, unit: '%', basis: 'when new', clause: 'p. 35' },
      'wear': { comparison: '>', limit: 10, unit: '%', basis: 'nominal diameter', clause: 'p. 35' },
    },
    'hook': {
      'throat-opening': { comparison: '>', limit: 5, unit: '%', basis: 'when new', clause: 'p. 35' },
      'wear': { comparison: '>', limit: 10, unit: '%', basis: 'when new', clause: 'p. 35' },
    },
  },
} as const;
