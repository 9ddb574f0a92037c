// Generated from reference-tables/imo-ctu-2014-friction by `npm run tables`. Do not edit.
export const imoCtu2014Friction = {
  source: {
    document: 'IMO/ILO/UNECE Code of Practice for Packing of Cargo Transport Units (CTU Code)',
    edition: '2014',
    clause: 'Annex 7, Appendix 2',
    provenance: 'read',
  },
  rows: {
    'sawn-timber-or-wooden-pallet': {
      'plywood': { mu_dry: 0.45, mu_wet: 0.45 },
      'grooved-aluminum': { mu_dry: 0.4, mu_wet: 0.4 },
      'stainless-steel-sheet': { mu_dry: 0.3, mu_wet: 0.3 },
      'shrink-film': { mu_dry: 0.3, mu_wet: 0.3 },
    },
    'planed-wood': {
      'plywood': { mu_dry: 0.3, mu_wet: 0.3 },
      'grooved-aluminum': { mu_dry: 0.25, mu_wet: 0.25 },
      'stainless-steel-sheet': { mu_dry: 0.2, mu_wet: 0.2 },
    },
    'plastic-pallet': {
      'plywood': { mu_dry: 0.2, mu_wet: 0.2 },
      'grooved-aluminum': { mu_dry: 0.15, mu_wet: 0.15 },
      'stainless-steel-sheet': { mu_dry: 0.15, mu_wet: 0.15 },
    },
    'untreated-cardboard': {
      'cardboard': { mu_dry: 0.5 },
      'wooden-pallet': { mu_dry: 0.5 },
    },
    'big-bag': {
      'wooden-pallet': { mu_dry: 0.4 },
    },
    'unpainted-rough-metal': {
      'unpainted-rough-metal': { mu_dry: 0.4 },
    },
    'painted-rough-metal': {
      'painted-rough-metal': { mu_dry: 0.3 },
    },
    'painted-smooth-metal': {
      'painted-smooth-metal': { mu_dry: 0.2 },
    },
    'smooth-metal': {
      'smooth-metal': { mu_dry: 0.2 },
    },
    'steel-crate': {
      'plywood': { mu_dry: 0.45, mu_wet: 0.45 },
      'grooved-aluminum': { mu_dry: 0.3, mu_wet: 0.3 },
      'stainless-steel-sheet': { mu_dry: 0.2, mu_wet: 0.2 },
    },
    'rough-concrete': {
      'sawn-wood': { mu_dry: 0.7, mu_wet: 0.7 },
    },
    'smooth-concrete': {
      'sawn-wood': { mu_dry: 0.55, mu_wet: 0.55, provenance: 'memory' },
    },
    'rubber': {
      'other-material': { mu_dry: 0.6, mu_wet: 0.6, provenance: 'memory' },
    },
  },
} as const;
