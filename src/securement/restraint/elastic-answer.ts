import type { UnitSystem } from '../../quantities/units.js';
import { type ElasticLimits, elasticLimits } from '../../statics/elastic/elastic-limits.js';
import type { ElasticLoad } from '../../statics/elastic/elastic-model.js';
import type { ElasticOutcome } from '../../statics/elastic/elastic-response.js';
import type { LimitOptions } from '../../statics/limit/limit-factor.js';
import type { Loading, RigidLoad } from '../../statics/rigid-load.js';
import type { Verdict } from '../../working/check.js';
import type { ElasticAnswer } from './answer.js';
import { tensionsOf } from './limit-answer.js';

/** How far beyond the acceleration asked for the load is followed. */
const FOLLOWED_TO = 10;

/** The load with the members that are there: all with a stiffness, else undefined. */
export function elasticLoad(load: RigidLoad): ElasticLoad | undefined {
  const members = load.members.filter(({ capacity }) => capacity > 0);
  const stiff = members.flatMap((member) =>
    member.stiffness === undefined ? [] : [{ ...member, stiffness: member.stiffness }],
  );
  return stiff.length === members.length ? { ...load, members: stiff } : undefined;
}

/** The elastic answer of one direction: the forces `at` the acceleration asked for, and what happens first on the way. */
export function elasticAnswer(
  load: ElasticLoad,
  loading: Loading,
  at: ElasticOutcome,
  options: LimitOptions,
  units: UnitSystem,
): ElasticAnswer {
  const limits = elasticLimits(load, loading, { ...options, upTo: FOLLOWED_TO });
  const followed = limits.outcome === 'followed' ? limits : undefined;
  const solved = at.outcome === 'equilibrium' ? at : undefined;
  const givesWay = followed?.givesWay?.factor ?? null;
  return {
    outcome: outcomeOf(limits, at),
    verdict: verdictOf(limits, at),
    tensions: solved === undefined ? [] : tensionsOf(load, solved.tensions, units),
    firstAtCapacity: followed?.firstAtCapacity ?? null,
    firstSlip: followed?.firstSlip?.factor ?? null,
    firstLift: followed?.firstLift?.factor ?? null,
    givesWay,
    residual: solved?.residual ?? null,
  };
}

function outcomeOf(limits: ElasticLimits, at: ElasticOutcome): ElasticAnswer['outcome'] {
  if (limits.outcome === 'impossible' || at.outcome === 'impossible') return 'impossible';
  return limits.outcome === 'not-solved' || at.outcome === 'not-solved' ? 'not-solved' : at.outcome;
}

function verdictOf(limits: ElasticLimits, at: ElasticOutcome): Verdict {
  if (limits.outcome === 'impossible' || at.outcome === 'impossible') return 'fail';
  if (limits.outcome === 'not-solved' || at.outcome === 'not-solved') return 'undetermined';
  if (at.outcome === 'gives-way') return 'fail';
  return limits.firstAtCapacity !== null && limits.firstAtCapacity.factor < 1 ? 'fail' : 'pass';
}
