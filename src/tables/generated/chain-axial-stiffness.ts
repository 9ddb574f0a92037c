// Generated from reference-tables/chain-axial-stiffness by `npm run tables`. Do not edit.
export const chainAxialStiffness = {
  source: {
    document: 'Offshore mooring practice, studless chain; solid steel bars as the upper bound',
    edition: 'undated',
    clause: 'EA = 0.854e8 d2 kN, d in m',
    provenance: 'memory',
    note: 'mooring chain has a pitch of 4 d; that short-link chain is as stiff is an assumption, for no published figure was found',
  },
  rows: {
    'bending': { ea_over_d2_kn_per_mm2: 85.4 },
    'rigid': { ea_over_d2_kn_per_mm2: 323.6, provenance: 'derived' },
  },
} as const;
