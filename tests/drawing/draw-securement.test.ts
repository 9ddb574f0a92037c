import { describe, expect, it } from 'vitest';
import { drawSecurement } from '../../src/drawing/draw-securement.js';
import { checkSecurement } from '../../src/securement/check-securement.js';
import type { Plan, TieDown } from '../../src/securement/plan.js';
import { us49cfr393_2024 } from '../../src/securement/rules/us-49cfr393-2024/index.js';
import { issueOf } from '../quantities/issue-of.js';
import {
  direct,
  direction,
  elastic,
  FRONT,
  machine,
  PLAN,
  restraint,
  SCALE,
  TIE_DOWNS,
  tension,
  VEHICLE,
} from './plans.js';
import {
  everyElement,
  lineOf,
  named,
  numberOf,
  pointsOf,
  readSvg,
  type SvgElement,
  textsOf,
  viewOf,
  withAttribute,
} from './read-svg.js';

const throughJson = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const drawn = (...args: Parameters<typeof drawSecurement>) => readSvg(drawSecurement(...args));
const wordsOf = (svg: SvgElement) => textsOf(svg).join(' ');
const deckIn = (view: SvgElement) => withAttribute(view, 'data-deck')[0] as SvgElement;
/** What `drawSecurement` refuses, as plain JavaScript calls it. */
const refused = (plan: unknown, result?: unknown, options?: unknown) =>
  issueOf(() => (drawSecurement as unknown as (...args: unknown[]) => string)(plan, result, options));

