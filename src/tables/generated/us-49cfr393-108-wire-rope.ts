// Generated from reference-tables/us-49cfr393-108-wire-rope by `npm run tables`. Do not edit.
export const us49cfr393108WireRope = {
  source: {
    document: '49 CFR Part 393, Protection Against Shifting and Falling Cargo',
    edition: '2024',
    clause: '393.108, table for wire rope (6x37, fiber core)',
    provenance: 'read',
  },
  rows: {
    '1/4': { wll_lb: 1400 },
    '5/16': { wll_lb: 2100 },
    '3/8': { wll_lb: 3000 },
    '7/16': { wll_lb: 4100 },
    '1/2': { wll_lb: 5300 },
    '5/8': { wll_lb: 8300 },
    '3/4': { wll_lb: 10900 },
    '7/8': { wll_lb: 16100, provenance: 'memory' },
    '1': { wll_lb: 20900, provenance: 'memory' },
  },
} as const;
