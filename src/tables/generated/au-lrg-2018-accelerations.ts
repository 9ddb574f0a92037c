// Generated from reference-tables/au-lrg-2018-accelerations by `npm run tables`. Do not edit.
export const auLrg2018Accelerations = {
  source: {
    document: 'Load Restraint Guide; Heavy Vehicle (Mass, Dimension and Loading) National Regulation, Schedule 7',
    edition: '2018',
    clause: 'Schedule 7, loading performance standards',
    provenance: 'read',
    note: 'the upward row applies where friction or limited vertical displacement is relied on for another direction',
  },
  rows: {
    'forward': { c: 0.8 },
    'rearward': { c: 0.5 },
    'sideways': { c: 0.5 },
    'upward': { c: 0.2 },
  },
} as const;
