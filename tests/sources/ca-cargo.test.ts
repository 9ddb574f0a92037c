// Published examples of NSC Standard 10, Canada.
import {
  caNsc10_2013,
  checkSecurement,
  type QuantityInput,
  type SourceRef,
  type TieDown,
  type TieDownPath,
  tieDownsRequired,
  us49cfr393_2024,
} from 'chain-rigging';
import { expect, it } from 'vitest';
import { verify } from './verify.js';

const EXACT = 'whole numbers, exact';

// Count and strength together: an article of 3.65 m and 600 kg, not prevented from moving forward. The tie-downs are
// direct ones, which count in full in Canada.
const manual: SourceRef = {
  document: 'Driving Commercial Vehicles',
  clause: 'p. 95',
  provenance: 'read',
  note: 'read in a page quoting it',
};
const article = { kind: 'general', mass: '600 kg', length: '3.65 m', blockedForward: false } as const;

function alike(count: number, workingLoadLimit: QuantityInput<'ratedLoad'>, path: TieDownPath): TieDown[] {
  return Array.from({ length: count }, (_, at) => ({
    id: `tie-down-${at + 1}`,
    holds: 'cargo',
    path,
    capacities: { workingLoadLimit },
  }));
}

const holds = (count: number, kilograms: number, rules = caNsc10_2013) =>
  checkSecurement({
    rules,
    articles: [{ id: 'cargo', ...article }],
    tieDowns: alike(count, { value: kilograms, unit: 'kg' }, 'vehicle-to-cargo'),
  }).verdict === 'pass';

/** The first whole number that passes. */
function first(passes: (number: number) => boolean): number {
  let number = 1;
  while (!passes(number)) number++;
  return number;
}

const asked = tieDownsRequired({ rules: caNsc10_2013, article });
const examples: [id: string, what: string, printed: number, unit: string, computed: number][] = [
  ['aggregate', 'aggregate working load limit for 600 kg', 300, 'kg', asked.requiredAggregate?.value ?? Number.NaN],
  ['count', 'tie-downs for 3.65 m, not blocked forward', 3, 'tie-down', asked.minimumCount],
  ['each', 'least working load limit of each of three', 100, 'kg', first((kilograms) => holds(3, kilograms))],
  ['weak', 'how many of 50 kg', 6, 'tie-down', first((count) => holds(count, 50))],
  ['strong', 'how many of 200 kg', 3, 'tie-down', first((count) => holds(count, 200))],
];
for (const [id, what, printed, unit, computed] of examples) {
  verify({
    id: `nsc10-count-and-strength-${id}`,
    domain: 'securement',
    source: manual,
    what: `${what}, by the Canadian standard`,
    printed,
    unit,
    computed,
    tolerance: 0,
    why: EXACT,
  });
}
it('direct tie-downs of 50 kg: six in Canada, twelve in the United States', () => {
  // Ours: 300 kg of 50 kg each in full, of 25 kg each by half.
  expect(first((count) => holds(count, 50, us49cfr393_2024))).toBe(12);
  expect(first((count) => holds(count, 50))).toBe(6);
});

// Heavy machines: over 4,500 kg, printed as 9,921 lb; the first whole pound is ours: 9,920 lb = 4,499.64 kg.
verify({
  id: 'nsc10-heavy-from-pounds',
  domain: 'securement',
  source: {
    document: 'National Safety Code for Motor Carriers, Standard 10, Cargo Securement',
    edition: '2013',
    clause: 'section 89',
    provenance: 'derived',
    note: 'over 4,500 kg, in whole pounds',
  },
  what: 'lightest machine that takes four tie-downs in Canada, in whole pounds',
  printed: 9921,
  unit: 'lb',
  computed:
    9900 +
    first(
      (pounds) =>
        tieDownsRequired({
          rules: caNsc10_2013,
          article: { kind: 'machinery', mass: { value: 9900 + pounds, unit: 'lb' }, length: '3 m' },
        }).minimumCount === 4,
    ),
  tolerance: 0,
  why: EXACT,
});
