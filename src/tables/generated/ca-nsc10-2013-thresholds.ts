// Generated from reference-tables/ca-nsc10-2013-thresholds by `npm run tables`. Do not edit.
export const caNsc102013Thresholds = {
  rows: {
    'one-tie-down-length': { value: 1.52, unit: 'm', clause: 'section 22', provenance: 'memory' },
    'one-tie-down-mass': { value: 500, unit: 'kg', clause: 'section 22', provenance: 'memory' },
    'two-tie-down-length': { value: 3.04, unit: 'm', clause: 'section 22', provenance: 'memory' },
    'length-step': { value: 3.04, unit: 'm', clause: 'section 22', provenance: 'memory' },
    'heavy-vehicle-mass': { value: 4500, unit: 'kg', clause: 'section 89' },
    'heavy-vehicle-count': { value: 4, clause: 'Division 7', provenance: 'memory' },
    'heavy-vehicle-tie-down-wll': { value: 2268, unit: 'kg', clause: 'Division 7', provenance: 'memory' },
    'light-vehicle-count': { value: 2, clause: 'section 88(2)' },
    'commercial-vehicle-mass': { value: 4500, unit: 'kg', clause: 'Part 1' },
    'aggregate-fraction': { value: 0.5, clause: 'Part 1' },
    'blocking-fraction': { value: 0.5, clause: 'Part 1', provenance: 'memory' },
  },
} as const;
