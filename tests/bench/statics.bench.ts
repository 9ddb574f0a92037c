// The statics beside general solvers, on the questions that are asked in bulk: a load on eight members, four directions,
// and each again with one member gone. Models are built beforehand; every answer is compared before anything is timed.
import { Bench } from 'tinybench';
import { solve, type Model as TableauModel } from 'yalps';
import type { ElasticLoad } from '../../src/statics/elastic/elastic-model.js';
import { elasticResponses } from '../../src/statics/elastic/elastic-response.js';
import { type LimitOutcome, limitFactorsOneOut } from '../../src/statics/limit/limit-factor.js';
import type { Loading } from '../../src/statics/rigid-load.js';
import { limitModel, makeModel } from '../statics/highs.js';
import { around, block, member } from '../statics/layouts.js';
import { elasticProgram, energyOf } from '../statics/quadratic-program.js';
import type { BenchRow } from './run.js';

const FRICTION = { multiplier: 1, coneSides: 8 };

/** A machine of 18 kN on four contacts; a chain outward and one inward at each corner. */
const load: ElasticLoad = {
  ...block({ weight: 18_000, half: 1.1, height: 0.9, friction: 0.35 }),
  members: [1, -1].flatMap((x) =>
    [1, -1].flatMap((y) => [
      member(`outward ${x} ${y}`, [x * 2.1, y * 1.2, 0], [x * 1.2, y * 0.7, 0.8], chain(4.1e6)),
      member(`inward ${x} ${y}`, [x * 0.2, y * 1.3, 0], [x * 1.0, y * 0.6, 1], chain(3.2e6)),
    ]),
  ) as ElasticLoad['members'],
};

function chain(stiffness: number) {
  return { capacity: 9000, pretension: 800, stiffness };
}

const without = (index: number): ElasticLoad => ({
  ...load,
  members: load.members.map((one, at) => (at === index ? { ...one, capacity: 0 } : one)),
});
const plans: readonly ElasticLoad[] = [load, ...load.members.map((_, index) => without(index))];
const limitProblems = around.flatMap((loading) => plans.map((plan) => limitModel(plan, loading, FRICTION)));
const FACTOR = 0.6;
const elasticFriction = ['none', 'sticking'] as const;
const elasticProblems = elasticFriction.flatMap((friction) =>
  around.map((loading) => ({ friction, data: elasticProgram(load, loading, FACTOR, friction) })),
);

const limitHighs = limitProblems.map(makeModel);
const elasticHighs = elasticProblems.map(({ data }) => makeModel(data));
const limitYalps = limitProblems.map(toTableau);

const limitOurs = () => limitFactorsOneOut(load, around as Loading[], { friction: FRICTION });
const elasticOurs = () => elasticFriction.flatMap((friction) => elasticResponses(load, around, FACTOR, { friction }));
const fresh = (models: typeof limitHighs) =>
  models.map((model) => {
    model.clearSolver();
    model.run();
    return model.getObjectiveValue();
  });

export async function run(): Promise<BenchRow[]> {
  compare();
  const rows: BenchRow[] = [];
  const rounds: Record<string, number>[] = [];
  for (let round = 0; round < 5; round++) {
    const bench = new Bench({ time: 400, warmupTime: 150 });
    bench.add('limit', () => {
      sink = limitOurs();
    });
    bench.add('limit highs', () => {
      sink = fresh(limitHighs);
    });
    bench.add('limit yalps', () => {
      sink = limitYalps.map((model) => solve(model));
    });
    bench.add('elastic', () => {
      sink = elasticOurs();
    });
    bench.add('elastic highs', () => {
      sink = fresh(elasticHighs);
    });
    await bench.run();
    rounds.push(Object.fromEntries(bench.tasks.map((task) => [task.name, perSecond(task)])));
  }
  void sink;
  const middle = (name: string) => median(rounds.map((round) => round[name]!));
  const ratio = (name: string, beside: string) => median(rounds.map((round) => round[name]! / round[beside]!));
  const row = (name: string, which: string, beside: string, least: number, problems: number) => {
    const times = ratio(which, beside);
    rows.push({
      name,
      opsPerSecond: middle(which) * problems,
      ratio: times,
      must: `>= ${least} x`,
      ok: times >= least,
    });
  };
  const [limits, elastics] = [limitProblems.length, elasticProblems.length];
  rows.push({ name: 'limit problems, HiGHS', opsPerSecond: middle('limit highs') * limits });
  row('limit problems with one out, beside it', 'limit', 'limit highs', 20, limits);
  rows.push({ name: 'limit problems, yalps', opsPerSecond: middle('limit yalps') * limits });
  row('limit problems with one out, beside it', 'limit', 'limit yalps', 5, limits);
  rows.push({ name: 'elastic problems, HiGHS', opsPerSecond: middle('elastic highs') * elastics });
  row('elastic problems from rest, beside it', 'elastic', 'elastic highs', 20, elastics);
  return rows;
}

let sink: unknown;

/** All solvers must find the same, to 1e-7: otherwise nothing is compared. */
function compare(): void {
  const same = (name: string, a: number, b: number) => {
    if (!(Math.abs(a - b) <= 1e-7 * Math.max(1, Math.abs(b)))) throw new Error(`${name}: ${a} is not ${b}`);
  };
  const factorOf = (outcome: LimitOutcome) => (outcome.outcome === 'limited' ? outcome.factor : Number.NaN);
  const ours = limitOurs().flatMap(({ intact, without: others }) => [intact, ...others].map(factorOf));
  fresh(limitHighs).forEach((factor, index) => void same('HiGHS', factor, ours[index]!));
  limitYalps.forEach((model, index) => void same('yalps', solve(model).result, ours[index]!));
  const energies = fresh(elasticHighs);
  elasticOurs().forEach((outcome, index) => {
    const { friction, data } = elasticProblems[index]!;
    if (outcome.outcome !== 'equilibrium') throw new Error(outcome.outcome);
    const normals = outcome.contactForces.map(([, , z]) => z);
    const shears = friction === 'sticking' ? outcome.contactForces.flatMap((force) => force.slice(0, 2)) : [];
    const forces = [...outcome.tensions, ...normals, ...shears].map((force) => force / load.weight);
    same('HiGHS, energy', energies[index]!, energyOf(data, forces));
  });
}

function toTableau({ numRows, rowLower, colCost, colUpper, matrix }: ReturnType<typeof limitModel>): TableauModel {
  const constraints: Record<string, { equal?: number; max?: number }> = {};
  for (let row = 0; row < numRows; row++) constraints[`row ${row}`] = { equal: rowLower[row]! };
  const variables: Record<string, Record<string, number>> = {};
  for (let column = 0; column < colCost.length; column++) {
    const entries: Record<string, number> = { objective: colCost[column]! };
    for (let at = matrix.starts[column]!; at < matrix.starts[column + 1]!; at++) {
      entries[`row ${matrix.indices[at]}`] = matrix.values[at]!;
    }
    if (colUpper[column]! < 1e20) {
      constraints[`upper ${column}`] = { max: colUpper[column]! };
      entries[`upper ${column}`] = 1;
    }
    variables[`x ${column}`] = entries;
  }
  return { direction: 'maximize', objective: 'objective', constraints, variables };
}

function perSecond({ name, result }: Bench['tasks'][number]): number {
  if (result?.state !== 'completed') throw new Error(`${name}: ${result?.state}`);
  return 1000 / result.latency.p50;
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}
