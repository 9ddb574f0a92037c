import { imoCssAnnex132014Factors as factors } from '../../../tables/generated/imo-css-annex13-2014-factors.js';
import { type Check, undeterminedCheck } from '../../../working/check.js';
import { type Note, note, type Words } from '../../../working/note.js';
import { type CountedForce, directSpan, runValues } from '../../counted-force.js';
import { ifKnown, judgeSpan, shownForce, TOWARD, together, totalSpan } from '../../force-checks.js';
import type { Heading } from '../../forces.js';
import type { ArticleLayout } from '../../layout.js';
import type { RuleContext } from '../../rule-set.js';
import type { FrictionFactor } from '../../surface-friction.js';
import { aboutAnnex } from './cite.js';

/** External forces on an article as the caller computed them for the ship, N. */
export interface ExternalForces {
  readonly longitudinal?: number;
  readonly transverse?: number;
}

/** An article with everything the balances look at. */
export interface Load {
  readonly layout: ArticleLayout;
  /** m in kg and the g of the annex. */
  readonly weight: readonly [m: number, g: number];
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
    `Sliding ${TOWARD[heading]}`,
    article.id,
    'section 7',
    'memory',
  );
  const force = externalForce(load, heading);
  if (force === undefined) return undeterminedCheck(about, [forceNotStated(load, heading)]);
  const divisor = factors.rows['msl-over-calculation-strength'].value;
  const pressed = {
    least: across ? [[mu.least, ...weight, divisor]] : [],
    most: [[mu.most, ...weight, divisor]],
  };
  const pulled = directSpan(counted, heading, mu);
  const held = together(pressed, pulled);
  const show = (timesDivisor: number) => shownForce(timesDivisor / divisor, units);
  if (working.shown) {
    working.step(
      `${article.id}, ${heading}`,
      across ? 'Fy held' : 'Fx held',
      `${across ? 'μ · m · g + ' : ''}sum(CS · (cos α · cos β + μ · sin α))`,
      [
        ['μ', ifKnown(mu, (value) => value)],
        ...(across
          ? ([
              ['m', layout.mass],
              ['g', factors.rows.gravity],
            ] as const)
          : []),
        ...runValues(counted, heading, units, { symbol: 'CS', divisor }),
      ],
      ifKnown(totalSpan(across ? held : pulled), show),
      about.clause,
    );
  }
  const missing: Note[] = [...mu.missing, ...counted.flatMap(({ missing: facts }) => facts)];
  if (!across) missing.push(note(VERTICAL_FORCE_NOT_STATED, { article: article.id }));
  return judgeSpan(about, [[force, divisor]], held, show, missing);
}

const isAcross = (heading: Heading): boolean => heading === 'left' || heading === 'right';

/** The external force in a heading, N. */
export function externalForce({ external }: Load, heading: Heading): number | undefined {
  return isAcross(heading) ? external.transverse : external.longitudinal;
}

/** The fact that an external force is not stated. */
export function forceNotStated({ layout }: Load, heading: Heading): Note {
  return note(FORCE_NOT_STATED, {
    article: layout.article.id,
    direction: isAcross(heading) ? 'transverse' : 'longitudinal',
  });
}

const FORCE_NOT_STATED: Words = [
  'SHIP_FORCE_NOT_STATED',
  "The {direction} force of the ship's motion, wind and sea on {article}, from the accelerations for its ship and stowage.",
];
const VERTICAL_FORCE_NOT_STATED: Words = [
  'VERTICAL_FORCE_NOT_STATED',
  'The vertical force that goes with the longitudinal one on {article}, which takes friction off: a plan does not state it.',
];
