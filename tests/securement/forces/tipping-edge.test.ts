// Edges and levers by hand: each shape is drawn so that its sides meet the axes in round numbers.
import { describe, expect, it } from 'vitest';
import { checkSecurement, euEn12195_1_2010, imoCtu_2014 } from '../../../src/index.js';
import { HEADINGS, type Heading } from '../../../src/securement/forces/directions.js';
import { tippingShare } from '../../../src/securement/forces/held.js';
import {
  isLow,
  leversOf,
  momentOf,
  type TippingEdge,
  tippingEdges,
} from '../../../src/securement/forces/tipping-edge.js';
import type { ArticleLayout } from '../../../src/securement/layout.js';
import { checkOf } from '../plans.js';
import { at, layoutOf, run, standing } from './plans.js';

const edgesOf = (layout: ArticleLayout, heading: Heading) => tippingEdges(layout, heading) as readonly TippingEdge[];
const edgeOf = (layout: ArticleLayout, heading: Heading) => {
  const edges = edgesOf(layout, heading);
  expect(edges).toHaveLength(1);
  return edges[0]!;
};

/** 5 m by 2 m, its center of gravity 2 m behind the front and 0.75 m from the left. */
const rectangle = standing([-4, 0.25, 1.5], [-2, 1, 0], [-2, -1, 0], [-7, 1, 0], [-7, -1, 0]);
/** A narrow front axle: 1 m in front, 3 m behind it 2 m. */
const trapezoid = standing([-3, 0, 1], [-1, 0.5, 0], [-1, -0.5, 0], [-4, 1, 0], [-4, -1, 0]);
/** Three wheels: one in front, 2 m apart behind. */
const triangle = standing([-3, 0, 1], [0, 0, 0], [-4, 1, 0], [-4, -1, 0]);

