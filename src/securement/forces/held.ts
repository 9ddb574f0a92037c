import { decimalProduct } from '../../quantities/decimal.js';
import { compareExactSums, type ExactTerm, type Ratio, ratioOf } from '../../quantities/exact.js';
import type { QuantityLike } from '../../quantities/quantity.js';
import { type Check, type CheckSubject, ratioCheck, undeterminedCheck } from '../../working/check.js';
import type { Note } from '../../working/note.js';
import type { Run } from '../layout.js';
import { type Heading, holdingBack, pressingDown } from './directions.js';
import { amountOf, type Sum, times, totalOf } from './sums.js';
import { absentRuns, type CountedForce, unbounded } from './tie-downs.js';
import { leversOf, momentOf, type TippingEdge } from './tipping-edge.js';

/** A number as far as it is known: at least this, and while a fact is missing at most that. */
export interface Span {
  readonly least: number;
  readonly most: number;
  readonly missing?: readonly Note[];
}

/** A share of a span, as the decimals they are. */
export const shareOf = (share: number, { least, most }: Span): Span => ({
  least: decimalProduct(share, least),
  most: decimalProduct(share, most),
});

export const exactly = (value: number): Span => ({ least: value, most: value });

/** What holds a load, as far as it is known: the sum that is certain, the most that it can be, and what would settle it. */
export interface Held {
  readonly least: Sum;
  readonly most: Sum;
  readonly missing: readonly Note[];
}

/** A sum that is known. */
export const known = (sum: Sum): Held => ({ least: sum, most: sum, missing: [] });

/** Something that may hold anything, until a fact is known. */
export const anything = (fact: Note): Held => ({
  least: [],
  most: [{ quantity: unbounded() }],
  missing: [fact],
});

/** A sum multiplied by a number that may not be known, such as a friction factor. */
export const timesSpan = (sum: Sum, { least, most, missing = [] }: Span): Held => ({
  least: times(sum, least),
  most: times(sum, most),
  missing,
});

/** Several that hold together. */
export const together = (...all: readonly Held[]): Held => ({
  least: all.flatMap(({ least }) => least),
  most: all.flatMap(({ most }) => most),
  missing: all.flatMap(({ missing }) => missing),
});

/**
 * What direct tie-downs hold back from a heading: sum(F · (cos α · cos β + μ · sin α)) over the runs that hold back. One
 * that would pull the load along is left out. A run without points holds nothing at worst; at best it pulls at the best
 * angle there is, F · sqrt(1 + μ²).
 */
export const heldDirectly = (direct: readonly CountedForce[], heading: Heading, mu: Span = exactly(0)): Held =>
  heldBy(direct, (runs, at) => directShare(runs, heading, mu[at]), Math.hypot(1, mu.most));

export const directShare = (runs: readonly Run[], heading: Heading, mu: number): number =>
  sumOf(runs, (run) => (holdingBack(run, heading) > 0 ? holdingBack(run, heading) + mu * pressingDown(run) : 0));

/**
 * What direct tie-downs hold back from a heading where the rule counts no friction of theirs: sum(F · (cos α · cos β − μ ·
 * lift)) over the runs that hold back. One that runs upward from the load lifts it by F · lift as it holds, and what the
 * deck no longer bears rubs no more.
 */
export const heldLessLift = (direct: readonly CountedForce[], heading: Heading, mu: Span): Held =>
  heldBy(direct, (runs, at) => shareLessLift(runs, heading, mu[at]), 1);

export const shareLessLift = (runs: readonly Run[], heading: Heading, mu: number): number =>
  sumOf(runs, (run) =>
    holdingBack(run, heading) > 0 ? holdingBack(run, heading) + mu * Math.min(0, pressingDown(run)) : 0,
  );

/**
 * What tensions press the load down with, whichever the heading: sum(F · sin α), times `by`, such as a friction factor.
 * A run that lifts takes away from it.
 */
export const pressedDown = (over: readonly CountedForce[], by: Span = exactly(1)): Held =>
  heldBy(over, pressedShare, 1, by);

export const pressedShare = (runs: readonly Run[]): number => sumOf(runs, pressingDown);

/** What direct tie-downs hold down with their strength, sum(F · sin α): nothing asks a run that would lift to pull. */
export const heldDown = (direct: readonly CountedForce[]): Held => heldBy(direct, downShare, 1);

export const downShare = (runs: readonly Run[]): number => sumOf(runs, (run) => Math.max(0, pressingDown(run)));

/** What direct tie-downs hold against tipping: the moments of the runs that hold back, see {@link momentOf}. */
export const heldAgainstTipping = (direct: readonly CountedForce[], edge: TippingEdge): Held =>
  heldBy(direct, (runs) => tippingShare(runs, edge), Number.POSITIVE_INFINITY);