describe('a drawing to scale', () => {
  const svg = drawn(PLAN);
  const above = viewOf(svg, 'above');
  const left = viewOf(svg, 'left');
  const top = numberOf(deckIn(above), 'y'); // the right edge of the deck, y = -1 m
  const floor = numberOf(deckIn(left), 'y1'); // the top of the deck, z = 0

  it('has the deck from its front edge at the left, 8.1 m by 2 m', () => {
    const { attributes } = deckIn(above);
    expect([attributes.x, attributes.width, attributes.height].map(Number)).toEqual([FRONT, 8.1 * SCALE, 2 * SCALE]);
    expect([numberOf(deckIn(left), 'x1'), numberOf(deckIn(left), 'x2')]).toEqual([FRONT, FRONT + 8.1 * SCALE]);
  });

  it('has the outline where it is: x -2 to -5 m, y -0.7 to 0.7 m, z 0 to 1.5 m', () => {
    const [fromAbove] = withAttribute(above, 'data-article') as [SvgElement];
    const [fromLeft] = withAttribute(left, 'data-article') as [SvgElement];
    const rect = (each: SvgElement) => ['x', 'y', 'width', 'height'].map((name) => numberOf(each, name));
    // 0.3 m from the edge of the deck at y = -1 m
    expect(rect(fromAbove)).toEqual([FRONT + 2 * SCALE, top + 0.3 * SCALE, 3 * SCALE, 1.4 * SCALE]);
    expect(rect(fromLeft)).toEqual([FRONT + 2 * SCALE, floor - 1.5 * SCALE, 3 * SCALE, 1.5 * SCALE]);
  });

  it('has a direct tie-down from its anchor (-1, 1, 0) to its attachment (-2.5, 0.5, 0.5)', () => {
    expect(pointsOf(lineOf(above, 'front left'))).toEqual([
      [FRONT + 40, top + 80],
      [FRONT + 100, top + 60],
    ]);
    expect(pointsOf(lineOf(left, 'front left'))).toEqual([
      [FRONT + 40, floor],
      [FRONT + 100, floor - 20],
    ]);
  });

  it('has one over the cargo from side to side, up 1.2 m and down again', () => {
    expect(pointsOf(lineOf(above, 'strap'))).toEqual([
      [FRONT + 120, top],
      [FRONT + 120, top + 12],
      [FRONT + 120, top + 68],
      [FRONT + 120, top + 80],
    ]);
    expect(pointsOf(lineOf(left, 'strap')).map(([, y]) => floor - y)).toEqual([0, 48, 48, 0]);
  });

  it('has the center of gravity (-3.8, 0.1, 0.6) as a quartered circle', () => {
    const discs = (view: SvgElement) =>
      named(view, 'circle')
        .filter(({ attributes }) => attributes.r === '6')
        .map((disc) => [numberOf(disc, 'cx'), numberOf(disc, 'cy')]);
    expect(discs(above)).toEqual([[FRONT + 152, top + 44]]);
    expect(discs(left)).toEqual([[FRONT + 152, floor - 24]]);
  });

  it('has a square of 7 units about each contact', () => {
    const squares = named(above, 'rect').filter(({ attributes }) => attributes.width === '7');
    // (-2.5, 0.5) and (-4.5, -0.5)
    expect(squares.map((each) => [numberOf(each, 'x') + 3.5, numberOf(each, 'y') + 3.5])).toEqual([
      [FRONT + 100, top + 60],
      [FRONT + 180, top + 20],
    ]);
  });

  // The longest round bar of at most 110 units: 2 m are 80 and 5 m would be 200; 5 ft = 1.524 m are 60.96 and 10 ft
  // would be 121.92.
  it.each([
    [undefined, '2 m', 'h80'],
    ['si', '2 m', 'h80'],
    ['us', '5 ft', 'h60.96'],
  ] as const)('has a scale bar in %s units', (units, text, length) => {
    const picture = drawn(PLAN, undefined, units === undefined ? {} : { units });
    const [bar] = withAttribute(picture, 'data-scale') as [SvgElement];
    expect(bar.attributes['data-scale']).toBe(text);
    expect(bar.attributes.d).toContain(length);
    expect(textsOf(picture)).toContain(`${text}, both views`);
  });

  it('says the size of the deck in its units: 8.1 m are 318.9 in, 2 m are 78.7 in', () => {
    expect(textsOf(svg)).toContain('Deck: 8.1 m long, 2 m wide.');
    expect(textsOf(drawn(PLAN, null, { units: 'us' }))).toContain('Deck: 26 ft 6.9 in long, 6 ft 6.7 in wide.');
  });

  it('takes a smaller scale where a view would be taller than 240 units', () => {
    // 24 m up to the top: 10 units to the meter, and the 8.1 m stand in the middle of the 360
    const tall = { ...machine, outline: [machine.outline![0], ['-5 m', '0.7 m', '24 m']] } as const;
    const { attributes } = deckIn(viewOf(drawn({ ...PLAN, articles: [tall] }), 'above'));
    expect([attributes.x, attributes.width].map(Number)).toEqual([180 - 40.5, 81]);
  });

  it('is mirrored from above, and the same from the left, when left and right change places', () => {
    const mirrored = throughJson(PLAN);
    const turn = (point: unknown) => {
      const y = (point as { value: number }[])[1] as { value: number };
      y.value = -y.value;
    };
    for (const { outline, centerOfGravity, contacts } of mirrored.articles) {
      for (const point of [...outline!, centerOfGravity, ...contacts!.map(({ at }) => at)]) turn(point);
    }
    for (const { anchor, attachment, otherAnchor, otherAttachment } of mirrored.tieDowns) {
      for (const point of [anchor, attachment, otherAnchor, otherAttachment]) if (point !== undefined) turn(point);
    }
    const other = drawn(mirrored);
    const otherAbove = viewOf(other, 'above');
    const otherTop = numberOf(deckIn(otherAbove), 'y');
    const otherFloor = numberOf(deckIn(viewOf(other, 'left')), 'y1');
    for (const { id } of TIE_DOWNS) {
      const fromAbove = pointsOf(lineOf(above, id)).map(([x, y]) => [x, 80 - (y - top)]);
      expect(pointsOf(lineOf(otherAbove, id)).map(([x, y]) => [x, y - otherTop])).toEqual(fromAbove);
      const fromLeft = pointsOf(lineOf(left, id)).map(([x, y]) => [x, y - floor]);
      expect(pointsOf(lineOf(viewOf(other, 'left'), id)).map(([x, y]) => [x, y - otherFloor])).toEqual(fromLeft);
    }
  });
});

