/**
 * What importing the built package adds to the start of a bare Node process. The two kinds of process are started
 * in turn, so that a machine that slows down slows both, and the difference is taken within each pair.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BenchRow } from './run.js';

const PAIRS = 41;
const MOST_ADDED_MS = 15;
const built = new URL('../../dist/index.js', import.meta.url);

export async function run(): Promise<BenchRow[]> {
  if (!existsSync(built)) throw new Error('dist is not built: npm run build');
  const folder = mkdtempSync(join(tmpdir(), 'startup-'));
  try {
    const bare = join(folder, 'bare.mjs');
    const loaded = join(folder, 'loaded.mjs');
    writeFileSync(bare, '');
    writeFileSync(
      loaded,
      `import { chainRating } from '${built}';\nif (typeof chainRating !== 'function') process.exit(1);\n`,
    );
    start(bare);
    start(loaded);
    const pairs = Array.from({ length: PAIRS }, () => ({ bare: start(bare), loaded: start(loaded) }));

    const bareMs = median(pairs.map((pair) => pair.bare));
    const loadedMs = median(pairs.map((pair) => pair.loaded));
    const added = median(pairs.map((pair) => pair.loaded - pair.bare));
    return [
      { name: `bare Node starts in ${bareMs.toFixed(1)} ms`, opsPerSecond: 1000 / bareMs },
      {
        name: `with the root imported it takes ${added.toFixed(1)} ms more`,
        opsPerSecond: 1000 / loadedMs,
        ratio: loadedMs / bareMs,
        must: `<= ${MOST_ADDED_MS} ms more`,
        ok: added <= MOST_ADDED_MS,
      },
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Milliseconds that a process takes from its start to its end. */
function start(file: string): number {
  const begin = performance.now();
  const { status, stderr } = spawnSync(process.execPath, [file], { env: {}, encoding: 'utf8' });
  const took = performance.now() - begin;
  if (status !== 0) throw new Error(`${file} failed: ${stderr}`);
  return took;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}
