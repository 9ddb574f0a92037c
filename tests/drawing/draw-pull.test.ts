import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawPull, inWords, type PullPlan, planPull, us49cfr393_108_2024 } from '../../src/index.js';
import { issueOf } from '../quantities/issue-of.js';
import {
  everyElement,
  named,
  numberOf,
  pointsOf,
  readSvg,
  type SvgElement,
  textsOf,
  withAttribute,
} from './read-svg.js';
import { boundsOf, textBoxes } from './svg-bounds.js';

// The whole view can be checked by hand. Ahead of the rear axle the ground is drawn for 1.6 wheelbases, 3.2 m; behind it
// lie 1 m to the hitch, 8.2 m of chain, the load of 1.6 wheelbases and 0.3 more: 3.2 + 1 + 8.2 + 3.2 + 0.6 = 16.2 m on
// 324 units, 20 to the meter. The roll bar ends 2.48 m up, 49.6 units, so the height asks for no smaller scale.
const PLAN: PullPlan = {
  ratings: us49cfr393_108_2024,
  tractor: {
    mass: '1500 kg',
    centerOfGravityAhead: '0.7 m',
    centerOfGravityHeight: '0.8 m',
    wheelbase: '2 m',
    drive: 'rear-wheels',
  },
  hitch: { kind: 'drawbar', height: '0.5 m', behindAxle: '1 m' },
  rearAxleHeight: '0.72 m',
  traction: { coefficient: 0.5, kind: 'net' },
  rolling: { coefficient: 0.05 },
  load: { kind: 'rolling', mass: '2000 kg', rolling: { coefficient: 0.15 } },
  rigging: [
    { id: 'drawbar', kind: 'anchor', at: 'vehicle', markedWll: '20 kN' },
    { id: 'chain', kind: 'chain', size: '1/4', grade: 70 },
    { id: 'hook', kind: 'grab-hook', size: '1/4', grade: 70 },
    { id: 'tow eye', kind: 'anchor', at: 'cargo', markedWll: '20 kN' },
  ],
  steeringReserve: 0.2,
  chain: { pitch: '22 mm', length: '9 m' },
  ends: [{ at: 'hook' }, { at: 'hook' }],
  standoff: '8.2 m',
  takeUp: 'slow',
  units: 'si',
};
const SCALE = 20;
const LEFT = 18;
/** Where a place so far ahead of the rear axle stands. */
const xOf = (ahead: number) => LEFT + (3.2 - ahead) * SCALE;

const throughJson = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const drawn = (plan: PullPlan, ...more: [unknown?, unknown?]) =>
  readSvg(drawPull(plan, ...(more as [ReturnType<typeof planPull>])));
const withResult = (plan: PullPlan) => drawn(plan, planPull(plan));
const wordsIn = (svg: SvgElement) => textsOf(svg).join(' ');
const viewOf = (svg: SvgElement, name: string): SvgElement => {
  const view = withAttribute(svg, 'data-view').find(({ attributes }) => attributes['data-view'] === name);
  if (view === undefined) throw new Error(`no view ${name}`);
  return view;
};
const one = (element: SvgElement, name: string): SvgElement => {
  const [found] = withAttribute(element, name);
  if (found === undefined) throw new Error(`no ${name}`);
  return found;
};
const refused = (plan: unknown, result?: unknown, options?: unknown) =>
  issueOf(() => (drawPull as unknown as (...args: unknown[]) => string)(plan, result, options));
/** Tip of an arrow: the first corner of its head. */
const tipOf = (view: SvgElement, force: string): [number, number] => {
  const found = withAttribute(view, 'data-force').find(({ attributes }) => attributes['data-force'] === force);
  return pointsOf(named(found as SvgElement, 'polygon')[0] as SvgElement)[0] as [number, number];
};
const tailOf = (view: SvgElement, force: string): [number, number] => {
  const found = withAttribute(view, 'data-force').find(({ attributes }) => attributes['data-force'] === force);
  const [shaft] = named(found as SvgElement, 'line') as [SvgElement];
  return [numberOf(shaft, 'x1'), numberOf(shaft, 'y1')];
};

