// Generated from reference-tables/eu-en12640-2000-lashing-points by `npm run tables`. Do not edit.
export const euEn126402000LashingPoints = {
  source: {
    document: 'EN 12640, Securing of cargo on road vehicles, Lashing points on commercial vehicles',
    edition: '2000',
    clause: 'permissible tensile load of a lashing point',
    provenance: 'read',
  },
  rows: {
    'floor-over-3.5-to-7.5-t': { over_t: 3.5, to_t: 7.5, capacity_dan: 800 },
    'floor-over-7.5-to-12-t': { over_t: 7.5, to_t: 12, capacity_dan: 1000 },
    'floor-over-12-t': { over_t: 12, capacity_dan: 2000 },
    'front-wall': { capacity_dan: 1000 },
  },
} as const;
