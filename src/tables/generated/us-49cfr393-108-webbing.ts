// Generated from reference-tables/us-49cfr393-108-webbing by `npm run tables`. Do not edit.
export const us49cfr393108Webbing = {
  id: 'us-49cfr393-108-webbing',
  asOf: '2024',
  source: {
    document: '49 CFR Part 393, Protection Against Shifting and Falling Cargo',
    edition: '2024',
    clause: '393.108, table for synthetic webbing',
    provenance: 'read',
  },
  rows: {
    '1-3/4': { wll_lb: 1750, wll_kg: 790 },
    '2': { wll_lb: 2000, wll_kg: 910 },
    '3': { wll_lb: 3000, wll_kg: 1360 },
    '4': { wll_lb: 4000, wll_kg: 1810 },
  },
} as const;
