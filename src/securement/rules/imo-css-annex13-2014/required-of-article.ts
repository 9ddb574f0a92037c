import { checkObject } from '../../../input-checks.js';
import type { QuantityLike } from '../../../quantities/quantity.js';
import { readOptional } from '../../../quantities/read.js';
import { imoCssAnnex132014Factors as factors } from '../../../tables/generated/imo-css-annex13-2014-factors.js';
import { type Note, note } from '../../../working/note.js';
import { amountOf, forceUnitOf, inForce, type Sum, times, weightUnder } from '../../forces/sums.js';
import type { ReadArticle, ShipForces } from '../../plan.js';
import { usualCount } from '../../practice.js';
import type { ArticleRequirement, DirectionalRequirement, RuleContext } from '../../rule-set.js';
import { divisorOf } from './annex-13-4-calculation-strength.js';
import { frictionCoefficient } from './annex-13-7-friction.js';
import type { ExternalForces } from './annex-13-7-sliding.js';
import { aboutAnnex } from './cite.js';

/** The external forces of an article. */
export function readShipForces(forces: ShipForces | undefined): ExternalForces {
  if (forces === undefined) return {};
  checkObject(forces, 'shipForces', '{ longitudinal, transverse }');
  return {
    longitudinal: readOptional(forces.longitudinal, 'force', 'shipForces.longitudinal'),
    transverse: readOptional(forces.transverse, 'force', 'shipForces.transverse'),
  };
}

/**
 * What the annex asks of one article under the forces that the caller states: 1.5 · max(0, Fy − μ · m · g) across the ship
 * and 1.5 · Fx along it, against maximum securing loads that pull level. No number of tie-downs.
 */
export function requirementOf({ article, mass }: ReadArticle, { working, units }: RuleContext): ArticleRequirement {
  const { longitudinal, transverse } = readShipForces(article.shipForces);
  const mu = frictionCoefficient(article, working);
  const weight = weightUnder(factors.rows.gravity.value, mass);
  const perDirection: DirectionalRequirement[] = [];
  const ask = (direction: DirectionalRequirement['direction'], force: QuantityLike | undefined, friction: Sum) => {
    if (force === undefined) return;
    const { clause } = aboutAnnex(working, direction, direction, article.id, 'section 7', 'memory');
    const asked = [{ quantity: force }];
    const values = { F: inForce(units)(asked), friction: inForce(units)(friction) };
    const left = { value: Math.max(0, values.F.value - values.friction.value), unit: forceUnitOf(units) };
    const needed = amountOf(times([{ quantity: left }], divisorOf()), left.unit);
    working.step(`${article.id}, ${direction}`, 'MSL', `${divisorOf()} · max(0, F − friction)`, values, needed, clause);
    perDirection.push({ direction, againstMaximumSecuringLoad: needed, clause });
  };
  ask('forward', longitudinal, []);
  ask('rearward', longitudinal, []);
  ask('lateral', transverse, times(weight, mu.least));
  if (mu.missing.length > 0)
    working.assumptions.push(...mu.missing, note('LEAST_FRICTION_COUNTED', { article: article.id }));
  working.cautions.push(FORCES_ARE_YOURS, EDITION);
  return { minimumCount: 0, recommendedCount: usualCount(article), requiredAggregate: null, options: [], perDirection };
}

export const FORCES_ARE_YOURS: Note = /* @__PURE__ */ note('SHIP_FORCES_STATED');
export const EDITION: Note = /* @__PURE__ */ note('ANNEX_REPLACED');
