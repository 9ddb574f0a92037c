import { checkSecurement, type Part, type Plan, us49cfr393_2024 } from 'chain-rigging';
import { Bench } from 'tinybench';
import type { BenchRow } from './run.js';
import { plainPlanSchema } from './plain-plan-schema.js';

/** Six parts in series, quantities as `{ value, unit }`: what a program, not a person, hands over. */
const parts = (): Part[] => [
  { id: 'vehicle anchor', kind: 'anchor', at: 'vehicle', markedWll: { value: 5000, unit: 'lb' } },
  { id: 'hook', kind: 'grab-hook', size: '5/16', grade: 70 },
  { id: 'chain', kind: 'chain', size: '5/16', grade: 70 },
  { id: 'binder', kind: 'binder', markedWll: { value: 5400, unit: 'lb' } },
  { id: 'far hook', kind: 'grab-hook', size: '5/16', grade: 70 },
  { id: 'cargo attachment', kind: 'anchor', at: 'cargo', markedWll: { value: 4700, unit: 'lb' } },
];

/** A compact tractor of 3,940 lb and 10 ft on four tie-downs. */
const plan: Plan = {
  articles: [
    { id: 'tractor', kind: 'machinery', mass: { value: 3940, unit: 'lb' }, length: { value: 10, unit: 'ft' } },
  ],
  tieDowns: (['front-left', 'front-right', 'rear-left', 'rear-right'] as const).map((id) => ({
    id,
    holds: 'tractor',
    path: 'vehicle-to-cargo',
    end: id.startsWith('front') ? 'front' : 'rear',
    parts: parts(),
  })),
};

/** What the check may cost beside the plain validation of the same plan: times its operations a second. */
const LEAST_WITH_WORKING = 0.5;
const LEAST_WITHOUT_WORKING = 2;

/** `checkSecurement` and the yardstick in turns in one run, so that both meet the same machine. */
export async function run(): Promise<BenchRow[]> {
  const { verdict } = checkSecurement({ rules: us49cfr393_2024, ...plan });
  if (verdict !== 'pass') throw new Error(`the plan of the benchmark must pass, got ${verdict}`);
  plainPlanSchema.parse(plan);

  const rounds: { plain: number; withWorking: number; without: number }[] = [];
  for (let round = 0; round < 5; round++) {
    const bench = new Bench({ time: 400, warmupTime: 150 });
    bench
      .add('plain', () => plainPlanSchema.parse(plan))
      .add('withWorking', () => checkSecurement({ rules: us49cfr393_2024, ...plan }))
      .add('without', () => checkSecurement({ rules: us49cfr393_2024, ...plan, working: false }));
    await bench.run();
    rounds.push({
      plain: perSecond(bench, 'plain'),
      withWorking: perSecond(bench, 'withWorking'),
      without: perSecond(bench, 'without'),
    });
  }
  const plain = median(rounds.map((round) => round.plain));
  return [
    { name: 'zod parse of the same plan, plain objects', opsPerSecond: plain },
    row('checkSecurement, working shown', rounds, 'withWorking', LEAST_WITH_WORKING),
    row('checkSecurement, working: false', rounds, 'without', LEAST_WITHOUT_WORKING),
  ];
}

type Round = { plain: number; withWorking: number; without: number };

/** The ratio is taken inside each round and the middle one counts. */
function row(name: string, rounds: readonly Round[], which: 'withWorking' | 'without', least: number): BenchRow {
  const ratio = median(rounds.map((round) => round[which] / round.plain));
  const opsPerSecond = median(rounds.map((round) => round[which]));
  return { name, opsPerSecond, ratio, must: `>= ${least} x zod`, ok: ratio >= least };
}

function perSecond(bench: Bench, name: string): number {
  const result = bench.getTask(name)?.result;
  if (result === undefined || !('latency' in result)) throw new Error(`no measurement of ${name}`);
  return 1000 / result.latency.p50;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
