// Generated from reference-tables/chain-elongation-at-break by `npm run tables`. Do not edit.
export const chainElongationAtBreak = {
  source: {
    document: 'ASTM A391, A413 and A973; EN 818-2 and EN 818-4, chain specifications',
    edition: 'EN 818-4:1996, else as recalled',
    clause: 'elongation at break; EN 818-4 clause 6',
    provenance: 'memory',
    columnProvenance: { proof_over_wll: 'read' },
  },
  rows: {
    '30': { elongation_percent: 15 },
    '43': { elongation_percent: 15 },
    '70': { elongation_percent: 15 },
    '80': { elongation_percent: 20 },
    '100': { elongation_percent: 20 },
    '8': { elongation_percent: 20, proof_over_wll: 2.5 },
  },
} as const;
