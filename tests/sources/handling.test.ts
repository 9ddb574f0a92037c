import { type CarryInput, checkCarry, teamLimit } from 'chain-rigging';
import type { SourceRef } from '../../src/working/source.js';
import { verify } from './verify.js';

// The worked examples of the manual use its printed multipliers, rounded to hundredths; the formulas differ by 1 to 3 percent.

const manual = (clause: string): SourceRef => ({
  document: 'Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) 94-110',
  edition: '1994',
  clause,
  provenance: 'memory',
});
const common = { frequency: 0.2, duration: 'short', coupling: 'fair' } as const;
const rounded = 'the manual multiplies factors rounded to hundredths, the library the formulas: within 3 percent';

const pressStock = checkCarry({
  load: '44 lb',
  origin: { horizontal: '23 in', height: '15 in', asymmetry: '0 deg' },
  destination: { control: true, horizontal: '23 in', height: '64 in', asymmetry: '0 deg' },
  ...common,
});
const printedOfPress = [
  ['origin', 16.3, 2.7],
  ['destination', 14.5, 3.0],
] as const;
for (const [at, limit, index] of printedOfPress) {
  const point = pressStock.points.find((one) => one.at === at);
  verify({
    id: `niosh-press-stock-limit-${at}`,
    domain: 'handling',
    source: manual('example 1, loading punch press stock'),
    what: `recommended weight limit at the ${at}: H 23, V 15 to 64 in, fair grip`,
    printed: limit,
    unit: 'lb',
    computed: point?.recommendedWeightLimit.value ?? Number.NaN,
    tolerance: 0.03 * limit,
    why: rounded,
  });
  verify({
    id: `niosh-press-stock-index-${at}`,
    domain: 'handling',
    source: manual('example 1, loading punch press stock'),
    what: `lifting index of 44 lb at the ${at}`,
    printed: index,
    unit: '',
    computed: point?.liftingIndex ?? Number.NaN,
    tolerance: 0.03 * index + 0.05,
    why: `${rounded}; printed to tenths`,
  });
}

const hopper = checkCarry({
  load: '40 lb',
  origin: { horizontal: '18 in', height: '15 in', asymmetry: '45 deg' },
  destination: { control: false, height: '36 in' },
  ...common,
});
verify({
  id: 'niosh-hopper-limit',
  domain: 'handling',
  source: manual('example 3, loading bags into a hopper'),
  what: 'recommended weight limit: H 18, V 15, D 21 in, A 45 deg, fair grip',
  printed: 18.9,
  unit: 'lb',
  computed: hopper.recommendedWeightLimit.value,
  tolerance: 0.03 * 18.9,
  why: rounded,
});
verify({
  id: 'niosh-hopper-index',
  domain: 'handling',
  source: manual('example 3, loading bags into a hopper'),
  what: 'lifting index of 40 lb',
  printed: 2.1,
  unit: '',
  computed: hopper.liftingIndex ?? Number.NaN,
  tolerance: 0.03 * 2.1 + 0.05,
  why: `${rounded}; printed to tenths`,
});

const packaging = checkCarry({
  load: '25 lb',
  origin: { horizontal: '14 in', height: '24 in', asymmetry: '90 deg' },
  destination: { control: false, height: '40 in' },
  frequency: 1,
  duration: 'long',
  coupling: 'fair',
});
verify({
  id: 'niosh-packaging-limit',
  domain: 'handling',
  source: manual('example 6, package inspection'),
  what: 'recommended weight limit: H 14, V 24, D 16 in, A 90 deg, one lift a minute for 8 h, fair grip',
  printed: 16.4,
  unit: 'lb',
  computed: packaging.recommendedWeightLimit.value,
  tolerance: 0.1,
  why: 'printed to tenths, from factors rounded to hundredths',
});
verify({
  id: 'niosh-packaging-index',
  domain: 'handling',
  source: manual('example 6, package inspection'),
  what: 'lifting index of 25 lb',
  printed: 1.5,
  unit: '',
  computed: packaging.liftingIndex ?? Number.NaN,
  tolerance: 0.05,
  why: 'printed to tenths',
});

const counted = checkCarry({
  load: '20 lb',
  origin: { horizontal: '10 in', height: '30 in', asymmetry: '0 deg' },
  destination: { control: false, height: '40 in' },
  ...common,
  frequency: { lifts: 80, within: '15 min' },
});
verify({
  id: 'niosh-frequency-of-breaks',
  domain: 'handling',
  source: manual('1.3.5.5'),
  what: 'lifts per minute that count: 10 a minute during 8 of every 15 minutes',
  printed: 5.33,
  unit: '1/min',
  computed: Number(counted.assumptions.find(({ code }) => code === 'RATE_TAKEN_AS')?.params.lifts),
  tolerance: 0.005,
  why: 'printed to hundredths',
});

const ccohs: CarryInput = {
  load: '1 kg',
  origin: { horizontal: '20 cm', height: '75 cm', asymmetry: '90 deg' },
  destination: { control: false, height: '100 cm' },
  frequency: 10,
  duration: 'long',
  coupling: 'fair',
};
verify({
  id: 'national-guide-frequency-example',
  domain: 'handling',
  source: {
    document: 'Guide to the NIOSH lifting equation of a national safety institute, frequency multiplier',
    provenance: 'read',
    note: 'its table gives 0.93 at a height of 75 cm, where the formula gives 1',
  },
  what: 'recommended weight limit, H 20 cm, V 75 cm, A 90 deg, 10 lifts a minute, times its 0.93 for the height',
  printed: 1.97,
  unit: 'kg',
  computed: 0.93 * checkCarry(ccohs).recommendedWeightLimit.value,
  tolerance: 0.011,
  why: 'it takes 0.71 for the angle, where the formula gives 0.712, and prints hundredths',
});

verify({
  id: 'team-of-two',
  domain: 'handling',
  source: {
    document: 'Guidance on manual handling, Health and Safety Executive',
    clause: 'team handling',
    provenance: 'read',
    note: 'read in a page quoting it',
  },
  what: 'what two people lift who may lift 20 kg each',
  printed: 26.6,
  unit: 'kg',
  computed: teamLimit({ alone: ['20 kg', '20 kg'] }).limit.value,
  tolerance: 0.1,
  why: 'printed as about 26.6; two thirds of 40 is 26.67',
});
