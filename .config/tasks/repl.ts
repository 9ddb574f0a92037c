/**
 * A console with every export of the package, of its registry, its schemas and its words in scope, and with notes said in English.
 *
 *   npm run repl
 */
import { Recoverable, start, writer } from 'node:repl';
import { transformSync } from 'esbuild';
import * as main from '../../src/index.js';
import * as registry from '../../src/registry.js';
import * as schemas from '../../src/schemas/index.js';
import * as words from '../../src/words/en.js';

const TRY = [
  "chainRating({ ratings: us49cfr393_108_2024, size: '5/16', grade: 70 })",
  "tieDownsRequired({ rules: us49cfr393_2024, article: { kind: 'machinery', mass: '3940 lb', length: '10 ft' } })",
  "chainMass({ size: '3/8', grade: 70, length: '20 ft' }).mass",
];

console.log(
  `Every export of chain-rigging is in scope. Three things to try:\n\n${TRY.map((line) => `  ${line}\n`).join('')}`,
);
const repl = start({ prompt: '> ', writer: (value) => writer(main.inWords(value)) });

// The examples of the guides are TypeScript: what they import is in scope, and their types are left out.
const plain = repl.eval;
const evaluate: typeof plain = (code, context, file, done) => {
  let script: string;
  try {
    const given = code.replace(/^import\s[^;]*?from 'chain-rigging(?:\/[\w/]+)?';$/gm, '');
    script = transformSync(given, { loader: 'ts', target: 'node20' }).code;
  } catch (error) {
    const unfinished = /end of file|Unterminated/.test((error as Error).message);
    return done(unfinished ? new Recoverable(error as SyntaxError) : (error as Error), undefined);
  }
  return plain.call(repl, script, context, file, done);
};
Object.assign(repl, { eval: evaluate });

for (const [name, value] of Object.entries({ ...main, ...registry, ...schemas, ...words })) {
  Object.defineProperty(repl.context, name, { value, enumerable: true, writable: true, configurable: true });
}
