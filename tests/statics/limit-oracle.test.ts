// Every limit problem against HiGHS, whose model is built by other code.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limitFactor, limitFactorsOneOut } from '../../src/statics/limit/limit-factor.js';
import { type Judged, judgeLimit } from './highs.js';
import { anyFriction, anyLoad, anyLoading, around } from './layouts.js';

/** HiGHS works to 1e-9 in weights, so a factor near zero is known to 1e-9 and not to 1e-7 of itself. */
const sameFactor = (ours: number, judged: Judged) => {
  if (!('objective' in judged)) throw new Error(`${ours} against ${judged.status}`);
  expect(Math.abs(ours - judged.objective)).toBeLessThanOrEqual(1e-7 * Math.max(0.01, Math.abs(judged.objective)));
};

describe('the limit factor', () => {
  it('is that of HiGHS, in thousands of random layouts', () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(anyLoad, anyLoading, anyFriction, (load, loading, friction) => {
        const ours = limitFactor(load, loading, { friction });
        const judged = judgeLimit(load, loading, friction);
        seen.set(ours.outcome, (seen.get(ours.outcome) ?? 0) + 1);
        if (ours.outcome === 'limited') sameFactor(ours.factor, judged);
        else expect(ours.outcome).toBe(judged.status);
      }),
      { numRuns: 4000 },
    );
    // the comparison is worth something only when each outcome came up
    for (const outcome of ['limited', 'unbounded', 'impossible']) expect(seen.get(outcome)).toBeGreaterThan(50);
    expect(seen.get('not-solved')).toBeUndefined();
  }, 60_000);

  it('is that of HiGHS with each member gone', () => {
    fc.assert(
      fc.property(anyLoad, anyFriction, (load, friction) => {
        limitFactorsOneOut(load, around, { friction }).forEach(({ without }, direction) => {
          without.forEach((outcome, gone) => {
            const rest = { ...load, members: load.members.filter((_, index) => index !== gone) };
            const judged = judgeLimit(rest, around[direction]!, friction);
            if (outcome.outcome === 'limited') sameFactor(outcome.factor, judged);
            else expect(outcome.outcome).toBe(judged.status);
          });
        });
      }),
      { numRuns: 150 },
    );
  }, 60_000);
});
