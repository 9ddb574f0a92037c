// The packed package, installed elsewhere without a network and used in every way that it says it can be.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import vm from 'node:vm';
import { build, transformSync } from 'esbuild';
import { rollup } from 'rollup';
import ts from 'typescript';
import { afterAll, describe, expect, it } from 'vitest';
import { markdownExamples } from '../examples/extract.js';
import { installPackage, root, runIn } from './install.js';

const installed = installPackage();
const { folder, packed } = installed;
const own = join(folder, 'node_modules/chain-rigging');
afterAll(() => installed.remove());

// 49 CFR 393.108, table for chain: 5/16 in grade 70 is 4,700 lb.
const RATING = "chainRating({ ratings: us49cfr393_108_2024, size: '5/16', grade: 70 }).workingLoadLimit.toString()";

describe('the tarball', () => {
  it('holds the build, the tables, the license and the readme, and nothing of the workshop', () => {
    for (const file of [
      'LICENSE',
      'README.md',
      'package.json',
      'dist/index.js',
      'dist/index.cjs',
      'dist/index.d.ts',
      'dist/index.d.cts',
    ]) {
      expect(packed).toContain(file);
    }
    expect(
      packed.filter(
        (file) => !/^(dist|reference-tables)\/|^(LICENSE|README\.md|CHANGELOG\.md|package\.json)$/.test(file),
      ),
    ).toEqual([]);
    expect(packed.filter((file) => /\.test\.|\.map$|second-entry/.test(file))).toEqual([]);
  });

  it('names no path of the machine that built it', () => {
    const built = packed
      .filter((file) => file.startsWith('dist/'))
      .map((file) => readFileSync(join(own, file), 'utf8'));
    expect(built.filter((text) => text.includes(root))).toEqual([]);
  });
});

describe('in Node', () => {
  it('is imported', () => {
    const code = `import { chainRating, us49cfr393_108_2024 } from 'chain-rigging';\nconsole.log(${RATING});`;
    expect(runIn(folder, 'import.mjs', code)).toBe('4700 lb');
  });

  it('is required', () => {
    const code = `const { chainRating, us49cfr393_108_2024 } = require('chain-rigging');\nconsole.log(${RATING});`;
    expect(runIn(folder, 'require.cjs', code)).toBe('4700 lb');
  });

  it.each(['', '/registry', '/schemas', '/words/en'])(
    'has the same names by import and by require: chain-rigging%s',
    (subpath) => {
      const id = `chain-rigging${subpath}`;
      const imported = runIn(
        folder,
        'names.mjs',
        `import * as all from '${id}';\nconsole.log(Object.keys(all).sort().join());`,
      );
      const required = runIn(folder, 'names.cjs', `console.log(Object.keys(require('${id}')).sort().join());`);
      expect(imported.split(',').length).toBeGreaterThan(0);
      expect(required).toBe(imported);
    },
  );

  it('shares one set of classes and constants between its subpaths', () => {
    const same = `console.log(
      registry.ruleSetById('us-49cfr393-2024') === main.us49cfr393_2024,
      (() => { try { registry.ruleSetById('x') } catch (error) { return error instanceof main.RiggingError } })(),
    );`;
    const imports = "import * as main from 'chain-rigging';\nimport * as registry from 'chain-rigging/registry';\n";
    const requires = "const main = require('chain-rigging');\nconst registry = require('chain-rigging/registry');\n";
    expect(runIn(folder, 'same.mjs', imports + same)).toBe('true true');
    expect(runIn(folder, 'same.cjs', requires + same)).toBe('true true');
  });

  it('hands out its reference tables and its JSON schemas', () => {
    const table = 'chain-rigging/reference-tables/us-49cfr393-108-chain/table.csv';
    expect(
      runIn(folder, 'csv.cjs', `console.log(require('node:fs').readFileSync(require.resolve('${table}'), 'utf8'));`),
    ).toBe(readFileSync(join(root, 'reference-tables/us-49cfr393-108-chain/table.csv'), 'utf8').trimEnd());
    const schemas = readdirSync(join(own, 'dist/schemas')).filter((file) => file.endsWith('.json'));
    expect(schemas.length).toBeGreaterThan(0);
    const code = schemas.map((file) => `require('chain-rigging/schemas/${file}')`).join(', ');
    expect(runIn(folder, 'schema.cjs', `console.log([${code}].every((schema) => typeof schema === 'object'));`)).toBe(
      'true',
    );
  });

  it('works without zod, but for its schemas', () => {
    const code = `
      const Module = require('node:module');
      const resolve = Module._resolveFilename;
      Module._resolveFilename = function (id, ...rest) {
        if (id.split('/')[0] === 'zod') throw new Error('zod was asked for');
        return resolve.call(this, id, ...rest);
      };
      require('chain-rigging');
      require('chain-rigging/registry');
      try { require('chain-rigging/schemas'); } catch (error) { console.log(error.message); }`;
    expect(runIn(folder, 'no-zod.cjs', code)).toBe('zod was asked for');
  });

  it('runs the code of the README', () => {
    const blocks = markdownExamples('README.md', readFileSync(join(own, 'README.md'), 'utf8')).filter(({ run }) => run);
    expect(blocks.length).toBeGreaterThan(0);
    let before = '';
    for (const { line, code, continued } of blocks) {
      before = continued ? `${before}\n${code}` : code;
      const esm = before.includes('import ');
      const head = esm || before.includes('require(') ? '' : "Object.assign(globalThis, require('chain-rigging'));\n";
      runIn(folder, `readme-${line}.${esm ? 'mjs' : 'cjs'}`, head + transformSync(before, { loader: 'ts' }).code);
    }
  });
});

