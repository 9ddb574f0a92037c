// Wrong input of every sort: a result without NaN, or a RiggingError.
import { bridleTension, chainSag, hitchStability, pullChainLength, shockTension, takeUpSpeed } from 'chain-rigging';
import fc from 'fast-check';
import { it } from 'vitest';
import { anyGarbage, givesResultOrIssue, jsonGarbage, spoiled } from '../properties/garbage.js';

const tractor = {
  mass: '3300 lb',
  frontAxleMass: '1155 lb',
  wheelbase: '64 in',
  centerOfGravityHeight: '28 in',
  trackWidth: '50 in',
  drive: 'rear-wheels',
};
const hitching = {
  tractor,
  hitch: { kind: 'attachment', height: '15 in', behindAxle: '2 ft', subframeTiedToFrame: true },
  pull: '1500 lbf',
  slope: '5 deg',
  chainAngle: { belowHorizontal: '10 deg' },
  steeringReserve: 0.2,
  friction: 0.6,
  rearAxleHeight: '20 in',
  frontPivotHeight: '15 in',
  sidePull: { fromStraight: '10 deg' },
  sideSlope: '5 deg',
  units: 'us',
};
const shock = {
  towingMass: '3000 kg',
  load: { mass: '4000 kg', breaksLooseAt: '30 kN', resists: '20 kN' },
  takeUp: { slack: '1 m', acceleration: '0.1 g' },
  thrust: '5 kN',
  chain: { wireDiameter: '10 mm', length: '6 m' },
  inSeries: [{ by: '1 mm', under: '5 kN' }],
  workingLoadLimit: '2990 kg',
  proofFactor: 2,
  breakingForce: '117 kN',
  elongationAtBreak: 0.15,
  units: 'si',
};
const ends = [
  { at: 'rectangle', width: '1 ft', height: '2 ft', turns: 2, hookBack: '1 ft' },
  { at: 'choker', diameter: '1 ft', tail: '1 ft' },
];
const standoff = { speed: '3 mph', reactionTime: '1 s', deceleration: '0.2 g' };

const functions: [name: string, call: (input: never) => unknown, good: object][] = [
  ['hitchStability', hitchStability, hitching],
  ['shockTension', shockTension, shock],
  ['takeUpSpeed', takeUpSpeed, { slack: '1 m', thrust: '5 kN', mass: '2 t' }],
  ['pullChainLength', pullChainLength, { ends, standoff, pitch: '1 in', wireDiameter: '0.4 in', dangerMargin: 1.5 }],
  ['bridleTension', bridleTension, { pull: '5 kN', angles: { fromPullLine: ['30 deg', '40 deg'] } }],
  ['bridleTension, equal', bridleTension, { pull: '5 kN', angles: { included: '30 deg' }, spread: '1 m' }],
  ['chainSag', chainSag, { span: '10 m', massPerLength: '2 kg/m', sag: '1 m' }],
  ['chainSag, tension', chainSag, { span: '10 m', massPerLength: '2 kg/m', horizontalTension: '1 kN' }],
];

it.each(functions)('%s with garbage in it', (_, call, good) => {
  for (const garbage of [jsonGarbage, anyGarbage]) {
    fc.assert(
      fc.property(spoiled(good, garbage), (input) => givesResultOrIssue(() => call(input as never))),
      { numRuns: 500 },
    );
  }
});

it.each(functions)('%s of garbage', (_, call) => {
  fc.assert(fc.property(anyGarbage, (input) => givesResultOrIssue(() => call(input as never))));
});
