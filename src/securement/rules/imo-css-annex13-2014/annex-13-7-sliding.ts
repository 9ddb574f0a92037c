import type { QuantityLike } from '../../../quantities/quantity.js';
import { imoCssAnnex132014Factors as factors } from '../../../tables/generated/imo-css-annex13-2014-factors.js';
import { type Check, undeterminedCheck } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import { type Heading, SIDE, toward } from '../../forces/directions.js';
import type { FrictionFactor } from '../../forces/friction.js';
import { heldDirectly, ifKnown, judgeHeld, timesSpan, together } from '../../forces/held.js';
import { inForce, type Sum, times } from '../../forces/sums.js';
import { type CountedForce, runValues } from '../../forces/tie-downs.js';
import type { ArticleLayout } from '../../layout.js';
import type { RuleContext } from '../../rule-set.js';
import { divisorOf } from './annex-13-4-calculation-strength.js';
import { aboutAnnex } from './cite.js';

/** External forces on an article as the caller computed them for the ship. */
export interface ExternalForces {
  readonly longitudinal?: QuantityLike | undefined;
  readonly transverse?: QuantityLike | undefined;
}

/** An article with everything the balances look at. */
export interface Load {
  readonly layout: ArticleLayout;
  /** m with the g of the annex. */
  readonly weight: Sum;
  readonly mu: FrictionFactor;
  readonly external: ExternalForces;
  /** All its tie-downs with their MSL, of which CS is a share. */
  readonly counted: readonly CountedForce[];
}

/**
 * Section 7: Fy ≤ μ · m · g + sum(CS · f), f = cos α · cos β + μ · sin α, over the tie-downs that pull against the
 * heading; β is 0 for one that runs straight across, and f then is that of the advanced method. The divisor stays 1.5 with β.
 *
 * Along the ship a vertical force takes weight off the deck, and a plan does not state it: friction of the weight is
 * counted only where it decides nothing.
 */
export function checkSliding(load: Load, heading: Heading, { working, units }: RuleContext): Check {
  const { layout, weight, mu, counted } = load;
  const { article } = layout;
  const across = isAcross(heading);
  const about = aboutAnnex(
    working,
    `sliding-${heading}`,
    `Sliding ${toward(heading)}`,
    article.id,
    'section 7',
    'memory',
  );
  const force = externalForce(load, heading);
  if (force === undefined) return undeterminedCheck(about, [forceNotStated(load, heading)]);
  const divisor = divisorOf();
  const show = inForce(units, divisor);
  const pulled = heldDirectly(counted, heading, mu);
  const rubbed = timesSpan(times(weight, divisor), mu);
  const withoutIt = {
    ...rubbed,
    least: [],
    missing: [...rubbed.missing, note('VERTICAL_FORCE_NOT_STATED', { article: article.id })],
  };
  if (working.shown) {
    working.step(
      `${article.id}, ${heading}`,
      across ? 'Fy held' : 'Fx held',
      `${across ? 'μ · m · g + ' : ''}sum(CS · (cos α · cos β + μ · sin α))`,
      [
        ['μ', mu.least === mu.most ? mu.least : null],
        ...(across
          ? ([
              ['m', layout.mass],
              ['g', factors.rows.gravity],
            ] as const)
          : []),
        ...runValues(counted, heading, units, { symbol: 'CS', divisor }),
      ],
      ifKnown(across ? together(rubbed, pulled) : pulled, show),
      about.clause,
    );
  }
  return judgeHeld(about, times([{ quantity: force }], divisor), together(across ? rubbed : withoutIt, pulled), show);
}

const isAcross = (heading: Heading): boolean => SIDE[heading] === 'sideways';

/** The external force in a heading. */
export function externalForce({ external }: Load, heading: Heading): QuantityLike | undefined {
  return isAcross(heading) ? external.transverse : external.longitudinal;
}

/** The fact that an external force is not stated. */
export function forceNotStated({ layout }: Load, heading: Heading): Note {
  return note('SHIP_FORCE_NOT_STATED', {
    article: layout.article.id,
    direction: isAcross(heading) ? 'transverse' : 'longitudinal',
  });
}
