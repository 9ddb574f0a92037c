// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaDeDguv109004 = {
  rows: {
    'chain': {
      'link-elongation-beyond-wear': { comparison: '>', limit: 5, unit: '%', basis: 'when new', clause: 'section 7' },
      'notch-depth': { comparison: '>', limit: 10, unit: '%', basis: 'remaining diameter', clause: 'section 7' },
      'bend': { comparison: '>', limit: 10, unit: '%', basis: 'remaining diameter', clause: 'section 7' },
    },
  },
} as const;
