import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ticksTo } from '../../src/drawing/plot.js';
import { drawSnatch, planPull, type ShockTensionInput, shockTension, us49cfr393_108_2024 } from '../../src/index.js';
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
import { boundsOf } from './svg-bounds.js';

const INPUT: ShockTensionInput = {
  towingMass: '3000 kg',
  load: 'anchored',
  takeUp: { speed: '1 m/s' },
  chain: { wireDiameter: '10 mm', length: '6 m' },
  workingLoadLimit: '2000 kg',
  proofFactor: 2,
  breakingForce: '80 kN',
};
const drawn = (input: ShockTensionInput, options?: Parameters<typeof drawSnatch>[1]) =>
  readSvg(drawSnatch(input, options));
const wordsIn = (svg: SvgElement) => textsOf(svg).join(' ');

/** Reads the axes of a plot off its numbers: the text of a tick and the place of its grid line. */
function axesOf(svg: SvgElement) {
  const [corner] = named(svg, 'polyline').filter(
    ({ attributes }) => pointsOf({ attributes } as SvgElement).length === 3,
  );
  const [[left, top], [, bottom], [right]] = pointsOf(corner as SvgElement) as [
    [number, number],
    [number, number],
    [number, number],
  ];
  const numbers = named(svg, 'text').filter(({ text }) => /^[\d.]+$/.test(text));
  const ups = numbers.filter((each) => each.attributes['text-anchor'] === 'end').map(({ text }) => Number(text));
  const acrosses = numbers
    .filter((each) => each.attributes['text-anchor'] === 'middle')
    .map(({ text }) => Number(text));
  const [most, fastest] = [Math.max(...ups), Math.max(...acrosses)];
  return {
    valueAt: ([x, y]: readonly [number, number]) =>
      [((x - left) / (right - left)) * fastest, ((bottom - y) / (bottom - top)) * most] as const,
    most,
    fastest,
  };
}
const curve = (svg: SvgElement, name: string) =>
  pointsOf(withAttribute(svg, 'data-curve').find(({ attributes }) => attributes['data-curve'] === name) as SvgElement);

describe('the curves', () => {
  // EA = 85.4 · 10² = 8540 kN and 323.6 · 10² = 32360 kN over 6 m: k = 1423.3 and 5393.3 kN/m.
  // Anchored, without thrust: F = v · √(k · m), 65.3 and 127.2 kN at 1 m/s.
  it.each([
    ['mooring chain', 65.35],
    ['solid bars', 127.2],
  ])('of %s goes up straight from zero by %d kN for each m/s', (name, slope) => {
    const svg = drawn(INPUT);
    const { valueAt } = axesOf(svg);
    for (const [speed, peak] of curve(svg, name).map(valueAt)) expect(Math.abs(peak - slope * speed)).toBeLessThan(0.2);
  });

  it('begin at twice the thrust where it is put on at once', () => {
    const svg = drawn({ ...INPUT, thrust: '8 kN' });
    const { valueAt } = axesOf(svg);
    for (const name of ['mooring chain', 'solid bars']) {
      expect(valueAt(curve(svg, name)[0] as [number, number])[1]).toBeCloseTo(16, 0);
    }
    // F = T + √(T² + k · m · v²), by hand at the last point of the axis
    const [speed, peak] = valueAt(curve(svg, 'solid bars').at(-1) as [number, number]);
    expect(peak).toBeCloseTo(8 + Math.sqrt(64 + 5393.3 * 3 * speed * speed), 0);
  });

  it('never cross: solid bars lie above', () => {
    const svg = drawn({ ...INPUT, load: { mass: '2000 kg', breaksLooseAt: '5 kN' }, thrust: '6 kN' });
    const [soft, stiff] = [curve(svg, 'mooring chain'), curve(svg, 'solid bars')];
    expect(soft).toHaveLength(stiff.length);
    for (const [index, [x, y]] of soft.entries())
      expect([stiff[index]?.[0], (stiff[index]?.[1] as number) <= y]).toEqual([x, true]);
  });

  it('have the take-up of the input marked on them, open and full', () => {
    const svg = drawn(INPUT);
    const { valueAt } = axesOf(svg);
    const marks = named(svg, 'circle').map((mark) => valueAt([numberOf(mark, 'cx'), numberOf(mark, 'cy')]));
    expect(marks.map(([speed]) => speed)).toEqual([expect.closeTo(1, 1), expect.closeTo(1, 1)]);
    expect(marks.map(([, peak]) => peak)).toEqual([expect.closeTo(65.3, 0), expect.closeTo(127.2, 0)]);
  });
});

