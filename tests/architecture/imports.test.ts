// Which folder of src may import which. Data flows one way: text, quantities, tables, domain, verdict, words.
import { dirname, join, normalize } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { nodesIn, parse, placeOf, sourceTrees } from './sources.js';

/** Each may import itself and what stands before it. */
const ORDER = [
  'errors',
  'words',
  'evaluate-many',
  'input-checks',
  'quantities',
  'working',
  'tables',
  'statics',
  'chain',
  'hardware',
  'assembly',
  'securement',
  'pulling',
  'lifting',
  'service',
  'handling',
  'selection',
  'explain',
  'drawing',
  'schemas',
  'registry',
  'index',
];

interface Import {
  readonly from: string;
  /** The file within src, or the name of a package. */
  readonly to: string;
  readonly place: string;
}

function importsOf(file: string, tree: ts.SourceFile): Import[] {
  const imports: Import[] = [];
  for (const node of nodesIn(tree)) {
    const specifier =
      ts.isImportDeclaration(node) || ts.isExportDeclaration(node)
        ? node.moduleSpecifier
        : ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)
          ? node.argument.literal
          : ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword
            ? node.arguments[0]
            : undefined;
    if (specifier === undefined || !ts.isStringLiteral(specifier)) continue;
    const to = specifier.text.startsWith('.')
      ? normalize(join(dirname(file), specifier.text)).replace(/\.js$/, '.ts')
      : specifier.text;
    imports.push({ from: file, to, place: placeOf(node) });
  }
  return imports;
}

const folderOf = (file: string) => file.split('/')[0]!.replace(/\.ts$/, '');
const rankOf = (file: string) => ORDER.indexOf(folderOf(file));
const ruleSetOf = (file: string) => /^securement\/rules\/([^/]+)\//.exec(file)?.[1];
const isOwn = (to: string) => to.endsWith('.ts');

/** What breaks the rules, as sentences; the three rules about one import. */
function faultsOf({ from, to, place }: Import): string[] {
  const arrow = `${place} imports ${to}`;
  if (!isOwn(to))
    return folderOf(from) === 'schemas' && to === 'zod' ? [] : [`${arrow}: only schemas imports a package, zod`];
  const faults: string[] = [];
  if (rankOf(from) < 0 || rankOf(to) < 0) faults.push(`${arrow}: a folder that ORDER does not list`);
  if (rankOf(to) > rankOf(from)) faults.push(`${arrow}: ${folderOf(to)} comes after ${folderOf(from)}`);
  if (folderOf(from) === 'statics' && folderOf(to) === 'tables') faults.push(`${arrow}: statics knows no law`);
  const [mine, theirs] = [ruleSetOf(from), ruleSetOf(to)];
  if (theirs !== undefined && mine !== theirs && folderOf(from) === 'securement') {
    faults.push(`${arrow}: a rule set is imported by itself, and from outside securement`);
  }
  return faults;
}

/** The first circle of files that import each other, as a list that ends where it starts. */
function findCycle(imports: readonly Import[]): string[] {
  const targets = new Map<string, string[]>();
  for (const { from, to } of imports) if (isOwn(to)) targets.set(from, [...(targets.get(from) ?? []), to]);
  const done = new Set<string>();
  const visit = (file: string, path: readonly string[]): string[] => {
    if (path.includes(file)) return [...path.slice(path.indexOf(file)), file];
    if (done.has(file)) return [];
    for (const target of targets.get(file) ?? []) {
      const cycle = visit(target, [...path, file]);
      if (cycle.length > 0) return cycle;
    }
    done.add(file);
    return [];
  };
  for (const file of targets.keys()) {
    const cycle = visit(file, []);
    if (cycle.length > 0) return cycle;
  }
  return [];
}

const trees = sourceTrees();
const imports = [...trees].flatMap(([file, tree]) => importsOf(file, tree));

describe('imports of src', () => {
  it('follow the order of the folders', () => {
    expect(imports.length).toBeGreaterThan(100);
    expect(imports.flatMap(faultsOf)).toEqual([]);
  });

  it('name files that exist', () => {
    expect(imports.filter(({ to }) => isOwn(to) && !trees.has(to)).map(({ place, to }) => `${place} ${to}`)).toEqual(
      [],
    );
  });

  it('have no circle', () => {
    expect(findCycle(imports)).toEqual([]);
  });

  it('name every public thing by itself in index.ts', () => {
    const statements = trees.get('index.ts')!.statements;
    const others = statements.filter(
      (node) =>
        !ts.isExportDeclaration(node) ||
        node.moduleSpecifier === undefined ||
        node.exportClause === undefined ||
        !ts.isNamedExports(node.exportClause),
    );
    expect(others.map(placeOf)).toEqual([]);
  });
});

describe('the check itself', () => {
  const faults = (from: string, code: string) => importsOf(from, parse(from, code)).flatMap(faultsOf);

  it('sees every form of import', () => {
    const code =
      "import '../a.js'; export * from '../b.js'; type C = import('../c.js').C; const d = import('../d.js');";
    expect(importsOf('chain/x.ts', parse('chain/x.ts', code)).map(({ to }) => to)).toEqual([
      'a.ts',
      'b.ts',
      'c.ts',
      'd.ts',
    ]);
  });

  it('refuses what it should', () => {
    expect(faults('chain/x.ts', "import '../assembly/part.js'")).toHaveLength(1);
    expect(faults('chain/x.ts', "import '../quantities/parse.js'")).toEqual([]);
    expect(faults('chain/x.ts', "import '../somewhere/x.js'")).toHaveLength(1);
    expect(faults('chain/x.ts', "import 'zod'")).toHaveLength(1);
    expect(faults('schemas/x.ts', "import 'zod'")).toEqual([]);
    expect(faults('schemas/x.ts', "import 'node:fs'")).toHaveLength(1);
    expect(faults('statics/x.ts', "import '../tables/x.js'")).toHaveLength(1);
    expect(faults('securement/rules/one/x.ts', "import '../two/x.js'")).toHaveLength(1);
    expect(faults('securement/rules/one/x.ts', "import './y.js'")).toEqual([]);
    expect(faults('securement/x.ts', "import './rules/one/x.js'")).toHaveLength(1);
    expect(faults('selection/x.ts', "import '../securement/rules/one/x.js'")).toEqual([]);
    const circle = ['a', 'b', 'c'].map((from, i, all) => ({
      from: `${from}.ts`,
      to: `${all[(i + 1) % 3]}.ts`,
      place: '',
    }));
    expect(findCycle(circle)).toEqual(['a.ts', 'b.ts', 'c.ts', 'a.ts']);
    expect(findCycle(circle.slice(1))).toEqual([]);
  });
});
