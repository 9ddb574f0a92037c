// Generated from reference-tables/us-49cfr393-106-credit by `npm run tables`. Do not edit.
export const us49cfr393106Credit = {
  rows: {
    'vehicle-to-cargo': { credit: 0.5, clause: '393.106(d)(1)' },
    'over-same-side': { credit: 0.5, clause: '393.106(d)(2)' },
    'over-other-side': { credit: 1, clause: '393.106(d)(3)' },
  },
} as const;
