// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaEuEn81862000 = {
  rows: {
    'chain': {
      'mean-diameter': { comparison: '<', limit: 90, unit: '%', basis: 'nominal diameter', clause: 'annex A' },
      'elongation': { comparison: '>', limit: 5, unit: '%', basis: 'when new', clause: 'annex A', provenance: 'memory' },
      'crack': { comparison: 'any', clause: 'annex A', provenance: 'interpretation' },
      'bent-link': { comparison: 'any', clause: 'annex A', provenance: 'interpretation' },
      'mark-missing': { comparison: 'any', clause: 'annex A', provenance: 'interpretation' },
      'temperature-class-8': { comparison: '>', limit: 400, unit: 'C', clause: 'temperature', provenance: 'memory' },
      'temperature-class-4': { comparison: '>', limit: 475, unit: 'C', clause: 'temperature' },
    },
    'hook': {
      'throat-opening': { comparison: '>', limit: 10, unit: '%', basis: 'when new', clause: 'annex A' },
      'latch-fails': { comparison: 'any', clause: 'annex A' },
    },
  },
} as const;