describe('the whole pull to scale', () => {
  const view = viewOf(withResult(PLAN), 'whole');
  const ground = pointsOf(one(view, 'data-ground'));
  const floor = (ground[0] as [number, number])[1];

  it('has the chain from the hitch, 1 m behind and 0.5 m up, over a standoff of 8.2 m', () => {
    expect(pointsOf(one(view, 'data-chain'))).toEqual([
      [xOf(-1), floor - 10],
      [xOf(-9.2), floor - 10],
    ]);
    expect(textsOf(view)).toContain('standoff 8.2 m');
  });

  it('has the rear wheel with its radius, and solid, for its axle height is given; the front wheel is dashed', () => {
    const wheels = named(view, 'circle').map((each) => ['cx', 'cy', 'r'].map((name) => numberOf(each, name)));
    const known = named(view, 'circle').find(({ attributes }) => attributes.r === '14.4') as SvgElement;
    expect(wheels).toContainEqual([xOf(0), floor - 14.4, 14.4]);
    expect(known.attributes).not.toHaveProperty('stroke-dasharray');
    const front = named(view, 'circle').find((each) => numberOf(each, 'cx') === xOf(2)) as SvgElement;
    expect(front.attributes['stroke-dasharray']).toBe('4 2.5');
  });

  it('has level ground from its first to its last point, and says so', () => {
    expect(new Set(ground.map(([, y]) => y))).toEqual(new Set([floor]));
    expect([ground[0]?.[0], ground.at(-1)?.[0]]).toEqual([LEFT, 360 - LEFT]);
    expect(textsOf(view)).toContain('The pull from the left, level ground');
  });

  it('has the resistance at the load, away from the tractor: 0.15 · 2000 · 9.80665 N = 2.942 kN', () => {
    expect(tipOf(view, 'resistance')[0]).toBeGreaterThan(tailOf(view, 'resistance')[0]);
    expect(textsOf(view)).toContain('R 2.942 kN');
  });

  it('names what holds the load, and its mass', () => {
    expect(textsOf(view)).toContain('on its wheels, 2000 kg');
    expect(textsOf(view)).toContain('drawbar, 0.5 m up');
    const mired = withResult({ ...PLAN, load: { kind: 'mired', depth: 'cab', mass: '1800 kg' } });
    expect(wordsIn(mired)).toContain('mired to the cab, 1800 kg');
  });

  it.each([
    ['12 deg', 12, 'ground 12° nose up'],
    ['-8 deg', -8, 'ground 8° nose down'],
  ] as const)('turns with a slope of %s', (slope, degrees, words) => {
    const load = { ...PLAN.load, slope } as PullPlan['load'];
    const sloped = viewOf(withResult({ ...PLAN, slope, load, units: 'si' }), 'whole');
    const [first, second] = pointsOf(one(sloped, 'data-ground')) as [[number, number], [number, number]];
    // the front is at the left, so nose up goes down to the right; y counts downward
    const angle = (Math.atan2(second[1] - first[1], second[0] - first[0]) * 180) / Math.PI;
    expect(angle).toBeCloseTo(degrees, 0);
    const [hitch, load2] = pointsOf(one(sloped, 'data-chain')) as [[number, number], [number, number]];
    expect((Math.atan2(load2[1] - hitch[1], load2[0] - hitch[0]) * 180) / Math.PI).toBeCloseTo(degrees, 0);
    expect(wordsIn(sloped)).toContain(words);
  });

  it('has the chain at its angle, and says where the ground lies lower', () => {
    const plan = { ...PLAN, chainAngle: { belowTractorLine: '10 deg' } } as const;
    const svg = withResult(plan);
    const [hitch, end] = pointsOf(one(viewOf(svg, 'whole'), 'data-chain')) as [[number, number], [number, number]];
    expect((Math.atan2(end[1] - hitch[1], end[0] - hitch[0]) * 180) / Math.PI).toBeCloseTo(10, 0);
    expect(wordsIn(svg)).toContain('chain, 10° down');
    // 0.5 m less 8.2 m · sin 10° = 1.424 m is 0.924 m under the ground; the load is met a tenth of its height,
    // 0.85 · 2 m, above its own: 1.094 m lower
    expect(wordsIn(svg)).toContain('ground lies about 1.09 m lower');
  });

  it('has the load ahead of a tractor that pulls in reverse', () => {
    const hitch = { kind: 'front-hitch', height: '0.5 m', aheadOfFrontAxle: '0.4 m' } as const;
    const svg = withResult({ ...PLAN, hitch });
    const [from, to] = pointsOf(one(viewOf(svg, 'whole'), 'data-chain')) as [[number, number], [number, number]];
    expect(to[0]).toBeLessThan(from[0]);
    expect(tipOf(viewOf(svg, 'tractor'), 'pull')[0]).toBeLessThan(tailOf(viewOf(svg, 'tractor'), 'pull')[0]);
  });
});

