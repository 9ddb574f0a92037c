// Generated from reference-tables/traction-coefficients by `npm run tables`. Do not edit.
export const tractionCoefficients = {
  source: {
    document: 'Earthmoving texts and FM 5-434, Earthmoving Operations; course worksheets',
    edition: 'edition not recalled',
    clause: 'coefficients of traction',
    provenance: 'memory',
    note: 'gross: the rolling resistance of the tractor is not taken off',
  },
  rows: {
    'dry-rough-concrete': {
      'rubber-tires': { low: 0.8, high: 1 },
      'tracks': { low: 0.45, high: 0.45 },
    },
    'dry-clay-loam': {
      'rubber-tires': { low: 0.5, high: 0.7 },
      'tracks': { low: 0.9, high: 0.9 },
    },
    'wet-clay-loam': {
      'rubber-tires': { low: 0.4, high: 0.5 },
      'tracks': { low: 0.7, high: 0.7 },
    },
    'wet-sand-and-gravel': {
      'rubber-tires': { low: 0.3, high: 0.4 },
      'tracks': { low: 0.35, high: 0.35 },
    },
    'loose-dry-sand': {
      'rubber-tires': { low: 0.2, high: 0.3 },
      'tracks': { low: 0.3, high: 0.3 },
    },
    'dry-snow': {
      'rubber-tires': { low: 0.2, high: 0.2 },
      'tracks': { low: 0.15, high: 0.35 },
    },
    'ice': {
      'rubber-tires': { low: 0.1, high: 0.1 },
      'tracks': { low: 0.1, high: 0.25 },
    },
    'concrete-or-asphalt': {
      'rubber-tires': { low: 0.9, high: 0.9, provenance: 'read' },
    },
    'firm-smooth-earth': {
      'rubber-tires': { low: 0.55, high: 0.55, provenance: 'read' },
    },
    'rutted-dirt-1-to-2-in': {
      'rubber-tires': { low: 0.5, high: 0.5, provenance: 'read' },
    },
    'rutted-dirt-4-in': {
      'rubber-tires': { low: 0.45, high: 0.45, provenance: 'read' },
    },
    'loose-sand-or-gravel': {
      'rubber-tires': { low: 0.3, high: 0.3, provenance: 'read' },
    },
    'dry-clay': {
      'rubber-tires': { low: 0.55, high: 0.55, provenance: 'read' },
    },
  },
} as const;
