import { fail } from '../errors.js';
import { inUnit } from '../quantities/convert.js';
import { decimalProduct } from '../quantities/decimal.js';
import { compareExactSums, type ExactTerm, type Ratio, ratioOf } from '../quantities/exact.js';
import type { Quantity, QuantityLike } from '../quantities/quantity.js';
import { ratedLoadIn } from '../quantities/rated.js';
import { UNITS, type UnitSystem } from '../quantities/units.js';
import { type Check, type CheckSubject, notApplicableCheck, ratioCheck, undeterminedCheck } from '../working/check.js';
import { type Note, note, type Words } from '../working/note.js';
import type { Heading, TippingEdge } from './forces.js';

/** A value as far as it is known: at least this, and while a fact is missing at most that. */
export interface Span {
  readonly least: number;
  readonly most: number;
}

export const exactly = (value: number): Span => ({ least: value, most: value });

/** A share of a value, as the decimal it is. */
export function shareOf(share: number, { least, most }: Span): Span {
  return {
    least: decimalProduct(share, least),
    most: Number.isFinite(most) ? decimalProduct(share, most) : most,
  };
}

/** A sum of products, kept as its factors: where rounding could decide a comparison, the decimals themselves do. */
export type Sum = readonly (readonly number[])[];

/** A sum as far as it is known. */
export interface SumSpan {
  readonly least: Sum;
  readonly most: Sum;
}

export function totalOf(sum: Sum): number {
  return sum.reduce((total, factors) => total + factors.reduce((product, factor) => product * factor, 1), 0);
}

/** What a step shows of a value: the value where it is known, else null. */
export function ifKnown<Shown>({ least, most }: Span, show: (value: number) => Shown): Shown | null {
  return least === most ? show(least) : null;
}

/** The value of a sum as far as it is known. */
export const totalSpan = ({ least, most }: SumSpan): Span => ({ least: totalOf(least), most: totalOf(most) });

/** The sums of several spans together. */
export function together(...spans: readonly SumSpan[]): SumSpan {
  return { least: spans.flatMap(({ least }) => least), most: spans.flatMap(({ most }) => most) };
}

/** The greater of two ways to hold a load. */
export function better(one: SumSpan, other: SumSpan): SumSpan {
  const greater = (at: keyof SumSpan) => (totalOf(one[at]) >= totalOf(other[at]) ? one[at] : other[at]);
  return { least: greater('least'), most: greater('most') };
}

/**
 * A demand against what is held as far as that is known: it passes when the least is enough, fails when even the most
 * is too little, and is undetermined in between.
 */
export function judgeSpan(
  about: CheckSubject,
  demand: Sum,
  { least, most }: SumSpan,
  show: (value: number) => QuantityLike | number,
  missing: readonly Note[],
): Check {
  const known = ratioOfSums(demand, least);
  const best = known.fits ? known : ratioOfSums(demand, most);
  if (best.fits && !known.fits) return undeterminedCheck(about, missing);
  const capacity = totalOf(known.fits ? least : most);
  return ratioCheck(about, known.fits, show(totalOf(demand)), show(capacity), best.utilization);
}

function ratioOfSums(demand: Sum, capacity: Sum): Ratio {
  const asked = totalOf(demand);
  const held = totalOf(capacity);
  if (!Number.isFinite(asked)) fail('NOT_FINITE', '', 'loads of a possible size', asked, 'Check the numbers.');
  // next to nothing is held, or the load goes by itself
  if (held <= 0 || asked / held === Number.POSITIVE_INFINITY) return { fits: asked <= held, utilization: null };
  return ratioOf(asked, held, () => compareExactSums(termsOf(demand), termsOf(capacity)));
}

const termsOf = (sum: Sum): ExactTerm[] => sum.map((times) => ({ quantity: { value: 1, unit: 'N' }, times }));

/** A quantity in a smaller unit of its system as the decimal it is, 12.3 t as 12300 kg; in another system as the nearest double. */
export function decimalIn(quantity: QuantityLike, unit: 'N' | 'kg'): number {
  const { value, unit: from } = quantity;
  const factor = UNITS[from].steps / UNITS[unit].steps;
  const exact = UNITS[from].dimension === UNITS[unit].dimension && Number.isInteger(factor);
  return exact ? decimalProduct(value, factor) : ratedLoadIn(quantity, unit).value;
}

/** A tipping check without moments: the stance of the article is not known, or its center of gravity lies no higher than the edge. */
export function withoutMoments(about: CheckSubject, article: string, edge: TippingEdge | undefined): Check {
  return edge === undefined
    ? undeterminedCheck(about, [note(STANCE_NOT_STATED, { article })])
    : notApplicableCheck(about, note(LOW_CENTER, { article }));
}

/** A force in newtons as it is shown. */
export function shownForce(newtons: number, units: UnitSystem): Quantity<'lbf' | 'kN'> {
  return inUnit({ value: newtons, unit: 'N' }, units === 'us' ? 'lbf' : 'kN');
}

/** The unit of a moment that is shown as a plain number. */
export const momentUnit = (units: UnitSystem): string => (units === 'us' ? 'lbf ft' : 'kN m');

/** A moment in newton meters as it is shown, a plain number in {@link momentUnit}. */
export function shownMoment(newtonMeters: number, units: UnitSystem): number {
  const { value } = shownForce(newtonMeters, units);
  return units === 'us' ? inUnit({ value, unit: 'm' }, 'ft').value : value;
}

/** A heading in the title of a check: sliding forward, tipping to the left. */
export const TOWARD: Readonly<Record<Heading, string>> = {
  forward: 'forward',
  rearward: 'rearward',
  left: 'to the left',
  right: 'to the right',
};

const STANCE_NOT_STATED: Words = [
  'STANCE_NOT_STATED',
  'The center of gravity of {article} and the contacts it stands on.',
];
const LOW_CENTER: Words = [
  'CENTER_OF_GRAVITY_NOT_ABOVE_EDGE',
  'The center of gravity of {article} lies no higher than the edge it would tip over.',
];
