// Generated from reference-tables/us-chain-grades by `npm run tables`. Do not edit.
export const usChainProof = {
  source: {
    document: 'ASTM A413/A413M, A391/A391M and A973/A973M, chain specifications',
    edition: '2021',
    clause: 'section 1, definition of grade',
    provenance: 'memory',
    note: 'proof force over working load limit',
  },
  rows: {
    30: { proof_factor: 2 },
    43: { proof_factor: 1.5 },
    70: { proof_factor: 2 },
    80: { proof_factor: 2, provenance: 'read' },
    100: { proof_factor: 2, provenance: 'derived' },
    120: { proof_factor: 2 },
  },
} as const;