describe('the tractor under the pull', () => {
  // R_f = (1500 · 0.7 − 300 · 0.5) · g / 2 = 450 g = 4.413 kN, R_r = 1050 g = 10.297 kN, W = 14.71 kN, P = 300 g
  const view = viewOf(withResult(PLAN), 'tractor');
  const [rear, front] = [tipOf(view, 'rear'), tipOf(view, 'front')];
  const scale = (rear[0] - front[0]) / 2;

  it('has every force with its figure', () => {
    expect(textsOf(view)).toEqual(
      expect.arrayContaining(['W 14.71 kN', 'R front 4.413 kN', 'R rear 10.3 kN', 'P 2.942 kN, drawbar, 0.5 m up']),
    );
  });

  it('has reactions up to the wheels, the weight down at the center of gravity, and the pull at the hitch', () => {
    expect(rear[1]).toBe(front[1]);
    expect(tailOf(view, 'rear')[1]).toBeGreaterThan(rear[1]);
    expect(tailOf(view, 'weight')[0]).toBeCloseTo(rear[0] - 0.7 * scale, 1);
    expect(rear[1] - tailOf(view, 'weight')[1]).toBeCloseTo(0.8 * scale, 1);
    expect(tipOf(view, 'weight')[1]).toBeGreaterThan(tailOf(view, 'weight')[1]);
    expect(tailOf(view, 'pull')[0]).toBeCloseTo(rear[0] + scale, 1);
    expect(rear[1] - tailOf(view, 'pull')[1]).toBeCloseTo(0.5 * scale, 1);
    const [foot, top] = pointsOf(one(view, 'data-hitch-height')) as [[number, number], [number, number]];
    expect(foot[1] - top[1]).toBeCloseTo(0.5 * scale, 1);
  });

  it('has no arrow at an axle that has lifted, and says so', () => {
    // the front lifts at 1500 · 0.7 / 2 = 525 kg of pull at 2 m; 0.5 of grip gives more than that on concrete weight
    const plan: PullPlan = {
      ...PLAN,
      hitch: { kind: 'drawbar', height: '2 m', behindAxle: '1 m' },
      load: { kind: 'rolling', mass: '8000 kg', rolling: { coefficient: 0.15 } },
      traction: { coefficient: 0.9, kind: 'net' },
    };
    const lifted = viewOf(withResult(plan), 'tractor');
    expect(textsOf(lifted).some((text) => text.startsWith('R front: lifts'))).toBe(true);
    expect(withAttribute(lifted, 'data-force').map(({ attributes }) => attributes['data-force'])).not.toContain(
      'front',
    );
  });
});

describe('the danger zone', () => {
  it('is a circle round either end, as large as the result says', () => {
    const result = planPull(PLAN);
    const view = viewOf(drawn(PLAN, result), 'danger');
    const [hitch, load] = withAttribute(view, 'data-danger') as [SvgElement, SvgElement];
    const apart = Math.abs(numberOf(hitch, 'cx') - numberOf(load, 'cx'));
    // the chain that is there is 9 m long, the ends 8.2 m apart
    expect(numberOf(hitch, 'r') / apart).toBeCloseTo(9 / 8.2, 2);
    expect(numberOf(load, 'r')).toBe(numberOf(hitch, 'r'));
    expect(textsOf(view)).toContain('Nobody within 9 m of either end');
  });
});

