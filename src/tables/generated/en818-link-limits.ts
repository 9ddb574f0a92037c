// Generated from reference-tables/en818-link-limits by `npm run tables`. Do not edit.
export const en818LinkLimits = {
  source: {
    document: 'EN 818, short link chain',
    edition: '1999',
    clause: 'tables of dimensions',
    provenance: 'read',
    note: 'the multiple is read off the rows for 19, 28 and 36 mm; it is taken for every size',
  },
  rows: {
    'short-link': { outside_width_most_over_d: 3.7 },
  },
} as const;
