// Wrong input of every sort, for each function of a single chain or hook: a result without NaN, or a RiggingError.
import {
  breakingForceOfGrade,
  chainMass,
  chainMassFromLink,
  fits,
  identifyChain,
  lengthOfLinks,
  linksForLength,
  us49cfr393_108_2024 as ratings,
  usWeldedChain_2003 as welded,
} from 'chain-rigging';
import fc from 'fast-check';
import { it } from 'vitest';
import { anyGarbage, givesResultOrIssue, jsonGarbage, spoiled } from '../properties/garbage.js';

const link = { wireDiameter: '10 mm', pitch: '30 mm', insideWidth: '14 mm', density: '7000 kg/m3' };
const found = { mark: '70', wireDiameter: '0.35 in', worn: true, finish: 'yellow' };
const slip = { kind: 'slip-hook', size: '3/8', grade: 70, latch: true, opening: '1 in' };

const functions: [name: string, call: (input: never) => unknown, good: object][] = [
  ['chainMass', chainMass, { size: '3/8', grade: 70, length: '20 ft', units: 'si', working: true }],
  ['chainMass, metric', chainMass, { size: '10 mm', length: '20 ft' }],
  ['chainMassFromLink', chainMassFromLink, { length: '1 m', ...link, units: 'us' }],
  ['lengthOfLinks', lengthOfLinks, { links: 10, pitch: '30 mm', wireDiameter: '10 mm', units: 'si' }],
  ['linksForLength', linksForLength, { length: '1 m', pitch: '30 mm', keepFlat: true, units: 'si' }],
  ['breakingForceOfGrade', breakingForceOfGrade, { grade: 80, wireDiameter: '10 mm', units: 'us' }],
  ['identifyChain', (input) => identifyChain({ ...Object(input), ratings }), found],
  ['identifyChain, welded', (input) => identifyChain({ ...Object(input), ratings: welded }), found],
  ['fits, chain', fits, { hook: { kind: 'grab-hook', size: '3/8', grade: 70 }, chain: { size: '3/8', grade: 70 } }],
  ['fits, object', fits, { hook: slip, onto: 'object', objectThickness: '1 in' }],
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
