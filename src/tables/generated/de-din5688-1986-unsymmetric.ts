// Generated from reference-tables/de-din5688-1986-unsymmetric by `npm run tables`. Do not edit.
export const deDin56881986Unsymmetric = {
  source: {
    document: 'DGUV Information 201-030, after DIN 5688-1:1986',
    edition: 'section 6.3',
    clause: 'grade 5, unsymmetric',
    provenance: 'read',
  },
  rows: {
    'double': {
      45: { factor: 1 },
      60: { factor: 1 },
    },
    'triple': {
      45: { factor: 1.5 },
      60: { factor: 1 },
    },
  },
} as const;
