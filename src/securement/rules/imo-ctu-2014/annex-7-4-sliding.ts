import { imoCtu2014Factors as factors } from '../../../tables/generated/imo-ctu-2014-factors.js';
import type { Check } from '../../../working/check.js';
import { note } from '../../../working/note.js';
import { type Heading, toward } from '../../forces/directions.js';
import type { FrictionFactor } from '../../forces/friction.js';
import {
  anything,
  better,
  heldDirectly,
  ifKnown,
  judgeHeld,
  pressedDown,
  type Span,
  shareOf,
  timesSpan,
  together,
} from '../../forces/held.js';
import { inForce, type Sum, times } from '../../forces/sums.js';
import { type CountedForce, runValues } from '../../forces/tie-downs.js';
import type { ArticleLayout } from '../../layout.js';
import type { RuleContext } from '../../rule-set.js';
import { coefficientsOf, type Mode } from './chapter-5-accelerations.js';
import { aboutBalance, citeTable } from './cite.js';

/** An article with everything the balances look at. */
export interface Load {
  readonly layout: ArticleLayout;
  readonly mode: Mode;
  /** m with the g of the code. */
  readonly weight: Sum;
  readonly mu: FrictionFactor;
  /** Its tie-downs that hold by their strength. */
  readonly direct: readonly CountedForce[];
  /** Its tie-downs that hold by pressing it on the deck. */
  readonly overTop: readonly CountedForce[];
}

/**
 * Annex 7: c · m · g ≤ μ · cz · m · g + F, on an open platform. F is μ · sum(F · sin α) of tie-downs over the load, and
 * sum(F · (cos α · cos β + μ · sin α)) of direct ones that pull against the heading.
 *
 * A direct tie-down takes up its force only once the load has crept, so with it 0.75 μ stands for μ throughout. The load
 * may as well hold by friction alone with the whole of μ: the better of the two counts.
 */
export function checkSliding(load: Load, heading: Heading, context: RuleContext): Check {
  const { layout, mode, weight, mu, direct, overTop } = load;
  const { working, units } = context;
  const { article } = layout;
  const { c, cz } = coefficientsOf(mode, heading);
  const share = factors.rows['friction-factor-direct'].value;
  const crept = shareOf(share, mu);
  const byFriction = (factor: Span) => together(timesSpan(times(weight, cz), factor), pressedDown(overTop, factor));
  const still = byFriction(mu);
  const held = better(still, together(byFriction(crept), heldDirectly(direct, heading, crept)));
  const demand = times(weight, c);
  const show = inForce(units);
  const about = aboutBalance(working, `sliding-${heading}`, `Sliding ${toward(heading)}`, article.id);
  if (working.shown) {
    const without = held.least === still.least;
    citeTable(working, factors);
    if (!without) citeTable(working, factors, factors.rows['friction-factor-direct'].provenance);
    const factor = without ? 'μ' : `${share} · μ`;
    const terms = [`${factor} · cz · m · g`];
    if (!without) terms.push(`sum(F · (cos α · cos β + ${factor} · sin α))`);
    if (overTop.length > 0) terms.push(`${factor} · sum(F · sin α)`);
    const subject = `${article.id}, ${heading}`;
    const ofWeight = [
      ['m', layout.mass],
      ['g', factors.rows.gravity],
    ] as const;
    working.step(
      subject,
      'F held',
      terms.join(' + '),
      [
        ['μ', mu.least === mu.most ? mu.least : null],
        ['cz', cz],
        ...ofWeight,
        ...runValues(without ? overTop : [...direct, ...overTop], heading, units),
      ],
      ifKnown(held, show),
      about.clause,
    );
    working.step(subject, 'F asked', 'c · m · g', [['c', c], ...ofWeight], show(demand), about.clause);
  }
  const blocked = heading === 'forward' && isBlocked(layout);
  const block = blocked ? [anything(note('BLOCKING_STRENGTH_NOT_STATED', { article: article.id }))] : [];
  return judgeHeld(about, demand, together(held, ...block), show);
}

function isBlocked({ article: { blockedForward, headboard } }: ArticleLayout): boolean {
  return blockedForward === true || headboard === 'partial' || headboard === 'adequate';
}
