// Generated from reference-tables/removal-criteria by `npm run tables`. Do not edit.
export const removalCriteriaUsDoeStd10901996 = {
  rows: {
    'chain': {
      'wear-depth': { comparison: '>', unit: 'in', basis: 'wear table', clause: '15.4.6.2' },
    },
    'hook': {
      'throat-opening': { comparison: '>', limit: 15, unit: '%', basis: 'when new', clause: '15.4.6.2' },
      'twist': { comparison: '>', limit: 10, unit: 'deg', basis: 'plane of the unbent hook', clause: '15.4.6.2' },
    },
  },
} as const;
