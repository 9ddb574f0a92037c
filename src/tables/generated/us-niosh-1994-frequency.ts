// Generated from reference-tables/us-niosh-1994-frequency by `npm run tables`. Do not edit.
export const usNiosh1994Frequency = {
  source: {
    document: 'Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) Publication No. 94-110',
    edition: '1994',
    clause: 'table 5',
    provenance: 'memory',
    note: 'above 15 lifts per minute the multiplier is zero in every column',
  },
  rows: {
    0.2: { short_below_edge: 1, short_from_edge: 1, moderate_below_edge: 0.95, moderate_from_edge: 0.95, long_below_edge: 0.85, long_from_edge: 0.85 },
    0.5: { short_below_edge: 0.97, short_from_edge: 0.97, moderate_below_edge: 0.92, moderate_from_edge: 0.92, long_below_edge: 0.81, long_from_edge: 0.81 },
    1: { short_below_edge: 0.94, short_from_edge: 0.94, moderate_below_edge: 0.88, moderate_from_edge: 0.88, long_below_edge: 0.75, long_from_edge: 0.75 },
    2: { short_below_edge: 0.91, short_from_edge: 0.91, moderate_below_edge: 0.84, moderate_from_edge: 0.84, long_below_edge: 0.65, long_from_edge: 0.65 },
    3: { short_below_edge: 0.88, short_from_edge: 0.88, moderate_below_edge: 0.79, moderate_from_edge: 0.79, long_below_edge: 0.55, long_from_edge: 0.55 },
    4: { short_below_edge: 0.84, short_from_edge: 0.84, moderate_below_edge: 0.72, moderate_from_edge: 0.72, long_below_edge: 0.45, long_from_edge: 0.45 },
    5: { short_below_edge: 0.8, short_from_edge: 0.8, moderate_below_edge: 0.6, moderate_from_edge: 0.6, long_below_edge: 0.35, long_from_edge: 0.35 },
    6: { short_below_edge: 0.75, short_from_edge: 0.75, moderate_below_edge: 0.5, moderate_from_edge: 0.5, long_below_edge: 0.27, long_from_edge: 0.27 },
    7: { short_below_edge: 0.7, short_from_edge: 0.7, moderate_below_edge: 0.42, moderate_from_edge: 0.42, long_below_edge: 0.22, long_from_edge: 0.22 },
    8: { short_below_edge: 0.6, short_from_edge: 0.6, moderate_below_edge: 0.35, moderate_from_edge: 0.35, long_below_edge: 0.18, long_from_edge: 0.18 },
    9: { short_below_edge: 0.52, short_from_edge: 0.52, moderate_below_edge: 0.3, moderate_from_edge: 0.3, long_below_edge: 0, long_from_edge: 0.15 },
    10: { short_below_edge: 0.45, short_from_edge: 0.45, moderate_below_edge: 0.26, moderate_from_edge: 0.26, long_below_edge: 0, long_from_edge: 0.13 },
    11: { short_below_edge: 0.41, short_from_edge: 0.41, moderate_below_edge: 0, moderate_from_edge: 0.23, long_below_edge: 0, long_from_edge: 0 },
    12: { short_below_edge: 0.37, short_from_edge: 0.37, moderate_below_edge: 0, moderate_from_edge: 0.21, long_below_edge: 0, long_from_edge: 0 },
    13: { short_below_edge: 0, short_from_edge: 0.34, moderate_below_edge: 0, moderate_from_edge: 0, long_below_edge: 0, long_from_edge: 0 },
    14: { short_below_edge: 0, short_from_edge: 0.31, moderate_below_edge: 0, moderate_from_edge: 0, long_below_edge: 0, long_from_edge: 0 },
    15: { short_below_edge: 0, short_from_edge: 0.28, moderate_below_edge: 0, moderate_from_edge: 0, long_below_edge: 0, long_from_edge: 0 },
  },
} as const;
