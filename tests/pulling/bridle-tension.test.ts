import { bridleTension } from 'chain-rigging';
import { describe, expect, it } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

const pull = '1000 lbf';

describe('bridleTension', () => {
  it('equal legs: P / (2 · cos(θ / 2)), θ between them', () => {
    // 60 deg: 1000 / (2 · 0.8660254) = 577.350; 90 deg: 707.107; parallel: half each
    const legs = (included: '0 deg' | '60 deg' | '90 deg' | '120 deg') =>
      bridleTension({ pull, angles: { included } }).legs;
    expect(legs('60 deg')[0].value).toBeCloseTo(577.35, 2);
    expect(legs('90 deg')[1].value).toBeCloseTo(707.107, 3);
    expect(legs('0 deg')[0].value).toBe(500);
    expect(legs('120 deg')[0].value).toBeCloseTo(1000, 9);
  });

  it('an angle from the pull line is half of that between the legs', () => {
    const between = bridleTension({ pull, angles: { included: '90 deg' } });
    const fromLine = bridleTension({ pull, angles: { fromPullLine: ['45 deg', '45 deg'] } });
    expect(fromLine.legs).toEqual(between.legs);
  });

  it('unequal legs: the one closer to the line of the pull carries more, and both balance', () => {
    // sin 45 / sin 75 = 0.732051, sin 30 / sin 75 = 0.517638
    const { legs, greatestShare } = bridleTension({ pull, angles: { fromPullLine: ['30 deg', '45 deg'] } });
    expect(legs[0].value).toBeCloseTo(732.051, 3);
    expect(legs[1].value).toBeCloseTo(517.638, 3);
    expect(greatestShare).toBeCloseTo(0.732051, 6);
    // along the pull they add up, across it they cancel
    const [a, b] = [Math.PI / 6, Math.PI / 4];
    expect(legs[0].value * Math.cos(a) + legs[1].value * Math.cos(b)).toBeCloseTo(1000, 9);
    expect(legs[0].value * Math.sin(a) - legs[1].value * Math.sin(b)).toBeCloseTo(0, 9);
    // one straight along the pull carries it all
    expect(
      bridleTension({ pull, angles: { fromPullLine: ['0 deg', '30 deg'] } }).legs.map(({ value }) => value),
    ).toEqual([1000, 0]);
  });

  it('refuses more than 120 deg between the legs, not 120', () => {
    const refused = (angles: object) => issueOf(() => bridleTension({ pull, angles: angles as never }));
    expect(refused({ included: '120.01 deg' })).toMatchObject({ code: 'TOO_LARGE', path: 'angles.included' });
    expect(refused({ fromPullLine: ['60 deg', '60.01 deg'] })).toMatchObject({ code: 'TOO_LARGE' });
    expect(bridleTension({ pull, angles: { fromPullLine: ['60 deg', '60 deg'] } }).greatestShare).toBeCloseTo(1, 12);
  });

  it('warns above 60 deg', () => {
    const codes = (included: '60 deg' | '60.01 deg') =>
      bridleTension({ pull, angles: { included } }).cautions.map(({ code }) => code);
    expect(codes('60 deg')).not.toContain('WIDE_BRIDLE');
    expect(codes('60.01 deg')).toContain('WIDE_BRIDLE');
  });

  it('tells the length of a leg that spans a spread', () => {
    // 4 ft at 60 deg: 2 / sin 30 = 4 ft
    const { legLength } = bridleTension({ pull, angles: { included: '60 deg' }, spread: '4 ft' });
    expect(legLength!.value).toBeCloseTo(4, 12);
  });

  it.each<[code: string, path: string, change: object]>([
    ['NOT_POSITIVE', 'pull', { pull: '0 lbf' }],
    ['MISSING_FIELD', 'angles', { angles: undefined }],
    ['MISSING_FIELD', 'angles.included', { angles: {} }],
    ['NEGATIVE', 'angles.included', { angles: { included: '-10 deg' } }],
    ['CONFLICTING_FIELDS', 'angles', { angles: { included: '10 deg', fromPullLine: ['5 deg', '5 deg'] } }],
    ['MISSING_FIELD', 'angles.fromPullLine', { angles: { fromPullLine: ['5 deg'] } }],
    ['NEGATIVE', 'angles.fromPullLine[1]', { angles: { fromPullLine: ['5 deg', '-5 deg'] } }],
    ['IMPOSSIBLE_GEOMETRY', 'angles.fromPullLine', { angles: { fromPullLine: ['0 deg', '0 deg'] } }],
    ['IMPOSSIBLE_GEOMETRY', 'spread', { angles: { included: '0 deg' }, spread: '4 ft' }],
    ['IMPOSSIBLE_GEOMETRY', 'spread', { angles: { fromPullLine: ['10 deg', '20 deg'] }, spread: '4 ft' }],
    ['UNITS_REQUIRED', 'units', { spread: '1 m' }],
  ])('%s at %s', (code, path, change) => {
    const asked = { pull, angles: { included: '60 deg' }, ...change } as never;
    expect(issueOf(() => bridleTension(asked))).toMatchObject({ code, path });
  });
});
