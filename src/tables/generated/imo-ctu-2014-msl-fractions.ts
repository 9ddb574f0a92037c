// Generated from reference-tables/imo-ctu-2014-msl-fractions by `npm run tables`. Do not edit.
export const imoCtu2014MslFractions = {
  source: {
    document: 'IMO/ILO/UNECE Code of Practice for Packing of Cargo Transport Units (CTU Code)',
    edition: '2014',
    clause: 'Annex 7, 2.4',
    provenance: 'memory',
  },
  rows: {
    'chain': {
      'any': { fraction: 0.5 },
    },
    'webbing': {
      'reusable': { fraction: 0.5 },
      'single-use': { fraction: 0.75 },
    },
    'wire-rope': {
      'single-use': { fraction: 0.8 },
      'reusable': { fraction: 0.3 },
    },
    'strapping': {
      'single-use': { fraction: 0.7 },
    },
  },
} as const;
