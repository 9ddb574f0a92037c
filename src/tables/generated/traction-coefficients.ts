// Generated from reference-tables/traction-coefficients by `npm run tables`. Do not edit.
export const tractionCoefficients = {
  source: {
    document: 'Earthmoving texts and FM 5-434, Earthmoving Operations; course worksheets',
    edition: 'edition not recalled',
    clause: 'coefficients of traction',
    provenance: 'memory',
    note: 'gross coefficients: greatest pull before slip over the weight on the driven wheels or tracks, with the rolling resistance of the tractor not taken off',
  },
  rows: {
    'dry-rough-concrete': {
      'rubber-tires': { low: 0.8, high: 1, origin: 'printed-table' },
      'tracks': { low: 0.45, high: 0.45, origin: 'printed-table' },
    },
    'dry-clay-loam': {
      'rubber-tires': { low: 0.5, high: 0.7, origin: 'printed-table' },
      'tracks': { low: 0.9, high: 0.9, origin: 'printed-table' },
    },
    'wet-clay-loam': {
      'rubber-tires': { low: 0.4, high: 0.5, origin: 'printed-table' },
      'tracks': { low: 0.7, high: 0.7, origin: 'printed-table' },
    },
    'wet-sand-and-gravel': {
      'rubber-tires': { low: 0.3, high: 0.4, origin: 'printed-table' },
      'tracks': { low: 0.35, high: 0.35, origin: 'printed-table' },
    },
    'loose-dry-sand': {
      'rubber-tires': { low: 0.2, high: 0.3, origin: 'printed-table' },
      'tracks': { low: 0.3, high: 0.3, origin: 'printed-table' },
    },
    'dry-snow': {
      'rubber-tires': { low: 0.2, high: 0.2, origin: 'printed-table' },
      'tracks': { low: 0.15, high: 0.35, origin: 'printed-table' },
    },
    'ice': {
      'rubber-tires': { low: 0.1, high: 0.1, origin: 'printed-table' },
      'tracks': { low: 0.1, high: 0.25, origin: 'printed-table' },
    },
    'concrete-or-asphalt': {
      'rubber-tires': { low: 0.9, high: 0.9, origin: 'worksheet', provenance: 'read' },
    },
    'firm-smooth-earth': {
      'rubber-tires': { low: 0.55, high: 0.55, origin: 'worksheet', provenance: 'read' },
    },
    'rutted-dirt-1-to-2-in': {
      'rubber-tires': { low: 0.5, high: 0.5, origin: 'worksheet', provenance: 'read' },
    },
    'rutted-dirt-4-in': {
      'rubber-tires': { low: 0.45, high: 0.45, origin: 'worksheet', provenance: 'read' },
    },
    'loose-sand-or-gravel': {
      'rubber-tires': { low: 0.3, high: 0.3, origin: 'worksheet', provenance: 'read' },
    },
    'dry-clay': {
      'rubber-tires': { low: 0.55, high: 0.55, origin: 'tractor-coursework', provenance: 'read' },
    },
  },
} as const;
