// Generated from reference-tables/inspection-intervals by `npm run tables`. Do not edit.
export const inspectionIntervalsUkLoler1998 = {
  rows: {
    'lifting-accessory': {
      'any': {
        'thorough': { most: 6, most_unit: 'month', clause: 'regulation 9', provenance: 'memory' },
      },
    },
  },
} as const;
