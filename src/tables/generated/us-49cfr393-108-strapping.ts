// Generated from reference-tables/us-49cfr393-108-strapping by `npm run tables`. Do not edit.
export const us49cfr393108Strapping = {
  source: {
    document: '49 CFR Part 393, Protection Against Shifting and Falling Cargo',
    edition: '2024',
    clause: '393.108, table for steel strapping',
    provenance: 'memory',
  },
  rows: {
    '1-1/4': {
      '0.029': { wll_lb: 1190 },
      '0.031': { wll_lb: 1190 },
      '0.035': { wll_lb: 1190 },
      '0.044': { wll_lb: 1690 },
      '0.050': { wll_lb: 1690 },
      '0.057': { wll_lb: 1925 },
    },
    '2': {
      '0.044': { wll_lb: 2650 },
      '0.050': { wll_lb: 2650 },
    },
  },
} as const;
