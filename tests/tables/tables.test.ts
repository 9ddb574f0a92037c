// One harness for every folder of reference-tables. A table that needs a rule of its own declares it in
// its source.json; a rule that needs a second source stands in cross-checks.test.ts.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  generatedFolder,
  type Invariant,
  isProvenanceColumn,
  partsOf,
  provenanceWords,
  type Row,
  readCsv,
  readTable,
  renderModules,
  sourceSchema,
  type Table,
  tablesFolder,
} from '../../.config/tables/tables.js';
import { amount } from './amount.js';

const folders = readdirSync(tablesFolder, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

const KG_PER_LB = 0.45359237; // exact by definition

const cell = (row: Row, column: string): string => {
  const value = row[column];
  if (value === undefined) throw new Error(`no column ${column}`);
  return value;
};
const number = (row: Row, column: string): number => amount(cell(row, column));
const nameOf = (row: Row, key: readonly string[]): string => key.map((name) => `${name} ${cell(row, name)}`).join(', ');
const blankIn =
  (...columns: string[]) =>
  (row: Row): boolean =>
    columns.some((column) => cell(row, column) === '');

/** The rows that break an invariant, by name; for an invariant on the whole table, what is wrong with it. */
function violations(rule: Invariant, { rows, source: { key } }: Table): string[] {
  const name = (row: Row) => nameOf(row, key);
  switch (rule.kind) {
    case 'row count':
      return rows.length === rule.rows ? [] : [`${rows.length} rows`];
    case 'full grid': {
      const combinations = key.reduce((n, column) => n * new Set(rows.map((row) => cell(row, column))).size, 1);
      return rows.length === combinations ? [] : [`${rows.length} rows of ${combinations}`];
    }
    case 'rises': {
      const others = key.filter((column) => column !== rule.along);
      const series = new Map<string, Row[]>();
      for (const row of rows.filter((row) => !blankIn(rule.column)(row))) {
        const group = nameOf(row, others);
        series.set(group, [...(series.get(group) ?? []), row]);
      }
      return [...series.values()].flatMap((group) =>
        group
          .sort((a, b) => number(a, rule.along) - number(b, rule.along))
          .filter((row, i) => {
            const before = group[i - 1];
            if (before === undefined) return false;
            const step = number(row, rule.column) - number(before, rule.column);
            return rule.orEqual ? step < 0 : step <= 0;
          })
          .map(name),
      );
    }
    case 'same load':
      return rows
        .filter((row) => !blankIn(rule.lb, rule.kg)(row))
        .filter((row) => {
          const gap = Math.abs(number(row, rule.lb) * KG_PER_LB - number(row, rule.kg));
          return gap > (rule.lbStep / 2) * KG_PER_LB + rule.kgStep / 2;
        })
        .map(name);
    case 'product':
      return rows
        .filter((row) => rule.factors.reduce((n, column) => n * number(row, column), 1) !== number(row, rule.equals))
        .map(name);
    case 'in order':
      return rows
        .filter((row) => {
          const values = rule.columns.filter((column) => !blankIn(column)(row)).map((column) => number(row, column));
          return values.some((value, i) => {
            const before = values[i - 1];
            return before !== undefined && (rule.orEqual ? value < before : value <= before);
          });
        })
        .map(name);
    case 'within':
      return rows
        .filter((row) => !blankIn(rule.column)(row))
        .filter((row) => number(row, rule.column) < rule.min || number(row, rule.column) > rule.max)
        .map(name);
    case 'one of':
      return rows.filter((row) => !rule.values.includes(cell(row, rule.column))).map(name);
  }
}

describe.each(folders)('%s', (folder) => {
  const path = (file: string) => join(tablesFolder, folder, file);

  it('has the three files and nothing else', () => {
    expect(readdirSync(path('')).sort()).toEqual(['second-entry.csv', 'source.json', 'table.csv']);
  });

  it('has a complete source record without placeholders', () => {
    const text = readFileSync(path('source.json'), 'utf8');
    const source = sourceSchema.parse(JSON.parse(text));
    expect(source.id).toBe(folder);
    expect(text).not.toMatch(/\b(todo|tbd|fixme|xxx+|placeholder|lorem)\b|\?\?/i);
    expect(source.key.every((column) => source.columns[column]?.may_be_blank !== true)).toBe(true);
  });

  it('names no address and no brand', () => {
    for (const file of ['source.json', 'table.csv']) {
      expect(readFileSync(path(file), 'utf8'), file).not.toMatch(
        /https?:|www\.|\b[\w-]+\.(com|org|net|gov|info|ca|eu|nz|au|uk|de)\b|[®™©]|\b(Inc|Ltd|LLC|GmbH|Corp)\b/i,
      );
    }
  });

  it('has a table of the declared columns, cells of the declared types and no key twice', () => {
    const { source, header, rows } = readTable(folder);
    expect(readFileSync(path('table.csv'), 'utf8')).toMatch(/^[^\r]+\n$/);
    expect(header).toEqual(Object.keys(source.columns));
    for (const row of rows) {
      for (const [column, { type, may_be_blank }] of Object.entries(source.columns)) {
        const value = cell(row, column);
        const where = `${nameOf(row, source.key)}: ${column}`;
        expect(value, where).toBe(value.trim());
        if (may_be_blank && value === '') continue;
        expect(value, where).toMatch(type === 'number' ? /^\d+(\.\d+)?$/ : /./);
        if (isProvenanceColumn(column)) {
          expect(provenanceWords, where).toContain(value);
        }
      }
    }
    const keys = rows.map((row) => nameOf(row, source.key));
    expect(new Set(keys).size).toBe(keys.length);
  });

  it('has the hash that its source record states', () => {
    const { source, sha256 } = readTable(folder);
    expect(source.rowsSha256).toBe(sha256);
  });

  it('was typed a second time with the same outcome', () => {
    const { source, header, rows } = readTable(folder);
    const { key, columns } = source;
    expect(existsSync(path('second-entry.csv')), 'second-entry.csv is there').toBe(true);
    const second = readCsv(path('second-entry.csv'));
    expect(second.header).toEqual(header);
    const secondByKey = new Map(second.rows.map((row) => [nameOf(row, key), row]));
    expect([...secondByKey.keys()].sort()).toEqual(rows.map((row) => nameOf(row, key)).sort());
    expect(second.rows.length).toBe(rows.length);
    const differences = rows.flatMap((row) =>
      header
        .filter((column) => !columns[column]?.prose)
        .map((column) => [column, cell(row, column), secondByKey.get(nameOf(row, key))?.[column]])
        .filter(([, first, again]) => first !== again)
        .map(([column, first, again]) => `${nameOf(row, key)}: ${column}: "${first}" against "${again}"`),
    );
    expect(differences).toEqual([]);
  });

  it('holds the spot cells as printed', () => {
    const { source, rows } = readTable(folder);
    expect(source.spotCells.length).toBeGreaterThanOrEqual(Math.min(3, rows.length));
    for (const spot of source.spotCells) {
      expect(Object.keys(spot.row)).toEqual(source.key);
      const found = rows.filter((row) => source.key.every((column) => row[column] === spot.row[column]));
      expect(
        found.map((row) => cell(row, spot.column)),
        JSON.stringify(spot.row),
      ).toEqual([spot.printed]);
    }
  });

  it('keeps its invariants, but for exactly the declared exceptions', () => {
    const table = readTable(folder);
    for (const rule of table.source.invariants) {
      const declared = 'exceptions' in rule ? rule.exceptions.map(({ row }) => nameOf(row, table.source.key)) : [];
      expect(violations(rule, table).sort(), JSON.stringify(rule)).toEqual(declared.sort());
    }
  });

  it('is generated, byte for byte', () => {
    for (const { file, code } of renderModules(readTable(folder))) {
      expect(readFileSync(join(generatedFolder, `${file}.ts`), 'utf8')).toBe(code);
    }
  });

  it('comes back cell for cell from its modules', async () => {
    const parts = partsOf(readTable(folder));
    expect(parts.reduce((sum, { rows }) => sum + rows.length, 0)).toBe(readTable(folder).rows.length);
    for (const part of parts) await comesBack(part);
  });
});

async function comesBack(table: Table): Promise<void> {
  const { source, header, rows } = table;
  const value = (row: Row, column: string): string | number =>
    source.columns[column]?.type === 'number' ? Number(cell(row, column)) : cell(row, column);
  const reached = new Set<string>(source.key);
  for (const { file } of renderModules({ ...table, source: { ...source, splitBy: undefined } })) {
    const exported = Object.values(await import(join(generatedFolder, `${file}.ts`)));
    expect(exported).toHaveLength(1);
    const module = exported[0] as { source?: object; rows: object };
    const { document, edition, clause, citedByClause } = source;
    const provenance = source.modules?.find((m) => m.file === file)?.provenance ?? source.provenance;
    expect(Object.keys(module)).toEqual(citedByClause ? ['rows'] : ['source', 'rows']);
    if (citedByClause) expect(header).toContain('clause');
    else expect(module.source).toMatchObject({ document, edition, clause, provenance });
    const columns =
      source.modules?.find((m) => m.file === file)?.columns ??
      header.filter((c) => !reached.has(c) && !source.leftOut.includes(c));
    for (const row of rows) {
      const leaf = source.key.reduce<Record<string, unknown> | undefined>(
        (branch, column) => branch?.[String(value(row, column))] as Record<string, unknown> | undefined,
        module.rows as Record<string, unknown>,
      );
      for (const column of columns) {
        const printed = cell(row, column);
        const got = leaf?.[column] ?? (isProvenanceColumn(column) && printed !== '' ? provenance : undefined);
        const where = `${file}: ${nameOf(row, source.key)}: ${column}`;
        // A row without a value is left out of the module, its provenance with it.
        if (leaf !== undefined || !isProvenanceColumn(column)) {
          expect(got, where).toBe(printed === '' ? undefined : value(row, column));
        }
      }
    }
    for (const column of columns) reached.add(column);
  }
  expect([...reached, ...source.leftOut].sort()).toEqual([...header].sort());
}

it('has no generated module without a table', () => {
  const wanted = folders.flatMap((folder) => renderModules(readTable(folder)).map(({ file }) => `${file}.ts`));
  expect(readdirSync(generatedFolder).sort()).toEqual(wanted.sort());
});
