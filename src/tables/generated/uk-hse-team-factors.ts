// Generated from reference-tables/uk-hse-team-factors by `npm run tables`. Do not edit.
export const ukHseTeamFactors = {
  source: {
    document: 'Guidance on manual handling, Health and Safety Executive',
    edition: 'undated',
    clause: 'team handling',
    provenance: 'read',
  },
  rows: {
    2: { numerator: 2, denominator: 3 },
    3: { numerator: 1, denominator: 2 },
  },
} as const;
