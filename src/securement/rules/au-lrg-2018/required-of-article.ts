import { auLrg2018Accelerations as accelerations } from '../../../tables/generated/au-lrg-2018-accelerations.js';
import { type Note, note } from '../../../working/note.js';
import { inForce, times } from '../../forces/sums.js';
import type { ReadArticle } from '../../plan.js';
import { usualCount } from '../../practice.js';
import type { ArticleRequirement, DirectionalRequirement, RuleContext } from '../../rule-set.js';
import { SCHEDULE_7 } from './cite.js';
import { frictionFactor } from './friction.js';

/**
 * What Schedule 7 asks of one article, against the lashing capacity of direct tie-downs: F = (a − μ) · W each way, never
 * below zero, where the article states its friction or its surfaces, and then a · W upward too; else F = a · W.
 */
export function requirementOf({ article, mass }: ReadArticle, { working, units }: RuleContext): ArticleRequirement {
  const weight = [{ quantity: mass }];
  const { forward, rearward, sideways, upward } = accelerations.rows;
  working.cite(accelerations.source);
  const mu = frictionFactor(article, working).least;
  const blocked = article.blockedForward === true;
  if (blocked) working.assumptions.push(BLOCKED);
  working.cautions.push(mu > 0 ? AFTER_FRICTION : WITHOUT_FRICTION);
  return {
    minimumCount: 0, // no number is asked
    recommendedCount: usualCount(article),
    requiredAggregate: null,
    options: [],
    perDirection: [
      ...(blocked ? [] : [inDirection('forward', forward.c, mu)]),
      inDirection('rearward', rearward.c, mu),
      inDirection('lateral', sideways.c, mu),
      ...(mu > 0 ? [inDirection('up', upward.c, 0)] : []),
    ],
  };

  function inDirection(direction: DirectionalRequirement['direction'], a: number, mu: number): DirectionalRequirement {
    const force = inForce(units)(times(weight, Math.max(0, a - mu)));
    working.step(
      `restraint ${direction}`,
      'F',
      mu === 0 ? 'a · W' : mu < a ? '(a − μ) · W' : '0, because μ ≥ a',
      { a, ...(mu === 0 ? {} : { μ: mu }), W: inForce(units)(weight) },
      force,
      SCHEDULE_7,
    );
    return { direction, againstLashingCapacity: force, clause: SCHEDULE_7 };
  }
}

const WITHOUT_FRICTION: Note = /* @__PURE__ */ note('FRICTION_LEFT_OUT');
const AFTER_FRICTION: Note = /* @__PURE__ */ note('AFTER_FRICTION');
const BLOCKED: Note = /* @__PURE__ */ note('BLOCKING_MUST_HOLD');
