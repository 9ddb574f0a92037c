// Generated from reference-tables/us-welded-chain by `npm run tables`. Do not edit.
export const usWeldedChainLinks = {
  id: 'us-welded-chain',
  asOf: '2003',
  source: {
    document: 'Welded Steel Chain Specifications; grades 80 and 100: OSHA guidance on safe sling use, tables 1 and 2',
    edition: 'adopted 2003',
    clause: 'tables by grade',
    provenance: 'memory',
  },
  rows: {
    '1/8': {
      30: { wire_mm: 4, inside_length_max_in: 0.94, inside_width_min_in: 0.25 },
    },
    '3/16': {
      30: { wire_mm: 5.5, inside_length_max_in: 0.98, inside_width_min_in: 0.3 },
    },
    '7/32': {
      80: { wire_mm: 5.5, inside_length_max_in: 0.69, inside_width_min_in: 0.281, wire_provenance: 'read' },
      100: { wire_mm: 5.5, wire_provenance: 'read' },
    },
    '1/4': {
      30: { wire_mm: 7, inside_length_max_in: 1.24, inside_width_min_in: 0.38 },
      43: { wire_mm: 7, inside_length_max_in: 1.24, inside_width_min_in: 0.38 },
      70: { wire_mm: 7, inside_length_max_in: 1.24, inside_width_min_in: 0.38 },
    },
    '9/32': {
      80: { wire_mm: 7, inside_length_max_in: 0.9, inside_width_min_in: 0.375, wire_provenance: 'read' },
      100: { wire_mm: 7, wire_provenance: 'read' },
    },
    '5/16': {
      30: { wire_mm: 8, inside_length_max_in: 1.29, inside_width_min_in: 0.44 },
      43: { wire_mm: 8.7, inside_length_max_in: 1.29, inside_width_min_in: 0.44 },
      70: { wire_mm: 8.7, inside_length_max_in: 1.29, inside_width_min_in: 0.44 },
      80: { wire_mm: 8, inside_length_max_in: 1.04, inside_width_min_in: 0.43, wire_provenance: 'read' },
      100: { wire_mm: 8, wire_provenance: 'read' },
    },
    '3/8': {
      30: { wire_mm: 10, inside_length_max_in: 1.38, inside_width_min_in: 0.55 },
      43: { wire_mm: 10, inside_length_max_in: 1.38, inside_width_min_in: 0.55 },
      70: { wire_mm: 10, inside_length_max_in: 1.38, inside_width_min_in: 0.55 },
      80: { wire_mm: 10, inside_length_max_in: 1.26, inside_width_min_in: 0.512, wire_provenance: 'read' },
      100: { wire_mm: 10, wire_provenance: 'read' },
    },
    '7/16': {
      30: { wire_mm: 11.9, inside_length_max_in: 1.64, inside_width_min_in: 0.65 },
      43: { wire_mm: 11.9, inside_length_max_in: 1.64, inside_width_min_in: 0.65 },
      70: { wire_mm: 11.9, inside_length_max_in: 1.64, inside_width_min_in: 0.65 },
    },
    '1/2': {
      30: { wire_mm: 13, inside_length_max_in: 1.79, inside_width_min_in: 0.72 },
      43: { wire_mm: 13, inside_length_max_in: 1.79, inside_width_min_in: 0.72 },
      70: { wire_mm: 13, inside_length_max_in: 1.79, inside_width_min_in: 0.72 },
      80: { wire_mm: 13, inside_length_max_in: 1.64, inside_width_min_in: 0.64, wire_provenance: 'read' },
      100: { wire_mm: 13, wire_provenance: 'read' },
    },
    '5/8': {
      30: { wire_mm: 16, inside_length_max_in: 2.2, inside_width_min_in: 0.79 },
      43: { wire_mm: 16, inside_length_max_in: 2.2, inside_width_min_in: 0.79 },
      70: { wire_mm: 16, inside_length_max_in: 2.2, inside_width_min_in: 0.79 },
      80: { wire_mm: 16, inside_length_max_in: 2.02, inside_width_min_in: 0.79, wire_provenance: 'read' },
      100: { wire_mm: 16, wire_provenance: 'read' },
    },
    '3/4': {
      30: { wire_mm: 20, inside_length_max_in: 2.76, inside_width_min_in: 0.98 },
      43: { wire_mm: 20, inside_length_max_in: 2.76, inside_width_min_in: 0.98 },
      70: { wire_mm: 20, inside_length_max_in: 2.76, inside_width_min_in: 0.98 },
      80: { wire_mm: 20, inside_length_max_in: 2.52, inside_width_min_in: 0.984, wire_provenance: 'read' },
      100: { wire_mm: 20, wire_provenance: 'read' },
    },
    '7/8': {
      30: { wire_mm: 22, inside_length_max_in: 3.03, inside_width_min_in: 1.08 },
      43: { wire_mm: 22, inside_length_max_in: 3.03, inside_width_min_in: 1.08 },
      80: { wire_mm: 22, inside_length_max_in: 2.77, inside_width_min_in: 1.08, wire_provenance: 'read' },
      100: { wire_mm: 22, wire_provenance: 'read' },
    },
    '1': {
      30: { wire_mm: 26, inside_length_max_in: 3.58, inside_width_min_in: 1.28 },
      80: { wire_mm: 26, inside_length_max_in: 3.28, inside_width_min_in: 1.28, wire_provenance: 'read' },
    },
    '1-1/4': {
      80: { wire_mm: 32, inside_length_max_in: 4.03, inside_width_min_in: 1.58, wire_provenance: 'read' },
    },
  },
} as const;
