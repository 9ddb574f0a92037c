// Generated from reference-tables/uk-dvsa-2024-accelerations by `npm run tables`. Do not edit.
export const ukDvsa2024Accelerations = {
  source: {
    document: 'Guidance on securing loads on goods vehicles',
    edition: 'updated December 2024',
    clause: 'forces on the load',
    provenance: 'read',
  },
  rows: {
    'forward': { c: 1 },
    'rearward': { c: 0.5 },
    'sideways': { c: 0.5 },
  },
} as const;
