// Generated from reference-tables/us-asme-b30-9-thickness by `npm run tables`. Do not edit.
export const usAsmeB309Thickness = {
  source: {
    document: 'ASME B30.9, Slings',
    edition: '2010',
    clause: '9-1.9.5(c), Table 9-1.9.5-1',
    provenance: 'memory',
  },
  rows: {
    '7/32': { minimum_in: 0.189 },
    '9/32': { minimum_in: 0.239 },
    '5/16': { minimum_in: 0.273 },
    '3/8': { minimum_in: 0.342 },
    '1/2': { minimum_in: 0.443 },
    '5/8': { minimum_in: 0.546 },
    '3/4': { minimum_in: 0.687 },
    '7/8': { minimum_in: 0.75 },
    '1': { minimum_in: 0.887 },
    '1-1/4': { minimum_in: 1.091 },
  },
} as const;