describe('a standalone file', () => {
  const text = drawPull(PLAN, planPull(PLAN));
  const svg = readSvg(text);

  it('is an image with a title and a description that it names', () => {
    expect(svg.attributes.role).toBe('img');
    const [title, desc] = svg.children as [SvgElement, SvgElement];
    expect([title.name, desc.name]).toEqual(['title', 'desc']);
    expect(svg.attributes['aria-labelledby']).toBe(`${title.attributes.id} ${desc.attributes.id}`);
    expect(title.text).toBe('Pull plan: Passes what was checked');
    expect(desc.text).toContain('level ground; hitch: drawbar, 0.5 m up');
    expect(desc.text).toContain('2.942 kN to move it');
  });

  it('holds no script, style, reference or size of its own, and letters of 12 px at least', () => {
    expect(everyElement(svg).map(({ name }) => name)).not.toEqual(
      expect.arrayContaining([expect.stringMatching(/^(script|style|a|image|use|foreignObject|animate)$/)]),
    );
    const attributes = everyElement(svg).flatMap((each) => Object.keys(each.attributes));
    expect(attributes.filter((name) => /^(on|style$|class$|href$|xlink|src$)/.test(name))).toEqual([]);
    expect(text).not.toContain('url(');
    expect(svg.attributes).not.toHaveProperty('width');
    expect(svg.attributes.viewBox).toMatch(/^0 0 360 \d+$/);
    expect(Math.min(...withAttribute(svg, 'font-size').map((each) => numberOf(each, 'font-size')))).toBe(12);
    expect((named(svg, 'rect')[0] as SvgElement).attributes.fill).toBe('#ffffff');
  });

  it('is the same for the same input, and for plan and result that went through JSON', () => {
    const result = planPull(PLAN);
    expect(drawPull(PLAN, result)).toBe(text);
    expect(drawPull(throughJson(PLAN), throughJson(result))).toBe(text);
  });

  it('has an id of its own or the one it is given', () => {
    const idOf = (picture: SvgElement) => (picture.children[0] as SvgElement).attributes.id;
    expect(idOf(svg)).toMatch(/^pull-[0-9a-f]{16}-title$/);
    expect(idOf(drawn(PLAN))).not.toBe(idOf(svg));
    expect(idOf(drawn(PLAN, null, { id: 'stuck' }))).toBe('stuck-title');
  });

  it('measures in the units it is told, else in those of the result', () => {
    const bars = (picture: SvgElement) =>
      withAttribute(picture, 'data-scale').map((bar) => bar.attributes['data-scale']);
    // the longest of at most 110 units: 20 to the meter; 264 on the 3.6 m from the ground ahead to the hitch; 240 on
    // 8.2 m and a radius of 9 m on either side, 9.16
    expect(bars(svg)).toEqual(['5 m', '1 m', '10 m']);
    expect(bars(drawn(PLAN, planPull(PLAN), { units: 'us' })).every((bar) => bar?.endsWith('ft'))).toBe(true);
    expect(
      bars(drawn({ ...PLAN, units: 'us' }, planPull({ ...PLAN, units: 'us' }))).every((bar) => bar?.endsWith('ft')),
    ).toBe(true);
  });
});

