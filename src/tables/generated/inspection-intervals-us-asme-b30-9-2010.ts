// Generated from reference-tables/inspection-intervals by `npm run tables`. Do not edit.
export const inspectionIntervalsUsAsmeB3092010 = {
  rows: {
    'sling': {
      'normal': {
        'thorough': { most: 12, most_unit: 'month', clause: '9-1.9.4' },
      },
      'severe': {
        'thorough': { least: 1, least_unit: 'month', most: 3, most_unit: 'month', clause: '9-1.9.4', provenance: 'memory' },
      },
      'special': {
        'thorough': { clause: '9-1.9.4' },
      },
    },
  },
} as const;
