import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { ft, inches, kg, kN, lb, lbf, m, mm } from '../../src/quantities/constructors.js';
import { compareExact, compareExactSums, type ExactTerm, ratioOf, stepsToCover } from '../../src/quantities/exact.js';
import { parseQuantity } from '../../src/quantities/parse.js';
import { type QuantityLike, quantity } from '../../src/quantities/quantity.js';
import type { Kind, Unit } from '../../src/quantities/units.js';
import { justAbove, justBelow } from './doubles.js';
import { issueOf } from './issue-of.js';

/**
 * An independent exact comparison: decimal text read character by character into a ratio of two whole numbers,
 * units as ratios of whole numbers of meters, kilograms and newtons straight from their definitions, and no
 * shortcut through doubles.
 */
interface Ratio {
  readonly over: bigint;
  readonly under: bigint;
}
const ratio = (over: bigint, under: bigint): Ratio => ({ over, under });
const times = (a: Ratio, b: Ratio) => ratio(a.over * b.over, a.under * b.under);
const plus = (a: Ratio, b: Ratio) => ratio(a.over * b.under + b.over * a.under, a.under * b.under);
const order = (a: Ratio, b: Ratio) =>
  Math.sign(Number(a.over * b.under > b.over * a.under) - Number(a.over * b.under < b.over * a.under));

function fractionOf(decimal: string): Ratio {
  let over = 0n;
  let under = 1n;
  let afterPoint = false;
  let negative = false;
  for (let index = 0; index < decimal.length; index++) {
    const character = decimal[index]!;
    if (character === '-') negative = true;
    else if (character === '.') afterPoint = true;
    else if (character === 'e') {
      const power = Number.parseInt(decimal.slice(index + 1), 10);
      for (let step = 0; step < power; step++) over *= 10n;
      for (let step = 0; step > power; step--) under *= 10n;
      break;
    } else {
      over = over * 10n + BigInt(character);
      if (afterPoint) under *= 10n;
    }
  }
  return ratio(negative ? -over : over, under);
}

const METERS: Partial<Record<Unit, Ratio>> = {
  mm: ratio(1n, 1000n),
  cm: ratio(1n, 100n),
  m: ratio(1n, 1n),
  in: ratio(254n, 10_000n), // 25.4 mm
  ft: ratio(12n * 254n, 10_000n),
  yd: ratio(36n * 254n, 10_000n),
};
const POUND = ratio(45_359_237n, 100_000_000n); // kg
const GRAVITY = ratio(980_665n, 100_000n); // m/s²
const KILOGRAMS: Partial<Record<Unit, Ratio>> = {
  kg: ratio(1n, 1n),
  t: ratio(1000n, 1n),
  lb: POUND,
  'short-ton': times(POUND, ratio(2000n, 1n)),
  'long-ton': times(POUND, ratio(2240n, 1n)),
};
const NEWTONS: Partial<Record<Unit, Ratio>> = {
  N: ratio(1n, 1n),
  daN: ratio(10n, 1n),
  kN: ratio(1000n, 1n),
  kgf: GRAVITY,
  lbf: times(POUND, GRAVITY),
  kip: times(times(POUND, GRAVITY), ratio(1000n, 1n)),
};

function sizeOf({ value, unit }: QuantityLike): Ratio {
  const mass = KILOGRAMS[unit];
  const one = METERS[unit] ?? NEWTONS[unit] ?? times(mass!, GRAVITY);
  return times(fractionOf(String(value)), one);
}
const sumOf = (terms: readonly ExactTerm[]) =>
  terms
    .map(({ quantity, times: factors = [] }) =>
      factors.reduce((size, factor) => times(size, fractionOf(String(factor))), sizeOf(quantity)),
    )
    .reduce(plus, ratio(0n, 1n));

/** As callers have it: both sums as numbers in one unit, and the exact comparison for where they are close. */
function utilizationOf(demand: readonly ExactTerm[], capacity: readonly ExactTerm[]): number | null {
  const inOneUnit = (terms: readonly ExactTerm[]) => {
    const { over, under } = sumOf(terms);
    return Number((over * 10n ** 30n) / under) / 1e30;
  };
  return ratioOf(inOneUnit(demand), inOneUnit(capacity), () => compareExactSums(demand, capacity)).utilization;
}

