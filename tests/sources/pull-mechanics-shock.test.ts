// Peaks of snatched chain: worked out beforehand from the formulas, by hand and by stepping through the motion.
import { shockTension } from 'chain-rigging';
import { expect, it } from 'vitest';
import type { SourceRef } from '../../src/working/source.js';
import { verify } from './verify.js';

const formulas: SourceRef = { document: 'Energy of two masses and a spring', provenance: 'derived' };
const stepped = 'printed to three digits; found by hand and by stepping through the motion in microseconds';

const chain = { wireDiameter: '10 mm', length: '6 m' } as const;
const asked = { towingMass: '3000 kg', load: 'anchored', takeUp: { speed: '1 m/s' }, chain } as const;

for (const [id, what, printed, computed] of [
  ['anchored', '3000 kg at 1 m/s against an anchor, 6 m of 10 mm chain', 65.3, shockTension(asked)],
  [
    'two-free',
    'the same between two free machines of 3000 kg',
    46.2,
    shockTension({ ...asked, load: { mass: '3000 kg' } }),
  ],
  ['thrust', 'the same against an anchor with a thrust of 10 kN', 76.1, shockTension({ ...asked, thrust: '10 kN' })],
  [
    'breaks-loose',
    '2000 kg with 12 kN at 1 m/s; 4000 kg break loose at 30 kN',
    61.8,
    shockTension({
      ...asked,
      towingMass: '2000 kg',
      load: { mass: '4000 kg', breaksLooseAt: '30 kN' },
      thrust: '12 kN',
    }),
  ],
  [
    'breaks-loose-anchored',
    'the same against an anchor',
    66.7,
    shockTension({ ...asked, towingMass: '2000 kg', thrust: '12 kN' }),
  ],
] as const) {
  verify({
    id: `snatch-${id}`,
    domain: 'pulling',
    source: formulas,
    what: `peak tension: ${what}`,
    printed,
    unit: 'kN',
    computed: computed.leastPeakTension.value,
    tolerance: 0.05,
    why: stepped,
  });
}

// EA of 10 mm is 8540 kN: 1423 kN/m over 6 m. The stored energy of a slow pull F is F² / 2k: at 1 kN 1 / 2846 kJ.
verify({
  id: 'snatch-stiffness',
  domain: 'pulling',
  source: formulas,
  what: 'stiffness of 6 m of 10 mm chain, from the energy that a slow pull of 1 kN stores',
  printed: 1423,
  unit: 'kN/m',
  computed: 1 / (2 * shockTension({ ...asked, takeUp: 'slow', thrust: '1 kN' }).energy.stored),
  tolerance: 0.5,
  why: 'printed to a kN/m',
});

verify({
  id: 'snatch-energy-at-break',
  domain: 'pulling',
  source: formulas,
  what: 'elastic energy in 6 m of 10 mm chain at 117 kN',
  printed: 4.8,
  unit: 'kJ',
  computed: shockTension({ ...asked, takeUp: 'slow', thrust: '117 kN' }).energy.stored,
  tolerance: 0.05,
  why: 'printed to two digits',
});

// The printed speeds are for mooring chain. The library tells them for solid bars, √(323.6 / 85.4) lower.
for (const [id, printed, inSeries] of [
  ['rigid', 0.45, []],
  ['soft', 0.59, [{ by: '0.5 mm', under: '1 kN' }]],
] as const) {
  verify({
    id: `snatch-greatest-speed-${id}`,
    domain: 'pulling',
    source: formulas,
    what: `speed whose peak is 29.4 kN in mooring chain, ${id} machines: 29.4 over the peak at 1 m/s`,
    printed,
    unit: 'm/s',
    computed: 29.4 / shockTension({ ...asked, inSeries }).leastPeakTension.value,
    tolerance: 0.005,
    why: 'printed to two digits',
  });
}

/** Trade size, wire in mm, working load limit in lb, mass in kg, peaks in lbf at each speed, and those over the limit. */
const TABLE: readonly (readonly [string, number, number, number, readonly number[], readonly number[]])[] = [
  ['5/16', 8, 4700, 1000, [679, 1696, 3393, 6785, 10178, 13570], [0.14, 0.36, 0.72, 1.44, 2.17, 2.89]],
  ['5/16', 8, 4700, 2000, [960, 2399, 4798, 9596, 14393, 19191], [0.2, 0.51, 1.02, 2.04, 3.06, 4.08]],
  ['5/16', 8, 4700, 3000, [1175, 2938, 5876, 11752, 17628, 23504], [0.25, 0.63, 1.25, 2.5, 3.75, 5]],
  ['3/8', 10, 6600, 1000, [848, 2120, 4241, 8481, 12722, 16963], [0.13, 0.32, 0.64, 1.29, 1.93, 2.57]],
  ['3/8', 10, 6600, 2000, [1199, 2999, 5997, 11994, 17992, 23989], [0.18, 0.45, 0.91, 1.82, 2.73, 3.63]],
  ['3/8', 10, 6600, 3000, [1469, 3673, 7345, 14690, 22035, 29380], [0.22, 0.56, 1.11, 2.23, 3.34, 4.45]],
  ['1/2', 13, 11300, 1000, [1103, 2756, 5513, 11026, 16539, 22052], [0.1, 0.24, 0.49, 0.98, 1.46, 1.95]],
  ['1/2', 13, 11300, 2000, [1559, 3898, 7796, 15593, 23389, 31186], [0.14, 0.34, 0.69, 1.38, 2.07, 2.76]],
  ['1/2', 13, 11300, 3000, [1910, 4774, 9549, 19097, 28646, 38195], [0.17, 0.42, 0.85, 1.69, 2.54, 3.38]],
];
const SPEEDS = [0.1, 0.25, 0.5, 1, 1.5, 2];
const table: SourceRef = { document: 'Table of v · √(k · m) for chain of 6 m', provenance: 'computed' };

for (const [size, wire, limit, mass, peaks, overLimit] of TABLE) {
  for (const [at, speed] of SPEEDS.entries()) {
    const { leastPeakTension } = shockTension({
      towingMass: { value: mass, unit: 'kg' },
      load: 'anchored',
      takeUp: { speed: { value: speed, unit: 'm/s' } },
      chain: { wireDiameter: { value: wire, unit: 'mm' }, length: '6 m' },
      units: 'us',
    });
    verify({
      id: `snatch-table-${size.replace('/', '-')}-${mass}-kg-${speed}-m-s`,
      domain: 'pulling',
      source: table,
      what: `peak in ${size} grade 70 (wire ${wire} mm), ${mass} kg at ${speed} m/s`,
      printed: peaks[at]!,
      unit: 'lbf',
      computed: leastPeakTension.value,
      tolerance: 0.5,
      why: 'printed to a pound-force',
    });
    it(`and over the working load limit of ${limit} lb`, () => {
      expect(Math.abs(leastPeakTension.value / limit - overLimit[at]!)).toBeLessThanOrEqual(0.005);
    });
  }
}
