// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaDeBgBau3072 = {
  rows: {
    'chain': {
      'link-elongation': { comparison: '>', limit: 5, unit: '%', basis: 'when new', clause: 'leaflet 3072' },
      'wear': { comparison: '>', limit: 10, unit: '%', basis: 'nominal diameter', clause: 'leaflet 3072' },
    },
  },
} as const;
