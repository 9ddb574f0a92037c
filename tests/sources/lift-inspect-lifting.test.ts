import { describe, expect, it } from 'vitest';
import { euEn818_2008, type Point, slingRating, slingTensions, usAlloySling_2011 } from '../../src/index.js';
import type { SourceRef } from '../../src/working/source.js';
import { verify } from './verify.js';

// Old rules of thumb stand here as printed arithmetic only; the library offers none of them. The naval rule 8 d² stands
// among the sources of chain.

const quoted = { provenance: 'read', note: 'read in a page quoting it' } as const;
const statics: SourceRef = { document: 'Statics of slings, derived by hand', provenance: 'computed' };
const at = (x: number, y: number, z = 0): Point => [`${x} ft`, `${y} ft`, `${z} ft`];

const queensland: SourceRef = { document: 'Queensland, Guide for doggers', clause: 'p. 8', ...quoted };
verify({
  id: 'queensland-grade-80-diameter',
  domain: 'lifting',
  source: queensland,
  what: 'diameter of grade 80 chain for 3200 kg, WLL = 0.4 G d²',
  printed: 10,
  unit: 'mm',
  computed: Math.sqrt(3200 / 0.4 / 80),
  tolerance: 0,
  why: 'sqrt(100), exact',
});

// Nicholls: a square tray 4 ft x 4 ft hung by four corner legs of 7 ft; 20 hundredweight, the load evenly spread
const seamanship: SourceRef = {
  document: "Nicholls's Seamanship and Nautical Knowledge",
  clause: 'pp. 280-283',
  ...quoted,
};
const tray = slingTensions({
  load: { mass: { value: 20 * 112, unit: 'lb' }, centerOfGravity: at(0, 0, -1) },
  legs: [at(-2, -2), at(2, -2), at(2, 2), at(-2, 2)].map((point, index) => ({
    id: `${index}`,
    at: point,
    length: '7 ft',
  })),
});
verify({
  id: 'nicholls-tray-angle',
  domain: 'lifting',
  source: seamanship,
  what: 'lean of a corner leg of 7 ft over a tray of 4 ft by 4 ft',
  printed: 23 + 51 / 60,
  unit: 'deg from vertical',
  computed: 90 - tray.legs[0]!.angle.fromHorizontal.value,
  tolerance: 0.03,
  why: 'the book takes half the diagonal as 2.83 ft and a table of sines; 2.8284/7 is 23.83 degrees',
});
verify({
  id: 'nicholls-tray-tension',
  domain: 'lifting',
  source: seamanship,
  what: 'tension of each of four legs that share 20 hundredweight alike',
  printed: 5.45,
  unit: 'cwt',
  computed: tray.legs[0]!.elasticTension!.value / 112,
  tolerance: 0.02,
  why: 'the book rounds the angle on the way; 5 / cos 23.83 is 5.466',
});

const navy: SourceRef = { document: 'NAVEDTRA 14080', clause: 'bridle hitch', ...quoted };
const bridle = (half: number, rise: number) =>
  slingTensions({
    load: { mass: '1000 lb', centerOfGravity: at(0, 0, -1) },
    legs: [
      { id: 'left', at: at(-half, 0) },
      { id: 'right', at: at(half, 0) },
    ],
    hook: at(0, 0, rise),
  }).legs[1]!;
verify({
  id: 'navedtra-bridle-90',
  domain: 'lifting',
  source: navy,
  what: '1000 lb on two legs as good as plumb',
  printed: 500,
  unit: 'lbf per leg',
  computed: bridle(0.001, 1000).tension.value,
  tolerance: 0.5,
  why: 'printed as a whole number; a millionth off plumb',
});
verify({
  id: 'navedtra-bridle-30',
  domain: 'lifting',
  source: navy,
  what: '1000 lb on two legs at 30 degrees from horizontal',
  printed: 1000,
  unit: 'lbf per leg',
  computed: bridle(Math.sqrt(3), 1).tension.value,
  tolerance: 0.5,
  why: 'printed as a whole number',
});

verify({
  id: 'bc-crane-safety-quiz',
  domain: 'lifting',
  source: { document: 'British Columbia Association for Crane Safety, rigging quiz', ...quoted },
  what: 'two slings of 16 ft, hook 12 ft above the load, 15 000 lb',
  printed: 10_000,
  unit: 'lbf per shackle',
  computed: slingTensions({
    load: { mass: '15000 lb', centerOfGravity: at(0, 0, -1) },
    legs: [-1, 1].map((side) => ({ id: `${side}`, at: at(side * Math.sqrt(16 ** 2 - 12 ** 2), 0), length: '16 ft' })),
  }).legs[0]!.tension.value,
  tolerance: 1e-6,
  why: '16 · 15 000 / (2 · 12), exact but for doubles',
});

const osha = (clause: string): SourceRef => ({
  document: 'OSHA, Guidance on Safe Sling Use',
  clause,
  provenance: 'read',
});
const us = (size: '3/8' | '1/2', grade: 80 | 100, hitch: 'double' | 'quad', degrees: 60 | 45 | 30) =>
  slingRating({
    ratings: usAlloySling_2011,
    size,
    grade,
    hitch,
    angle: { fromHorizontal: { value: degrees, unit: 'deg' } },
  }).workingLoadLimit!.value;
