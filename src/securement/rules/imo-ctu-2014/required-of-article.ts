import { imoCtu2014Factors as factors } from '../../../tables/generated/imo-ctu-2014-factors.js';
import { type Note, note } from '../../../working/note.js';
import type { Heading } from '../../forces/directions.js';
import { inForce, times, weightUnder } from '../../forces/sums.js';
import type { ReadArticle } from '../../plan.js';
import { usualCount } from '../../practice.js';
import type { ArticleRequirement, DirectionalRequirement, RuleContext } from '../../rule-set.js';
import { staticFriction } from './annex-7-2-friction.js';
import { coefficientsOf, modeOf } from './chapter-5-accelerations.js';
import { aboutBalance } from './cite.js';

const DIRECTIONS = { forward: 'forward', rearward: 'rearward', left: 'lateral' } as const;
const WAYS = ['forward', 'rearward', 'left'] as const satisfies readonly Heading[];

/** What the CTU Code asks of one article by road: max(0, c − 0.75 μ · cz) · m · g each way, and no number of tie-downs. */
export function requirementOf({ article, mass }: ReadArticle, { working, units }: RuleContext): ArticleRequirement {
  const mode = modeOf({}, working);
  const mu = staticFriction(article, working);
  if (mu.missing.length > 0)
    working.assumptions.push(...mu.missing, note('LEAST_FRICTION_COUNTED', { article: article.id }));
  const weight = weightUnder(factors.rows.gravity.value, mass);
  const share = factors.rows['friction-factor-direct'].value;
  const perDirection = WAYS.map((heading): DirectionalRequirement => {
    const { c, cz } = coefficientsOf(mode, heading);
    const { clause } = aboutBalance(working, heading, heading, article.id);
    const force = inForce(units)(times(weight, Math.max(0, c - share * mu.least * cz)));
    working.step(
      `${article.id}, ${DIRECTIONS[heading]}`,
      'F',
      `max(0, c − ${share} · μ · cz) · m · g`,
      { c, μ: mu.least, cz, m: mass, g: factors.rows.gravity },
      force,
      clause,
    );
    return { direction: DIRECTIONS[heading], againstMaximumSecuringLoad: force, clause };
  });
  working.cautions.push(NO_NUMBER);
  return { minimumCount: 0, recommendedCount: usualCount(article), requiredAggregate: null, options: [], perDirection };
}

const NO_NUMBER: Note = /* @__PURE__ */ note('NO_NUMBER_ASKED');
