// Every example of the project is compiled, is run, and says what it prints.
//
// What counts: each `@example` of a doc comment in src; each ```ts block of README.md and of the pages in docs.
//
//   chainRating({ ratings: us49cfr393_108_2024, size: '5/16', grade: 70 }).workingLoadLimit
//   // => 4700 lb
//
// - `// => text` is what a Node console shows for the statement before it: the value of an expression, or what
//   that statement printed with console.log. It may stand on the line of a short statement.
// - More lines of the same output follow on lines that start with `//` and four spaces.
// - Every function, class and constant of the package, its registry, its schemas and its words is in scope, with or without
//   an import line; a type is imported.
// - A doc comment's example stands alone, and so does a block of a page that imports what it needs. A block
//   without an import line goes on from the block above it, with its constants.
// - ```ts no-run is compiled and not run. A line that must not compile has `// @ts-expect-error` above it.
// - ```js is held to the same; `require` is there.
import { inspect } from 'node:util';
import vm from 'node:vm';
import { transformSync } from 'esbuild';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import * as main from '../../src/index.js';
import * as registry from '../../src/registry.js';
import * as schemas from '../../src/schemas/index.js';
import * as words from '../../src/words/en.js';
import { allExamples, docCommentExamples, type Example, markdownExamples, root } from './extract.js';

const MODULES: Record<string, object> = {
  'chain-rigging': main,
  'chain-rigging/registry': registry,
  'chain-rigging/schemas': schemas,
  'chain-rigging/words/en': words,
};

interface Scope {
  readonly context: vm.Context;
  readonly printed: string[];
}

function newScope(): Scope {
  const printed: string[] = [];
  const log = (...values: unknown[]) =>
    void printed.push(values.map((value) => (typeof value === 'string' ? value : inspect(value))).join(' '));
  const require = (id: string) => MODULES[id] ?? fail(`no module ${id} in an example`);
  return {
    printed,
    context: vm.createContext({
      ...main,
      ...registry,
      ...schemas,
      ...words,
      console: { log },
      structuredClone,
      require,
    }),
  };
}

interface Segment {
  /** Lines from the start of the example to the start of this segment. */
  readonly offset: number;
  readonly code: string;
  /** The text of its `// =>`; undefined for what follows the last one. */
  readonly expected?: string;
}

/** Cuts an example after each `// =>`. */
function segmentsOf(code: string): Segment[] {
  const segments: Segment[] = [];
  const lines = code.split('\n');
  let body: string[] = [];
  let offset = 0;
  for (let i = 0; i < lines.length; i += 1) {
    const marked = /^(.*?)\/\/ => ?(.*)$/.exec(lines[i]!);
    if (marked === null) {
      body.push(lines[i]!);
      continue;
    }
    const expected = [marked[2]!];
    for (let more = continuation(lines[i + 1]); more !== undefined; more = continuation(lines[i + 1])) {
      expected.push(more);
      i += 1;
    }
    segments.push({ offset, code: [...body, marked[1]!].join('\n'), expected: expected.join('\n') });
    body = [];
    offset = i + 1;
  }
  if (body.some((line) => line.trim() !== '')) segments.push({ offset, code: body.join('\n') });
  return segments;
}

const continuation = (line: string | undefined) =>
  /^ *\/\/(?: {4}(.*))?$/
    .exec(line ?? 'end')
    ?.slice(1)
    .map((text) => text ?? '')[0];

/** Import lines become constants of the same names, from the module that the line names. */
const withoutImports = (code: string) =>
  code
    .replace(/^import type [^;]*;$/gm, (line) => line.replace(/[^\n]/g, ' '))
    .replace(/^import \* as (\w+) from ('[^']+');?$/gm, 'const $1 = require($2);')
    .replace(/^import \{([^}]*)\} from ('[^']+');?$/gm, (_, names: string, module: string) => {
      const values = names.replace(/\btype [\w$]+( as [\w$]+)?,?/g, '').replace(/ as /g, ': ');
      return `const {${values}} = require(${module});`;
    });

/** What a console shows after a piece of code: what it printed, else the value of its last statement. */
function shown(code: string, { context, printed }: Scope, where: string): string {
  const { code: plain } = transformSync(withoutImports(code), { loader: 'ts', target: 'es2022' });
  printed.length = 0;
  const value: unknown = vm.runInContext(plain, context, { filename: where });
  return printed.length > 0 ? printed.join('\n') : inspect(value);
}

function runExample(example: Example, scope: Scope): void {
  for (const { offset, code, expected } of segmentsOf(example.code)) {
    const where = `${example.file}:${example.line + offset}`;
    let got: string;
    try {
      got = shown(code, scope, where);
    } catch (error) {
      throw new Error(`${where} throws ${error}\n\n${code.trim()}\n`);
    }
    if (expected !== undefined) expect(got, `${where}\n\n${code.trim()}\n`).toBe(expected);
  }
}