describe('in a browser', () => {
  it('runs where there is nothing but the language', async () => {
    const code = `import { chainRating, us49cfr393_108_2024 } from 'chain-rigging';\nimport { ruleSetById } from 'chain-rigging/registry';\n
      answer = [${RATING}, ruleSetById('us-49cfr393-2024').id].join();`;
    const { outputFiles, warnings } = await build({
      stdin: { contents: code, resolveDir: folder },
      bundle: true,
      minify: true,
      format: 'iife',
      platform: 'browser',
      write: false,
    });
    const context = vm.createContext({ answer: '' });
    vm.runInContext(outputFiles[0]!.text, context);
    expect(context.answer).toBe('4700 lb,us-49cfr393-2024');
    expect(warnings).toEqual([]);
  });
});

describe('in a bundle', () => {
  // `sideEffects: false` is set aside here: what must do nothing when imported is the code itself.
  it.each(['index', 'registry'])('leaves nothing of an import that is not used: %s', async (entry) => {
    const file = join(own, `dist/${entry}.js`);
    const resolve = ({ path }: { path: string }) => ({ path: join(own, 'dist', path), sideEffects: true });
    const { outputFiles } = await build({
      stdin: { contents: `import './${entry}.js';`, resolveDir: folder },
      plugins: [{ name: 'in dist', setup: ({ onResolve }) => onResolve({ filter: /^\./ }, resolve) }],
      bundle: true,
      format: 'esm',
      write: false,
    });
    const left = ts.createSourceFile('left.js', outputFiles[0]!.text, ts.ScriptTarget.ES2022, true).statements;
    expect(left.map((statement) => statement.getText().split('\n')[0])).toEqual([]);
    expect(await rollupOf(`import '${file}';`)).toBe('');
  });

  it('leaves the rule sets and tables that are not named', async () => {
    const code = `export { chainRating, us49cfr393_108_2024 } from '${join(own, 'dist/index.js')}';`;
    const bundled = await rollupOf(code);
    expect(bundled).toContain("'us-49cfr393-108-2024'".replaceAll("'", '"'));
    expect(bundled).not.toContain('us-welded-chain');
    expect(bundled).not.toContain('us-49cfr393-thresholds');
  });
});

