// Generated from reference-tables/us-welded-chain by `npm run tables`. Do not edit.
export const usWeldedChainRating = {
  source: {
    document: 'Welded Steel Chain Specifications; OSHA guidance on safe sling use, tables 1 and 2',
    edition: 'adopted 2003',
    clause: 'tables by grade',
    provenance: 'read',
    note: 'minimum breaking force is derived: design factor times working load limit; grade 120 has no public table and is rated by its marked working load limit only',
    columnProvenance: { design_factor: 'memory', minimum_breaking_force_lbf: 'derived' },
  },
  rows: {
    '1/8': {
      30: { wll_lb: 400, wll_kg: 180, design_factor: 4, minimum_breaking_force_lbf: 1600, wll_provenance: 'memory', wll_kg_provenance: 'memory' },
    },
    '3/16': {
      30: { wll_lb: 800, wll_kg: 365, design_factor: 4, minimum_breaking_force_lbf: 3200, wll_provenance: 'memory', wll_kg_provenance: 'memory' },
    },
    '7/32': {
      80: { wll_lb: 2100, wll_kg: 970, design_factor: 4, minimum_breaking_force_lbf: 8400, wll_kg_provenance: 'memory' },
      100: { wll_lb: 2700, wll_kg: 1220, design_factor: 4, minimum_breaking_force_lbf: 10800, wll_kg_provenance: 'memory' },
    },
    '1/4': {
      30: { wll_lb: 1300, wll_kg: 580, design_factor: 4, minimum_breaking_force_lbf: 5200 },
      43: { wll_lb: 2600, wll_kg: 1180, design_factor: 3, minimum_breaking_force_lbf: 7800 },
      70: { wll_lb: 3150, wll_kg: 1430, design_factor: 4, minimum_breaking_force_lbf: 12600 },
    },
    '9/32': {
      80: { wll_lb: 3500, wll_kg: 1570, design_factor: 4, minimum_breaking_force_lbf: 14000 },
      100: { wll_lb: 4300, wll_kg: 1950, design_factor: 4, minimum_breaking_force_lbf: 17200 },
    },
    '5/16': {
      30: { wll_lb: 1900, wll_kg: 860, design_factor: 4, minimum_breaking_force_lbf: 7600 },
      43: { wll_lb: 3900, wll_kg: 1770, design_factor: 3, minimum_breaking_force_lbf: 11700 },
      70: { wll_lb: 4700, wll_kg: 2130, design_factor: 4, minimum_breaking_force_lbf: 18800 },
      80: { wll_lb: 4500, wll_kg: 2000, design_factor: 4, minimum_breaking_force_lbf: 18000 },
      100: { wll_lb: 5700, wll_kg: 2600, design_factor: 4, minimum_breaking_force_lbf: 22800 },
    },
    '3/8': {
      30: { wll_lb: 2650, wll_kg: 1200, design_factor: 4, minimum_breaking_force_lbf: 10600 },
      43: { wll_lb: 5400, wll_kg: 2450, design_factor: 3, minimum_breaking_force_lbf: 16200 },
      70: { wll_lb: 6600, wll_kg: 2990, design_factor: 4, minimum_breaking_force_lbf: 26400 },
      80: { wll_lb: 7100, wll_kg: 3200, design_factor: 4, minimum_breaking_force_lbf: 28400 },
      100: { wll_lb: 8800, wll_kg: 4000, design_factor: 4, minimum_breaking_force_lbf: 35200 },
    },
    '7/16': {
      30: { wll_lb: 3700, wll_kg: 1680, design_factor: 4, minimum_breaking_force_lbf: 14800 },
      43: { wll_lb: 7200, wll_kg: 3270, design_factor: 3, minimum_breaking_force_lbf: 21600 },
      70: { wll_lb: 8750, wll_kg: 3970, design_factor: 4, minimum_breaking_force_lbf: 35000 },
    },
    '1/2': {
      30: { wll_lb: 4500, wll_kg: 2030, design_factor: 4, minimum_breaking_force_lbf: 18000 },
      43: { wll_lb: 9200, wll_kg: 4170, design_factor: 3, minimum_breaking_force_lbf: 27600 },
      70: { wll_lb: 11300, wll_kg: 5130, design_factor: 4, minimum_breaking_force_lbf: 45200 },
      80: { wll_lb: 12000, wll_kg: 5400, design_factor: 4, minimum_breaking_force_lbf: 48000 },
      100: { wll_lb: 15000, wll_kg: 6800, design_factor: 4, minimum_breaking_force_lbf: 60000 },
    },
    '5/8': {
      30: { wll_lb: 6900, wll_kg: 3130, design_factor: 4, minimum_breaking_force_lbf: 27600 },
      43: { wll_lb: 13000, wll_kg: 5910, design_factor: 3, minimum_breaking_force_lbf: 39000 },
      70: { wll_lb: 15800, wll_kg: 7170, design_factor: 4, minimum_breaking_force_lbf: 63200 },
      80: { wll_lb: 18100, wll_kg: 8200, design_factor: 4, minimum_breaking_force_lbf: 72400 },
      100: { wll_lb: 22600, wll_kg: 10300, design_factor: 4, minimum_breaking_force_lbf: 90400 },
    },
    '3/4': {
      30: { wll_lb: 10600, wll_kg: 4800, design_factor: 4, minimum_breaking_force_lbf: 42400, wll_provenance: 'memory', wll_kg_provenance: 'memory' },
      43: { wll_lb: 20200, wll_kg: 9180, design_factor: 3, minimum_breaking_force_lbf: 60600, wll_provenance: 'memory', wll_kg_provenance: 'memory' },
      70: { wll_lb: 24700, wll_kg: 11200, design_factor: 4, minimum_breaking_force_lbf: 98800, wll_provenance: 'memory', wll_kg_provenance: 'memory' },
      80: { wll_lb: 28300, wll_kg: 12800, design_factor: 4, minimum_breaking_force_lbf: 113200, wll_kg_provenance: 'memory' },
      100: { wll_lb: 35300, wll_kg: 16000, design_factor: 4, minimum_breaking_force_lbf: 141200, wll_kg_provenance: 'memory' },
    },
    '7/8': {
      30: { wll_lb: 12800, wll_kg: 5810, design_factor: 4, minimum_breaking_force_lbf: 51200, wll_provenance: 'memory', wll_kg_provenance: 'memory' },
      43: { wll_lb: 24500, wll_kg: 11140, design_factor: 3, minimum_breaking_force_lbf: 73500, wll_provenance: 'memory', wll_kg_provenance: 'memory' },
      80: { wll_lb: 34200, wll_kg: 15500, design_factor: 4, minimum_breaking_force_lbf: 136800, wll_kg_provenance: 'memory' },
      100: { wll_lb: 42700, wll_kg: 19400, design_factor: 4, minimum_breaking_force_lbf: 170800, wll_kg_provenance: 'memory' },
    },
    '1': {
      30: { wll_lb: 17900, wll_kg: 8140, design_factor: 4, minimum_breaking_force_lbf: 71600, wll_provenance: 'memory', wll_kg_provenance: 'memory' },
      80: { wll_lb: 47700, wll_kg: 21600, design_factor: 4, minimum_breaking_force_lbf: 190800, wll_kg_provenance: 'memory' },
    },
    '1-1/4': {
      80: { wll_lb: 72300, wll_kg: 32800, design_factor: 4, minimum_breaking_force_lbf: 289200, wll_kg_provenance: 'memory' },
    },
  },
} as const;