for (const [id, clause, what, printed, computed] of [
  ['osha-3-8-80-double-45', 'Table 1', '3/8 in grade 80, two legs at 45 degrees', 10_000, us('3/8', 80, 'double', 45)],
  ['osha-3-8-80-quad-60', 'Table 1', '3/8 in grade 80, four legs at 60 degrees', 18_400, us('3/8', 80, 'quad', 60)],
  [
    'osha-1-2-100-double-30',
    'Table 2',
    '1/2 in grade 100, two legs at 30 degrees',
    15_000,
    us('1/2', 100, 'double', 30),
  ],
] as const) {
  verify({
    id,
    domain: 'lifting',
    source: osha(clause),
    what,
    printed,
    unit: 'lb',
    computed,
    tolerance: 0,
    why: 'a printed cell',
  });
}

const dguv: SourceRef = { document: 'DGUV Information 209-021', edition: '2021', clause: 'table, grade 8', ...quoted };
const eu = (size: '10 mm' | '26 mm', hitch: 'double' | 'triple', degrees: number) =>
  slingRating({
    ratings: euEn818_2008,
    size,
    grade: '8',
    hitch,
    angle: { fromVertical: { value: degrees, unit: 'deg' } },
  }).workingLoadLimit!.value;
verify({
  id: 'dguv-10-mm-triple-60',
  domain: 'lifting',
  source: dguv,
  what: '10 mm grade 8, three or four legs, over 45 to 60 degrees from vertical',
  printed: 4750,
  unit: 'kg',
  computed: eu('10 mm', 'triple', 50),
  tolerance: 0,
  why: 'a printed cell',
});
verify({
  id: 'dguv-26-mm-double-45',
  domain: 'lifting',
  source: dguv,
  what: '26 mm grade 8, two legs, 0 to 45 degrees from vertical',
  printed: 30_000,
  unit: 'kg',
  computed: eu('26 mm', 'double', 45),
  tolerance: 0,
  why: 'a printed cell',
});

// 9. 10. 11. 12. vectors of statics
const tensions = (mass: string, hook: Point, picks: readonly Point[]) =>
  slingTensions({
    load: { mass: mass as `${number} lb`, centerOfGravity: [hook[0], hook[1], '-20 ft'] },
    legs: picks.map((pick, index) => ({ id: `${index}`, at: pick })),
    hook,
  }).legs;
const level = tensions('6000 lb', at(0, 0, 6), [at(-2, 0), at(6, 0)]);
const unlevel = tensions('5000 lb', at(0, 0, 0), [at(-3, 0, -4), at(4, 0, -8)]);
const three = tensions('9000 lb', at(0, 0, 6), [at(-3, -2), at(3, -2), at(0, 4)]);
const four = tensions('8000 lb', at(0, 0, 4), [at(-2, -1.5), at(2, -1.5), at(2, 1.5), at(-2, 1.5)]);
for (const [id, what, printed, computed, tolerance] of [
  [
    'statics-level-1',
    '6000 lb, picks 2 and 6 ft from plumb, hook 6 ft up: near leg',
    4743.4,
    level[0]!.tension.value,
    0.05,
  ],
  ['statics-level-2', 'the same: far leg', 2121.3, level[1]!.tension.value, 0.05],
  [
    'statics-unlevel-1',
    '5000 lb, picks 3 ft out 4 ft down and 4 ft out 8 ft down: first leg',
    2500,
    unlevel[0]!.tension.value,
    0.05,
  ],
  ['statics-unlevel-2', 'the same: second leg', 3354.1, unlevel[1]!.tension.value, 0.05],
  [
    'statics-three-1',
    '9000 lb on three legs over (-3,-2), (3,-2), (0,4), hook 6 ft up: first leg',
    3500,
    three[0]!.tension.value,
    0.05,
  ],
  ['statics-three-2', 'the same: second leg', 3500, three[1]!.tension.value, 0.05],
  ['statics-three-3', 'the same: third leg', 3605.6, three[2]!.tension.value, 0.05],
  [
    'statics-four-worst',
    '8000 lb on four legs over 4 by 3 ft, hook 4 ft up: worst case of each',
    4717,
    four[2]!.tension.value,
    0.05,
  ],
  ['statics-four-elastic', 'the same: sharing by stretch', 2358.5, four[2]!.elasticTension!.value, 0.05],
] as const) {
  verify({
    id,
    domain: 'lifting',
    source: statics,
    what,
    printed,
    unit: 'lbf',
    computed,
    tolerance,
    why: 'printed to one decimal',
  });
}
for (const [id, leg, printed] of [
  ['statics-level-angle-1', level[0]!, 71.57],
  ['statics-level-angle-2', level[1]!, 45],
] as const) {
  const computed = leg.angle.fromHorizontal.value;
  verify({
    id,
    domain: 'lifting',
    source: statics,
    what: `lean of leg ${leg.id} of the level picks`,
    printed,
    unit: 'deg',
    computed,
    tolerance: 0.005,
    why: 'printed to two decimals',
  });
}

describe('a misprint that is not followed', () => {
  it('the Navy prints H/L · 4 for one chain in an inclined basket, four times where statics gives two', () => {
    // NAVEDTRA: single basket vertical x 2 (read), inclined x (H/L) x 4 (read): at H/L = 1 the two contradict each other
    const basket = slingRating({
      ratings: usAlloySling_2011,
      size: '3/8',
      grade: 80,
      hitch: 'basket',
      angle: { fromVertical: '0 deg' },
    });
    expect(basket.workingLoadLimit).toMatchObject({ value: 2 * 7100, unit: 'lb' });
  });
});
