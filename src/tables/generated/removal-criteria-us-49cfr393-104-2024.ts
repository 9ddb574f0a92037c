// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaUs49cfr3931042024 = {
  rows: {
    'chain': {
      'damage': { comparison: 'any', clause: '393.104(b)' },
      'crack': { comparison: 'any', clause: '393.104(b)' },
    },
  },
} as const;
