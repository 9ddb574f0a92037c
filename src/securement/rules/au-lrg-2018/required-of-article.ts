import { mapAt } from '../../../errors.js';
import { checkList, checkObject } from '../../../input-checks.js';
import type { Quantity } from '../../../quantities/quantity.js';
import { ratedLoadIn } from '../../../quantities/rated.js';
import { auLrg2018Accelerations as accelerations } from '../../../tables/generated/au-lrg-2018-accelerations.js';
import { type Note, note } from '../../../working/note.js';
import { forceUnitOf } from '../../held.js';
import { readFriction } from '../../layout.js';
import type { Article, ReadArticle } from '../../plan.js';
import type { ArticleRequirement, DirectionalRequirement, RuleContext } from '../../rule-set.js';
import { SCHEDULE_7 } from './cite.js';
import { frictionOf } from './friction.js';
import { recommendedCount } from './plant-advice.js';

/**
 * What Schedule 7 asks of one article, against the lashing capacity of direct tie-downs: F = (a − μ) · W each way, never
 * below zero, where the article states its friction or its surfaces, and then a · W upward too; else F = a · W.
 */
export function requirementOf({ article, mass }: ReadArticle, { working, units }: RuleContext): ArticleRequirement {
  const weight = ratedLoadIn(mass, forceUnitOf(units));
  const { forward, rearward, sideways, upward } = accelerations.rows;
  working.cite(accelerations.source);
  const friction = frictionOf({ article, contacts: contactsOf(article) }, working);
  const mu = 'mu' in friction ? friction.mu : 0;
  const blocked = article.blockedForward === true;
  if (blocked) working.assumptions.push(BLOCKED);
  working.cautions.push(mu > 0 ? AFTER_FRICTION : WITHOUT_FRICTION);
  return {
    minimumCount: 0, // no number is asked
    recommendedCount: recommendedCount(article),
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
    const force: Quantity<'N' | 'lbf'> = ratedLoadIn(
      { value: mass.value * Math.max(0, a - mu), unit: mass.unit },
      weight.unit,
    );
    working.step(
      `restraint ${direction}`,
      'F',
      mu === 0 ? 'a · W' : mu < a ? '(a − μ) · W' : '0, because μ ≥ a',
      { a, ...(mu === 0 ? {} : { μ: mu }), W: weight },
      force,
      SCHEDULE_7,
    );
    return { direction, againstLashingCapacity: force, clause: SCHEDULE_7 };
  }
}

/** What its contacts say of friction; the article's own where they say nothing. */
function contactsOf({ friction, contacts = [] }: Article): { readonly friction?: number }[] {
  const own = readFriction(friction, 'friction');
  checkList(contacts, 'contacts', 0);
  return mapAt(contacts, 'contacts', (contact) => {
    checkObject(contact, '', 'a contact { at }');
    const each = readFriction(contact.friction, 'friction') ?? own;
    return each === undefined ? {} : { friction: each };
  });
}

const WITHOUT_FRICTION: Note = /* @__PURE__ */ note([
  'WITHOUT_FRICTION',
  'Without friction. Where it or limited vertical displacement is relied on, 0.2 of the weight upward too.',
]);
const AFTER_FRICTION: Note = /* @__PURE__ */ note([
  'AFTER_FRICTION',
  'After the friction of its weight, which may be relied on only while the upward force is held too.',
]);
const BLOCKED: Note = /* @__PURE__ */ note(['BLOCKED_FORWARD', 'Blocked forward: what blocks it must hold that way.']);
