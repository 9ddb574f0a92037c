// Generated from reference-tables/us-49cfr393-108-webbing by `npm run tables`. Do not edit.
export const us49cfr393108Webbing = {
  source: {
    document: '49 CFR Part 393, Protection Against Shifting and Falling Cargo',
    edition: '2024',
    clause: '393.108, table for synthetic webbing',
    provenance: 'read',
  },
  rows: {
    '1-3/4': { wll_lb: 1750 },
    '2': { wll_lb: 2000 },
    '3': { wll_lb: 3000 },
    '4': { wll_lb: 4000 },
  },
} as const;
