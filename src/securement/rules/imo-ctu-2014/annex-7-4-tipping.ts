import { imoCtu2014Factors as factors } from '../../../tables/generated/imo-ctu-2014-factors.js';
import { type Check, notApplicableCheck, undeterminedCheck } from '../../../working/check.js';
import { note } from '../../../working/note.js';
import { type Heading, toward } from '../../forces/directions.js';
import { heldAgainstTipping, ifKnown, judgeHeld, known, pressedAbout, together, worstOf } from '../../forces/held.js';
import { inMoment, momentUnit, times } from '../../forces/sums.js';
import { runValues } from '../../forces/tie-downs.js';
import { isLow, missingStance, tippingEdges } from '../../forces/tipping-edge.js';
import type { RuleContext } from '../../rule-set.js';
import type { Load } from './annex-7-4-sliding.js';
import { coefficientsOf } from './chapter-5-accelerations.js';
import { aboutBalance } from './cite.js';

/**
 * Annex 7, by moments about the edge of the contacts: c · m · g · d ≤ cz · m · g · b + M, where M is
 * sum(F · (h · cos α · cos β + s · sin α)) of direct tie-downs that pull against the heading, and sum(F · s · sin α) of
 * those over the load. The coefficients are those of sliding: the road table has no roll factor.
 */
export function checkTipping(load: Load, heading: Heading, { working, units }: RuleContext): Check {
  const { layout, mode, weight, direct, overTop } = load;
  const { article, mass } = layout;
  const title = `Tipping ${toward(heading)}, moments in ${momentUnit(units)}`;
  const about = aboutBalance(working, `tipping-${heading}`, title, article.id);
  const edges = tippingEdges(layout, heading);
  if (edges === undefined) return undeterminedCheck(about, missingStance(layout));
  if (isLow(edges[0]))
    return notApplicableCheck(about, note('CENTER_OF_GRAVITY_NOT_ABOVE_EDGE', { article: article.id }));
  const { c, cz } = coefficientsOf(mode, heading);
  const show = inMoment(units);
  const checks = edges.map((edge) => {
    const steady = times(weight, cz, edge.b);
    const held = together(known(steady), heldAgainstTipping(direct, edge), pressedAbout(overTop, edge));
    const demand = times(weight, c, edge.d);
    if (working.shown) {
      const subject = `${article.id}, ${heading}`;
      const { gravity: g } = factors.rows;
      const terms = ['cz · m · g · b'];
      if (direct.length > 0) terms.push('sum(F · (h · cos α · cos β + s · sin α))');
      if (overTop.length > 0) terms.push('sum(F · s · sin α)');
      working.step(
        subject,
        'M',
        `${terms.join(' + ')}, in ${momentUnit(units)}`,
        [
          ['cz', cz],
          ['m', mass],
          ['g', g],
          ['b', { value: edge.b, unit: 'm' }],
          ['cz · m · g · b', show(steady)],
          ...runValues([...direct, ...overTop], heading, units, { edge }),
        ],
        ifKnown(held, show),
        about.clause,
      );
      working.step(
        subject,
        'M asked',
        `c · m · g · d, in ${momentUnit(units)}`,
        { c, m: mass, g, d: { value: edge.d, unit: 'm' } },
        show(demand),
        about.clause,
      );
    }
    return judgeHeld(about, demand, held, show);
  });
  return worstOf(checks);
}
