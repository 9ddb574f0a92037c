// Generated from reference-tables/eu-en12195-1-2010-friction by `npm run tables`. Do not edit.
export const euEn1219512010Friction = {
  source: {
    document: 'EN 12195-1, Load restraining on road vehicles, Safety, Calculation of securing forces',
    edition: '2010',
    clause: 'Annex B',
    provenance: 'memory',
  },
  rows: {
    'sawn-timber-or-wooden-pallet': {
      'plywood': { mu: 0.45 },
      'grooved-aluminum': { mu: 0.4 },
      'stainless-steel-sheet': { mu: 0.3 },
      'shrink-film': { mu: 0.3 },
    },
    'planed-wood': {
      'plywood': { mu: 0.3 },
      'grooved-aluminum': { mu: 0.25 },
      'stainless-steel-sheet': { mu: 0.2 },
    },
    'plastic-pallet': {
      'plywood': { mu: 0.2 },
      'grooved-aluminum': { mu: 0.15 },
      'stainless-steel-sheet': { mu: 0.15 },
    },
    'steel-crate': {
      'plywood': { mu: 0.45 },
      'grooved-aluminum': { mu: 0.3 },
      'stainless-steel-sheet': { mu: 0.2 },
    },
    'rough-concrete': {
      'sawn-wood': { mu: 0.7 },
    },
    'smooth-concrete': {
      'sawn-wood': { mu: 0.55 },
    },
    'rubber': {
      'other-material': { mu: 0.6 },
    },
  },
} as const;
