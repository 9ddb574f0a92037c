// Wrong input of every sort: a result without NaN, or a RiggingError.
import {
  deDguv109_004,
  euEn818_6_2000,
  forecastRetirement,
  housePolicy,
  inspectChain,
  us29cfr1910_184_2011,
  usAsmeB30_9_2010_intervals,
  usWac296_155_55800_2013,
} from 'chain-rigging';
import fc from 'fast-check';
import { it } from 'vitest';
import { anyGarbage, givesResultOrIssue, jsonGarbage, spoiled } from '../properties/garbage.js';

const chain = {
  size: '3/8',
  grade: 100,
  wireDiameter: '10 mm',
  pitch: '30 mm',
  outsideLength: '50 mm',
  hook: { throat: '1 in', section: '20 mm' },
};
const measurements = {
  diameters: [{ at: 'link 3', readings: ['9.8 mm', '9.6 mm'] }],
  section: { links: 11, length: '331 mm', whenNew: '330 mm' },
  link: { inside: '30.5 mm', outside: '50.2 mm' },
  uncertainty: '0.1 mm',
  notchDepth: '0.1 mm',
  bend: '0 mm',
  highestTemperature: '300 F',
  found: ['gouge'],
  hook: { throat: '1.01 in', twist: '1 deg', section: '19 mm', found: [] },
  tensionings: 12,
};
const history = {
  inspections: ['2024-01-01', '2024-06-01', '2025-01-01'].map((date) => ({ date, measurements, kind: 'thorough' })),
  tensionings: [{ date: '2024-05-01', count: 5 }],
};
const good = { chain, measurements, working: true };
const forecast = { chain, history, asOf: '2026-01-01', service: 'severe' };
const policy = { elongation: { limit: 0.03, over: true }, tensionings: 200 };

const functions: [name: string, call: (input: never) => unknown, good: object][] = [
  ['inspectChain, regulation', (input) => inspectChain({ ...Object(input), criteria: us29cfr1910_184_2011 }), good],
  ['inspectChain, standard', (input) => inspectChain({ ...Object(input), criteria: euEn818_6_2000 }), good],
  [
    'inspectChain, hooks and heat',
    (input) => inspectChain({ ...Object(input), criteria: usWac296_155_55800_2013 }),
    good,
  ],
  ['inspectChain, notches', (input) => inspectChain({ ...Object(input), criteria: deDguv109_004 }), good],
  ['housePolicy', housePolicy, policy],
  [
    'forecastRetirement',
    (input) =>
      forecastRetirement({
        ...Object(input),
        criteria: housePolicy(policy as never),
        intervals: usAsmeB30_9_2010_intervals,
      }),
    forecast,
  ],
];

it.each(functions)('%s with garbage in it', (_, call, input) => {
  for (const garbage of [jsonGarbage, anyGarbage]) {
    fc.assert(
      fc.property(spoiled(input, garbage), (spoilt) => givesResultOrIssue(() => call(spoilt as never))),
      { numRuns: 400 },
    );
  }
});

it.each(functions)('%s of garbage', (_, call) => {
  fc.assert(fc.property(anyGarbage, (input) => givesResultOrIssue(() => call(input as never))));
});
