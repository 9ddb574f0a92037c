import {
  type Article,
  type CheckSecurementInput,
  checkSecurement,
  type Part,
  type Plan,
  us49cfr393_2024 as rules,
  type TieDown,
  type TieDownPath,
  tieDownsRequired,
} from 'chain-rigging';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyGarbage, givesResultOrIssue, jsonGarbage, spoiled } from './garbage.js';

// Masses in hundredths of a pound and lengths in sixty-fourths of an inch, so that thresholds are hit and every value
// is a whole number here. 1 lb = 0.453 592 37 kg and 1 in = 0.0254 m, both exact.
const TEN_FEET = 10 * 12 * 64;
const near = (values: readonly number[], least: number) =>
  fc
    .tuple(fc.constantFrom(...values), fc.integer({ min: -2, max: 2 }))
    .map(([value, by]) => Math.max(least, value + by));
const hundredths = fc.oneof(
  near([110_000, 1_000_000, 1_000_100, 400_000, 1_260_000], 1),
  fc.integer({ min: 1, max: 8_000_000 }),
);
const sixtyFourths = fc.oneof(
  near([TEN_FEET / 2, ...[1, 2, 3, 4, 5, 6, 7].map((tens) => tens * TEN_FEET)], 1),
  fc.integer({ min: 1, max: 8 * TEN_FEET }),
);

/** A whole number as a decimal with so many places, exactly. */
function decimal(whole: bigint, places: number): string {
  const digits = String(whole).padStart(places + 1, '0');
  return `${digits.slice(0, -places)}.${digits.slice(-places)}`;
}
type Form = 'us text' | 'si text' | 'si object' | 'us object';
const forms: readonly Form[] = ['us text', 'si text', 'si object', 'us object'];
function mass(hundredth: number, form: Form) {
  if (form === 'us text') return `${decimal(BigInt(hundredth), 2)} lb` as never;
  if (form === 'us object') return { value: hundredth / 100, unit: 'lb' } as const;
  const kilograms = decimal(BigInt(hundredth) * 45_359_237n, 10);
  return form === 'si text' ? (`${kilograms} kg` as never) : ({ value: Number(kilograms), unit: 'kg' } as const);
}
function length(part: number, form: Form) {
  if (form === 'us text') return `${part}/64 in` as never;
  if (form === 'us object') return { value: part / 64, unit: 'in' } as const;
  const meters = decimal(BigInt(part) * 396_875n, 9); // 25.4 mm / 64 = 0.396 875 mm
  return form === 'si text' ? (`${meters} m` as never) : ({ value: Number(meters), unit: 'm' } as const);
}

interface Cargo {
  readonly kind: Article['kind'];
  readonly hundredths: number;
  readonly sixtyFourths: number;
  readonly blockedForward: boolean | undefined;
  readonly specialMethods: boolean | undefined;
}
const cargo: fc.Arbitrary<Cargo> = fc.record({
  kind: fc.constantFrom<Article['kind']>('machinery', 'light-vehicle', 'general'),
  hundredths,
  sixtyFourths,
  blockedForward: fc.constantFrom(true, false, undefined),
  specialMethods: fc.oneof({ weight: 5, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: fc.boolean() }),
});
interface Tie {
  readonly hundredths: number;
  readonly path: TieDownPath;
  readonly end: 'front' | 'rear' | undefined;
}
const tie: fc.Arbitrary<Tie> = fc.record({
  hundredths: fc.oneof(near([315_000, 470_000, 660_000, 500_000], 1), fc.integer({ min: 1, max: 2_000_000 })),
  path: fc.constantFrom<TieDownPath>('vehicle-to-cargo', 'over-same-side', 'over-other-side'),
  end: fc.constantFrom('front', 'rear', undefined),
});
const ties = fc.array(tie, { minLength: 1, maxLength: 9 });
const form = fc.constantFrom(...forms);

