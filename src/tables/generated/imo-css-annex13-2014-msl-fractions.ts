// Generated from reference-tables/imo-css-annex13-2014-msl-fractions by `npm run tables`. Do not edit.
export const imoCssAnnex132014MslFractions = {
  source: {
    document: 'Code of Safe Practice for Cargo Stowage and Securing (CSS Code), Annex 13',
    edition: 'in force in 2014, before its replacement of December 2020',
    clause: 'section 4, Table 1',
    provenance: 'read',
  },
  rows: {
    'mild-steel-fitting': {
      'any': { fraction: 0.5 },
    },
    'fiber-rope': {
      'any': { fraction: 0.33 },
    },
    'webbing': {
      'any': { fraction: 0.5 },
    },
    'wire-rope': {
      'single-use': { fraction: 0.8 },
      'reusable': { fraction: 0.3 },
    },
    'strapping': {
      'single-use': { fraction: 0.7 },
    },
    'chain': {
      'any': { fraction: 0.5 },
    },
  },
} as const;
