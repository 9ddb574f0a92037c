// Generated from reference-tables/imo-ctu-2014-accelerations by `npm run tables`. Do not edit.
export const imoCtu2014Accelerations = {
  source: {
    document: 'IMO/ILO/UNECE Code of Practice for Packing of Cargo Transport Units (CTU Code)',
    edition: '2014',
    clause: 'chapter 5',
    provenance: 'memory',
  },
  rows: {
    'road': {
      'forward': { c: 0.8, cz: 1 },
      'rearward': { c: 0.5, cz: 1 },
      'sideways': { c: 0.5, cz: 1 },
    },
    'sea-a': {
      'forward': { c: 0.3, cz: 0.5 },
      'rearward': { c: 0.3, cz: 0.5 },
      'sideways': { c: 0.5, cz: 1 },
    },
    'sea-b': {
      'forward': { c: 0.3, cz: 0.3 },
      'rearward': { c: 0.3, cz: 0.3 },
      'sideways': { c: 0.7, cz: 1 },
    },
    'sea-c': {
      'forward': { c: 0.4, cz: 0.2 },
      'rearward': { c: 0.4, cz: 0.2 },
      'sideways': { c: 0.8, cz: 1 },
    },
  },
} as const;
