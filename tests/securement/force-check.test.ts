import { describe, expect, it } from 'vitest';
import { checkSecurement, type Point, type TieDown, us49cfr393_102_2024 } from '../../src/index.js';

// 49 CFR 393.102 by forces. Every run here is a 3-4-5 or 1-2-2 triangle, so that the shares are plain fractions.

const ft = (x: number, y: number, z: number): Point => [
  { value: x, unit: 'ft' },
  { value: y, unit: 'ft' },
  { value: z, unit: 'ft' },
];

/** From the cargo 2 ft along, 1 ft out and 2 ft down: shares 2/3, 1/3, 2/3. */
const corner = (id: string, along: 1 | -1, out: 1 | -1, more: object = {}): TieDown => ({
  id,
  holds: 'tractor',
  path: 'vehicle-to-cargo',
  attachment: ft(-8 + 3 * along, out, 2),
  anchor: ft(-8 + 5 * along, 2 * out, 0),
  capacities: { workingLoadLimit: '3000 lb', breakingStrength: '12000 lb' },
  ...more,
});
const four = [corner('fl', 1, 1), corner('fr', 1, -1), corner('rl', -1, 1), corner('rr', -1, -1)];

const check = (mass: number, article: object = {}, tieDowns: readonly TieDown[] = four) =>
  checkSecurement({
    rules: us49cfr393_102_2024,
    articles: [{ id: 'tractor', kind: 'machinery', mass: { value: mass, unit: 'lb' }, length: '10 ft', ...article }],
    tieDowns,
  });
const found = (result: ReturnType<typeof check>, id: string) =>
  result.checks.find((each) => each.id === `${id}/tractor`);

describe('the force check of 393.102', () => {
  it('holds two of four chains against braking: 2 · 3000 · 2/3 = 4000 lbf against 0.435 W', () => {
    // limit at 4000 / 0.435 = 9195.402 lb; rearward 4000 / 0.5 = 8000 lb; to the side 2 · 3000 / 3 = 2000 lbf / 0.25 = 8000 lb
    expect(found(check(9195), '393.102(a)(2)/forward')).toMatchObject({ verdict: 'pass' });
    expect(found(check(9196), '393.102(a)(2)/forward')).toMatchObject({ verdict: 'fail' });
    expect(found(check(7999), '393.102(a)(2)/rearward')).toMatchObject({ verdict: 'pass' });
    expect(found(check(8001), '393.102(a)(2)/rearward')).toMatchObject({ verdict: 'fail' });
    expect(found(check(8001), '393.102(a)(2)/left')).toMatchObject({ verdict: 'fail' });
    expect(found(check(7999), '393.102(a)(2)/right')).toMatchObject({ verdict: 'pass' });
  });

  it('and again against breaking strength: 2 · 12000 · 2/3 = 16,000 lbf against 0.8 W', () => {
    // 16,000 / 0.8 = 20,000 lb
    expect(found(check(19_999), '393.102(a)(1)/forward')).toMatchObject({ verdict: 'pass' });
    expect(found(check(20_001), '393.102(a)(1)/forward')).toMatchObject({ verdict: 'fail' });
  });

  it('wants a fifth of the weight downward: 4 · 3000 · 2/3 = 8000 lbf', () => {
    expect(found(check(39_999), '393.102(b)')).toMatchObject({ verdict: 'pass' });
    expect(found(check(40_001), '393.102(b)')).toMatchObject({ verdict: 'fail' });
  });

  it('counts friction where it is stated, and that of a stated pretension', () => {
    // μ 0.1 of W adds 0.1 to what is held: 4000 / (0.435 − 0.1) = 11,940.3 lb
    expect(found(check(11_940, { friction: 0.1 }), '393.102(a)(2)/forward')).toMatchObject({ verdict: 'pass' });
    expect(found(check(11_941, { friction: 0.1 }), '393.102(a)(2)/forward')).toMatchObject({ verdict: 'fail' });
    // four chains at 900 lbf press 4 · 900 · 2/3 = 2400 lbf: (4000 + 240) / 0.335 = 12,656.7 lb
    const tight = four.map((each) => ({ ...each, pretension: '900 lbf' }) as TieDown);
    expect(found(check(12_656, { friction: 0.1 }, tight), '393.102(a)(2)/forward')).toMatchObject({ verdict: 'pass' });
    expect(found(check(12_657, { friction: 0.1 }, tight), '393.102(a)(2)/forward')).toMatchObject({ verdict: 'fail' });
    expect(check(8000).assumptions.map(({ code }) => code)).toContain('NO_FRICTION');
  });

  it('takes off the deck what a chain that runs upward lifts', () => {
    // to a rail above the load: back 2/3, lift 2/3; with μ 0.1: 2 · 3000 · (2/3 − 0.1 · 2/3) = 3600 lbf, and 0.1 W:
    // 3600 / (0.435 − 0.1) = 10,746.3 lb, where as many level ones would hold 11,940 lb
    const upward = four.map((each) => {
      const [x, y] = each.anchor as Point;
      return { ...each, anchor: [x, y, { value: 4, unit: 'ft' }] } as TieDown;
    });
    expect(found(check(10_746, { friction: 0.1 }, upward), '393.102(a)(2)/forward')).toMatchObject({ verdict: 'pass' });
    expect(found(check(10_747, { friction: 0.1 }, upward), '393.102(a)(2)/forward')).toMatchObject({ verdict: 'fail' });
  });

  it('asks for what it does not know, where that could decide', () => {
    const plain = four.map((each) => ({ ...each, capacities: { workingLoadLimit: '3000 lb' } }) as TieDown);
    const result = check(4680, {}, plain);
    expect(found(result, '393.102(a)(2)/forward')).toMatchObject({ verdict: 'pass' });
    expect(found(result, '393.102(a)(1)/forward')).toMatchObject({ verdict: 'undetermined' });
    expect(result.verdict).toBe('undetermined');
    const nowhere = four.map(({ anchor: _, attachment: __, ...each }) => each as TieDown);
    expect(found(check(4680, {}, nowhere), '393.102(a)(2)/forward')).toMatchObject({
      verdict: 'undetermined',
      missing: [{ code: 'POINTS_NOT_STATED' }, {}, {}, {}],
    });
  });

  it('leaves the strength of what runs over out', () => {
    const over: TieDown = {
      id: 'strap',
      holds: 'tractor',
      path: 'over-other-side',
      anchor: ft(-8, 4, 0),
      attachment: ft(-8, 1, 4),
      otherAttachment: ft(-8, -1, 4),
      otherAnchor: ft(-8, -4, 0),
      capacities: { workingLoadLimit: '3000 lb', breakingStrength: '12000 lb' },
    };
    const before = found(check(8000), '393.102(a)(2)/left');
    expect(found(check(8000, {}, [...four, over]), '393.102(a)(2)/left')).toEqual(before);
    // downward it presses with both runs: 8000 + 2 · 3000 · 0.8 = 12,800 lbf
    const down = found(check(8000, {}, [...four, over]), '393.102(b)');
    expect(down).toMatchObject({ capacity: { value: expect.closeTo(12_800, 6) } });
  });
});