describe('the edge that a load tips over', () => {
  it('is the side of a rectangle, wherever its center of gravity is', () => {
    expect(edgeOf(rectangle, 'forward')).toMatchObject({ b: 2, d: 1.5, at: -2, height: 0, skew: 0, rise: 0 });
    expect(edgeOf(rectangle, 'rearward')).toMatchObject({ b: 3, d: 1.5, at: 7 });
    expect(edgeOf(rectangle, 'left')).toMatchObject({ b: 0.75, at: 1 });
    expect(edgeOf(rectangle, 'right')).toMatchObject({ b: 1.25, at: 1 });
  });

  it('does not change with contacts between the corners', () => {
    const six = standing([-4, 0.25, 1.5], [-2, 1, 0], [-5, 1, 0], [-7, 1, 0], [-2, -1, 0], [-5, -1, 0], [-7, -1, 0]);
    const inner = standing([-4, 0.25, 1.5], [-2, 1, 0], [-2, -1, 0], [-3, 0, 0], [-7, 1, 0], [-7, -1, 0], [-2, 1, 0]);
    for (const heading of HEADINGS) {
      expect(edgesOf(six, heading)).toEqual(edgesOf(rectangle, heading));
      expect(edgesOf(inner, heading)).toEqual(edgesOf(rectangle, heading));
    }
  });

  it('of a trapezoid is its slanting side, nearer than the widest contact', () => {
    // from (−1, 0.5) to (−4, 1): 1/6 m in for each meter forward. At x = −3, y = 1 − 1/6 = 5/6, not 1
    expect(edgeOf(trapezoid, 'left').b).toBeCloseTo(5 / 6, 12);
    expect(edgeOf(trapezoid, 'right').b).toBeCloseTo(5 / 6, 12);
    expect(edgeOf(trapezoid, 'forward')).toMatchObject({ b: 2, skew: 0 });
    expect(edgeOf(trapezoid, 'rearward')).toMatchObject({ b: 1, skew: 0 });
    // to the left, forward lies to the right of the heading: 1/6 m nearer for each meter that way
    expect(edgeOf(trapezoid, 'left').skew).toBeCloseTo(1 / 6, 12);
  });

  it('of a triangle is a side that meets in the single wheel', () => {
    // the left side from (0, 0) to (−4, 1): at x = −3, y = 3/4
    expect(edgeOf(triangle, 'left').b).toBeCloseTo(0.75, 12);
    expect(edgeOf(triangle, 'rearward').b).toBe(1);
    // forward over the wheel itself: both sides meet there, 4 m along for each meter across
    const [one, other, ...rest] = edgesOf(triangle, 'forward');
    expect(rest).toEqual([]);
    expect([one!.b, other!.b, one!.at, other!.at]).toEqual([3, 3, 0, 0]);
    expect([one!.skew, other!.skew].sort((a, b) => a - b)).toEqual([-4, 4]);
    // beside the middle line it is one side alone: at y = 0.25, x = −1, and b = 2 where the wheel is 3 ahead
    const beside = standing([-3, 0.25, 1], [0, 0, 0], [-4, 1, 0], [-4, -1, 0]);
    expect(edgeOf(beside, 'forward').b).toBeCloseTo(2, 12);
  });

  it('is behind a center of gravity outside the hull: it tips already', () => {
    // in front of the narrow axle by 0.5; beside it to the left, where the side stands at 0.5 − 1/12 beyond the axle
    const ahead = standing([-0.5, 0, 1], [-1, 0.5, 0], [-1, -0.5, 0], [-4, 1, 0], [-4, -1, 0]);
    expect(edgeOf(ahead, 'forward').b).toBe(-0.5);
    // at x = −2.5 the left side stands at 0.75: one at 0.9 is within the widest contact, and out
    const out = standing([-2.5, 0.9, 1], [-1, 0.5, 0], [-1, -0.5, 0], [-4, 1, 0], [-4, -1, 0]);
    expect(edgeOf(out, 'left').b).toBeCloseTo(-0.15, 12);
  });

  it('has the height at which it crosses the line of the center of gravity', () => {
    // from 0.5 high at y = 1 to 0 at y = −1: at 0.25 it is 0.5 · 1.25 / 2 = 0.3125
    const edge = edgeOf(standing([-4, 0.25, 1.5], [-2, 1, 0.5], [-2, -1, 0], [-7, 1, 0], [-7, -1, 0]), 'forward');
    expect(edge).toMatchObject({ b: 2, height: 0.3125, d: 1.1875, rise: 0.25 });
  });

  it('of contacts in one line lies in the line, or square at its end', () => {
    const line = standing([-4, 0.25, 1], [-2, 0, 0], [-7, 0, 0], [-5, 0, 0]);
    expect(edgeOf(line, 'forward')).toMatchObject({ b: 2, skew: 0 });
    expect(edgeOf(line, 'rearward')).toMatchObject({ b: 3, skew: 0 });
    expect(edgeOf(line, 'left').b).toBe(-0.25);
    expect(edgeOf(line, 'right').b).toBe(0.25);
    expect(edgeOf(standing([-4, 0, 1], [-3, 0, 0.5]), 'forward')).toMatchObject({ b: 1, d: 0.5 });
  });

  it('is not known without contacts or center of gravity', () => {
    expect(tippingEdges(layoutOf({ centerOfGravity: at(-4, 0, 1) }), 'left')).toBeUndefined();
    expect(tippingEdges(layoutOf({ contacts: [{ at: at(-4, 0, 0) }] }), 'left')).toBeUndefined();
  });

  it('tips nothing that lies no higher than it, unless that is beyond it', () => {
    const low = (y: number) => edgeOf(standing([-4, y, 0], [-2, 1, 0], [-2, -1, 0], [-7, 1, 0], [-7, -1, 0]), 'left');
    expect([isLow(low(0)), isLow(low(1)), isLow(low(1.01)), isLow(edgeOf(rectangle, 'left'))]).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });
});

describe('the moment of a run about an edge', () => {
  // 3² + 4² + 12² = 13²: back 3, to the left 4, down 12, over 13
  const leg = run(at(-5, 1, 12), at(-8, 5, 0));

  it('has its levers at the attachment, not along the run', () => {
    const edge = edgeOf(rectangle, 'right'); // at y = −1, on the deck
    expect(leversOf(leg, edge)).toEqual({ h: 12, s: 2 }); // attached at y = 1, z = 12
    // one that is attached beyond the edge has a negative s
    expect(leversOf(run(at(-5, -1.5, 2), at(-5, 0, 0)), edge)).toEqual({ h: 2, s: -0.5 });
  });

  it('is h of the part that holds back and s of the part that presses down', () => {
    // 1300 · (12 · 4/13 + 2 · 12/13) = 4800 + 2400
    expect(1300 * tippingShare([leg], edgeOf(rectangle, 'right'))).toBeCloseTo(7200, 9);
    expect(tippingShare([leg], edgeOf(rectangle, 'left'))).toBe(0); // it points with the tipping
  });

  it('about an oblique edge is that about the edge itself, for a moment across the heading', () => {
    // Left side of the triangle, direction e = (4, −1, 0) from (−4, 1) to the wheel. A pull of 1 straight to the right,
    // 2 m up: r × F = (x, y, 2) × (0, −1, 0) = (2, 0, −x); along e: 8. For the load (0, c W, −cz W) at (0, −b, d) it is
    // 4 · (cz b − c d) W: the fourth part, as for a square edge, 2.
    const edge = edgeOf(triangle, 'left');
    expect(momentOf(run(at(-3, 0, 2), at(-3, -1, 2)), edge)).toBeCloseTo(2, 12);
    // straight down at (−3, 0): 0.75 before the edge
    expect(momentOf(run(at(-3, 0, 2), at(-3, 0, 0)), edge)).toBeCloseTo(0.75, 12);
    // straight down at (−2, 0): the edge stands at y = 0.5 there
    expect(momentOf(run(at(-2, 0, 2), at(-2, 0, 0)), edge)).toBeCloseTo(0.5, 12);
    // straight back, 2 m up: r × F = (x, y, 2) × (−1, 0, 0) = (0, −2, y); along e: 2, the fourth part 0.5
    expect(momentOf(run(at(-3, 0, 2), at(-4, 0, 2)), edge)).toBeCloseTo(0.5, 12);
    expect(momentOf(run(at(-3, 0, 2), at(-2, 0, 2)), edge)).toBeCloseTo(-0.5, 12);
  });

  it('about a sloping edge counts its rise', () => {
    // front edge e = (0, 2, 0.5) up to the left, through (−2, −1, 0). A pull of 1 to the left at (−4, −1, 1):
    // r = (−2, 0, 1); r × F = (−1, 0, −2); along e: −1, over e_y = 2: −0.5 of tipping, which is 0.5 held
    const sloping = edgeOf(standing([-4, -1, 1], [-2, 1, 0.5], [-2, -1, 0], [-7, 1, 0], [-7, -1, 0]), 'forward');
    expect(momentOf(run(at(-4, -1, 1), at(-4, 0, 1)), sloping)).toBeCloseTo(0.5, 12);
  });
});

