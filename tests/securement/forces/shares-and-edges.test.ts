import { describe, expect, it } from 'vitest';
import {
  ALONG,
  anglesOf,
  HEADINGS,
  heldAgainstTipping,
  heldByFriction,
  heldDirectly,
  holdingBack,
  leversOf,
  pressingDown,
  tippingEdge,
} from '../../src/securement/forces.js';
import { type ArticleLayout, type Run, readLayout, readRuns } from '../../src/securement/layout.js';
import type { Article, Point } from '../../src/securement/plan.js';
import { machine, rated } from './plans.js';

const at = (x: number, y: number, z: number): Point => [
  { value: x, unit: 'm' },
  { value: y, unit: 'm' },
  { value: z, unit: 'm' },
];

const run = (attachment: Point, anchor: Point): Run =>
  readRuns({ path: 'vehicle-to-cargo', attachment, anchor })[0] as Run;

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

describe('sums over runs', () => {
  const other = run(at(-5, 1, 12), at(-2, 5, 0)); // the same, but forward

  it('heldDirectly counts the runs that hold back, with friction on what they press down', () => {
    // 1300 · (3/13 + 0.25 · 12/13) = 300 + 300; the other one would pull the load along
    const counted = [leg, other].map((each) => ({ run: each, force: 1300 }));
    expect(heldDirectly(counted, 'forward', 0.25)).toBeCloseTo(600, 9);
    expect(heldDirectly(counted, 'rearward', 0.25)).toBeCloseTo(600, 9);
    expect(heldDirectly(counted, 'left', 0.25)).toBe(0);
    // both pull to the left: 2 · 1300 · (4/13 + 0.25 · 12/13) = 800 + 600
    expect(heldDirectly(counted, 'right', 0.25)).toBeCloseTo(1400, 9);
    expect(heldDirectly(counted, 'right', 0)).toBeCloseTo(800, 9);
    expect(heldDirectly([], 'right', 0.25)).toBe(0);
  });

  it('heldDirectly takes friction off for a run that lifts', () => {
    // 1300 · (3/13 − 0.25 · 12/13) = 300 − 300
    const lifting = run(at(-5, 1, 0), at(-8, 5, 12));
    expect(heldDirectly([{ run: lifting, force: 1300 }], 'forward', 0.25)).toBeCloseTo(0, 9);
  });

  it('heldByFriction counts every run, whichever way it leans', () => {
    // 0.25 · 1300 · 12/13 · 2
    expect(
      heldByFriction(
        [leg, other].map((each) => ({ run: each, force: 1300 })),
        0.25,
      ),
    ).toBeCloseTo(600, 9);
  });
});

describe('tipping', () => {
  const layoutOf = (more: Partial<Article>): ArticleLayout =>
    readLayout({ articles: [machine(more)], tieDowns: [rated('chain', '4700 lb')] })[0]!;
  const standing = layoutOf({
    centerOfGravity: at(-4, 0.25, 1.5),
    contacts: [at(-2, 1, 0.5), at(-2, -1, 0), at(-7, 1, 0), at(-7, -1, 0)].map((point) => ({ at: point })),
  });

  it('goes over the outermost contact of the heading', () => {
    // forward: the first of the two at x = −2 stands 0.5 m up, so d = 1.5 − 0.5
    expect(tippingEdge(standing, 'forward')).toEqual({ b: 2, d: 1, at: -2, height: 0.5 });
    expect(tippingEdge(standing, 'rearward')).toEqual({ b: 3, d: 1.5, at: 7, height: 0 });
    expect(tippingEdge(standing, 'left')).toMatchObject({ b: 0.75, at: 1 });
    expect(tippingEdge(standing, 'right')).toMatchObject({ b: 1.25, at: 1 });
  });

  it('is not known without contacts or center of gravity', () => {
    expect(tippingEdge(layoutOf({ centerOfGravity: at(-4, 0, 1) }), 'left')).toBeUndefined();
    expect(tippingEdge(layoutOf({ contacts: [{ at: at(-4, 0, 0) }] }), 'left')).toBeUndefined();
  });

  it('has its levers at the attachment, not along the run', () => {
    const edge = tippingEdge(standing, 'right')!; // at y = −1, on the deck
    expect(leversOf(leg, edge, 'right')).toEqual({ h: 12, s: 2 }); // attached at y = 1, z = 12
    // one that is attached beyond the edge has a negative s
    expect(leversOf(run(at(-5, -1.5, 2), at(-5, 0, 0)), edge, 'right')).toEqual({ h: 2, s: -0.5 });
  });

  it('is held by h of the part that holds back and s of the part that presses down', () => {
    const edge = tippingEdge(standing, 'right')!;
    // 1300 · (12 · 4/13 + 2 · 12/13) = 4800 + 2400
    expect(heldAgainstTipping([{ run: leg, force: 1300 }], edge, 'right')).toBeCloseTo(7200, 9);
    expect(heldAgainstTipping([{ run: leg, force: 1300 }], edge, 'left')).toBe(0); // it points with the tipping
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
