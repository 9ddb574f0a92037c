// Generated from reference-tables/eu-en12195-1-2010-accelerations by `npm run tables`. Do not edit.
export const euEn1219512010Accelerations = {
  source: {
    document: 'EN 12195-1, Load restraining on road vehicles, Safety, Calculation of securing forces',
    edition: '2010',
    clause: 'acceleration coefficients for road transport',
    provenance: 'read',
  },
  rows: {
    'sliding': {
      'forward': { c: 0.8, cz: 1 },
      'rearward': { c: 0.5, cz: 1 },
      'sideways': { c: 0.5, cz: 1 },
    },
    'tilting-direct': {
      'forward': { c: 0.8, cz: 1, force: 'LC', provenance: 'memory' },
      'rearward': { c: 0.6, cz: 1, force: 'LC' },
      'sideways': { c: 0.6, cz: 1, force: 'LC' },
    },
    'tilting-over-top-a': {
      'forward': { c: 0.8, cz: 1, force: 'STF', provenance: 'memory' },
      'rearward': { c: 0.6, cz: 1, force: 'STF' },
      'sideways': { c: 0.5, cz: 1, force: 'STF' },
    },
    'tilting-over-top-b': {
      'sideways': { c: 0.6, cz: 1, force: '0.5 LC' },
    },
  },
} as const;
