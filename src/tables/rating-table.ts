import { fail } from '../errors.js';
import type { QuantityLike } from '../quantities/quantity.js';
import type { UnitSystem } from '../quantities/units.js';
import type { Provenance, SourceRef } from '../working/source.js';

/** A table generated from `reference-tables/`: its rows nested by its key columns, and where they come from. */
export interface GeneratedTable<Rows> {
  readonly source: SourceRef;
  readonly rows: Rows;
}

/**
 * The systems in which tie-downs are rated: WLL (North America), LC (EN 12195, Australia), MSL (IMO) and rated
 * strength (New Zealand); beside them the strength at which a thing breaks. They are different quantities, and none stands for another.
 */
export type CapacitySystem = (typeof CAPACITY_SYSTEMS)[number];

/**
 * Every {@link CapacitySystem}, for a form that asks which one is marked.
 *
 * @example
 * CAPACITY_SYSTEMS.includes('lashingCapacity')
 * // => true
 */
export const CAPACITY_SYSTEMS = [
  'workingLoadLimit',
  'lashingCapacity',
  'maximumSecuringLoad',
  'ratedStrength',
  'breakingStrength',
] as const;

/** One rated value. The two columns are separate roundings of the source, never conversions of each other. */
export interface RatedCell {
  readonly wll_lb: number;
  /** Left out where every answer is decided in pounds; the table in `reference-tables/` has it. */
  readonly wll_kg?: number;
  /** Set where the row's provenance differs from its table's. */
  readonly provenance?: Provenance;
  readonly wll_provenance?: Provenance;
  readonly wll_kg_provenance?: Provenance;
  readonly design_factor?: number;
  readonly minimum_breaking_force_lbf?: number;
}

/** One lashing capacity. */
export interface LashingCell {
  readonly lc_kn?: number;
  readonly lc_t?: number;
  readonly lc_provenance?: Provenance;
}

export type RatedRows = { readonly [size: string]: RatedCell };
export type ChainRows = {
  readonly [size: string]: { readonly [grade: number]: RatedCell & { readonly wll_kg: number } };
};
export type MarkRows = {
  readonly [mark: string]: { readonly grade: number; readonly provenance?: Provenance; readonly note?: string };
};

/** What parts in series are rated by: the capacities of one document and edition, in one system. */
export interface CapacityTable {
  readonly id: string;
  readonly title: string;
  readonly asOf: string;
  readonly system: CapacitySystem;
  /** Which column decides. */
  readonly units: UnitSystem;
  readonly chain: GeneratedTable<{ readonly [size: string]: { readonly [grade: string]: RatedCell | LashingCell } }>;
  /** The grade an unmarked chain counts as under this document; null where it counts as nothing. */
  readonly unmarkedChain: { readonly grade: number; readonly clause: string } | null;
  /** The parts that are no chain and have rows of their own; left out where the document is about chain alone. */
  readonly others?: { readonly [K in RowKind]?: FindRow };
}

/**
 * The working load limits of one document and edition, as an exported constant that the caller names. Sizes
 * and grades are inferred from it, so that a pair the table lacks does not compile.
 */
export interface RatingTable<Chain extends ChainRows = ChainRows> extends CapacityTable {
  readonly system: 'workingLoadLimit';
  readonly chain: GeneratedTable<Chain>;
  /** Where its chain is made and marked: each market has its own grade marks. */
  readonly market: 'north-america';
}

/** A document that rates nothing by its size: only the capacity in its system that is marked or stated counts. */
export function marksAlone(system: CapacitySystem, id = 'marks'): CapacityTable {
  const source = { document: 'The marks alone', provenance: 'common practice' } as const;
  return {
    id,
    title: 'Marks',
    asOf: '',
    system,
    units: 'si',
    chain: { source, rows: {} },
    unmarkedChain: null,
  };
}

/** Kinds of part, other than chain, that a document may list. */
export type RowKind = 'webbing' | 'wire-rope' | 'fiber-rope' | 'strapping';

