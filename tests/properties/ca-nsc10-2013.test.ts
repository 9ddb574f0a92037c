// The Canadian rules read a second time in whole numbers, and what must not change an answer there.
import {
  type Article,
  caNsc10_2013,
  checkSecurement,
  type Plan,
  type TieDown,
  type TieDownPath,
  tieDownsRequired,
} from 'chain-rigging';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

// Steps of 10 µg, in which kilograms and pounds are whole numbers; lengths are whole millimeters.
const LB = 45_359_237n;
const KG = 100_000_000n;
/** A mass as it is written, and in steps. */
interface WrittenMass {
  readonly text: `${number} kg` | `${number} lb`;
  readonly steps: bigint;
}
const written = (value: number, unit: 'kg' | 'lb'): WrittenMass => ({
  text: `${value} ${unit}`,
  steps: BigInt(value) * (unit === 'kg' ? KG : LB),
});
const massNear = (kilograms: readonly number[], pounds: readonly number[], most: number): fc.Arbitrary<WrittenMass> =>
  fc.oneof(
    fc.tuple(fc.constantFrom(...kilograms), fc.integer({ min: -1, max: 1 })).map(([at, by]) => written(at + by, 'kg')),
    fc.tuple(fc.constantFrom(...pounds), fc.integer({ min: -1, max: 1 })).map(([at, by]) => written(at + by, 'lb')),
    fc.integer({ min: 1, max: most }).map((value) => written(value, 'kg')),
    fc.integer({ min: 1, max: most }).map((value) => written(value, 'lb')),
  );
const mass = massNear([500, 4500, 9000], [1100, 1102, 9920, 9921, 10_000], 20_000);
const limit = massNear([2268, 1125, 250], [5000, 5001], 9000);
/** Millimeters. */
const length = fc.oneof(
  fc
    .tuple(fc.constantFrom(1520, 1524, 3040, 3048, 6080, 9120, 12_160), fc.integer({ min: -1, max: 1 }))
    .map(([at, by]) => at + by),
  fc.integer({ min: 1, max: 20_000 }),
);
const cargo = fc.record({
  kind: fc.constantFrom<Article['kind']>('machinery', 'light-vehicle', 'general'),
  mass,
  length,
  blockedForward: fc.boolean(),
});
const tie = fc.record({
  limit,
  path: fc.constantFrom<TieDownPath>('vehicle-to-cargo', 'over-same-side', 'over-other-side'),
  end: fc.constantFrom('front' as const, 'rear' as const),
});
const ties = fc.array(tie, { minLength: 1, maxLength: 8 });
type Cargo = typeof cargo extends fc.Arbitrary<infer C> ? C : never;
type Tie = typeof tie extends fc.Arbitrary<infer T> ? T : never;

function planOf(of: Cargo, tied: readonly Tie[], more: Partial<TieDown> = {}): Plan {
  return {
    articles: [
      {
        id: 'cargo',
        kind: of.kind,
        mass: of.mass.text,
        length: { value: of.length, unit: 'mm' },
        blockedForward: of.blockedForward,
      },
    ],
    tieDowns: tied.map(
      (each, at) =>
        ({
          id: `tie-down-${at}`,
          holds: 'cargo',
          path: each.path,
          end: each.end,
          capacities: { workingLoadLimit: each.limit.text },
          ...more,
        }) as TieDown,
    ),
  };
}

/** The rules, in whole numbers: what each check should say. */
function secondReading(of: Cargo, tied: readonly Tie[]) {
  const steps = Math.ceil(of.length / 3040);
  let byLength = steps + 1;
  if (of.blockedForward) byLength = steps;
  else if (of.length <= 1520 && of.mass.steps <= 500n * KG) byLength = 1;
  else if (of.length <= 3040) byLength = 2;
  const vehicle = of.kind !== 'general';
  const heavy = vehicle && of.mass.steps > 4500n * KG;
  const minimum = heavy ? Math.max(4, byLength) : vehicle ? 2 : byLength;
  const strong = tied.filter((each) => each.limit.steps >= 2268n * KG).length;
  const sum = tied.reduce((total, each) => total + each.limit.steps, 0n);
  const bothEnds = new Set(tied.map(({ end }) => end)).size === 2;
  const pass =
    2n * sum >= of.mass.steps && tied.length >= minimum && (!heavy || strong >= 4) && (!vehicle || heavy || bothEnds);
  return { minimum, pass };
}

const judge = (plan: Plan) => checkSecurement({ rules: caNsc10_2013, ...plan, working: false });

describe('the Canadian rules', () => {
  it('agree with a second reading in whole numbers', () => {
    let passed = 0;
    fc.assert(
      fc.property(cargo, ties, (of, tied) => {
        const { minimum, pass } = secondReading(of, tied);
        const plan = planOf(of, tied);
        const result = judge(plan);
        expect(result.articles[0]?.minimumCount).toBe(minimum);
        expect(result.verdict).toBe(pass ? 'pass' : 'fail');
        if (pass) passed++;
        const [article] = plan.articles;
        if (article) expect(tieDownsRequired({ rules: caNsc10_2013, article }).minimumCount).toBe(minimum);
      }),
      { numRuns: 2000 },
    );
    expect(passed).toBeGreaterThan(100);
  });
  it('the path and the order of tie-downs change nothing', () => {
    fc.assert(
      fc.property(cargo, ties, (of, tied) => {
        const { verdict } = judge(planOf(of, tied));
        expect(judge(planOf(of, [...tied].reverse())).verdict).toBe(verdict);
        expect(judge(planOf(of, tied, { path: 'over-other-side' })).verdict).toBe(verdict);
      }),
    );
  });
  it('one more tie-down takes no pass away, known or not, unless it is unmarked', () => {
    fc.assert(
      fc.property(cargo, ties, tie, (of, tied, more) => {
        const { verdict } = judge(planOf(of, tied));
        const plan = planOf(of, tied);
        const withOne = (extra: TieDown) => judge({ ...plan, tieDowns: [...plan.tieDowns, extra] }).verdict;
        const base = { id: 'more', holds: 'cargo', path: more.path, end: more.end } as const;
        const known = withOne({ ...base, capacities: { workingLoadLimit: more.limit.text } });
        const unknown = withOne({ ...base, parts: [{ id: 'binder', kind: 'binder' }] });
        const unmarked = withOne({ ...base, parts: [{ id: 'chain', kind: 'chain', size: '3/8' }] });
        if (verdict === 'pass') expect([known, unknown]).toEqual(['pass', 'pass']);
        else expect(unknown).not.toBe('pass');
        expect(unmarked).toBe('fail');
      }),
    );
  });
});
