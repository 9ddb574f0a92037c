// Generated from reference-tables/sling-coldest-use by `npm run tables`. Do not edit.
export const slingColdestUse = {
  rows: {
    '80': { degrees_below_zero: 40, unit: 'F', clause: 'ASME B30.9', provenance: 'memory' },
    '100': { degrees_below_zero: 20, unit: 'F', clause: 'ASTM A973/A973M 1.2', provenance: 'memory' },
    '4': { degrees_below_zero: 40, unit: 'C', clause: 'DGUV Information 209-021, grade 4' },
    '5': { degrees_below_zero: 40, unit: 'C', clause: 'DGUV Information 201-030, section 6.3' },
    '8': { degrees_below_zero: 40, unit: 'C', clause: 'ISO 3076:2012, scope' },
  },
} as const;
