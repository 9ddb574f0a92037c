/**
 * Runs every `*.bench.ts` beside this file, or those whose name contains an argument, and prints one table. Each file runs in
 * a process of its own, so that what one measures does not find the code that another has made slow; what is held side by
 * side is always in one file.
 * Exits with 1 when a ratio that must hold does not.
 *
 *     npx tsx tests/bench/run.ts [name ...]
 */
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';

export interface BenchRow {
  readonly name: string;
  readonly opsPerSecond: number;
  /** How many times as fast as this row the library is, or another ratio that the name explains. */
  readonly ratio?: number;
  /** What must hold, in words, such as `>= 20x`. */
  readonly must?: string;
  readonly ok?: boolean;
}

const wanted = process.argv.slice(2);
const files = readdirSync(import.meta.dirname)
  .filter((file) => file.endsWith('.bench.ts'))
  .filter((file) => wanted.length === 0 || wanted.some((name) => file.includes(name)))
  .sort();

const width = { name: 60, ops: 14, ratio: 9, must: 16 };
if (process.env.BENCH_ROWS_ONLY === undefined)
  console.log(
    [
      'name'.padEnd(width.name),
      'ops/s'.padStart(width.ops),
      'ratio'.padStart(width.ratio),
      'must'.padStart(width.must),
    ].join(''),
  );

let missed = 0;
for (const file of files) {
  if (files.length > 1) {
    const { status } = spawnSync(process.execPath, [...process.execArgv, import.meta.filename, file], {
      stdio: 'inherit',
      env: { ...process.env, BENCH_ROWS_ONLY: '1' },
    });
    if (status !== 0) missed++;
    continue;
  }
  const { run } = (await import(`./${file}`)) as { run: () => Promise<BenchRow[]> };
  console.log(file);
  for (const { name, opsPerSecond, ratio, must, ok } of await run()) {
    if (ok === false) missed++;
    const columns = [
      `  ${name}`.padEnd(width.name),
      Math.round(opsPerSecond).toLocaleString('en-US').padStart(width.ops),
      (ratio === undefined ? '' : `${ratio.toFixed(2)}x`).padStart(width.ratio),
      (must ?? '').padStart(width.must),
      ok === undefined ? '' : ok ? '  ok' : '  MISSED',
    ];
    console.log(columns.join('').trimEnd());
  }
}
process.exitCode = missed > 0 ? 1 : 0;
