import { describe, expect, it } from 'vitest';
import { lengthOfLinks, linksForLength } from '../../src/chain/links.js';
import { issueOf } from '../quantities/issue-of.js';

const codeOf = (run: () => unknown) => issueOf(run).code;

describe('lengthOfLinks', () => {
  it('adds a pitch a link, and a wire at either end', () => {
    // 10 · 30 = 300; 300 + 2 · 10 = 320
    const answer = lengthOfLinks({ links: 10, pitch: '30 mm', wireDiameter: '10 mm' });
    expect(answer.bearingLength).toMatchObject({ value: 300, unit: 'mm' });
    expect(answer.outsideLength).toMatchObject({ value: 320, unit: 'mm' });
  });

  it('gives 10.16 links of 10 mm short-link chain to the foot: ten fall short of a foot, eleven pass it', () => {
    // dossier section 6: links per foot = 304.8 / pitch in mm
    expect(lengthOfLinks({ links: 10, pitch: '30 mm', units: 'us' }).bearingLength.value).toBeLessThan(12);
    expect(lengthOfLinks({ links: 11, pitch: '30 mm', units: 'us' }).bearingLength.value).toBeGreaterThan(12);
  });

  it('stays with decimals: 10 links of 1.38 in are 13.8 in', () => {
    expect(lengthOfLinks({ links: 10, pitch: '1.38 in' }).bearingLength.value).toBe(13.8);
    expect(lengthOfLinks({ links: 10, pitch: '1.38 in' }).outsideLength).toBeUndefined();
  });

  it('asks for units when the inputs mix them', () => {
    expect(codeOf(() => lengthOfLinks({ links: 10, pitch: '1.38 in', wireDiameter: '10 mm' }))).toBe('UNITS_REQUIRED');
    // 13.8 + 2 · 10 / 25.4 = 14.5874
    expect(
      lengthOfLinks({ links: 10, pitch: '1.38 in', wireDiameter: '10 mm', units: 'us' }).outsideLength?.value,
    ).toBeCloseTo(14.5874, 4);
  });

  it.each([0, 0.5, -1, Number.NaN, Number.POSITIVE_INFINITY, '3'])('refuses %s links', (links) => {
    expect(codeOf(() => lengthOfLinks({ links: links as number, pitch: '30 mm' }))).toBe('NOT_A_WHOLE_NUMBER');
  });
});

describe('linksForLength', () => {
  it.each([
    // at a whole number of links, just below, just above
    ['360 in', 300, 0],
    ['359.9 in', 300, 0.1],
    ['360.1 in', 301, 1.1],
  ] as const)('covers %s with %d links of 1.2 in', (length, links, takeUp) => {
    const answer = linksForLength({ length, pitch: '1.2 in' });
    expect(answer.links).toBe(links);
    expect(answer.takeUp.value).toBeCloseTo(takeUp, 10);
  });

  it('decides exactly across units: 30 ft at 30.48 mm is 300 links with nothing left over', () => {
    // 30 ft = 9144 mm = 300 · 30.48 mm
    const answer = linksForLength({ length: '30 ft', pitch: '30.48 mm', units: 'us' });
    expect(answer.links).toBe(300);
    expect(answer.takeUp.value).toBe(0);
  });

  it('goes in pairs where the links must stay flat', () => {
    // 1 m / 30 mm = 33.3: 34 links; 99 mm / 30 mm = 3.3: 4 links, already even; 61 mm: 3 links, so 4 in pairs
    expect(linksForLength({ length: '1 m', pitch: '30 mm', keepFlat: true }).links).toBe(34);
    expect(linksForLength({ length: '99 mm', pitch: '30 mm', keepFlat: true }).links).toBe(4);
    expect(linksForLength({ length: '61 mm', pitch: '30 mm' }).links).toBe(3);
    const flat = linksForLength({ length: '61 mm', pitch: '30 mm', keepFlat: true });
    expect(flat.links).toBe(4);
    expect(flat.takeUp.value).toBe(59);
    // exactly two links, and a little more
    expect(linksForLength({ length: '60 mm', pitch: '30 mm', keepFlat: true }).links).toBe(2);
    expect(linksForLength({ length: '60.1 mm', pitch: '30 mm', keepFlat: true }).links).toBe(4);
  });

  it('leaves less than a step over, and never less than nothing', () => {
    for (let tenths = 1; tenths < 400; tenths += 7) {
      for (const keepFlat of [false, true]) {
        const { takeUp } = linksForLength({ length: { value: tenths / 10, unit: 'in' }, pitch: '1.31 in', keepFlat });
        expect(takeUp.value).toBeGreaterThanOrEqual(0);
        expect(takeUp.value).toBeLessThan(keepFlat ? 2.62 : 1.31);
      }
    }
  });

  it('says to measure the pitch', () => {
    expect(linksForLength({ length: '1 m', pitch: '30 mm' }).cautions.map(({ code }) => code)).toEqual([
      'MEASURED_PITCH',
    ]);
  });

  it('refuses what is no length', () => {
    expect(codeOf(() => linksForLength({ length: '0 m', pitch: '30 mm' }))).toBe('NOT_POSITIVE');
    expect(codeOf(() => linksForLength({ length: '1 m', pitch: '-30 mm' }))).toBe('NOT_POSITIVE');
    expect(codeOf(() => linksForLength({ length: '1 m', pitch: '1 in' }))).toBe('UNITS_REQUIRED');
    expect(codeOf(() => linksForLength({ length: '1 m', pitch: '30 mm', units: 'metric' as 'si' }))).toBe(
      'UNKNOWN_VALUE',
    );
    expect(
      codeOf(() => linksForLength({ length: { value: 1e308, unit: 'yd' }, pitch: { value: 1e-300, unit: 'in' } })),
    ).toBe('NOT_FINITE');
  });
});
