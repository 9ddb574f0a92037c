import { fail } from '../../../errors.js';
import { inUnit } from '../../../quantities/convert.js';
import { compareExactSums, type ExactTerm, ratioOf } from '../../../quantities/exact.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { massUnitOf } from '../../../quantities/shared-units.js';
import type { UnitSystem } from '../../../quantities/units.js';
import { us49cfr393Thresholds as thresholds } from '../../../tables/generated/us-49cfr393-thresholds.js';
import { type Check, ratioCheck, undeterminedCheck } from '../../../working/check.js';
import type { Working } from '../../../working/step.js';
import type { ReadArticle } from '../../plan.js';
import type { RuleContext } from '../../rule-set.js';
import { type RatedTieDown, ratingNotKnown } from './393-108-weakest-part.js';
import { aboutRule } from './cite.js';

/** The aggregate of one article's tie-downs and the check of 393.106(d). */
export interface Aggregate {
  readonly required: QuantityLike;
  /** Null while a rating is not known. */
  readonly aggregate: QuantityLike | null;
  readonly check: Check;
}

/**
 * 393.106(d): sum(credit · WLL) ≥ 0.5 · W. Half of the limit counts for a tie-down from the vehicle to the cargo
 * or back to the same side, all of it for one that runs over to the other side. At least half: equality passes.
 *
 * Where a rating is not known the check is still decided if it can be: it passes when the known ones are
 * enough, and fails when even the most that the others can be is too little.
 */
export function checkAggregate(
  { article, mass }: ReadArticle,
  tieDowns: readonly RatedTieDown[],
  { working, units }: RuleContext,
): Aggregate {
  const unit = massUnitOf(units);
  const fraction = thresholds.rows['aggregate-fraction'].value;
  const required = requiredAggregate(mass, units);
  let known = 0;
  let most = 0;
  let unknown = 0;
  for (const { workingLoadLimit, atMost, credit } of tieDowns) {
    const limit = workingLoadLimit ?? atMost;
    const counted = limit === null ? Number.POSITIVE_INFINITY : ratedLoadIn(limit, unit).value * credit;
    most += counted;
    if (workingLoadLimit === null) unknown++;
    else known += counted;
  }
  if (known === Number.POSITIVE_INFINITY)
    fail('NOT_FINITE', '', 'loads of a possible size', known, 'Check the numbers.');
  const about = aboutRule(working, '393.106(d)', 'Aggregate working load limit', article.id);
  const judge = (capacity: number, limitOf: (tieDown: RatedTieDown) => QuantityLike | null): Check => {
    const { fits, utilization } = ratioOf(required.value, capacity, () => {
      const terms: ExactTerm[] = [];
      for (const tieDown of tieDowns) {
        const quantity = limitOf(tieDown);
        if (quantity !== null) terms.push({ quantity, times: [tieDown.credit] });
      }
      return compareExactSums([{ quantity: mass, times: [fraction] }], terms);
    });
    return ratioCheck(about, fits, required, { value: capacity, unit }, utilization);
  };
  let check = judge(known, ({ workingLoadLimit }) => workingLoadLimit);
  if (check.verdict === 'fail' && unknown > 0) {
    const highest =
      most === Number.POSITIVE_INFINITY
        ? undefined
        : judge(most, ({ workingLoadLimit, atMost }) => workingLoadLimit ?? atMost);
    if (highest?.verdict === 'fail') check = highest;
    else check = undeterminedCheck(about, [ratingNotKnown(tieDowns)]);
  }
  const aggregate: QuantityLike | null = unknown === 0 ? { value: known, unit } : null;
  if (working.shown) {
    working.step(
      article.id,
      'aggregate',
      'sum(credit · WLL)',
      tieDowns.map(
        ({ tieDown, credit, workingLoadLimit }) => [`${tieDown.id}, credit ${credit}`, workingLoadLimit] as const,
      ),
      aggregate,
      about.clause,
    );
    showRequired(article.id, mass, required, working);
  }
  return { required, aggregate, check };
}

/** 0.5 · W, as a mass in the units shown. */
export function requiredAggregate(mass: QuantityLike, units: UnitSystem): QuantityLike<'lb' | 'kg'> {
  const unit = massUnitOf(units);
  return { value: inUnit(mass, unit).value * thresholds.rows['aggregate-fraction'].value, unit };
}

/** The step of {@link requiredAggregate}. */
export function showRequired(
  subject: string,
  mass: QuantityLike,
  required: QuantityLike<'lb' | 'kg'>,
  working: Working,
): void {
  working.step(
    subject,
    'required aggregate',
    `${thresholds.rows['aggregate-fraction'].value} · W`,
    [['W', inUnit(mass, required.unit)]],
    required,
    '49 CFR 393.106(d)',
  );
}
