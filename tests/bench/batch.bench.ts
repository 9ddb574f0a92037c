/**
 * A million plans through `evaluateMany`, in a process of its own with a small heap: what it keeps, and whether a plan
 * at the end costs what it does at the start. The plans are made as they are taken, so that nothing else holds them.
 */
import { spawnSync } from 'node:child_process';
import type { BenchRow } from './run.js';

const FEW = 10_000;
const MANY = 1_000_000;
const ROUNDS = 3;
const MOST_GROWTH_MIB = 50;
const MOST_SLOWER = 1.1;

const built = new URL('../../dist/index.js', import.meta.url);

const PROGRAM = `
import { checkSecurement, evaluateMany, us49cfr393_2024 } from '${built}';
const parts = () => [
  { id: 'vehicle anchor', kind: 'anchor', at: 'vehicle', markedWll: { value: 5000, unit: 'lb' } },
  { id: 'hook', kind: 'grab-hook', size: '5/16', grade: 70 },
  { id: 'chain', kind: 'chain', size: '5/16', grade: 70 },
  { id: 'binder', kind: 'binder', markedWll: { value: 5400, unit: 'lb' } },
  { id: 'cargo attachment', kind: 'anchor', at: 'cargo', markedWll: { value: 4700, unit: 'lb' } },
];
function* plans(count) {
  for (let index = 0; index < count; index++) {
    yield {
      articles: [{ id: 'tractor', kind: 'machinery', mass: { value: 2000 + (index % 6000), unit: 'lb' }, length: { value: 10, unit: 'ft' } }],
      tieDowns: ['a', 'b', 'c', 'd'].map((id, at) => ({ id, holds: index % 1000 === 999 ? 'nobody' : 'tractor', path: 'vehicle-to-cargo', end: at < 2 ? 'front' : 'rear', parts: parts() })),
    };
  }
}
const check = (plan) => checkSecurement({ rules: us49cfr393_2024, ...plan, working: false });
let most = 0;
function perPlan(count) {
  const tally = {};
  const begin = performance.now();
  for (const { index, ok, ...outcome } of evaluateMany(plans(count), check)) {
    const said = ok ? outcome.result.verdict : outcome.error.code;
    tally[said] = (tally[said] ?? 0) + 1;
    if (index % 50_000 === 0) most = Math.max(most, process.memoryUsage().rss);
  }
  const took = performance.now() - begin;
  if (tally.UNKNOWN_REFERENCE !== count / 1000) throw new Error(JSON.stringify(tally));
  return took / count;
}
const median = (values) => values.sort((a, b) => a - b)[Math.floor(values.length / 2)];
perPlan(${FEW * 5});
globalThis.gc();
const few = median(Array.from({ length: ${ROUNDS} }, () => perPlan(${FEW})));
const before = process.memoryUsage().rss;
const many = median(Array.from({ length: ${ROUNDS} }, () => perPlan(${MANY})));
console.log(JSON.stringify({ few, many, growth: (most - before) / 2 ** 20 }));
`;

export async function run(): Promise<BenchRow[]> {
  const flags = ['--expose-gc', '--max-semi-space-size=8', '--input-type=module', '-'];
  const { status, stdout, stderr } = spawnSync(process.execPath, flags, { input: PROGRAM, encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  const { few, many, growth } = JSON.parse(stdout) as { few: number; many: number; growth: number };
  return [
    { name: `evaluateMany, ${FEW.toLocaleString('en-US')} plans`, opsPerSecond: 1000 / few },
    {
      name: `evaluateMany, ${MANY.toLocaleString('en-US')} plans`,
      opsPerSecond: 1000 / many,
      ratio: many / few,
      must: `<= ${MOST_SLOWER} x a plan`,
      ok: many <= few * MOST_SLOWER,
    },
    {
      name: `  memory grows by ${growth.toFixed(1)} MiB at most meanwhile`,
      opsPerSecond: 1000 / many,
      must: `<= ${MOST_GROWTH_MIB} MiB`,
      ok: growth <= MOST_GROWTH_MIB,
    },
  ];
}
