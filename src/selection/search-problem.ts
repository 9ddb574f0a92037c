/** A choice for one place of a search, in plain numbers. */
export interface Choice {
  readonly cost: number;
  /** What it adds to the sum of its group. */
  readonly adds: number;
  /** What it takes of each limited sum, in the order of {@link SearchProblem.limits}. */
  readonly takes: readonly number[];
  /** Which scarce things it uses, one entry for each piece. */
  readonly uses: readonly number[];
  /** What tells it from the other choices of its group: no two have the same. */
  readonly marks: readonly number[];
}

/** Places that are alike: the same choices are open to each, so that their order does not matter. */
export interface ChoiceGroup<C extends Choice = Choice> {
  readonly places: number;
  readonly choices: readonly C[];
  /** The sum that they add to; left out where they add to none. */
  readonly sum?: number;
}

/**
 * One choice for each place, the least cost together, under sums that must be reached, things of which there are only so
 * many, and sums that must not be passed.
 */
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

/** The constraints and costs alone. */
export type Bounded = Omit<SearchProblem, 'holds' | 'tolerance'>;

/** The best combination that was found. */
export interface Incumbent<C extends Choice> {
  cost: number;
  chosen: readonly (readonly C[])[] | null;
}

/** Below this relative gap a sum of doubles does not decide. */
export const CLEAR_GAP = 1e-9;

export function least(values: readonly number[]): number {
  let lowest = Number.POSITIVE_INFINITY;
  for (const value of values) if (value < lowest) lowest = value;
  return lowest;
}

export const most = (values: readonly number[]): number => -least(values.map((value) => -value));
