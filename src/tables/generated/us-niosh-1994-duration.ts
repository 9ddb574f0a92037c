// Generated from reference-tables/us-niosh-1994-duration by `npm run tables`. Do not edit.
export const usNiosh1994Duration = {
  source: {
    document: 'Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) Publication No. 94-110',
    edition: '1994',
    clause: '1.3.5',
    provenance: 'memory',
  },
  rows: {
    'short': { up_to_h: 1, recovery_per_work: 1.2 },
    'moderate': { up_to_h: 2, recovery_per_work: 0.3 },
    'long': { up_to_h: 8 },
  },
} as const;
