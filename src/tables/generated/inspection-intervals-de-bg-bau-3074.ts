// Generated from reference-tables/inspection-intervals by `npm run tables`. Do not edit.
export const inspectionIntervalsDeBgBau3074 = {
  rows: {
    'sling': {
      'heavy': {
        'thorough': { most: 6, most_unit: 'month', clause: 'leaflet 3074' },
      },
      'light': {
        'thorough': { most: 12, most_unit: 'month', clause: 'leaflet 3074' },
      },
      'any': {
        'crack-test': { most: 36, most_unit: 'month', clause: 'leaflet 30481' },
      },
    },
  },
} as const;