describe('a load on three wheels', () => {
  const article = (y: number) => ({
    id: 'load',
    kind: 'general' as const,
    mass: '1 t' as const,
    length: '4 m' as const,
    friction: 0.9,
    centerOfGravity: at(-3, y, 1),
    contacts: [at(0, 0, 0), at(-4, 1, 0), at(-4, -1, 0)].map((point) => ({ at: point })),
  });
  const tieDowns = [
    {
      id: 'ahead',
      holds: 'load',
      path: 'vehicle-to-cargo',
      capacities: { lashingCapacity: '1 kN', maximumSecuringLoad: '1 kN' },
      attachment: at(-3, 0, 1),
      anchor: at(-1, 0, 1),
    },
  ] as const;
  const judged = (rules: typeof imoCtu_2014, id: string, y: number) =>
    checkOf(checkSecurement({ rules, articles: [article(y)], tieDowns }), `${id}/load`);

  it('tips to the side sooner than its widest contacts say', () => {
    // b = 0.75, d = 1: c / cz of 0.6 leaves it standing to 0.15 m off the middle; the widest contact would say 0.4
    expect(judged(euEn12195_1_2010, 'tilting-left', 0.149).verdict).toBe('pass');
    expect(judged(euEn12195_1_2010, 'tilting-left', 0.151).verdict).toBe('fail');
    expect(judged(euEn12195_1_2010, 'tilting-right', -0.149).verdict).toBe('pass');
    expect(judged(euEn12195_1_2010, 'tilting-right', -0.151).verdict).toBe('fail');
    // CTU Code, 0.5 sideways: to 0.25 m
    expect(judged(imoCtu_2014, 'tipping-left', 0.249).verdict).toBe('pass');
    expect(judged(imoCtu_2014, 'tipping-left', 0.251).verdict).toBe('fail');
  });

  it('holds about each of two sides that meet before it', () => {
    // Forward over the wheel, b = 3, d = 1 at 4.1 m up: c d = 3.28 > 3 for 1 t: 9810 · 0.28 = 2746.8 N m to be held.
    // A chain back and to the right at 45°, 2 m up: about the side that it pulls away from it turns with the load.
    const high = { ...article(0), centerOfGravity: at(-3, 0, 4.1) };
    const chain = (y: -1 | 0 | 1, id: string) => ({
      ...tieDowns[0],
      id,
      capacities: { lashingCapacity: '10 kN' } as const,
      attachment: at(-3, 0, 2),
      anchor: at(-4, y, 2),
    });
    const verdict = (...chains: readonly ReturnType<typeof chain>[]) =>
      checkOf(checkSecurement({ rules: euEn12195_1_2010, articles: [high], tieDowns: chains }), 'tilting-forward/load')
        .verdict;
    // straight back 10 kN · 2 m = 20 kN m about both; askew (2 ± 8) · 10 kN / sqrt(2): −42 kN m about one of them
    expect(verdict(chain(0, 'straight'))).toBe('pass');
    expect(verdict(chain(-1, 'askew'))).toBe('fail');
    expect(verdict(chain(1, 'askew'))).toBe('fail');
    expect(verdict(chain(1, 'left'), chain(-1, 'right'))).toBe('pass');
  });
});
