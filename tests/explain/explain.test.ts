import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chainRating } from '../../src/chain/chain-rating.js';
import { explain, type SheetFormat } from '../../src/explain/explain.js';
import { inWords } from '../../src/explain/in-words.js';
import { usWeldedChain_2003 } from '../../src/tables/us-welded-chain-2003.js';
import type { Check } from '../../src/working/check.js';
import type { ResultBase } from '../../src/working/result.js';
import { issueOf } from '../quantities/issue-of.js';
import { elementsOf, readHtml, readMarkdown, readText, textOf } from './read-sheet.js';
import { handMade, RESULTS, tractorPlan } from './results.js';

const FORMATS: readonly SheetFormat[] = ['text', 'markdown', 'html'];
const READERS = { text: readText, markdown: readMarkdown, html: readHtml };
const everyResult = Object.entries(RESULTS);

/** All of a sheet's words in one line, whatever the format. */
const wordsOf = (result: ResultBase, as: SheetFormat) => READERS[as](explain(result, { as })).texts.join('\n');

// Every part is at least as strong as the chain, so each tie-down carries the 4,700 lb that 49 CFR 393.108 gives
// 5/16 grade 70. A direct tie-down counts half: 4 · 0.5 · 4700 = 9400 lb. The law asks for half the weight:
// 0.5 · 3940 = 1970 lb. 1970 / 9400 = 0.20957..., 20.96 %.
describe('the sheet of four direct chains on a 3,940 lb tractor', () => {
  const result = tractorPlan();

  it('starts with the calculation and its verdict', () => {
    expect(explain(result).split('\n')[0]).toBe('Check securement: pass');
    expect(explain(result, { as: 'markdown' }).split('\n')[0]).toBe('# Check securement: pass');
    expect(explain(result, { as: 'html' }).split('\n').slice(0, 2)).toEqual([
      '<section class="calculation-sheet">',
      '<h2>Check securement: pass</h2>',
    ]);
  });

  it('states the inputs as they were given, one inside the other', () => {
    const lines = explain(result).split('\n');
    const at = lines.indexOf('Inputs');
    // two more columns for each level
    expect(lines.slice(at, at + 13)).toEqual([
      'Inputs',
      '------',
      '  Rules: us-49cfr393-2024',
      '  Articles:',
      '    tractor: kind machinery, mass 3940 lb, length 10 ft',
      '  Tie-downs:',
      '    front-left:',
      '      Holds: tractor',
      '      Path: vehicle-to-cargo',
      '      Parts:',
      '        chain: kind chain, size 5/16, grade 70',
      '        binder: kind binder, marked WLL 5400 lb',
      '        stake pocket: kind anchor, at vehicle, marked WLL 5000 lb',
    ]);
  });

  it('shows a step as formula, with its numbers, its value and its clause', () => {
    const text = explain(result);
    expect(text).toContain(
      [
        'tractor (49 CFR 393.106(d))',
        '     required aggregate = 0.5 · W',
        '     = 0.5 · 3940 lb',
        '     = 1970 lb',
      ].join('\n'),
    );
    expect(text).toContain(
      [
        'tie-down rear-right (49 CFR 393.108(a))',
        '     WLL = min(WLL of every part)',
        '     with chain = 4700 lb; binder = 5400 lb; stake pocket = 5000 lb; tow eye = 6000 lb',
        '     = 4700 lb',
      ].join('\n'),
    );
    expect(text).toMatch(/aggregate = sum\(credit · WLL\)\n(.*\n)+? {5}= 9400 lb\n/);
  });

  it('lists a check with demand, capacity and utilization, requirements apart from practice', () => {
    const markdown = explain(result, { as: 'markdown' });
    expect(markdown).toContain(
      '| pass | Aggregate working load limit: tractor | 49 CFR 393.106(d) | demand 1970 lb, capacity 9400 lb, utilization 20.96 % |',
    );
    // Two tie-downs up to 10 ft, four there: 50 %, the highest utilization of all.
    expect(markdown).toContain(
      '| pass<br>(governs) | Number of tie-downs: tractor | 49 CFR 393.110 | demand 2, capacity 4, utilization 50 % |',
    );
    const [before = '', after = ''] = markdown.split('### Practice');
    expect(before).toContain('### Requirements');
    expect(before).not.toContain('| common practice |');
    expect(after).toContain('| common practice |');
    expect(after).not.toContain('| 49 CFR');
  });

  it('says how each source is known, and who decides', () => {
    const markdown = explain(result, { as: 'markdown' });
    expect(markdown).toContain('- 49 CFR, 2024, 393.106(d) (read)');
    expect(markdown).toContain('(from memory, to be confirmed)');
    expect(markdown.split('\n').at(-1)).toBe(
      "This sheet is arithmetic on the figures given. The maker's marking and instructions govern; local codes and a qualified person decide.",
    );
  });
});

