// Generated from reference-tables/soft-ground-pull-fractions by `npm run tables`. Do not edit.
export const softGroundPullFractions = {
  source: {
    document: 'Civil off-road practice: pull by surface',
    edition: 'undated',
    clause: 'pull as a fraction of vehicle weight',
    provenance: 'read',
    note: 'a page of low authority; the vehicle still rolls, it is not buried',
  },
  rows: {
    'hard-level-tarmac': { part: 4, of: 100 },
    'hard-wet-sand': { part: 1, of: 6 },
    'bog': { part: 1, of: 2 },
  },
} as const;
