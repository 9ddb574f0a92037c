// Generated from reference-tables/us-asme-b30-9-2010-temperature by `npm run tables`. Do not edit.
export const usAsmeB3092010Temperature = {
  source: {
    document: 'ASME B30.9, Slings',
    edition: '2010',
    clause: 'Table 9-1.8.1-1',
    provenance: 'memory',
    note: 'below the first row nothing is taken off; between rows the next higher one counts; above the last the chain is taken out of service for good',
  },
  rows: {
    80: {
      400: { while_hot_percent: 10, permanent_percent: 0 },
      500: { while_hot_percent: 15, permanent_percent: 0 },
      600: { while_hot_percent: 20, permanent_percent: 5 },
      700: { while_hot_percent: 30, permanent_percent: 10 },
      800: { while_hot_percent: 40, permanent_percent: 15 },
      900: { while_hot_percent: 50, permanent_percent: 20 },
      1000: { while_hot_percent: 60, permanent_percent: 25 },
    },
    100: {
      400: { while_hot_percent: 15, permanent_percent: 0 },
      500: { while_hot_percent: 25, permanent_percent: 5 },
      600: { while_hot_percent: 30, permanent_percent: 15 },
      700: { while_hot_percent: 40, permanent_percent: 20 },
      800: { while_hot_percent: 50, permanent_percent: 25 },
      900: { while_hot_percent: 60, permanent_percent: 30 },
      1000: { while_hot_percent: 70, permanent_percent: 35 },
    },
  },
} as const;
