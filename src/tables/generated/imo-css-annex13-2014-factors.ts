// Generated from reference-tables/imo-css-annex13-2014-factors by `npm run tables`. Do not edit.
export const imoCssAnnex132014Factors = {
  source: {
    document: 'Code of Safe Practice for Cargo Stowage and Securing (CSS Code), Annex 13',
    edition: 'in force in 2014, before its replacement of December 2020',
    clause: 'sections 5 to 7 and the worked example',
    provenance: 'read',
  },
  rows: {
    'msl-over-calculation-strength': { value: 1.5 },
    'rule-of-thumb-msl-over-weight': { value: 1, provenance: 'memory' },
    'rule-of-thumb-steepest-angle': { value: 60, unit: 'deg', provenance: 'memory' },
    'gravity': { value: 9.81, unit: 'm/s2' },
  },
} as const;
