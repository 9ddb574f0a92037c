// Generated from reference-tables/us-49cfr393-102-criteria by `npm run tables`. Do not edit.
export const us49cfr393102Criteria = {
  rows: {
    'forward': { g_against_breaking_strength: 0.8, g_against_wll: 0.435, clause: '393.102(a)(1)-(2)' },
    'rearward': { g_against_breaking_strength: 0.5, g_against_wll: 0.5, clause: '393.102(a)(1)-(2)' },
    'lateral': { g_against_breaking_strength: 0.5, g_against_wll: 0.25, clause: '393.102(a)(1)-(2)' },
    'vertical': { g_against_breaking_strength: 0.2, g_against_wll: 0.2, clause: '393.102(b)' },
  },
} as const;
