// Generated from reference-tables/us-49cfr393-108-unmarked by `npm run tables`. Do not edit.
export const us49cfr393108Unmarked = {
  id: 'us-49cfr393-108-unmarked',
  asOf: '2024',
  source: {
    document: '49 CFR Part 393, Protection Against Shifting and Falling Cargo',
    edition: '2024',
    clause: '393.108(b)-(g)',
    provenance: 'read',
    note: 'a marked working load limit governs over every row, up or down; an illegible mark is the same as none',
  },
  rows: {
    'chain': {
      'grade and WLL': { counts_as: 'grade 30', clause: '393.108(d)' },
      'WLL': { counts_as: 'table', clause: '393.108(b)' },
    },
    'wire-rope': {
      'WLL': { counts_as: 'quarter of nominal strength', fraction: 0.25, clause: '393.108(e)(1)' },
      'construction': { counts_as: '6x37 fiber core', clause: '393.108(e)(2)' },
    },
    'fiber-rope': {
      'composition': { counts_as: 'polypropylene', clause: '393.108(c)' },
    },
    'manila': {
      'WLL': { counts_as: 'table', clause: '393.108(f)' },
    },
    'friction-mat': {
      'rating': { counts_as: 'fraction of the weight resting on the mat', fraction: 0.5, clause: '393.108(g)' },
    },
  },
} as const;
