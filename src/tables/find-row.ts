import { checkOneOf } from '../input-checks.js';
import { decimalProduct } from '../quantities/decimal.js';
import { readPositive } from '../quantities/read.js';
import {
  type FindRow,
  type FoundRow,
  type GeneratedTable,
  type RatedCell,
  type RatedRows,
  type RowKey,
  rowOf,
} from './rating-table.js';

/** Where a kind of part has its rows, and how they are found. */
interface KeyedRows {
  readonly table: GeneratedTable<RatedRows | { readonly [key: string]: RatedRows }>;
  /** The fields of the part that are the keys of its table, in the table's order. */
  readonly keys: readonly [RowKey, ...RowKey[]];
  /** What the first of them counts as where it is not known, and the clause that says so. */
  readonly firstUnknown?: { readonly as: string; readonly clause: string };
  /** The share of its nominal strength that counts where its construction is known and its limit is not marked. */
  readonly shareOfStrength?: GeneratedTable<{
    readonly 'wire-rope': { readonly WLL: { readonly fraction: number } };
  }>;
}

/** Webbing, rope and strapping by their row. The last key must be known; the table may say what stands for the first. */
export function byKeys({ table, keys, firstUnknown, shareOfStrength }: KeyedRows): FindRow {
  return (part) => {
    const values = keys.map((key) => part[key]);
    const unmarked = values[0] === undefined ? firstUnknown : undefined;
    if (unmarked !== undefined) values[0] = unmarked.as;
    if (firstUnknown !== undefined) checkOneOf(values[0], Object.keys(table.rows), keys[0]);
    let share: FoundRow['share'];
    if (shareOfStrength !== undefined && part.nominalStrength !== undefined) {
      const { value, unit } = readPositive(part.nominalStrength, 'force', 'nominalStrength');
      const { fraction } = shareOfStrength.rows['wire-rope'].WLL;
      share = { limit: { value: decimalProduct(value, fraction), unit }, source: shareOfStrength.source };
    }
    let row: unknown = table.rows;
    for (const value of values) row = rowOf((row ?? NO_ROWS) as Rows, value ?? '');
    return { table, size: values.at(-1), cell: row as RatedCell | undefined, unmarked, share };
  };
}

type Rows = { readonly [key: string]: unknown };
const NO_ROWS = {};
