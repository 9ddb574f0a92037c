// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaUsAsmeB3092010 = {
  rows: {
    'chain': {
      'least-diameter': { comparison: '<', unit: 'in', basis: 'wear table', clause: '9-1.9.5(c)', provenance: 'memory' },
      'stretch': { comparison: 'any', clause: '9-1.9.5' },
      'crack': { comparison: 'any', clause: '9-1.9.5' },
      'bent-link': { comparison: 'any', clause: '9-1.9.5' },
      'heat-damage': { comparison: 'any', clause: '9-1.9.5' },
      'corrosion': { comparison: 'any', clause: '9-1.9.5' },
      'stiff-link': { comparison: 'any', clause: '9-1.9.5' },
      'weld-spatter': { comparison: 'any', clause: '9-1.9.5' },
      'mark-missing': { comparison: 'any', clause: '9-1.9.5' },
      'highest-temperature': { comparison: '>', limit: 1000, unit: 'F', clause: 'Table 9-1.8.1-1', provenance: 'memory' },
    },
  },
} as const;
