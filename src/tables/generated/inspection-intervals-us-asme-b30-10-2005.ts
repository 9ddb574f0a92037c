// Generated from reference-tables/inspection-intervals by `npm run tables`. Do not edit.
export const inspectionIntervalsUsAsmeB30102005 = {
  rows: {
    'hook': {
      'normal': {
        'frequent': { most: 1, most_unit: 'month', clause: '10-2.2.1' },
      },
      'heavy': {
        'frequent': { least: 1, least_unit: 'week', most: 1, most_unit: 'month', clause: '10-2.2.1' },
      },
      'severe': {
        'frequent': { least: 1, least_unit: 'day', most: 1, most_unit: 'week', clause: '10-2.2.1' },
      },
    },
  },
} as const;
