import { type AnyGrade, checkChain, isTradeSize, type TradeSize } from '../chain/trade-size.js';
import { fail, failAt, RiggingError, type RiggingIssue } from '../errors.js';
import { checkList, checkObject, checkOneOf } from '../input-checks.js';
import type { QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { readOptional, readPositive } from '../quantities/read.js';

/** What a kit is made of beside chain. */
export const FITTING_KINDS = [
  'binder',
  'turnbuckle',
  'grab-hook',
  'slip-hook',
  'connecting-link',
  'clevis',
  'master-link',
  'shackle',
] as const;

/** A part of a kit beside chain. */
export type FittingKind = (typeof FITTING_KINDS)[number];

/** A part of a kit. */
export type KitKind = 'chain' | FittingKind;

/** One row of a catalog, or of what somebody owns. */
export interface KitItem {
  /** Unique in its list. */
  readonly id: string;
  readonly kind: KitKind;
  /** Of chain, hooks, connecting links and clevises: the trade size. */
  readonly size?: TradeSize;
  readonly grade?: AnyGrade;
  /** Of a binder or turnbuckle: the sizes of chain that its maker says it takes. */
  readonly chainSizes?: readonly TradeSize[];
  /** The working load limit that is marked on it. Binders, turnbuckles, shackles and master links have no other rating. */
  readonly markedWll?: QuantityInput<'ratedLoad'>;
  /** Of chain: the length of one piece, as sold. */
  readonly length?: QuantityInput<'length'>;
  /** Of chain that is sold with fittings on it: which, each of the size, grade and mark of the chain. */
  readonly includes?: readonly FittingKind[];
  /** Of one piece. */
  readonly mass: QuantityInput<'mass'>;
  /** Of one piece, in its currency: 39.95, or 3995 where the caller counts in cents. What is owned costs nothing. */
  readonly price?: number;
  readonly currency?: string;
  /** How many pieces there are. Left out of a catalog: as many as are asked for. */
  readonly count?: number;
}

/** What is wrong with a row. */
export interface ItemFault extends RiggingIssue {
  /** The row, counted from 1; of CSV the first row is the one with the names. */
  readonly row: number;
}

/** Where an item comes from. */
export type ItemSource = 'stock' | 'catalog';

/** A row that was read. */
export interface ReadItem {
  readonly item: KitItem;
  readonly source: ItemSource;
  readonly mass: QuantityLike;
  readonly length: QuantityLike | undefined;
  /** Of one piece; 0 for what is owned, undefined where it is not stated. */
  readonly price: number | undefined;
  /** Infinite where there are as many as are asked for. */
  readonly count: number;
}

/** Prices beyond it would not add up exactly. */
export const MOST_PRICE = 1e9;
/** A price in ten thousandths is the finest that anybody writes. */
const PRICE_DECIMALS = 4;
/** Prices as whole numbers, so that sums of them are exact. */
export const PRICE_SCALE = 10_000;

const CHAIN_LIKE: readonly string[] = ['chain', 'grab-hook', 'slip-hook', 'connecting-link', 'clevis'];
const TAKES_CHAIN: readonly string[] = ['binder', 'turnbuckle'];

/** Rows that can be used, and everything that is wrong with the others. */
export interface ReadItems {
  readonly items: readonly ReadItem[];
  readonly faults: readonly ItemFault[];
}

/** Reads a list of items row by row; every fault is reported, and the rows without one are returned. */
export function readItems(
  list: readonly KitItem[],
  source: ItemSource,
  needs: { readonly currency: string | undefined; readonly prices: boolean },
): ReadItems {
  checkList(list, source, 0);
  const items: ReadItem[] = [];
  const faults: ItemFault[] = [];
  const ids = new Set<string>();
  const currency = needs.currency ?? list.find((item) => item?.price !== undefined)?.currency;
  for (let index = 0; index < list.length; index++) {
    const before = faults.length;
    const check = <Read>(read: () => Read): Read | undefined => {
      try {
        return read();
      } catch (error) {
        if (!(error instanceof RiggingError)) throw error;
        faults.push({ ...at(`${source}[${index}]`, error), row: index + 1 });
        return undefined;
      }
    };
    const item = list[index] as KitItem;
    if (check(() => checkObject(item, '', 'an item { id, kind, mass }') ?? true) === undefined) continue;
    check(() => checkId(item.id, ids));
    check(() => checkOneOf(item.kind, item.kind === 'chain' ? ['chain'] : FITTING_KINDS, 'kind'));
    check(() => checkSizes(item));
    check(() => readOptional(item.markedWll, 'ratedLoad', 'markedWll'));
    check(() => checkIncludes(item));
    const length = check(() =>
      item.kind === 'chain'
        ? readPositive(item.length, 'length', 'length')
        : readOptional(item.length, 'length', 'length'),
    );
    const mass = check(() => readPositive(item.mass, 'mass', 'mass'));
    const count = check(() => readCount(item.count, source));
    const price = source === 'stock' ? 0 : check(() => readPrice(item, currency, needs.prices));
    if (faults.length === before && mass !== undefined && count !== undefined) {
      items.push({ item, source, mass, length, price, count });
    }
  }
  return { items, faults };
}

function at(place: string, error: RiggingError): RiggingIssue {
  try {
    return failAt(place, error);
  } catch (placed) {
    return (placed as RiggingError).toJSON();
  }
}

function checkId(id: unknown, taken: Set<string>): void {
  if (typeof id !== 'string' || id === '') fail('MISSING_FIELD', 'id', 'a name', id, 'Results name it by its id.');
  if (taken.has(id)) fail('DUPLICATE_ID', 'id', 'an id used once in its list', id, 'Rename one of the two.');
  taken.add(id);
}

function checkSizes({ kind, size, grade, chainSizes }: KitItem): void {
  if (CHAIN_LIKE.includes(kind) && size === undefined) {
    fail('MISSING_FIELD', 'size', "a trade size such as '5/16'", size, 'Give its size.');
  }
  checkChain(size ?? '1/4', grade);
  if (chainSizes === undefined && !TAKES_CHAIN.includes(kind)) return;
  checkList(chainSizes, 'chainSizes');
  chainSizes?.forEach((each, index) => {
    const path = `chainSizes[${index}]`;
    if (!isTradeSize(each)) fail('UNKNOWN_SIZE', path, "a trade size such as '5/16'", each, 'As the maker marks it.');
  });
}

function checkIncludes({ kind, includes }: KitItem): void {
  if (includes === undefined) return;
  checkList(includes, 'includes', 0);
  if (kind !== 'chain' && includes.length > 0) {
    fail('CONFLICTING_FIELDS', 'includes', 'fittings on a chain', kind, 'Only chain is sold with fittings on it.');
  }
  includes.forEach((each, index) => {
    checkOneOf(each, FITTING_KINDS, `includes[${index}]`);
  });
}

function readCount(count: unknown, source: ItemSource): number {
  if (count === undefined && source === 'catalog') return Number.POSITIVE_INFINITY;
  if (Number.isSafeInteger(count) && (count as number) >= 0) return count as number;
  const code = count === undefined ? 'MISSING_FIELD' : 'NOT_A_WHOLE_NUMBER';
  return fail(code, 'count', 'how many pieces, 0 or more', count, 'Count them.');
}

function readPrice({ price, currency }: KitItem, wanted: string | undefined, needed: boolean): number | undefined {
  if (price === undefined) {
    return needed
      ? fail('MISSING_FIELD', 'price', 'a price of one piece', price, 'Give it, or leave the row out.')
      : undefined;
  }
  if (!Number.isFinite(price)) fail('NOT_FINITE', 'price', 'a price of one piece', price, 'Give a plain number.');
  if (price < 0) fail('NEGATIVE', 'price', 'a price of 0 or more', price, 'Check the sign.');
  if (price > MOST_PRICE) fail('TOO_LARGE', 'price', `at most ${MOST_PRICE}`, price, 'Check the number.');
  if (Math.round(price * PRICE_SCALE) / PRICE_SCALE !== price) {
    fail('TEXT_TOO_PRECISE', 'price', `at most ${PRICE_DECIMALS} decimals`, price, 'Round the price of one piece.');
  }
  if (currency !== undefined) checkCurrency(currency);
  if (currency !== wanted) {
    const code = currency === undefined ? 'MISSING_FIELD' : 'CONFLICTING_FIELDS';
    fail(code, 'currency', wanted ?? 'no currency, as the rows before', currency, 'A kit is priced in one currency.');
  }
  return price;
}

function checkCurrency(currency: unknown): void {
  if (typeof currency === 'string' && currency !== '') return;
  fail('UNKNOWN_VALUE', 'currency', "a currency such as 'USD'", currency, 'Leave it out where all prices are in one.');
}
