// Generated from reference-tables/ca-nsc10-2013-credit by `npm run tables`. Do not edit.
export const caNsc102013Credit = {
  source: {
    document: 'National Safety Code for Motor Carriers, Standard 10, Cargo Securement',
    edition: '2013',
    clause: 'aggregate working load limit',
    provenance: 'read',
  },
  rows: {
    'vehicle-to-cargo': { credit: 1 },
    'over-same-side': { credit: 1, provenance: 'derived' },
    'over-other-side': { credit: 1 },
  },
} as const;