export const tippingShare = (runs: readonly Run[], edge: TippingEdge): number =>
  sumOf(runs, (run) => (holdingBack(run, edge.heading) > 0 ? momentOf(run, edge) : 0));

/**
 * What tie-downs over the load hold against tipping: sum(F · s · sin α). The level parts of the two runs pull against
 * each other and are left out.
 */
export const pressedAbout = (over: readonly CountedForce[], edge: TippingEdge): Held =>
  heldBy(over, (runs) => sumOf(runs, (run) => leversOf(run, edge).s * pressingDown(run)), Number.POSITIVE_INFINITY);

const sumOf = (runs: readonly Run[], share: (run: Run) => number): number =>
  runs.reduce((sum, run) => sum + share(run), 0);

/**
 * sum(F · share · by): the share is that of all runs of a tie-down that the plan has points for, for a newton in each;
 * `best` is the most that a run without points could have. One that does harm does the more of it the harder it pulls. A
 * tie-down that matters in no case is left out with the facts that it lacks.
 */
export function heldBy(
  counted: readonly CountedForce[],
  shareOf: (runs: readonly Run[], at: 'least' | 'most') => number,
  best: number,
  by: Span = exactly(1),
): Held {
  const held = { least: [] as ExactTerm[], most: [] as ExactTerm[], missing: [] as Note[] };
  const add = (at: 'least' | 'most', quantity: QuantityLike, share: number) => {
    const factor = by[share < 0 === (at === 'least') ? 'most' : 'least'];
    // nothing of a force that is not known is nothing
    if (share !== 0 && factor !== 0 && quantity.value !== 0) held[at].push({ quantity, times: [share, factor] });
  };
  for (const { layout, force, missing } of counted) {
    const absent = absentRuns(layout);
    const [least, most] = [shareOf(layout.runs, 'least'), shareOf(layout.runs, 'most')];
    if ((least === 0 && most === 0 && absent === 0) || force.most.value === 0) continue;
    held.missing.push(...missing);
    add('least', force[least > 0 ? 'least' : 'most'], least);
    add('most', force[most > 0 ? 'most' : 'least'], most);
    if (absent > 0) add('most', force.most, absent * best);
  }
  return held;
}

/**
 * A demand against what holds, decided exactly: it passes when what is certain is enough, fails when even the most is
 * too little, and is undetermined in between. What pulls the wrong way can leave less than nothing, which is shown as
 * nothing.
 */
export function judgeHeld(
  about: CheckSubject,
  demand: Sum,
  { least, most, missing }: Held,
  show: (sum: Sum) => QuantityLike | number,
): Check {
  const certain = ratioOfSums(demand, least);
  const best = certain.fits ? certain : ratioOfSums(demand, most);
  if (best.fits && !certain.fits) return undeterminedCheck(about, missing);
  const capacity = certain.fits ? least : most;
  const there = totalOf(capacity) > 0 || totalOf(demand) < 0 ? capacity : [];
  return ratioCheck(about, certain.fits, show(demand), show(there), best.utilization);
}

function ratioOfSums(demand: Sum, capacity: Sum): Ratio {
  const asked = amountOf(demand, 'N').value;
  const held = totalOf(capacity);
  // next to nothing is held, or the load goes by itself
  if (held <= 0 || asked / held === Number.POSITIVE_INFINITY) return { fits: asked <= held, utilization: null };
  return ratioOf(asked, held, () => compareExactSums(demand, capacity));
}

/** What a step shows of it: the sum where it is known, else null. */
export const ifKnown = <Shown>({ least, most }: Held, show: (sum: Sum) => Shown): Shown | null =>
  totalOf(least) === totalOf(most) ? show(least) : null;

/** The greater of two ways to hold a load, at worst and at best. */
export function better(one: Held, other: Held): Held {
  const greater = (at: 'least' | 'most') => (totalOf(one[at]) >= totalOf(other[at]) ? one : other)[at];
  const missing = [...new Set([...one.missing, ...other.missing])];
  return { least: greater('least'), most: greater('most'), missing };
}

/** The check of a requirement that has several: the one that is met worst, among equals the one most used. */
export function worstOf(checks: readonly Check[]): Check {
  return checks.reduce((worst, check) => (rankOf(check) > rankOf(worst) ? check : worst));
}

/** The lower the better: pass, undetermined, fail; among equals by how far the forces are used. */
export function rankOf(check: Check): number {
  const used = 'utilization' in check ? (check.utilization ?? Number.MAX_VALUE) : 0;
  if (check.verdict === 'fail') return UNDECIDED + used;
  return check.verdict === 'undetermined' ? UNDECIDED : Math.min(used, 1);
}

const UNDECIDED = 2;
