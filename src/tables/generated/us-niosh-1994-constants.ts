// Generated from reference-tables/us-niosh-1994-constants by `npm run tables`. Do not edit.
export const usNiosh1994Constants = {
  source: {
    document: 'Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) Publication No. 94-110',
    edition: '1994',
    clause: 'revised lifting equation and its tables',
    provenance: 'memory',
    note: 'the two systems are roundings of one another: a calculation takes one row and never the other',
  },
  rows: {
    'us': { length_unit: 'in', mass_unit: 'lb', load_constant: 51, horizontal_least: 10, horizontal_most: 25, vertical_reference: 30, vertical_slope: 0.0075, vertical_most: 70, distance_base: 0.82, distance_term: 1.8, distance_least: 10, distance_most: 70, asymmetry_slope: 0.0032, asymmetry_most_deg: 135, lifts_per_min_least: 0.2, height_edge: 30, sampling_min: 15 },
    'si': { length_unit: 'cm', mass_unit: 'kg', load_constant: 23, horizontal_least: 25, horizontal_most: 63, vertical_reference: 75, vertical_slope: 0.003, vertical_most: 175, distance_base: 0.82, distance_term: 4.5, distance_least: 25, distance_most: 175, asymmetry_slope: 0.0032, asymmetry_most_deg: 135, lifts_per_min_least: 0.2, height_edge: 75, sampling_min: 15 },
  },
} as const;
