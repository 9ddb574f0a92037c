import { describe, expect, it } from 'vitest';
import {
  balanceOf,
  type HangingLeg,
  type HangingLoad,
  hang,
  type Rest,
  shareLoad,
} from '../../src/statics/hanging-load.js';
import type { Vec3 } from '../../src/statics/vector.js';

const leg = (at: Vec3, length: number, axialStiffness?: number): HangingLeg => ({
  at,
  length,
  ...(axialStiffness && { axialStiffness }),
});
const rest = (load: HangingLoad): Rest => {
  const found = hang(load);
  if (found.outcome !== 'rests') throw new Error(found.outcome);
  return found;
};
const under = (centerOfGravity: Vec3, ...legs: HangingLeg[]): HangingLoad => ({ weight: 1000, centerOfGravity, legs });

describe('hang', () => {
  it('one leg: the center of gravity comes straight below the pick', () => {
    // pick 3 right of and 4 above the center of gravity: the vertical of the load points along (3, 0, 4) / 5
    const { hook, up } = rest(under([0, 0, 0], leg([3, 0, 4], 10)));
    expect(up.map((value) => Number(value.toFixed(12)))).toEqual([0.6, 0, 0.8]);
    expect(hook.map((value) => Number(value.toFixed(12)))).toEqual([9, 0, 12]);
  });

  it('two legs: the plane formula of a tilted load', () => {
    // picks (0,0) and (4,0), legs 3 and 4, center of gravity (1, -1): xh = (16 + 9 - 16) / 8 = 1.125,
    // yh = sqrt(9 - 1.265625) = 2.781074; tilt = atan2(1 - 1.125, 2.781074 + 1) = -1.893 degrees: end 1 goes down
    const { hook, up } = rest(under([1, 0, -1], leg([0, 0, 0], 3), leg([4, 0, 0], 4)));
    expect(hook[0]).toBeCloseTo(1.125, 12);
    expect(hook[2]).toBeCloseTo(2.781074, 6);
    expect((Math.atan2(-up[0], up[2]) * 180) / Math.PI).toBeCloseTo(-1.893, 3);
  });

  it('two legs: a center of gravity beside the line of the picks rolls under it', () => {
    // 0.5 beside and 1 below the line, legs alike over the middle: the load rolls atan(0.5 / 1) = 26.565 degrees about the line
    const { up } = rest(under([0, 0.5, -1], leg([-2, 0, 0], 3), leg([2, 0, 0], 3)));
    expect((Math.acos(up[2]) * 180) / Math.PI).toBeCloseTo(26.565, 3);
    expect(up[0]).toBeCloseTo(0, 12);
  });

  it('two legs: on the line of the picks or above it, the load rolls over', () => {
    const height = (z: number) => hang(under([0.2, 0, z], leg([-2, 0, 0], 3), leg([2, 0, 0], 3))).outcome;
    expect([height(-0.001), height(0), height(0.001)]).toEqual(['rests', 'rolls-over', 'rolls-over']);
  });

  it('three legs: the center of gravity may lie above the picks, within the cone of the legs', () => {
    const above = (z: number) =>
      hang(under([0, 0, z], leg([2, 0, 0], 4), leg([-1, 1.7, 0], 4), leg([-1, -1.7, 0], 4))).outcome;
    // the hook is at about sqrt(16 - 4) = 3.46
    expect([above(1), above(3), above(3.5)]).toEqual(['rests', 'rests', 'rolls-over']);
  });

  it('three legs: one that is too long hangs slack by the rest', () => {
    // the first two alone hold a center of gravity under their line at (0, 0, 4) over (-3, 0), (3, 0); the third, at
    // (0, 1, 0), is sqrt(17) away from there
    const { gaps, up } = rest(
      under([0, 0, -1], leg([-3, 0, 0], 5), leg([3, 0, 0], 5), leg([0, 1, 0], Math.sqrt(17) + 0.25)),
    );
    expect(gaps[2]).toBeCloseTo(0.25, 12);
    expect(up[2]).toBeCloseTo(1, 12);
  });

  it('legs that do not reach one hook do not close', () => {
    expect(hang(under([0, 0, -1], leg([-2, 0, 0], 1.9), leg([2, 0, 0], 2))).outcome).toBe('does-not-close');
    expect(hang(under([0, 0, -1], leg([-2, 0, 0], 2.1), leg([2, 0, 0], 2.1), leg([0, 4, 0], 2))).outcome).toBe(
      'does-not-close',
    );
  });
});

