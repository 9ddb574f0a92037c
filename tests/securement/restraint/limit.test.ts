import { describe, expect, it } from 'vitest';
import type { TieDown } from '../../../src/securement/plan.js';
import { type SolveRestraintInput, solveRestraint } from '../../../src/securement/restraint/solve-restraint.js';
import { issueOf } from '../../quantities/issue-of.js';
import { block, chain, m, W } from './block.js';

// Expected factors are worked out beside each case, from sums of forces or of moments.

/** Straight back and level, at the height of the center of gravity. */
const level = chain('level', m(-8, 0, 0.5), m(-6, 0, 0.5));

const solve = (more: Partial<SolveRestraintInput> = {}) =>
  solveRestraint({
    articles: [block],
    tieDowns: [level],
    accelerations: { forward: '1 g' },
    capacity: 'lashingCapacity',
    friction: 'full',
    ...more,
  });

const factorOf = (more: Partial<SolveRestraintInput> = {}) => solve(more).directions[0]!.limit.factor!;

describe('the limit answer', () => {
  it('is (μ W + T) / W for a block held by a level chain', () => {
    // friction 0.4 W and 10 kN: 0.4 + 10,000 / 9806.65 = 1.419715
    const { directions, governing, verdict } = solve();
    const [forward] = directions;
    expect(forward?.limit.factor).toBeCloseTo(0.4 + 10_000 / W, 9);
    expect(forward).toMatchObject({ direction: 'forward', verdict: 'pass', mode: 'holds', limit: { mode: 'slides' } });
    expect(forward?.limit.governing).toEqual(['level']);
    expect(forward?.limit.tensions[0]?.utilization).toBeCloseTo(1, 9);
    expect(forward?.limit.residual).toBeLessThan(1e-9);
    expect([governing, verdict]).toEqual(['forward', 'pass']);
    expect(solve().withOneGone).toBe('fail'); // friction alone holds 0.4
  });

  it('counts no friction, or a share of it, where asked', () => {
    expect(factorOf({ friction: 'none' })).toBeCloseTo(10_000 / W, 9);
    expect(factorOf({ friction: 0.75 })).toBeCloseTo(0.3 + 10_000 / W, 9);
  });

  it('fails below 1 and holds at 1', () => {
    // exactly 1 where the chain carries 0.6 W = 5883.99 N
    const held = (newtons: number) =>
      solve({ tieDowns: [{ ...level, capacities: { lashingCapacity: { value: newtons, unit: 'N' } } } as TieDown] });
    expect(held(5884).verdict).toBe('pass');
    expect(held(5883.9).verdict).toBe('fail');
    expect(held(5883.9).directions[0]?.mode).toBe('slides');
  });

  it('lets a chain do nothing in the direction it does not hold', () => {
    const { directions } = solve({ accelerations: { forward: '1 g', rearward: '1 g', left: '1 g' } });
    expect(directions.map(({ direction }) => direction)).toEqual(['forward', 'rearward', 'left']);
    expect(directions[1]?.limit.factor).toBeCloseTo(0.4, 9); // friction alone
  });

  it('tips a tall block: b / d', () => {
    // center 2 m up, edge 1 m ahead: 1 / 2 = 0.5, with friction enough not to slide
    const tall = { ...block, centerOfGravity: m(-5, 0, 2), friction: 1 };
    const [forward] = solve({ articles: [tall], tieDowns: [chain('slack', m(-2, 0, 0), m(-4, 0, 0.5))] }).directions;
    expect(forward?.limit.factor).toBeCloseTo(0.5, 9);
    expect(forward?.mode).toBe('tips');
  });

  it('lifts a load that nothing but its weight holds down', () => {
    const [up] = solve({ accelerations: { up: '0.5 g' }, friction: 'none' }).directions;
    expect(up?.limit.factor).toBeCloseTo(2, 9);
    expect(up?.limit.mode).toBe('lifts');
  });

  it('adds the down pull of a steep chain to the friction: T (cos α + μ sin α)', () => {
    // 3-4-5: back 0.6, down 0.8: 10 kN · (0.6 + 0.4 · 0.8) = 9.2 kN; high up behind, so that it does not tip
    const steep = chain('steep', m(-6.6, 0, 0), m(-6, 0, 0.8));
    expect(factorOf({ tieDowns: [steep] })).toBeCloseTo(0.4 + 9200 / W, 9);
  });

  it('lets what runs over press with its pretension on both sides, and not with its strength', () => {
    const over = {
      id: 'strap',
      holds: 'block',
      path: 'over-other-side',
      anchor: m(-5, 1.75, 0),
      attachment: m(-5, 1, 1),
      otherAttachment: m(-5, -1, 1),
      otherAnchor: m(-5, -1.75, 0),
      capacities: { lashingCapacity: '10 kN' },
    } as const;
    // 3-4-5: sin α = 0.8 on both sides: 0.4 · (W + 2 · 0.8 · 2000 N)
    const [forward] = solve({ tieDowns: [{ ...over, pretension: '2 kN' }] }).directions;
    expect(forward?.limit.factor).toBeCloseTo((0.4 * (W + 3200)) / W, 9);
    expect(forward?.withoutOne).toMatchObject([{ id: 'strap', verdict: 'fail' }]);
    expect(forward?.withoutOne[0]?.factor).toBeCloseTo(0.4, 9);
    const unknown = solve({ tieDowns: [over] });
    expect(unknown.missing.map(({ code }) => code)).toEqual(['NO_PRETENSION']);
    expect(unknown.directions[0]?.limit.factor).toBeCloseTo(0.4, 9);
  });

  it('takes both runs of a loop away together', () => {
    const loop = {
      id: 'loop',
      holds: 'block',
      path: 'over-same-side',
      anchor: m(-8, 0.5, 0.5),
      attachment: m(-6, 0.5, 0.5),
      otherAttachment: m(-6, 0.5, 0.4),
      otherAnchor: m(-8, 0.5, 0.4),
      capacities: { lashingCapacity: '10 kN' },
    } as const;
    const opposite = chain('right', m(-8, -0.5, 0.45), m(-6, -0.5, 0.45), { capacities: { lashingCapacity: '20 kN' } });
    const [forward] = solve({ tieDowns: [loop, opposite], friction: 'none' }).directions;
    // 2 · 10 kN and 20 kN, alike on both sides
    expect(forward?.limit.factor).toBeCloseTo(40_000 / W, 9);
    expect(forward?.withoutOne.map(({ id, factor }) => [id, factor! < 40_000 / W])).toEqual([
      ['loop', true],
      ['right', true],
    ]);
  });

  it('turns with the deck: on a slope of 20 percent nose down, W (cos θ) presses and W (sin θ) pulls', () => {
    const theta = Math.atan(0.2);
    const expected = 0.4 * Math.cos(theta) + 10_000 / W - Math.sin(theta);
    expect(factorOf({ deckSlope: { noseUp: '-20 percent-grade' } })).toBeCloseTo(expected, 9);
  });

  it('says that a load cannot stand where it cannot', () => {
    const aside = { ...block, centerOfGravity: m(-5, 1.5, 0.5) };
    const [forward] = solve({ articles: [aside] }).directions;
    expect(forward?.limit).toMatchObject({ outcome: 'impossible', factor: 0, verdict: 'fail', mode: null });
  });
});

