// A tractor on its wheels, chain that wraps, hangs and divides: published examples, and checks worked out beforehand.
import { bridleTension, chainSag, hitchStability, pullChainLength, type SourceRef, type Tractor } from 'chain-rigging';
import { type VerificationCase, verify as verifyCase } from './verify.js';

const verify = (example: Omit<VerificationCase, 'domain'>) => verifyCase({ ...example, domain: 'pulling' });

const exam: SourceRef = {
  document: 'Agricultural engineering examination bank',
  edition: 'undated',
  provenance: 'read',
};
const statics: SourceRef = { document: 'Statics of a tractor about its wheels', provenance: 'derived' };
const byCenter = 'printed to the last digit; found by moments about the center of gravity and by halving';

// 25.0 kN on a wheelbase of 2.00 m, 8.75 kN of it on the front: x = 0.70 m. The masses stand for the weights.
const examTractor: Tractor = { mass: '2500 kg', frontAxleMass: '875 kg', wheelbase: '2 m', drive: 'rear-wheels' };
const shownX = hitchStability({ tractor: examTractor, hitch: { kind: 'drawbar', height: '0.5 m' } }).steps.find(
  ({ symbol }) => symbol === 'x',
)!.result as { readonly value: number };
verify({
  id: 'exam-center-of-gravity',
  source: exam,
  what: 'center of gravity ahead of the rear axle: 25.0 kN, wheelbase 2.00 m, front 8.75 kN',
  printed: 0.7,
  unit: 'm',
  computed: shownX.value,
  tolerance: 0.005,
  why: 'printed to two digits',
});

const onSlope = hitchStability({
  tractor: { ...examTractor, trackWidth: '1.6 m', centerOfGravityHeight: '0.8 m' },
  hitch: { kind: 'drawbar', height: '0.5 m' },
  sideSlope: '30 deg',
}).sides!;
for (const [side, printed] of [
  ['low', 0.683],
  ['high', 0.183],
] as const) {
  verify({
    id: `exam-side-slope-${side}`,
    source: exam,
    what: `share of the weight on the ${side} side: side slope 30 deg, track 1.60 m, center of gravity 0.80 m high`,
    printed,
    unit: 'of the weight',
    computed: onSlope[side].value / (2.5 * 9.80665),
    tolerance: 0.0005,
    why: 'printed to three digits',
  });
}

verify({
  id: 'point-of-no-return',
  source: {
    document:
      'University extension figures of a two-wheel-drive tractor: center of gravity 10 in above and 24 in ahead of the rear axle',
    edition: 'undated',
    provenance: 'computed',
    note: 'the figures are read, the angle computed',
  },
  what: 'angle from level at which it falls over backward by itself',
  printed: 67.4,
  unit: 'deg',
  computed: hitchStability({
    tractor: {
      mass: '5000 lb',
      centerOfGravityAhead: '24 in',
      centerOfGravityHeight: '34 in',
      wheelbase: '80 in',
      drive: 'rear-wheels',
    },
    hitch: { kind: 'drawbar', height: '15 in' },
    rearAxleHeight: '24 in',
  }).pointOfNoReturn!.fromHorizontal.value,
  tolerance: 0.05,
  why: 'printed to three digits',
});

const tractor: Tractor = {
  mass: '3300 lb',
  centerOfGravityAhead: '22.4 in',
  centerOfGravityHeight: '28 in',
  wheelbase: '64 in',
  drive: 'rear-wheels',
};
const at = (inches: number) => ({ kind: 'drawbar', height: { value: inches, unit: 'in' } }) as const;

