import { imoCtu2014Factors as factors } from '../../../tables/generated/imo-ctu-2014-factors.js';
import type { Check } from '../../../working/check.js';
import { type Note, note } from '../../../working/note.js';
import { type CountedForce, directSpan, frictionSpan, runValues } from '../../counted-force.js';
import { judgeSpan, type Span, shownForce, TOWARD } from '../../force-checks.js';
import type { Heading } from '../../forces.js';
import type { ArticleLayout } from '../../layout.js';
import type { RuleContext } from '../../rule-set.js';
import type { FrictionFactor } from '../../surface-friction.js';
import { coefficientsOf, type Mode } from './chapter-5-accelerations.js';
import { aboutBalance, citeTable } from './cite.js';

/** An article with everything the balances look at. */
export interface Load {
  readonly layout: ArticleLayout;
  readonly mode: Mode;
  /** m · g with the g of the code, N. */
  readonly weight: number;
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
  const crept: Span = { least: share * mu.least, most: share * mu.most };
  const pressed = (factor: Span): Span => {
    const { least, most } = frictionSpan(overTop, factor);
    return { least: factor.least * cz * weight + least, most: factor.most * cz * weight + most };
  };
  const still = pressed(mu);
  const pulled = directSpan(direct, heading, crept);
  const both = pressed(crept);
  const held: Span = { least: both.least + pulled.least, most: both.most + pulled.most };
  const byFriction = still.least >= held.least;
  const blocked = heading === 'forward' && isBlocked(layout);
  const about = aboutBalance(working, `sliding-${heading}`, `Sliding ${TOWARD[heading]}`, article.id);
  if (working.shown) {
    citeTable(working, factors, byFriction ? undefined : factors.rows['friction-factor-direct'].provenance);
    const counted = byFriction ? overTop : [...direct, ...overTop];
    const factor = byFriction ? 'μ' : `${share} · μ`;
    working.step({
      subject: `${article.id}, ${heading}`,
      symbol: 'F held',
      expression: `${factor} · cz · m · g + ${byFriction ? '' : `sum(F · (cos α · cos β + ${factor} · sin α)) + `}${factor} · sum(F · sin α)`,
      values: [
        ['μ', mu.least],
        ['cz', cz],
        ['m', layout.mass],
        ['g', factors.rows.gravity],
        ...runValues(counted, heading, units),
      ],
      result: shownForce(Math.max(still.least, held.least), units),
      clause: about.clause,
    });
    working.step({
      subject: `${article.id}, ${heading}`,
      symbol: 'F asked',
      expression: 'c · m · g',
      values: { c, m: layout.mass, g: factors.rows.gravity },
      result: shownForce(c * weight, units),
      clause: about.clause,
    });
  }
  const span: Span = {
    least: Math.max(still.least, held.least),
    most: blocked ? Number.POSITIVE_INFINITY : Math.max(still.most, held.most),
  };
  const missing: Note[] = [...mu.missing, ...[...direct, ...overTop].flatMap(({ missing: facts }) => facts)];
  if (blocked) missing.push(note(BLOCKING_NOT_STATED, { article: article.id }));
  return judgeSpan(about, c * weight, span, (newtons) => shownForce(newtons, units), missing);
}

function isBlocked({ article: { blockedForward, headboard } }: ArticleLayout): boolean {
  return blockedForward === true || headboard === 'partial' || headboard === 'adequate';
}

const BLOCKING_NOT_STATED = {
  code: 'BLOCKING_STRENGTH_NOT_STATED',
  text: 'The force that what blocks {article} forward can take: a plan does not state it.',
};
