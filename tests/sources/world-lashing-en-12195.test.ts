import { checkSecurement, type RatioCheck, type SourceRef, type TieDown } from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { checkOf } from '../securement/plans.js';
import {
  across,
  anchor,
  at,
  corners,
  direct,
  halfLoop,
  judge,
  load,
  rules,
} from '../securement/rules/en-12195-plans.js';
import { verify } from './verify.js';

const quoted = { provenance: 'read', note: 'read in a page quoting it' } as const;
const G = 9.81; // m/s², as the standard

const ratio = (article: ReturnType<typeof load>, tieDowns: readonly TieDown[], id: string): RatioCheck =>
  checkOf(judge(article, tieDowns), `${id}/load`) as RatioCheck;
/** A force in newtons; the result shows kN. */
const amount = (value: RatioCheck['demand']): number => (value as { value: number }).value * 1000;

/** The first whole number of over-top lashings that holds in a heading. */
function lashings(
  article: ReturnType<typeof load>,
  alpha: number,
  pretension: `${number} daN`,
  heading: string,
): number {
  let count = 1;
  while (ratio(article, across(count, alpha, { pretension }), `sliding-${heading}`).verdict !== 'pass') count++;
  return count;
}

// 1. Over-top lashing forward
const magazine: SourceRef = { document: 'Construction trade magazine, article on anti-slip mats', ...quoted };
const bundle = (friction: number) => load({ mass: '2000 kg', friction });
for (const [id, what, mu, printed] of [
  ['bare', 'bare deck; the article read does not print μ, 0.20 fits', 0.2, 11],
  ['mat', 'with an anti-slip mat, μ = 0.6', 0.6, 2],
] as const) {
  verify({
    id: `en-over-top-2000-kg-${id}`,
    domain: 'securement',
    source: magazine,
    what: `straps over 2000 kg at 85°, STF 350 daN, forward: ${what}`,
    printed,
    unit: 'strap',
    computed: lashings(bundle(mu), 85, '350 daN', 'forward'),
    tolerance: 0,
    why: 'a count; 10.55 and 1.17 before rounding up',
  });
}

// 2. Quick lashing table: mass that one over-top lashing holds
const quick: SourceRef = {
  document: 'European and road transport union guidelines on cargo securing, quick lashing table, top-over',
  provenance: 'memory',
};
const QUICK: readonly [mu: number, sideways: number, forward: number][] = [
  [0.15, 0.31, 0.15],
  [0.2, 0.48, 0.21],
  [0.3, 1.1, 0.38],
  [0.4, 2.9, 0.63],
];
/** One tonne takes the share `utilization` of one lashing; so one lashing holds so many tonnes. */
const tonnes = (friction: number, heading: string): number =>
  1 /
  ratio(load({ mass: '1 t', friction }), across(1, 75, { pretension: '400 daN' }), `sliding-${heading}`).utilization!;
for (const [mu, sideways, forward] of [...QUICK, [0.5, Number.NaN, 1.1] as const]) {
  for (const [heading, printed] of [
    ['left', sideways],
    ['rearward', sideways],
    ['forward', forward],
  ] as const) {
    if (Number.isNaN(printed)) continue;
    verify({
      id: `en-quick-table-${mu}-${heading}`,
      domain: 'securement',
      source: quick,
      what: `mass for one lashing, STF 400 daN, α 75°, μ = ${mu}, ${heading}`,
      printed,
      unit: 't',
      computed: tonnes(mu, heading),
      tolerance: printed >= 1 ? 0.05 : 0.005,
      why: 'two digits printed',
    });
  }
}
it('quick table: with μ = 0.5 nothing slides sideways or rearward', () => {
  // c = 0.5 = μ · cz: no demand is left
  for (const heading of ['left', 'right', 'rearward']) {
    const check = ratio(load({ mass: '1 t', friction: 0.5 }), across(1, 75), `sliding-${heading}`);
    expect(check).toMatchObject({ verdict: 'pass', demand: { value: 0 }, utilization: 0 });
  }
});

