// Generated from reference-tables/inspection-intervals by `npm run tables`. Do not edit.
export const inspectionIntervalsUsNavfacP307 = {
  rows: {
    'sling': {
      'any': {
        'thorough': { most: 3, most_unit: 'month', clause: 'section 14' },
      },
    },
  },
} as const;
