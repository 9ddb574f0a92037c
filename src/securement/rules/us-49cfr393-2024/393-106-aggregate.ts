import { convert } from '../../../quantities/convert.js';
import { compareExactSums, type ExactTerm, utilizationOf } from '../../../quantities/exact.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { us49cfr393106Credit } from '../../../tables/generated/us-49cfr393-106-credit.js';
import type { Check } from '../../../working/check.js';
import type { StepValue } from '../../../working/step.js';
import type { ReadArticle, TieDownPath } from '../../plan.js';
import type { RuleContext } from '../../rule-set.js';
import type { RatedTieDown } from './393-108-weakest-part.js';
import { cite, parameter } from './parameters.js';

/** The aggregate of one article's tie-downs and the check of 393.106(d). */
export interface Aggregate {
  readonly required: QuantityLike;
  /** Null while a rating that is needed is not known. */
  readonly aggregate: QuantityLike | null;
  readonly check: Check;
}

/** 393.106(d)(1)-(3): the share of a tie-down's limit that counts, by the way it runs. Angle and material play no part. */
export function creditOf(path: TieDownPath): number {
  return us49cfr393106Credit.rows[path].credit;
}

/**
 * 393.106(d): sum(credit · WLL) ≥ 0.5 · W. Half of the limit for a tie-down from the vehicle to the cargo or
 * back to the same side, all of it for one that runs over to the other side. At least half: equality passes.
 *
 * Where a rating is not known the check is still decided if it can be: it passes when the known ones are
 * enough, and fails when even the most that the others can be is too little.
 */
export function checkAggregate(read: ReadArticle, tieDowns: readonly RatedTieDown[], { working, units }: RuleContext): Aggregate {
  const { article, mass } = read;
  const unit = units === 'si' ? 'kg' : 'lb';
  const fraction = parameter('aggregate-fraction');
  const demand: readonly ExactTerm[] = [{ quantity: mass, times: [fraction] }];
  const known: ExactTerm[] = [];
  const most: ExactTerm[] = [];
  let bounded = true;
  let unknown = 0;
  for (const { tieDown, workingLoadLimit, atMost } of tieDowns) {
    const times = [creditOf(tieDown.path)];
    if (workingLoadLimit !== null) known.push({ quantity: workingLoadLimit, times });
    else {
      unknown++;
      if (atMost === null) bounded = false;
      else most.push({ quantity: atMost, times });
    }
  }
  const massShown = convert(mass, unit);
  const required: QuantityLike = { value: massShown.value * fraction, unit };
  const base = {
    id: `393.106(d)/${article.id}`,
    title: 'Aggregate working load limit',
    clause: '49 CFR 393.106(d)',
    weight: 'requirement',
    subject: article.id,
  } as const;
  const sum = (terms: readonly ExactTerm[]): QuantityLike => ({
    value: terms.reduce((total, { quantity, times }) => total + ratedLoadIn(quantity, unit).value * (times?.[0] ?? 1), 0),
    unit,
  });
  const ratio = (terms: readonly ExactTerm[]): Check => ({
    ...base,
    verdict: compareExactSums(demand, terms) <= 0 ? 'pass' : 'fail',
    demand: required,
    capacity: sum(terms),
    utilization: utilizationOf(demand, terms),
  });
  let check = ratio(known);
  if (check.verdict === 'fail' && unknown > 0) {
    const highest = bounded ? ratio([...known, ...most]) : undefined;
    check =
      highest?.verdict === 'fail'
        ? highest
        : { ...base, verdict: 'undetermined', missing: tieDowns.flatMap(({ missing }) => missing) };
  }
  const aggregate = unknown === 0 ? sum(known) : null;
  if (working.shown) {
    cite(working, '393.106(d)');
    const values: Record<string, StepValue> = {};
    for (const { tieDown, workingLoadLimit } of tieDowns) {
      values[`${tieDown.id} (credit ${creditOf(tieDown.path)})`] = workingLoadLimit;
    }
    working.step({ subject: article.id, symbol: 'aggregate', expression: 'sum(credit · WLL)', values, result: aggregate, clause: base.clause });
    working.step({ subject: article.id, symbol: 'required aggregate', expression: `${fraction} · W`, values: { W: massShown }, result: required, clause: base.clause });
  }
  return { required, aggregate, check };
}