describe('shareLoad', () => {
  it('a center of gravity off the middle of four legs: a diagonal, or by stretch', () => {
    // picks (±2, ±1.5), hook 4 over them, alike: by symmetry two in a diagonal carry all, W/2 · S/H = 500 · 4.717 / 4 each
    const picks: Vec3[] = [
      [-2, -1.5, 0],
      [2, -1.5, 0],
      [2, 1.5, 0],
      [-2, 1.5, 0],
    ];
    const load = under([0, 0, -1], ...picks.map((at) => leg(at, Math.hypot(2, 1.5, 4))));
    const { greatest, elastic, determinate, residual } = shareLoad(load, rest(load), 0.01);
    expect(determinate).toBe(false);
    for (const tension of greatest) expect(tension).toBeCloseTo(589.6238, 4);
    for (const tension of elastic!) expect(tension).toBeCloseTo(294.8119, 4);
    expect(residual).toBeLessThan(1e-12);
  });

  it('three picks on one line leave one tension open: the middle may carry all or none', () => {
    const load = under([0, 0, -1], leg([-3, 0, 0], 5), leg([0, 0, 0], 4), leg([3, 0, 0], 5));
    const { greatest, elastic } = shareLoad(load, rest(load), 0);
    // none: T = W/2 · 5/4 = 625 outside; all: 1000 in the middle
    expect(greatest.map((value) => Number(value.toFixed(6)))).toEqual([625, 1000, 625]);
    // by stretch, k = 1/S: d down; outer T = (0.8 d)/5, middle d/4; 2 · 0.16 d · 0.8 + 0.25 d = W: d = 1000/0.506
    expect(elastic!.map((value) => Number(value.toFixed(4)))).toEqual([316.2055, 494.0711, 316.2055]);
  });

  it('a stiffer leg takes more, a slacker one less', () => {
    const at = (first: number, gap: number) => {
      const load = under([0, 0, -1], leg([-3, 0, 0], 5, 1e6), leg([0, 0, 0], 4 + gap, first), leg([3, 0, 0], 5, 1e6));
      return shareLoad(load, rest(load), 0.01).elastic![1]!;
    };
    expect(at(2e6, 0)).toBeGreaterThan(at(1e6, 0));
    expect(at(1e6, 1e-4)).toBeLessThan(at(1e6, 0));
    // the outer two alone sink by W/2 · 1.25 · S/EA / 0.8 = 625 · 5e-6 / 0.8 = 3.906 mm: a longer middle leg stays slack
    expect(at(1e6, 0.0039)).toBeGreaterThan(0);
    expect(at(1e6, 0.004)).toBe(0);
  });

  it('without every stiffness a gap leaves the sharing open', () => {
    const load = under([0, 0, -1], leg([-3, 0, 0], 5), leg([0, 0, 0], 4.001), leg([3, 0, 0], 5));
    expect(shareLoad(load, rest(load), 0.01).elastic).toBeUndefined();
    // a leg longer than legs may differ is slack, and balance tells the others
    expect(shareLoad(load, rest(load), 0.0009)).toMatchObject({
      determinate: true,
      greatest: [expect.closeTo(625, 6), 0, expect.closeTo(625, 6)],
    });
  });
});

describe('balanceOf', () => {
  it('never pushes, and never pulls what it cannot', () => {
    expect(balanceOf([[0, 0, -1]], [0, 0, 1])).toBeUndefined();
    expect(balanceOf([[0.6, 0, 0.8]], [0, 0, 1])).toBeUndefined();
    expect(
      balanceOf(
        [
          [0.6, 0, 0.8],
          [0, 0, 1],
        ],
        [0, 0, 1],
      ),
    ).toEqual([0, 1]);
    expect(
      balanceOf(
        [
          [0.6, 0, 0.8],
          [0.6, 0, 0.8],
        ],
        [0, 0, 1],
      ),
    ).toBeUndefined();
  });
});