/** The fields of a part that name its row. */
export type RowKey = 'size' | 'width' | 'thickness' | 'material';

/** What names the row of a part, and what its limit may follow from instead. */
export type RowFields = { readonly [Key in RowKey]?: string } & { readonly nominalStrength?: unknown };

/** What a table says of a part that is no chain. */
export interface FoundRow {
  readonly table: GeneratedTable<unknown>;
  /** The last key as the part states it; the row cannot be told without it. */
  readonly size: string | undefined;
  /** Left out where the table has no such row. */
  readonly cell?: RatedCell | undefined;
  /** What the part counts as because it does not say, and by which clause. */
  readonly unmarked?: { readonly as: string; readonly clause: string } | undefined;
  /** A share of its nominal strength, which counts before the row. */
  readonly share?: { readonly limit: QuantityLike; readonly source: SourceRef } | undefined;
}

/** How a table finds the row of a part. */
export type FindRow = (part: RowFields) => FoundRow;

/** The trade sizes of a rating table. */
export type SizeOf<T extends RatingTable> = keyof T['chain']['rows'] & string;

/** The grades a rating table has for a size. */
export type GradeOf<T extends RatingTable, Size> = Size extends keyof T['chain']['rows']
  ? keyof T['chain']['rows'][Size] & number
  : never;

/** A row of a table by its key, or undefined; inherited names such as `constructor` are not keys, nor is anything but text and numbers. */
export function rowOf<Row>(rows: { readonly [key: string | number]: Row }, key: string | number): Row | undefined {
  return (typeof key === 'string' || typeof key === 'number') && Object.hasOwn(rows, key) ? rows[key] : undefined;
}

/** The printed value of a cell, in the column of a unit system where the cell has it. */
export function printedRating({ wll_lb, wll_kg }: RatedCell, units: UnitSystem): QuantityLike<'lb' | 'kg'> {
  return units === 'us' || wll_kg === undefined ? { value: wll_lb, unit: 'lb' } : { value: wll_kg, unit: 'kg' };
}

/** The printed value of a cell of any system. */
export function printedCapacity(cell: RatedCell | LashingCell, units: UnitSystem): QuantityLike {
  if ('wll_lb' in cell) return printedRating(cell, units);
  const { lc_kn, lc_t } = cell;
  return lc_kn === undefined ? { value: lc_t as number, unit: 't' } : { value: lc_kn, unit: 'kN' };
}

/** The source of a cell: its table's, with the cell's own provenance where that differs. */
export function sourceOfCell(
  table: GeneratedTable<unknown>,
  cell: RatedCell | LashingCell,
  units: UnitSystem,
): SourceRef {
  const own = 'wll_lb' in cell ? provenanceOf(cell, units) : cell.lc_provenance;
  return own === undefined ? table.source : { ...table.source, provenance: own };
}

function provenanceOf({ provenance, wll_provenance, wll_kg_provenance }: RatedCell, units: UnitSystem) {
  return provenance ?? (units === 'us' ? wll_provenance : (wll_kg_provenance ?? wll_provenance));
}

/** The chain cell of a size and grade, or a typed error that says what the table does have. */
export function chainCell(ratings: RatingTable, size: string, grade: number): RatedCell {
  const { id, chain } = ratings;
  const grades = rowOf(chain.rows, size);
  const remedy = 'Nothing is interpolated: give the marked limit as markedWll.';
  if (grades === undefined) {
    return fail('UNKNOWN_SIZE', 'size', `a size of ${id}: ${Object.keys(chain.rows).join(', ')}`, size, remedy);
  }
  return (
    rowOf(grades, grade) ??
    fail(
      'NO_VALUE_IN_TABLE',
      'grade',
      `a grade that ${id} lists for ${size}: ${Object.keys(grades).join(', ')}`,
      grade,
      remedy,
    )
  );
}