describe('a standalone file', () => {
  const text = drawSecurement(PLAN, restraint());
  const svg = readSvg(text);

  it('is an image with a title and a description that it names', () => {
    expect(svg.name).toBe('svg');
    expect(svg.attributes.xmlns).toBe('http://www.w3.org/2000/svg');
    expect(svg.attributes.role).toBe('img');
    const [title, desc] = svg.children as [SvgElement, SvgElement];
    expect([title.name, desc.name]).toEqual(['title', 'desc']);
    expect(svg.attributes['aria-labelledby']).toBe(`${title.attributes.id} ${desc.attributes.id}`);
    expect(title.text).toBe('Securement plan: machine: does not hold');
    for (const { id } of TIE_DOWNS) expect(desc.text).toContain(id);
    expect(desc.text).toContain('62 % of capacity');
  });

  it('holds no script, style, reference or size of its own', () => {
    expect(everyElement(svg).map(({ name }) => name)).not.toEqual(
      expect.arrayContaining([expect.stringMatching(/^(script|style|a|image|use|foreignObject|animate)$/)]),
    );
    const attributes = everyElement(svg).flatMap((each) => Object.keys(each.attributes));
    expect(attributes.filter((name) => /^(on|style$|class$|href$|xlink|src$)/.test(name))).toEqual([]);
    expect(attributes.filter((name) => name === 'id')).toHaveLength(2);
    expect(text).not.toContain('url(');
    expect(svg.attributes).not.toHaveProperty('width');
    expect(svg.attributes.viewBox).toMatch(/^0 0 360 \d+$/);
  });

  it('has letters of at least 12 px on a page 360 px wide', () => {
    const sizes = withAttribute(svg, 'font-size').map((each) => numberOf(each, 'font-size'));
    expect(sizes.length).toBeGreaterThan(1);
    expect(Math.min(...sizes)).toBe(12);
    // every text stands inside the group that gives the size
    expect(svg.children.map(({ name }) => name)).toEqual(['title', 'desc', 'g']);
  });

  it('brings its own paper, over the whole page', () => {
    const [paper] = named(svg, 'rect') as [SvgElement];
    const height = Number(svg.attributes.viewBox?.split(' ')[3]);
    expect([paper.attributes.fill, paper.attributes.width, paper.attributes.height]).toEqual([
      '#ffffff',
      '359',
      `${height - 1}`,
    ]);
  });

  it('is the same for the same input, and for a result that went through JSON', () => {
    expect(drawSecurement(PLAN, restraint())).toBe(text);
    expect(drawSecurement(throughJson(PLAN), throughJson(restraint()))).toBe(text);
    const check = checkSecurement({ rules: us49cfr393_2024, ...PLAN });
    expect(drawSecurement(PLAN, throughJson(check))).toBe(drawSecurement(PLAN, check));
  });

  it('has ids of its own for every other content, or those that it is given', () => {
    const idOf = (picture: SvgElement) => (picture.children[0] as SvgElement).attributes.id;
    const ids = [drawn(PLAN), svg, drawn(PLAN, null, { units: 'us' }), drawn(PLAN, null, { id: 'load-2' })].map(idOf);
    expect(new Set(ids).size).toBe(4);
    expect(ids[3]).toBe('load-2-title');
  });
});

describe('what the caller wrote', () => {
  const HOSTILE = {
    'the end of an element': '</text><script>alert(1)</script>',
    'the end of an attribute': '"><a href="x">',
    'the end of a section': ']]>',
    entities: '&amp; & &#0;',
    quotes: "it's <b>",
    'control characters': 'a\u0000b\u0007c\u001b[31m',
    'line breaks': 'line\nline\u2028line',
    'what XML cannot hold': '\ud800 alone \uffff',
    'a turn of direction': '\u202eright to left',
    'other scripts': 'é 鉄 🔗',
    'too much': 'x'.repeat(5000),
    nothing: '   ',
  };
  it.each(Object.entries(HOSTILE))('stays text: %s', (_, id) => {
    const plan = {
      ...PLAN,
      articles: [{ ...machine, id: `of ${id}` }],
      tieDowns: [{ ...(TIE_DOWNS[0] as TieDown), id, holds: `of ${id}` }],
    };
    for (const result of [undefined, checkSecurement({ rules: us49cfr393_2024, ...plan })]) {
      const text = drawSecurement(plan, result);
      const svg = readSvg(text); // throws where a sign or a tag got through
      expect(named(svg, 'script')).toEqual([]);
      expect(named(svg, 'a')).toEqual([]);
      expect(text).not.toContain('<script');
      expect(text.length).toBeLessThan(20_000);
      expect(
        everyElement(svg)
          .flatMap(({ attributes }) => Object.values(attributes))
          .every((value) => value.length < 200),
      ).toBe(true);
    }
  });

  it('is shown as it is where that is possible, and written out where not', () => {
    const shown = (id: string) => wordsOf(drawn({ ...PLAN, tieDowns: [{ ...(TIE_DOWNS[0] as TieDown), id }] }));
    expect(shown('<b> & ]]>')).toContain('<b> & ]]>: holds machine');
    expect(shown('é 鉄 🔗')).toContain('é 鉄 🔗: holds machine');
    expect(shown('a\u0007b')).toContain('a\\u{7}b: holds machine');
    expect(shown('\u202eabc')).toContain('\\u{202e}abc: holds machine');
  });

  it('goes by its number where a name is too long or blank, and the list says which', () => {
    const ids = ['a chain with a name that is much too long for a label', ' '];
    const tieDowns = TIE_DOWNS.slice(0, 2).map((each, index) => ({ ...each, id: ids[index] as string }));
    const svg = drawn({ ...PLAN, tieDowns });
    const labels = textsOf(viewOf(svg, 'above'));
    expect(labels.find((text) => text.startsWith('(1) a chain'))).toMatch(/…$/);
    expect(labels).toContain('(2) ');
    expect(wordsOf(svg)).toContain('(1) a chain with a name that is much too long for a label: holds machine');
  });
});

