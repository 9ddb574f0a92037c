import { chainMass } from '../../src/chain/chain-mass.js';
import { chainRating } from '../../src/chain/chain-rating.js';
import { breakingForceOfGrade } from '../../src/chain/grade-strength.js';
import { scale } from '../../src/quantities/arithmetic.js';
import { lb, shortTon } from '../../src/quantities/constructors.js';
import { convert } from '../../src/quantities/convert.js';
import { stepsToCover } from '../../src/quantities/exact.js';
import { ratedLoadIn } from '../../src/quantities/rated.js';
import { usWeldedChain_2003 } from '../../src/tables/us-welded-chain-2003.js';
import type { SourceRef } from '../../src/working/source.js';
import { verify } from './verify.js';

// Old military and naval rules of thumb stand here as printed arithmetic only; the library offers none of them.

const quoted = { provenance: 'read', note: 'read in a page quoting it' } as const;

// 1. SWL = 8 D² short tons, D the link diameter in inches
const steelworker: SourceRef = {
  document: 'NAVEDTRA 14251, Steelworker',
  clause: 'chain, safe working load',
  ...quoted,
};
verify({
  id: 'steelworker-8d2-3-4-in',
  domain: 'quantities',
  source: steelworker,
  what: 'safe working load of 3/4 in chain by 8 D², short tons in pounds',
  printed: 9000,
  unit: 'lb',
  computed: convert(shortTon(8 * 0.75 ** 2), 'lb').value,
  tolerance: 0,
  why: '8 · 0.5625 = 4.5 short tons of 2000 lb, exact',
});

// 2. Grade 40 chain with the trade size taken as wire
const handbook: SourceRef = { document: 'Boat Mechanical Systems Handbook', clause: 'p. 377', ...quoted };
verify({
  id: 'boat-handbook-grade-40-newtons',
  domain: 'chain',
  source: handbook,
  what: 'breaking force of 3/8 in chain of 400 N/mm², wire taken as 9.525 mm',
  printed: 57_000,
  unit: 'N',
  computed: convert(breakingForceOfGrade({ grade: '4', wireDiameter: '3/8 in', units: 'si' }).breakingForce, 'N').value,
  tolerance: 500,
  why: 'the handbook rounds the section to 71.25 mm² and the force to three digits',
});
verify({
  id: 'boat-handbook-grade-40-pounds',
  domain: 'chain',
  source: handbook,
  what: 'the same in pounds-force',
  printed: 12_800,
  unit: 'lbf',
  computed: breakingForceOfGrade({ grade: '4', wireDiameter: '3/8 in' }).breakingForce.value,
  tolerance: 50,
  why: 'printed to three digits',
});
verify({
  id: 'grade-40-10-mm',
  domain: 'chain',
  source: {
    document: 'ASTM A413/A413M',
    edition: '2021',
    clause: 'section 1',
    provenance: 'derived',
    note: 'the same grade with the wire that 3/8 in chain has',
  },
  what: 'breaking force of 10 mm wire at 400 N/mm²',
  printed: 62_832,
  unit: 'N',
  computed: convert(breakingForceOfGrade({ grade: '4', wireDiameter: '10 mm' }).breakingForce, 'N').value,
  tolerance: 0.5,
  why: 'printed to a newton',
});

// 3. Ultimate strength over 5; the tons of the specification are short tons
const shackles: SourceRef = {
  document: 'RR-C-271D, anchor shackles, Type IV grade A',
  clause: 'working load at a fifth of the ultimate',
  ...quoted,
};
for (const [size, tons, ultimate, printed] of [
  ['1/2', 2, 20_000, 4000],
  ['5/8', 3.25, 32_500, 6500],
  ['3/4', 4.75, 47_500, 9500],
] as const) {
  const id = `federal-shackle-${size.replace('/', '-')}-in`;
  verify({
    id,
    domain: 'quantities',
    source: shackles,
    what: `${size} in shackle, ${tons} tons of the specification in pounds`,
    printed,
    unit: 'lb',
    computed: convert(shortTon(tons), 'lb').value,
    tolerance: 0,
    why: 'the tons are short tons: exact; metric tonnes would give 10 percent more',
  });
  verify({
    id: `${id}-fifth`,
    domain: 'quantities',
    source: shackles,
    what: `${size} in shackle, ultimate of ${ultimate} lb over 5`,
    printed,
    unit: 'lb',
    computed: scale(lb(ultimate), 1 / 5).value,
    tolerance: 1e-9,
    why: 'exact but for the last digit of the arithmetic',
  });
}

