// buildKit beside HiGHS on the same question: a catalog of 10,000 items, four tie-downs on a machine and two on its loader.
// The program of HiGHS is built beforehand, and both must find the same least price before anything is timed.
import { buildKit, type KitInput, us49cfr393_2024, type WantedTieDown } from '../../dist/index.js';
import { kitProgram, makeKitModel, solveProgram } from '../selection/kit-program.js';
import { random, randomItems } from '../selection/random-kits.js';
import type { BenchRow } from './run.js';

const LEAST = 50;
const ITEMS = 10_000;

const anchors = [
  { id: 'deck', kind: 'anchor', at: 'vehicle', markedWll: { value: 6600, unit: 'lb' } },
  { id: 'far', kind: 'anchor', at: 'cargo', markedWll: { value: 6000, unit: 'lb' } },
] as const;

function tieDown(id: string, holds: string, feet: number): WantedTieDown {
  return {
    id,
    holds,
    path: 'vehicle-to-cargo',
    end: id.startsWith('front') ? 'front' : 'rear',
    chainLength: { value: feet, unit: 'ft' },
    anchors,
    fittings: ['binder', 'grab-hook', 'grab-hook'],
  };
}

const next = random(1);
const catalog = randomItems(next, { chains: ITEMS * 0.4, fittings: ITEMS * 0.6, mostCount: 12, fine: true });
const question: KitInput = {
  rules: us49cfr393_2024,
  articles: [
    {
      id: 'tractor',
      kind: 'machinery',
      mass: { value: 14_500, unit: 'lb' },
      length: { value: 14, unit: 'ft' },
      accessories: [
        { id: 'loader', lowered: true },
        { id: 'backhoe', lowered: true },
      ],
    },
  ],
  tieDowns: [
    tieDown('front left', 'tractor', 12),
    tieDown('front right', 'tractor', 12),
    tieDown('rear left', 'tractor', 16),
    tieDown('rear right', 'tractor', 16),
    tieDown('front loader', 'loader', 8),
    tieDown('rear backhoe', 'backhoe', 8),
  ],
  catalog,
  objective: 'price',
  limits: { mass: { value: 150, unit: 'lb' } },
  working: false,
};

export async function run(): Promise<BenchRow[]> {
  const model = makeKitModel(kitProgram(question, 'cents'));
  const started = performance.now();
  const cents = solveProgram(model);
  const theirs = performance.now() - started;
  model.dispose();
  const times: number[] = [];
  for (let round = 0; round < 15; round++) {
    const before = performance.now();
    const kit = buildKit(question);
    times.push(performance.now() - before);
    const own = kit.totals === null ? null : Math.round((kit.totals.price as number) * 100);
    if (own !== cents) throw new Error(`buildKit finds ${own}, HiGHS ${cents}`);
  }
  const ours = times.sort((a, b) => a - b)[Math.floor(times.length / 2)] as number;
  const ratio = theirs / ours;
  return [
    { name: `kit from ${ITEMS} items, HiGHS`, opsPerSecond: 1000 / theirs },
    {
      name: `kit from ${ITEMS} items, buildKit, beside it`,
      opsPerSecond: 1000 / ours,
      ratio,
      must: `>= ${LEAST} x`,
      ok: ratio >= LEAST,
    },
  ];
}