describe('what is not known', () => {
  it('lists what an undetermined check is missing', () => {
    const { tables } = readHtml(explain(RESULTS['a plan that is undetermined'] as ResultBase, { as: 'html' }));
    const row = tables.flat().find(([, check]) => check === 'Aggregate working load limit: tractor');
    expect(row?.[0]).toBe('undetermined (governs)');
    // The aggregate names the tie-downs; what must be known of each stands where they are rated.
    expect(row?.[3]).toMatch(/^missing: .*front-left, front-right, rear-left, rear-right/);
    const rated = tables.flat().find(([, , clause]) => clause === '49 CFR 393.108(a)');
    expect(rated?.[3]).toMatch(/^missing: Tie-down front-left: .*missing: Tie-down rear-right: /);
  });

  it('shows a value that is not known as such, not as null or zero', () => {
    const text = explain(RESULTS['an assembly with an unmarked binder'] as ResultBase);
    expect(text).toContain('  Working load limit: —\n');
    expect(text).toContain('     with chain = 6600 lb; binder = not known\n     = not known\n');
    expect(text).not.toMatch(/null|undefined|NaN/);
  });

  it.each([
    ['memory', 'from memory, to be confirmed'],
    ['interpretation', 'interpretation of the rule'],
    ['common practice', 'common practice, no rule'],
    ['derived', 'derived from other figures'],
    ['computed', 'computed'],
  ])('shows the provenance %s in every format', (provenance, words) => {
    const result = handMade({
      parts: [{ id: 'hook', provenance }],
      sources: [{ document: 'A standard', edition: '2003', provenance, note: 'table 2' }],
    });
    for (const as of FORMATS) {
      const texts = wordsOf(result, as);
      expect(texts).toContain(`A standard, 2003 (${words}): table 2`);
      expect(texts.split(words)).toHaveLength(3);
    }
  });

  it('shows the columns of a table that are known in another way', () => {
    // The limits were read; the factor by grade is recalled, and the breaking force is that factor times the limit.
    const rating = chainRating({ ratings: usWeldedChain_2003, size: '3/8', grade: 70 });
    const read = handMade({ sources: [{ document: 'A table', provenance: 'read' }] });
    const mixed = handMade({
      sources: [{ document: 'A table', provenance: 'memory', columnProvenance: { wire_mm: 'common practice' } }],
    });
    const hostile = handMade({
      sources: [{ document: 'A table', provenance: 'read', columnProvenance: { '<b>|*x*': 'derived' } }],
    });
    for (const as of FORMATS) {
      const words = wordsOf(rating, as);
      expect(words).toContain('(read; design factor from memory, to be confirmed; minimum breaking force');
      expect(words).toMatch(/; minimum breaking force[^;()]* derived from other figures\)/);
      expect(wordsOf(read, as)).toContain('A table (read)');
      expect(wordsOf(mixed, as)).toContain('A table (from memory, to be confirmed; wire mm common practice, no rule)');
      expect(wordsOf(hostile, as)).toContain('A table (read; <b>|*x* derived from other figures)');
    }
    expectPlainHtml(explain(hostile, { as: 'html' }));
    expectWholeMarkdown(explain(hostile, { as: 'markdown' }));
  });

  it.each([
    [0.209574, '20.96 %'],
    [1, '100 %'],
    [1.000001, 'over 100 %'],
    [0.999999, 'under 100 %'],
    [1.0006, '100.1 %'],
    [12, '1200 %'],
    [null, '—'],
  ])('says utilization %s as %s', (utilization, said) => {
    expect(explain(handMade({ utilization }))).toContain(`  Utilization: ${said}\n`);
  });
});

