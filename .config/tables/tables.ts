/** Reads a folder of reference-tables/ and renders its modules. The command line is generate.ts. */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';
import { z } from 'zod';

const root = fileURLToPath(new URL('../..', import.meta.url));
export const tablesFolder = join(root, 'reference-tables');
export const generatedFolder = join(root, 'src/tables/generated');

const text = z.string().trim().min(1);
export const provenanceWords = ['read', 'memory', 'computed', 'derived', 'common practice', 'interpretation'] as const;
const provenanceWord = z.enum(provenanceWords);
/** The printed text of the key cells that pick one row. */
const rowKey = z.record(text, text);
const exceptions = z.array(z.strictObject({ row: rowKey, because: text })).default([]);

const invariant = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('row count'), rows: z.int().positive() }),
  /** Every combination of the key values has a row. */
  z.strictObject({ kind: z.literal('full grid') }),
  /** The column rises along one key, the other keys held. `orEqual`: it never falls. */
  z.strictObject({
    kind: z.literal('rises'),
    column: text,
    along: text,
    orEqual: z.boolean().default(false),
    exceptions,
  }),
  /** The two columns are roundings of one figure: they meet within half a printed step each. */
  z.strictObject({
    kind: z.literal('same load'),
    lb: text,
    kg: text,
    lbStep: z.number().positive(),
    kgStep: z.number().positive(),
    exceptions,
  }),
  z.strictObject({ kind: z.literal('product'), factors: z.array(text).min(2), equals: text }),
  /** From left to right the columns rise; blank cells are skipped. */
  z.strictObject({ kind: z.literal('in order'), columns: z.array(text).min(2), orEqual: z.boolean().default(false) }),
  z.strictObject({ kind: z.literal('within'), column: text, min: z.number(), max: z.number() }),
  z.strictObject({ kind: z.literal('one of'), column: text, values: z.array(z.string()).min(1) }),
]);
export type Invariant = z.infer<typeof invariant>;

export const sourceSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  title: text,
  document: text,
  publisher: text,
  edition: text,
  clause: text,
  asOf: z.string().regex(/^\d{4}(-\d{2}-\d{2})?$/),
  accessed: z.enum(['read', 'read in a page quoting it', 'from memory']),
  /** Holds for every cell that no provenance column says otherwise about. */
  provenance: provenanceWord,
  note: text.optional(),
  rights: text,
  key: z.array(text).min(1),
  /** The first key column, where each of its values gets a module of its own: a caller that names one carries no other. */
  splitBy: text.optional(),
  between: z.enum(['refuse', 'next lower']),
  outside: z.literal('refuse'),
  columns: z.record(
    text,
    z.strictObject({
      type: z.enum(['text', 'number']),
      unit: text.optional(),
      meaning: text,
      may_be_blank: z.boolean().optional(),
      /** Our own words, no figure of the source: the second entry need not repeat them. */
      prose: z.boolean().optional(),
      /** Where a whole column stands on other ground than the table. */
      provenance: provenanceWord.optional(),
    }),
  ),
  enteredBy: text,
  secondEntryBy: text,
  knownMisprints: z.array(text),
  corrections: z.array(text),
  rowsSha256: z.string().regex(/^[0-9a-f]{64}$/),
  spotCells: z.array(z.strictObject({ row: rowKey, column: text, printed: z.string() })).min(1),
  invariants: z.array(invariant),
  /** The modules of the table; without it, one of all its columns. */
  modules: z
    .array(
      z.strictObject({
        file: text,
        columns: z.array(text).min(1),
        provenance: provenanceWord.optional(),
        /** Where the note is about some columns only. */
        note: text.optional(),
      }),
    )
    .optional(),
  /** Columns that nothing computes with: they stay out of every module. */
  leftOut: z.array(text).default([]),
  /** The rows carry their clauses, and the code cites those: the module leaves the source out. */
  citedByClause: z.boolean().default(false),
});
type Source = z.infer<typeof sourceSchema>;

export type Row = Readonly<Record<string, string>>;
export interface Csv {
  readonly header: readonly string[];
  readonly rows: readonly Row[];
}
export interface Table extends Csv {
  readonly source: Source;
  /** The hash of table.csv as it stands. */
  readonly sha256: string;
}

/** Folder names of the tables that have been entered. */
export function tableIds(): string[] {
  return readdirSync(tablesFolder)
    .filter((name) => existsSync(join(tablesFolder, name, 'table.csv')))
    .sort();
}