describe('with a result of solveRestraint', () => {
  const svg = drawn(PLAN, restraint());

  it('says the verdict, what decides it and the other factors in words', () => {
    const words = wordsOf(svg);
    expect(words).toContain('machine: does not hold');
    expect(words).toContain('Decides: forward, 0.83 times 0.8 g, then it slides.');
    expect(words).toContain('Other factors: up never gives way.');
    expect(words).toContain('at the forward limit: one way the forces can balance.');
  });

  it.each([
    ['pass', 'machine: holds all that is asked'],
    ['undetermined', 'machine: not determined, a fact is missing'],
    ['not-applicable', 'machine: nothing to hold'],
  ] as const)('has words for %s', (verdict, words) => {
    expect(wordsOf(drawn(PLAN, restraint({ verdict })))).toContain(words);
  });

  it('prints the share of capacity beside each tie-down in both views and in the list', () => {
    for (const view of ['above', 'left'] as const) {
      expect(textsOf(viewOf(svg, view))).toEqual(
        expect.arrayContaining(['front left 0 %', 'front right 30 %', 'rear left 100 %', 'strap 62 %']),
      );
    }
    expect(textsOf(svg)).toEqual(
      expect.arrayContaining([
        'front left: 0 % of capacity',
        'rear left: 100 % of capacity, governs',
        'strap: 62 % of capacity',
      ]),
    );
  });

  // Without color: no two steps share both width and dashes.
  it.each([
    [0, '1.75', '1.5 3'],
    [0.001, '1.5', undefined],
    [0.4999, '1.5', undefined],
    [0.5, '3', undefined],
    [0.9999, '3', undefined],
    [1, '4.5', '10 3'],
    [1.2, '4.5', '10 3'],
  ])('draws a share of %d with its width and dashes', (share, width, dash) => {
    const result = restraint({ directions: [direction({}, { tensions: [tension('strap', share)] })] });
    const { attributes } = lineOf(viewOf(drawn(PLAN, result), 'above'), 'strap');
    expect([attributes['stroke-width'], attributes['stroke-dasharray']]).toEqual([width, dash]);
  });

  it.each([
    [0, '0 %'],
    [0.0001, 'under 1 %'],
    [0.625, '63 %'],
    [0.996, '99 %'],
    [0.999_999, '99 %'],
    [1, '100 %'],
    [1.000_001, '101 %'],
    [9.99, '999 %'],
    [12, 'over 999 %'],
  ])('writes a share of %d on its side of 100', (share, text) => {
    const result = restraint({ directions: [direction({}, { tensions: [tension('strap', share)] })] });
    expect(textsOf(drawn(PLAN, result))).toContain(`strap: ${text} of capacity`);
  });

  it.each([
    [0.9996, 'just under 1 times 0.8 g'],
    [1, '1 times 0.8 g'],
    [1.0004, 'just over 1 times 0.8 g'],
    [0.834_999, '0.835 times 0.8 g'],
    [0, '0 times 0.8 g'],
    [5000, 'over 1000 times 0.8 g'],
    [null, 'never gives way'],
  ])('writes a factor of %d on its side of 1', (factor, text) => {
    expect(
      wordsOf(
        drawn(
          PLAN,
          restraint({ directions: [direction({}, { outcome: factor === null ? 'unbounded' : 'limited', factor })] }),
        ),
      ),
    ).toContain(`Decides: forward, ${text}`);
  });

  it.each([
    ['impossible', 'cannot stand even at rest'],
    ['not-solved', 'not solved'],
  ])('has words for a limit that is %s', (outcome, text) => {
    const result = restraint({ directions: [direction({}, { outcome, factor: null, mode: null })] });
    expect(wordsOf(drawn(PLAN, result))).toContain(`Decides: forward, ${text}.`);
  });

  it('takes the shares of the stiffness model where there is one', () => {
    const shared = { elastic: elastic([tension('strap', 0.41)]) };
    const result = restraint({ directions: [direction(shared, { tensions: [tension('strap', 1)] })] });
    const words = wordsOf(drawn(PLAN, result));
    expect(words).toContain('strap: 41 % of capacity');
    expect(words).toContain('at 0.8 g forward, shared by stiffness.');
  });

  // The lower of the two decides: the limit at 1.2, or the first tie-down at its capacity.
  it.each([
    [1.19, 'Decides: forward, 1.19 times 0.8 g, then rear left is at its capacity.'],
    [1.2, 'Decides: forward, 1.2 times 0.8 g, then it slides.'],
    [1.21, 'Decides: forward, 1.2 times 0.8 g, then it slides.'],
  ])('says what gives way first, the first tie-down at %d', (factor, text) => {
    const first = elastic([tension('rear left', 0.8)], { id: 'rear left', factor });
    const result = restraint({
      verdict: 'pass',
      directions: [direction({ verdict: 'pass', elastic: first }, { factor: 1.2 })],
    });
    expect(wordsOf(drawn(PLAN, result))).toContain(text);
  });

  it('says what is not known', () => {
    const undecided = direction({ verdict: 'undetermined' }, { tensions: [tension('strap', null)] });
    const missing = ['The strap has no rating.', 'b', 'c', 'd', 'e'].map((text) => ({ code: 'X', params: {}, text }));
    const picture = drawn(PLAN, restraint({ verdict: 'undetermined', directions: [undecided], missing }));
    expect(textsOf(picture)).toEqual(
      expect.arrayContaining([
        'Decides: forward, not determined.',
        'The strap has no rating.',
        'And 2 more.',
        'strap: capacity not known',
        'front left: not in this result',
      ]),
    );
    expect(lineOf(viewOf(picture, 'above'), 'strap').attributes['stroke-dasharray']).toBe('7 3 1.5 3');
  });

  // The front is at the left of both views, and the left side below from above.
  it.each([
    ['forward', [-1, 0], [-1, 0]],
    ['rearward', [1, 0], [1, 0]],
    ['left', [0, 1], undefined],
    ['right', [0, -1], undefined],
    ['up', undefined, [0, -1]],
  ] as const)('points %s with an arrow from the center of gravity, with the factor beside it', (way, above, left) => {
    const picture = drawn(PLAN, restraint({ governing: way, directions: [direction({ direction: way })] }));
    for (const [name, expected] of [
      ['above', above],
      ['left', left],
    ] as const) {
      const view = viewOf(picture, name);
      const shafts = named(view, 'line').filter(
        ({ attributes }) => attributes['stroke-width'] === '4' && !('data-deck' in attributes),
      );
      const fromCenter = shafts.filter((line) => numberOf(line, 'x1') === FRONT + 152);
      expect(
        fromCenter.map((line) => [
          Math.sign(numberOf(line, 'x2') - numberOf(line, 'x1')),
          Math.sign(numberOf(line, 'y2') - numberOf(line, 'y1')),
        ]),
      ).toEqual(expected === undefined ? [] : [expected]);
      expect(textsOf(view).includes(`${way}: factor 0.83`)).toBe(expected !== undefined);
    }
  });

  it('has no arrow where no direction governs', () => {
    const picture = drawn(PLAN, restraint({ verdict: 'pass', governing: null }));
    expect(wordsOf(picture)).toContain('Factors: forward 0.83 times 0.8 g, up never gives way.');
    expect(textsOf(viewOf(picture, 'above')).filter((text) => text.includes('factor'))).toEqual([]);
  });
});

