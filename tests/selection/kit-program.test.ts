// The optimum against HiGHS, on invented cases too large to look at every kit.
import { expect, it } from 'vitest';
import { buildKit, type KitInput } from '../../src/index.js';
import { kitProgram, makeKitModel, solveProgram } from './kit-program.js';
import { bestOfAll, orderOf, random, randomCase, type Totals } from './random-kits.js';

function judge(input: KitInput, goals: readonly (keyof Totals)[]): Partial<Totals> | null {
  const found: { -readonly [Key in keyof Totals]?: number } = {};
  for (const goal of goals) {
    const model = makeKitModel(kitProgram(input, goal, found));
    const least = solveProgram(model);
    model.dispose();
    if (least === null) return null;
    found[goal] = least;
  }
  return found;
}

it('the program says what looking at every kit says', () => {
  const next = random(7);
  for (let index = 0; index < 40; index++) {
    const one = randomCase(next, { tieDowns: [1, 2], chains: [2, 3], fittings: [4, 6], mostCount: 4, limits: true });
    const order = orderOf(one.input);
    const best = bestOfAll(one, order);
    const judged = judge(one.input, order);
    expect(judged, `case ${index}`).toEqual(
      best === null ? null : Object.fromEntries(order.map((key) => [key, best[key]])),
    );
  }
});

it('is the best by the program, with more tie-downs and items', () => {
  const next = random(11);
  let kits = 0;
  for (let index = 0; index < 100; index++) {
    const one = randomCase(next, { tieDowns: [3, 6], chains: [6, 25], fittings: [10, 50], mostCount: 4, limits: true });
    // what stands beside the objective is looked for, not proved
    const judged = judge(one.input, orderOf(one.input).slice(0, -1));
    const kit = buildKit(one.input);
    expect(kit.verdict, `case ${index}`).toBe(judged === null ? 'fail' : 'pass');
    if (judged === null) continue;
    kits++;
    const { price, mass, parts, bought } = kit.totals!;
    const totals: Totals = { cents: Math.round(price! * 100), mass: mass.value, parts, bought };
    expect(kit.check!.verdict, `case ${index}`).toBe('pass');
    expect(totals, `case ${index}`).toMatchObject(judged);
  }
  expect(kits).toBeGreaterThan(25);
});
