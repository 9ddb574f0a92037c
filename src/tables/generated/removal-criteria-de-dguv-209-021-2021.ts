// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaDeDguv2090212021 = {
  rows: {
    'chain': {
      'elongation': { comparison: '>=', limit: 5, unit: '%', basis: 'when new', clause: 'section 2' },
      'link-elongation': { comparison: '>=', limit: 5, unit: '%', basis: 'when new', clause: 'section 2' },
      'mean-wear': { comparison: '>', limit: 10, unit: '%', basis: 'nominal diameter', clause: 'section 2' },
    },
  },
} as const;