describe('in words', () => {
  it('says the verdict, what decides and what else fails', () => {
    const plan: PullPlan = {
      ...PLAN,
      load: { kind: 'mired', depth: 'fender', mass: '2000 kg' },
      chain: { pitch: '22 mm', length: '8 m' },
    };
    const words = wordsIn(withResult(plan));
    expect(words).toContain('Do not pull: a check fails');
    expect(words).toContain('Decides: The tractor can give the pull');
    expect(words).toContain('Fails too: The chain is long enough.');
  });

  it('says what is missing, in sentences where the result has them', () => {
    const { rigging: _, ...plan } = PLAN;
    const words = wordsIn(drawn(plan, inWords(planPull(plan))));
    expect(words).toContain('Not determined: a fact is missing');
    expect(words).toContain('Decides: Every part from hitch to load is strong enough');
  });

  it('has the figures of the pull', () => {
    const words = wordsIn(withResult(PLAN));
    expect(words).toContain('The load: 2.942 kN to move it.');
    // 300 kg; 1/4 in grade 70 has 3150 lb, which is 1428.8 kg
    expect(words).toContain('every part needs a working load limit of 300 kg');
    expect(words).toContain('The rigging: 1429 kg; weakest: chain, hook.');
    expect(words).toContain('Length of chain: 8.206 m, 373 links.');
  });

  it('says what a load that runs by itself does', () => {
    const words = wordsIn(
      withResult({ ...PLAN, slope: '0 deg', load: { ...PLAN.load, slope: '-20 deg' } as PullPlan['load'] }),
    );
    expect(words).toContain('it runs by itself, a chain cannot hold it back');
  });

  it('says what is only about right', () => {
    const words = wordsIn(withResult(PLAN));
    expect(words).toContain('Dashed is only about right: the body of the tractor and the load. Arrows');
    const { rearAxleHeight: _, standoff: _s, ...bare } = PLAN;
    const { centerOfGravityHeight: _c, ...tractor } = PLAN.tractor;
    const less = wordsIn(
      drawn({ ...bare, tractor, chain: { pitch: '22 mm' }, hitch: { kind: 'drawbar', height: '0.5 m' } }),
    );
    expect(less).toContain(
      'the height of the center of gravity; how far the hitch is behind; how far away the load is',
    );
    expect(wordsIn(drawn({ ...bare, standoff: undefined as never }))).toContain('drawn a whole chain away');
  });

  it('draws the plan alone without a result, with no figure of a force but the weight', () => {
    const svg = drawn(PLAN);
    expect(withAttribute(svg, 'data-force').map(({ attributes }) => attributes['data-force'])).toEqual(['weight']);
    expect(withAttribute(svg, 'data-danger')).toEqual([]);
    expect(wordsIn(svg)).toContain('drawbar, load on its wheels');
  });
});

describe('what the caller wrote', () => {
  it.each([
    '</text><script>alert(1)</script>',
    '"><a href="x">',
    ']]>',
    '&amp; & &#0;',
    'a\u0000b\u0007c\u001b[31m',
    'line\nline\u2028line',
    '\ud800 alone \uffff',
    '\u202eright to left',
    'x'.repeat(5000),
    '   ',
  ])('stays text: %j', (id) => {
    const plan = { ...PLAN, rigging: [{ id, kind: 'shackle' as const, markedWll: '1 kg' as const }] };
    const result = planPull(plan);
    const hostile = {
      ...result,
      checks: result.checks.map((check) => ({ ...check, title: id, clause: id, subject: id })),
    };
    for (const each of [result, hostile]) {
      const text = drawPull(plan, each);
      const svg = readSvg(text); // throws where a sign or a tag got through
      expect(named(svg, 'script')).toEqual([]);
      expect(named(svg, 'a')).toEqual([]);
      expect(text.length).toBeLessThan(30_000);
      for (const [left, , right] of boundsOf(svg)) expect([left >= 0, right <= 360]).toEqual([true, true]);
    }
  });
});

