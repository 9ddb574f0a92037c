// Generated from reference-tables/nz-tlc-2017-rated-strength by `npm run tables`. Do not edit.
export const nzTlc2017RatedStrength = {
  source: {
    document: 'The Truck Loading Code',
    edition: '2017',
    clause: 'basic criteria',
    provenance: 'read',
  },
  rows: {
    'chain': { fraction: 1 },
    'wire-rope': { fraction: 1 },
    'webbing': { fraction: 0.5 },
    'fiber-rope': { fraction: 0.5 },
  },
} as const;
