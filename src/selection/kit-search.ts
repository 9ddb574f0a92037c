import { fail } from '../errors.js';

/**
 * The search behind a kit, in plain numbers: one choice for each place, the least cost together, under sums that must be
 * reached, things of which there are only so many, and sums that must not be passed.
 *
 * It proves its answer. Multipliers on the constraints give a bound that no choice can beat (a Lagrangian bound, from which
 * every choice has an excess); then every combination whose excess could still beat the best one found is gone through.
 */
export interface Choice {
  readonly cost: number;
  /** What it adds to the sum of its group. */
  readonly adds: number;
  /** What it takes of each limited sum, in the order of {@link SearchProblem.limits}. */
  readonly takes: readonly number[];
  /** Which scarce things it uses, one entry for each piece. */
  readonly uses: readonly number[];
}

/** Places that are alike: the same choices are open to each, so that their order does not matter. */
export interface ChoiceGroup<C extends Choice = Choice> {
  readonly places: number;
  readonly choices: readonly C[];
  /** The sum that they add to; left out where they add to none. */
  readonly sum?: number;
}

export interface SearchProblem<C extends Choice = Choice> {
  readonly groups: readonly ChoiceGroup<C>[];
  /** What each sum must reach. */
  readonly required: readonly number[];
  /** How many pieces there are of each scarce thing. */
  readonly pieces: readonly number[];
  readonly limits: readonly number[];
  /** Costs closer than this count as equal. */
  readonly tolerance: number;
  /** Decides exactly where a sum is so close to its limit that rounding could. */
  readonly holds: (chosen: readonly (readonly C[])[]) => boolean;
}

/** Below this relative gap a sum of doubles does not decide. */
const CLEAR_GAP = 1e-9;
const ROUNDS = 160;
/** Combinations looked at before giving up; a kit of a dozen tie-downs takes a few thousand. */
const MOST_NODES = 2e7;

/** The least-cost choices, place by place in each group; null where nothing satisfies the constraints. */
export function searchLeastCost<C extends Choice>(problem: SearchProblem<C>): C[][] | null {
  const { groups, required } = problem;
  if (groups.some(({ choices }) => choices.length === 0)) return null;
  if (required.some((least, sum) => mostOf(groups, sum) < least * (1 - CLEAR_GAP))) return null;
  const bounds = excessesOf(problem);
  if (bounds === null) return null;
  return new Descent(problem, bounds).run();
}

function mostOf(groups: readonly ChoiceGroup[], sum: number): number {
  return groups.reduce(
    (total, group) =>
      total + (group.sum === sum ? group.places * Math.max(...group.choices.map(({ adds }) => adds)) : 0),
    0,
  );
}

interface Bounds {
  /** No choice costs less than this. */
  readonly bound: number;
  /** By group: its choices, the least excess first. */
  readonly ranked: readonly (readonly Ranked[])[];
  /** What rounding may have cost the bound. */
  readonly rounding: number;
}

interface Ranked {
  /** The choice by its place in the list of its group. */
  readonly index: number;
  /** By how much the cost must be above the bound where this is chosen. */
  readonly excess: number;
}

/** Multipliers of the constraints: sums, pieces, limits. */
interface Multipliers {
  readonly sums: number[];
  readonly pieces: number[];
  readonly limits: number[];
}