describe('with a result of checkSecurement', () => {
  const parts = [
    { id: 'ring', kind: 'anchor', at: 'vehicle', markedWll: '5000 lb' },
    { id: 'chain', kind: 'chain', size: '5/16', grade: 70 },
    { id: 'small binder', kind: 'binder', markedWll: '2600 lb' },
    { id: 'bracket', kind: 'anchor', at: 'cargo', markedWll: '6000 lb' },
  ] as const;
  const { capacities: _, ...line } = TIE_DOWNS[0] as TieDown;
  const plan: Plan = { ...PLAN, tieDowns: [{ ...line, parts }, TIE_DOWNS[3] as TieDown] };

  // the least of 5,000, 4,700 (49 CFR 393.108), 2,600 and 6,000 lb
  it('names the rating and the weakest part of each tie-down, and the check that decides', () => {
    const words = wordsOf(drawn(plan, checkSecurement({ rules: us49cfr393_2024, ...plan })));
    expect(words).toContain('front left: rated 2600 lb, weakest part: small binder');
    expect(words).toContain('us-49cfr393-2024');
    expect(words).toContain('Decides: ');
  });

  it('says that a rating is not known, in words and with another line', () => {
    const unknown: Plan = {
      ...plan,
      tieDowns: [
        { ...line, parts: parts.map((part) => (part.kind === 'binder' ? { id: part.id, kind: part.kind } : part)) },
      ],
    };
    const picture = drawn(unknown, checkSecurement({ rules: us49cfr393_2024, ...unknown }));
    expect(wordsOf(picture)).toContain('front left: rating not known');
    expect(lineOf(viewOf(picture, 'left'), 'front left').attributes['stroke-dasharray']).toBe('7 3 1.5 3');
  });
});

