// A compact tractor, ballasted, frees a smaller one from the edge of a pond: the whole pull, its drawing, and what a jerk
// would do. Every name, mass and mark here is invented for the example.
import { writeFileSync } from 'node:fs';
import {
  drawPull,
  drawSnatch,
  formatQuantity,
  inWords,
  type PullPlan,
  planPull,
  type ShockTensionInput,
  us49cfr393_108_2024,
} from 'chain-rigging';

const plan: PullPlan = {
  ratings: us49cfr393_108_2024,
  tractor: {
    mass: '6000 lb',
    frontAxleMass: '2200 lb',
    wheelbase: '74 in',
    centerOfGravityHeight: '30 in',
    drive: 'all-wheels',
  },
  hitch: { kind: 'drawbar', height: '14 in', behindAxle: '26 in' },
  traction: { surface: 'dry-clay-loam' },
  rolling: { surface: 'firm-smooth-earth' },
  rearAxleHeight: '24 in',
  steeringReserve: 0.2,
  load: { kind: 'mired', depth: 'wheel', mass: '2900 lb', oppositeToEntry: true },
  rigging: [
    { id: 'drawbar', kind: 'anchor', at: 'vehicle', markedWll: '7000 lb' },
    { id: 'drawbar shackle', kind: 'shackle', markedWll: '9500 lb' },
    { id: 'hook at the shackle', kind: 'grab-hook', size: '5/16', grade: 70 },
    { id: 'chain', kind: 'chain', size: '5/16', grade: 70 },
    { id: 'hook at the frame', kind: 'grab-hook', size: '5/16', grade: 70 },
    { id: 'tow eye', kind: 'anchor', at: 'cargo', markedWll: '6000 lb' },
  ],
  chain: { pitch: '1.29 in', length: '25 ft' },
  ends: [
    { at: 'hook', hookBack: '1 ft' },
    { at: 'hook', hookBack: '1 ft' },
  ],
  standoff: '20 ft',
  proofFactor: 2,
  takeUp: 'slow',
};

const pull = inWords(planPull(plan));
console.log(`The pull: ${pull.verdict}`);
for (const { title, verdict } of pull.checks) console.log(`  ${verdict.padEnd(14)} ${title}`);
console.log(`  Nobody within ${formatQuantity(pull.dangerRadius)} of either end.`);
for (const { text } of pull.cautions) console.log(`  ${text}`);

const jerked = planPull({ ...plan, takeUp: { slack: '2 ft' } });
const { snatch } = jerked;
if (snatch === undefined) throw new Error('nothing pulls');
const say = (quantity: typeof snatch.leastPeakTension) => formatQuantity(quantity, { digits: 3 });
console.log(`\nThe same with two feet of slack: ${jerked.verdict}`);
console.log(`  The chain would see ${say(snatch.leastPeakTension)} to ${say(snatch.peakTension)}.`);

const [drawing, plot] = ['pull-plan.svg', 'pull-snatch.svg'];
writeFileSync(drawing, drawPull(plan, pull));
// four times the working load limit of the chain: common practice
writeFileSync(plot, drawSnatch({ ...(snatch.inputs as ShockTensionInput), breakingForce: '18800 lbf' }));
console.log(`\nThe drawings are in ${drawing} and ${plot}.`);
