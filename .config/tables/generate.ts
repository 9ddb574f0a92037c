/**
 * Writes src/tables/generated/*.ts from reference-tables/ and the hash of each table into its source.json.
 * With --check it writes nothing, lists what is stale and exits with 1.
 */
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { generatedFolder, readTable, renderModules, tableIds, tablesFolder } from './tables.js';

const check = process.argv.includes('--check');
const stale: string[] = [];
const kept = new Set<string>();

/** `undefined` content: the file should not be there. */
function settle(file: string, content: string | undefined): void {
  const current = existsSync(file) ? readFileSync(file, 'utf8') : undefined;
  if (current === content) return;
  stale.push(relative(process.cwd(), file));
  if (check) return;
  if (content === undefined) rmSync(file);
  else writeFileSync(file, content);
}

for (const id of tableIds()) {
  const table = readTable(id);
  const sourceFile = join(tablesFolder, id, 'source.json');
  settle(sourceFile, readFileSync(sourceFile, 'utf8').replace(table.source.rowsSha256, table.sha256));
  for (const { file, code } of renderModules(table)) {
    kept.add(`${file}.ts`);
    settle(join(generatedFolder, `${file}.ts`), code);
  }
}
for (const file of readdirSync(generatedFolder)) {
  if (!kept.has(file)) settle(join(generatedFolder, file), undefined);
}

if (stale.length > 0) console.log(`${check ? 'Stale' : 'Written'}:\n${stale.map((file) => `  ${file}`).join('\n')}`);
if (check && stale.length > 0) process.exitCode = 1;
