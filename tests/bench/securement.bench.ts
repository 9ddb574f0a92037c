import { Bench } from 'tinybench';
import * as z from 'zod';
import { checkSecurement, type Part, type Plan, us49cfr393_2024 } from '../../dist/index.js';
import { makePlainPlanSchema } from './plain-plan-schema.js';
import type { BenchRow } from './run.js';

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

const plainPlanSchema = makePlainPlanSchema(z.object);
const strictPlanSchema = makePlainPlanSchema(z.strictObject);

/**
 * What the check may cost beside the validation of the same plan by plain objects: times its operations a second.
 * The yardstick refuses unknown fields, as `chain-rigging/schemas` does: in a plan for safety a misspelled field must
 * not pass. Beside one that drops them the bulk check is shown without a bound.
 */
const LEAST_WITH_WORKING = 0.5;
const LEAST_WITHOUT_WORKING = 2;

interface Round {
  readonly plain: number;
  readonly strict: number;
  readonly shown: number;
  readonly bulk: number;
}

/** `checkSecurement` of the built package and the yardsticks in turns in one run, so that all meet the same machine. */
export async function run(): Promise<BenchRow[]> {
  const { verdict } = checkSecurement({ rules: us49cfr393_2024, ...plan });
  if (verdict !== 'pass') throw new Error(`the plan of the benchmark must pass, got ${verdict}`);
  plainPlanSchema.parse(plan);

  const rounds: Round[] = [];
  for (let round = 0; round < 5; round++) {
    const bench = new Bench({ time: 500, warmupTime: 200 });
    add(bench, 'plain', () => plainPlanSchema.parse(plan));
    add(bench, 'strict', () => strictPlanSchema.parse(plan));
    add(bench, 'shown', () => checkSecurement({ rules: us49cfr393_2024, ...plan }));
    add(bench, 'bulk', () => checkSecurement({ rules: us49cfr393_2024, ...plan, working: false }));
    await bench.run();
    const [plain, strict, shown, bulk] = (['plain', 'strict', 'shown', 'bulk'] as const).map((name) =>
      perSecond(bench, name),
    ) as [number, number, number, number];
    rounds.push({ plain, strict, shown, bulk });
  }
  return [
    { name: 'zod parse of the plan, unknown fields refused', opsPerSecond: median(rounds.map(({ strict }) => strict)) },
    row('checkSecurement, working shown', rounds, 'shown', 'strict', LEAST_WITH_WORKING),
    row('checkSecurement, working: false', rounds, 'bulk', 'strict', LEAST_WITHOUT_WORKING),
    { name: 'zod parse of the plan, unknown fields dropped', opsPerSecond: median(rounds.map(({ plain }) => plain)) },
    row('checkSecurement, working shown', rounds, 'shown', 'plain', LEAST_WITH_WORKING),
    row('checkSecurement, working: false', rounds, 'bulk', 'plain'),
  ];
}

/** The ratio is taken inside each round, and the middle one counts. */
function row(
  name: string,
  rounds: readonly Round[],
  which: keyof Round,
  beside: 'plain' | 'strict',
  least?: number,
): BenchRow {
  const ratio = median(rounds.map((round) => round[which] / round[beside]));
  const opsPerSecond = median(rounds.map((round) => round[which]));
  return {
    name,
    opsPerSecond,
    ratio,
    ...(least === undefined ? {} : { must: `>= ${least} x zod`, ok: ratio >= least }),
  };
}

/** Many calls to a sample: one alone is too short for the clock, and many share the garbage collector's work evenly. */
const CALLS = 500;

function add(bench: Bench, name: keyof Round, call: () => unknown): void {
  bench.add(name, () => {
    for (let index = 0; index < CALLS; index++) sink = call();
  });
}

let sink: unknown;

function perSecond(bench: Bench, name: keyof Round): number {
  const result = bench.getTask(name)?.result;
  if (result?.state !== 'completed') throw new Error(`${name}: ${result?.state}`);
  void sink;
  return (CALLS * 1000) / result.latency.p50;
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}
