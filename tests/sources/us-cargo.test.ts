import {
  checkSecurement,
  type QuantityInput,
  us49cfr393_2024 as rules,
  type SourceRef,
  type TieDown,
  type TieDownPath,
  tieDownsRequired,
} from 'chain-rigging';
import { expect, it } from 'vitest';
import { verify } from './verify.js';

const quoted = { provenance: 'read', note: 'read in a page quoting it' } as const;
const EXACT = 'whole numbers, exact';

/** So many tie-downs alike on the one article `cargo`. */
function alike(count: number, workingLoadLimit: QuantityInput<'ratedLoad'>, path: TieDownPath): TieDown[] {
  return Array.from({ length: count }, (_, at) => ({
    id: `tie-down-${at + 1}`,
    holds: 'cargo',
    path,
    end: at % 2 === 0 ? 'front' : 'rear',
    capacities: { workingLoadLimit },
  }));
}

// 1. Small article
verify({
  id: 'small-article',
  domain: 'securement',
  source: { document: 'Cargo Securement Rules, the agency’s summary of 49 CFR 393.110', ...quoted },
  what: 'tie-downs of an article of 5 ft and 1,100 lb, not blocked forward',
  printed: 1,
  unit: 'tie-down',
  computed: tieDownsRequired({
    rules,
    article: { kind: 'general', mass: '1100 lb', length: '5 ft', blockedForward: false },
  }).minimumCount,
  tolerance: 0,
  why: EXACT,
});

// 2. Count and strength together. The example is Canadian, where every tie-down counts in full; so do those that run
// over to the other side under 49 CFR, and 3.65 m takes three under both: 2 + ceil(0.61/3.04) there, 2 + ceil(1.975/10) here.
const canadian: SourceRef = { document: 'Driving Commercial Vehicles', clause: 'p. 95', ...quoted };
const crate = { kind: 'general', mass: '600 kg', length: '3.65 m', blockedForward: false } as const;
const across = (count: number, kilograms: number) =>
  checkSecurement({
    rules,
    articles: [{ id: 'cargo', ...crate }],
    tieDowns: alike(count, { value: kilograms, unit: 'kg' }, 'over-other-side'),
  }).verdict === 'pass';
/** The first whole number that passes. */
function first(passes: (number: number) => boolean): number {
  let number = 1;
  while (!passes(number)) number++;
  return number;
}
const canadianCases: [id: string, what: string, printed: number, unit: string, computed: number][] = [
  [
    'aggregate',
    'aggregate working load limit for 600 kg',
    300,
    'kg',
    tieDownsRequired({ rules, article: crate, units: 'si' }).requiredAggregate?.value ?? Number.NaN,
  ],
  [
    'count',
    'tie-downs for 3.65 m, not blocked forward',
    3,
    'tie-down',
    tieDownsRequired({ rules, article: crate }).minimumCount,
  ],
  ['each', 'least working load limit of each of three', 100, 'kg', first((kilograms) => across(3, kilograms))],
  ['weak', 'how many of 50 kg', 6, 'tie-down', first((count) => across(count, 50))],
  ['strong', 'how many of 200 kg', 3, 'tie-down', first((count) => across(count, 200))],
];
for (const [id, what, printed, unit, computed] of canadianCases) {
  verify({
    id: `count-and-strength-${id}`,
    domain: 'securement',
    source: canadian,
    what,
    printed,
    unit,
    computed,
    tolerance: id === 'aggregate' ? 1e-9 : 0,
    why:
      id === 'aggregate'
        ? 'exact but for the last digit of a double'
        : `${EXACT}; a Canadian example, where full credit and the US credit for a tie-down over to the other side agree`,
  });
}

// 3 and 4. Direct credit, half of the weight
const coils: SourceRef = {
  document: 'New York State Metal Coil Endorsement Securement Manual',
  clause: 'practice questions',
  ...quoted,
};
const direct = checkSecurement({
  rules,
  articles: [{ id: 'cargo', kind: 'general', mass: '6350 lb', length: '5 ft' }],
  tieDowns: alike(1, '8000 lb', 'vehicle-to-cargo'),
});
verify({
  id: 'coil-direct-credit',
  domain: 'securement',
  source: coils,
  what: 'what a tie-down of 8,000 lb straight to the article counts',
  printed: 4000,
  unit: 'lb',
  computed: direct.tieDowns[0]?.counted?.value ?? Number.NaN,
  tolerance: 0,
  why: EXACT,
});
verify({
  id: 'coil-half-of-weight',
  domain: 'securement',
  source: coils,
  what: 'aggregate working load limit for a coil of 6,350 lb',
  printed: 3175,
  unit: 'lb',
  computed: direct.articles[0]?.requiredAggregate?.value ?? Number.NaN,
  tolerance: 0,
  why: EXACT,
});

// 5. General
verify({
  id: 'half-of-30000-lb',
  domain: 'securement',
  source: { document: 'Cargo Securement Rules, the agency’s summary of 49 CFR 393.106', ...quoted },
  what: 'aggregate working load limit for 30,000 lb',
  printed: 15_000,
  unit: 'lb',
  computed:
    tieDownsRequired({ rules, article: { kind: 'general', mass: '30000 lb', length: '10 ft' } }).requiredAggregate
      ?.value ?? Number.NaN,
  tolerance: 0,
  why: EXACT,
});

