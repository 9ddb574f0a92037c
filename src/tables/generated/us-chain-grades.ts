// Generated from reference-tables/us-chain-grades by `npm run tables`. Do not edit.
export const usChainGrades = {
  source: {
    document: 'ASTM A413/A413M, A391/A391M and A973/A973M, chain specifications',
    edition: '2021',
    clause: 'section 1, definition of grade',
    provenance: 'memory',
    note: 'the stress of a grade is read in its definition (ten times the grade number in N/mm2 over two bar sections, round wire only); the provenance of a row is that of its factors',
    columnProvenance: { mean_stress_n_per_mm2: 'read' },
  },
  rows: {
    30: { mean_stress_n_per_mm2: 300, design_factor: 4, material: 'carbon', overhead_lifting: 'no' },
    43: { mean_stress_n_per_mm2: 430, design_factor: 3, material: 'carbon', overhead_lifting: 'no' },
    70: { mean_stress_n_per_mm2: 700, design_factor: 4, material: 'carbon or boron, heat treated', overhead_lifting: 'no' },
    80: { mean_stress_n_per_mm2: 800, design_factor: 4, material: 'alloy, quenched and tempered', overhead_lifting: 'yes', provenance: 'read' },
    100: { mean_stress_n_per_mm2: 1000, design_factor: 4, material: 'alloy, quenched and tempered', overhead_lifting: 'yes', provenance: 'derived' },
    120: { mean_stress_n_per_mm2: 1200, design_factor: 4, material: 'alloy, quenched and tempered', overhead_lifting: 'yes where marked' },
  },
} as const;
