import { describe, expect, it } from 'vitest';
import { ALONG, anglesOf, HEADINGS, holdingBack, pressingDown } from '../../../src/securement/forces/directions.js';
import { directShare, pressedShare } from '../../../src/securement/forces/held.js';
import { at, run } from './plans.js';

// 3² + 4² + 12² = 13²: back 3, to the left 4, down 12, over 13
const leg = run(at(-5, 1, 12), at(-8, 5, 0));

describe('shares of the tension of a run', () => {
  it('are its components along a heading and down', () => {
    const held = HEADINGS.map((heading) => holdingBack(leg, heading));
    const shares = [3 / 13, -3 / 13, -4 / 13, 4 / 13];
    for (const [index, share] of shares.entries()) expect(held[index]).toBeCloseTo(share, 14);
    expect(pressingDown(leg)).toBeCloseTo(12 / 13, 14);
  });

  it('are below zero down for a run that lifts', () => {
    expect(pressingDown(run(at(0, 0, 0), at(-3, 4, 12)))).toBeCloseTo(-12 / 13, 14);
  });

  it('are those of its angles: cos α · cos β and sin α', () => {
    for (const heading of HEADINGS) {
      const { alpha, beta } = anglesOf(leg, heading);
      const [a, b] = [(alpha * Math.PI) / 180, (beta * Math.PI) / 180];
      expect(Math.cos(a) * Math.cos(b)).toBeCloseTo(Math.abs(holdingBack(leg, heading)), 14);
      expect(Math.sin(a)).toBeCloseTo(pressingDown(leg), 14);
    }
  });
});

describe('angles of a run', () => {
  it('are counted from the deck, and in plan from the heading', () => {
    // plan 3-4-5: tan α = 12/5, cos β = 3/5 lengthwise and 4/5 across; both 90 − the other
    expect(anglesOf(leg, 'forward').alpha).toBeCloseTo(67.380135052, 9);
    expect(anglesOf(leg, 'forward').beta).toBeCloseTo(53.1301023542, 9);
    expect(anglesOf(leg, 'rearward').beta).toBeCloseTo(53.1301023542, 9);
    expect(anglesOf(leg, 'left').beta).toBeCloseTo(36.8698976458, 9);
    expect(anglesOf(leg, 'right').beta).toBeCloseTo(36.8698976458, 9);
  });

  it('at the ends of their range', () => {
    expect(anglesOf(run(at(0, 0, 1), at(0, 0, 0)), 'forward')).toEqual({ alpha: 90, beta: 90 });
    expect(anglesOf(run(at(0, 0, 1), at(-2, 0, 1)), 'forward').alpha).toBeCloseTo(0, 12);
    expect(anglesOf(run(at(0, 0, 1), at(-2, 0, 1)), 'forward').beta).toBe(0);
    expect(anglesOf(run(at(0, 0, 1), at(-2, 0, 1)), 'left').beta).toBe(90);
  });
});

describe('shares of a tie-down', () => {
  const other = run(at(-5, 1, 12), at(-2, 5, 0)); // the same, but forward

  it('direct: of the runs that hold back, with friction on what they press down', () => {
    // of 1300 N, 1300 · (3/13 + 0.25 · 12/13) = 300 + 300; the other one would pull the load along
    expect(1300 * directShare([leg, other], 'forward', 0.25)).toBeCloseTo(600, 9);
    expect(1300 * directShare([leg, other], 'rearward', 0.25)).toBeCloseTo(600, 9);
    expect(directShare([leg, other], 'left', 0.25)).toBe(0);
    // both pull to the left: 2 · 1300 · (4/13 + 0.25 · 12/13) = 800 + 600
    expect(1300 * directShare([leg, other], 'right', 0.25)).toBeCloseTo(1400, 9);
    expect(1300 * directShare([leg, other], 'right', 0)).toBeCloseTo(800, 9);
    expect(directShare([], 'right', 0.25)).toBe(0);
  });

  it('direct: takes friction off for a run that lifts', () => {
    // 1300 · (3/13 − 0.25 · 12/13) = 300 − 300
    expect(1300 * directShare([run(at(-5, 1, 0), at(-8, 5, 12))], 'forward', 0.25)).toBeCloseTo(0, 9);
  });

  it('pressing: of every run, whichever way it leans', () => {
    // 0.25 · 1300 · 12/13 · 2
    expect(0.25 * 1300 * pressedShare([leg, other])).toBeCloseTo(600, 9);
  });
});

it('headings are unit vectors, in pairs opposite', () => {
  expect(HEADINGS.map((heading) => ALONG[heading])).toEqual([
    [1, 0, 0],
    [-1, 0, 0],
    [0, 1, 0],
    [0, -1, 0],
  ]);
});
