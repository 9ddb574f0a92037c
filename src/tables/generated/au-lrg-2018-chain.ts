// Generated from reference-tables/au-lrg-2018-chain by `npm run tables`. Do not edit.
export const auLrg2018Chain = {
  source: {
    document: 'Load Restraint Guide; Heavy Vehicle (Mass, Dimension and Loading) National Regulation, Schedule 7',
    edition: '2018',
    clause: 'chain table, chain to AS/NZS 4344',
    provenance: 'memory',
  },
  rows: {
    '6 mm': {
      70: { lc_t: 2.3 },
    },
    '8 mm': {
      70: { lc_t: 3.8 },
    },
    '10 mm': {
      70: { lc_t: 6 },
    },
    '13 mm': {
      70: { lc_t: 9 },
    },
  },
} as const;
