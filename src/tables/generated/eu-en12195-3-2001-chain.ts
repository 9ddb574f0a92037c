// Generated from reference-tables/eu-en12195-3-2001-chain by `npm run tables`. Do not edit.
export const euEn1219532001Chain = {
  source: {
    document: 'EN 12195-3, Load restraint assemblies on road vehicles, Safety, Lashing chains',
    edition: '2001',
    clause: 'Table 1, lashing capacity',
    provenance: 'read',
  },
  rows: {
    '6 mm': {
      '8': { lc_kn: 22, stf_min_fraction: 0.25 },
    },
    '7 mm': {
      '8': { lc_kn: 30, stf_min_fraction: 0.25, lc_provenance: 'memory' },
    },
    '8 mm': {
      '8': { lc_kn: 40, stf_min_fraction: 0.25 },
    },
    '9 mm': {
      '8': { lc_kn: 50, stf_min_fraction: 0.25, lc_provenance: 'memory' },
    },
    '10 mm': {
      '8': { lc_kn: 63, stf_min_fraction: 0.25 },
    },
    '11 mm': {
      '8': { lc_kn: 75, stf_min_fraction: 0.15, lc_provenance: 'memory' },
    },
    '13 mm': {
      '8': { lc_kn: 100, stf_min_fraction: 0.15 },
    },
    '16 mm': {
      '8': { lc_kn: 160, stf_min_fraction: 0.15 },
    },
    '18 mm': {
      '8': { lc_kn: 200, stf_min_fraction: 0.15, lc_provenance: 'memory' },
    },
    '20 mm': {
      '8': { lc_kn: 250, stf_min_fraction: 0.15, lc_provenance: 'memory' },
    },
    '22 mm': {
      '8': { lc_kn: 300, stf_min_fraction: 0.15, lc_provenance: 'memory' },
    },
  },
} as const;