describe('the lines', () => {
  // 2000 kg · 9.80665 = 19.61 kN, twice that 39.23 kN, 80 kN
  it('stand at the limits that are given, each with its name', () => {
    const svg = drawn(INPUT);
    const { valueAt } = axesOf(svg);
    const levels = withAttribute(svg, 'data-level').map((level) => [
      level.attributes['data-level'],
      valueAt([0, numberOf(level, 'y1')])[1],
    ]);
    expect(levels).toEqual([
      ['WLL', expect.closeTo(19.61, 0)],
      ['proof', expect.closeTo(39.23, 0)],
      ['breaks', expect.closeTo(80, 0)],
    ]);
    expect(textsOf(svg)).toEqual(expect.arrayContaining(['WLL', 'proof', 'breaks']));
  });

  it('are not there where nothing is given', () => {
    const { workingLoadLimit: _w, proofFactor: _p, breakingForce: _b, ...bare } = INPUT;
    const svg = drawn(bare);
    expect(withAttribute(svg, 'data-level')).toEqual([]);
    expect(wordsIn(svg)).toContain('Not determined: no working load limit');
  });

  it('have different dashes, as the curves have', () => {
    const svg = drawn(INPUT);
    const lines = [...withAttribute(svg, 'data-level'), ...withAttribute(svg, 'data-curve')];
    const looks = lines.map(({ attributes }) => `${attributes['stroke-width']} ${attributes['stroke-dasharray']}`);
    expect(new Set(looks).size).toBe(5);
  });
});

describe('the axes', () => {
  it.each([
    [INPUT, 'Peak tension, kN', 'Take-up speed, m/s'],
    [{ ...INPUT, units: 'us' } as const, 'Peak tension, lbf', 'Take-up speed, mph'],
  ])('%# are in the units asked for', (input, up, across) => {
    expect(textsOf(drawn(input))).toEqual(expect.arrayContaining([up, across]));
  });

  it('reach past the take-up, past every limit, and as far as is asked', () => {
    // mooring chain reaches 80 kN at 80 / 65.35 = 1.224 m/s
    expect(axesOf(drawn(INPUT)).fastest).toBeGreaterThan(1.224);
    expect(axesOf(drawn({ ...INPUT, takeUp: { speed: '3 m/s' } })).fastest).toBeGreaterThan(3);
    expect(axesOf(drawn(INPUT, { upTo: '10 m/s' })).fastest).toBe(10);
  });

  // steps of 1, 2 or 5 times a power of ten, five at most
  it.each([
    [1, [0, 0.2, 0.4, 0.6, 0.8, 1]],
    [1.01, [0, 0.5, 1, 1.5]],
    [5, [0, 1, 2, 3, 4, 5]],
    [27_000, [0, 10_000, 20_000, 30_000]],
    [0.3, [0, 0.1, 0.2, 0.3]],
  ])('up to %d has round numbers', (most, ticks) => {
    expect(ticksTo(most)).toEqual(ticks);
  });

  it('always reach what they must show, in one to five steps', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e9, noNaN: true }), (most) => {
        const ticks = ticksTo(most);
        expect(ticks.length).toBeGreaterThan(1);
        expect(ticks.length).toBeLessThanOrEqual(6);
        expect(ticks.at(-1) as number).toBeGreaterThanOrEqual(most * (1 - 1e-8));
      }),
    );
  });
});

describe('in words', () => {
  it('has the peaks of shockTension, and the speed at which solid bars reach each limit', () => {
    const words = wordsIn(drawn(INPUT));
    expect(words).toContain('Beyond a limit');
    expect(words).toContain('Solid bars, which no chain exceeds. At 1 m/s: 127.2 kN.');
    expect(words).toContain('As stiff as mooring chain. At 1 m/s: 65.35 kN.');
    // 19.6133 / 127.2 = 0.1542 m/s
    expect(words).toContain('Working load limit 2000 kg: solid bars reach it at 0.1542 m/s.');
    expect(words).toContain('A load that does not give. No thrust goes on.');
  });

  it('says where the thrust at once is beyond a limit', () => {
    // twice 15 kN is more than 19.6 kN
    expect(wordsIn(drawn({ ...INPUT, thrust: '15 kN' }))).toContain(
      'Working load limit 2000 kg: the thrust put on at once is beyond it.',
    );
  });

  it('says a pull that is raised slowly', () => {
    const words = wordsIn(drawn({ ...INPUT, takeUp: 'slow', thrust: '12 kN' }));
    expect(words).toContain('Within the working load limit');
    expect(words).toContain('Raised slowly: 12 kN.');
  });
});

