import { imoCssAnnex132014Factors as factors } from '../../../tables/generated/imo-css-annex13-2014-factors.js';
import { type Check, undeterminedCheck } from '../../../working/check.js';
import { directTippingSpan, runValues } from '../../counted-force.js';
import {
  ifKnown,
  judgeSpan,
  momentUnit,
  shownForce,
  shownMoment,
  TOWARD,
  together,
  totalOf,
  totalSpan,
  withoutMoments,
} from '../../force-checks.js';
import { tippingEdge } from '../../forces.js';
import type { RuleContext } from '../../rule-set.js';
import { externalForce, forceNotStated, type Load } from './annex-13-7-sliding.js';
import { aboutAnnex } from './cite.js';

/**
 * Section 7: Fy · a ≤ b · m · g + sum(CS · c), across the ship alone. The moment CS · c of a tie-down about the edge is
 * CS · (h · cos α · cos β + s · sin α), of those that pull against the heading.
 */
export function checkTipping(load: Load, heading: 'left' | 'right', { working, units }: RuleContext): Check {
  const { layout, weight, counted } = load;
  const { article } = layout;
  const title = `Tipping ${TOWARD[heading]}, moments in ${momentUnit(units)}`;
  const about = aboutAnnex(working, `tipping-${heading}`, title, article.id, 'section 7', 'memory');
  const edge = tippingEdge(layout, heading);
  if (edge === undefined || edge.d <= 0) return withoutMoments(about, article.id, edge);
  const force = externalForce(load, heading);
  if (force === undefined) return undeterminedCheck(about, [forceNotStated(load, heading)]);
  const divisor = factors.rows['msl-over-calculation-strength'].value;
  const steady = [[edge.b, ...weight, divisor]];
  const held = together({ least: steady, most: steady }, directTippingSpan(counted, edge, heading));
  const show = (timesDivisor: number) => shownMoment(timesDivisor / divisor, units);
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
      show(totalOf(steady)),
      clause,
    );
    working.step(
      of,
      'M held',
      `M of the weight + sum(CS · (h · cos α · cos β + s · sin α)), ${unit}`,
      runValues(counted, heading, units, { symbol: 'CS', divisor, edge }),
      ifKnown(totalSpan(held), show),
      clause,
    );
    working.step(
      of,
      'M asked',
      `Fy · a, ${unit}`,
      { Fy: shownForce(force, units), a },
      shownMoment(force * edge.d, units),
      clause,
    );
  }
  const missing = counted.flatMap(({ missing: facts }) => facts);
  return judgeSpan(about, [[force, edge.d, divisor]], held, show, missing);
}
