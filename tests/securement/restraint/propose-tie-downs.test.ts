import { describe, expect, it } from 'vitest';
import type { TieDown } from '../../../src/securement/plan.js';
import { proposeTieDowns } from '../../../src/securement/restraint/propose-tie-downs.js';
import { solveRestraint } from '../../../src/securement/restraint/solve-restraint.js';
import { issueOf } from '../../quantities/issue-of.js';
import { m } from './block.js';

const at = (id: string, x: number, y: number, z: number) => ({ id, at: m(x, y, z) });

const article = {
  id: 'tractor',
  kind: 'machinery',
  mass: '2000 kg',
  length: '3 m',
  friction: 0.3,
  centerOfGravity: m(-3, 0, 0.7),
  contacts: [m(-2, 0.6, 0), m(-2, -0.6, 0), m(-4, 0.6, 0), m(-4, -0.6, 0)].map((each) => ({ at: each })),
} as const;
const anchors = [
  at('front left', -0.5, 1, 0),
  at('front right', -0.5, -1, 0),
  at('middle left', -3, 1.1, 0),
  at('rear left', -5.5, 1, 0),
  at('rear right', -5.5, -1, 0),
];
const attachments = [at('fl', -2, 0.4, 0.5), at('fr', -2, -0.4, 0.5), at('rl', -4, 0.4, 0.6), at('rr', -4, -0.4, 0.6)];
const accelerations = { forward: '0.8 g', rearward: '0.5 g', left: '0.5 g', right: '0.5 g' } as const;
const wanted = { article, anchors, attachments, count: 4, capacity: '20 kN', accelerations, friction: 'full' } as const;

/** The least factor of one arrangement, by the other public function. */
function leastFactor(pairs: readonly (readonly [anchor: string, attachment: string])[]): number {
  const point = (id: string) => [...anchors, ...attachments].find((each) => each.id === id)!.at;
  const tieDowns = pairs.map(
    ([anchor, attachment], index): TieDown => ({
      id: `${index}`,
      holds: 'tractor',
      path: 'vehicle-to-cargo',
      anchor: point(anchor),
      attachment: point(attachment),
      capacities: { ratedStrength: '20 kN' },
    }),
  );
  const { directions } = solveRestraint({
    articles: [article],
    tieDowns,
    accelerations,
    friction: 'full',
    capacity: 'ratedStrength',
    working: false,
  });
  return Math.min(...directions.map(({ limit }) => limit.factor ?? Number.POSITIVE_INFINITY));
}

const order = <T>(items: readonly T[], count: number): T[][] =>
  count === 0
    ? [[]]
    : items.flatMap((item, index) =>
        order(
          items.filter((_, other) => other !== index),
          count - 1,
        ).map((rest) => [item, ...rest]),
      );

describe('proposeTieDowns', () => {
  it('finds what trying every arrangement finds', () => {
    const { proposals, arrangements } = proposeTieDowns(wanted);
    const x = (id: string) => [...anchors, ...attachments].find((each) => each.id === id)!.at[0] as { value: number };
    const all: number[] = [];
    for (const left of anchors) {
      const four = anchors.filter((each) => each !== left);
      for (const there of order(attachments, 4)) {
        const pairs = four.map((anchor, index) => [anchor.id, there[index]!.id] as const);
        const ahead = pairs.filter(([anchor, to]) => x(anchor).value > x(to).value).length;
        const behind = pairs.filter(([anchor, to]) => x(anchor).value < x(to).value).length;
        if (ahead >= 2 && behind >= 2) all.push(leastFactor(pairs));
      }
    }
    all.sort((a, b) => b - a);
    expect(arrangements).toBe(all.length);
    expect(proposals.map(({ factor }) => factor)).toEqual(all.slice(0, 3).map((factor) => expect.closeTo(factor, 9)));
    for (const { tieDowns, factor } of proposals) {
      expect(leastFactor(tieDowns.map(({ anchor, attachment }) => [anchor, attachment] as const))).toBeCloseTo(
        factor!,
        9,
      );
      expect(tieDowns.filter(({ pulls }) => pulls === 'forward')).toHaveLength(2);
    }
  });

  it('holds a tie-down to the lower rating of its points', () => {
    const weak = anchors.map((each) => ({ ...each, rated: '5 kN' }) as const);
    const strong = proposeTieDowns({ ...wanted, friction: 'none' }).proposals[0]!;
    const held = proposeTieDowns({ ...wanted, friction: 'none', anchors: weak }).proposals[0]!;
    expect(held.factor).toBeLessThan(strong.factor!);
    expect(proposeTieDowns({ ...wanted, friction: 'none', capacity: '5 kN' }).proposals[0]!.factor).toBeCloseTo(
      held.factor!,
      9,
    );
  });

  it('proposes nothing where nothing pulls forward', () => {
    const behind = anchors.filter(({ id }) => id.startsWith('rear'));
    expect(proposeTieDowns({ ...wanted, anchors: behind, count: 2 })).toMatchObject({ proposals: [], arrangements: 0 });
  });

  it('refuses a search without end, and points in one place', () => {
    const many = Array.from({ length: 12 }, (_, index) => at(`${index}`, -index / 2, 1, 0));
    const there = Array.from({ length: 12 }, (_, index) => at(`to ${index}`, -index / 2, 0.4, 0.5));
    expect(issueOf(() => proposeTieDowns({ ...wanted, anchors: many, attachments: there })).code).toBe('TOO_LARGE');
    const same = [at('same', -2, 0.4, 0.5)];
    expect(issueOf(() => proposeTieDowns({ ...wanted, anchors: same })).code).toBe('IMPOSSIBLE_GEOMETRY');
    expect(issueOf(() => proposeTieDowns({ ...wanted, count: 1 }))).toMatchObject({
      code: 'NOT_A_WHOLE_NUMBER',
      path: 'count',
    });
    expect(issueOf(() => proposeTieDowns({ ...wanted, anchors: [] }))).toMatchObject({
      code: 'EMPTY_LIST',
      path: 'anchors',
    });
  });
});
