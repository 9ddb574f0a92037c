// Generated from reference-tables/lifting-grades by `npm run tables`. Do not edit.
export const liftingGrades = {
  source: {
    document: 'Scopes of ASTM A413, A391 and A973, EN 818 and DIN 5688; OSHA letters on 29 CFR 1910.184 and 1926.251',
    edition: '2021',
    clause: 'scope',
    provenance: 'common practice',
    note: '29 CFR 1910.184 forbids no grade by name (letter of May 18, 1978); 29 CFR 1926.251 was read as asking for alloy chain (letter of August 4, 2000)',
  },
  rows: {
    '30': { standard: 'ASTM A413/A413M', scope: 'not for lifting', scope_provenance: 'read', practice: 'no' },
    '43': { standard: 'ASTM A413/A413M', scope: 'not for lifting', scope_provenance: 'read', practice: 'no' },
    '70': { standard: 'ASTM A413/A413M', scope: 'not for lifting', scope_provenance: 'read', practice: 'no' },
    '80': { standard: 'ASTM A391/A391M', scope: 'for lifting', scope_provenance: 'read', practice: 'yes' },
    '100': { standard: 'ASTM A973/A973M', scope: 'for lifting', scope_provenance: 'read', practice: 'yes' },
    '120': { practice: 'where marked' },
    '4': { standard: 'EN 818-5', scope: 'for lifting', scope_provenance: 'read', practice: 'yes' },
    '5': { standard: 'DIN 5688', scope: 'for lifting', scope_provenance: 'read', practice: 'yes' },
    '8': { standard: 'EN 818-4', scope: 'for lifting', scope_provenance: 'read', practice: 'yes' },
  },
} as const;
