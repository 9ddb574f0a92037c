// Wrong input of every sort, for each function of handling: a result without NaN, or a RiggingError.
import { chainMass, checkCarry, stowage, teamLimit } from 'chain-rigging';
import fc from 'fast-check';
import { it } from 'vitest';
import { anyGarbage, givesResultOrIssue, jsonGarbage, spoiled } from '../properties/garbage.js';
import { easyLift } from './lifts.js';

const chain = chainMass({ size: '3/8', length: '20 ft' });
const hands = { control: true, horizontal: '20 in', height: '60 in', asymmetry: '0 deg' } as const;
const box = { length: '12 in', width: '5 in', height: '8 in' };
const pipe = { insideDiameter: '3 in', length: '4 ft' };

const functions: [name: string, call: (input: never) => unknown, good: object][] = [
  ['checkCarry', checkCarry, easyLift('us', { frequency: { lifts: 3, within: '15 min' } })],
  ['checkCarry of chain', checkCarry, easyLift('us', { load: { chain, fittings: '3 lb' }, destination: hands })],
  ['teamLimit', teamLimit, { alone: ['20 kg', '20 kg'], units: 'si', working: true }],
  ['stowage', stowage, { chain: { wireDiameter: '3/8 in', length: '10 ft' }, outsideWidth: '1.3 in', box, pipe }],
  ['stowage of weighed chain', stowage, { chain, box, pipe, units: 'us' }],
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
