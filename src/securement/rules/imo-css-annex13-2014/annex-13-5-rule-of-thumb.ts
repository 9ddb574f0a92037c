import { imoCssAnnex132014Factors as factors } from '../../../tables/generated/imo-css-annex13-2014-factors.js';
import type { Check } from '../../../working/check.js';
import type { Note } from '../../../working/note.js';
import { capacitySpan, missingPoints, unplacedRuns } from '../../counted-force.js';
import { ifKnown, judgeSpan, shownForce, totalSpan } from '../../force-checks.js';
import { anglesOf, holdingBack } from '../../forces.js';
import type { TieDownRating } from '../../rate-tie-down.js';
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
  { layout, weight, ratings }: Pick<Load, 'layout' | 'weight'> & { readonly ratings: readonly TieDownRating[] },
  side: 'left' | 'right',
  { working, units }: RuleContext,
): Check {
  const { article, tieDowns } = layout;
  const { provenance, value: steepest } = factors.rows['rule-of-thumb-steepest-angle'];
  const { value: share } = factors.rows['rule-of-thumb-msl-over-weight'];
  const title = `Rule of thumb: sum of MSL on the ${side} against the weight`;
  const subject = `practice/rule-of-thumb-${side}`;
  const clause = 'section 5, rule of thumb';
  const about = { ...aboutAnnex(working, subject, title, article.id, clause, provenance), weight: 'practice' } as const;
  const least: number[][] = [];
  const most: number[][] = [];
  const missing: Note[] = [];
  const counted: string[] = [];
  tieDowns.forEach((tieDown, index) => {
    const rating = ratings[index] as TieDownRating;
    const load = capacitySpan(rating);
    const flat = tieDown.runs.filter(
      (run) => holdingBack(run, AGAINST[side]) > 0 && anglesOf(run, side).alpha <= steepest,
    );
    const runs = flat.length + unplacedRuns(tieDown);
    if (runs === 0) return;
    if (flat.length > 0) least.push([flat.length, load.least]);
    most.push([runs, load.most]);
    missing.push(...rating.missing, ...missingPoints(tieDown));
    counted.push(tieDown.tieDown.id);
  });
  if (working.shown) {
    working.step(
      `${article.id}, ${side}`,
      'sum of MSL',
      `sum(MSL) of the runs up to ${steepest} degrees`,
      { counted: counted.join(', ') || 'none' },
      ifKnown(totalSpan({ least, most }), (newtons) => shownForce(newtons, units)),
      about.clause,
    );
  }
  return judgeSpan(about, [[share, ...weight]], { least, most }, (newtons) => shownForce(newtons, units), missing);
}
