import { imoCssAnnex132014Factors as factors } from '../../../tables/generated/imo-css-annex13-2014-factors.js';
import type { Check } from '../../../working/check.js';
import { anglesOf, holdingBack } from '../../forces/directions.js';
import { heldBy, ifKnown, judgeHeld } from '../../forces/held.js';
import { inForce, times } from '../../forces/sums.js';
import { byCapacity, type RatedLayout } from '../../forces/tie-downs.js';
import type { RuleContext } from '../../rule-set.js';
import type { Load } from './annex-13-7-sliding.js';
import { aboutAnnex } from './cite.js';

/** The two sides of an article, and the heading that the tie-downs of each pull against. */
const AGAINST = { left: 'right', right: 'left' } as const;

/**
 * The rule of thumb: on each side of the article, sum(MSL) ≥ m · g over the runs that pull to that side; one steeper than
 * 60 degrees to the deck does not count. It asks neither for friction nor for the forces of the ship, and it is advice
 * beside the balances. From memory.
 */
export function checkRuleOfThumb(
  { layout, weight }: Pick<Load, 'layout' | 'weight'>,
  tieDowns: readonly RatedLayout[],
  side: 'left' | 'right',
  { working, units }: RuleContext,
): Check {
  const { article } = layout;
  const { provenance, value: steepest } = factors.rows['rule-of-thumb-steepest-angle'];
  const { value: share } = factors.rows['rule-of-thumb-msl-over-weight'];
  const title = `Rule of thumb: sum of MSL on the ${side} against the weight`;
  const subject = `practice/rule-of-thumb-${side}`;
  const clause = 'section 5, rule of thumb';
  const about = { ...aboutAnnex(working, subject, title, article.id, clause, provenance), weight: 'practice' } as const;
  const held = heldBy(
    tieDowns.map(byCapacity),
    (runs) => runs.filter((run) => holdingBack(run, AGAINST[side]) > 0 && anglesOf(run, side).alpha <= steepest).length,
    1,
  );
  working.step(
    `${article.id}, ${side}`,
    'sum of MSL',
    `sum(MSL) of the runs up to ${steepest} degrees`,
    {},
    ifKnown(held, inForce(units)),
    about.clause,
  );
  return judgeHeld(about, times(weight, share), held, inForce(units));
}
