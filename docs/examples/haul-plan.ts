// What `npm start` runs: a compact tractor with a mounted loader and mower, and a box scraper of its own, on a
// car-hauler trailer. Every name, mass and mark here is invented for the example.
import { writeFileSync } from 'node:fs';
import {
  type Article,
  assemblyRating,
  caNsc10_2013,
  chainMass,
  chainStiffness,
  checkSecurement,
  compareRules,
  drawSecurement,
  explain,
  formatQuantity,
  identifyChain,
  inWords,
  type Part,
  type Plan,
  type Point,
  solveRestraint,
  type TieDown,
  tieDownLength,
  tieDownsRequired,
  us49cfr393_102_2024,
  us49cfr393_108_2024,
  us49cfr393_2024,
  type Vehicle,
} from 'chain-rigging';

const vehicle: Vehicle = {
  interstateCommerce: true,
  deck: { length: '18 ft', width: '82 in' },
  units: [
    { id: 'pickup', kind: 'power', grossWeightRating: '9900 lb', grossWeight: '7450 lb' },
    { id: 'trailer', kind: 'towed', grossWeightRating: '9990 lb', grossWeight: '7310 lb' },
  ],
};

/** Inches from the middle of the front edge of the deck: x forward, y left, z up. */
const at = (x: number, y: number, z: number): Point => [
  { value: x, unit: 'in' },
  { value: y, unit: 'in' },
  { value: z, unit: 'in' },
];

const tractor: Article = {
  id: 'tractor',
  kind: 'machinery',
  mass: '4680 lb',
  length: '13 ft 4 in',
  accessories: [
    { id: 'loader', lowered: true, locked: true },
    { id: 'mower', lowered: true, locked: true },
  ],
  centerOfGravity: at(-96, 0, 29),
  contacts: [at(-54, 26, 0), at(-54, -26, 0), at(-122, 28, 0), at(-122, -28, 0)].map((point) => ({ at: point })),
  friction: 0.3,
  outline: [at(-8, 34, 0), at(-168, -34, 92)],
};

const boxScraper: Article = {
  id: 'box scraper',
  kind: 'general',
  mass: '640 lb',
  length: '4 ft 6 in',
  outline: [at(-180, 27, 0), at(-208, -27, 20)],
};

/** A chain run from a deck ring to the tractor, part by part, as it lies in the box. */
function chainRun(binder: 'lever' | 'ratchet'): Part[] {
  return [
    { id: 'deck ring', kind: 'anchor', at: 'vehicle', markedWll: '5000 lb' },
    { id: 'deck hook', kind: 'grab-hook', size: '5/16', grade: 70 },
    { id: 'chain', kind: 'chain', size: '5/16', grade: 70 },
    { id: 'binder', kind: 'binder', style: binder, markedWll: '5400 lb' },
    { id: 'tractor hook', kind: 'grab-hook', size: '5/16', grade: 70 },
    { id: 'tractor point', kind: 'anchor', at: 'cargo', markedWll: '6000 lb' },
  ];
}

const { axialStiffness } = chainStiffness({ wireDiameter: '0.343 in' });

/** A chain of the tractor, from a ring at the edge of the deck to the frame. */
function tieDownChain(id: string, end: 'front' | 'rear', side: 1 | -1): TieDown {
  const [anchor, attachment] =
    end === 'front'
      ? [at(-14, 38 * side, 0), at(-58, 14 * side, 18)]
      : [at(-170, 38 * side, 0), at(-126, 16 * side, 20)];
  const parts = chainRun(end === 'front' ? 'ratchet' : 'lever');
  return { id, holds: 'tractor', path: 'vehicle-to-cargo', end, parts, anchor, attachment, axialStiffness };
}

const tieDowns: TieDown[] = [
  tieDownChain('front left', 'front', 1),
  tieDownChain('front right', 'front', -1),
  tieDownChain('rear left', 'rear', 1),
  tieDownChain('rear right', 'rear', -1),
  {
    id: 'strap',
    holds: 'box scraper',
    path: 'over-other-side',
    parts: [
      { id: 'left ring', kind: 'anchor', at: 'vehicle', markedWll: '5000 lb' },
      { id: 'webbing', kind: 'webbing', width: '2' },
      { id: 'right ring', kind: 'anchor', at: 'vehicle', markedWll: '5000 lb' },
    ],
    anchor: at(-194, 38, 0),
    attachment: at(-194, 27, 20),
    otherAttachment: at(-194, -27, 20),
    otherAnchor: at(-194, -38, 0),
  },
];

