// Generated from reference-tables/us-49cfr393-106-credit by `npm run tables`. Do not edit.
export const us49cfr393106Credit = {
  id: 'us-49cfr393-106-credit',
  asOf: '2024',
  source: {
    document: '49 CFR Part 393, Protection Against Shifting and Falling Cargo',
    edition: '2024',
    clause: '393.106(d)',
    provenance: 'read',
  },
  rows: {
    'vehicle-to-cargo': { credit: 0.5, clause: '393.106(d)(1)' },
    'over-same-side': { credit: 0.5, clause: '393.106(d)(2)' },
    'over-other-side': { credit: 1, clause: '393.106(d)(3)' },
  },
} as const;