describe('a standalone file', () => {
  it('draws the snatch of a planned pull as it is, and the same through JSON', () => {
    const planned = planPull({
      ratings: us49cfr393_108_2024,
      tractor: {
        mass: '3300 lb',
        frontAxleMass: '1155 lb',
        wheelbase: '64 in',
        centerOfGravityHeight: '28 in',
        drive: 'rear-wheels',
      },
      hitch: { kind: 'drawbar', height: '15 in' },
      traction: { coefficient: 0.55, kind: 'net' },
      rolling: { coefficient: 0.05 },
      load: { kind: 'mired', depth: 'wheel', mass: '3000 lb' },
      rigging: [{ id: 'chain', kind: 'chain', size: '1/4', grade: 70 }],
      chain: { pitch: '0.88 in', length: '20 ft' },
      ends: [{ at: 'hook' }],
      standoff: '18 ft',
      takeUp: { slack: '1 ft' },
    });
    const input = planned.snatch?.inputs as ShockTensionInput;
    const svg = drawSnatch(input);
    expect(drawSnatch(JSON.parse(JSON.stringify(input)) as ShockTensionInput)).toBe(svg);
    const peak = shockTension(input).peakTension.value;
    expect(planned.snatch?.peakTension.value).toBe(peak);
    expect(wordsIn(readSvg(svg))).toContain(`: ${Number(peak.toPrecision(4))} lbf.`);
  });

  it('holds no script, style, reference or size, and stays on its page', () => {
    const text = drawSnatch(INPUT, { id: 'jerk' });
    const svg = readSvg(text);
    expect(everyElement(svg).map(({ name }) => name)).not.toEqual(
      expect.arrayContaining([expect.stringMatching(/^(script|style|a|image|use|foreignObject|animate)$/)]),
    );
    expect(text).not.toContain('url(');
    expect(svg.attributes).not.toHaveProperty('width');
    expect((svg.children[0] as SvgElement).attributes.id).toBe('jerk-title');
    const tall = Number(svg.attributes.viewBox?.split(' ')[3]);
    for (const [left, top, right, bottom] of boundsOf(svg)) {
      expect([left >= 0, top >= 0, right <= 360, bottom <= tall]).toEqual([true, true, true, true]);
    }
  });

  it('stays on its page whatever the masses, chains and limits', () => {
    const positive = (max: number) => fc.integer({ min: 1, max });
    fc.assert(
      fc.property(
        positive(60_000),
        positive(30),
        positive(100),
        positive(20_000),
        positive(100),
        positive(80),
        (kg, mm, m, wll, kN, tenths) => {
          const svg = drawn({
            towingMass: { value: kg, unit: 'kg' },
            load: 'anchored',
            takeUp: { speed: { value: tenths / 10, unit: 'm/s' } },
            chain: { wireDiameter: { value: mm, unit: 'mm' }, length: { value: m, unit: 'm' } },
            workingLoadLimit: { value: wll, unit: 'kg' },
            proofFactor: 2,
            breakingForce: { value: kN, unit: 'kN' },
          });
          const tall = Number(svg.attributes.viewBox?.split(' ')[3]);
          for (const [left, top, right, bottom] of boundsOf(svg)) {
            expect([left >= 0, top >= 0, right <= 360, bottom <= tall]).toEqual([true, true, true, true]);
          }
        },
      ),
      { numRuns: 100 },
    );
  });
});

describe('it refuses', () => {
  it.each([
    ['what shockTension refuses', { ...INPUT, takeUp: undefined }, {}, 'MISSING_FIELD', 'takeUp'],
    ['an id that is no name', INPUT, { id: '1 "' }, 'UNKNOWN_VALUE', 'id'],
    ['no speed', INPUT, { upTo: '0 m/s' }, 'NOT_POSITIVE', 'upTo'],
    ['a speed of a shot', INPUT, { upTo: '100.001 m/s' }, 'TOO_LARGE', 'upTo'],
  ])('%s', (_, input, options, code, path) => {
    expect(issueOf(() => (drawSnatch as (...args: unknown[]) => string)(input, options))).toMatchObject({ code, path });
  });
});
