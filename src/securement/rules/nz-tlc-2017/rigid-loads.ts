import type { QuantityLike } from '../../../quantities/quantity.js';
import { massUnitOf } from '../../../quantities/shared-units.js';
import { nzTlc2017Multiples as multiples } from '../../../tables/generated/nz-tlc-2017-multiples.js';
import { type Check, type CheckSubject, undeterminedCheck } from '../../../working/check.js';
import { note } from '../../../working/note.js';
import { type Held, judgeHeld } from '../../forces/held.js';
import { amountOf, type Sum, times } from '../../forces/sums.js';
import { loadOf } from '../../forces/tie-downs.js';
import type { ReadArticle } from '../../plan.js';
import type { TieDownRating } from '../../rate-tie-down.js';
import type { RuleContext } from '../../rule-set.js';
import { type Multiple, multiplesOf } from './headboard.js';

export const CLAUSE = 'The Truck Loading Code 2017, rigid loads';

/** The sum of rated strengths of one article and its check. */
export interface RatedStrength {
  readonly required: QuantityLike;
  /** Null while one is not known. */
  readonly aggregate: QuantityLike | null;
  readonly check: Check;
}

/**
 * Rigid loads: sum(rated strength) ≥ k · W, where k is 2 without a headboard, 1.5 with a partial one and 1 with an
 * adequate one. Every tie-down counts in full whatever its angle, and friction is not credited: both are our reading.
 */
export function judgeRatedStrength(
  read: ReadArticle,
  tieDowns: readonly TieDownRating[],
  context: RuleContext,
): RatedStrength {
  const { article, mass } = read;
  const { working, units } = context;
  const unit = massUnitOf(units);
  const { least, most } = multiplesOf(article);
  const weight: Sum = [{ quantity: mass }];
  const show = (sum: Sum) => amountOf(sum, unit);
  const held: Held = {
    least: tieDowns.map((rating) => ({ quantity: loadOf(rating).least })),
    most: tieDowns.map((rating) => ({ quantity: loadOf(rating).most })),
    missing: tieDowns.flatMap(({ capacity, missing }) => (capacity === null ? missing : [])),
  };
  const about: CheckSubject = {
    id: `rated-strength/${article.id}`,
    title: 'Total rated strength',
    clause: CLAUSE,
    weight: 'requirement',
    subject: article.id,
  };
  const judge = ({ multiple }: Multiple) => judgeHeld(about, times(weight, multiple), held, show);
  const [hardest, easiest] = [judge(most), judge(least)];
  // where the two differ, what stands in front of it decides
  const open = hardest.verdict !== 'pass' && hardest.verdict !== easiest.verdict;
  const settled = hardest.verdict === 'pass' ? hardest : easiest;
  const check = open ? undeterminedCheck(about, [note('HEADBOARD_NOT_STATED'), ...held.missing]) : settled;
  const aggregate = held.missing.length === 0 ? show(held.least) : null;
  if (working.shown) {
    working.step(
      article.id,
      'R',
      'sum(rated strength)',
      tieDowns.map(({ tieDown, capacity }) => [tieDown.id, capacity] as const),
      aggregate,
      CLAUSE,
    );
  }
  return { required: requiredStrength(read, context), aggregate, check };
}

/** k · W with the greatest multiple that may apply, as a mass in the units shown. */
export function requiredStrength({ article, mass }: ReadArticle, { working, units }: RuleContext): QuantityLike {
  const { most } = multiplesOf(article);
  const unit = massUnitOf(units);
  const required = amountOf(times([{ quantity: mass }], most.multiple), unit);
  if (working.shown) {
    working.cite(multiples.source);
    working.cite({
      document: multiples.source.document,
      edition: multiples.source.edition,
      clause: 'rigid loads, angles and friction',
      provenance: 'interpretation',
      note: 'a plain sum: no angle factor, no friction',
    });
    if (article.headboard === undefined)
      working.assumptions.push(note('TAKEN_AS_NO_HEADBOARD', { article: article.id }));
    working.step(
      article.id,
      'required strength',
      'k · W',
      { k: most.multiple, W: amountOf([{ quantity: mass }], unit), headboard: most.headboard },
      required,
      CLAUSE,
    );
  }
  return required;
}
