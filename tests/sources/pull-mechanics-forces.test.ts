import {
  availablePull,
  logMass,
  type PullResistanceInput,
  pullResistance,
  type SoilClass,
  tireTraction,
} from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { verify } from './verify.js';

const note = 'read in a page quoting it';
const derived = { provenance: 'derived' } as const;
const pounds = (input: PullResistanceInput): number => pullResistance(input).pull?.value ?? Number.NaN;

// 2. The older numeric Cn lacks the two brackets of Bn. With no deflection Bn = Cn / (1 + 3 b/d).
const wheel = tireTraction({
  coneIndex: { kPa: 800 },
  tire: { sectionWidth: '0.45 m', diameter: '1.4 m', deflectionRatio: 0 },
  load: '12 kN',
  construction: 'bias',
  slip: 0.15,
});
verify({
  id: 'older-wheel-numeric',
  domain: 'pulling',
  source: { document: 'Questions of an examination in agricultural engineering', provenance: 'read', note },
  what: 'wheel numeric CI · b · d / W of a tire 0.45 m by 1.4 m under 12 kN on 800 kPa: Bn with its brackets taken off',
  printed: 42,
  unit: '(number)',
  computed: wheel.wheelNumeric * (1 + (3 * 0.45) / 1.4),
  tolerance: 1e-9,
  why: 'exact: 800 · 0.45 · 1.4 / 12',
});

// 4. Rolling and grade by the worksheet's rule of 20 lb per ton and percent, the tangent; the library has the sine.
const worksheet = {
  document: 'Worksheet on earthmoving machines',
  provenance: 'read',
  note: 'no address available',
} as const;
const RULE =
  'the worksheet takes the tangent of the grade for its sine and the full weight for rolling: 3 lb in 86 tons';
const machine = { kind: 'rolling', mass: '86 short-ton', rolling: { coefficient: 120 / 2000 } } as const;
for (const [percent, total, effective] of [
  [0, 10_320, 6],
  [2, 13_760, 8],
  [-5, 1_720, 1],
] as const) {
  const computed = pounds({ ...machine, slope: { value: percent, unit: 'percent-grade' } });
  verify({
    id: `total-resistance-at-${percent}-percent`,
    domain: 'pulling',
    source: worksheet,
    what: `total resistance of 86 tons rolling at 120 lb per ton on a grade of ${percent} percent`,
    printed: total,
    unit: 'lb',
    computed,
    tolerance: percent === 0 ? 1e-9 : 3,
    why: percent === 0 ? 'exact' : RULE,
  });
  verify({
    id: `effective-grade-at-${percent}-percent`,
    domain: 'pulling',
    source: worksheet,
    what: `effective grade, total resistance over weight, on a grade of ${percent} percent`,
    printed: effective,
    unit: 'percent',
    computed: (100 * computed) / 172_000,
    tolerance: percent === 0 ? 1e-9 : 0.002,
    why: percent === 0 ? 'exact' : RULE,
  });
}

// 5. What 310 hp hold at 15 mph. The axles of the machine do not matter to the engine: any will do.
const hauler = {
  tractor: { mass: '90000 lb', frontAxleMass: '40000 lb', wheelbase: '200 in', drive: 'all-wheels' },
  hitch: { kind: 'drawbar', height: '30 in' },
  traction: { coefficient: 0.5, kind: 'net' },
  engine: { power: { hp: 310 }, efficiency: 0.8, speed: '15 mph' },
} as const;
const byEngine = (coefficient: number): number =>
  availablePull({ ...hauler, rolling: { coefficient } }).limits.find((each) => each.limit === 'engine-power')?.pull
    ?.value ?? Number.NaN;
const rimpull = byEngine(0);
verify({
  id: 'rimpull-of-310-hp',
  domain: 'pulling',
  source: worksheet,
  what: 'pull on the ground of 310 hp at an efficiency of 0.8 and 15 mph',
  printed: 6200,
  unit: 'lb',
  computed: rimpull,
  tolerance: 1e-6,
  why: 'exact: 375 · 310 · 0.8 / 15',
});
verify({
  id: 'rolling-resistance-at-full-power',
  domain: 'pulling',
  source: worksheet,
  what: 'rolling resistance of 90,000 lb that takes all of that pull',
  printed: 137.8,
  unit: 'lb/ton',
  computed: rimpull / 45,
  tolerance: 0.05,
  why: 'printed to 0.1',
});
it('leaves nothing to pull with at that rolling resistance, and something just below', () => {
  expect(byEngine(137.8 / 2000)).toBe(0); // 6200 − 6201
  expect(byEngine(137.7 / 2000)).toBeCloseTo(6200 - 137.7 * 45, 6);
});
const sunk = (inches: number) =>
  pounds({ kind: 'rolling', mass: '90000 lb', rolling: { penetration: { value: inches, unit: 'in' } } });