/** Raises the bound by subgradient steps, and ranks the choices by it. Null where the bound shows that nothing will do. */
function excessesOf({ groups, required, pieces, limits }: Omit<SearchProblem, 'holds'>): Bounds | null {
  const none = (): Multipliers => ({
    sums: required.map(() => 0),
    pieces: pieces.map(() => 0),
    limits: limits.map(() => 0),
  });
  let multipliers = none();
  let best = multipliers;
  let bound = Number.NEGATIVE_INFINITY;
  const greatest = groups.reduce((sum, { places, choices }) => sum + places * Math.max(...choices.map(costOf)), 0);
  const least = groups.reduce((sum, { places, choices }) => sum + places * Math.min(...choices.map(costOf)), 0);
  const spread = Math.max(greatest - least, 1e-12);
  let reach = 0.3; // how far above the best bound the next step aims, as a share of the spread
  let idle = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const { sums, pieces: used, limits: taken } = multipliers;
    let value = 0;
    const short = required.slice();
    const over = pieces.map((count) => -count);
    const beyond = limits.map((limit) => -limit);
    required.forEach((each, sum) => {
      value += (sums[sum] as number) * each;
    });
    pieces.forEach((count, thing) => {
      value -= (used[thing] as number) * count;
    });
    limits.forEach((limit, at) => {
      value -= (taken[at] as number) * limit;
    });
    for (const { places, choices, sum } of groups) {
      let chosen = choices[0] as Choice;
      let lowest = Number.POSITIVE_INFINITY;
      for (const choice of choices) {
        const reduced = reducedCost(choice, sum, multipliers);
        if (reduced < lowest) {
          lowest = reduced;
          chosen = choice;
        }
      }
      value += places * lowest;
      if (sum !== undefined) short[sum] = (short[sum] as number) - places * chosen.adds;
      for (const thing of chosen.uses) over[thing] = (over[thing] as number) + places;
      chosen.takes.forEach((amount, at) => {
        beyond[at] = (beyond[at] as number) + places * amount;
      });
    }
    if (value > bound + 1e-9 * spread) idle = 0;
    else if (++idle >= 6) {
      reach /= 2;
      idle = 0;
    }
    if (value > bound) {
      bound = value;
      best = multipliers;
    }
    if (bound > greatest + 1e-6 * spread + 1e-9 * Math.abs(greatest)) return null; // no choice costs so much: nothing will do
    // each constraint in its own scale, so that pounds and pieces step alike
    const scaled = [
      ...short.map((each, sum) => each / Math.max(required[sum] as number, 1e-12)),
      ...over.map((each, thing) => each / Math.max(pieces[thing] as number, 1)),
      ...beyond.map((each, at) => each / Math.max(Math.abs(limits[at] as number), 1e-12)),
    ];
    const active = scaled.map((each, at) => (each < 0 && multiplierAt(multipliers, at) === 0 ? 0 : each));
    const length = active.reduce((sum, each) => sum + each * each, 0);
    if (length === 0 || reach < 1e-7) break;
    const step = (bound + reach * spread - value) / length;
    const next = none();
    const raise = (list: number[], from: readonly number[], scales: readonly number[], offset: number, least: number) =>
      from.forEach((multiplier, at) => {
        const scale = Math.max(Math.abs(scales[at] as number), least);
        list[at] = Math.max(0, multiplier + (step * (active[offset + at] as number)) / scale);
      });
    raise(next.sums, sums, required, 0, 1e-12);
    raise(next.pieces, used, pieces, required.length, 1);
    raise(next.limits, taken, limits, required.length + pieces.length, 1e-12);
    multipliers = next;
  }
  let size = Math.abs(bound);
  best.sums.forEach((multiplier, sum) => {
    size += multiplier * (required[sum] as number);
  });
  best.pieces.forEach((multiplier, thing) => {
    size += multiplier * (pieces[thing] as number);
  });
  best.limits.forEach((multiplier, at) => {
    size += multiplier * Math.abs(limits[at] as number);
  });
  const ranked = groups.map(({ choices, sum }) => {
    const reduced = choices.map((choice) => reducedCost(choice, sum, best));
    const lowest = Math.min(...reduced);
    return reduced
      .map((each, index): Ranked => ({ index, excess: each - lowest }))
      .sort((a, b) => a.excess - b.excess || a.index - b.index);
  });
  return { bound, ranked, rounding: 1e-13 * size };
}

const costOf = ({ cost }: Choice): number => cost;

function multiplierAt({ sums, pieces, limits }: Multipliers, at: number): number {
  if (at < sums.length) return sums[at] as number;
  const rest = at - sums.length;
  return (rest < pieces.length ? pieces[rest] : limits[rest - pieces.length]) as number;
}