describe('numbers in the place of symbols', () => {
  const filled = (expression: string, values: readonly (readonly [string, unknown])[]) =>
    explain(handMade({ steps: [{ subject: 's', symbol: 'x', expression, values, result: { value: 7, unit: 'N' } }] }), {
      as: 'markdown',
    })
      .split('\n')
      .filter((line) => /^ {3}/.test(line))
      .map((line) => line.trim().replace('<br>', ''));

  it('puts every value where its symbol stands', () => {
    expect(
      filled('m · v² / (2 · d)', [
        ['m', { value: 1000, unit: 'kg' }],
        ['v', { value: 10, unit: 'm/s' }],
        ['d', { value: 5, unit: 'm' }],
      ]),
    ).toEqual(['x = m · v² / (2 · d)', '= 1000 kg · (10 m/s)² / (2 · 5 m)', '= 7 N']);
  });

  it('keeps a symbol with a slash whole', () => {
    expect(
      filled('L · m/L', [
        ['L', { value: 20, unit: 'ft' }],
        ['m/L', { value: 0.9, unit: 'lb/ft' }],
      ]),
    ).toEqual(['x = L · m/L', '= 20 ft · 0.9 lb/ft', '= 7 N']);
  });

  it('finds a symbol after any sign', () => {
    // a to f, each once more as its number
    const values = Array.from('abcdef', (name, index) => [name, index + 1] as const);
    expect(filled('2(a − b) / c + d - e · cos f', values)[1]).toBe('= 2(1 − 2) / 3 + 4 - 5 · cos 6');
    expect(filled('min(a, b) ≤ (√c × (d + e)) / f', values)[1]).toBe('= min(1, 2) ≤ (√3 × (4 + 5)) / 6');
  });

  it('names what has no symbol in the formula, and leaves words of the formula alone', () => {
    expect(
      filled('min(WLL of every part)', [
        ['part', 3],
        ['of', null],
        ['WLL', 'x'],
      ]),
    ).toEqual(['x = min(WLL of every part)', 'with part = 3; of = not known; WLL = x', '= 7 N']);
    expect(
      filled('a · W, against a limit', [
        ['a', 0.5],
        ['W', 14],
      ]),
    ).toEqual(['x = a · W, against a limit', '= 0.5 · 14, against a limit', '= 7 N']);
  });

  it('does not put a value into a value', () => {
    expect(
      filled('a · b', [
        ['a', 'b'],
        ['b', 'a'],
      ]),
    ).toEqual(['x = a · b', '= b · a', '= 7 N']);
  });

  it('keeps standard gravity to its last digit, and inputs to theirs', () => {
    expect(
      filled('F / g', [
        ['F', 1],
        ['g', { value: 9.80665, unit: 'm/s2' }],
      ]),
    ).toContain('= 1 / 9.80665 m/s2');
    const text = explain(
      handMade({ inputs: { mass: { value: 4535.9237, unit: 'kg' } }, mass: { value: 4535.9237, unit: 'kg' } }),
    );
    expect(text).toContain('Mass: 4535.9237 kg');
    expect(text).toContain('Mass: 4535.92 kg');
  });
});

