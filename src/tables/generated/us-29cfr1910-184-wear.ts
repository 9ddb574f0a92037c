// Generated from reference-tables/us-29cfr1910-184-wear by `npm run tables`. Do not edit.
export const us29cfr1910184Wear = {
  source: {
    document: '29 CFR 1910.184 and 1926.251, slings',
    edition: '2011',
    clause: '1910.184(e)(8) Table N-184-1; 1926.251(b)(5) Table H-1',
    provenance: 'read',
  },
  rows: {
    '1/4': { minimum_in: '13/64', wear_in: '3/64' },
    '3/8': { minimum_in: '19/64', wear_in: '5/64' },
    '1/2': { minimum_in: '25/64', wear_in: '7/64' },
    '5/8': { minimum_in: '31/64', wear_in: '9/64' },
    '3/4': { minimum_in: '19/32', wear_in: '5/32' },
    '7/8': { minimum_in: '45/64', wear_in: '11/64' },
    '1': { minimum_in: '13/16', wear_in: '3/16' },
    '1-1/8': { minimum_in: '29/32', wear_in: '7/32', wear_provenance: 'derived' },
    '1-1/4': { minimum_in: '1', wear_in: '1/4' },
    '1-3/8': { minimum_in: '1-3/32', wear_in: '9/32', wear_provenance: 'derived' },
    '1-1/2': { minimum_in: '1-3/16', wear_in: '5/16', wear_provenance: 'derived' },
    '1-3/4': { minimum_in: '1-13/32', wear_in: '11/32', minimum_provenance: 'memory', wear_provenance: 'derived' },
  },
} as const;
