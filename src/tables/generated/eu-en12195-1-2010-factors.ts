// Generated from reference-tables/eu-en12195-1-2010-factors by `npm run tables`. Do not edit.
export const euEn1219512010Factors = {
  source: {
    document: 'EN 12195-1, Load restraining on road vehicles, Safety, Calculation of securing forces',
    edition: '2010',
    clause: 'scope, over-top lashing, direct lashing, friction',
    provenance: 'memory',
  },
  rows: {
    'safety-factor-forward': { value: 1.25 },
    'safety-factor-rearward': { value: 1.1, provenance: 'read' },
    'safety-factor-sideways': { value: 1.1, provenance: 'read' },
    'friction-factor-direct': { value: 0.75, provenance: 'read' },
    'friction-cap-frost': { value: 0.2 },
    'tension-share-of-lc': { value: 0.5 },
    'over-top-count': { value: 2 },
    'direct-pair-count': { value: 2 },
    'vehicle-mass': { value: 3.5, unit: 't', provenance: 'read' },
    'gravity': { value: 9.81, unit: 'm/s2' },
  },
} as const;