export function readCsv(file: string): Csv {
  const lines: string[][] = parse(readFileSync(file, 'utf8'), { relax_column_count: false });
  const header = lines[0] ?? [];
  const rows = lines.slice(1).map((cells) => Object.fromEntries(header.map((name, i) => [name, cells[i] ?? ''])));
  return { header, rows };
}

export function readTable(id: string): Table {
  const file = join(tablesFolder, id, 'table.csv');
  const source = sourceSchema.parse(JSON.parse(readFileSync(join(tablesFolder, id, 'source.json'), 'utf8')));
  return { ...readCsv(file), source, sha256: createHash('sha256').update(readFileSync(file)).digest('hex') };
}

export const isProvenanceColumn = (name: string): boolean => /(^|_)provenance$/.test(name);

function camelCase(file: string): string {
  return file.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
}

function quote(value: string): string {
  return `'${value.replace(/\\/g, '\\\\').replace(/'/g, "\\'")}'`;
}

type Tree = Map<string, Tree | string>;

function renderTree(tree: Tree, indent: string): string {
  let out = '{\n';
  for (const [key, branch] of tree) {
    out += `${indent}  ${key}: ${typeof branch === 'string' ? branch : renderTree(branch, `${indent}  `)},\n`;
  }
  return `${out}${indent}}`;
}

/** The tables that a table is split into, each with the rest of the key; itself where it is not split. */
export function partsOf(table: Table): Table[] {
  const { source, rows } = table;
  const [first = '', ...key] = source.key;
  if (source.splitBy === undefined) return [table];
  if (source.splitBy !== first) throw new Error(`${source.id}: a table is split by its first key, ${first}`);
  const header = table.header.filter((name) => name !== first);
  return [...new Set(rows.map((row) => row[first]))].map((value) => ({
    ...table,
    header,
    rows: rows.filter((row) => row[first] === value),
    source: { ...source, key, modules: [{ file: `${source.id}-${value}`, columns: valueColumns({ header, source }) }] },
  }));
}

function valueColumns({ header, source }: Pick<Table, 'header' | 'source'>): string[] {
  return header.filter((name) => !source.key.includes(name) && !source.leftOut.includes(name));
}

/** File name (without .ts) and text of each module of a table. */
export function renderModules(whole: Table): { file: string; code: string }[] {
  return partsOf(whole).flatMap(renderPart);
}

function renderPart(table: Table): { file: string; code: string }[] {
  const { source, rows } = table;
  const modules: NonNullable<Source['modules']> = source.modules ?? [{ file: source.id, columns: valueColumns(table) }];
  return modules.map((module) => {
    const provenance = module.provenance ?? source.provenance;
    const literal = (name: string, cell: string): string =>
      source.columns[name]?.type === 'number' ? String(Number(cell)) : quote(cell);

    const tree: Tree = new Map();
    for (const row of rows) {
      const cells = module.columns.filter(
        (name) => row[name] !== '' && !(isProvenanceColumn(name) && row[name] === provenance),
      );
      if (cells.every(isProvenanceColumn)) continue;
      const leaf = `{ ${cells.map((name) => `${name}: ${literal(name, row[name] ?? '')}`).join(', ')} }`;
      let branch = tree;
      source.key.forEach((name, depth) => {
        const key = literal(name, row[name] ?? '');
        if (depth === source.key.length - 1) {
          branch.set(key, leaf);
        } else {
          const next = branch.get(key);
          const child: Tree = next instanceof Map ? next : new Map();
          branch.set(key, child);
          branch = child;
        }
      });
    }

    const fields = { document: source.document, edition: source.edition, clause: source.clause, provenance };
    const note = module.note ?? source.note;
    const sourceLines = Object.entries(note ? { ...fields, note } : fields).map(
      ([name, value]) => `    ${name}: ${quote(value)},\n`,
    );
    const ofColumns = module.columns.flatMap((name) => {
      const word = source.columns[name]?.provenance;
      return word && word !== provenance ? [`${name}: ${quote(word)}`] : [];
    });
    if (ofColumns.length > 0) sourceLines.push(`    columnProvenance: { ${ofColumns.join(', ')} },\n`);

    const code = [
      `// Generated from reference-tables/${source.id} by \`npm run tables\`. Do not edit.\n`,
      `export const ${camelCase(module.file)} = {\n`,
      source.citedByClause ? '' : `  source: {\n${sourceLines.join('')}  },\n`,
      `  rows: ${renderTree(tree, '  ')},\n`,
      '} as const;\n',
    ].join('');
    return { file: module.file, code };
  });
}
