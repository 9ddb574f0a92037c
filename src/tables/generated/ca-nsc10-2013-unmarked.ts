// Generated from reference-tables/ca-nsc10-2013-unmarked by `npm run tables`. Do not edit.
export const caNsc102013Unmarked = {
  source: {
    document: 'National Safety Code for Motor Carriers, Standard 10, Cargo Securement',
    edition: '2013',
    clause: '11(4), marking of tie-downs',
    provenance: 'read',
  },
  rows: {
    'chain': {
      'grade and WLL': { counts_as: 'nothing' },
      'WLL': { counts_as: 'table', provenance: 'memory' },
    },
    'wire-rope': {
      'WLL': { counts_as: 'nothing' },
      'construction': { counts_as: 'nothing' },
    },
    'fiber-rope': {
      'composition or WLL': { counts_as: 'nothing' },
    },
    'manila': {
      'WLL': { counts_as: 'nothing' },
    },
    'friction-mat': {
      'rating': { counts_as: 'nothing' },
    },
  },
} as const;
