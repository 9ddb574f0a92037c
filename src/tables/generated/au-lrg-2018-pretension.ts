// Generated from reference-tables/au-lrg-2018-pretension by `npm run tables`. Do not edit.
export const auLrg2018Pretension = {
  source: {
    document: 'Load Restraint Guide; Heavy Vehicle (Mass, Dimension and Loading) National Regulation, Schedule 7',
    edition: '2018',
    clause: 'typical pre-tension of lashings',
    provenance: 'read',
    note: 'what was read cites the second edition of the guide',
  },
  rows: {
    'chain': {
      '8 mm': {
        'any': { pretension_kgf: 750 },
        'turnbuckle-or-ratchet': { pretension_kgf: 1000, provenance: 'memory' },
      },
      '10 mm': {
        'any': { pretension_kgf: 750 },
      },
    },
    'webbing': {
      '50 mm': {
        'hand-ratchet': { pretension_kgf: 300 },
      },
    },
  },
} as const;