describe('the thresholds of law, in every form they are written', () => {
  // Each pair is the same size by definition: 0.3048 m to the foot, 0.453 592 37 kg to the pound.
  const thresholds: [kind: Kind, metric: string, us: string][] = [
    ['length', '1.524 m', '5 ft'],
    ['length', '3.048 m', '10 ft'],
    ['length', '21.336 m', '70 ft'],
    ['mass', '4535.92370 kg', '10000 lb'],
    ['mass', '498.9516070 kg', '1100 lb'],
  ];

  test.each(thresholds)('%s: %s is %s', (kind, metric, us) => {
    const a = parseQuantity(metric, kind);
    const b = parseQuantity(us, kind);
    expect(compareExact(a, b)).toBe(0);
    expect(compareExact(b, a)).toBe(0);
    expect(compareExact({ ...a }, { ...b })).toBe(0);
    expect(utilizationOf([{ quantity: a }], [{ quantity: b }])).toBe(1);
  });

  test.each(thresholds)('%s: one double above and below %s and %s', (kind, metric, us) => {
    for (const [near, far] of [
      [parseQuantity(metric, kind), parseQuantity(us, kind)],
      [parseQuantity(us, kind), parseQuantity(metric, kind)],
    ] as const) {
      const above = quantity(justAbove(near.value), near.unit);
      const below = quantity(justBelow(near.value), near.unit);
      for (const [form, expected] of [
        [above, 1],
        [parseQuantity(String(above), kind), 1],
        [{ value: above.value, unit: above.unit }, 1],
        [below, -1],
        [parseQuantity(String(below), kind), -1],
        [{ value: below.value, unit: below.unit }, -1],
      ] as [QuantityLike, number][]) {
        expect(compareExact(form, far)).toBe(expected);
        expect(compareExact(far, form)).toBe(-expected);
      }
    }
  });

  it.each([
    ['10 ft 0 in', '3.048 m', 0],
    ['10 ft 0 in', '3048 mm', 0],
    ['10 ft 0 in', '304.8 cm', 0],
    ['9 ft 11 63/64 in', '3.048 m', -1],
    ['9 ft 11.999999999 in', '3.048 m', -1],
    ['10 ft 0.000000001 in', '3.048 m', 1],
    ['10 ft 1/64 in', '3.048 m', 1],
    ['5 ft 0 in', '1.524 m', 0],
    ['5 ft 0 in', '1.5240000001 m', -1],
    ['5 ft 0 in', '1.5239999999 m', 1],
    ['70 ft 0 in', '21.336 m', 0],
    ['70 ft 0 1/64 in', '21.336 m', 1],
    ['69 ft 11 63/64 in', '21.336 m', -1],
    ['5/16 in', '7.9375 mm', 0], // 25.4 × 5 / 16
    ['9/32 in', '7.14375 mm', 0], // 25.4 × 9 / 32
    ['3/8 in', '9.525 mm', 0],
    ['1/64 in', '0.396875 mm', 0],
    ['1 yd', '0.9144 m', 0],
  ])('%s beside %s: %d', (left, right, expected) => {
    const a = parseQuantity(left, 'length');
    const b = parseQuantity(right, 'length');
    expect(compareExact(a, b)).toBe(expected);
    expect(compareExact(b, a)).toBe(expected === 0 ? 0 : -expected);
  });

  it('decides where doubles alone would decide wrongly', () => {
    // 0.1 + 0.2 ft against 0.3 ft; as doubles the left is larger
    expect(compareExactSums([{ quantity: ft(0.1) }, { quantity: ft(0.2) }], [{ quantity: ft(0.3) }])).toBe(0);
    // a tenth of a foot, ten thousand times: the doubles add up to 1000.0000000001588
    expect(compareExactSums(Array(10_000).fill({ quantity: ft(0.1) }), [{ quantity: ft(1000) }])).toBe(0);
    // three tenths of a meter against a foot less 4.8 mm
    expect(compareExactSums([{ quantity: m(0.1), times: [3] }], [{ quantity: mm(300) }])).toBe(0);
    expect(compareExactSums([{ quantity: m(0.1), times: [3] }, { quantity: mm(4.8) }], [{ quantity: ft(1) }])).toBe(0);
  });
});

