import { describe, expect, it } from 'vitest';
import { type Point, tieDownLength } from '../../src/index.js';
import { issueOf } from '../quantities/issue-of.js';

// 3-4-5 triangle in feet: reach 5 ft
const direct = {
  path: 'vehicle-to-cargo',
  anchor: ['-2 ft', '3 ft', '0 ft'],
  attachment: ['-6 ft', '0 ft', '0 ft'],
} as const;

// up 4 ft and in 3 ft on both sides, 6 ft across the top: 5 + 6 + 5 = 16 ft
const over = {
  path: 'over-other-side',
  anchor: ['-5 ft', '6 ft', '0 ft'],
  attachment: ['-5 ft', '3 ft', '4 ft'],
  otherAttachment: ['-5 ft', '-3 ft', '4 ft'],
  otherAnchor: ['-5 ft', '-6 ft', '0 ft'],
} as const;

describe('tieDownLength', () => {
  it('adds what hooks back, what is taken up and what hangs over to the reach, and rounds up to whole links', () => {
    // 60 + 12 + 8 + 6 = 86 in; 86 / 1.25 = 68.8: 69 links, 86.25 in, 0.25 in to spare
    const answer = tieDownLength({
      tieDown: direct,
      pitch: '1.25 in',
      hookBack: '1 ft',
      tensioner: { takeUp: '8 in' },
      tail: '6 in',
    });
    expect(answer.reach).toMatchObject({ value: 5, unit: 'ft' });
    expect(answer.required.value).toBeCloseTo(86 / 12, 12);
    expect(answer.links).toBe(69);
    expect(answer.length.value).toBeCloseTo(86.25 / 12, 12);
    expect(answer.spare.value).toBeCloseTo(0.25 / 12, 12);
    expect(answer.assumptions).toEqual([]);
  });

  it('is exact where links come out even', () => {
    // 60 in / 1.25 in = 48 links; a sixteenth more takes another one
    const even = tieDownLength({ tieDown: direct, pitch: '1.25 in' });
    expect(even.links).toBe(48);
    expect(even.spare.value).toBe(0);
    expect(tieDownLength({ tieDown: direct, pitch: '1.25 in', tail: '1/16 in' }).links).toBe(49);
    expect(even.assumptions.map(({ params }) => params.name)).toEqual(['hook-back', 'take-up', 'tail']);
  });

  it('takes the joined length of a tensioner off', () => {
    // 60 + 8 − 18 = 50 in: 40 links
    const tensioner = { takeUp: '8 in', joins: '18 in' } as const;
    expect(tieDownLength({ tieDown: direct, pitch: '1.25 in', tensioner }).links).toBe(40);
  });

  it('runs over the cargo by the straight line between its edges, or by a longer way', () => {
    expect(tieDownLength({ tieDown: over, pitch: '1.2 in' }).reach.value).toBeCloseTo(16, 12);
    expect(tieDownLength({ tieDown: over, pitch: '1.2 in', overCargo: '7 ft' }).reach.value).toBeCloseTo(17, 12);
    const shorter = issueOf(() => tieDownLength({ tieDown: over, pitch: '1.2 in', overCargo: '5 ft' }));
    expect(shorter).toMatchObject({ code: 'IMPOSSIBLE_GEOMETRY', path: 'overCargo' });
  });

  it('answers in meters for a metric plan, and asks where the plan mixes both', () => {
    const anchor: Point = ['-0.6 m', '0.9 m', '0 m'];
    const attachment: Point = ['-1.8 m', '0 m', '0 m'];
    const tieDown = { path: 'vehicle-to-cargo', anchor, attachment } as const;
    // 0.9-1.2-1.5 triangle; 1500 mm / 30 mm = 50 links
    expect(tieDownLength({ tieDown, pitch: '30 mm' })).toMatchObject({ reach: { unit: 'm' }, links: 50 });
    expect(issueOf(() => tieDownLength({ tieDown, pitch: '1.25 in' })).code).toBe('UNITS_REQUIRED');
    expect(tieDownLength({ tieDown, pitch: '1.25 in', units: 'us' }).reach.unit).toBe('ft');
  });

  it('says where a point is missing or wrong', () => {
    const { anchor, attachment, path } = direct;
    const length = (tieDown: object) => () => tieDownLength({ tieDown: tieDown as typeof direct, pitch: '1.25 in' });
    expect(issueOf(length({ path }))).toMatchObject({ code: 'MISSING_FIELD', path: 'tieDown.anchor' });
    expect(issueOf(length({ path, anchor }))).toMatchObject({ code: 'MISSING_FIELD', path: 'tieDown.attachment' });
    expect(issueOf(length({ path, anchor, attachment: anchor }))).toMatchObject({ code: 'IMPOSSIBLE_GEOMETRY' });
    expect(issueOf(length({ path, anchor: ['1 ft', '2 lb', '3 ft'], attachment }))).toMatchObject({
      code: 'WRONG_KIND',
      path: 'tieDown.anchor[1]',
    });
    expect(issueOf(length({ path, anchor: ['1 ft', '2 ft'], attachment })).code).toBe('MISSING_FIELD');
    expect(issueOf(length({ anchor, attachment }))).toMatchObject({ code: 'MISSING_FIELD', path: 'tieDown.path' });
    const { otherAnchor: _, otherAttachment: __, ...half } = over;
    expect(issueOf(length(half))).toMatchObject({ code: 'MISSING_FIELD', path: 'tieDown.otherAnchor' });
    expect(issueOf(length({ ...over, path: 'over-same-side' })).code).toBe('CONFLICTING_FIELDS');
    expect(issueOf(length({ ...over, path: 'vehicle-to-cargo' })).code).toBe('CONFLICTING_FIELDS');
    expect(issueOf(length(undefined as unknown as object))).toMatchObject({ code: 'MISSING_FIELD', path: 'tieDown' });
  });

  it('refuses a tensioner that joins more than there is', () => {
    const tensioner = { takeUp: '1 in', joins: '61 in' } as const;
    expect(issueOf(() => tieDownLength({ tieDown: direct, pitch: '1.25 in', tensioner }))).toMatchObject({
      code: 'IMPOSSIBLE_GEOMETRY',
      path: 'tensioner.joins',
    });
  });
});
