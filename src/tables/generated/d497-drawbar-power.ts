// Generated from reference-tables/d497-drawbar-power by `npm run tables`. Do not edit.
export const d497DrawbarPower = {
  source: {
    document: 'ASABE D497, Agricultural Machinery Management Data',
    edition: 'edition not recalled',
    clause: 'figure of power relationships',
    provenance: 'memory',
    note: 'at best slip',
  },
  rows: {
    'two-wheel-drive': {
      'concrete': { drawbar_over_pto: 0.87 },
      'firm-soil': { drawbar_over_pto: 0.72 },
      'tilled-soil': { drawbar_over_pto: 0.67 },
      'soft-soil': { drawbar_over_pto: 0.55 },
    },
    'front-wheel-assist': {
      'concrete': { drawbar_over_pto: 0.87 },
      'firm-soil': { drawbar_over_pto: 0.77 },
      'tilled-soil': { drawbar_over_pto: 0.73 },
      'soft-soil': { drawbar_over_pto: 0.65 },
    },
    'four-wheel-drive': {
      'concrete': { drawbar_over_pto: 0.88 },
      'firm-soil': { drawbar_over_pto: 0.78 },
      'tilled-soil': { drawbar_over_pto: 0.75 },
      'soft-soil': { drawbar_over_pto: 0.7 },
    },
    'tracks': {
      'concrete': { drawbar_over_pto: 0.88 },
      'firm-soil': { drawbar_over_pto: 0.82 },
      'tilled-soil': { drawbar_over_pto: 0.8 },
      'soft-soil': { drawbar_over_pto: 0.78 },
    },
  },
} as const;