/** What the compiler says of each example, by its place in the list. */
function compile(examples: readonly Example[]): string[][] {
  const virtual = new Map<string, string>();
  const fileOf = (index: number) => `${root}tests/examples/example-${index}.ts`;
  for (const index of examples.keys()) {
    virtual.set(fileOf(index), `${wholeCode(examples, index)}\nexport {};`);
  }
  const everyExport = Object.entries(MODULES).flatMap(([id, names]) =>
    Object.keys(names).map((name) => `  const ${name}: typeof import('${id}').${name};`),
  );
  const scopeFile = `${root}tests/examples/scope.ts`;
  virtual.set(scopeFile, `declare global {\n${everyExport.join('\n')}\n}\nexport {};`);

  const { config } = ts.readConfigFile(`${root}tsconfig.json`, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists, readFile } = host;
  host.fileExists = (file) => virtual.has(file) || fileExists.call(host, file);
  host.readFile = (file) => virtual.get(file) ?? readFile.call(host, file);
  host.getSourceFile = (file, version, ...rest) =>
    virtual.has(file)
      ? ts.createSourceFile(file, virtual.get(file)!, version)
      : getSourceFile.call(host, file, version, ...rest);
  const program = ts.createProgram({
    rootNames: [...virtual.keys()],
    options: {
      ...options,
      types: ['node'],
      noUnusedLocals: false,
      noUncheckedIndexedAccess: false, // as most readers have it
      useUnknownInCatchVariables: false,
      allowUnreachableCode: true,
    },
    host,
  });
  return examples.map((example, index) => {
    const source = program.getSourceFile(fileOf(index))!;
    const before = wholeCode(examples, index).split('\n').length - example.code.split('\n').length;
    const lineOf = ({ start = 0 }: ts.Diagnostic) => source.getLineAndCharacterOfPosition(start).line;
    return [...program.getSyntacticDiagnostics(source), ...program.getSemanticDiagnostics(source)]
      .filter((diagnostic) => lineOf(diagnostic) >= before) // the rest is the blocks before, which say it themselves
      .map((diagnostic) => {
        const message = ts.flattenDiagnosticMessageText(diagnostic.messageText, '\n');
        return `${example.file}:${lineOf(diagnostic) - before + example.line} ${message}`;
      });
  });
}

/** The code of an example with that of the blocks it goes on from. */
function wholeCode(examples: readonly Example[], index: number): string {
  const { code, continued } = examples[index]!;
  return continued && index > 0 ? `${wholeCode(examples, index - 1)}\n${code}` : code;
}

function fail(message: string): never {
  throw new Error(message);
}

const only = (code: string): Example => ({ file: 'page.md', line: 10, code, run: true, continued: false });
const examples = allExamples();
const complaints = compile([...examples, only("ft('1')"), only('ft(1)')]);

describe('every example compiles, runs and prints what it says', () => {
  let scope = newScope();
  for (const [index, example] of examples.entries()) {
    const title = example.code.trim().split('\n')[0]!.slice(0, 60);
    it(`${example.file}:${example.line} ${title}`, () => {
      if (!example.continued) scope = newScope();
      expect(complaints[index]).toEqual([]);
      if (example.run) runExample(example, scope);
    });
  }
});

describe('the check itself', () => {
  const run = (code: string) => runExample(only(code), newScope());

  it('finds doc comment examples and their lines', () => {
    const text = '/**\n * Adds.\n *\n * @example\n * add(ft(1), ft(2))\n * // => 3 ft\n * @throws nothing\n */\n';
    expect(docCommentExamples('a.ts', text)).toEqual([
      { file: 'a.ts', line: 5, code: 'add(ft(1), ft(2))\n// => 3 ft', run: true, continued: false },
    ]);
  });

  it('finds Markdown blocks, their lines and their words', () => {
    const text = 'Text\n\n```ts\nft(1)\n```\n```sh\nls\n```\n```ts no-run\nft(2)\n```\n```js\nrequire("a")\n```\n';
    expect(markdownExamples('page.md', text)).toEqual([
      { file: 'page.md', line: 4, code: 'ft(1)', run: true, continued: false },
      { file: 'page.md', line: 10, code: 'ft(2)', run: false, continued: true },
      { file: 'page.md', line: 13, code: 'require("a")', run: true, continued: false },
    ]);
    expect(() => markdownExamples('page.md', '```ts norun\n```')).toThrow('page.md:1');
  });

  it('compares values, printed text and several lines', () => {
    run('ft(1)\n// => 1 ft\nft(2) // => 2 ft\nconsole.log(`a\nb`)\n// => a\n//    b\n// a remark');
    run("import { ft as feet, type Quantity } from 'chain-rigging';\nconst x: Quantity = feet(3);\nx.value\n// => 3");
    run("try { null.x } catch (error) { error.name }\n// => 'TypeError'");
  });

  it('refuses a wrong value, a throw and a name that the module does not export', () => {
    expect(() => run('ft(1)\n// => 2 ft')).toThrow(/page\.md:10/);
    expect(() => run('ft(1)\n// => 1 ft\n\nft(Number.NaN)')).toThrow(/page\.md:12 throws RiggingError/);
    expect(() => run("import { ft } from 'chain-rigging/registry';\nft(1)\n// => 1 ft")).toThrow(/throws TypeError/);
    expect(complaints.slice(-2)).toEqual([[expect.stringContaining('page.md:10')], []]);
  });
});
