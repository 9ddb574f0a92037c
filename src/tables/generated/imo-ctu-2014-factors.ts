// Generated from reference-tables/imo-ctu-2014-factors by `npm run tables`. Do not edit.
export const imoCtu2014Factors = {
  source: {
    document: 'IMO/ILO/UNECE Code of Practice for Packing of Cargo Transport Units (CTU Code)',
    edition: '2014',
    clause: 'Annex 7 and its Appendix 2',
    provenance: 'memory',
  },
  rows: {
    'friction-factor-direct': { value: 0.75, provenance: 'read' },
    'friction-cap-frost': { value: 0.2 },
    'friction-cap-unlisted': { value: 0.3 },
    'tension-share-of-msl': { value: 0.5 },
    'gravity': { value: 9.81, unit: 'm/s2' },
  },
} as const;