function reducedCost({ cost, adds, takes, uses }: Choice, sum: number | undefined, by: Multipliers): number {
  let reduced = sum === undefined ? cost : cost - (by.sums[sum] as number) * adds;
  for (const thing of uses) reduced += by.pieces[thing] as number;
  for (let at = 0; at < takes.length; at++) reduced += (by.limits[at] as number) * (takes[at] as number);
  return reduced;
}

/** Goes through the combinations place by place, those of the least excess first, with a growing allowance. */
class Descent<C extends Choice> {
  private readonly problem: SearchProblem<C>;
  private readonly bounds: Bounds;
  /** The group of each place. */
  private readonly groupAt: number[] = [];
  /** How many places of the same group there are from here on. */
  private readonly alikeFrom: number[] = [];
  /** What the places from here on add at most, by sum. */
  private readonly mostAfter: number[][];
  /** What the places from here on take at least, by limit. */
  private readonly leastAfter: number[][];
  /** What the places from here on cost at least. */
  private readonly costAfter: number[];
  private readonly sums: number[];
  private readonly taken: number[];
  private readonly left: number[];
  private readonly path: number[] = [];
  private best: readonly number[] | null = null;
  private bestCost = Number.POSITIVE_INFINITY;
  private allowance = 0;
  private cut = false;
  private nodes = 0;

  constructor(problem: SearchProblem<C>, bounds: Bounds) {
    this.problem = problem;
    this.bounds = bounds;
    const { groups, required, limits, pieces } = problem;
    groups.forEach(({ places }, group) => {
      for (let place = 0; place < places; place++) {
        this.groupAt.push(group);
        this.alikeFrom.push(places - place);
      }
    });
    const ends = this.groupAt.length;
    this.mostAfter = Array.from({ length: ends + 1 }, () => required.map(() => 0));
    this.leastAfter = Array.from({ length: ends + 1 }, () => limits.map(() => 0));
    this.costAfter = new Array<number>(ends + 1).fill(0);
    for (let place = ends - 1; place >= 0; place--) {
      const { choices, sum } = groups[this.groupAt[place] as number] as ChoiceGroup<C>;
      const most = (this.mostAfter[place + 1] as number[]).slice();
      if (sum !== undefined) most[sum] = (most[sum] as number) + Math.max(...choices.map(({ adds }) => adds));
      this.mostAfter[place] = most;
      this.leastAfter[place] = (this.leastAfter[place + 1] as number[]).map(
        (each, at) => each + Math.min(...choices.map(({ takes }) => takes[at] as number)),
      );
      this.costAfter[place] = (this.costAfter[place + 1] as number) + Math.min(...choices.map(costOf));
    }
    this.sums = required.map(() => 0);
    this.taken = limits.map(() => 0);
    this.left = pieces.slice();
  }

  run(): C[][] | null {
    const { ranked, bound, rounding } = this.bounds;
    const steps = ranked
      .flatMap((choices) => choices.map(({ excess }) => excess))
      .filter((excess) => excess > rounding);
    this.allowance = Math.max(Math.min(...steps, Number.POSITIVE_INFINITY), 1e-6 * Math.abs(bound), 1e-9);
    if (!Number.isFinite(this.allowance)) this.allowance = 1;
    for (;;) {
      this.cut = false;
      this.descend(0, 0, 0, 0);
      if (!this.cut) break;
      // what was left out costs more than the bound and the allowance together
      const needed = this.best === null ? 3 * this.allowance : this.bestCost - bound;
      if (needed <= this.allowance) break;
      this.allowance = needed;
    }
    return this.best === null ? null : this.choicesOf(this.best);
  }

  private choicesOf(path: readonly number[]): C[][] {
    const { groups } = this.problem;
    const chosen: C[][] = groups.map(() => []);
    path.forEach((rank, place) => {
      const group = this.groupAt[place] as number;
      const { index } = (this.bounds.ranked[group] as Ranked[])[rank] as Ranked;
      (chosen[group] as C[]).push((groups[group] as ChoiceGroup<C>).choices[index] as C);
    });
    return chosen;
  }

