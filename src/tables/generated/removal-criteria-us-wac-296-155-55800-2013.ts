// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaUsWac296155558002013 = {
  rows: {
    'chain': {
      'least-diameter': { comparison: '<', unit: 'in', basis: 'wear table', clause: 'Table 13', provenance: 'memory' },
      'stretch': { comparison: 'any', clause: 'Table 12' },
      'crack': { comparison: 'any', clause: 'Table 12' },
      'bent-link': { comparison: 'any', clause: 'Table 12' },
      'heat-damage': { comparison: 'any', clause: 'Table 12' },
      'corrosion': { comparison: 'any', clause: 'Table 12' },
      'stiff-link': { comparison: 'any', clause: 'Table 12' },
      'weld-spatter': { comparison: 'any', clause: 'Table 12' },
      'mark-missing': { comparison: 'any', clause: 'Table 12' },
      'highest-temperature': { comparison: '>', limit: 1000, unit: 'F', clause: 'temperature' },
    },
    'hook': {
      'throat-opening': { comparison: '>=', limit: 5, unit: '%', basis: 'when new', clause: 'Table 12' },
      'throat-increase': { comparison: '>=', limit: 0.25, unit: 'in', basis: 'when new', clause: 'Table 12' },
      'wear': { comparison: '>', limit: 10, unit: '%', basis: 'when new', clause: 'Table 12' },
      'bend-or-twist': { comparison: 'any', clause: 'Table 12' },
      'latch-fails': { comparison: 'any', clause: 'Table 12' },
    },
  },
} as const;
