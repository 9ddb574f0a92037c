import { fail } from '../errors.js';
import { inUnit } from '../quantities/convert.js';
import type { Quantity, QuantityLike } from '../quantities/quantity.js';
import type { UnitSystem } from '../quantities/units.js';
import { type Check, type CheckSubject, ratioCheck, undeterminedCheck } from '../working/check.js';
import type { Note } from '../working/note.js';
import type { Heading } from './forces.js';

/** A value as far as it is known: at least this, and while a fact is missing at most that. */
export interface Span {
  readonly least: number;
  readonly most: number;
}

export const exactly = (value: number): Span => ({ least: value, most: value });

/**
 * A demand against what is held as far as that is known: it passes when the least is enough, fails when even the most
 * is too little, and is undetermined in between.
 */
export function judgeSpan(
  about: CheckSubject,
  demand: number,
  { least, most }: Span,
  show: (value: number) => QuantityLike | number,
  missing: readonly Note[],
): Check {
  const fits = demand <= least;
  const capacity = fits ? least : most;
  if (!Number.isFinite(demand) || capacity === Number.NEGATIVE_INFINITY || (fits && !Number.isFinite(capacity))) {
    fail('NOT_FINITE', '', 'loads of a possible size', demand, 'Check the numbers.');
  }
  if (!fits && demand <= most) return undeterminedCheck(about, missing);
  return ratioCheck(about, fits, show(demand), show(capacity), utilizationOf(demand, capacity, fits));
}

/** The nearest double that does not contradict the comparison; null without any capacity. */
function utilizationOf(demand: number, capacity: number, fits: boolean): number | null {
  if (!(capacity > 0)) return null;
  return fits ? demand / capacity : Math.max(demand / capacity, 1 + Number.EPSILON);
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