describe('what is not known', () => {
  const unknown = chain('unknown', m(-8, 0.5, 0.5), m(-6, 0.5, 0.5), { capacities: { workingLoadLimit: '10 kN' } });

  it('is left out where the rest is enough, and leaves the verdict open where it is not', () => {
    const enough = solve({ tieDowns: [level, unknown] });
    expect(enough.directions[0]?.limit.verdict).toBe('pass');
    expect(enough.verdict).toBe('undetermined'); // how the load shares is not known
    expect(enough.missing.map(({ code }) => code)).toEqual(['CAPACITY_NOT_STATED']);
    expect(solve({ tieDowns: [level, unknown], accelerations: { forward: '1.5 g' } }).verdict).toBe('undetermined');
  });

  it('does not help where nothing could', () => {
    expect(solve({ tieDowns: [level, unknown], accelerations: { rearward: '0.5 g' } }).verdict).toBe('fail');
  });
});

describe('figures that may be off', () => {
  it('give the lowest factor of both ways', () => {
    const tolerances = { friction: 0.1, angle: '10 deg', centerOfGravity: '0.1 m' } as const;
    const [forward] = solve({ tolerances }).directions;
    const off = new Map(forward?.ifOff.map(({ what, factor }) => [what, factor]));
    expect(off.get('friction')).toBeCloseTo(0.3 + 10_000 / W, 9);
    // flatter is upward here: −10°: cos 10° − 0.4 sin 10° of 10 kN
    const tenDegrees = Math.PI / 18;
    const upward = (10_000 * (Math.cos(tenDegrees) - 0.4 * Math.sin(tenDegrees))) / W;
    // turned aside it also turns the load round, which is worth about as much
    expect(off.get('angle of level')).toBeLessThanOrEqual(0.4 + upward + 1e-9);
    expect(off.get('angle of level')).toBeGreaterThan(0.4 + upward - 0.01);
    // a center aside of the chain's line turns the load round: it gives way earlier, by less than its lever asks
    expect(off.get('center of gravity')).toBeLessThan(0.4 + 10_000 / W);
    expect(off.get('center of gravity')).toBeGreaterThan(0.4 + (10_000 / W) * (1 - 0.1));
  });
});

