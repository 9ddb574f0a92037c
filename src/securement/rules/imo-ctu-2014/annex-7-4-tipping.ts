import { imoCtu2014Factors as factors } from '../../../tables/generated/imo-ctu-2014-factors.js';
import type { Check } from '../../../working/check.js';
import { directTippingSpan, pressedTippingSpan, runValues } from '../../counted-force.js';
import {
  ifKnown,
  judgeSpan,
  momentUnit,
  shownMoment,
  TOWARD,
  together,
  totalOf,
  totalSpan,
  withoutMoments,
} from '../../force-checks.js';
import { type Heading, tippingEdge } from '../../forces.js';
import type { RuleContext } from '../../rule-set.js';
import type { Load } from './annex-7-4-sliding.js';
import { coefficientsOf } from './chapter-5-accelerations.js';
import { aboutBalance } from './cite.js';

/**
 * Annex 7, by moments about the outermost contacts: c · m · g · d ≤ cz · m · g · b + M, where M is
 * sum(F · (h · cos α · cos β + s · sin α)) of direct tie-downs that pull against the heading, and sum(F · s · sin α) of
 * those over the load. The coefficients are those of sliding: the road table has no roll factor.
 */
export function checkTipping(load: Load, heading: Heading, { working, units }: RuleContext): Check {
  const { layout, mode, weight, direct, overTop } = load;
  const { article } = layout;
  const title = `Tipping ${TOWARD[heading]}, moments in ${momentUnit(units)}`;
  const about = aboutBalance(working, `tipping-${heading}`, title, article.id);
  const edge = tippingEdge(layout, heading);
  if (edge === undefined || edge.d <= 0) return withoutMoments(about, article.id, edge);
  const { c, cz } = coefficientsOf(mode, heading);
  const pulled = directTippingSpan(direct, edge, heading);
  const pressed = pressedTippingSpan(overTop, edge, heading);
  const steady = [[cz, edge.b, ...weight]];
  const span = together({ least: steady, most: steady }, pulled, pressed);
  const demand = [[c, edge.d, ...weight]];
  if (working.shown) {
    const terms = ['cz · m · g · b'];
    if (direct.length > 0) terms.push('sum(F · (h · cos α · cos β + s · sin α))');
    if (overTop.length > 0) terms.push('sum(F · s · sin α)');
    working.step(
      `${article.id}, ${heading}`,
      'M',
      `${terms.join(' + ')}, in ${momentUnit(units)}`,
      [
        ['cz', cz],
        ['m', layout.mass],
        ['g', factors.rows.gravity],
        ['b', { value: edge.b, unit: 'm' }],
        ['cz · m · g · b', shownMoment(totalOf(steady), units)],
        ...runValues([...direct, ...overTop], heading, units, { edge }),
      ],
      ifKnown(totalSpan(span), (moment) => shownMoment(moment, units)),
      about.clause,
    );
    working.step(
      `${article.id}, ${heading}`,
      'M asked',
      `c · m · g · d, in ${momentUnit(units)}`,
      { c, m: layout.mass, g: factors.rows.gravity, d: { value: edge.d, unit: 'm' } },
      shownMoment(totalOf(demand), units),
      about.clause,
    );
  }
  const missing = [...direct, ...overTop].flatMap(({ missing: facts }) => facts);
  return judgeSpan(about, demand, span, (moment) => shownMoment(moment, units), missing);
}
