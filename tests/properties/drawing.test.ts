import {
  type Article,
  checkSecurement,
  drawSecurement,
  type Plan,
  us49cfr393_2024 as rules,
  type TieDown,
} from 'chain-rigging';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PLAN, restraint } from '../drawing/plans.js';
import {
  everyElement,
  named,
  pointsOf,
  readSvg,
  type SvgElement,
  textsOf,
  withAttribute,
} from '../drawing/read-svg.js';
import { anyGarbage, givesResultOrIssue, jsonGarbage, spoiled } from './garbage.js';

// Plans in millimeters: from a point to a road train, flat and tall, with and without each piece of geometry.
const millimeters = fc.oneof(
  fc.integer({ min: -25_000, max: 25_000 }),
  fc.constantFrom(0, 1, -1, 1_000_000, -1_000_000),
);
const point = fc
  .tuple(millimeters, millimeters, millimeters)
  .map((all) => all.map((value) => ({ value, unit: 'mm' })) as never);
const positive = fc.integer({ min: 1, max: 30_000 }).map((value) => ({ value, unit: 'mm' }) as const);
const optional = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const present = (fields: object) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));

const article = fc.record({
  outline: optional(fc.tuple(point, point)),
  centerOfGravity: optional(point),
  contacts: optional(
    fc.array(
      point.map((at) => ({ at })),
      { minLength: 1, maxLength: 4 },
    ),
  ),
  length: positive,
});
const tieDown = fc.record({ ends: optional(fc.tuple(point, point)), id: fc.string({ unit: 'binary', maxLength: 40 }) });
const plan: fc.Arbitrary<Plan> = fc
  .record({
    deck: optional(fc.record({ length: positive, width: positive })),
    articles: fc.array(article, { minLength: 1, maxLength: 3 }),
    tieDowns: fc.array(tieDown, { minLength: 1, maxLength: 20 }),
  })
  .map(({ deck, articles, tieDowns }) => ({
    ...(deck !== undefined && { vehicle: { units: [{ id: 'trailer', kind: 'towed' }], deck } }),
    articles: articles.map(
      (each, at) => ({ id: `article ${at}`, kind: 'general', mass: '900 kg', ...present(each) }) as unknown as Article,
    ),
    tieDowns: tieDowns.map(
      ({ ends, id }, at): TieDown => ({
        id: `${at}${id}`,
        holds: 'article 0',
        path: 'vehicle-to-cargo',
        capacities: { workingLoadLimit: '2000 kg' },
        ...(ends !== undefined && { anchor: ends[0], attachment: ends[1] }),
      }),
    ),
  }));

/** A drawing without a number that is none; texts are the caller's own. */
function readDrawing(svg: string): SvgElement {
  const read = readSvg(svg);
  const drawn = everyElement(read).flatMap(({ attributes }) =>
    Object.entries(attributes).filter(([name]) => !/^(data-|id$|aria-)/.test(name)),
  );
  for (const [, value] of drawn) expect(value).not.toMatch(/NaN|Infinity|undefined|null|\de[-+]?\d/);
  return read;
}

/** A drawing, or undefined where the plan has nothing to draw or a tie-down of no length. */
function drawnOrRefused(each: Plan, result?: Parameters<typeof drawSecurement>[1]): SvgElement | undefined {
  let read: SvgElement | undefined;
  givesResultOrIssue(() => {
    read = readDrawing(drawSecurement(each, result));
    return read;
  });
  return read;
}

const numbersIn = (element: SvgElement): number[] =>
  ['x', 'y', 'x1', 'x2', 'y1', 'y2', 'cx', 'cy', 'width', 'height'].flatMap((name) => {
    const value = element.attributes[name];
    return value === undefined ? [] : [Number(value)];
  });

describe('a drawing of any plan', () => {
  it('is well-formed, names every tie-down, and keeps every place on the page', () => {
    let drawings = 0;
    fc.assert(
      fc.property(plan, fc.boolean(), (each, checked) => {
        const svg = drawnOrRefused(each, checked ? checkSecurement({ rules, ...each }) : undefined);
        if (svg === undefined) return;
        drawings += 1;
        const height = Number(svg.attributes.viewBox?.split(' ')[3]);
        const places = named(svg, 'polyline').flatMap(pointsOf);
        for (const [x, y] of places) expect(x >= 0 && x <= 360 && y >= 0 && y <= height).toBe(true);
        for (const number of everyElement(svg).flatMap(numbersIn))
          expect(number >= 0 && number <= Math.max(360, height)).toBe(true);
        const drawn = each.tieDowns.filter(({ anchor }) => anchor !== undefined);
        expect(withAttribute(svg, 'data-tie-down')).toHaveLength(2 * drawn.length);
        const words = textsOf(svg).join(' ');
        expect(words.match(/not drawn, it has no points/g) ?? []).toHaveLength(each.tieDowns.length - drawn.length);
      }),
      { numRuns: 300 },
    );
    expect(drawings).toBeGreaterThan(200);
  });

  it('is the same again, from JSON too', () => {
    fc.assert(
      fc.property(plan, (each) => {
        const again = JSON.parse(JSON.stringify(each)) as Plan;
        const draw = (one: Plan) => {
          try {
            return drawSecurement(one);
          } catch (error) {
            return JSON.stringify(error);
          }
        };
        expect(draw(again)).toBe(draw(each));
      }),
      { numRuns: 100 },
    );
  });
});

describe('garbage', () => {
  const draw = drawSecurement as unknown as (plan: unknown, result?: unknown, options?: unknown) => string;
  const check = JSON.parse(JSON.stringify(checkSecurement({ rules, ...PLAN })));
  const solved = JSON.parse(JSON.stringify(restraint()));
  const drawsOrRefuses = (call: () => string) => givesResultOrIssue(() => readDrawing(call()));

  it('in a plan gives a drawing or an issue', () => {
    fc.assert(
      fc.property(spoiled(PLAN, anyGarbage), (each) => drawsOrRefuses(() => draw(each))),
      { numRuns: 500 },
    );
  });

  it.each([
    ['solveRestraint', solved],
    ['checkSecurement', check],
  ])('in a result of %s gives a drawing or an issue', (_, result) => {
    const { inputs: _inputs, steps: _steps, sources: _sources, ...rest } = result as Record<string, unknown>;
    for (const garbage of [jsonGarbage, anyGarbage]) {
      fc.assert(
        fc.property(spoiled(rest, garbage), (each) => drawsOrRefuses(() => draw(PLAN, each))),
        { numRuns: 500 },
      );
    }
  });

  it('in the options gives a drawing or an issue', () => {
    fc.assert(
      fc.property(anyGarbage, anyGarbage, (units, id) => {
        drawsOrRefuses(() => draw(PLAN, undefined, { units, id }));
        drawsOrRefuses(() => draw(PLAN, undefined, units));
      }),
      { numRuns: 200 },
    );
  });
});
