import { imoCssAnnex132014Factors as factors } from '../../../tables/generated/imo-css-annex13-2014-factors.js';
import { type Check, notApplicableCheck, undeterminedCheck } from '../../../working/check.js';
import { note } from '../../../working/note.js';
import { toward } from '../../forces/directions.js';
import { heldAgainstTipping, ifKnown, judgeHeld, known, together, worstOf } from '../../forces/held.js';
import { inForce, inMoment, momentUnit, times } from '../../forces/sums.js';
import { runValues } from '../../forces/tie-downs.js';
import { isLow, missingStance, tippingEdges } from '../../forces/tipping-edge.js';
import type { RuleContext } from '../../rule-set.js';
import { divisorOf } from './annex-13-4-calculation-strength.js';
import { externalForce, forceNotStated, type Load } from './annex-13-7-sliding.js';
import { aboutAnnex } from './cite.js';

/**
 * Section 7: Fy · a ≤ b · m · g + sum(CS · c), across the ship alone. The moment CS · c of a tie-down about the edge is
 * CS · (h · cos α · cos β + s · sin α), of those that pull against the heading.
 */
export function checkTipping(load: Load, heading: 'left' | 'right', { working, units }: RuleContext): Check {
  const { layout, weight, counted } = load;
  const { article } = layout;
  const title = `Tipping ${toward(heading)}, moments in ${momentUnit(units)}`;
  const about = aboutAnnex(working, `tipping-${heading}`, title, article.id, 'section 7', 'memory');
  const edges = tippingEdges(layout, heading);
  if (edges === undefined) return undeterminedCheck(about, missingStance(layout));
  if (isLow(edges[0]))
    return notApplicableCheck(about, note('CENTER_OF_GRAVITY_NOT_ABOVE_EDGE', { article: article.id }));
  const force = externalForce(load, heading);
  if (force === undefined) return undeterminedCheck(about, [forceNotStated(load, heading)]);
  const divisor = divisorOf();
  const show = inMoment(units, divisor);
  const checks = edges.map((edge) => {
    const steady = times(weight, edge.b, divisor);
    const held = together(known(steady), heldAgainstTipping(counted, edge));
    const demand = times([{ quantity: force }], edge.d, divisor);
    if (working.shown) {
      const of = `${article.id}, ${heading}`;
      const unit = `in ${momentUnit(units)}`;
      const b = { value: edge.b, unit: 'm' } as const;
      const a = { value: edge.d, unit: 'm' } as const;
      const { clause } = about;
      working.step(
        of,
        'M of the weight',
        `b · m · g, ${unit}`,
        { b, m: layout.mass, g: factors.rows.gravity },
        show(steady),
        clause,
      );
      working.step(
        of,
        'M held',
        `M of the weight + sum(CS · (h · cos α · cos β + s · sin α)), ${unit}`,
        runValues(counted, heading, units, { symbol: 'CS', divisor, edge }),
        ifKnown(held, show),
        clause,
      );
      working.step(
        of,
        'M asked',
        `Fy · a, ${unit}`,
        { Fy: inForce(units)([{ quantity: force }]), a },
        show(demand),
        clause,
      );
    }
    return judgeHeld(about, demand, held, show);
  });
  return worstOf(checks);
}
