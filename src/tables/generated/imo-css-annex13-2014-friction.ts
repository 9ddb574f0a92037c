// Generated from reference-tables/imo-css-annex13-2014-friction by `npm run tables`. Do not edit.
export const imoCssAnnex132014Friction = {
  source: {
    document: 'Code of Safe Practice for Cargo Stowage and Securing (CSS Code), Annex 13',
    edition: 'in force in 2014, before its replacement of December 2020',
    clause: '7.2',
    provenance: 'memory',
  },
  rows: {
    'timber': {
      'timber': { mu_dry: 0.4, mu_wet: 0.4, mu_dry_provenance: 'read' },
    },
    'steel': {
      'timber': { mu_dry: 0.3 },
      'rubber': { mu_dry: 0.3 },
      'steel': { mu_dry: 0.1, mu_wet: 0 },
    },
  },
} as const;
