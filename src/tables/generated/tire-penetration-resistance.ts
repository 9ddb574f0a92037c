// Generated from reference-tables/tire-penetration-resistance by `npm run tables`. Do not edit.
export const tirePenetrationResistance = {
  source: {
    document: 'Earthmoving practice: rolling resistance by tire penetration',
    edition: 'undated',
    clause: 'RR = 40 + 30 p, p in inches',
    provenance: 'read',
  },
  rows: {
    'level-firm-ground': { lb_per_short_ton: 40 },
    'each-inch-of-penetration': { lb_per_short_ton: 30 },
  },
} as const;