// 6. Forward force: the 80 % is printed, the product is ours
const forward = tieDownsRequired({
  rules,
  article: { kind: 'general', mass: '37000 lb', length: '10 ft' },
}).perDirection.find(({ direction }) => direction === 'forward');
verify({
  id: 'forward-force',
  domain: 'securement',
  source: {
    document: '49 CFR',
    edition: '2024',
    clause: '393.102(a)(1)',
    provenance: 'derived',
    note: '80 % of 37,000 lb',
  },
  what: 'force forward that 37,000 lb must withstand, against breaking strength',
  printed: 29_600,
  unit: 'lbf',
  computed: forward?.againstBreakingStrength?.value ?? Number.NaN,
  tolerance: 1e-9,
  why: 'exact but for the last digit of a double',
});

// 7. Tractor
const extension: SourceRef = { document: 'land-grant extension page on chains and tractor loads', ...quoted };
const tractor = tieDownsRequired({ rules, article: { kind: 'machinery', mass: '12000 lb', length: '14 ft' } });
verify({
  id: 'tractor-count',
  domain: 'securement',
  source: extension,
  what: 'tie-downs of a tractor of 12,000 lb',
  printed: 4,
  unit: 'tie-down',
  computed: tractor.minimumCount,
  tolerance: 0,
  why: EXACT,
});
verify({
  id: 'tractor-aggregate',
  domain: 'securement',
  source: extension,
  what: 'combined working load limit for a tractor of 12,000 lb',
  printed: 6000,
  unit: 'lb',
  computed: tractor.requiredAggregate?.value ?? Number.NaN,
  tolerance: 0,
  why: EXACT,
});
const chained = (workingLoadLimit: QuantityInput<'ratedLoad'>) =>
  checkSecurement({
    rules,
    articles: [{ id: 'cargo', kind: 'machinery', mass: '12000 lb', length: '14 ft' }],
    tieDowns: alike(4, workingLoadLimit, 'vehicle-to-cargo'),
  }).verdict;
it('four direct chains on a tractor of 12,000 lb: 3,000 lb each passes, just below fails, 1/4 grade 70 passes', () => {
  // By 393.106(d), ours: 4 × w/2 ≥ 6,000, so w ≥ 3,000; 1/4 in grade 70 is 3,150.
  expect([chained('3000 lb'), chained('2999.999 lb'), chained('3150 lb')]).toEqual(['pass', 'fail', 'pass']);
});

// 8. Commercial vehicle
const combination = checkSecurement({
  rules,
  vehicle: {
    units: [
      { id: 'pickup', kind: 'power', grossWeightRating: '7300 lb' },
      { id: 'trailer', kind: 'towed', grossWeightRating: '5000 lb' },
    ],
    interstateCommerce: true,
  },
  articles: [{ id: 'cargo', kind: 'general', mass: '600 lb', length: '5 ft' }],
  tieDowns: alike(1, '1000 lb', 'over-other-side'),
});
verify({
  id: 'pickup-and-trailer',
  domain: 'securement',
  source: { document: '49 CFR', edition: '2024', clause: '390.5, worked example on a page quoting it', ...quoted },
  what: 'combination of 7,300 lb and 5,000 lb',
  printed: 12_300,
  unit: 'lb',
  computed:
    (combination.steps.find(({ clause }) => clause === '49 CFR 390.5')?.result as { value: number } | undefined)
      ?.value ?? Number.NaN,
  tolerance: 0,
  why: EXACT,
});
it('the combination is a commercial motor vehicle in interstate commerce', () => {
  expect(combination.applicability.verdict).toBe('applies');
});

// 9. Not this rule: an older one by breaking strength, 1.5 times the weight. It stands here as printed arithmetic; the
// library offers none of it. Under 393.106(d), ours: eight direct 1/2 in grade 70 give 8 × 11,300/2 = 45,200 against 27,500.
const naval: SourceRef = { document: 'NAVEDTRA 14081', clause: 'securing cargo', ...quoted };
verify({
  id: 'crawler-one-and-a-half',
  domain: 'securement',
  source: naval,
  what: 'strength for a crawler of 55,000 lb by the older rule of 1.5 times the weight',
  printed: 82_500,
  unit: 'lb',
  computed: 1.5 * 55_000,
  tolerance: 0,
  why: `${EXACT}; not the rule of 49 CFR 393.106(d)`,
});
verify({
  id: 'crawler-eight-chains',
  domain: 'securement',
  source: naval,
  what: 'eight 1/2 in chains of 11,000 lb by the older rule',
  printed: 88_000,
  unit: 'lb',
  computed: 8 * 11_000,
  tolerance: 0,
  why: `${EXACT}; not the rule of 49 CFR 393.106(d)`,
});
const crawler = checkSecurement({
  rules,
  articles: [{ id: 'cargo', kind: 'machinery', mass: '55000 lb', length: '18 ft' }],
  tieDowns: alike(8, '11300 lb', 'vehicle-to-cargo'),
});
verify({
  id: 'crawler-aggregate',
  domain: 'securement',
  source: {
    document: '49 CFR',
    edition: '2024',
    clause: '393.106(d)',
    provenance: 'derived',
    note: 'the same crawler under the rule in force',
  },
  what: 'aggregate of eight direct 1/2 in grade 70 chains',
  printed: 45_200,
  unit: 'lb',
  computed: crawler.articles[0]?.aggregate?.value ?? Number.NaN,
  tolerance: 0,
  why: EXACT,
});
verify({
  id: 'crawler-required',
  domain: 'securement',
  source: {
    document: '49 CFR',
    edition: '2024',
    clause: '393.106(d)',
    provenance: 'derived',
    note: 'the same crawler under the rule in force',
  },
  what: 'aggregate that a crawler of 55,000 lb needs',
  printed: 27_500,
  unit: 'lb',
  computed: crawler.articles[0]?.requiredAggregate?.value ?? Number.NaN,
  tolerance: 0,
  why: EXACT,
});
