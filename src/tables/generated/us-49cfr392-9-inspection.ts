// Generated from reference-tables/us-49cfr392-9-inspection by `npm run tables`. Do not edit.
export const us49cfr3929Inspection = {
  id: 'us-49cfr392-9-inspection',
  asOf: '2024',
  source: {
    document: '49 CFR Part 392, Driving of Commercial Motor Vehicles',
    edition: '2024',
    clause: '392.9',
    provenance: 'read',
  },
  rows: {
    'before-driving': { note: 'the driver checks that the load is distributed and secured', clause: '392.9(a),(b)(1)' },
    'first-check': { distance_mi: 50, note: 'within this distance from the start', clause: '392.9' },
    're-check': { distance_mi: 150, time_h: 3, note: 'whichever comes first, a change of duty status included', clause: '392.9' },
    'change-of-duty-status': { clause: '392.9' },
  },
} as const;
