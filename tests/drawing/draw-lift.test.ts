import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawLift } from '../../src/drawing/draw-lift.js';
import type { DrawnLift } from '../../src/drawing/lift-scene.js';
import { RiggingError } from '../../src/errors.js';
import { checkLift } from '../../src/lifting/check-lift.js';
import { slingTensions } from '../../src/lifting/sling-tensions.js';
import type { Point } from '../../src/quantities/point.js';
import { usAlloySling_2011 } from '../../src/tables/us-alloy-sling-2011.js';
import { anyGarbage, spoiled } from '../properties/garbage.js';
import { issueOf } from '../quantities/issue-of.js';
import {
  everyElement,
  named,
  numberOf,
  pointsOf,
  readSvg,
  type SvgElement,
  textsOf,
  viewOf,
  withAttribute,
} from './read-svg.js';

const at = (x: number, y: number, z = 0): Point => [`${x} m`, `${y} m`, `${z} m`];
const LIFT: DrawnLift = {
  load: { mass: '1000 kg', centerOfGravity: at(0, 0, -1), outline: [at(-3, -1, -2), at(3, 1, 0)] },
  legs: [
    { id: 'front', at: at(3, 0), length: '5 m' },
    { id: 'rear', at: at(-3, 0), length: '5 m' },
  ],
};
const tilted: DrawnLift = { ...LIFT, load: { ...LIFT.load, centerOfGravity: at(0.5, 0, -1) } };
const drawn = (...args: Parameters<typeof drawLift>) => readSvg(drawLift(...args));
const leg = (view: SvgElement, name: string) =>
  withAttribute(view, 'data-leg').find(({ attributes }) => attributes['data-leg'] === name)!;
const ends = (line: SvgElement) =>
  [numberOf(line, 'x2') - numberOf(line, 'x1'), numberOf(line, 'y2') - numberOf(line, 'y1')] as const;
const wordsOf = (svg: SvgElement) => textsOf(svg).join(' ');
const sling = { size: '3/8', grade: 80, tagLegible: true } as const;
const checked = (lift: DrawnLift) =>
  checkLift({ ratings: usAlloySling_2011, ...lift, sling, machine: { kind: 'hoist', liftCapacity: '3000 kg' } });

