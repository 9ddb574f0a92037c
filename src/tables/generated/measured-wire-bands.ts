// Generated from reference-tables/measured-wire-bands by `npm run tables`. Do not edit.
export const measuredWireBands = {
  source: {
    document: 'EN 818 diameter tolerances; NZ Truck Loading Code, Appendix B',
    edition: 'edition not recorded',
    clause: 'tolerance on the diameter of the wire',
    provenance: 'memory',
  },
  rows: {
    4: { trade_sizes: '30:1/8', new_min_mm: 3.76, new_max_mm: 4.08, wide_max_mm: 4.2 },
    5.5: { trade_sizes: '30:3/16 80:7/32 100:7/32', new_min_mm: 5.17, new_max_mm: 5.61, wide_max_mm: 5.78 },
    6: { trade_sizes: 'EN:6 mm', new_min_mm: 5.64, new_max_mm: 6.12, wide_max_mm: 6.3 },
    7: { trade_sizes: '30:1/4 43:1/4 70:1/4 80:9/32 100:9/32 EN:7 mm', new_min_mm: 6.58, new_max_mm: 7.14, wide_max_mm: 7.35 },
    8: { trade_sizes: '30:5/16 80:5/16 100:5/16 EN:8 mm', new_min_mm: 7.52, new_max_mm: 8.16, wide_max_mm: 8.4 },
    8.7: { trade_sizes: '43:5/16 70:5/16', new_min_mm: 8.18, new_max_mm: 8.87, wide_max_mm: 9.13 },
    10: { trade_sizes: '30:3/8 43:3/8 70:3/8 80:3/8 100:3/8 EN:10 mm', new_min_mm: 9.4, new_max_mm: 10.2, wide_max_mm: 10.5 },
    11.9: { trade_sizes: '30:7/16 43:7/16 70:7/16', new_min_mm: 11.19, new_max_mm: 12.14, wide_max_mm: 12.5 },
    13: { trade_sizes: '30:1/2 43:1/2 70:1/2 80:1/2 100:1/2 EN:13 mm', new_min_mm: 12.22, new_max_mm: 13.26, wide_max_mm: 13.65 },
    16: { trade_sizes: '30:5/8 43:5/8 70:5/8 80:5/8 100:5/8 EN:16 mm', new_min_mm: 15.04, new_max_mm: 16.32, wide_max_mm: 16.8 },
    20: { trade_sizes: '30:3/4 43:3/4 70:3/4 80:3/4 100:3/4 EN:20 mm', new_min_mm: 19, new_max_mm: 21, wide_max_mm: 21 },
    22: { trade_sizes: '30:7/8 43:7/8 80:7/8 100:7/8 EN:22 mm', new_min_mm: 20.9, new_max_mm: 23.1, wide_max_mm: 23.1 },
    26: { trade_sizes: '30:1 80:1 EN:26 mm', new_min_mm: 24.7, new_max_mm: 27.3, wide_max_mm: 27.3 },
    32: { trade_sizes: '80:1-1/4 EN:32 mm', new_min_mm: 30.4, new_max_mm: 33.6, wide_max_mm: 33.6 },
  },
} as const;
