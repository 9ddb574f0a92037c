import type { UnitSystem } from '../../quantities/units.js';
import { collapseMechanism } from '../../statics/limit/collapse-mechanism.js';
import type { LimitOptions, LimitOutcome } from '../../statics/limit/limit-factor.js';
import { modeOf } from '../../statics/mechanism.js';
import type { Loading, RigidLoad } from '../../statics/rigid-load.js';
import type { Verdict } from '../../working/check.js';
import type { LimitAnswer, Mode, Tension } from './answer.js';
import { forceIn } from './load.js';

/** The factor of an outcome where it has one, and whether it holds what was asked. */
export function factorOf(outcome: LimitOutcome): { readonly factor: number | null; readonly verdict: Verdict } {
  switch (outcome.outcome) {
    case 'limited':
      return { factor: outcome.factor, verdict: outcome.factor >= 1 ? 'pass' : 'fail' };
    case 'unbounded':
      return { factor: null, verdict: 'pass' };
    case 'impossible':
      return { factor: 0, verdict: 'fail' };
    case 'not-solved':
      return { factor: null, verdict: 'undetermined' };
  }
}

/** What gives way first among several: the lowest factor. */
export function worstOf(outcomes: readonly LimitOutcome[]): number | null {
  const factors = outcomes.map(factorOf).flatMap(({ factor }) => (factor === null ? [] : [factor]));
  return factors.length === 0 ? null : Math.min(...factors);
}

/**
 * The limit answer of one direction. Where tie-downs are not fully known, `found` leaves them out and `atBest` has them
 * without limit: what holds without them holds, what fails with them fails, and the rest is not decided.
 */
export function limitAnswer(
  load: RigidLoad,
  loading: Loading,
  found: LimitOutcome,
  atBest: LimitOutcome | undefined,
  options: LimitOptions,
  units: UnitSystem,
): LimitAnswer {
  const { factor, verdict } = factorOf(found);
  const open = verdict === 'fail' && atBest !== undefined && factorOf(atBest).verdict !== 'fail';
  const limited = found.outcome === 'limited' ? found : undefined;
  return {
    outcome: found.outcome,
    verdict: open ? 'undetermined' : verdict,
    factor: limited?.factor ?? (found.outcome === 'impossible' ? factor : null),
    mode: modeFound(load, loading, found, options),
    tensions: limited === undefined ? [] : tensionsOf(load, limited.tensions, units),
    governing: [...new Set(limited?.governing)],
    residual: limited?.residual ?? null,
  };
}

/** How it gives way, by the mechanism at the limit; null where that cannot be told. */
function modeFound(load: RigidLoad, loading: Loading, found: LimitOutcome, options: LimitOptions): Mode | null {
  if (found.outcome === 'unbounded') return 'holds';
  if (found.outcome !== 'limited') return null;
  const mechanism = collapseMechanism(load, loading, found, options);
  return mechanism === undefined ? null : modeOf(mechanism, load);
}

/** Tensions by tie-down; of one with two runs the greater. */
export function tensionsOf(load: RigidLoad, tensions: readonly number[], units: UnitSystem): readonly Tension[] {
  const greatest = new Map<string, { newtons: number; capacity: number }>();
  load.members.forEach(({ id, capacity }, index) => {
    const newtons = tensions[index] as number;
    if (newtons > (greatest.get(id)?.newtons ?? Number.NEGATIVE_INFINITY)) greatest.set(id, { newtons, capacity });
  });
  return [...greatest].map(([id, { newtons, capacity }]) => ({
    id,
    tension: forceIn(newtons, units),
    utilization: capacity > 0 ? newtons / capacity : null,
  }));
}
