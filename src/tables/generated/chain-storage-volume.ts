// Generated from reference-tables/chain-storage-volume by `npm run tables`. Do not edit.
export const chainStorageVolume = {
  source: {
    document: 'Rules for the volume of chain lockers: two of classification rules and one of a handbook of small craft',
    edition: 'undated',
    clause: 'rules for classification of seagoing ships, section 18 E; handbook of boat mechanical systems, formula 24-6',
    provenance: 'read',
    note: 'V in m3 = numerator d2 L / divisor, d in mm and L in m; made for anchor chain, which is heavier',
  },
  rows: {
    'class-rule': { numerator: 1.1, divisor: 100000 },
    'second-class-rule': { numerator: 1, divisor: 49000 },
    'small-craft-handbook': { numerator: 1, divisor: 48612 },
  },
} as const;