verify({
  id: 'penetration-at-full-power',
  domain: 'pulling',
  source: worksheet,
  what: 'tire penetration at which 90,000 lb take all of that pull, from the resistances of none and of 1 in',
  printed: 3.3,
  unit: 'in',
  computed: (rimpull - sunk(0)) / (sunk(1) - sunk(0)),
  tolerance: 0.05,
  why: 'printed to 0.1',
});

// 9. Civil fraction
verify({
  id: 'vehicle-on-wet-sand',
  domain: 'pulling',
  source: { document: 'Civil off-road practice: pull by surface', provenance: 'read', note: 'a page of low authority' },
  what: 'pull of a vehicle of 4,500 lb on hard wet sand, 1/6 of its weight; the product is computed here',
  printed: 750,
  unit: 'lb',
  computed: pounds({ kind: 'soft-ground', mass: '4500 lb', surface: 'hard-wet-sand' }),
  tolerance: 1e-9,
  why: 'exact',
});

// D. Closed forms of a rear-driven tractor, worked out by hand and checked by moments about its center of gravity
const compact = {
  tractor: { mass: '3300 lb', centerOfGravityAhead: '22.4 in', wheelbase: '64 in', drive: 'rear-wheels' },
  traction: { coefficient: 0.55, kind: 'net' },
} as const;
const forward = availablePull({
  ...compact,
  hitch: { kind: 'drawbar', height: '15 in' },
  rolling: { coefficient: 0.05 },
});
const reverse = availablePull({
  ...compact,
  hitch: { kind: 'front-hitch', height: '15 in', aheadOfFrontAxle: '20 in' },
  rolling: { coefficient: 0 },
});
const forces = { document: 'Constructed checks of the mechanics of pulling', ...derived };
verify({
  id: 'pull-of-a-rear-driven-tractor',
  domain: 'pulling',
  source: forces,
  what: 'pull of 3,300 lb on 64 in, center of gravity 22.4 in ahead, hitch 15 in, net 0.55, front wheels rolling at 0.05',
  printed: 1306,
  unit: 'lb',
  computed: forward.pull?.value ?? Number.NaN,
  tolerance: 0.5,
  why: 'printed to 1 lb',
});
verify({
  id: 'pull-over-weight-of-a-rear-driven-tractor',
  domain: 'pulling',
  source: forces,
  what: 'the same over its weight',
  printed: 0.396,
  unit: '(number)',
  computed: (forward.pull?.value ?? Number.NaN) / 3300,
  tolerance: 0.0005,
  why: 'printed to 0.001',
});
verify({
  id: 'reverse-pull-of-a-rear-driven-tractor',
  domain: 'pulling',
  source: forces,
  what: 'the same pulling in reverse on its front hitch, without rolling',
  printed: 1045,
  unit: 'lb',
  computed: reverse.pull?.value ?? Number.NaN,
  tolerance: 0.5,
  why: 'printed to 1 lb',
});

