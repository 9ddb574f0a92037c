// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaCommonPractice = {
  rows: {
    'chain': {
      'visible-stretch': { comparison: '>=', limit: 10, unit: '%', basis: 'when new', clause: 'common practice', provenance: 'common practice' },
      'damage': { comparison: 'any', clause: 'common practice', provenance: 'common practice' },
    },
    'hook': {
      'damage': { comparison: 'any', clause: 'common practice', provenance: 'common practice' },
    },
  },
} as const;