async function rollupOf(code: string): Promise<string> {
  const bundle = await rollup({
    input: 'entry',
    plugins: [
      { name: 'entry', resolveId: (id) => (id === 'entry' ? id : null), load: (id) => (id === 'entry' ? code : null) },
    ],
    onwarn: (warning) => {
      if (warning.code !== 'EMPTY_BUNDLE') throw new Error(warning.message);
    },
  });
  const { output } = await bundle.generate({ format: 'esm' });
  return output[0].code.trim();
}

describe('in TypeScript', () => {
  const CONSUMER = `
    import { chainRating, lb, Quantity, RiggingError, tieDownsRequired, us49cfr393_108_2024, us49cfr393_2024, type Plan } from 'chain-rigging';
    import { ruleSetById } from 'chain-rigging/registry';
    import * as schemas from 'chain-rigging/schemas';

    const limit: Quantity<'lb' | 'kg'> = ${RATING.replace('.toString()', '')};
    const rules = [us49cfr393_2024, ruleSetById('us-49cfr393-2024')];
    const plan: Plan = { articles: [{ id: 'a', kind: 'machinery', mass: lb(3940), length: '10 ft' }], tieDowns: [] };
    const count: number = tieDownsRequired({ rules: us49cfr393_2024, article: { kind: 'machinery', mass: '3940 lb', length: '10 ft' } }).minimumCount;
    const codes = (error: unknown) => (error instanceof RiggingError ? error.code : undefined);
    // @ts-expect-error a mass is not a length
    lb(2) satisfies Quantity<'ft'>;
    // @ts-expect-error the table has no 7/16 in grade 80
    chainRating({ ratings: us49cfr393_108_2024, size: '7/16', grade: 80 });
    export { codes, count, limit, plan, rules, schemas };
  `;

  it.each([
    {
      name: 'NodeNext, ESM',
      file: 'consumer.mts',
      module: ts.ModuleKind.NodeNext,
      moduleResolution: ts.ModuleResolutionKind.NodeNext,
    },
    {
      name: 'NodeNext, CommonJS',
      file: 'consumer.cts',
      module: ts.ModuleKind.NodeNext,
      moduleResolution: ts.ModuleResolutionKind.NodeNext,
    },
    {
      name: 'Bundler',
      file: 'consumer.ts',
      module: ts.ModuleKind.ESNext,
      moduleResolution: ts.ModuleResolutionKind.Bundler,
    },
  ])('compiles: $name', ({ file, module, moduleResolution }) => {
    const path = join(folder, file);
    writeFileSync(path, CONSUMER);
    const program = ts.createProgram([path], {
      module,
      moduleResolution,
      target: ts.ScriptTarget.ES2022,
      lib: ['lib.es2022.d.ts'],
      types: [],
      strict: true,
      exactOptionalPropertyTypes: true,
      noEmit: true,
      skipLibCheck: false,
    });
    const declarations = program.getSourceFiles().filter((source) => source.fileName.startsWith(join(own, 'dist')));
    expect(declarations.length).toBeGreaterThanOrEqual(3);
    const diagnostics = [program.getSourceFile(path)!, ...declarations].flatMap((source) => [
      ...program.getSyntacticDiagnostics(source),
      ...program.getSemanticDiagnostics(source),
    ]);
    expect(
      diagnostics.map(
        ({ file: where, messageText }) => `${where?.fileName} ${ts.flattenDiagnosticMessageText(messageText, '\n')}`,
      ),
    ).toEqual([]);
  });

  it('carries the doc comments to the editor', () => {
    const declarations = readdirSync(join(own, 'dist')).filter((file) => file.endsWith('.d.ts'));
    expect(declarations.some((file) => readFileSync(join(own, 'dist', file), 'utf8').includes('@example'))).toBe(true);
    expect(existsSync(join(own, 'dist/index.d.cts'))).toBe(true);
  });
});
