// Generated from reference-tables/inspection-intervals by `npm run tables`. Do not edit.
export const inspectionIntervalsUs29cfr19101842011 = {
  rows: {
    'sling': {
      'any': {
        'each-use': { clause: '1910.184(d)' },
        'thorough': { most: 12, most_unit: 'month', clause: '1910.184(e)(3)' },
      },
    },
  },
} as const;
