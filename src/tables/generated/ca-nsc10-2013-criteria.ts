// Generated from reference-tables/ca-nsc10-2013-criteria by `npm run tables`. Do not edit.
export const caNsc102013Criteria = {
  source: {
    document: 'National Safety Code for Motor Carriers, Standard 10, Cargo Securement',
    edition: '2013',
    clause: 'performance criteria',
    provenance: 'read',
  },
  rows: {
    'forward': { g_against_wll: 0.8 },
    'rearward': { g_against_wll: 0.5 },
    'sideways': { g_against_wll: 0.5 },
  },
} as const;
