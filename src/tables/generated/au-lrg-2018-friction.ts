// Generated from reference-tables/au-lrg-2018-friction by `npm run tables`. Do not edit.
export const auLrg2018Friction = {
  source: {
    document: 'Load Restraint Guide; Heavy Vehicle (Mass, Dimension and Loading) National Regulation, Schedule 7',
    edition: '2018',
    clause: 'typical friction coefficients',
    provenance: 'memory',
  },
  rows: {
    'smooth-steel': {
      'smooth-steel': { mu: 0.1 },
      'timber': { mu: 0.3 },
      'rubber-load-mat': { mu: 0.6 },
    },
    'rusty-steel': {
      'rusty-steel': { mu: 0.4 },
      'timber': { mu: 0.6 },
    },
  },
} as const;
