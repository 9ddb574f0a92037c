// Generated from reference-tables/army-recovery-reductions by `npm run tables`. Do not edit.
export const armyRecoveryReductions = {
  source: {
    document: 'US Army vehicle recovery doctrine (FM 20-22, FM 9-43-2, FM 4-30.31, ATP 4-31)',
    edition: 'edition not recalled',
    clause: 'reducing resistance',
    provenance: 'memory',
  },
  rows: {
    'power-on-tracks': { fraction_removed: 0.4, applies_to: 'tracks' },
    'pull-opposite-to-entry': { fraction_removed: 0.1, applies_to: 'tracks or wheels' },
    'both': { fraction_removed: 0.5, applies_to: 'tracks' },
  },
} as const;
