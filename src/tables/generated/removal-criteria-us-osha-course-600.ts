// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaUsOshaCourse600 = {
  rows: {
    'chain': {
      'elongation': { comparison: '>', limit: 3, unit: '%', basis: 'when new', clause: 'sling safety' },
    },
  },
} as const;
