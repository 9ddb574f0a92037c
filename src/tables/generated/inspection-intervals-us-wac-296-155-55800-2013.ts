// Generated from reference-tables/inspection-intervals by `npm run tables`. Do not edit.
export const inspectionIntervalsUsWac296155558002013 = {
  rows: {
    'sling': {
      'normal': {
        'thorough': { most: 12, most_unit: 'month', clause: 'Table 12' },
      },
      'severe': {
        'thorough': { most: 3, most_unit: 'month', clause: 'Table 12' },
      },
      'special': {
        'thorough': { clause: 'Table 12' },
      },
    },
  },
} as const;