const plan: Plan = { vehicle, articles: [tractor, boxScraper], tieDowns };
const rules = us49cfr393_2024;
const ratings = us49cfr393_108_2024;

heading('The chain in the box: no readable mark, 0.35 in on the caliper, yellow');
const found = identifyChain({ ratings, wireDiameter: '0.35 in', finish: 'yellow-chromate' });
console.log(found);

heading('One of the four chains, weakest part first');
const run = assemblyRating({ ratings, parts: chainRun('lever') });
for (const { id, workingLoadLimit, basis } of run.parts) {
  const mark = run.weakest.includes(id) ? '  <- weakest' : '';
  console.log(
    `  ${id.padEnd(14)} ${workingLoadLimit === null ? 'unknown' : formatQuantity(workingLoadLimit)}, ${basis}${mark}`,
  );
}

heading('What the rule asks');
for (const article of [tractor, boxScraper]) {
  const { minimumCount, recommendedCount, requiredAggregate } = tieDownsRequired({ rules, article });
  const together = requiredAggregate === null ? '' : `, together ${formatQuantity(requiredAggregate)}`;
  console.log(`  ${article.id}: tie-downs needed ${minimumCount}, recommended ${recommendedCount}${together}`);
}

heading('What the chains weigh');
const chain = chainMass({ size: '5/16', grade: 70, length: '16 ft' });
console.log(
  `  16 ft of 5/16 grade 70: ${formatQuantity(chain.mass, { digits: 3 })}, four of them ${(4 * chain.mass.value).toFixed(0)} lb`,
);

heading('How long a chain');
for (const tieDown of [tieDowns[0], tieDowns[2]]) {
  const { length, links } = tieDownLength({
    tieDown: tieDown as TieDown,
    pitch: '1.29 in',
    hookBack: '18 in',
    tensioner: { takeUp: '8 in' },
  });
  console.log(`  ${tieDown?.id}: ${formatQuantity(length)}, ${links} links`);
}

heading('The whole plan');
console.log(explain(checkSecurement({ rules, ...plan }), { as: 'text' }));

heading('The same plan under three rule sets');
const compared = compareRules({ rules: [us49cfr393_2024, us49cfr393_102_2024, caNsc10_2013], ...plan, working: false });
for (const { rules: id, verdict, failed, open } of compared.verdicts) {
  const reasons = [...failed.map((each) => `fails ${each}`), ...open.map((each) => `open ${each}`)];
  console.log(`  ${id.padEnd(22)} ${verdict}${reasons.map((reason) => `\n      ${reason}`).join('')}`);
}
for (const { text } of inWords(compared.differences)) console.log(`  ${text}`);

heading('Will it hold?');
const restraint = solveRestraint({
  ...plan,
  article: 'tractor',
  accelerations: { forward: '0.8 g', rearward: '0.5 g', left: '0.5 g', right: '0.5 g' },
  capacity: 'workingLoadLimit',
  ratings,
  friction: 'full',
  tolerances: { angle: '5 deg', friction: 0.1, centerOfGravity: '4 in' },
});
for (const { direction, acceleration, verdict, limit, elastic, withoutOne } of restraint.directions) {
  const first = elastic?.firstAtCapacity;
  const lost = Math.min(...withoutOne.map(({ factor }) => factor ?? Number.POSITIVE_INFINITY));
  console.log(
    `  ${direction.padEnd(8)} ${formatQuantity(acceleration)}: ${verdict}; balance up to ${limit.factor?.toFixed(2)} times, ` +
      `${first === null || first === undefined ? 'no chain' : first.id} at its limit first, at ${first?.factor.toFixed(2)} times; ` +
      `with one chain gone ${lost.toFixed(2)} times`,
  );
}

console.log(`  With one chain gone, in the worst case: ${restraint.withOneGone}.`);

const drawing = 'haul-plan.svg';
writeFileSync(drawing, drawSecurement(plan, inWords(restraint)));
console.log(`\n  The drawing is in ${drawing}.`);

function heading(text: string): void {
  console.log(`\n${text}\n${'-'.repeat(text.length)}`);
}
