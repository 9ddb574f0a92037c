// What must hold of any kit, on invented cases.
import { describe, expect, it } from 'vitest';
import { buildKit, type KitInput, type KitItem } from '../../src/index.js';
import { random, randomCase, randomItems } from '../selection/random-kits.js';

const RANGE = { tieDowns: [1, 5], chains: [3, 12], fittings: [6, 24], mostCount: 5, limits: true } as const;
const CASES = 120;

function valueOfGoal(input: KitInput): number | null {
  const { totals } = buildKit(input);
  if (totals === null) return null;
  if (input.objective === 'mass') return totals.mass.value;
  return input.objective === 'price' ? totals.price : totals.parts;
}

function eachCase(seed: number, check: (input: KitInput, next: () => number, label: string) => void): void {
  const next = random(seed);
  for (let index = 0; index < CASES; index++) check(randomCase(next, RANGE).input, next, `case ${index}`);
}

describe('the optimum', () => {
  it('is never worse with one more item', () => {
    eachCase(3, (one, next, label) => {
      const { stockFirst: _, ...input } = one; // a limit on bought pieces may change with the catalog
      const before = valueOfGoal(input);
      const more = randomItems(next, { chains: 1, fittings: 1, mostCount: 5 }).map((item) => ({
        ...item,
        id: `one more ${item.id}`,
      }));
      const after = valueOfGoal({ ...input, catalog: [...input.catalog!, ...more] });
      if (before !== null) {
        expect(after, label).not.toBeNull();
        expect(after!, label).toBeLessThanOrEqual(before);
      }
    });
  });

  it('does not depend on the order of the catalog', () => {
    eachCase(4, (input, next, label) => {
      const shuffled = input
        .catalog!.map((item) => [next(), item] as const)
        .sort(([a], [b]) => a - b)
        .map(([, item]) => item);
      expect(valueOfGoal({ ...input, catalog: shuffled }), label).toBe(valueOfGoal(input));
    });
  });

  it('keeps its choice when all prices are four times as high', () => {
    eachCase(5, (input, _, label) => {
      const times4 = (item: KitItem) => ({ ...item, price: item.price! * 4 });
      const { limits } = input;
      const scaled: KitInput = {
        ...input,
        catalog: input.catalog!.map(times4),
        ...(limits && { limits: { ...limits, ...(limits.price !== undefined && { price: limits.price * 4 }) } }),
      };
      const [one, other] = [buildKit(input), buildKit(scaled)];
      expect(
        other.bill.map(({ source, id, pieces }) => [source, id, pieces]),
        label,
      ).toEqual(one.bill.map(({ source, id, pieces }) => [source, id, pieces]));
    });
  });

  it('by price is the same with all masses in kilograms', () => {
    eachCase(6, (input, _, label) => {
      const inKg = (item: KitItem): KitItem => ({
        ...item,
        mass: { value: (item.mass as { value: number }).value * 0.45359237, unit: 'kg' },
      });
      const { limits: __, ...free } = input;
      const metric = {
        ...free,
        objective: 'price' as const,
        catalog: input.catalog!.map(inKg),
        stock: input.stock!.map(inKg),
      };
      expect(valueOfGoal(metric), label).toBe(valueOfGoal({ ...free, objective: 'price' }));
    });
  });
});

describe('the bill', () => {
  it('is what the tie-downs are made of, and what it costs and weighs', () => {
    eachCase(7, (input, _, label) => {
      const kit = buildKit(input);
      if (kit.totals === null) return;
      const counted: Record<string, number> = {};
      for (const { items, spares } of kit.tieDowns) {
        for (const { source, id } of [...items, ...spares]) {
          counted[`${source} ${id}`] = (counted[`${source} ${id}`] ?? 0) + 1;
        }
      }
      expect(Object.fromEntries(kit.bill.map(({ source, id, pieces }) => [`${source} ${id}`, pieces])), label).toEqual(
        counted,
      );
      const cents = kit.bill.reduce((sum, { cost }) => sum + Math.round(cost! * 100), 0);
      expect(Math.round(kit.totals.price! * 100), label).toBe(cents);
      for (const { source, id, pieces } of kit.bill) {
        const { count } = input[source]!.find((item) => item.id === id)!;
        expect(pieces, label).toBeLessThanOrEqual(count!);
      }
      expect(kit.check!.verdict, label).toBe('pass');
      expect(JSON.parse(JSON.stringify(kit)).totals, label).toEqual(JSON.parse(JSON.stringify(kit.totals)));
    });
  });
});
