// Generated from reference-tables/us-49cfr393-108-fiber-rope by `npm run tables`. Do not edit.
export const us49cfr393108FiberRope = {
  id: 'us-49cfr393-108-fiber-rope',
  asOf: '2024',
  source: {
    document: '49 CFR Part 393, Protection Against Shifting and Falling Cargo',
    edition: '2024',
    clause: '393.108, tables for manila, polypropylene, polyester, nylon and double braided nylon rope',
    provenance: 'memory',
  },
  rows: {
    'manila': {
      '3/8': { wll_lb: 205, wll_kg: 90, provenance: 'read' },
      '7/16': { wll_lb: 265, wll_kg: 120, provenance: 'read' },
      '1/2': { wll_lb: 315, wll_kg: 150, provenance: 'read' },
      '5/8': { wll_lb: 465, wll_kg: 210, provenance: 'read' },
      '3/4': { wll_lb: 640, wll_kg: 290, provenance: 'read' },
      '1': { wll_lb: 1050, wll_kg: 480, provenance: 'read' },
    },
    'polypropylene': {
      '3/8': { wll_lb: 400, wll_kg: 180 },
      '7/16': { wll_lb: 525, wll_kg: 240 },
      '1/2': { wll_lb: 625, wll_kg: 280 },
      '5/8': { wll_lb: 925, wll_kg: 420 },
      '3/4': { wll_lb: 1275, wll_kg: 580 },
      '1': { wll_lb: 2100, wll_kg: 950 },
    },
    'polyester': {
      '3/8': { wll_lb: 555, wll_kg: 250 },
      '7/16': { wll_lb: 750, wll_kg: 340 },
      '1/2': { wll_lb: 960, wll_kg: 440 },
      '5/8': { wll_lb: 1500, wll_kg: 680 },
      '3/4': { wll_lb: 1880, wll_kg: 850 },
      '1': { wll_lb: 3300, wll_kg: 1500 },
    },
    'nylon': {
      '3/8': { wll_lb: 278, wll_kg: 130 },
      '7/16': { wll_lb: 410, wll_kg: 190 },
      '1/2': { wll_lb: 525, wll_kg: 240 },
      '5/8': { wll_lb: 935, wll_kg: 420 },
      '3/4': { wll_lb: 1420, wll_kg: 640 },
      '1': { wll_lb: 2520, wll_kg: 1140 },
    },
    'double-braided-nylon': {
      '3/8': { wll_lb: 336, wll_kg: 150 },
      '7/16': { wll_lb: 502, wll_kg: 230 },
      '1/2': { wll_lb: 655, wll_kg: 300 },
      '5/8': { wll_lb: 1130, wll_kg: 510 },
      '3/4': { wll_lb: 1840, wll_kg: 830 },
      '1': { wll_lb: 3250, wll_kg: 1470 },
    },
  },
} as const;
