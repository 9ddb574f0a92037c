// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaUs29cfr19101842011 = {
  rows: {
    'chain': {
      'least-diameter': { comparison: '<', unit: 'in', basis: 'wear table', clause: '1910.184(e)(8)' },
      'elongation': { comparison: 'any', basis: 'increase in length', clause: '1910.184(e)(3)(iii)' },
      'bad-weld': { comparison: 'any', clause: '1910.184(e)(3)(iii)' },
      'bent-link': { comparison: 'any', clause: '1910.184(e)(3)(iii)' },
      'crack': { comparison: 'any', clause: '1910.184(e)(9)(i)' },
      'makeshift-repair': { comparison: 'any', clause: '1910.184(e)(2)' },
      'mark-missing': { comparison: 'any', clause: '1910.184(e)(1)' },
      'damage': { comparison: 'any', clause: '1910.184(d)' },
      'highest-temperature': { comparison: '>', limit: 1000, unit: 'F', clause: '1910.184(e)(6)', provenance: 'memory' },
    },
    'hook': {
      'throat-opening': { comparison: '>', limit: 15, unit: '%', basis: 'when new', clause: '1910.184(e)(9)(ii)', provenance: 'memory' },
      'twist': { comparison: '>', limit: 10, unit: 'deg', basis: 'plane of the unbent hook', clause: '1910.184(e)(9)(ii)', provenance: 'memory' },
      'crack': { comparison: 'any', clause: '1910.184(e)(9)(ii)', provenance: 'memory' },
    },
  },
} as const;
