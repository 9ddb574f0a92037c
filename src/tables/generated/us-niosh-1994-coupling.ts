// Generated from reference-tables/us-niosh-1994-coupling by `npm run tables`. Do not edit.
export const usNiosh1994Coupling = {
  source: {
    document: 'Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) Publication No. 94-110',
    edition: '1994',
    clause: 'table 7',
    provenance: 'memory',
  },
  rows: {
    'good': { below_edge: 1, from_edge: 1 },
    'fair': { below_edge: 0.95, from_edge: 1 },
    'poor': { below_edge: 0.9, from_edge: 0.9 },
  },
} as const;