describe('too much of it', () => {
  it('is refused: more than 64 tie-downs or contacts, a mass of nothing', () => {
    const chains = (count: number) =>
      Array.from({ length: count }, (_, index) => ({ ...level, id: `${index}` }) as TieDown);
    expect(issueOf(() => solve({ tieDowns: chains(65) }))).toMatchObject({ code: 'TOO_LARGE', path: 'tieDowns' });
    expect(solve({ tieDowns: chains(64), friction: 'none' }).directions[0]?.limit.factor).toBeCloseTo(640_000 / W, 6);
    const contacts = Array.from({ length: 65 }, () => ({ at: m(-4, 0, 0) }));
    expect(issueOf(() => solve({ articles: [{ ...block, contacts }] }))).toMatchObject({
      code: 'TOO_LARGE',
      path: 'articles[0].contacts',
    });
    expect(issueOf(() => solve({ articles: [{ ...block, mass: { value: 1e-30, unit: 'kg' } }] }))).toMatchObject({
      code: 'NOT_FINITE',
      path: 'articles[0].mass',
    });
  });
});

describe('misuse', () => {
  it.each([
    ['no direction', { accelerations: {} }, 'MISSING_FIELD', 'accelerations'],
    ['an unknown direction', { accelerations: { down: '1 g' } }, 'UNKNOWN_FIELD', 'accelerations.down'],
    ['no acceleration', { accelerations: { forward: '0 g' } }, 'NOT_POSITIVE', 'accelerations.forward'],
    ['no capacity', { capacity: undefined }, 'MISSING_FIELD', 'capacity'],
    ['an unknown capacity', { capacity: 'standardTensionForce' }, 'UNKNOWN_VALUE', 'capacity'],
    ['no word on friction', { friction: undefined }, 'MISSING_FIELD', 'friction'],
    ['more friction than there is', { friction: 1.1 }, 'UNKNOWN_VALUE', 'friction'],
    ['an unknown article', { article: 'crate' }, 'UNKNOWN_REFERENCE', 'article'],
    ['a vertical deck', { deckSlope: { noseUp: '90 deg' } }, 'IMPOSSIBLE_GEOMETRY', 'deckSlope.noseUp'],
    ['a tolerance of nothing', { tolerances: { friction: 0 } }, 'NOT_POSITIVE', 'tolerances.friction'],
    [
      'no center of gravity',
      { articles: [{ ...block, centerOfGravity: undefined }] },
      'MISSING_FIELD',
      'articles[0].centerOfGravity',
    ],
    ['no contacts', { articles: [{ ...block, contacts: undefined }] }, 'MISSING_FIELD', 'articles[0].contacts'],
    ['no friction factor', { articles: [{ ...block, friction: undefined }] }, 'MISSING_FIELD', 'articles[0].friction'],
  ])('%s', (_, more, code, path) => {
    expect(issueOf(() => solve(more as unknown as Partial<SolveRestraintInput>))).toMatchObject({ code, path });
  });

  it('two articles and no word which', () => {
    const articles = [block, { ...block, id: 'other' }];
    expect(issueOf(() => solve({ articles }))).toMatchObject({ code: 'MISSING_FIELD', path: 'article' });
    expect(solve({ articles, article: 'block' }).article).toBe('block');
  });
});