describe.each(everyResult)('%s', (_, result) => {
  const checks = ('checks' in result ? result.checks : []) as readonly Check[];

  it.each(FORMATS)('has every step, check, source, assumption and caution as %s', (as) => {
    const { texts, tables } = READERS[as](explain(result, { as }));
    const words = texts.join('\n');
    for (const { subject, symbol, expression, clause } of result.steps) {
      expect(words).toContain(clause === undefined ? `${subject} ${symbol} = ` : `${subject} (${clause}) ${symbol} = `);
      expect(words).toContain(`${symbol} = ${expression}`);
    }
    for (const { document, clause } of result.sources) {
      expect(words).toContain(document);
      if (clause !== undefined) expect(words).toContain(clause);
    }
    for (const { text } of inWords([...result.assumptions, ...result.cautions])) expect(words).toContain(text);
    for (const check of inWords(checks)) {
      expect(words).toContain(check.title);
      expect(words).toContain(check.clause);
      if ('because' in check && check.because.code !== 'MET') expect(words).toContain(check.because.text);
      if ('missing' in check) for (const { text } of check.missing) expect(words).toContain(text);
    }
    if (as !== 'text' && checks.length > 0) {
      const rows = tables.filter(([head]) => head?.[1] === 'Check').flatMap((table) => table.slice(1));
      expect(rows.map((row) => row.slice(0, 3))).toEqual(
        [
          ...checks.filter(({ weight }) => weight === 'requirement'),
          ...checks.filter(({ weight }) => weight === 'practice'),
        ].map(({ id, verdict, title, subject, clause }) => [
          'governing' in result && result.governing === id ? `${verdict} (governs)` : verdict,
          `${title}: ${subject}`,
          clause,
        ]),
      );
      // That a condition is met the verdict says; everything else has something to add.
      const met = checks.filter((check) => 'because' in check && check.because.code === 'MET');
      const silent = rows.filter((row) => row[3] === '').map((row) => row[1]);
      expect(silent.sort()).toEqual(met.map(({ title, subject }) => `${title}: ${subject}`).sort());
    }
  });

  it.each(FORMATS)('gives the same %s after JSON and after structuredClone', (as) => {
    const sheet = explain(result, { as });
    expect(explain(JSON.parse(JSON.stringify(result)), { as })).toBe(sheet);
    expect(explain(structuredClone(result), { as })).toBe(sheet);
    expect(explain(result, { as })).toBe(sheet);
  });

  it('fits 100 columns as text, with no space at the end of a line', () => {
    for (const line of explain(result).split('\n')) expect(line).toMatch(/^(?:.{0,99}\S)?$/u);
  });

  it('is valid HTML of a few plain elements', () => {
    expectPlainHtml(explain(result, { as: 'html' }));
  });
});

const PLAIN = /^(section|h[2-6]|p|dl|dt|dd|ol|ul|li|br|table|thead|tbody|tr|th|td)$/;

function expectPlainHtml(html: string): void {
  for (const { tagName, attrs } of elementsOf(html)) {
    expect(tagName).toMatch(PLAIN);
    const expected = tagName === 'section' ? ['class'] : tagName === 'th' ? ['scope'] : [];
    expect(attrs.map(({ name }) => name)).toEqual(expected);
  }
}

