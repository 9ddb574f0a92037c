// Generated from reference-tables/us-49cfr392-9-inspection by `npm run tables`. Do not edit.
export const us49cfr3929Inspection = {
  rows: {
    'before-driving': { clause: '392.9(a),(b)(1)' },
    'first-check': { distance_mi: 50, clause: '392.9' },
    're-check': { distance_mi: 150, time_h: 3, clause: '392.9' },
    'change-of-duty-status': { clause: '392.9' },
  },
} as const;