describe('drawLift', () => {
  it('is to scale: two legs of 3-4-5, the front at the left', () => {
    const left = viewOf(drawn(LIFT), 'left');
    const [x, y] = ends(leg(left, 'front'));
    expect([x < 0, y > 0]).toEqual([true, true]);
    expect(x / y).toBeCloseTo(-0.75, 2);
    const [across] = ends(leg(left, 'rear'));
    expect(across).toBeCloseTo(-x, 1);
  });

  it('turns the load as it hangs: the hook is straight above the center of gravity', () => {
    // atan(0.5 / 5) = 5.71 degrees: the lower edge of the outline, 6 m, falls by a tenth of its run
    const svg = drawn(tilted, slingTensions(tilted));
    const left = viewOf(svg, 'left');
    const [hook] = withAttribute(left, 'data-hook') as [SvgElement];
    const center = named(left, 'circle').at(-1)!;
    expect(numberOf(center, 'cx')).toBeCloseTo(numberOf(hook, 'cx'), 1);
    const corners = pointsOf(withAttribute(left, 'data-load')[0]!);
    const lowest = corners.reduce((a, b) => (b[1] > a[1] ? b : a));
    const leftmost = corners.reduce((a, b) => (b[0] < a[0] ? b : a));
    expect(lowest[0]).toBeLessThan(leftmost[0] + 40); // the front goes down
    expect(wordsOf(svg)).toContain('turned by 5.71 deg; the pick of front goes down most');
  });

  it('says every tension, and as a share of one leg with a check', () => {
    // W = 9.80665 kN: two legs of 3-4-5 carry 5/8 each, 6.129 kN
    expect(wordsOf(drawn(LIFT))).toContain('front: 6.129 kN, 53.1 deg from horizontal');
    const found = checked(tilted);
    const svg = drawn(tilted, found);
    expect(wordsOf(svg)).toMatch(/pass, by capacity\/machine/);
    // 0.7048 · 1000 kg of 7100 lb (3220.5 kg): 22 percent
    expect(wordsOf(svg)).toContain('22 % of one leg');
    expect(drawLift(tilted, JSON.parse(JSON.stringify(found)))).toBe(drawLift(tilted, found));
  });

  it('takes the result of the same lift in other units', () => {
    const inTonnes = { ...LIFT, load: { ...LIFT.load, mass: { value: 1, unit: 't' } as const } };
    expect(drawLift(inTonnes, checked(LIFT))).toContain('pass');
  });

  it('says both tensions of four legs, and draws a slack one in dots', () => {
    const four: DrawnLift = {
      ...LIFT,
      legs: [at(3, 0), at(0, 3), at(-3, 0), at(0, -3)].map((pick, index) => ({
        id: `${index}`,
        at: pick,
        length: '5 m',
      })),
    };
    expect(wordsOf(drawn(four))).toContain('0: at most 6.129 kN, 3.065 kN by stretch');
    const slack: DrawnLift = { ...LIFT, legs: [...LIFT.legs, { id: 'long', at: at(0, 1), length: '4.5 m' }] };
    const svg = drawn(slack);
    expect(wordsOf(svg)).toContain('long: hangs slack');
    expect(leg(viewOf(svg, 'left'), 'long').attributes['stroke-dasharray']).toBe('1.5 3');
  });

  it('a load that rolls over is drawn as it stands, without legs', () => {
    const over: DrawnLift = { ...LIFT, load: { ...LIFT.load, centerOfGravity: at(0, 0, 0.5) } };
    const svg = drawn(over);
    expect(withAttribute(svg, 'data-leg')).toEqual([]);
    expect(wordsOf(svg)).toContain('the load rolls over');
  });

  it('stands alone: title, description, no script, no reference', () => {
    const svg = drawn(LIFT);
    expect(svg.attributes.role).toBe('img');
    const [title, desc] = [named(svg, 'title')[0]!, named(svg, 'desc')[0]!];
    expect(title.text).toBe('Lift: 1000 kg');
    expect(desc.text).toContain('front: 6.129 kN');
    expect(svg.attributes['aria-labelledby']).toBe(`${title.attributes.id} ${desc.attributes.id}`);
    for (const { name, attributes } of everyElement(svg)) {
      expect(['script', 'style', 'image', 'a', 'use', 'foreignObject']).not.toContain(name);
      for (const key of Object.keys(attributes)) expect(key).not.toMatch(/^on|href|^style$/);
    }
    expect(drawLift(LIFT)).toBe(drawLift(LIFT));
    expect(named(drawn(LIFT, null, { id: 'one' }), 'title')[0]!.attributes.id).toBe('one-title');
  });

  it('keeps the words of the caller where they belong', () => {
    const evil = '</text><script>alert(1)</script>"\'&\u0000';
    const svg = drawLift({ ...LIFT, legs: [{ ...LIFT.legs[0]!, id: evil }, LIFT.legs[1]!] });
    expect(svg).not.toContain('<script');
    expect(() => readSvg(svg)).not.toThrow();
  });

  it.each([
    ['EMPTY_LIST', 'legs', { ...LIFT, legs: [] }, undefined, undefined],
    ['MISSING_FIELD', 'load', {}, undefined, undefined],
    ['MISSING_FIELD', 'load.outline[0]', { ...LIFT, load: { ...LIFT.load, outline: [1, 2] } }, undefined, undefined],
    [
      'IMPOSSIBLE_GEOMETRY',
      'legs',
      { ...LIFT, legs: [{ id: 'a', at: ['1001 m', '0 m', '0 m'], length: '2000 m' }] },
      undefined,
      undefined,
    ],
    ['UNKNOWN_VALUE', 'id', LIFT, null, { id: '1' }],
    ['UNKNOWN_VALUE', 'result.result', LIFT, { result: 'chainMass' }, undefined],
    [
      'UNKNOWN_REFERENCE',
      'result.legs[1].legs',
      LIFT,
      { ...slingTensions(LIFT), legs: slingTensions(LIFT).legs.slice(0, 1) },
      undefined,
    ],
    ['CONFLICTING_FIELDS', 'result.inputs', LIFT, slingTensions({ ...LIFT, legs: [LIFT.legs[0]!] }), undefined],
    ['CONFLICTING_FIELDS', 'result.inputs', { ...LIFT, load: { ...LIFT.load, mass: '9 t' } }, checked(LIFT), undefined],
    ['CONFLICTING_FIELDS', 'result.inputs', tilted, checked(LIFT), undefined],
    ['MISSING_FIELD', 'result.inputs', LIFT, { ...checked(LIFT), inputs: undefined }, undefined],
    ['MISSING_FIELD', 'result.up', LIFT, { ...slingTensions(LIFT), up: null }, undefined],
    ['MISSING_FIELD', 'result.hook', LIFT, { ...slingTensions(LIFT), hook: null }, undefined],
  ])('%s at %s', (code, path, lift, result, options) => {
    expect(issueOf(() => (drawLift as unknown as (...args: unknown[]) => string)(lift, result, options))).toMatchObject(
      { code, path },
    );
  });

  it('draws or refuses whatever it is given', () => {
    fc.assert(
      fc.property(spoiled([tilted, checked(tilted), { id: 'one' }], anyGarbage), (args) => {
        if (!Array.isArray(args)) return;
        try {
          const svg = (drawLift as unknown as (...all: unknown[]) => string)(...args);
          expect(svg).not.toMatch(/="[^"]*(NaN|Infinity)[^"]*"/);
          readSvg(svg);
        } catch (error) {
          if (!(error instanceof RiggingError)) throw error;
        }
      }),
      { numRuns: 2000, seed: 11 },
    );
  });
});
