// Generated from reference-tables/army-recovery-resistance by `npm run tables`. Do not edit.
export const armyRecoveryResistance = {
  source: {
    document: 'US Army vehicle recovery doctrine (FM 20-22, FM 9-43-2, FM 4-30.31, ATP 4-31)',
    edition: 'edition not recalled',
    clause: 'estimating resistance',
    provenance: 'memory',
    note: 'total weight counts cargo; the multiple for mire holds rolling and suction',
  },
  rows: {
    'mired-wheel-depth': { multiple: 1, of: 'total weight' },
    'mired-fender-depth': { multiple: 2, of: 'total weight' },
    'mired-cab-depth': { multiple: 3, of: 'total weight' },
    'nosed-in-ditch': { multiple: 1, of: 'total weight' },
    'overturned': { multiple: 0.5, of: 'total weight' },
    'tackle-sheave': { multiple: 0.1, of: 'load resistance' },
  },
} as const;
