// Generated from reference-tables/eu-en818-4-1996-leg-length by `npm run tables`. Do not edit.
export const euEn81841996LegLength = {
  source: {
    document: 'EN 818-4, Short link chain for lifting purposes, Chain slings grade 8',
    edition: '1996',
    clause: 'Table 2',
    provenance: 'read',
  },
  rows: {
    'mechanical': { short_mm: 10, long_mm_per_m: 5 },
    'welded': { short_mm: 6, long_mm_per_m: 3 },
  },
} as const;
