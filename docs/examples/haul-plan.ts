// What `npm start` runs: a compact tractor with a mounted loader and mower, and a box scraper of its own, on a
// car-hauler trailer. Every name, mass and mark here is invented for the example.
import {
  type Article,
  assemblyRating,
  chainMass,
  checkSecurement,
  explain,
  formatQuantity,
  identifyChain,
  type Part,
  type TieDown,
  tieDownsRequired,
  us49cfr393_108_2024,
  us49cfr393_2024,
  type Vehicle,
} from 'chain-rigging';

const vehicle: Vehicle = {
  interstateCommerce: true,
  units: [
    { id: 'pickup', kind: 'power', grossWeightRating: '9900 lb', grossWeight: '7450 lb' },
    { id: 'trailer', kind: 'towed', grossWeightRating: '9990 lb', grossWeight: '7310 lb' },
  ],
};

const tractor: Article = {
  id: 'tractor',
  kind: 'machinery',
  mass: '4680 lb',
  length: '13 ft 4 in',
  accessories: [
    { id: 'loader', lowered: true, locked: true },
    { id: 'mower', lowered: true, locked: true },
  ],
};

const boxScraper: Article = { id: 'box scraper', kind: 'general', mass: '640 lb', length: '4 ft 6 in' };

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

const tieDowns: TieDown[] = [
  { id: 'front left', holds: 'tractor', path: 'vehicle-to-cargo', end: 'front', parts: chainRun('ratchet') },
  { id: 'front right', holds: 'tractor', path: 'vehicle-to-cargo', end: 'front', parts: chainRun('ratchet') },
  { id: 'rear left', holds: 'tractor', path: 'vehicle-to-cargo', end: 'rear', parts: chainRun('lever') },
  { id: 'rear right', holds: 'tractor', path: 'vehicle-to-cargo', end: 'rear', parts: chainRun('lever') },
  {
    id: 'strap',
    holds: 'box scraper',
    path: 'over-other-side',
    parts: [
      { id: 'left ring', kind: 'anchor', at: 'vehicle', markedWll: '5000 lb' },
      { id: 'webbing', kind: 'webbing', width: '2' },
      { id: 'right ring', kind: 'anchor', at: 'vehicle', markedWll: '5000 lb' },
    ],
  },
];

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

heading('The whole plan');
console.log(explain(checkSecurement({ rules, vehicle, articles: [tractor, boxScraper], tieDowns }), { as: 'text' }));

function heading(text: string): void {
  console.log(`\n${text}\n${'-'.repeat(text.length)}`);
}
