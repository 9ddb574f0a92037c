import { ukDvsa2024Accelerations as accelerations } from '../../../tables/generated/uk-dvsa-2024-accelerations.js';
import { type Check, undeterminedCheck } from '../../../working/check.js';
import { note } from '../../../working/note.js';
import { HEADINGS, SIDE, toward } from '../../forces/directions.js';
import { directShare, heldDirectly, ifKnown, judgeHeld } from '../../forces/held.js';
import { inForce, type Sum, times } from '../../forces/sums.js';
import { byCapacity, namesOf, type RatedLayout, runsOver, shareValues } from '../../forces/tie-downs.js';
import type { ArticleLayout } from '../../layout.js';
import type { RuleContext } from '../../rule-set.js';
import { aboutGuidance, citeGuidance, GUIDANCE } from './cite.js';

/**
 * The forces a load must be held against: all of its weight forward, half of it rearward and to each side.
 *
 * sum(LC · cos α · cos β) ≥ a · W over the direct tie-downs, LC the maker's rating, by the part of the pull that holds
 * back; friction adds nothing. Both are our reading. The guidance, as far as read, gives no figure for what a
 * tie-down over the load holds, nor does a plan say what blocking does: where one is needed the answer stays open.
 */
export function judgeForces(
  { article, mass }: ArticleLayout,
  tieDowns: readonly RatedLayout[],
  { working, units }: RuleContext,
): Check[] {
  const { id } = article;
  if (working.shown) {
    working.cite(accelerations.source);
    citeGuidance(working, 'friction alone', 'memory', 'not to be relied on');
    citeGuidance(working, "the maker's rating", 'interpretation', 'lashing capacity, by its share in each direction');
  }
  const direct = tieDowns.filter((each) => !runsOver(each)).map(byCapacity);
  const over = tieDowns.filter((each) => runsOver(each) && each.rating.capacity?.value !== 0);
  const show = inForce(units);
  const weight: Sum = [{ quantity: mass }];
  return HEADINGS.map((heading) => {
    const about = aboutGuidance(heading, `Held ${toward(heading)}`, id);
    const a = accelerations.rows[SIDE[heading]].c;
    const asked = times(weight, a);
    const held = heldDirectly(direct, heading);
    if (working.shown) {
      const subject = `${id} ${heading}`;
      const values = shareValues(direct, 'share', (runs) => directShare(runs, heading, 0));
      working.step(subject, 'F', 'a · W', { a, W: show(weight) }, show(asked), GUIDANCE);
      working.step(subject, 'R', 'sum(LC · share)', values, ifKnown(held, show), GUIDANCE);
    }
    const check = judgeHeld(about, asked, held, show);
    const others = [
      ...(heading === 'forward' && article.blockedForward === true ? [note('BLOCKING_NOT_RATED')] : []),
      ...(over.length === 0 ? [] : [note('OVER_THE_LOAD', { tieDowns: namesOf(over) })]),
    ];
    const settled = check.verdict === 'pass' || others.length === 0;
    return settled ? check : undeterminedCheck(about, [...others, ...held.missing]);
  });
}