function articleOf(
  { kind, hundredths: heavy, sixtyFourths: long, blockedForward, specialMethods }: Cargo,
  way: Form = 'us text',
  id = 'cargo',
): Article {
  return {
    id,
    kind,
    mass: mass(heavy, way),
    length: length(long, way),
    ...(blockedForward === undefined ? {} : { blockedForward }),
    ...(specialMethods === undefined ? {} : { specialMethods }),
  };
}
const tieDownsOf = (each: readonly Tie[], way: Form = 'us text', holds = 'cargo'): TieDown[] =>
  each.map(({ hundredths: limit, path, end }, at) => ({
    id: `${holds}-tie-${at}`,
    holds,
    path,
    ...(end === undefined ? {} : { end }),
    capacities: { workingLoadLimit: mass(limit, way) },
  }));
const check = (article: Article, tieDowns: readonly TieDown[], more: Partial<CheckSecurementInput> = {}) =>
  checkSecurement({ rules, articles: [article], tieDowns, ...more });

// A second reading of the rules, in whole numbers.
function countByLength({ hundredths: heavy, sixtyFourths: long, blockedForward, specialMethods }: Cargo): number {
  if (specialMethods === true) return 0;
  const begun = Math.ceil(long / TEN_FEET);
  if (blockedForward === true) return begun;
  if (long <= TEN_FEET / 2) return heavy <= 110_000 ? 1 : 2;
  return long <= TEN_FEET ? 2 : 2 + Math.ceil((long - TEN_FEET) / TEN_FEET);
}
function leastCount(each: Cargo): number {
  const four = Math.max(4, countByLength(each));
  if (each.kind === 'general') return countByLength(each);
  if (each.kind === 'light-vehicle') return each.hundredths <= 1_000_000 ? 2 : four;
  return each.hundredths >= 1_000_000 ? four : Math.min(countByLength(each), 2);
}
/** Four times the aggregate less twice the weight: whole numbers, not negative where it is enough. */
const margin = (each: Cargo, all: readonly Tie[]) =>
  all.reduce((sum, { hundredths: limit, path }) => sum + limit * (path === 'over-other-side' ? 4 : 2), 0) -
  2 * each.hundredths;

describe('against a second reading of the rules', () => {
  it('the count', () => {
    fc.assert(
      fc.property(cargo, form, (each, way) => {
        const { minimumCount, recommendedCount, options } = tieDownsRequired({ rules, article: articleOf(each, way) });
        expect(minimumCount).toBe(leastCount(each));
        expect(recommendedCount).toBeGreaterThanOrEqual(minimumCount);
        expect(Math.min(...options.map(({ minimumCount: count }) => count))).toBe(minimumCount);
      }),
      { numRuns: 2000 },
    );
  });
  it('the aggregate, exactly', () => {
    fc.assert(
      fc.property(cargo, ties, form, form, (each, all, way, other) => {
        const result = check(articleOf(each, way), tieDownsOf(all, other));
        const found = result.checks.find(({ id }) => id === '393.106(d)/cargo');
        expect(found?.verdict).toBe(margin(each, all) >= 0 ? 'pass' : 'fail');
        expect(found !== undefined && 'utilization' in found && found.utilization === 1).toBe(margin(each, all) === 0);
      }),
      { numRuns: 1000 },
    );
  });
  it('the aggregate at exactly half of the weight', () => {
    // The weight is made twice the credited sum: 4 times a direct limit counts 2, an across limit 4, so W = sum/2.
    fc.assert(
      fc.property(
        cargo,
        fc.array(tie, { minLength: 1, maxLength: 4 }),
        form,
        form,
        fc.integer({ min: -1, max: 1 }),
        (each, all, way, other, by) => {
          const most = all.reduce(
            (sum, { hundredths: limit, path }) => sum + limit * (path === 'over-other-side' ? 2 : 1),
            0,
          );
          const heavy = { ...each, hundredths: most + by };
          fc.pre(heavy.hundredths > 0);
          const found = check(articleOf(heavy, way), tieDownsOf(all, other)).checks.find(
            ({ id }) => id === '393.106(d)/cargo',
          );
          expect(found?.verdict).toBe(by <= 0 ? 'pass' : 'fail');
        },
      ),
    );
  });
});