function expectWholeMarkdown(markdown: string): void {
  expect(markdown.replace(/<br>/g, '')).not.toMatch(/[<>]/);
  expect(markdown.replace(/\\./g, '')).not.toMatch(/[`[\]~_]/);
  for (const block of markdown.split('\n\n').filter((text) => text.startsWith('|'))) {
    const pipes = block.split('\n').map((line) => line.replace(/\\./g, '').split('|').length);
    expect(new Set(pipes).size).toBe(1);
  }
}

describe('ids that would break out', () => {
  const HOSTILE = [
    '<script>alert(1)</script>',
    '"><img src=x onerror=alert(1)>',
    "'><svg/onload=alert(1)>",
    '</td></tr></table></section><h1>owned</h1>',
    '<!-- x',
    '&lt;b&gt; &amp; &#60;i&#62;',
    'a | b || c \\| d',
    '`code` ```fence```',
    '[click](javascript:alert(1))',
    '**bold** _it_ ~~no~~ $x$',
    '# heading',
    '- item',
    '1. item',
    '> quote',
    '---',
    '===',
    '\\',
    '__proto__',
    'constructor',
    'x'.repeat(300),
  ];

  it.each(HOSTILE)('%s stays an id', (id) => {
    const result = tractorPlan({ article: id, tieDowns: [`${id} left`, `${id} right`] });
    const tame = 'x'.repeat([...id].length);
    const tameResult = tractorPlan({ article: tame, tieDowns: [`${tame} left`, `${tame} right`] });

    const html = explain(result, { as: 'html' });
    expectPlainHtml(html);
    const shape = (page: string) => elementsOf(page).map(({ tagName }) => tagName);
    expect(shape(html)).toEqual(shape(explain(tameResult, { as: 'html' })));
    expect(elementsOf(html).map(textOf)).toContain(`Number of tie-downs: ${id}`);

    const markdown = explain(result, { as: 'markdown' });
    expectWholeMarkdown(markdown);
    expect(readMarkdown(markdown).texts).toContain(`Number of tie-downs: ${id}`);
    const lines = (page: string) => page.split('\n').map((line) => /^(?:#+|\| |-|\d+\.|\s+-?)/.exec(line)?.[0] ?? '');
    expect(lines(markdown)).toEqual(lines(explain(tameResult, { as: 'markdown' })));

    for (const line of explain(result).split('\n')) expect([...line].length).toBeLessThanOrEqual(100);
  });

  it.each([
    ['1. one', '1\\. one'],
    ['12) twelve', '12\\) twelve'],
    ['- dash', '\\- dash'],
    ['+ plus', '\\+ plus'],
    ['# number', '\\# number'],
    ['===', '\\==='],
    ['> quote', '&gt; quote'],
    ['393.110', '393.110'],
  ])('%s starts no list, heading or quote in Markdown', (text, escaped) => {
    const lines = explain(handMade({ cautions: [{ code: 'C', params: {}, text }] }), { as: 'markdown' }).split('\n');
    expect(lines).toContain(`- ${escaped}`);
  });

  it('makes control and direction characters visible', () => {
    // ESC [ 3 1 m colors a terminal, U+202E turns the line around, a line feed would start a line of its own.
    const id = 'red\u001b[31m \u202Eback\nnew\tline\u2028end \uD800';
    const said = 'red\\u{1b}[31m \\u{202e}back\\u{a}new\\u{9}line\\u{2028}end \\u{d800}';
    const result = tractorPlan({ article: id });
    for (const as of FORMATS) {
      expect(explain(result, { as })).not.toMatch(/[\p{Cf}\p{Cs}\p{Zl}\p{Zp}]|(?!\n)\p{Cc}/u);
      expect(wordsOf(result, as)).toContain(said);
    }
  });

  it('hold for any text', () => {
    const anyText = fc.oneof(
      fc.string({ unit: 'binary', minLength: 1, maxLength: 40 }),
      fc
        .array(fc.constantFrom(...'<>&"\'|`\\*_[]()#-+=~!$:;\n\t \u202e\u0000'), { minLength: 1, maxLength: 30 })
        .map((signs) => signs.join('')),
    );
    fc.assert(
      fc.property(fc.uniqueArray(anyText, { minLength: 3, maxLength: 4 }), ([article = 'a', ...tieDowns]) => {
        const result = tractorPlan({ article, tieDowns });
        expectPlainHtml(explain(result, { as: 'html' }));
        expectWholeMarkdown(explain(result, { as: 'markdown' }));
        const text = explain(result);
        expect(text).not.toMatch(/(?!\n)\p{Cc}/u);
        for (const line of text.split('\n')) expect([...line].length).toBeLessThanOrEqual(100);
        expect(explain(JSON.parse(JSON.stringify(result)))).toBe(text);
      }),
      { numRuns: 60 },
    );
  });
});

