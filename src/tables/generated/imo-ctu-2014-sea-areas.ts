// Generated from reference-tables/imo-ctu-2014-sea-areas by `npm run tables`. Do not edit.
export const imoCtu2014SeaAreas = {
  source: {
    document: 'IMO/ILO/UNECE Code of Practice for Packing of Cargo Transport Units (CTU Code)',
    edition: '2014',
    clause: 'chapter 5',
    provenance: 'read',
  },
  rows: {
    'sea-a': { wave_height_to_m: 8 },
    'sea-b': { wave_height_over_m: 8, wave_height_to_m: 12 },
    'sea-c': { wave_height_over_m: 12 },
  },
} as const;
