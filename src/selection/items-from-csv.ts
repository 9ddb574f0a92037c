import { CHAIN_GRADES, type ChainGrade } from '../chain/trade-size.js';
import { describe, fail, type RiggingErrorCode } from '../errors.js';
import { checkObject, checkOneOf } from '../input-checks.js';
import { recordsOf } from './csv.js';
import { type ItemFault, type ItemSource, type KitItem, readItems } from './kit-item.js';

/** Items read from a text, and everything that is wrong with the rows that are not among them. */
export interface ItemsFromCsv {
  readonly items: readonly KitItem[];
  readonly faults: readonly ItemFault[];
}

/** A text of ten thousand rows has about a million characters. */
const MOST_CHARACTERS = 20_000_000;
const COLUMNS = [
  'id',
  'kind',
  'size',
  'grade',
  'chainSizes',
  'markedWll',
  'length',
  'includes',
  'mass',
  'price',
  'currency',
  'count',
] as const satisfies readonly (keyof KitItem)[];

type Column = (typeof COLUMNS)[number];

/**
 * Reads a catalog or a stock list from CSV text (RFC 4180): the rows that are in order, and every fault of the others with
 * its row, as a spreadsheet counts them.
 *
 * The first row names the columns, which are the fields of an item: `id`, `kind` and `mass` must be there, `size`, `grade`,
 * `chainSizes`, `markedWll`, `length`, `includes`, `price`, `currency` and `count` may be. An empty cell is a field left
 * out. Quantities are text with their unit (`21 lb`), several sizes or fittings stand in one cell with a semicolon
 * between (`5/16;3/8`), numbers are plain (`1234.50`).
 *
 * @param input.text the whole text; it is not read from anywhere
 * @param input.source `'catalog'` or `'stock'`, whose rows need a count
 * @param input.currency the currency wanted; omitted: that of the first price
 * @param input.prices true where every row of a catalog needs a price
 * @throws RiggingError `MISSING_FIELD` (no text), `TEXT_TOO_LONG` (20 million characters); whatever is wrong inside the text
 * is returned
 * @example
 * const { items, faults } = itemsFromCsv({
 *   source: 'catalog',
 *   text: `id,kind,size,grade,length,mass,price
 * chain,chain,5/16,70,20 ft,21 lb,52
 * hook,grab-hook,5/16,70,,"1,5 lb",4.20`,
 * });
 * console.log(items.length, faults.map(({ row, path, code }) => `row ${row}, ${path}: ${code}`));
 * // => 1 [ 'row 3, mass: AMBIGUOUS_NUMBER' ]
 */
export function itemsFromCsv(input: {
  readonly text: string;
  readonly source: ItemSource;
  readonly currency?: string;
  readonly prices?: boolean;
}): ItemsFromCsv {
  checkObject(input, '', '{ text, source }');
  const { text, source, currency, prices = false } = input;
  if (typeof text !== 'string') fail('MISSING_FIELD', 'text', 'the text of a CSV file', text, 'Give its content.');
  if (text.length > MOST_CHARACTERS) {
    fail('TEXT_TOO_LONG', 'text', `at most ${MOST_CHARACTERS} characters`, text.length, 'Read it in parts.');
  }
  checkOneOf(source, ['catalog', 'stock'], 'source');
  const faults: ItemFault[] = [];
  const rows: { readonly row: number; readonly item: KitItem }[] = [];
  let columns: readonly (Column | undefined)[] | undefined;
  for (const { row, cells, malformed } of recordsOf(text)) {
    if (cells.length === 1 && cells[0]?.trim() === '' && !malformed) continue; // an empty line
    if (columns === undefined) {
      columns = readHeader(cells, faults);
      continue;
    }
    const expected = columns.length;
    if (malformed) {
      const marks = 'a quotation mark within quotation marks, doubled';
      faults.push(faultOf(row, '', 'UNKNOWN_VALUE', marks, 'one by itself', 'Put the cell into marks.'));
    } else if (cells.length !== expected) {
      const remedy = 'A comma inside a cell needs quotation marks around it.';
      faults.push(
        faultOf(row, '', 'CONFLICTING_FIELDS', `${expected} cells, as in the first row`, cells.length, remedy),
      );
    } else {
      const before = faults.length;
      const item = readCells(cells, columns, row, faults);
      if (faults.length === before) rows.push({ row, item });
    }
  }
  if (columns === undefined) {
    faults.push(
      faultOf(1, '', 'EMPTY_LIST', 'a first row that names the columns', 'none', `Write ${COLUMNS.join(',')}.`),
    );
  }
  const read = readItems(
    rows.map(({ item }) => item),
    source,
    { currency, prices },
  );
  for (const { row, path, ...issue } of read.faults) {
    const field = path.replace(/^\w+\[\d+\]\.?/, '');
    faults.push({ ...issue, path: field, row: rows[row - 1]?.row as number });
  }
  return { items: read.items.map(({ item }) => item), faults: faults.sort((a, b) => a.row - b.row) };
}

function faultOf(
  row: number,
  path: string,
  code: RiggingErrorCode,
  expected: string,
  received: unknown,
  remedy: string,
): ItemFault {
  return { code, path, expected, received: describe(received), remedy, row };
}

function readHeader(cells: readonly string[], faults: ItemFault[]): (Column | undefined)[] {
  const columns = cells.map((cell, index) => {
    const name = cell.trim();
    const column = COLUMNS.find((each) => each === name);
    if (column === undefined) {
      faults.push(faultOf(1, name, 'UNKNOWN_FIELD', `one of ${COLUMNS.join(', ')}`, name, 'The column is left out.'));
    } else if (cells.findIndex((each) => each.trim() === name) < index) {
      faults.push(faultOf(1, name, 'DUPLICATE_ID', 'a column named once', name, 'The first one counts.'));
      return undefined;
    }
    return column;
  });
  for (const needed of ['id', 'kind', 'mass'] as const) {
    if (!columns.includes(needed)) {
      faults.push(faultOf(1, needed, 'MISSING_FIELD', `a column ${needed}`, undefined, 'Add it.'));
    }
  }
  return columns;
}

function readCells(
  cells: readonly string[],
  columns: readonly (Column | undefined)[],
  row: number,
  faults: ItemFault[],
): KitItem {
  const item: { [Key in Column]?: unknown } = {};
  columns.forEach((column, index) => {
    const cell = (cells[index] as string).trim();
    if (column === undefined || cell === '') return;
    if (column === 'price' || column === 'count') {
      if (/^-?\d{1,15}(\.\d{1,15})?$/.test(cell)) item[column] = Number(cell);
      else faults.push(faultOf(row, column, 'AMBIGUOUS_NUMBER', 'a plain number', cell, 'Write 1234.50.'));
    } else if (column === 'grade') item.grade = gradeOf(cell);
    else if (column === 'chainSizes' || column === 'includes')
      item[column] = cell.split(';').map((each) => each.trim());
    else item[column] = cell;
  });
  return item as unknown as KitItem;
}

/** A grade of chain is a number, a European class stays text; what is neither is left for the reader of items to refuse. */
function gradeOf(cell: string): unknown {
  return CHAIN_GRADES.includes(Number(cell) as ChainGrade) ? Number(cell) : cell;
}
