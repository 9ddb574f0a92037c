import { fail } from '../../errors.js';
import { inUnit } from '../../quantities/convert.js';
import { compareExactSums, type ExactTerm, ratioOf } from '../../quantities/exact.js';
import type { QuantityLike } from '../../quantities/quantity.js';
import { ratedLoadIn } from '../../quantities/rated.js';
import { type Check, type CheckSubject, ratioCheck, undeterminedCheck } from '../../working/check.js';
import type { Working } from '../../working/step.js';
import type { TieDownRating } from '../rate-tie-down.js';
import { type Credit, isRated, ratingNotKnown } from './rated-tie-down.js';

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

type Limit = (tieDown: TieDownRating) => QuantityLike | null;

/**
 * Whether sum(credit · WLL) ≥ share · W, shown. Equality passes, decided exactly.
 *
 * Where a rating is not known the check is still decided if it can be: it passes when the known ones are
 * enough, and fails when even the most that the others can be is too little.
 */
export function judgeAggregate(
  about: CheckSubject,
  { mass, share, required }: RequiredAggregate,
  tieDowns: readonly TieDownRating[],
  creditOf: Credit,
  working: Working,
): Aggregate {
  const { unit } = required;
  const terms = (limitOf: Limit): ExactTerm[] =>
    tieDowns.flatMap((each) => {
      const quantity = limitOf(each);
      return quantity === null ? [] : [{ quantity, times: [creditOf(each.tieDown.path)] }];
    });
  const judge = (limitOf: Limit, unknown: number) => {
    let sum = 0;
    for (const each of tieDowns) {
      const limit = limitOf(each);
      sum += limit === null ? unknown : ratedLoadIn(limit, unit).value * creditOf(each.tieDown.path);
    }
    if (unknown === 0 && sum === Number.POSITIVE_INFINITY)
      fail('NOT_FINITE', '', 'loads of a possible size', sum, 'Check the numbers.');
    const { fits, utilization } = ratioOf(required.value, sum, () =>
      compareExactSums([{ quantity: mass, times: [share] }], terms(limitOf)),
    );
    return ratioCheck(about, fits, required, { value: sum, unit }, utilization);
  };
  const open = !tieDowns.every(isRated);
  const known = judge(({ capacity }) => capacity, 0);
  let check: Check = known;
  if (open && check.verdict === 'fail') {
    const most = judge(({ capacity, atMost }) => capacity ?? atMost, Number.POSITIVE_INFINITY);
    check = most.verdict === 'fail' ? most : undeterminedCheck(about, [ratingNotKnown(tieDowns)]);
  }
  const aggregate = open ? null : (known.capacity as QuantityLike);
  if (working.shown) {
    working.step(
      about.subject,
      'aggregate',
      'sum(credit · WLL)',
      tieDowns.map(({ tieDown, capacity }) => [`${tieDown.id}, credit ${creditOf(tieDown.path)}`, capacity] as const),
      aggregate,
      about.clause,
    );
  }
  return { aggregate, check };
}
