// Generated from reference-tables/us-49cfr393-108-unmarked by `npm run tables`. Do not edit.
export const us49cfr393108Unmarked = {
  source: {
    document: '49 CFR Part 393, Protection Against Shifting and Falling Cargo',
    edition: '2024',
    clause: '393.108(b)-(g)',
    provenance: 'read',
    note: 'a marked limit governs over every row; an illegible mark is none',
  },
  rows: {
    'wire-rope': {
      'WLL': { fraction: 0.25 },
    },
    'friction-mat': {
      'rating': { fraction: 0.5 },
    },
  },
} as const;
