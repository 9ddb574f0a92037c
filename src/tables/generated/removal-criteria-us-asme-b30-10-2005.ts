// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaUsAsmeB30102005 = {
  rows: {
    'hook': {
      'throat-opening': { comparison: '>=', limit: 5, unit: '%', basis: 'when new', clause: '10-1.2.3' },
      'throat-increase': { comparison: '>=', limit: 0.25, unit: 'in', basis: 'when new', clause: '10-1.2.3' },
      'wear': { comparison: '>', limit: 10, unit: '%', basis: 'when new', clause: '10-1.2.3' },
      'bend-or-twist': { comparison: 'any', clause: '10-1.2.3' },
      'latch-fails': { comparison: 'any', clause: '10-1.2.3' },
    },
  },
} as const;