describe('what has no place', () => {
  const { anchor: _a, attachment: _b, ...placeless } = TIE_DOWNS[0] as TieDown;
  const { outline: _o, contacts: _c, centerOfGravity: _g, ...nowhere } = machine;

  it('a tie-down without points is listed in words', () => {
    const svg = drawn({ ...PLAN, tieDowns: [placeless, ...TIE_DOWNS.slice(1)] });
    expect(wordsOf(svg)).toContain('front left: holds machine; not drawn, it has no points');
    expect(textsOf(viewOf(svg, 'above'))).not.toContain('front left');
  });

  // Contacts at x -2.5 and -4.5 m, so the middle is -3.5 m and 3 m of length reach from -2 to -5 m; y -0.5 to 0.5 m;
  // as high as the center of gravity at 0.6 m.
  it('an article without outline is drawn dashed from its contacts and length', () => {
    const { outline: _outline, ...bare } = machine;
    const svg = drawn({ ...PLAN, articles: [bare] });
    const rect = (name: 'above' | 'left') => withAttribute(viewOf(svg, name), 'data-article')[0]!;
    expect(['x', 'width', 'height'].map((name) => numberOf(rect('above'), name))).toEqual([FRONT + 80, 120, 40]);
    expect(numberOf(rect('left'), 'height')).toBe(24);
    expect(rect('above').attributes['stroke-dasharray']).toBe('5 3');
    expect(wordsOf(svg)).toContain('machine: no outline given; dashed is its length about its contacts');
  });

  it('an article without any place is listed in words', () => {
    const svg = drawn({ ...PLAN, articles: [nowhere] });
    expect(wordsOf(svg)).toContain('machine: not drawn, it has no outline, contacts or center of gravity.');
  });

  it('a plan without a deck says so', () => {
    expect(wordsOf(drawn({ articles: [machine], tieDowns: TIE_DOWNS }))).toContain('The deck is not given.');
  });

  it('with nothing to draw, an error says what to give', () => {
    const issue = refused({ vehicle: VEHICLE, articles: [nowhere], tieDowns: [placeless] });
    expect(issue).toMatchObject({ code: 'MISSING_FIELD', path: 'articles' });
    expect(issue.remedy).toContain('outline, contacts or centerOfGravity');
    expect(issue.remedy).toContain('anchor and attachment');
  });
});