describe('one more tie-down', () => {
  // Sound and with every fact about it known, it never lowers the aggregate and never takes a pass away, whatever it
  // holds. With an unknown rating the aggregate is not known, and a pass stays one. With a damaged part a pass becomes
  // a fail, 393.104(b), whatever the others hold; with an undecided condition, undetermined.
  const waysOfMachines = ['393.110', '393.128', '393.130'] as const;
  const added = (one: Tie): TieDown => ({ ...tieDownsOf([one])[0]!, id: 'added' });

  it('never lowers the aggregate and never takes a pass away', () => {
    fc.assert(
      fc.property(cargo, ties, tie, (each, all, one) => {
        const article = articleOf(each);
        const before = check(article, tieDownsOf(all));
        const after = check(article, [...tieDownsOf(all), added(one)]);
        expect(after.articles[0]!.aggregate!.value).toBeGreaterThan(before.articles[0]!.aggregate!.value);
        expect(after.articles[0]!.count).toBe(before.articles[0]!.count + 1);
        if (before.verdict === 'pass') expect(after.verdict).toBe('pass');
        if (before.verdict === 'undetermined') expect(after.verdict).not.toBe('fail');
      }),
      { numRuns: 500 },
    );
  });
  it('of unknown rating takes no pass away', () => {
    fc.assert(
      fc.property(cargo, ties, tie, (each, all, one) => {
        const article = articleOf(each);
        const before = check(article, tieDownsOf(all));
        const after = check(article, [...tieDownsOf(all), { ...added(one), capacities: {} } as TieDown]);
        expect(after.articles[0]!.aggregate).toBeNull();
        if (before.verdict === 'pass') expect(after.verdict).toBe('pass');
      }),
      { numRuns: 500 },
    );
  });
  it('of unknown rating leaves decided what no rating of it would change', () => {
    fc.assert(
      fc.property(
        cargo,
        fc.constantFrom(undefined, ...waysOfMachines),
        fc.array(tie, { maxLength: 6 }),
        tie,
        (each, way, all, one) => {
          // A lighter machine under the rule its hauler chose, or under whichever is met.
          const light = each.kind === 'machinery' && each.hundredths < 1_000_000;
          const article = { ...articleOf(each), ...(light && way !== undefined ? { securedUnder: way } : {}) };
          const of = (last: TieDown) => check(article, [...tieDownsOf(all), last]).verdict;
          const before = of({ ...added(one), capacities: {} } as TieDown);
          if (before !== 'undetermined') expect(of(added(one))).toBe(before);
          if (before !== 'undetermined') expect(of(added({ ...one, hundredths: 100_000_000 }))).toBe(before);
        },
      ),
      { numRuns: 2000 },
    );
  });
  it('that is damaged adds nothing and makes every verdict a fail; undecided, it makes a pass undetermined', () => {
    fc.assert(
      fc.property(cargo, ties, tie, (each, all, { path }) => {
        const article = articleOf(each);
        const before = check(article, tieDownsOf(all));
        const with_ = (condition: 'damaged' | { verdict: 'undetermined' }) => {
          const parts: Part[] = [{ id: 'chain', kind: 'chain', size: '3/8', grade: 70, condition }];
          return check(article, [...tieDownsOf(all), { id: 'added', holds: 'cargo', path, parts }]);
        };
        expect(with_('damaged').verdict).toBe('fail');
        expect(with_('damaged').articles[0]).toMatchObject({
          count: before.articles[0]!.count,
          aggregate: before.articles[0]!.aggregate,
        });
        if (before.verdict === 'pass') expect(with_({ verdict: 'undetermined' }).verdict).toBe('undetermined');
      }),
      { numRuns: 300 },
    );
  });
});

