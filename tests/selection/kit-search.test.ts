// The search by itself, on numbers alone, against HiGHS.
import { describe, expect, it } from 'vitest';
import { searchLeastCost } from '../../src/selection/kit-search.js';
import type { Choice, SearchProblem } from '../../src/selection/search-problem.js';
import { issueOf } from '../quantities/issue-of.js';
import { highs, sparse } from '../statics/highs.js';
import { makeKitModel, solveProgram } from './kit-program.js';
import { random } from './random-kits.js';

/** Costs against a limit that pulls the other way, and things of which there are few: slow to settle on purpose. */
function hard(next: () => number, groups: number, choices: number): SearchProblem {
  const whole = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  const made = Array.from({ length: groups }, () => ({
    places: 1,
    sum: 0,
    choices: Array.from({ length: choices }, (_, index): Choice => {
      const takes = whole(50, 999);
      return {
        cost: 1500 - takes + whole(0, 40),
        adds: whole(1, 50),
        takes: [takes],
        uses: next() < 0.3 ? [whole(0, 3)] : [],
        marks: [index],
      };
    }),
  }));
  return {
    groups: made,
    required: [groups * 25],
    pieces: [1, 1, 2, 2],
    limits: [groups * 520],
    tolerance: 0.999,
    holds: () => true,
  };
}

function judge({ groups, required, pieces, limits }: SearchProblem): number | null {
  const size = groups.length + required.length + pieces.length + limits.length;
  const all = groups.flatMap(({ choices }, group) => choices.map((choice) => ({ choice, group })));
  const columns = all.map(({ choice: { adds, uses, takes }, group }) => {
    const column = new Array<number>(size).fill(0);
    column[group] = 1;
    column[groups.length] = adds;
    for (const thing of uses) column[groups.length + 1 + thing]! += 1;
    column[size - 1] = takes[0]!;
    return column;
  });
  const free = -highs.infinity;
  const { integer } = highs.constants.variableType;
  const model = makeKitModel({
    numCols: all.length,
    numRows: size,
    colCost: all.map(({ choice }) => choice.cost),
    colLower: all.map(() => 0),
    colUpper: all.map(() => 1),
    rowLower: [...groups.map(() => 1), ...required, ...pieces.map(() => free), free],
    rowUpper: [...groups.map(() => 1), highs.infinity, ...pieces, ...limits],
    integrality: all.map(() => integer),
    matrix: sparse(columns, size),
  });
  const least = solveProgram(model);
  model.dispose();
  return least;
}

const costOf = (chosen: readonly (readonly Choice[])[]) => chosen.flat().reduce((sum, { cost }) => sum + cost, 0);

describe('a search', () => {
  it('finds what HiGHS finds', () => {
    const next = random(21);
    for (let index = 0; index < 25; index++) {
      const problem = hard(next, 4, 20);
      const found = searchLeastCost(problem, { effort: 1e8 });
      expect(found && costOf(found.chosen), `case ${index}`).toBe(judge(problem));
      if (found !== null) expect(found.atLeast).toBeNull();
    }
  });

  it('says how far it is from proving anything when it is stopped', () => {
    const next = random(22);
    let stopped = 0;
    for (let index = 0; index < 6; index++) {
      const problem = hard(next, 8, 60);
      const found = searchLeastCost(problem, { effort: 3000 });
      const least = judge(problem)!;
      expect(costOf(found!.chosen)).toBeGreaterThanOrEqual(least);
      if (found!.atLeast === null) continue;
      stopped++;
      expect(found!.atLeast).toBeLessThanOrEqual(least + 1e-6);
    }
    expect(stopped).toBeGreaterThan(1);
  });

  it('betters a known cost or says that it found nothing better', () => {
    const problem = hard(random(23), 4, 20);
    const best = costOf(searchLeastCost(problem, { effort: 1e8 })!.chosen);
    expect(searchLeastCost(problem, { effort: 1e8, below: best })).toBeNull();
    expect(costOf(searchLeastCost(problem, { effort: 1e8, below: best + 1 })!.chosen)).toBe(best);
  });

  it('refuses when it is stopped with nothing at all', () => {
    // even numbers that should add up to an odd one, which a mixture of them does
    const { groups, ...problem } = hard(random(24), 8, 40);
    const even = groups.map((group) => ({
      ...group,
      choices: group.choices.map((choice) => ({
        ...choice,
        takes: [2 * choice.takes[0]!],
        adds: 2 * choice.takes[0]!,
      })),
    }));
    const odd = { ...problem, groups: even, required: [8001], limits: [8001] };
    expect(issueOf(() => searchLeastCost(odd, { effort: 3000 })).code).toBe('TOO_LARGE');
  });
});
