// Australia, New Zealand and the United Kingdom, as far as something is printed.
import {
  type Article,
  auLrg_2018,
  checkSecurement,
  type DirectionalRequirement,
  nzTlc_2017,
  type RuleSet,
  type SourceRef,
  type TieDown,
  tieDownsRequired,
  ukDvsa_2024,
} from 'chain-rigging';
import { verify } from './verify.js';

const quoted = { provenance: 'read', note: 'read in a page quoting it' } as const;

// New Zealand: a load of 10 t without a headboard takes two chains each rated 10 t.
const newZealand: SourceRef = { document: 'The Truck Loading Code', edition: '2017', clause: 'rigid loads', ...quoted };
const tenTonnes: Article = { id: 'load', kind: 'general', mass: '10 t', length: '6 m' };
const chains = (count: number): TieDown[] =>
  Array.from({ length: count }, (_, at) => ({
    id: `chain-${at + 1}`,
    holds: 'load',
    path: 'over-other-side',
    capacities: { ratedStrength: '10 t' },
  }));
const passes = (count: number, headboard: Article['headboard']) =>
  checkSecurement({
    rules: nzTlc_2017,
    articles: [{ ...tenTonnes, ...(headboard && { headboard }) }],
    tieDowns: chains(count),
  }).verdict === 'pass';
/** The first number of chains that passes. */
function chainsNeeded(headboard?: Article['headboard']): number {
  let count = 1;
  while (!passes(count, headboard)) count++;
  return count;
}
verify({
  id: 'nz-ten-tonnes-chains',
  domain: 'securement',
  source: newZealand,
  what: 'chains rated 10 t for a rigid load of 10 t without a headboard',
  printed: 2,
  unit: 'tie-down',
  computed: chainsNeeded(),
  tolerance: 0,
  why: 'whole numbers, exact',
});
for (const [headboard, printed] of [
  ['none', 2],
  ['partial', 1.5],
  ['adequate', 1],
] as const) {
  const { requiredAggregate } = tieDownsRequired({ rules: nzTlc_2017, article: { ...tenTonnes, headboard } });
  verify({
    id: `nz-multiple-${headboard}`,
    domain: 'securement',
    source: newZealand,
    what: `total rated strength over the weight of the load, headboard: ${headboard}`,
    printed,
    unit: 'times the weight',
    computed: (requiredAggregate?.value ?? Number.NaN) / 10_000, // kg
    tolerance: 0,
    why: 'exact',
  });
}

// Australia and the United Kingdom print shares of the weight; 1 kg weighs 9.80665 N.
const share = (rules: RuleSet, direction: DirectionalRequirement['direction']) =>
  (tieDownsRequired({
    rules,
    // friction of no account, so that Australia states what it asks upward too
    article: { kind: 'general', mass: '1000 kg', length: '6 m', ...(direction === 'up' && { friction: 0.3 }) },
  }).perDirection.find((each) => each.direction === direction)?.againstLashingCapacity?.value ?? Number.NaN) / 9.80665; // kN of a tonne

const australia: SourceRef = {
  document: 'Heavy Vehicle (Mass, Dimension and Loading) National Regulation',
  clause: 'Schedule 7',
  ...quoted,
};
for (const [direction, printed] of [
  ['forward', 0.8],
  ['rearward', 0.5],
  ['lateral', 0.5],
  ['up', 0.2],
] as const) {
  verify({
    id: `au-share-${direction}`,
    domain: 'securement',
    source: australia,
    what: `share of the weight to be held ${direction}`,
    printed,
    unit: 'times the weight',
    computed: share(auLrg_2018, direction),
    tolerance: 1e-15,
    why: 'exact but for the last digit of a double',
  });
}

const kingdom: SourceRef = {
  document: 'Guidance on securing loads on goods vehicles',
  edition: 'updated December 2024',
  clause: 'forces on the load',
  ...quoted,
};
for (const [direction, printed] of [
  ['forward', 100],
  ['rearward', 50],
  ['lateral', 50],
] as const) {
  verify({
    id: `uk-share-${direction}`,
    domain: 'securement',
    source: kingdom,
    what: `share of the weight to be held ${direction}`,
    printed,
    unit: '%',
    computed: 100 * share(ukDvsa_2024, direction),
    tolerance: 1e-13,
    why: 'exact but for the last digit of a double',
  });
}

// Derived by hand from the guide's formulas, which print no example.
const guide: SourceRef = {
  document: 'Load Restraint Guide',
  edition: '2018',
  clause: 'tie-down and direct restraint',
  provenance: 'derived',
  note: 'by hand from its formulas (from memory)',
};
const upright = (pretension: number): TieDown => ({
  id: 'chain',
  holds: 'load',
  path: 'over-other-side',
  capacities: { lashingCapacity: '1000 kN' },
  pretension: { value: pretension, unit: 'kgf' },
  anchor: ['-3 m', '1.2 m', '0 m'],
  attachment: ['-3 m', '1.2 m', '1.5 m'],
  otherAttachment: ['-3 m', '-1.2 m', '1.5 m'],
  otherAnchor: ['-3 m', '-1.2 m', '0 m'],
});
const ratioOf = (article: Article, tieDowns: readonly TieDown[], id: string) => {
  const found = checkSecurement({ rules: auLrg_2018, articles: [article], tieDowns }).checks.find(
    (each) => each.id === id,
  );
  return found !== undefined && 'utilization' in found ? (found.utilization ?? Number.NaN) : Number.NaN;
};
verify({
  id: 'au-clamp-5t',
  domain: 'securement',
  source: guide,
  what: 'clamp for 5 t, friction 0.4, not blocked, over what four chains of 750 kgf give: 5000 · (0.8/0.4 − 1) / (4 · 2 · 750)',
  printed: 5000 / 6000,
  unit: 'ratio',
  computed: ratioOf(
    { ...tenTonnes, mass: '5 t', friction: 0.4 },
    [1, 2, 3, 4].map((at) => ({ ...upright(750), id: `chain-${at}` })),
    'forward/load',
  ),
  tolerance: 1e-12,
  why: 'exact but for the last digits of doubles',
});
verify({
  id: 'au-direct-two-chains',
  domain: 'securement',
  source: guide,
  what: 'two 8 mm chains of 3.8 t on slopes of 3-4-5, each 0.8 back, against 0.8 of 7.6 t: 6.08 / (2 · 3.8 · 0.8)',
  printed: 1,
  unit: 'ratio',
  computed: ratioOf(
    { ...tenTonnes, mass: '7.6 t', friction: 0 },
    ['1 m', '-1 m'].map(
      (y, at): TieDown => ({
        id: `chain-${at}`,
        holds: 'load',
        path: 'vehicle-to-cargo',
        capacities: { lashingCapacity: '3.8 t' },
        attachment: ['-3 m', y as '1 m', '3 m'],
        anchor: ['-7 m', y as '1 m', '0 m'],
      }),
    ),
    'forward/load',
  ),
  tolerance: 0,
  why: 'whole numbers, exact',
});
