// Dry friction is no convex program, so no solver judges it: its law is checked on what comes out, and the path against
// a load that creeps.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { elasticResponse } from '../../src/statics/elastic/elastic-response.js';
import { creepTo } from './creep.js';
import { anyLoad, anyLoading, around, tiedDown } from './layouts.js';

describe('dry friction', () => {
  it('stays inside its polygon, and on its edge where it slides', () => {
    let slid = 0;
    let unsolved = 0;
    fc.assert(
      fc.property(
        anyLoad,
        anyLoading,
        fc.constantFrom(4, 8, 16),
        fc.constantFrom(0, 0.3, 1),
        (load, loading, coneSides, factor) => {
          const outcome = elasticResponse(load, loading, factor, { friction: { multiplier: 1, coneSides } });
          if (outcome.outcome === 'not-solved') unsolved++;
          if (outcome.outcome !== 'equilibrium') return;
          expect(outcome.residual).toBeLessThanOrEqual(1e-9);
          outcome.contactForces.forEach(([x, y, z], index) => {
            const { friction } = load.contacts[index]!;
            expect(z).toBeGreaterThanOrEqual(0);
            expect(Math.hypot(x, y)).toBeLessThanOrEqual(friction * z + 1e-7 * load.weight);
            if (outcome.contacts[index] === 'lifted')
              expect(Math.hypot(x, y, z)).toBeLessThanOrEqual(1e-7 * load.weight);
            if (outcome.contacts[index] !== 'slides' || friction === 0) return;
            // the polygon's edge lies between its apothem and its corners
            expect(Math.hypot(x, y)).toBeGreaterThanOrEqual(
              friction * z * Math.cos(Math.PI / coneSides) - 1e-7 * load.weight,
            );
            slid++;
          });
        },
      ),
      { numRuns: 1500, endOnFailure: true, seed: 1500 },
    );
    expect(slid).toBeGreaterThan(100);
    // friction that wedges, or members that hardly resist
    expect(unsolved).toBeLessThanOrEqual(45);
  }, 60_000);

  it('makes members carry what they carry in a load that creeps', () => {
    let compared = 0;
    for (const [index, load] of fc.sample(tiedDown, { numRuns: 48, seed: 20 }).entries()) {
      const loading = around[index % 4]!;
      const ours = elasticResponse(load, loading, 0.7, { friction: { multiplier: 1, coneSides: 32 } });
      const crept = creepTo(load, loading, 0.7, { rigid: 100, steps: 20 });
      if (ours.outcome === 'gives-way') expect(crept).toBeUndefined();
      if (ours.outcome !== 'equilibrium' || crept === undefined) continue; // creeping is slow and may not come to an end
      // its contacts are 100 times as stiff as the members and not a million times, and its friction has a circle
      ours.tensions.forEach((tension, member) => {
        expect(Math.abs(tension - crept[member]!)).toBeLessThanOrEqual(0.02 * load.weight);
      });
      compared++;
    }
    expect(compared).toBeGreaterThan(30);
  }, 60_000);
});
