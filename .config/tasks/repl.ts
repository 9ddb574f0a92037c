/**
 * A console with every export of the package, of its registry and of its schemas in scope.
 *
 *   npm run repl
 */
import { start } from 'node:repl';
import * as main from '../../src/index.js';
import * as registry from '../../src/registry.js';
import * as schemas from '../../src/schemas/index.js';

const TRY = [
  "chainRating({ ratings: us49cfr393_108_2024, size: '5/16', grade: 70 })",
  "tieDownsRequired({ rules: us49cfr393_2024, article: { kind: 'machinery', mass: '3940 lb', length: '10 ft' } })",
  "chainMass({ size: '3/8', grade: 70, length: '20 ft' }).mass",
];

console.log(
  `Every export of chain-rigging is in scope. Three things to try:\n\n${TRY.map((line) => `  ${line}\n`).join('')}`,
);
const repl = start('> ');
for (const [name, value] of Object.entries({ ...main, ...registry, ...schemas })) {
  Object.defineProperty(repl.context, name, { value, enumerable: true, writable: true, configurable: true });
}
