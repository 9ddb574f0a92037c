// The optimum against every kit that there is, on small invented cases.
import { expect, it } from 'vitest';
import { buildKit } from '../../src/index.js';
import { bestOfAll, orderOf, random, randomCase, type Totals } from './random-kits.js';

const CASES = 3000;

it(`is the best of all kits, in ${CASES} cases`, () => {
  const next = random(20240611);
  const counts = { kit: 0, none: 0 };
  for (let index = 0; index < CASES; index++) {
    const one = randomCase(next, { tieDowns: [1, 3], chains: [2, 4], fittings: [5, 8], mostCount: 5, limits: true });
    const order = orderOf(one.input);
    const best = bestOfAll(one, order);
    const kit = buildKit(one.input);
    const label = `case ${index}`;
    expect(kit.verdict, label).toBe(best === null ? 'fail' : 'pass');
    if (best === null) {
      counts.none++;
      expect(kit.obstacles.length, label).toBeGreaterThan(0);
      continue;
    }
    counts.kit++;
    const { price, mass, parts, bought } = kit.totals!;
    const totals: Totals = { cents: Math.round(price! * 100), mass: mass.value, parts, bought };
    expect(kit.check!.verdict, label).toBe('pass');
    for (const key of order) expect(totals[key], `${label} ${key}`).toBe(best[key]);
  }
  // both outcomes are met often
  expect(Math.min(counts.kit, counts.none)).toBeGreaterThan(CASES / 5);
});