describe('what does not change the answer', () => {
  const answer = ({ verdict, governing, articles, checks }: ReturnType<typeof checkSecurement>) => ({
    verdict,
    governing,
    articles: articles.map(({ id, rule, count, minimumCount, recommendedCount }) => ({
      id,
      rule,
      count,
      minimumCount,
      recommendedCount,
    })),
    checks: checks.map(({ id, verdict: each }) => [id, each]),
  });

  it('pounds and feet, or kilograms and meters', () => {
    fc.assert(
      fc.property(cargo, ties, form, form, fc.constantFrom('us', 'si'), (each, all, way, other, units) => {
        expect(answer(check(articleOf(each, way), tieDownsOf(all, other), { units }))).toEqual(
          answer(check(articleOf(each), tieDownsOf(all))),
        );
      }),
      { numRuns: 500 },
    );
  });
  it('the order of tie-downs and of articles', () => {
    const two = fc.tuple(cargo, ties, cargo, ties);
    fc.assert(
      fc.property(two, fc.infiniteStream(fc.nat()), ([one, onTies, other, otherTies], random) => {
        const articles = [articleOf(one, 'us text', 'one'), articleOf(other, 'us text', 'other')];
        const tieDowns = [...tieDownsOf(onTies, 'us text', 'one'), ...tieDownsOf(otherTies, 'us text', 'other')];
        const shuffled = tieDowns
          .map((item) => [random.next().value as number, item] as const)
          .sort(([a], [b]) => a - b)
          .map(([, item]) => item);
        const straight = checkSecurement({ rules, articles, tieDowns });
        const mixed = checkSecurement({ rules, articles: [...articles].reverse(), tieDowns: shuffled });
        const sorted = (result: typeof straight) => {
          const { verdict, articles: each, checks } = answer(result);
          return { verdict, each: [...each].sort((a, b) => (a.id < b.id ? -1 : 1)), checks: checks.map(String).sort() };
        };
        expect(sorted(mixed)).toEqual(sorted(straight));
        for (const { id, aggregate } of straight.articles) {
          expect(mixed.articles.find((found) => found.id === id)?.aggregate?.value).toBeCloseTo(
            aggregate?.value ?? Number.NaN,
            6,
          );
        }
      }),
      { numRuns: 300 },
    );
  });
  it('the scale: twice the weight on twice the strength', () => {
    // Only the strength scales; thresholds of weight do not.
    fc.assert(
      fc.property(cargo, ties, fc.integer({ min: 2, max: 9 }), (each, all, factor) => {
        const strength = (by: number) =>
          check(
            articleOf({ ...each, hundredths: each.hundredths * by }),
            tieDownsOf(all.map((one) => ({ ...one, hundredths: one.hundredths * by }))),
          ).checks.find(({ id }) => id === '393.106(d)/cargo')?.verdict;
        expect(strength(factor)).toBe(strength(1));
      }),
    );
  });
  it('whether the steps are recorded', () => {
    fc.assert(
      fc.property(cargo, ties, (each, all) => {
        const full = check(articleOf(each), tieDownsOf(all));
        const bare = check(articleOf(each), tieDownsOf(all), { working: false });
        expect(bare.steps).toEqual([]);
        expect({ ...answer(bare), tieDowns: bare.tieDowns }).toEqual({ ...answer(full), tieDowns: full.tieDowns });
      }),
    );
  });
});

describe('the count grows with the length', () => {
  it('and with nothing else taken away', () => {
    fc.assert(
      fc.property(cargo, sixtyFourths, (each, other) => {
        const [short, long] = [Math.min(each.sixtyFourths, other), Math.max(each.sixtyFourths, other)];
        const count = (sixtyFourth: number) =>
          tieDownsRequired({ rules, article: articleOf({ ...each, sixtyFourths: sixtyFourth }) }).minimumCount;
        expect(count(short)).toBeLessThanOrEqual(count(long));
      }),
      { numRuns: 500 },
    );
  });
  it('and blocking never asks for more', () => {
    fc.assert(
      fc.property(cargo, (each) => {
        const count = (blockedForward: boolean) =>
          tieDownsRequired({ rules, article: articleOf({ ...each, blockedForward }) }).minimumCount;
        expect(count(true)).toBeLessThanOrEqual(count(false));
      }),
    );
  });
});

describe('a result', () => {
  it('survives JSON, is the same byte for byte on every call, and has checks with ids used once', () => {
    fc.assert(
      fc.property(cargo, ties, fc.boolean(), fc.constantFrom('us', 'si'), (each, all, working, units) => {
        const call = () => check(articleOf(each), tieDownsOf(all), { working, units });
        const result = call();
        expect(JSON.stringify(call())).toBe(JSON.stringify(result));
        expect(JSON.parse(JSON.stringify(result))).toEqual({ ...result });
        const ids = result.checks.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        const governing = result.checks.find(({ id }) => id === result.governing);
        expect(governing).toMatchObject({ verdict: result.verdict, weight: 'requirement' });
      }),
    );
  });
});

