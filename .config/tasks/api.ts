/**
 * The API report: every public name with its declaration, without comments, one page for each entry of the
 * package. A change of the public contract then shows as a change of docs/api in review.
 * With --check it writes nothing, lists what is stale and exits with 1.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const root = fileURLToPath(new URL('../..', import.meta.url));
const ENTRIES = [
  { page: 'chain-rigging', id: 'chain-rigging', file: 'src/index' },
  { page: 'registry', id: 'chain-rigging/registry', file: 'src/registry' },
  { page: 'words-en', id: 'chain-rigging/words/en', file: 'src/words/en' },
  { page: 'schemas', id: 'chain-rigging/schemas', file: 'src/schemas/index' },
];
const check = process.argv.includes('--check');

const { config } = ts.readConfigFile(`${root}tsconfig.json`, ts.sys.readFile);
const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);

/** The declaration files of src, in memory: types as the compiler infers them, no bodies, no comments. */
function declarations(): Map<string, string> {
  const program = ts.createProgram(
    ENTRIES.map(({ file }) => `${root}${file}.ts`),
    { ...options, noEmit: false, declaration: true, emitDeclarationOnly: true, removeComments: true },
  );
  const emitted = new Map<string, string>();
  program.emit(undefined, (file, text) => emitted.set(file, text));
  return emitted;
}

/** A program over those files, in place of their sources. */
function declarationProgram(): ts.Program {
  const emitted = declarations();
  const host = ts.createCompilerHost(options);
  const { fileExists, readFile, getSourceFile } = host;
  const isSource = (file: string) => file.startsWith(`${root}src/`) && !file.endsWith('.d.ts');
  host.fileExists = (file) => emitted.has(file) || (!isSource(file) && fileExists.call(host, file));
  host.readFile = (file) => emitted.get(file) ?? readFile.call(host, file);
  host.getSourceFile = (file, version, ...rest) =>
    emitted.has(file)
      ? ts.createSourceFile(file, emitted.get(file)!, version, true)
      : getSourceFile.call(host, file, version, ...rest);
  return ts.createProgram({ rootNames: ENTRIES.map(({ file }) => `${root}${file}.d.ts`), options, host });
}

const program = declarationProgram();
const checker = program.getTypeChecker();

/** The statements that declare a public name. Of a constant only the outer fields: tables and schemas are deep. */
function declarationOf(symbol: ts.Symbol): string {
  const target = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
  return (target.declarations ?? [])
    .map((node) => (ts.isVariableDeclaration(node) ? outerFields(node.parent.parent.getText()) : node.getText()))
    .map((text) => text.replace(/^export (declare )?/, ''))
    .join('\n');
}

const outerFields = (text: string) =>
  text
    .split('\n')
    .filter((line) => /^( {4})?\S/.test(line))
    .join('\n')
    .replace(/([{[])\n {4}([}\]])/g, '$1 … $2');

const stale: string[] = [];
for (const { page, id, file } of ENTRIES) {
  const module = checker.getSymbolAtLocation(program.getSourceFile(`${root}${file}.d.ts`)!)!;
  const names = [...checker.getExportsOfModule(module)].sort((a, b) => (a.name < b.name ? -1 : 1));
  const report = [
    `# Public contract of \`${id}\``,
    '',
    'Written by `npm run api`. Do not edit.',
    '',
    '```ts',
    names.map(declarationOf).join('\n\n'),
    '```',
    '',
  ].join('\n');
  const path = `docs/api/${page}.api.md`;
  if (existsSync(root + path) && readFileSync(root + path, 'utf8') === report) continue;
  stale.push(path);
  if (check) continue;
  mkdirSync(`${root}docs/api`, { recursive: true });
  writeFileSync(root + path, report);
}

if (stale.length > 0) console.log(`${check ? 'Stale' : 'Written'}: ${stale.join(', ')}`);
if (check && stale.length > 0) process.exitCode = 1;
