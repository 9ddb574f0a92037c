// Generated from reference-tables/us-welded-chain by `npm run tables`. Do not edit.
export const usWeldedChainLinks = {
  source: {
    document: 'Welded Steel Chain Specifications; OSHA guidance on safe sling use, tables 1 and 2',
    edition: 'adopted 2003',
    clause: 'tables by grade',
    provenance: 'memory',
  },
  rows: {
    '1/8': {
      30: { wire_mm: 4, inside_length_max_in: 0.94 },
    },
    '3/16': {
      30: { wire_mm: 5.5, inside_length_max_in: 0.98 },
    },
    '7/32': {
      80: { wire_mm: 5.5, inside_length_max_in: 0.69 },
      100: { wire_mm: 5.5 },
    },
    '1/4': {
      30: { wire_mm: 7, inside_length_max_in: 1.24 },
      43: { wire_mm: 7, inside_length_max_in: 1.24 },
      70: { wire_mm: 7, inside_length_max_in: 1.24 },
    },
    '9/32': {
      80: { wire_mm: 7, inside_length_max_in: 0.9 },
      100: { wire_mm: 7 },
    },
    '5/16': {
      30: { wire_mm: 8, inside_length_max_in: 1.29 },
      43: { wire_mm: 8.7, inside_length_max_in: 1.29 },
      70: { wire_mm: 8.7, inside_length_max_in: 1.29 },
      80: { wire_mm: 8, inside_length_max_in: 1.04 },
      100: { wire_mm: 8 },
    },
    '3/8': {
      30: { wire_mm: 10, inside_length_max_in: 1.38 },
      43: { wire_mm: 10, inside_length_max_in: 1.38 },
      70: { wire_mm: 10, inside_length_max_in: 1.38 },
      80: { wire_mm: 10, inside_length_max_in: 1.26 },
      100: { wire_mm: 10 },
    },
    '7/16': {
      30: { wire_mm: 11.9, inside_length_max_in: 1.64 },
      43: { wire_mm: 11.9, inside_length_max_in: 1.64 },
      70: { wire_mm: 11.9, inside_length_max_in: 1.64 },
    },
    '1/2': {
      30: { wire_mm: 13, inside_length_max_in: 1.79 },
      43: { wire_mm: 13, inside_length_max_in: 1.79 },
      70: { wire_mm: 13, inside_length_max_in: 1.79 },
      80: { wire_mm: 13, inside_length_max_in: 1.64 },
      100: { wire_mm: 13 },
    },
    '5/8': {
      30: { wire_mm: 16, inside_length_max_in: 2.2 },
      43: { wire_mm: 16, inside_length_max_in: 2.2 },
      70: { wire_mm: 16, inside_length_max_in: 2.2 },
      80: { wire_mm: 16, inside_length_max_in: 2.02 },
      100: { wire_mm: 16 },
    },
    '3/4': {
      30: { wire_mm: 20, inside_length_max_in: 2.76 },
      43: { wire_mm: 20, inside_length_max_in: 2.76 },
      70: { wire_mm: 20, inside_length_max_in: 2.76 },
      80: { wire_mm: 20, inside_length_max_in: 2.52 },
      100: { wire_mm: 20 },
    },
    '7/8': {
      30: { wire_mm: 22, inside_length_max_in: 3.03 },
      43: { wire_mm: 22, inside_length_max_in: 3.03 },
      80: { wire_mm: 22, inside_length_max_in: 2.77 },
      100: { wire_mm: 22 },
    },
    '1': {
      30: { wire_mm: 26, inside_length_max_in: 3.58 },
      80: { wire_mm: 26, inside_length_max_in: 3.28 },
    },
    '1-1/4': {
      80: { wire_mm: 32, inside_length_max_in: 4.03 },
    },
  },
} as const;