// 3. Friction against strength
const handbook: SourceRef = { document: 'Handbook of load securing, German insurers, 3.4', ...quoted };
const belt = { capacities: { lashingCapacity: '2500 daN', standardTensionForce: '400 daN' } } as const;
verify({
  id: 'en-strap-over-top',
  domain: 'securement',
  source: handbook,
  what: 'effect of a belt of LC 2500 daN, STF 400 daN over the load at 90°, μ = 0.3',
  printed: 240,
  unit: 'daN',
  computed: (amount(ratio(load(), across(1, 90, belt), 'sliding-left').capacity) / 10) * 1.1,
  tolerance: 1e-9,
  why: 'exact but for the last digit of a double; printed before the safety factor of 1.1 that the standard divides by',
});
verify({
  id: 'en-strap-direct',
  domain: 'securement',
  source: handbook,
  what: 'effect of the same belt pulled straight, flat',
  printed: 2500,
  unit: 'daN',
  computed:
    amount(ratio(load(), [direct('belt', '25 kN', { alpha: 0, beta: 0, x: 1, y: 1 })], 'sliding-rearward').capacity) /
    10,
  tolerance: 1e-9,
  why: 'exact but for the last digit of a double',
});

// 4. A disagreement: 9 t held by tie-downs alone
const container: SourceRef = { document: 'Container Handbook, part 5.2.8', ...quoted };
const pulled = { pretension: '300 daN' } as const; // in each leg, 600 daN together
verify({
  id: 'en-tie-down-of-600-dan',
  domain: 'securement',
  source: container,
  what: 'friction of a tie-down with 600 daN in both legs together, 90°, μ = 0.3',
  printed: 180,
  unit: 'daN',
  computed: (amount(ratio(load({ mass: '9 t' }), across(1, 90, pulled), 'sliding-left').capacity) / 10) * 1.1,
  tolerance: 1e-9,
  why: 'exact but for the last digit of a double; printed without the safety factor of the standard',
});
it('the same handbook prints 50 tie-downs for 9 t, not the demand of EN 12195-1', () => {
  // printed: 9000 daN / 180 daN = 50, a demand of 1 g with no credit for the friction of the load itself.
  // EN forward: 1.25 · 0.5 · 9000 · 9.81 / 1800 = 30.66, so 31; sideways: 1.1 · 0.2 · 9000 · 9.81 / 1800 = 10.79, so 11
  const cargo = load({ mass: '9 t' });
  expect(lashings(cargo, 90, '300 daN', 'forward')).toBe(31);
  expect(lashings(cargo, 90, '300 daN', 'left')).toBe(11);
});

// 6. A disagreement: an older table with k = 1.8 and no safety factor
it('a German textbook, page 87 (read in a page quoting it), prints 14 and 3 straps where EN 12195-1 asks 16 and 4', () => {
  // 4000 kg, α 60°, 300 daN: 1.25 · 0.5 · 4000 · 9.81 / (2 · 0.3 · sin 60° · 3000) = 15.73, so 16;
  // with μ = 0.6: 1.25 · 0.2 · 4000 · 9.81 / (2 · 0.6 · sin 60° · 3000) = 3.15, so 4.
  // k = 1.8 and fs = 1 give 13.98 and 2.80.
  expect(lashings(load({ mass: '4000 kg', friction: 0.3 }), 60, '300 daN', 'forward')).toBe(16);
  expect(lashings(load({ mass: '4000 kg', friction: 0.6 }), 60, '300 daN', 'forward')).toBe(4);
});

// 7. Roadside case
const roadside: SourceRef = { document: 'Police report on cargo securing, roadside case', ...quoted };
const tube = load({ mass: '10000 kg', friction: 0.3 });
verify({
  id: 'en-roadside-to-hold',
  domain: 'securement',
  source: roadside,
  what: 'what friction of 30 % leaves of 50 % of 10 000 kg',
  printed: 2000,
  unit: 'kg',
  computed: amount(ratio(tube, across(1, 90), 'sliding-left').demand) / G,
  tolerance: 1e-9,
  why: 'exact but for the last digit of a double; with friction in full, as printed. Direct lashing counts 0.75 of it',
});
const loop = halfLoop('loop', 45, {
  parts: [
    { id: 'strap', kind: 'webbing', capacities: { lashingCapacity: '5000 daN' } },
    anchor('front point', 'vehicle', '20 kN'),
    anchor('rear point', 'vehicle', '20 kN'),
  ],
});
verify({
  id: 'en-roadside-loop',
  domain: 'securement',
  source: roadside,
  what: 'what a side loop of a 5000 daN strap on two points of 2000 daN counts, angles ignored',
  printed: 4000,
  unit: 'daN',
  computed: judge(tube, [loop]).tieDowns[0]!.counted!.value * 100, // shown in kN
  tolerance: 0,
  why: 'whole numbers, exact',
});

