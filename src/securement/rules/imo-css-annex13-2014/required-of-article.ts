import { checkObject } from '../../../input-checks.js';
import { readOptional } from '../../../quantities/read.js';
import { imoCssAnnex132014Factors as factors } from '../../../tables/generated/imo-css-annex13-2014-factors.js';
import { type Note, note } from '../../../working/note.js';
import { decimalIn, shownForce } from '../../force-checks.js';
import type { Article, ReadArticle, ShipForces } from '../../plan.js';
import type { ArticleOutcome, ArticleRequirement, DirectionalRequirement, RuleContext } from '../../rule-set.js';
import { LEAST_FRICTION_COUNTED } from '../../surface-friction.js';
import { frictionCoefficient } from './annex-13-7-friction.js';
import type { ExternalForces } from './annex-13-7-sliding.js';
import { aboutAnnex } from './cite.js';

/** The external forces of an article, N. */
export function readShipForces(forces: ShipForces | undefined): ExternalForces {
  if (forces === undefined) return {};
  checkObject(forces, 'shipForces', '{ longitudinal, transverse }');
  const longitudinal = readOptional(forces.longitudinal, 'force', 'shipForces.longitudinal');
  const transverse = readOptional(forces.transverse, 'force', 'shipForces.transverse');
  return {
    ...(longitudinal !== undefined && { longitudinal: decimalIn(longitudinal, 'N') }),
    ...(transverse !== undefined && { transverse: decimalIn(transverse, 'N') }),
  };
}

/**
 * What the annex asks of one article under the forces that the caller states: 1.5 · max(0, Fy − μ · m · g) across the ship
 * and 1.5 · Fx along it, against maximum securing loads that pull level. No number of tie-downs.
 */
export function requirementOf({ article, mass }: ReadArticle, { working, units }: RuleContext): ArticleRequirement {
  const { longitudinal, transverse } = readShipForces(article.shipForces);
  const mu = frictionCoefficient(article, working);
  const divisor = factors.rows['msl-over-calculation-strength'].value;
  const weight = decimalIn(mass, 'kg') * factors.rows.gravity.value;
  const perDirection: DirectionalRequirement[] = [];
  const ask = (direction: DirectionalRequirement['direction'], force: number | undefined, friction: number) => {
    if (force === undefined) return;
    const { clause } = aboutAnnex(working, direction, direction, article.id, 'section 7', 'memory');
    const needed = shownForce(divisor * Math.max(0, force - friction), units);
    working.step(
      `${article.id}, ${direction}`,
      'MSL',
      `${divisor} · max(0, F − friction)`,
      { F: shownForce(force, units), friction: shownForce(friction, units) },
      needed,
      clause,
    );
    perDirection.push({ direction, againstMaximumSecuringLoad: needed, clause });
  };
  ask('forward', longitudinal, 0);
  ask('rearward', longitudinal, 0);
  ask('lateral', transverse, mu.least * weight);
  if (mu.missing.length > 0) working.assumptions.push(...mu.missing, LEAST_FRICTION_COUNTED);
  working.cautions.push(FORCES_ARE_YOURS, EDITION);
  const { minimumCount, recommendedCount, options } = outcomeOf(article, 0);
  return { minimumCount, recommendedCount, requiredAggregate: null, options, perDirection };
}

/** What is found for an article beside its checks: no number is asked, and nothing is added up whatever its direction. */
export function outcomeOf({ id, kind }: Article, count: number): ArticleOutcome {
  return {
    id,
    rule: 'Annex 13',
    count,
    minimumCount: 0,
    recommendedCount: kind === 'general' ? 2 : 4, // common practice: so that each way is held by two
    requiredAggregate: null,
    aggregate: null,
    options: [],
  };
}

export const FORCES_ARE_YOURS: Note = /* @__PURE__ */ note([
  'SHIP_FORCES_STATED',
  "The forces of the ship's motion are as stated: their tables by length, speed, stability and stowage are not held here.",
]);
export const EDITION: Note = /* @__PURE__ */ note([
  'ANNEX_REPLACED',
  'Annex 13 was replaced as a whole in December 2020; this is the earlier text, for comparison and old cargo securing manuals.',
]);
