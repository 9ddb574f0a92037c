// Generated from reference-tables/d497-tractive-constants by `npm run tables`. Do not edit.
export const d497TractiveConstants = {
  source: {
    document: 'ASABE D497, Agricultural Machinery Management Data',
    edition: 'edition not recalled',
    clause: 'traction: GTR, MRR and the wheel numeric',
    provenance: 'memory',
  },
  rows: {
    'bias': { gross_most: 0.88, gross_numeric_rate: 0.1, gross_slip_rate: 7.5, gross_offset: 0.04, motion_numeric: 1, motion_offset: 0.04, motion_slip: 0.5, deflection_factor: 5, width_factor: 3, usual_deflection_ratio: 0.2 },
    'radial': { gross_most: 0.88, gross_numeric_rate: 0.1, gross_slip_rate: 9.5, gross_offset: 0.0325, motion_numeric: 0.9, motion_offset: 0.0325, motion_slip: 0.5, deflection_factor: 5, width_factor: 3, usual_deflection_ratio: 0.2 },
  },
} as const;
