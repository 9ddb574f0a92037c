// Generated from reference-tables/eu-sling-temperature by `npm run tables`. Do not edit.
export const euSlingTemperature = {
  source: {
    document: 'EN 818-6 and DGUV Information 209-021 and 201-030',
    edition: '2021',
    clause: 'use at temperatures other than usual',
    provenance: 'read',
    note: 'each range includes its upper bound; above the last the chain is not used',
  },
  rows: {
    '4': {
      300: { while_hot_percent: 0, clause: 'DGUV Information 209-021, grade 4' },
      400: { while_hot_percent: 25, clause: 'DGUV Information 209-021, grade 4' },
      475: { while_hot_percent: 50, clause: 'DGUV Information 209-021, grade 4' },
    },
    '5': {
      200: { while_hot_percent: 0, clause: 'DGUV Information 201-030, section 6.3' },
      300: { while_hot_percent: 25, clause: 'DGUV Information 201-030, section 6.3' },
      400: { while_hot_percent: 50, clause: 'DGUV Information 201-030, section 6.3' },
    },
    '8': {
      200: { while_hot_percent: 0, clause: 'EN 818-6', provenance: 'memory' },
      300: { while_hot_percent: 10, clause: 'EN 818-6', provenance: 'memory' },
      400: { while_hot_percent: 25, clause: 'EN 818-6', provenance: 'memory' },
    },
  },
} as const;
