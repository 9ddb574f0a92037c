// Generated from reference-tables/nz-tlc-2017-multiples by `npm run tables`. Do not edit.
export const nzTlc2017Multiples = {
  source: {
    document: 'The Truck Loading Code',
    edition: '2017',
    clause: 'rigid loads',
    provenance: 'read',
  },
  rows: {
    'none': { multiple: 2 },
    'partial': { multiple: 1.5 },
    'adequate': { multiple: 1 },
  },
} as const;
