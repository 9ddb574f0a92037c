// Generated from reference-tables/ca-nsc10-2013-inspection by `npm run tables`. Do not edit.
export const caNsc102013Inspection = {
  source: {
    document: 'National Safety Code for Motor Carriers, Standard 10, Cargo Securement',
    edition: '2013',
    clause: 'inspection',
    provenance: 'memory',
  },
  rows: {
    'first-check': { distance_km: 80 },
    're-check': { distance_km: 240, time_h: 3 },
  },
} as const;