for (const [inches, lift, friction] of [
  [15, 4928, 1.49],
  [20, 3696, 1.12],
  [24, 3080, 0.93],
  [34, 2174, 0.66],
] as const) {
  const answer = hitchStability({ tractor, hitch: at(inches) });
  verify({
    id: `hitch-lift-${inches}-in`,
    source: statics,
    what: `pull that lifts the front: 3300 lb, x 22.4 in, hitch ${inches} in high`,
    printed: lift,
    unit: 'lbf',
    computed: answer.liftPull!.value,
    tolerance: 0.5,
    why: byCenter,
  });
  verify({
    id: `hitch-friction-${inches}-in`,
    source: statics,
    what: `friction needed to lift it, hitch ${inches} in high`,
    printed: friction,
    unit: 'friction factor',
    computed: answer.frictionToLift!,
    tolerance: 0.005,
    why: 'printed to two decimals',
  });
}
for (const [inches, front] of [
  [15, 803],
  [34, 358],
] as const) {
  verify({
    id: `hitch-front-${inches}-in`,
    source: statics,
    what: `left on the front axle under 1500 lbf, hitch ${inches} in high`,
    printed: front,
    unit: 'lbf',
    computed: hitchStability({ tractor, hitch: at(inches), pull: '1500 lbf' }).frontReaction.value,
    tolerance: 0.5,
    why: byCenter,
  });
}
const uphill = hitchStability({ tractor, hitch: at(34), slope: '15 deg' });
for (const [id, what, printed, unit, computed, tolerance] of [
  ['lift', 'pull that lifts the front on 15 deg, hitch 34 in high', 1397, 'lbf', uphill.liftPull!.value, 0.5],
  ['friction', 'friction needed for it', 0.706, 'friction factor', uphill.frictionToLift!, 0.0005],
  ['tip', 'slope at which it tips without a pull', 38.7, 'deg', uphill.noPullTipAngle!.fromHorizontal.value, 0.05],
] as const) {
  verify({ id: `hitch-uphill-${id}`, source: statics, what, printed, unit, computed, tolerance, why: byCenter });
}
const heavyPull = { tractor, hitch: at(15), pull: '1800 lbf' } as const;
for (const [id, what, printed, answer] of [
  [
    'reserve',
    'keeping 20 percent of the weight on the front',
    17.6,
    hitchStability({ ...heavyPull, steeringReserve: 0.2 }),
  ],
  ['lift-off', 'up to lifting', 41.1, hitchStability(heavyPull)],
] as const) {
  verify({
    id: `hitch-height-${id}`,
    source: statics,
    what: `greatest height of the hitch for 1800 lbf, ${what}`,
    printed,
    unit: 'in',
    computed: answer.greatestHeight!.value,
    tolerance: 0.05,
    why: 'printed to three digits',
  });
}

verify({
  id: 'catenary-through-a-point',
  source: {
    document: 'A worked problem of a catenary y = C cosh(x/C) − C through (10, 6)',
    edition: 'undated',
    provenance: 'read',
  },
  what: 'C: the tension over the weight per length, of a span of 20 with a sag of 6',
  printed: 9.1889,
  unit: 'm',
  computed: (chainSag({ span: '20 m', massPerLength: '1 kg/m', sag: '6 m' }).horizontalTension.value * 1000) / 9.80665,
  tolerance: 0.00005,
  why: 'printed to five digits',
});
for (const [tension, sag] of [
  [50, 17.6],
  [146, 6.01],
  [500, 1.75],
  [1000, 0.876],
] as const) {
  verify({
    id: `catenary-sag-${tension}-lbf`,
    source: { document: 'Catenary of a uniform chain', provenance: 'derived' },
    what: `sag of 20 ft of chain of 1.46 lb/ft under ${tension} lbf`,
    printed: sag,
    unit: 'in',
    computed: chainSag({
      span: '20 ft',
      massPerLength: '1.46 lb/ft',
      horizontalTension: { value: tension, unit: 'lbf' },
    }).sag.value,
    tolerance: sag > 10 ? 0.05 : sag > 1 ? 0.005 : 0.0005,
    why: 'printed to three digits; found by integrating the curve',
  });
}

// π · (16 + 1.275) / 12 = 4.52 ft; the tail of 1 ft that the library asks for is taken off again
verify({
  id: 'choker-16-in',
  source: { document: 'Length of a turn, π · (D + b)', provenance: 'derived' },
  what: 'choker on a 16 in log with 3/8 in wire, before its tail',
  printed: 4.52,
  unit: 'ft',
  computed:
    pullChainLength({
      ends: [{ at: 'choker', diameter: '16 in', tail: '1 ft' }],
      wireDiameter: '3/8 in',
      pitch: '1.125 in',
    }).ends[0]!.value - 1,
  tolerance: 0.005,
  why: 'printed to three digits',
});

const unequal = bridleTension({ pull: '1000 lbf', angles: { fromPullLine: ['30 deg', '45 deg'] } }).legs;
for (const [leg, angle, printed] of [
  [0, 30, 732],
  [1, 45, 518],
] as const) {
  verify({
    id: `bridle-leg-${angle}-deg`,
    source: { document: 'Balance of forces where two legs meet', provenance: 'derived' },
    what: `leg ${angle} deg from a pull of 1000, the other ${75 - angle} deg`,
    printed,
    unit: 'lbf',
    computed: unequal[leg].value,
    tolerance: 0.5,
    why: 'printed to three digits',
  });
}
// 1 / (2 · cos(θ / 2)), with θ between the legs
for (const [theta, printed] of [
  [0, 0.5],
  [15, 0.5043],
  [30, 0.5176],
  [45, 0.5412],
  [60, 0.5774],
  [75, 0.6302],
  [90, 7071 / 10_000],
  [105, 0.8213],
  [120, 1],
] as const) {
  verify({
    id: `bridle-${theta}-deg`,
    source: { document: 'Table of leg tension over pull by included angle', provenance: 'computed' },
    what: `leg tension over pull, ${theta} deg between the legs`,
    printed,
    unit: 'of the pull',
    computed: bridleTension({ pull: '1 kN', angles: { included: { value: theta, unit: 'deg' } } }).greatestShare,
    tolerance: 0.00005,
    why: 'printed to four decimals',
  });
}
