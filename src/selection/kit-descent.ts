import type { Bounds, Side } from './kit-bound.js';
import {
  type Choice,
  type ChoiceGroup,
  CLEAR_GAP,
  type Incumbent,
  least,
  most,
  type SearchProblem,
} from './search-problem.js';

/** Goes through the combinations place by place, those of the least excess first, with a growing allowance. */
export class Descent<C extends Choice> {
  private readonly problem: SearchProblem<C>;
  private readonly bounds: Bounds;
  private readonly sides: readonly Side[];
  private readonly incumbent: Incumbent<C>;
  private readonly effort: number;
  /** By group: its choices by their place in its list, those of the least excess first. */
  private readonly ranked: readonly (readonly number[])[];
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
  private readonly rooms: number[];
  private readonly path: number[] = [];
  private allowance = 0;
  private cut = false;
  /** Combinations looked at, unfinished ones among them. */
  nodes = 0;

  constructor(
    problem: SearchProblem<C>,
    bounds: Bounds,
    sides: readonly Side[],
    incumbent: Incumbent<C>,
    effort: number,
  ) {
    this.problem = problem;
    this.bounds = bounds;
    this.sides = sides;
    this.rooms = sides.map(({ room }) => room);
    this.ranked = bounds.excesses.map((excesses) =>
      excesses.map((_, index) => index).sort((a, b) => (excesses[a] as number) - (excesses[b] as number) || a - b),
    );
    this.incumbent = incumbent;
    this.effort = effort;
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
      const reach = (this.mostAfter[place + 1] as number[]).slice();
      if (sum !== undefined) reach[sum] = (reach[sum] as number) + most(choices.map(({ adds }) => adds));
      this.mostAfter[place] = reach;
      this.leastAfter[place] = (this.leastAfter[place + 1] as number[]).map(
        (each, at) => each + least(choices.map(({ takes }) => takes[at] as number)),
      );
      this.costAfter[place] = (this.costAfter[place + 1] as number) + least(choices.map(({ cost }) => cost));
    }
    this.sums = required.map(() => 0);
    this.taken = limits.map(() => 0);
    this.left = pieces.slice();
  }

  /** False where it gave up before everything was looked at. */
  run(): boolean {
    const { excesses, bound, rounding } = this.bounds;
    const steps = excesses.flat().filter((excess) => excess > rounding);
    this.allowance = Math.max(least(steps), 1e-6 * Math.abs(bound), 1e-9);
    if (!Number.isFinite(this.allowance)) this.allowance = 1;
    for (;;) {
      this.cut = false;
      this.descend(0, 0, 0, 0);
      if (!this.cut || this.tired()) break;
      // what was left out costs more than the bound and the allowance together
      const needed = Math.min(3 * this.allowance, this.incumbent.cost - bound);
      if (needed <= this.allowance) break;
      this.allowance = needed;
    }
    return !this.tired();
  }

  private tired(): boolean {
    return this.nodes > this.effort;
  }

  private choicesOf(path: readonly number[]): C[][] {
    const { groups } = this.problem;
    const chosen: C[][] = groups.map(() => []);
    path.forEach((rank, place) => {
      const group = this.groupAt[place] as number;
      const index = (this.ranked[group] as readonly number[])[rank] as number;
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
    this.nodes++;
    if (this.tired()) return;
    const group = this.groupAt[place] as number;
    const ranked = this.ranked[group] as readonly number[];
    const excesses = bounds.excesses[group] as readonly number[];
    const { choices, sum } = problem.groups[group] as ChoiceGroup<C>;
    for (let rank = from; rank < ranked.length; rank++) {
      const index = ranked[rank] as number;
      const own = excesses[index] as number;
      // alike places take their choices in order, so each later one of the group has at least this excess too
      const total = excess + own;
      const least = excess + own * (this.alikeFrom[place] as number);
      if (bounds.bound + least - bounds.rounding > this.incumbent.cost - problem.tolerance) break;
      if (least > this.allowance) {
        this.cut = true;
        break;
      }
      const choice = choices[index] as C;
      const spent = cost + choice.cost;
      if (spent + (this.costAfter[place + 1] as number) > this.incumbent.cost - problem.tolerance) continue;
      if (!this.hasRoom(group, index) || !this.takePieces(choice)) continue;
      if (sum !== undefined) this.sums[sum] = (this.sums[sum] as number) + choice.adds;
      for (let at = 0; at < this.taken.length; at++) {
        this.taken[at] = (this.taken[at] as number) + (choice.takes[at] as number);
        this.rooms[at] = (this.rooms[at] as number) - this.beyond(at, group, index);
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
        this.rooms[at] = (this.rooms[at] as number) + this.beyond(at, group, index);
      }
      for (const thing of choice.uses) this.left[thing] = (this.left[thing] as number) + 1;
    }
  }

  private beyond(side: number, group: number, index: number): number {
    return ((this.sides[side] as Side).excesses[group] as readonly number[])[index] as number;
  }

  private hasRoom(group: number, index: number): boolean {
    for (let side = 0; side < this.rooms.length; side++) {
      if (this.beyond(side, group, index) > (this.rooms[side] as number)) return false;
    }
    return true;
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
    if (cost > this.incumbent.cost - this.problem.tolerance) return;
    const { required, limits, holds } = this.problem;
    const close =
      required.some((each, sum) => (this.sums[sum] as number) < each * (1 + CLEAR_GAP)) ||
      limits.some((limit, at) => (this.taken[at] as number) > limit - CLEAR_GAP * Math.abs(limit));
    const chosen = this.choicesOf(this.path);
    if (close && !holds(chosen)) return;
    this.incumbent.chosen = chosen;
    this.incumbent.cost = cost;
  }
}
