// Generated from reference-tables/chain-link-patterns by `npm run tables`. Do not edit.
export const chainLinkPatterns = {
  source: {
    document: 'Geometry of a link of two straight legs and two half circles, steel of 7850 kg/m3',
    edition: '2026',
    clause: 'mass per meter over wire diameter squared',
    provenance: 'derived',
    note: 'mass per meter without weld flash, which adds 1 to 3 percent; the long-link proportions are from memory and at the greatest inside length, so real chain of these grades is seldom lighter',
  },
  rows: {
    'short-link-minimum-width': { pitch_over_d: 3, inside_width_over_d: 1.3, centerline_over_d: 10.6257, kg_per_m_per_mm2: 0.02184 },
    'short-link': { pitch_over_d: 3, inside_width_over_d: 1.4, centerline_over_d: 10.7398, kg_per_m_per_mm2: 0.02207 },
    'long-link': { pitch_over_d: 3.5, inside_width_over_d: 1.4, centerline_over_d: 11.7398, kg_per_m_per_mm2: 0.02068 },
    'long-link-quarter-inch': { pitch_over_d: 4.5, inside_width_over_d: 1.4, centerline_over_d: 13.7398, kg_per_m_per_mm2: 0.01882 },
    'stud-link-outline': { pitch_over_d: 4, inside_width_over_d: 1.6, centerline_over_d: 12.9681, kg_per_m_per_mm2: 0.01999 },
  },
} as const;