// Derived: the standard's formula by hand
const derived: SourceRef = {
  document: 'EN 12195-1, direct lashing',
  edition: '2010',
  provenance: 'derived',
  note: 'FR = m · g · (c − 0.75 · μ) / (2 · (cos α · cos β + 0.75 · μ · sin α)), by hand',
};
const DERIVED: readonly [string, { mass: `${number} t`; mu: number; alpha: number; beta: number }, string, number][] = [
  ['8-t', { mass: '8 t', mu: 0.3, alpha: 30, beta: 35 }, 'forward', 27.45],
  ['8-t', { mass: '8 t', mu: 0.3, alpha: 30, beta: 35 }, 'left', 17.71],
  ['8-t', { mass: '8 t', mu: 0.3, alpha: 30, beta: 35 }, 'rearward', 13.13],
  ['12-t', { mass: '12 t', mu: 0, alpha: 20, beta: 30 }, 'forward', 57.86],
  ['3.5-t', { mass: '3.5 t', mu: 0.45, alpha: 45, beta: 45 }, 'forward', 10.75],
  ['3.5-t', { mass: '3.5 t', mu: 0.45, alpha: 45, beta: 45 }, 'left', 3.78],
];
for (const [id, { mass, mu, alpha, beta }, heading, printed] of DERIVED) {
  verify({
    id: `en-direct-${id}-${heading}`,
    domain: 'securement',
    source: derived,
    what: `force in each of two chains: ${mass}, μ = ${mu}, α = ${alpha}°, β = ${beta}° to the length, ${heading}`,
    printed,
    unit: 'kN',
    computed:
      100 * ratio(load({ mass, friction: mu }), corners('100 kN', { alpha, beta }), `sliding-${heading}`).utilization!,
    tolerance: 0.005,
    why: 'two decimals printed',
  });
}

describe('the 12 t case with real chains', () => {
  const cornersOf = (size: '10 mm' | '8 mm'): TieDown[] =>
    corners('1 kN', { alpha: 20, beta: 30 }).map(
      ({ capacities: _, ...points }) =>
        ({
          ...points,
          parts: [
            { id: 'chain', kind: 'chain', size, grade: '8' },
            { id: 'tensioner', kind: 'turnbuckle', capacities: { lashingCapacity: '63 kN' } },
            anchor('ring', 'vehicle', '100 kN'),
            anchor('lug', 'cargo', '100 kN'),
          ],
        }) as TieDown,
    );

  it('10 mm of class 8, LC 63 kN, holds 57.86 kN; 8 mm, LC 40 kN, does not', () => {
    const cargo = load({ mass: '12 t', friction: 0 });
    expect(ratio(cargo, cornersOf('10 mm'), 'sliding-forward').verdict).toBe('pass');
    expect(ratio(cargo, cornersOf('10 mm'), 'sliding-forward').utilization).toBeCloseTo(57.86 / 63, 4);
    expect(ratio(cargo, cornersOf('8 mm'), 'sliding-forward').verdict).toBe('fail');
  });

  it('a 100 kN chain on a 20 kN point counts 20 kN', () => {
    const [first] = cornersOf('10 mm');
    const parts = [...first!.parts!.slice(0, 2), anchor('ring', 'vehicle', '20 kN'), anchor('lug', 'cargo', '100 kN')];
    const [counted] = checkSecurement({
      rules,
      articles: [load()],
      tieDowns: [{ ...first!, capacities: undefined, parts }],
    }).tieDowns;
    expect(counted).toMatchObject({ rating: { value: 20, unit: 'kN' }, weakest: ['ring'] });
  });
});

it('lays its lashings by the angles it says', () => {
  const [first] = corners('1 kN', { alpha: 0, beta: 0 });
  expect(first!.anchor).toEqual(at(0, 1, 1));
});