describe('sums', () => {
  const half = (quantity: QuantityLike): ExactTerm => ({ quantity, times: [0.5] });
  const whole = (quantity: QuantityLike): ExactTerm => ({ quantity });

  it('of nothing is zero', () => {
    expect(compareExactSums([], [])).toBe(0);
    expect(compareExactSums([whole(lb(1))], [])).toBe(1);
    expect(compareExactSums([], [whole(lb(1))])).toBe(-1);
    expect(compareExactSums([whole(lb(0))], [])).toBe(0);
  });

  it('with the half credit of a law: four tie-downs of 3150 lb at half against half of 12600 lb', () => {
    const credit = [lb(3150), lb(3150), lb(3150), lb(3150)].map(half);
    expect(compareExactSums(credit, [half(lb(12600))])).toBe(0);
    expect(compareExactSums(credit, [half(lb(justAbove(12600)))])).toBe(-1);
    expect(compareExactSums(credit, [half(lb(justBelow(12600)))])).toBe(1);
  });

  it('mix rated loads in mass and in force by standard gravity', () => {
    // 1 lb is 1 lbf; 1000 kg is 9.80665 kN
    expect(compareExactSums([whole(lb(4700))], [whole(lbf(4700))])).toBe(0);
    expect(compareExactSums([whole(kg(1000))], [whole(kN(9.80665))])).toBe(0);
    expect(compareExactSums([whole(kg(1000)), whole(lb(100))], [whole(kN(9.80665)), whole(lbf(100))])).toBe(0);
    expect(compareExactSums([whole(kg(1000)), whole(lb(100))], [whole(kN(justAbove(9.80665))), whole(lbf(100))])).toBe(
      -1,
    );
    // a kilogram-force is not a decanewton: 2000 kgf is 19.6133 kN, under 20 kN
    expect(compareExactSums([whole(quantity(2000, 'kgf'))], [whole(quantity(2000, 'daN'))])).toBe(-1);
  });

  it('take no other mixture', () => {
    expect(issueOf(() => compareExactSums([whole(lb(1))], [whole(ft(1))])).code).toBe('WRONG_KIND');
    expect(issueOf(() => compareExactSums([whole(lb(1)), whole(ft(1))], [])).code).toBe('WRONG_KIND');
    expect(issueOf(() => compareExact(lb(1), ft(1))).code).toBe('WRONG_KIND');
  });

  it('take no unit without an exact factor, near or far', () => {
    for (const value of [0, 1, 57.29577951308232, 1e9]) {
      expect(issueOf(() => compareExact(quantity(value, 'deg'), quantity(1, 'rad'))).code).toBe('WRONG_KIND');
      expect(issueOf(() => compareExact(quantity(value, 'percent-grade'), quantity(1, 'deg'))).code).toBe('WRONG_KIND');
    }
  });

  it('take no factor that is not a number', () => {
    for (const factor of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(issueOf(() => compareExactSums([{ quantity: lb(1), times: [factor] }], [])).code).toBe('NOT_FINITE');
    }
  });

  it('hold at sizes where doubles overflow or lose their digits', () => {
    expect(compareExactSums([{ quantity: m(1e300), times: [1e300] }], [{ quantity: m(1e300), times: [1.1e300] }])).toBe(
      -1,
    );
    expect(
      compareExactSums([{ quantity: m(1e-300), times: [1e-300] }], [{ quantity: m(1e-300), times: [1.1e-300] }]),
    ).toBe(-1);
    expect(compareExactSums([{ quantity: m(1.1e-320), times: [1e300] }], [{ quantity: m(1.1e-20) }])).toBe(0);
    expect(compareExact(m(5e-324), mm(5e-321))).toBe(0);
    expect(compareExact(m(1.7e308), ft(1.7e308))).toBe(1);
  });
});

describe('steps of 10 ft to cover a length', () => {
  const tenFeet = ft(10);
  it.each([
    ['0 ft', 0],
    ['0.000000001 in', 1],
    ['5 ft', 1],
    ['9 ft 11 63/64 in', 1],
    ['10 ft', 1],
    ['10 ft 0 in', 1],
    ['120 in', 1],
    ['3.048 m', 1],
    ['3048 mm', 1],
    ['3.0480000000000005 m', 2], // the next double
    ['10 ft 1/64 in', 2],
    ['16 ft 6 in', 2],
    ['20 ft', 2],
    ['6.096 m', 2],
    ['6.0961 m', 3],
    ['20.0000000001 ft', 3],
    ['9.144 m', 3],
    ['21.336 m', 7],
    ['70 ft', 7],
    ['21.3360000001 m', 8],
    ['304.8 m', 100],
    ['304.80000000001 m', 101],
  ])('%s: %d', (text, steps) => {
    expect(stepsToCover(parseQuantity(text, 'length'), tenFeet)).toBe(steps);
    expect(stepsToCover(parseQuantity(text, 'length'), m(3.048))).toBe(steps);
    expect(stepsToCover(parseQuantity(text, 'length'), inches(120))).toBe(steps);
  });

  it('one double above and below each of the first hundred', () => {
    for (let count = 1; count <= 100; count++) {
      const meters = Number(`${count * 3048}e-3`);
      expect(stepsToCover(m(meters), tenFeet)).toBe(count);
      expect(stepsToCover(m(justAbove(meters)), tenFeet)).toBe(count + 1);
      expect(stepsToCover(m(justBelow(meters)), tenFeet)).toBe(count);
      expect(stepsToCover(ft(justAbove(count * 10)), m(3.048))).toBe(count + 1);
      expect(stepsToCover(ft(justBelow(count * 10)), m(3.048))).toBe(count);
    }
  });

  it('refuses a step of nothing and a length below zero', () => {
    expect(issueOf(() => stepsToCover(ft(1), ft(0))).code).toBe('NOT_POSITIVE');
    expect(issueOf(() => stepsToCover(ft(-1), ft(10))).code).toBe('NEGATIVE');
  });
});