describe('it refuses', () => {
  const other = restraint({ article: 'another machine' });

  it.each([
    ['no plan', undefined, undefined, undefined, 'MISSING_FIELD', ''],
    ['something that is no result', PLAN, {}, undefined, 'MISSING_FIELD', 'result.result'],
    ['a result of another function', PLAN, { result: 'chainRating' }, undefined, 'UNKNOWN_VALUE', 'result.result'],
    ['a result of another article', PLAN, other, undefined, 'UNKNOWN_REFERENCE', 'result.article'],
    [
      'a result with a tie-down that the plan has not',
      PLAN,
      restraint({ directions: [direction({}, { tensions: [tension('strap', 1), tension('gone', 1)] })] }),
      undefined,
      'UNKNOWN_REFERENCE',
      'result.directions[0].limit.tensions[1].id',
    ],
    [
      'a governing tie-down that the plan has not',
      PLAN,
      restraint({ directions: [direction({}, { governing: ['gone'] })] }),
      undefined,
      'UNKNOWN_REFERENCE',
      'result.directions[0].limit.governing[0]',
    ],
    [
      'a first tie-down at capacity that the plan has not',
      PLAN,
      restraint({ directions: [direction({ elastic: elastic([], { id: 'gone', factor: 1 }) })] }),
      undefined,
      'UNKNOWN_REFERENCE',
      'result.directions[0].elastic.firstAtCapacity.id',
    ],
    [
      'a result that lost its directions',
      PLAN,
      restraint({ directions: [] }),
      undefined,
      'MISSING_FIELD',
      'result.directions',
    ],
    [
      'a direction that is none',
      PLAN,
      restraint({ governing: 'down' }),
      undefined,
      'UNKNOWN_VALUE',
      'result.governing',
    ],
    ['a system of units that is none', PLAN, undefined, { units: 'metric' }, 'UNKNOWN_VALUE', 'units'],
    ['an id that is no name', PLAN, undefined, { id: '1 "><script>' }, 'UNKNOWN_VALUE', 'id'],
    ['an id that is too long', PLAN, undefined, { id: 'a'.repeat(65) }, 'UNKNOWN_VALUE', 'id'],
    [
      'points in both systems',
      { ...PLAN, vehicle: { ...VEHICLE, deck: { length: '26 ft', width: '2 m' } } },
      undefined,
      undefined,
      'UNITS_REQUIRED',
      'units',
    ],
    [
      'a deck without width',
      { ...PLAN, vehicle: { ...VEHICLE, deck: { length: '26 ft' } } },
      undefined,
      undefined,
      'MISSING_FIELD',
      'vehicle.deck.width',
    ],
    [
      'an outline of one corner',
      { ...PLAN, articles: [{ ...machine, outline: [['0 m', '0 m', '0 m']] }] },
      undefined,
      undefined,
      'MISSING_FIELD',
      'articles[0].outline',
    ],
  ])('%s', (_, plan, result, options, code, path) => {
    expect(refused(plan, result, options)).toMatchObject({ code, path });
  });

  it.each([
    ['1000 m', true],
    ['1000.001 m', false],
    ['-1000.001 m', false],
  ] as const)('a point at %s: drawn %s', (x, isDrawn) => {
    const far: Plan = { ...PLAN, tieDowns: [direct('far', [x, '0 m', '0 m'], ['0 m', '0 m', '1 m'])] };
    if (isDrawn) expect(drawn(far).name).toBe('svg');
    else expect(refused(far)).toMatchObject({ code: 'IMPOSSIBLE_GEOMETRY', path: 'tieDowns[0].anchor[0]' });
  });

  it('a result of checkSecurement with a tie-down or article that the plan has not', () => {
    const check = checkSecurement({ rules: us49cfr393_2024, ...PLAN });
    const fewer = { ...PLAN, tieDowns: TIE_DOWNS.slice(0, 3) };
    expect(refused(fewer, check)).toMatchObject({ code: 'UNKNOWN_REFERENCE', path: 'result.tieDowns[3].id' });
    const renamed = JSON.parse(JSON.stringify(PLAN).replaceAll('"machine"', '"loader"')) as Plan;
    expect(refused(renamed, check)).toMatchObject({ code: 'UNKNOWN_REFERENCE', path: 'result.articles[0].id' });
    expect(refused(PLAN, { ...check, checks: [] })).toMatchObject({ code: 'MISSING_FIELD', path: 'result.checks' });
  });
});
