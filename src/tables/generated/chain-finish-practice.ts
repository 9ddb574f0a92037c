// Generated from reference-tables/chain-finish-practice by `npm run tables`. Do not edit.
export const chainFinishPractice = {
  source: {
    document: 'Trade practice in North America',
    edition: '2026',
    clause: 'usual finish by grade',
    provenance: 'common practice',
  },
  rows: {
    'yellow-chromate': { grades: '70' },
    'plain': { grades: '30 43' },
    'bright-zinc': { grades: '30 43' },
    'galvanized': { grades: '30 43' },
    'black': { grades: '80' },
    'gray': { grades: '80' },
    'painted': { grades: '80 100 120' },
    'blue': { grades: '100' },
  },
} as const;
