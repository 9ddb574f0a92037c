// Schemas in a page whose policy forbids making code from text, as `script-src 'self'` does.
import { execFileSync } from 'node:child_process';
import { buildSync } from 'esbuild';
import { expect, it } from 'vitest';
import { root } from '../architecture/sources.js';

const COUNT_TRIES = `
  globalThis.tries = 0;
  globalThis.Function = new Proxy(Function, {
    construct(target, texts) {
      globalThis.tries++;
      return Reflect.construct(target, texts);
    },
  });`;

/** Runs a page in a Node that makes no code from text; `tries` says how often one was asked for. */
function run(before: string): unknown {
  const contents = `
    import * as z from 'zod';
    ${before}
    const { checkJson, partSchema } = await import('./src/schemas/index.js');
    const good = checkJson(partSchema, { id: 'chain', kind: 'chain', size: '5/16', grade: 70 });
    const bad = checkJson(partSchema, { id: 'chain', kind: 'chain', size: '5/17', grade: 71 });
    const codes = bad.issues.map(({ code }) => code);
    console.log(JSON.stringify({ ok: good.ok, codes, tries, jitless: z.config().jitless === true }));`;
  const { outputFiles } = buildSync({
    stdin: { contents, resolveDir: root },
    bundle: true,
    format: 'esm',
    target: 'es2022',
    write: false,
    banner: { js: COUNT_TRIES },
  });
  const flags = ['--disallow-code-generation-from-strings', '--input-type=module'];
  return JSON.parse(execFileSync(process.execPath, flags, { input: outputFiles[0]!.text, encoding: 'utf8' }));
}

it('schemas work: zod tries once, is refused and does without', () => {
  expect(run('')).toEqual({ ok: true, codes: ['UNKNOWN_SIZE', 'UNKNOWN_GRADE'], tries: 1, jitless: false });
});

it('zod does not even try where the application said so before the schemas were loaded', () => {
  const said = run('z.config({ jitless: true });');
  expect(said).toEqual({ ok: true, codes: ['UNKNOWN_SIZE', 'UNKNOWN_GRADE'], tries: 0, jitless: true });
});