// I and J. Logs
const oak = logMass({ length: '16 ft', diameter: { middle: '16 in' }, density: '63 lb/ft3' }).mass;
const drag = { kind: 'log', lift: 'none', mass: oak, friction: { coefficient: 0.6 } } as const;
const tapered = { length: '12 ft', density: '1 lb/ft3' } as const;
for (const [id, what, printed, unit, computed, tolerance] of [
  ['mass-of-an-oak-log', 'mass of a log 16 in by 16 ft at 63 lb/ft³', 1407, 'lb', oak.value, 0.5],
  ['oak-log-level', 'pull of that log with friction 0.6 on the level', 844, 'lb', pounds(drag), 0.5],
  [
    'oak-log-chain-up',
    'the same with a chain that rises 15 degrees',
    753,
    'lb',
    pounds({ ...drag, chainAngle: '15 deg' }),
    0.5,
  ],
  [
    'oak-log-uphill',
    'the same along the ground, 10 degrees uphill',
    1076,
    'lb',
    pounds({ ...drag, slope: '10 deg' }),
    0.5,
  ],
  [
    'tapered-log-by-both-ends',
    'volume of a log of 18 and 12 in by 12 ft, from both ends',
    15.32,
    'ft³',
    logMass({ ...tapered, diameter: { ends: ['18 in', '12 in'] } }).mass.value,
    0.005,
  ],
  [
    'tapered-log-by-its-middle',
    'the same from its middle, 15 in',
    14.73,
    'ft³',
    logMass({ ...tapered, diameter: { middle: '15 in' } }).mass.value,
    0.005,
  ],
] as const) {
  verify({
    id,
    domain: 'pulling',
    source: forces,
    what,
    printed,
    unit,
    computed,
    tolerance,
    why: 'half of the last printed digit',
  });
}

/**
 * The D497 equations for bias-ply tires, from memory, computed elsewhere and typed: GTR, MRR, NTR, TE at a slip in percent.
 */
const D497: Readonly<Record<SoilClass, readonly (readonly [number, number, number, number, number])[]>> = {
  hard: [
    [5, 0.3151, 0.0553, 0.2598, 0.7833],
    [10, 0.5042, 0.0581, 0.4461, 0.7963],
    [15, 0.6341, 0.0609, 0.5732, 0.7684],
    [20, 0.7234, 0.0637, 0.6597, 0.7296],
    [25, 0.7848, 0.0665, 0.7183, 0.6865],
    [30, 0.827, 0.0693, 0.7577, 0.6414],
  ],
  firm: [
    [5, 0.3141, 0.0616, 0.2525, 0.7638],
    [10, 0.5024, 0.0649, 0.4375, 0.7837],
    [15, 0.6319, 0.0683, 0.5636, 0.7581],
    [20, 0.7209, 0.0717, 0.6492, 0.7205],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: a value of the table, no root of a half
    [25, 0.782, 0.075, 0.707, 0.678],
    [30, 0.824, 0.0784, 0.7456, 0.6334],
  ],
  tilled: [
    [5, 0.3101, 0.069, 0.2412, 0.7388],
    [10, 0.4958, 0.0729, 0.4229, 0.7677],
    [15, 0.6234, 0.0769, 0.5466, 0.7452],
    [20, 0.7111, 0.0808, 0.6303, 0.7091],
    [25, 0.7714, 0.0848, 0.6866, 0.6676],
    [30, 0.8128, 0.0887, 0.7241, 0.6236],
  ],
  'soft-or-sandy': [
    [5, 0.2779, 0.0956, 0.1824, 0.6233],
    [10, 0.4415, 0.1012, 0.3403, 0.6937],
    [15, 0.5539, 0.1068, 0.4471, 0.6861],
    [20, 0.6311, 0.1124, 0.5188, 0.6576],
    [25, 0.6842, 0.118, 0.5663, 0.6207],
    [30, 0.7207, 0.1235, 0.5972, 0.58],
  ],
};

describe('D497 by soil and slip', () => {
  for (const [soil, rows] of Object.entries(D497)) {
    for (const [percent, GTR, MRR, NTR, TE] of rows) {
      const result = tireTraction({ soil: soil as SoilClass, construction: 'bias', slip: percent / 100 });
      verify({
        id: `d497-${soil}-slip-${percent}`,
        domain: 'pulling',
        source: { document: 'ASABE D497, traction equations from memory', provenance: 'computed' },
        what: `net traction ratio of a bias-ply tire on ${soil} soil at ${percent} percent slip`,
        printed: NTR,
        unit: '(number)',
        computed: result.netTractionRatio,
        tolerance: 0.00005,
        why: 'printed to 0.0001',
      });
      it(`${soil}, ${percent} percent: gross traction, motion resistance, efficiency`, () => {
        expect(Math.abs(result.grossTractionRatio - GTR)).toBeLessThanOrEqual(0.00005);
        expect(Math.abs(result.motionResistanceRatio - MRR)).toBeLessThanOrEqual(0.00005);
        expect(Math.abs(result.tractiveEfficiency - TE)).toBeLessThanOrEqual(0.00005);
      });
    }
  }
});
