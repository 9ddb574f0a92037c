// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaEuEn1219532001Criteria = {
  rows: {
    'chain': {
      'elongation': { comparison: '>', limit: 3, unit: '%', basis: 'when new', clause: 'annex', provenance: 'memory' },
      'wear': { comparison: '>', limit: 10, unit: '%', basis: 'nominal diameter', clause: 'annex', provenance: 'memory' },
      'crack': { comparison: 'any', clause: 'annex', provenance: 'memory' },
      'bent-link': { comparison: 'any', clause: 'annex', provenance: 'memory' },
      'mark-missing': { comparison: 'any', clause: 'annex', provenance: 'memory' },
    },
  },
} as const;
