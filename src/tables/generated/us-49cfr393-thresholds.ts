// Generated from reference-tables/us-49cfr393-thresholds by `npm run tables`. Do not edit.
export const us49cfr393Thresholds = {
  rows: {
    'one-tie-down-length': { value: 5, unit: 'ft', clause: '393.110(b)(1)' },
    'one-tie-down-mass': { value: 1100, unit: 'lb', clause: '393.110(b)(1)' },
    'two-tie-down-length': { value: 10, unit: 'ft', clause: '393.110(b)(2)(ii)', provenance: 'memory' },
    'length-step': { value: 10, unit: 'ft', clause: '393.110(b)(3)' },
    'heavy-machinery-mass': { value: 10000, unit: 'lb', clause: '393.130(a)' },
    'heavy-machinery-count': { value: 4, clause: '393.130(c)(1)' },
    'light-vehicle-mass': { value: 10000, unit: 'lb', clause: '393.128(a)' },
    'light-vehicle-count': { value: 2, clause: '393.128', provenance: 'memory' },
    'commercial-vehicle-mass': { value: 10001, unit: 'lb', clause: '390.5' },
    'aggregate-fraction': { value: 0.5, clause: '393.106(d)' },
    'handbook-tie-down-wll': { value: 5000, unit: 'lb', clause: 'handbook ch. 10' },
    'front-structure-height': { value: 4, unit: 'ft', clause: '393.114(b)' },
    'front-structure-low-strength': { value: 0.5, clause: '393.114(c)(1)', provenance: 'memory' },
    'front-structure-high-strength': { value: 0.4, clause: '393.114(c)(2)', provenance: 'memory' },
  },
} as const;
