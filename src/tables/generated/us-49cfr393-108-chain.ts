// Generated from reference-tables/us-49cfr393-108-chain by `npm run tables`. Do not edit.
export const us49cfr393108Chain = {
  source: {
    document: '49 CFR Part 393, Protection Against Shifting and Falling Cargo',
    edition: '2024',
    clause: '393.108, table for chain',
    provenance: 'read',
  },
  rows: {
    '1/4': {
      30: { wll_lb: 1300, wll_kg: 580 },
      43: { wll_lb: 2600, wll_kg: 1180 },
      70: { wll_lb: 3150, wll_kg: 1430 },
      80: { wll_lb: 3500, wll_kg: 1570 },
      100: { wll_lb: 4300, wll_kg: 1950 },
    },
    '5/16': {
      30: { wll_lb: 1900, wll_kg: 860 },
      43: { wll_lb: 3900, wll_kg: 1770 },
      70: { wll_lb: 4700, wll_kg: 2130 },
      80: { wll_lb: 4500, wll_kg: 2000 },
      100: { wll_lb: 5700, wll_kg: 2600 },
    },
    '3/8': {
      30: { wll_lb: 2650, wll_kg: 1200 },
      43: { wll_lb: 5400, wll_kg: 2450 },
      70: { wll_lb: 6600, wll_kg: 2990 },
      80: { wll_lb: 7100, wll_kg: 3200 },
      100: { wll_lb: 8800, wll_kg: 4000 },
    },
    '7/16': {
      30: { wll_lb: 3700, wll_kg: 1680 },
      43: { wll_lb: 7200, wll_kg: 3270 },
      70: { wll_lb: 8750, wll_kg: 3970 },
    },
    '1/2': {
      30: { wll_lb: 4500, wll_kg: 2030 },
      43: { wll_lb: 9200, wll_kg: 4170 },
      70: { wll_lb: 11300, wll_kg: 5130 },
      80: { wll_lb: 12000, wll_kg: 5400 },
      100: { wll_lb: 15000, wll_kg: 6800 },
    },
    '5/8': {
      30: { wll_lb: 6900, wll_kg: 3130 },
      43: { wll_lb: 13000, wll_kg: 5910 },
      70: { wll_lb: 15800, wll_kg: 7170 },
      80: { wll_lb: 18100, wll_kg: 8200 },
      100: { wll_lb: 22600, wll_kg: 10300 },
    },
  },
} as const;