describe('against an independent comparison of ratios', () => {
  const lengthUnits = Object.keys(METERS) as Unit[];
  const loadUnits = [...Object.keys(KILOGRAMS), ...Object.keys(NEWTONS)] as Unit[];
  const decimal = fc
    .tuple(fc.nat({ max: 99_999_999 }), fc.integer({ min: 0, max: 8 }))
    .map(([digits, places]) => Number(`${digits}e-${places}`));
  const anyNumber = fc.oneof(decimal, fc.double({ min: 0, noNaN: true, noDefaultInfinity: true, max: 1e300 }));
  const quantityIn = (units: Unit[], number: fc.Arbitrary<number>) =>
    fc.tuple(number, fc.constantFrom(...units)).map(([value, unit]) => quantity(value, unit));

  it('two random quantities', () => {
    for (const units of [lengthUnits, loadUnits]) {
      fc.assert(
        fc.property(quantityIn(units, anyNumber), quantityIn(units, anyNumber), (a, b) => {
          expect(compareExactSums([{ quantity: a }], [{ quantity: b }])).toBe(order(sizeOf(a), sizeOf(b)));
        }),
        { numRuns: 2000 },
      );
    }
  });

  /** A quantity, and nearly or exactly the same in another unit: the nearest decimal of some digits, nudged by -1, 0 or 1. */
  const neighbours = (units: Unit[]) =>
    fc
      .tuple(
        quantityIn(units, decimal),
        fc.constantFrom(...units),
        fc.integer({ min: 3, max: 17 }),
        fc.constantFrom(-1, 0, 1),
      )
      .filter(([a]) => a.value > 0)
      .map(([a, unit, digits, nudge]) => {
        const size = sizeOf(a);
        const one = sizeOf({ value: 1, unit });
        const near = Number(
          (Number((size.over * one.under * 10n ** 20n) / (size.under * one.over)) / 1e20).toPrecision(digits),
        );
        const value = nudge === 0 ? near : nudge > 0 ? justAbove(near) : justBelow(near);
        return [a, quantity(Number.isFinite(value) && value > 0 ? value : 1, unit)] as const;
      });

  it('two quantities side by side', () => {
    for (const units of [lengthUnits, loadUnits]) {
      const seen = { '-1': 0, '0': 0, '1': 0 };
      fc.assert(
        fc.property(neighbours(units), ([a, b]) => {
          const expected = order(sizeOf(a), sizeOf(b)) as -1 | 0 | 1;
          seen[expected]++;
          expect(compareExactSums([{ quantity: a }], [{ quantity: b }])).toBe(expected);
          expect(compareExactSums([{ quantity: b }], [{ quantity: a }])).toBe(expected === 0 ? 0 : -expected);
        }),
        { numRuns: 3000 },
      );
      // the generator must reach all three answers, or it tests nothing
      expect(Math.min(...Object.values(seen))).toBeGreaterThan(50);
    }
  });

  const factor = fc.constantFrom(0.5, 0.25, 0.8, 0.3, 1, 2, 3.5, 1.25, 1e-3);
  const termIn = (units: Unit[]) =>
    fc.record({
      quantity: quantityIn(units, decimal),
      times: fc.array(factor, { maxLength: 3 }),
    }) as fc.Arbitrary<ExactTerm>;
  const sumIn = (units: Unit[]) => fc.array(termIn(units), { maxLength: 6 });

  it('sums, and sums beside their own parts in another order and unit', () => {
    for (const units of [lengthUnits, loadUnits]) {
      fc.assert(
        fc.property(sumIn(units), sumIn(units), quantityIn(units, decimal), (left, right, extra) => {
          expect(compareExactSums(left, right)).toBe(order(sumOf(left), sumOf(right)));
          expect(compareExactSums(left, [...left].reverse())).toBe(0);
          expect(compareExactSums([...left, { quantity: extra }], left)).toBe(extra.value > 0 ? 1 : 0);
          const halves = left.flatMap((term) => [
            { ...term, times: [...(term.times ?? []), 0.5] },
            { ...term, times: [...(term.times ?? []), 0.5] },
          ]);
          expect(compareExactSums(halves, left)).toBe(0);
        }),
        { numRuns: 1000 },
      );
    }
  });

  it('steps to cover: the least count whose steps reach the length', () => {
    fc.assert(
      fc.property(
        quantityIn(lengthUnits, decimal),
        quantityIn(lengthUnits, decimal),
        fc.nat({ max: 1000 }),
        fc.constantFrom(-1, 0, 1),
        (any, step, count, nudge) => {
          fc.pre(step.value > 0);
          const boundary = count * step.value;
          const near = quantity(
            nudge === 0 || boundary === 0 ? boundary : nudge > 0 ? justAbove(boundary) : justBelow(boundary),
            step.unit,
          );
          for (const length of [any, near]) {
            const { over, under } = times(sizeOf(length), ratio(sizeOf(step).under, sizeOf(step).over));
            const ceiling = over / under + (over % under === 0n ? 0n : 1n);
            fc.pre(ceiling < 2n ** 50n);
            expect(stepsToCover(length, step)).toBe(Number(ceiling));
          }
        },
      ),
      { numRuns: 3000 },
    );
  });

  it('utilization never contradicts the comparison', () => {
    const check = (demand: readonly ExactTerm[], capacity: readonly ExactTerm[]) => {
      const utilization = utilizationOf(demand, capacity);
      if (sumOf(capacity).over === 0n) {
        expect(utilization).toBe(null);
        return;
      }
      expect(Math.sign(utilization! - 1)).toBe(compareExactSums(demand, capacity));
      const { over, under } = times(sumOf(demand), ratio(sumOf(capacity).under, sumOf(capacity).over));
      const expected = Number((over * 10n ** 30n) / under) / 1e30;
      expect(Math.abs(utilization! - expected)).toBeLessThanOrEqual(1e-14 * Math.max(expected, 1e-15));
    };
    fc.assert(fc.property(sumIn(loadUnits), sumIn(loadUnits), check), { numRuns: 1000 });
    fc.assert(
      fc.property(neighbours(loadUnits), ([a, b]) => check([{ quantity: a }], [{ quantity: b }])),
      { numRuns: 2000 },
    );
  });
});