describe('lines of the text', () => {
  const listed = (text: string) => {
    const lines = explain(handMade({ cautions: [{ code: 'C', params: {}, text }] })).split('\n');
    const at = lines.indexOf('Cautions') + 2;
    return lines.slice(at, lines.indexOf('', at));
  };

  it('break at a space, and inside a word only when it is longer than a line', () => {
    // 100 columns less 4 for the mark of the list
    const [x, y] = ['x'.repeat(96), 'y'.repeat(96)];
    expect(listed(`${x} ${y}`)).toEqual([`  - ${x}`, `    ${y}`]);
    expect(listed(`a ${x} b`)).toEqual(['  - a', `    ${x}`, '    b']);
    expect(listed(`${x}${y}`)).toEqual([`  - ${x}`, `    ${y}`]);
    expect(listed(`${x}z`)).toEqual([`  - ${x}`, '    z']);
  });
});

describe('results inside a result', () => {
  const inner = RESULTS['a rating from the table'] as ResultBase;

  it('get a sheet of their own in the answer', () => {
    const markdown = explain(handMade({ verdict: 'fail', outcomes: [inner, inner] }), { as: 'markdown' });
    expect(markdown.split('\n').filter((line) => line.startsWith('#'))).toEqual([
      '# Hand made: fail',
      '## Answer',
      ...Array.from({ length: 2 }, () => [
        '### Chain rating',
        '#### Inputs',
        '#### Answer',
        '#### Steps',
        '#### Cautions',
        '#### Sources',
      ]).flat(),
    ]);
  });

  it('stand among the inputs without their working', () => {
    const text = explain(handMade({ inputs: { condition: inner } }));
    expect(text).toContain('Working load limit: 4700 lb');
    expect(text).not.toContain('table(size, grade)');
  });
});

describe('what is no result', () => {
  it.each([[undefined], [null], [42], ['text'], [[]], [{}], [{ result: 7 }]])('%j is refused', (value) => {
    expect(issueOf(() => explain(value as never))).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'result' });
  });

  it.each(['steps', 'sources', 'assumptions', 'cautions', 'checks'])(
    'a result without its list of %s is refused',
    (key) => {
      const { [key]: _, ...rest } = { ...tractorPlan() } as unknown as Record<string, unknown>;
      for (const broken of [null, 'text', {}, [null], ['text']]) {
        expect(issueOf(() => explain({ ...rest, [key]: broken } as never))).toMatchObject({
          code: 'MISSING_FIELD',
          path: `result.${key}`,
        });
      }
      if (key !== 'checks') {
        expect(issueOf(() => explain(rest as never))).toMatchObject({ code: 'MISSING_FIELD', path: `result.${key}` });
      }
    },
  );

  it.each(['pdf', '', 'toString', 7, null])('format %j', (as) => {
    const call = () => explain(tractorPlan(), { as } as never);
    if (as === null) expect(call()).toContain('Check securement');
    else expect(issueOf(call)).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'as' });
  });

  it('gives a sheet or a RiggingError for any JSON', () => {
    const anyObjects = fc.array(fc.dictionary(fc.string(), fc.jsonValue()), { maxLength: 3 });
    const lists = fc.record({
      steps: anyObjects,
      checks: anyObjects,
      sources: anyObjects,
      assumptions: anyObjects,
      cautions: anyObjects,
    });
    fc.assert(
      fc.property(
        fc.dictionary(fc.string(), fc.jsonValue()),
        lists,
        fc.constantFrom(...FORMATS),
        (fields, rest, as) => {
          const { result: _, ...answer } = fields;
          const result = handMade({ ...answer, inputs: fields, ...rest });
          const sheet = explain(result, { as });
          expect(explain(JSON.parse(JSON.stringify(result)), { as })).toBe(sheet);
          if (as === 'html') expectPlainHtml(sheet);
          if (as === 'markdown') expectWholeMarkdown(sheet);
        },
      ),
    );
  });

  it('text is what comes without a format', () => {
    const result = tractorPlan();
    expect(explain(result)).toBe(explain(result, { as: 'text' }));
    expect(explain(result, {})).toBe(explain(result, { as: 'text' }));
  });
});