  private descend(place: number, from: number, excess: number, cost: number): void {
    const { problem, bounds } = this;
    if (place === this.groupAt.length) {
      this.arrive(cost);
      return;
    }
    if (++this.nodes > MOST_NODES) tooMany();
    const group = this.groupAt[place] as number;
    const ranked = bounds.ranked[group] as readonly Ranked[];
    const { choices, sum } = problem.groups[group] as ChoiceGroup<C>;
    for (let rank = from; rank < ranked.length; rank++) {
      const { index, excess: own } = ranked[rank] as Ranked;
      // alike places take their choices in order, so each later one of the group has at least this excess too
      const total = excess + own;
      const least = excess + own * (this.alikeFrom[place] as number);
      if (bounds.bound + least - bounds.rounding > this.bestCost - problem.tolerance) break;
      if (least > this.allowance) {
        this.cut = true;
        break;
      }
      const choice = choices[index] as C;
      const spent = cost + choice.cost;
      if (spent + (this.costAfter[place + 1] as number) > this.bestCost - problem.tolerance) continue;
      if (!this.takePieces(choice)) continue;
      if (sum !== undefined) this.sums[sum] = (this.sums[sum] as number) + choice.adds;
      for (let at = 0; at < this.taken.length; at++) {
        this.taken[at] = (this.taken[at] as number) + (choice.takes[at] as number);
      }
      if (this.canStillHold(place + 1)) {
        const next = this.groupAt[place + 1] === group ? rank : 0;
        this.path.push(rank);
        this.descend(place + 1, next, total, spent);
        this.path.pop();
      }
      if (sum !== undefined) this.sums[sum] = (this.sums[sum] as number) - choice.adds;
      for (let at = 0; at < this.taken.length; at++) {
        this.taken[at] = (this.taken[at] as number) - (choice.takes[at] as number);
      }
      for (const thing of choice.uses) this.left[thing] = (this.left[thing] as number) + 1;
    }
  }

  /** Takes the scarce pieces of a choice, or none of them where one is missing. */
  private takePieces({ uses }: C): boolean {
    for (let at = 0; at < uses.length; at++) {
      const thing = uses[at] as number;
      const left = (this.left[thing] as number) - 1;
      this.left[thing] = left;
      if (left < 0) {
        for (let back = 0; back <= at; back++) {
          const taken = uses[back] as number;
          this.left[taken] = (this.left[taken] as number) + 1;
        }
        return false;
      }
    }
    return true;
  }

  private canStillHold(place: number): boolean {
    const { required, limits } = this.problem;
    const most = this.mostAfter[place] as number[];
    const least = this.leastAfter[place] as number[];
    for (let sum = 0; sum < required.length; sum++) {
      const needed = required[sum] as number;
      if ((this.sums[sum] as number) + (most[sum] as number) < needed * (1 - CLEAR_GAP)) return false;
    }
    for (let at = 0; at < limits.length; at++) {
      const limit = limits[at] as number;
      if ((this.taken[at] as number) + (least[at] as number) > limit + CLEAR_GAP * Math.abs(limit)) return false;
    }
    return true;
  }

  private arrive(cost: number): void {
    if (cost > this.bestCost - this.problem.tolerance) return;
    const { required, limits, holds } = this.problem;
    const close =
      required.some((each, sum) => (this.sums[sum] as number) < each * (1 + CLEAR_GAP)) ||
      limits.some((limit, at) => (this.taken[at] as number) > limit - CLEAR_GAP * Math.abs(limit));
    if (close && !holds(this.choicesOf(this.path))) return;
    this.best = this.path.slice();
    this.bestCost = cost;
  }
}

function tooMany(): never {
  return fail(
    'TOO_LARGE',
    '',
    `at most ${MOST_NODES} combinations`,
    'more',
    'Name fewer tie-downs at once, or leave items out that will not be used.',
  );
}
