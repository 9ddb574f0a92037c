// Generated from reference-tables/us-49cfr393-108-fiber-rope by `npm run tables`. Do not edit.
export const us49cfr393108FiberRope = {
  source: {
    document: '49 CFR Part 393, Protection Against Shifting and Falling Cargo',
    edition: '2024',
    clause: '393.108, tables for fiber rope',
    provenance: 'memory',
  },
  rows: {
    'manila': {
      '3/8': { wll_lb: 205, provenance: 'read' },
      '7/16': { wll_lb: 265, provenance: 'read' },
      '1/2': { wll_lb: 315, provenance: 'read' },
      '5/8': { wll_lb: 465, provenance: 'read' },
      '3/4': { wll_lb: 640, provenance: 'read' },
      '1': { wll_lb: 1050, provenance: 'read' },
    },
    'polypropylene': {
      '3/8': { wll_lb: 400 },
      '7/16': { wll_lb: 525 },
      '1/2': { wll_lb: 625 },
      '5/8': { wll_lb: 925 },
      '3/4': { wll_lb: 1275 },
      '1': { wll_lb: 2100 },
    },
    'polyester': {
      '3/8': { wll_lb: 555 },
      '7/16': { wll_lb: 750 },
      '1/2': { wll_lb: 960 },
      '5/8': { wll_lb: 1500 },
      '3/4': { wll_lb: 1880 },
      '1': { wll_lb: 3300 },
    },
    'nylon': {
      '3/8': { wll_lb: 278 },
      '7/16': { wll_lb: 410 },
      '1/2': { wll_lb: 525 },
      '5/8': { wll_lb: 935 },
      '3/4': { wll_lb: 1420 },
      '1': { wll_lb: 2520 },
    },
    'double-braided-nylon': {
      '3/8': { wll_lb: 336 },
      '7/16': { wll_lb: 502 },
      '1/2': { wll_lb: 655 },
      '5/8': { wll_lb: 1130 },
      '3/4': { wll_lb: 1840 },
      '1': { wll_lb: 3250 },
    },
  },
} as const;
