import { ratioOf } from '../quantities/exact.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { type Note, note } from './note.js';

/** The answer of a check. A missing fact gives `undetermined`, never a pass. */
export type Verdict = 'pass' | 'fail' | 'not-applicable' | 'undetermined';

/** What a check is about, before its answer. */
export interface CheckSubject {
  /** Unique in its result: the clause and what it was applied to, such as `393.106(d)/tractor`. */
  readonly id: string;
  readonly title: string;
  /** The paragraph, such as `49 CFR 393.106(d)`; for a habit of the trade `common practice`. */
  readonly clause: string;
  /** `requirement` decides the verdict of the whole; `practice` is advice beside it. */
  readonly weight: 'requirement' | 'practice';
  /** What was checked: the id of an article, a tie-down or a part. */
  readonly subject: string;
}

/** A demand held against a capacity: pass when demand / capacity is at most 1, decided exactly. */
export interface RatioCheck extends CheckSubject {
  readonly verdict: 'pass' | 'fail';
  readonly demand: QuantityLike | number;
  readonly capacity: QuantityLike | number;
  /** demand / capacity, unrounded; null when there is no capacity at all. */
  readonly utilization: number | null;
}

/** A condition that is met or not. */
export interface ConditionCheck extends CheckSubject {
  readonly verdict: 'pass' | 'fail';
  readonly because: Note;
}

export interface NotApplicableCheck extends CheckSubject {
  readonly verdict: 'not-applicable';
  readonly because: Note;
}

export interface UndeterminedCheck extends CheckSubject {
  readonly verdict: 'undetermined';
  /** What must be known before this can be decided. */
  readonly missing: readonly Note[];
}

export type Check = RatioCheck | ConditionCheck | NotApplicableCheck | UndeterminedCheck;

// One function for each form, so that every check of a form has the same fields in the same order.

export function ratioCheck(
  { id, title, clause, weight, subject }: CheckSubject,
  fits: boolean,
  demand: QuantityLike | number,
  capacity: QuantityLike | number,
  utilization: number | null,
): RatioCheck {
  return { id, title, clause, weight, subject, verdict: fits ? 'pass' : 'fail', demand, capacity, utilization };
}

/** A demand held against a capacity in one unit, as both are shown: one told as the limit is at the limit. */
export function shownCheck(about: CheckSubject, demand: QuantityLike, capacity: QuantityLike): RatioCheck {
  const order = demand.value < capacity.value ? -1 : demand.value > capacity.value ? 1 : 0;
  const { fits, utilization } = ratioOf(demand.value, capacity.value, () => order);
  return ratioCheck(about, fits, demand, capacity, utilization);
}

function reasonedCheck<V extends 'pass' | 'fail' | 'not-applicable'>(
  { id, title, clause, weight, subject }: CheckSubject,
  verdict: V,
  because: Note,
) {
  return { id, title, clause, weight, subject, verdict, because };
}

export function failedCheck(about: CheckSubject, because: Note): ConditionCheck {
  return reasonedCheck(about, 'fail', because);
}

/** A condition that is met says no more than its title. */
export function metCheck(about: CheckSubject): ConditionCheck {
  return reasonedCheck(about, 'pass', MET);
}

const MET: Note = /* @__PURE__ */ note('MET');

export function notApplicableCheck(about: CheckSubject, because: Note): NotApplicableCheck {
  return reasonedCheck(about, 'not-applicable', because);
}

export function undeterminedCheck(
  { id, title, clause, weight, subject }: CheckSubject,
  missing: readonly Note[],
): UndeterminedCheck {
  return { id, title, clause, weight, subject, verdict: 'undetermined', missing };
}

/** A count held against what there is: whole numbers, so the comparison is exact as it stands. */
export function countCheck(about: CheckSubject, demand: number, capacity: number): RatioCheck {
  return ratioCheck(about, demand <= capacity, demand, capacity, capacity === 0 ? null : demand / capacity);
}

/** The verdict of several checks together, from one of them on; only requirements count. */
export function overallVerdict(checks: readonly Check[], from = 0): Verdict {
  let overall: Verdict = 'not-applicable';
  for (let index = from; index < checks.length; index++) {
    const { weight, verdict } = checks[index] as Check;
    if (weight === 'practice') continue;
    if (verdict === 'fail') return 'fail';
    if (verdict === 'undetermined') overall = 'undetermined';
    else if (verdict === 'pass' && overall === 'not-applicable') overall = 'pass';
  }
  return overall;
}

/**
 * The requirement that decides: a failed condition or one without any capacity first, then the highest
 * utilization among those with the overall verdict; ties go to the first in order.
 */
export function governingCheck(checks: readonly Check[], overall: Verdict): Check | undefined {
  let governing: Check | undefined;
  let highest = Number.NEGATIVE_INFINITY;
  for (const check of checks) {
    if (check.weight === 'practice' || check.verdict !== overall) continue;
    const rank = rankOf(check);
    if (rank > highest) {
      governing = check;
      highest = rank;
    }
  }
  return governing;
}

function rankOf(check: Check): number {
  if ('utilization' in check) return check.utilization ?? Number.POSITIVE_INFINITY;
  return check.verdict === 'fail' ? Number.MAX_VALUE : 0;
}
