// Generated from reference-tables/eu-en12195-3-2001-factors by `npm run tables`. Do not edit.
export const euEn1219532001Factors = {
  source: {
    document: 'EN 12195-3, Load restraint assemblies on road vehicles, Safety, Lashing chains',
    edition: '2001',
    clause: 'requirements',
    provenance: 'read',
  },
  rows: {
    'breaking-force-over-lc': { value: 2, provenance: 'memory' },
    'sling-share-of-lc': { value: 2 },
    'least-grade': { value: 8 },
  },
} as const;