describe('nothing leaves the page or covers another text', () => {
  it('whatever the sizes, slopes and angles', () => {
    const meters = (min: number, max: number) =>
      fc.integer({ min: min * 100, max: max * 100 }).map((value) => ({ value: value / 100, unit: 'm' }) as const);
    const degrees = (most: number) =>
      fc.integer({ min: -most, max: most }).map((value) => ({ value, unit: 'deg' }) as const);
    const loads: fc.Arbitrary<object> = fc.constantFrom<object>(
      { kind: 'rolling', rolling: { coefficient: 0.1 } },
      { kind: 'mired', depth: 'cab' },
      { kind: 'overturned' },
      { kind: 'nosed-in-ditch' },
      { kind: 'log', lift: 'one-end', friction: { coefficient: 0.5 } },
      { kind: 'log', lift: 'none', friction: { coefficient: 0.5 } },
    );
    let computed = 0;
    fc.assert(
      fc.property(
        meters(0.5, 5),
        meters(0.1, 3),
        meters(0.1, 4),
        meters(0.1, 80),
        degrees(70),
        degrees(30),
        loads,
        fc.constantFrom('drawbar', 'front-hitch'),
        fc.constantFrom('rear-wheels', 'tracks'),
        (wheelbase, height, beyond, standoff, slope, below, load, kind, drive) => {
          const plan = {
            ...PLAN,
            tractor: { ...PLAN.tractor, wheelbase, drive },
            hitch: { kind, height, ...(kind === 'drawbar' ? { behindAxle: beyond } : { aheadOfFrontAxle: beyond }) },
            load: { ...load, mass: '2000 kg' },
            slope,
            chainAngle: { belowTractorLine: below },
            standoff,
          } as unknown as PullPlan;
          let result: ReturnType<typeof planPull> | undefined;
          try {
            result = planPull(plan);
            computed += 1;
          } catch {
            result = undefined; // a plan that cannot be computed can be drawn all the same
          }
          const svg = drawn(plan, result);
          const tall = Number(svg.attributes.viewBox?.split(' ')[3]);
          for (const [left, top, right, bottom] of boundsOf(svg)) {
            expect([left >= 0, top >= 0, right <= 360, bottom <= tall]).toEqual([true, true, true, true]);
          }
          for (const name of ['whole', 'tractor']) {
            const boxes = textBoxes(viewOf(svg, name));
            for (const [index, [l, t, r, b]] of boxes.entries()) {
              for (const [L, T, R, B] of boxes.slice(index + 1)) {
                expect(r <= L || R <= l || b <= T || B <= t).toBe(true);
              }
            }
          }
        },
      ),
      { numRuns: 300 },
    );
    expect(computed).toBeGreaterThan(40);
  });
});

describe('it refuses', () => {
  const result = planPull(PLAN);
  it.each([
    ['no plan', undefined, undefined, undefined, 'MISSING_FIELD', ''],
    ['a plan without a tractor', { ...PLAN, tractor: undefined }, undefined, undefined, 'MISSING_FIELD', 'tractor'],
    ['a load of no kind', { ...PLAN, load: { mass: '1 kg' } }, undefined, undefined, 'MISSING_FIELD', 'load.kind'],
    ['something that is no result', PLAN, {}, undefined, 'MISSING_FIELD', 'result.result'],
    ['a result of another function', PLAN, { result: 'hitchStability' }, undefined, 'UNKNOWN_VALUE', 'result.result'],
    ['a result of another pull', { ...PLAN, standoff: '8 m' }, result, undefined, 'UNKNOWN_REFERENCE', 'result.inputs'],
    [
      'a result that lost its stability',
      PLAN,
      { ...result, stability: undefined },
      undefined,
      'MISSING_FIELD',
      'result.stability',
    ],
    ['a result that lost its checks', PLAN, { ...result, checks: [] }, undefined, 'MISSING_FIELD', 'result.checks'],
    [
      'a result that lost its length',
      PLAN,
      { ...result, length: undefined },
      undefined,
      'MISSING_FIELD',
      'result.length',
    ],
    [
      'a result that lost its inputs',
      PLAN,
      { ...result, inputs: undefined },
      undefined,
      'MISSING_FIELD',
      'result.inputs',
    ],
    ['a system of units that is none', PLAN, undefined, { units: 'metric' }, 'UNKNOWN_VALUE', 'units'],
    ['an id that is no name', PLAN, undefined, { id: '1 "><script>' }, 'UNKNOWN_VALUE', 'id'],
    ['both systems of units', { ...PLAN, standoff: '27 ft' }, undefined, undefined, 'UNITS_REQUIRED', 'units'],
  ])('%s', (_, plan, found, options, code, path) => {
    expect(refused(plan, found, options)).toMatchObject({ code, path });
  });

  it.each([
    ['1000 m', true],
    ['1000.001 m', false],
  ] as const)('a standoff of %s: drawn %s', (standoff, isDrawn) => {
    if (isDrawn) expect(drawn({ ...PLAN, standoff }).name).toBe('svg');
    else expect(refused({ ...PLAN, standoff })).toMatchObject({ code: 'IMPOSSIBLE_GEOMETRY', path: 'standoff' });
  });
});
