import { fail } from '../errors.js';
import { boundsOf, isBeyondAll, type Side, sidesOf } from './kit-bound.js';
import { Descent } from './kit-descent.js';
import {
  type Choice,
  type ChoiceGroup,
  CLEAR_GAP,
  type Incumbent,
  most,
  type SearchProblem,
} from './search-problem.js';

/** How far a search goes. */
export interface Reach {
  /** A cost that is known, and only worth bettering. */
  readonly below?: number;
  /** Combinations to look at; after that the best one found so far will do. */
  readonly effort: number;
}

/** Combinations that one part of the problem is worth before it is divided. */
const EFFORT = 1000;
/** A linear program costs about as much as so many combinations. */
const PROGRAM_EFFORT = 300;
/** Beyond this nothing is proved in a time that anybody waits for: some seconds. */
export const MOST_EFFORT = 1e7;

/** A group of a part of the problem, with the group of the whole that it comes from. */
interface PartGroup<C extends Choice> extends ChoiceGroup<C> {
  readonly origin: number;
}

/** What a search found. */
export interface Found<C extends Choice> {
  /** The least-cost choices, place by place in each group. */
  readonly chosen: readonly (readonly C[])[];
  /** That no other costs less was proved; otherwise none costs less than this. */
  readonly atLeast: number | null;
  /** Combinations that were looked at. */
  readonly effort: number;
}

/**
 * The least-cost choices; null where nothing satisfies the constraints.
 *
 * It proves its answer, unless that takes too long (branch and bound, Land and Doig 1960; from memory). A part of the problem has a bound from its
 * linear program; where that can still beat the best that is known, every combination whose excess over the bound allows
 * it is gone through, and where those are too many the part is divided in two: one place takes a choice with a certain
 * mark, or none does.
 */
export function searchLeastCost<C extends Choice>(problem: SearchProblem<C>, reach: Reach): Found<C> | null {
  const best: Incumbent<C> = { cost: reach.below ?? Number.POSITIVE_INFINITY, chosen: null };
  const parts: PartGroup<C>[][] = [problem.groups.map((group, origin) => ({ ...group, origin }))];
  let effort = 0;
  for (let groups = parts.pop(); groups !== undefined; groups = parts.pop()) {
    if (effort > reach.effort) {
      if (reach.below === undefined && best.chosen === null) tooMany();
      return best.chosen === null ? null : { chosen: best.chosen, atLeast: boundsOf(problem).bound, effort };
    }
    effort += look(problem, groups, best, parts);
  }
  return best.chosen === null ? null : { chosen: best.chosen, atLeast: null, effort };
}

/** Settles a part of the problem, or divides it; returns what that took. */
function look<C extends Choice>(
  problem: SearchProblem<C>,
  groups: readonly PartGroup<C>[],
  best: Incumbent<C>,
  parts: PartGroup<C>[][],
): number {
  const { required, tolerance, holds } = problem;
  if (groups.some(({ choices }) => choices.length === 0)) return 1;
  if (required.some((needed, sum) => mostOf(groups, sum) < needed * (1 - CLEAR_GAP))) return 1;
  const part = { ...problem, groups };
  const bounds = boundsOf(part);
  const sides = sidesOf(part);
  let effort = PROGRAM_EFFORT * (1 + sides.length);
  if (isBeyondAll(bounds, part) || sides.some(({ room }) => room < 0)) return effort;
  const allowed = best.cost - tolerance - bounds.bound + bounds.rounding;
  if (allowed < 0) return effort;
  const whole = (chosen: readonly (readonly C[])[]) => inWhole(problem, groups, chosen);
  const found: Incumbent<C> = { cost: best.cost, chosen: null };
  const descent = new Descent({ ...part, holds: (chosen) => holds(whole(chosen)) }, bounds, sides, found, EFFORT);
  const settled = descent.run();
  effort += descent.nodes;
  if (found.chosen !== null) {
    best.cost = found.cost;
    best.chosen = whole(found.chosen);
  }
  if (settled) return effort;
  const left = groups.map((group, at) => ({
    ...group,
    choices: group.choices.filter((_, index) => {
      const excess = bounds.excesses[at]?.[index] as number;
      return (
        bounds.bound + excess - bounds.rounding <= best.cost - tolerance && sides.every((side) => fits(side, at, index))
      );
    }),
  }));
  const mix = groups.map(({ choices }, at) => {
    const amounts = new Map(choices.map((choice, index) => [choice, bounds.mix[at]?.[index] as number]));
    return (left[at] as PartGroup<C>).choices.map((choice) => amounts.get(choice) as number);
  });
  parts.push(...divide(left, mix));
  return effort;
}

function fits({ excesses, room }: Side, group: number, index: number): boolean {
  return (excesses[group]?.[index] as number) <= room;
}

function mostOf(groups: readonly ChoiceGroup[], sum: number): number {
  return groups.reduce(
    (total, group) => total + (group.sum === sum ? group.places * most(group.choices.map(({ adds }) => adds)) : 0),
    0,
  );
}

/** From the choices of a part to those of the whole, place by place. */
function inWhole<C extends Choice>(
  problem: SearchProblem<C>,
  groups: readonly PartGroup<C>[],
  chosen: readonly (readonly C[])[],
): C[][] {
  const whole: C[][] = problem.groups.map(() => []);
  groups.forEach(({ origin }, group) => {
    (whole[origin] as C[]).push(...(chosen[group] as readonly C[]));
  });
  return whole;
}

/** The two halves of a part, the more likely one last: by the mark whose amount in the mixture is the least settled. */
function divide<C extends Choice>(
  groups: readonly PartGroup<C>[],
  mix: readonly (readonly number[])[],
): PartGroup<C>[][] {
  let by: { readonly at: number; readonly mark: number; readonly amount: number } | undefined;
  let nearest = Number.POSITIVE_INFINITY;
  groups.forEach(({ choices }, at) => {
    const amounts = new Map<number, { amount: number; choices: number }>();
    choices.forEach(({ marks }, index) => {
      for (const mark of marks) {
        const known = amounts.get(mark) ?? { amount: 0, choices: 0 };
        known.amount += mix[at]?.[index] as number;
        known.choices++;
        amounts.set(mark, known);
      }
    });
    for (const [mark, { amount, choices: having }] of amounts) {
      if (having === choices.length) continue; // all have it: that divides nothing
      const unsettled = Math.abs(amount - Math.floor(amount) - 0.5);
      if (unsettled < nearest) {
        nearest = unsettled;
        by = { at, mark, amount };
      }
    }
  });
  if (by === undefined) return [];
  const { at, mark, amount } = by;
  const group = groups[at] as PartGroup<C>;
  const { places, choices } = group;
  const having = choices.filter(({ marks }) => marks.includes(mark));
  const others = groups.filter((_, index) => index !== at);
  const one: PartGroup<C>[] = [...others, { ...group, places: 1, choices: having }];
  if (places > 1) one.push({ ...group, places: places - 1 });
  const none = [...others, { ...group, choices: choices.filter(({ marks }) => !marks.includes(mark)) }];
  return amount >= 0.5 ? [none, one] : [one, none];
}

function tooMany(): never {
  return fail(
    'TOO_LARGE',
    '',
    'a choice that can be proved',
    'too many combinations',
    'Name fewer tie-downs at once, or leave items out that will not be used.',
  );
}
