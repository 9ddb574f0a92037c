// Generated from reference-tables/log-skid-coefficients by `npm run tables`. Do not edit.
export const logSkidCoefficients = {
  source: {
    document: 'Forest engineering texts on log skidding',
    edition: 'edition not recalled',
    clause: 'skidding coefficients',
    provenance: 'memory',
    note: 'an interval, not a number: it depends on the trail and the surface of the log',
  },
  rows: {
    'whole-log-on-soil': { low: 0.5, high: 0.8, basis: 'full log weight' },
    'one-end-lifted': { low: 0.3, high: 0.5, basis: 'full log weight' },
    'packed-snow-or-ice-trail': { low: 0.1, high: 0.3, basis: 'full log weight' },
    'bare-soil-design': { low: 0.6, high: 0.6, basis: 'weight carried by the ground' },
  },
} as const;