// 4. MPF = 0.3141593 d², and twice that to break
const en818: SourceRef = { document: 'EN 818-3', edition: '1999', clause: 'Annex A and Table 5', ...quoted };
for (const [size, proof, breaking] of [
  ['8', 20.1, 40.2],
  ['16', 80.4, 161],
  ['32', 322, 643],
] as const) {
  const { value } = breakingForceOfGrade({ grade: '4', wireDiameter: `${size} mm` }).breakingForce;
  const halfDigit = (printed: number) => (printed < 100 ? 0.05 : 0.5);
  verify({
    id: `en-818-3-mpf-${size}-mm`,
    domain: 'chain',
    source: en818,
    what: `manufacturing proof force of grade 4, ${size} mm: half the breaking force`,
    printed: proof,
    unit: 'kN',
    computed: value / 2,
    tolerance: halfDigit(proof),
    why: 'printed to three digits',
  });
  verify({
    id: `en-818-3-bf-${size}-mm`,
    domain: 'chain',
    source: en818,
    what: `breaking force of grade 4, ${size} mm`,
    printed: breaking,
    unit: 'kN',
    computed: value,
    tolerance: halfDigit(breaking),
    why: 'printed to three digits',
  });
}

// 5. Two legs, angle from the horizontal
const sling: SourceRef = {
  document: 'OSHA, Guidance on Safe Sling Use',
  clause: 'Table 1, grade 80, double leg',
  ...quoted,
};
const single = chainRating({ ratings: usWeldedChain_2003, size: '3/8', grade: 80 }).workingLoadLimit.value;
for (const [angle, printed] of [
  [60, 12_300],
  [45, 10_000],
  [30, 7100],
] as const) {
  verify({
    id: `osha-double-leg-${angle}-deg`,
    domain: 'chain',
    source: sling,
    what: `3/8 in grade 80, two legs at ${angle} deg from the horizontal: 2 · WLL · sin`,
    printed,
    unit: 'lb',
    computed: 2 * single * Math.sin((angle * Math.PI) / 180),
    tolerance: 50,
    why: 'printed to 100 lb',
  });
}

// 6. Piled chain: 0.387 m³ for 100 m of 20 mm
const yard: SourceRef = { document: 'Yard table of chain locker volume', clause: '20 mm chain, per 100 m', ...quoted };
verify({
  id: 'locker-table-fit-20-mm',
  domain: 'chain',
  source: yard,
  what: 'volume of 100 m of 20 mm chain by the printed fit 0.000962962 · D^2.001744',
  printed: 0.387,
  unit: 'm3',
  computed: 0.000962962 * 20 ** 2.001744,
  tolerance: 0.0005,
  why: 'printed to three digits',
});
verify({
  id: 'locker-bulk-density-20-mm',
  domain: 'chain',
  source: {
    ...yard,
    provenance: 'derived',
    note: 'from the coefficient 0.00963 of the fit, without its exponent, and 0.02207 d² kg/m',
  },
  what: 'bulk density of piled chain: chainMass of 100 m of 20 mm over the printed 0.387 m³',
  printed: 2290,
  unit: 'kg/m3',
  computed: chainMass({ size: '20 mm', length: '100 m' }).mass.value / 0.387,
  tolerance: 20,
  why: 'the exponent of the fit, 2.001744 and not 2, takes 0.5 percent off at 20 mm, and the figure is rounded to 10',
});

// 7. Grade 8, 10 mm, in kilograms of preferred numbers
const dguv: SourceRef = {
  document: 'DGUV Information 209-021',
  edition: '2021',
  clause: 'table for grade 8 chain, 10 mm',
  ...quoted,
};
verify({
  id: 'dguv-grade-8-10-mm-single',
  domain: 'chain',
  source: dguv,
  what: 'a quarter of the breaking force, as a mass',
  printed: 3150,
  unit: 'kg',
  computed: ratedLoadIn(breakingForceOfGrade({ grade: '8', wireDiameter: '10 mm' }).breakingForce, 'kg').value / 4,
  tolerance: 60,
  why: 'rounded down to the preferred number 3150 (next above: 3550): 3203.5 kg is 1.7 percent over it',
});
verify({
  id: 'dguv-grade-8-10-mm-double',
  domain: 'chain',
  source: dguv,
  what: 'two legs up to 45 deg from the vertical: 1.4 times the single leg',
  printed: 4250,
  unit: 'kg',
  computed: 1.4 * 3150,
  tolerance: 160,
  why: 'rounded down to the preferred number 4250: 4410 kg is 3.8 percent over it; look these up, never compute them',
});

// 8. A planning rule of 1.5 times the weight; not the rule of 49 CFR 393.106
const planning: SourceRef = { document: 'NAVEDTRA 14081', clause: 'tie-down of a 55,000 lb crawler', ...quoted };
const wanted = scale(lb(55_000), 1.5);
verify({
  id: 'navy-crawler-total',
  domain: 'quantities',
  source: planning,
  what: '1.5 times 55,000 lb',
  printed: 82_500,
  unit: 'lb',
  computed: wanted.value,
  tolerance: 0,
  why: 'exact',
});
verify({
  id: 'navy-crawler-chains',
  domain: 'quantities',
  source: planning,
  what: 'chains of 11,000 lb that reach it: 7.5, so 8',
  printed: 8,
  unit: 'chains',
  computed: stepsToCover(wanted, lb(11_000)),
  tolerance: 0,
  why: 'whole chains, rounded up',
});
