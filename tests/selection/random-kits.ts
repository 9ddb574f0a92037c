// Invented cases in whole pounds and whole cents, and every kit that there is for one, by plain enumeration. Nothing here
// comes from src/selection: ratings are typed from 49 CFR 393.108, hooks go with chain as the trade says (a grab hook takes
// its own size and its neighbors, a slip hook its own size and smaller).
import type { KitInput, KitItem, WantedTieDown } from '../../src/index.js';
import { us49cfr393_2024 } from '../../src/index.js';

/** A generator of numbers from 0 to 1 that is the same everywhere. */
export function random(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

const SIZES = ['1/4', '5/16', '3/8', '1/2'] as const;
/** In the order of their wire; 7/16 stands between the last two. */
const PLACES: Record<string, number> = { '1/4': 0, '5/16': 1, '3/8': 2, '1/2': 4 };
/** 49 CFR 393.108, lb, grades 43, 70 and 100. */
const RATINGS: Record<string, Record<number, number>> = {
  '1/4': { 43: 2600, 70: 3150, 100: 4300 },
  '5/16': { 43: 3900, 70: 4700, 100: 5700 },
  '3/8': { 43: 5400, 70: 6600, 100: 8800 },
  '1/2': { 43: 9200, 70: 11300, 100: 15000 },
};
const GRADES = [43, 70, 100] as const;

interface Case {
  readonly input: KitInput;
  readonly mass: number;
}

interface Range {
  readonly tieDowns: readonly [number, number];
  readonly chains: readonly [number, number];
  readonly fittings: readonly [number, number];
  readonly mostCount: number;
  readonly limits: boolean;
}

interface Wanted {
  readonly chains: number;
  readonly fittings: number;
  readonly mostCount: number;
  readonly withHooks?: boolean;
  readonly slip?: boolean;
  /** Prices to the cent and masses to the tenth of a pound, so that few items are equal in anything. */
  readonly fine?: boolean;
}

/** A catalog: chain, with a hook on it here and there, then binders and hooks. */
export function randomItems(
  next: () => number,
  { chains, fittings, mostCount, withHooks, slip, fine }: Wanted,
): KitItem[] {
  const whole = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  const one = <Item>(list: readonly Item[]): Item => list[whole(0, list.length - 1)] as Item;
  const price = () => ({ price: fine === true ? whole(500, 6000) / 100 : whole(5, 60) * (next() < 0.5 ? 1 : 0.25) });
  const pounds = (low: number, high: number) => ({
    mass: { value: fine === true ? whole(low * 10, high * 10) / 10 : whole(low, high), unit: 'lb' as const },
  });
  const count = () => whole(0, mostCount);
  const chain = (id: string): KitItem => ({
    id,
    kind: 'chain',
    size: one(SIZES),
    grade: one(GRADES),
    length: { value: one([10, 16, 20]), unit: 'ft' },
    ...pounds(8, 40),
    ...price(),
    count: count(),
    ...(withHooks === true && next() < 0.5 && { includes: ['grab-hook'] as const }),
  });
  const fitting = (id: string): KitItem =>
    next() < 0.45
      ? {
          id,
          kind: 'binder',
          chainSizes: one([['1/4', '5/16'], ['5/16', '3/8'], ['3/8', '1/2'], ['1/4']] as const),
          markedWll: { value: one([2200, 2600, 5400, 6600, 9200]), unit: 'lb' },
          ...pounds(3, 14),
          ...price(),
          count: count(),
        }
      : {
          id,
          kind: slip === true && next() < 0.5 ? 'slip-hook' : 'grab-hook',
          size: one(SIZES),
          grade: one(GRADES),
          ...pounds(1, 4),
          ...price(),
          count: count(),
        };
  const list = (make: (id: string) => KitItem, name: string, length: number) =>
    Array.from({ length }, (_, index) => make(`${name} ${index}`));
  return [...list(chain, 'chain', chains), ...list(fitting, 'fitting', fittings)];
}

export function randomCase(next: () => number, range: Range): Case {
  const whole = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  const one = <Item>(list: readonly Item[]): Item => list[whole(0, list.length - 1)] as Item;
  const slip = next() < 0.3;
  const fittings: NonNullable<WantedTieDown['fittings']> = one([
    ['binder', 'grab-hook'],
    ['binder'],
    ['binder', slip ? 'slip-hook' : 'grab-hook'],
    ['binder', 'grab-hook', 'grab-hook'],
  ]);
  const tieDownCount = whole(...range.tieDowns);
  const alike = next() < 0.5;
  const kind = { anchor: whole(2, 12) * 500, length: one([8, 12, 18]) };
  const tieDowns = Array.from({ length: tieDownCount }, (_, index): WantedTieDown => {
    const { anchor, length } = alike ? kind : { anchor: whole(2, 12) * 500, length: one([8, 12, 18]) };
    const over = next() < 0.3 && !alike;
    const accessory = index > 0 && next() < 0.2;
    return {
      id: `tie-down ${index}`,
      holds: accessory ? 'loader' : 'tractor',
      path: over ? 'over-other-side' : 'vehicle-to-cargo',
      chainLength: { value: length, unit: 'ft' },
      anchors: [
        { id: 'deck', kind: 'anchor', at: 'vehicle', markedWll: { value: anchor, unit: 'lb' } },
        { id: 'far', kind: 'anchor', at: over ? 'vehicle' : 'cargo', markedWll: { value: 6000, unit: 'lb' } },
      ],
      fittings,
      ...(next() < 0.15 && { spares: [one(['chain', 'binder'] as const)] }),
    };
  });
  const catalog = randomItems(next, {
    chains: whole(...range.chains),
    fittings: whole(...range.fittings),
    mostCount: range.mostCount,
    withHooks: next() < 0.3,
    slip,
  });
  const owned = catalog.filter(() => next() < 0.25).map(({ price: _, ...item }) => ({ ...item, count: whole(0, 2) }));
  const mass = whole(1, 12) * 500;
  const limits = {
    ...(next() < 0.4 && { price: whole(40, 300) }),
    ...(next() < 0.4 && { mass: { value: whole(30, 200), unit: 'lb' as const } }),
    ...(next() < 0.2 && { parts: whole(3, 12) }),
  };
  return {
    mass,
    input: {
      rules: us49cfr393_2024,
      articles: [
        {
          id: 'tractor',
          kind: 'general',
          mass: { value: mass, unit: 'lb' },
          // short and fastened by special methods: the number of tie-downs is not what these cases are about
          length: { value: 5, unit: 'ft' },
          specialMethods: true,
          accessories: [{ id: 'loader', lowered: true, locked: true }],
        },
      ],
      tieDowns,
      stock: owned,
      catalog,
      objective: one(['price', 'mass', 'parts'] as const),
      ...(range.limits && { limits }),
      ...(next() < 0.3 && { stockFirst: true }),
      working: false,
    },
  };
}

export const numberOf = (quantity: unknown): number => (quantity as { value: number }).value;
const place = (size: unknown): number => PLACES[size as string]!;

interface Option {
  readonly items: readonly number[];
  readonly rating: number;
}

export interface Row {
  readonly item: KitItem;
  readonly bought: boolean;
  readonly cents: number;
  readonly mass: number;
  readonly rating: number;
}

export function rowsOf({ stock = [], catalog = [] }: KitInput): Row[] {
  const row = (bought: boolean) => (item: KitItem) => ({
    item,
    bought,
    cents: bought ? Math.round((item.price as number) * 100) : 0,
    mass: numberOf(item.mass),
    rating: item.kind === 'binder' ? numberOf(item.markedWll) : (RATINGS[item.size!]![item.grade as number] as number),
  });
  return [...stock.map(row(false)), ...catalog.map(row(true))];
}

export function goesWith(fitting: KitItem, chain: KitItem): boolean {
  if (fitting.kind === 'binder') return fitting.chainSizes!.includes(chain.size!);
  const steps = place(chain.size) - place(fitting.size);
  return fitting.kind === 'grab-hook' ? Math.abs(steps) <= 1 : steps <= 0;
}

/** What a tie-down has beside its chain and its spare chains, for a chain with so much on it. */
export function slotsOf({ fittings = [], spares = [] }: WantedTieDown, chain: KitItem): string[] {
  const slots: string[] = [...fittings];
  for (const kind of chain.includes ?? []) if (slots.includes(kind)) slots.splice(slots.indexOf(kind), 1);
  return [...slots, ...spares.filter((kind) => kind !== 'chain')];
}

/** Every way to make one tie-down. */
function optionsOf(tieDown: WantedTieDown, rows: readonly Row[]): Option[] {
  const anchor = Math.min(...tieDown.anchors.map(({ markedWll }) => numberOf(markedWll)));
  return rows.flatMap((chain, at): Option[] => {
    if (chain.item.kind !== 'chain' || numberOf(chain.item.length) < numberOf(tieDown.chainLength)) return [];
    const chains = [at, ...(tieDown.spares ?? []).filter((kind) => kind === 'chain').map(() => at)];
    let options: Option[] = [{ items: chains, rating: Math.min(anchor, chain.rating) }];
    for (const kind of slotsOf(tieDown, chain.item)) {
      options = options.flatMap(({ items, rating }) =>
        rows.flatMap((row, index) =>
          row.item.kind === kind && goesWith(row.item, chain.item)
            ? [{ items: [...items, index], rating: Math.min(rating, row.rating) }]
            : [],
        ),
      );
    }
    return options;
  });
}

/** Twice the share of the rating that counts in the United States; an accessory's tie-down counts for no article. */
export const creditTwice = ({ path, holds }: WantedTieDown): number =>
  holds.startsWith('tractor') ? (path === 'over-other-side' ? 2 : 1) : 0;

export interface Totals {
  readonly bought: number;
  readonly cents: number;
  readonly mass: number;
  readonly parts: number;
}

/** The best of all kits by each objective in turn, found by looking at every one; null where none will do. */
export function bestOfAll({ input, mass }: Case, order: readonly (keyof Totals)[]): Totals | null {
  const rows = rowsOf(input);
  const options = input.tieDowns.map((tieDown) => optionsOf(tieDown, rows));
  const left = rows.map(({ item }) => item.count as number);
  const { price = Number.POSITIVE_INFINITY, parts: mostParts = Number.POSITIVE_INFINITY } = input.limits ?? {};
  const mostMass = input.limits?.mass === undefined ? Number.POSITIVE_INFINITY : numberOf(input.limits.mass);
  let best: Totals | null = null;
  const look = (tieDown: number, twice: number, totals: Totals): void => {
    if (tieDown === options.length) {
      // sum(credit · WLL) ≥ 0.5 · W, times two
      if (twice < mass) return;
      if (totals.cents > price * 100 || totals.mass > mostMass || totals.parts > mostParts) return;
      const better = best === null ? -1 : order.map((key) => totals[key] - best![key]).find((gap) => gap !== 0);
      if (better !== undefined && better < 0) best = totals;
      return;
    }
    for (const { items, rating } of options[tieDown]!) {
      let enough = true;
      let { bought, cents, mass: weight, parts } = totals;
      for (const item of items) {
        left[item]!--;
        if (left[item]! < 0) enough = false;
        const row = rows[item]!;
        bought += row.bought ? 1 : 0;
        cents += row.cents;
        weight += row.mass;
        parts++;
      }
      if (enough) {
        look(tieDown + 1, twice + creditTwice(input.tieDowns[tieDown]!) * rating, {
          bought,
          cents,
          mass: weight,
          parts,
        });
      }
      for (const item of items) left[item]!++;
    }
  };
  look(0, 0, { bought: 0, cents: 0, mass: 0, parts: 0 });
  return best;
}

/** What a case asks to be made small, in turn. */
export function orderOf({ objective, stockFirst }: KitInput): (keyof Totals)[] {
  const first: (keyof Totals)[] = stockFirst === true ? ['bought'] : [];
  return [
    ...first,
    ...({ price: ['cents', 'mass'], mass: ['mass', 'cents'], parts: ['parts', 'cents'] } as const)[objective],
  ];
}