describe('garbage', () => {
  const good: Plan & { units: string } = {
    vehicle: {
      units: [
        { id: 'truck', kind: 'power', grossWeightRating: '7300 lb', grossWeight: '7000 lb' },
        { id: 'trailer', kind: 'towed', grossWeightRating: { value: 5000, unit: 'lb' } },
      ],
      combinationRatingOnLabel: '15000 lb',
      interstateCommerce: true,
    },
    articles: [
      {
        id: 'tractor',
        kind: 'machinery',
        mass: '12000 lb',
        length: '14 ft 6 in',
        blockedForward: false,
        accessories: [{ id: 'bucket', lowered: true, locked: false }],
        articulated: true,
        articulationLocked: true,
        securedUnder: '393.130',
        specialMethods: false,
        frictionMat: { massOnMat: '5000 lb', ratedResistance: '2000 lb' },
      },
      { id: 'forks', kind: 'general', mass: { value: 200, unit: 'kg' }, length: { value: 1.2, unit: 'm' } },
    ],
    tieDowns: [
      {
        id: 'front',
        holds: 'tractor',
        path: 'vehicle-to-cargo',
        end: 'front',
        parts: [
          { id: 'chain', kind: 'chain', size: '3/8', grade: 70, condition: 'sound' },
          { id: 'hook', kind: 'grab-hook', size: '3/8', grade: 70 },
          { id: 'binder', kind: 'binder', markedWll: '5400 lb' },
          { id: 'ring', kind: 'anchor', at: 'vehicle', markedWll: '20 kN' },
          { id: 'lug', kind: 'anchor', at: 'cargo', capacities: { workingLoadLimit: '5000 lb' } },
        ],
      },
      {
        id: 'rear',
        holds: 'tractor',
        path: 'over-other-side',
        end: 'rear',
        capacities: { workingLoadLimit: '9000 lb' },
      },
      { id: 'bucket-chain', holds: 'bucket', path: 'vehicle-to-cargo', capacities: { workingLoadLimit: '4700 lb' } },
      { id: 'strap', holds: 'forks', path: 'over-same-side', parts: [{ id: 'webbing', kind: 'webbing', width: '2' }] },
    ],
    units: 'us',
  };
  it('starts from a plan that is good', () => {
    expect(() => checkSecurement({ rules, ...(good as Plan) })).not.toThrow();
  });
  it.each([
    ['of JSON', jsonGarbage],
    ['of any type', anyGarbage],
  ] as const)('%s in a plan gives a result or a RiggingError', (_, garbage) => {
    fc.assert(
      fc.property(spoiled(good, garbage), fc.boolean(), (plan, working) => {
        givesResultOrIssue(() => checkSecurement({ ...Object(plan), rules, working } as never));
      }),
      { numRuns: 2000 },
    );
  });
  it.each([
    ['of JSON', jsonGarbage],
    ['of any type', anyGarbage],
  ] as const)('%s in an article gives a result or a RiggingError', (_, garbage) => {
    fc.assert(
      fc.property(spoiled(good.articles[0], garbage), (article) => {
        givesResultOrIssue(() => tieDownsRequired({ rules, article } as never));
      }),
      { numRuns: 1000 },
    );
  });
  it('for a plan gives a RiggingError', () => {
    fc.assert(fc.property(anyGarbage, (input) => givesResultOrIssue(() => checkSecurement(input as never))));
    fc.assert(fc.property(anyGarbage, (input) => givesResultOrIssue(() => tieDownsRequired(input as never))));
    fc.assert(
      fc.property(anyGarbage, (value) => givesResultOrIssue(() => checkSecurement({ ...good, rules: value } as never))),
    );
    fc.assert(
      fc.property(anyGarbage, anyGarbage, (articles, tieDowns) =>
        givesResultOrIssue(() => checkSecurement({ rules, articles, tieDowns } as never)),
      ),
    );
  });
});