describe('utilization', () => {
  const of = (demand: QuantityLike, capacity: QuantityLike) =>
    utilizationOf([{ quantity: demand }], [{ quantity: capacity }]);

  it('is demand over capacity', () => {
    expect(of(lb(1575), lb(3150))).toBe(0.5);
    expect(of(lb(6300), lb(3150))).toBe(2);
    expect(of(lb(0), lb(3150))).toBe(0);
    expect(of(kg(4535.9237), lb(10000))).toBe(1);
    expect(of(kg(justAbove(4535.9237)), lb(10000))).toBeGreaterThan(1);
    expect(of(kg(justBelow(4535.9237)), lb(10000))).toBeLessThan(1);
  });

  it('is null without capacity', () => {
    expect(of(lb(1), lb(0))).toBe(null);
    expect(utilizationOf([{ quantity: lb(1) }], [])).toBe(null);
    expect(utilizationOf([], [])).toBe(null);
  });

  it('from two numbers asks the exact comparison only where rounding could decide', () => {
    const never = () => {
      throw new Error('asked');
    };
    expect(ratioOf(1, 2, never)).toEqual({ fits: true, utilization: 0.5 });
    expect(ratioOf(3, 2, never)).toEqual({ fits: false, utilization: 1.5 });
    expect(ratioOf(1.000001, 1, never)).toEqual({ fits: false, utilization: 1.000001 });
    expect(ratioOf(1, 0, never)).toEqual({ fits: false, utilization: null });
    expect(ratioOf(0, 0, never)).toEqual({ fits: true, utilization: null });
    // the exact order wins over a quotient on the wrong side of 1, and leaves one on the right side alone
    const [above, below] = [justAbove(1), justBelow(1)];
    for (const demand of [below, 1, above]) {
      expect(ratioOf(demand, 1, () => 0)).toEqual({ fits: true, utilization: 1 });
      expect(ratioOf(demand, 1, () => -1)).toEqual({ fits: true, utilization: below });
      expect(ratioOf(demand, 1, () => 1)).toEqual({ fits: false, utilization: above });
    }
  });

  it('refuses loads whose ratio no number holds', () => {
    expect(issueOf(() => ratioOf(1e300, 1e-300, () => 1)).code).toBe('NOT_FINITE');
  });
});
