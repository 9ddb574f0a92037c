import { fail } from '../../errors.js';
import { inUnit } from '../../quantities/convert.js';
import { compareExactSums, type ExactTerm, ratioOf } from '../../quantities/exact.js';
import type { QuantityLike } from '../../quantities/quantity.js';
import { ratedLoadIn } from '../../quantities/rated.js';
import { type Check, type CheckSubject, ratioCheck, undeterminedCheck } from '../../working/check.js';
import type { Working } from '../../working/step.js';
import { type CreditedTieDown, ratingNotKnown } from './credited-tie-down.js';

/** What the tie-downs of one article must reach together. */
export interface RequiredAggregate {
  readonly mass: QuantityLike;
  /** Share of its mass. */
  readonly share: number;
  /** share · mass, in the unit shown. */
  readonly required: QuantityLike<'lb' | 'kg'>;
}

/** What the tie-downs of one article reach together, and whether that is enough. */
export interface Aggregate {
  /** Null while a rating is not known. */
  readonly aggregate: QuantityLike | null;
  readonly check: Check;
}

/** share · W, as a mass in the unit shown. */
export function requiredAggregate(mass: QuantityLike, share: number, unit: 'lb' | 'kg'): RequiredAggregate {
  return { mass, share, required: { value: inUnit(mass, unit).value * share, unit } };
}

/**
 * Whether sum(credit · WLL) ≥ share · W. Equality passes, decided exactly.
 *
 * Where a rating is not known the check is still decided if it can be: it passes when the known ones are
 * enough, and fails when even the most that the others can be is too little.
 */
export function judgeAggregate(
  about: CheckSubject,
  { mass, share, required }: RequiredAggregate,
  tieDowns: readonly CreditedTieDown[],
): Aggregate {
  const { unit } = required;
  const judge = (limitOf: (tieDown: CreditedTieDown) => QuantityLike | null): Check => {
    const terms: ExactTerm[] = [];
    for (const tieDown of tieDowns) {
      const quantity = limitOf(tieDown);
      if (quantity !== null) terms.push({ quantity, times: [tieDown.credit] });
    }
    const sum = sumOf(terms, unit);
    const { fits, utilization } = ratioOf(required.value, sum, () =>
      compareExactSums([{ quantity: mass, times: [share] }], terms),
    );
    return ratioCheck(about, fits, required, { value: sum, unit }, utilization);
  };
  const check = judge(({ capacity }) => capacity);
  const known = 'capacity' in check ? (check.capacity as QuantityLike) : null;
  const unknown = tieDowns.filter(({ capacity }) => capacity === null);
  if (unknown.length === 0) return { aggregate: known, check };
  if (check.verdict === 'pass') return { aggregate: null, check };
  if (unknown.every(({ atMost }) => atMost !== null)) {
    const highest = judge(({ capacity, atMost }) => capacity ?? atMost);
    if (highest.verdict === 'fail') return { aggregate: null, check: highest };
  }
  return { aggregate: null, check: undeterminedCheck(about, [ratingNotKnown(tieDowns)]) };
}

function sumOf(terms: readonly ExactTerm[], unit: 'lb' | 'kg'): number {
  let sum = 0;
  for (const { quantity, times = [] } of terms) sum += ratedLoadIn(quantity, unit).value * (times[0] ?? 1);
  if (sum === Number.POSITIVE_INFINITY)
    fail('NOT_FINITE', '', 'limits of a possible size', sum, 'Check the numbers given.');
  return sum;
}

/** The step of {@link requiredAggregate}. */
export function showRequired(
  working: Working,
  subject: string,
  { mass, share, required }: RequiredAggregate,
  clause: string,
): void {
  if (!working.shown) return;
  working.step(subject, 'required aggregate', `${share} · W`, [['W', inUnit(mass, required.unit)]], required, clause);
}

/** The step of {@link judgeAggregate}. */
export function showAggregate(
  working: Working,
  { subject, clause }: CheckSubject,
  tieDowns: readonly CreditedTieDown[],
  aggregate: QuantityLike | null,
): void {
  if (!working.shown) return;
  working.step(
    subject,
    'aggregate',
    'sum(credit · WLL)',
    tieDowns.map(({ tieDown, credit, capacity }) => [`${tieDown.id}, credit ${credit}`, capacity] as const),
    aggregate,
    clause,
  );
}
