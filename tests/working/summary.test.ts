import { inspect } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeResult } from '../../src/working/result.js';
import { Working } from '../../src/working/step.js';
import { RESULTS, tractorPlan } from '../explain/results.js';

const sentence = (text: string) => ({ code: 'C', params: {}, text });

/** What a console shows of a result with this answer. */
function shown(answer: object, cautions: readonly string[] = []): string[] {
  const working = new Working(true);
  working.cautions.push(...cautions.map(sentence));
  return inspect(makeResult('someResult', answer, {}, working)).split('\n');
}

function expectOneScreen(lines: readonly string[]): void {
  expect(lines.length).toBeLessThanOrEqual(24);
  for (const line of lines) expect([...line].length).toBeLessThanOrEqual(100);
}

describe('at the console', () => {
  it.each(Object.entries(RESULTS))('%s fits one screen', (_, result) => {
    const lines = inspect(result).split('\n');
    expectOneScreen(lines);
    expect(lines[0]).toBe('verdict' in result ? `${result.result}: ${result.verdict}` : result.result);
    expect(lines.at(-1)).toBe(`  steps ${result.steps.length}, sources ${result.sources.length}: explain(result)`);
    expect(lines.join('\n')).not.toMatch(/null|undefined|\[object/);
  });

  it.each(Object.entries(RESULTS))('%s shows its answer and its first caution', (_, result) => {
    const text = inspect(result);
    for (const key of Object.keys(result)) {
      const known = ['result', 'verdict', 'checks', 'inputs', 'steps', 'sources', 'assumptions', 'cautions'];
      const value = (result as unknown as Record<string, unknown>)[key];
      if (known.includes(key) || (Array.isArray(value) && value.length === 0)) continue;
      expect(text).toContain(`\n  ${key}: `);
    }
    expect(text).toContain(`\n  caution: ${result.cautions[0]?.text.slice(0, 60)}`);
  });

  it('shows the fields of the answer', () => {
    expect(
      shown({
        limit: { value: 4700, unit: 'lb' },
        grade: 70,
        atMost: null,
        weakest: ['a', 'b'],
        none: [],
        because: sentence('So it is.'),
        range: { least: { value: 27.71234, unit: 'lb' }, most: { value: 30, unit: 'lb' } },
      }),
    ).toEqual([
      'someResult',
      '  limit: 4700 lb',
      '  grade: 70',
      '  atMost: —',
      '  weakest: a',
      '  weakest: b',
      '  because: So it is.',
      '  range: least 27.712 lb, most 30 lb',
      '  steps 0, sources 0: explain(result)',
    ]);
  });

  it('shows a list of things line by line, each by its id', () => {
    expect(
      shown({
        parts: [
          { id: 'hook', verdict: 'pass', limit: null, at: [1, 2, 3] },
          { id: 'bare' },
          { rule: '393.110', options: [{ count: 2 }, { count: 4 }] },
        ],
      }).slice(1, -1),
    ).toEqual([
      '  parts: hook: verdict pass, limit —, at 1, 2, 3',
      '  parts: bare: ',
      '  parts: rule 393.110, options count 2, count 4',
    ]);
  });

  const passed = {
    id: 'passed',
    title: 'Title',
    clause: 'clause',
    subject: 'tractor',
    weight: 'requirement',
    verdict: 'pass',
    demand: { value: 1970, unit: 'lb' },
    capacity: { value: 9400, unit: 'lb' },
    utilization: 1970 / 9400, // 0.20957...
  };
  const { demand: _d, capacity: _c, utilization: _u, ...bare } = passed;

  it('shows the checks that are not in order, each with what it found', () => {
    expect(
      shown({
        governing: 'few',
        checks: [
          passed,
          { ...passed, id: 'few', verdict: 'fail' },
          { ...bare, id: 'open', verdict: 'undetermined', missing: [sentence('The rating of the anchor.')] },
          { ...bare, id: 'far', verdict: 'not-applicable', because: sentence('It is not asked.') },
        ],
      }).slice(1, -1),
    ).toEqual([
      '  governing: few',
      '  not in order: few: verdict fail, demand 1970 lb, capacity 9400 lb, utilization 0.20957',
      '  not in order: open: verdict undetermined, missing The rating of the anchor.',
      '  not in order: far: verdict not-applicable, because It is not asked.',
    ]);
    expect(shown({ checks: [passed, passed] })).toHaveLength(2);
  });

  it('shows the first three of a list of more than four, and how many are left out', () => {
    const list = (count: number) =>
      Array.from({ length: count }, (_, index) => ({ id: `chain ${index}`, credit: 0.5 }));
    expect(shown({ tieDowns: list(4) })).toHaveLength(6);
    expect(shown({ tieDowns: list(1000) }).slice(1, -1)).toEqual([
      '  tieDowns: chain 0: credit 0.5',
      '  tieDowns: chain 1: credit 0.5',
      '  tieDowns: chain 2: credit 0.5',
      '  … 997 more',
    ]);
  });

  it('keeps the screen with many failed checks, many cautions and a long answer', () => {
    const fails = Array.from({ length: 40 }, (_, index) => ({ ...passed, id: `fail ${index}`, verdict: 'fail' }));
    const cautions = Array.from({ length: 40 }, (_, index) => `caution ${index}`);
    const lines = shown({ governing: 'fail 0', checks: fails }, cautions);
    expect(lines.filter((line) => line.startsWith('  not in order: '))).toHaveLength(3);
    expect(lines.slice(-5)).toEqual([
      '  caution: caution 0',
      '  caution: caution 1',
      '  caution: caution 2',
      '  … 37 more',
      '  steps 0, sources 0: explain(result)',
    ]);
    const long = Object.fromEntries(Array.from({ length: 40 }, (_, index) => [`field ${index}`, index]));
    expect(shown({ ...long, checks: fails }, cautions)).toHaveLength(24);
  });

  it('clips long cautions at 100 columns', () => {
    // 2 columns of indent and 9 of "caution: " leave 89; longer text keeps one column for the sign that it goes on
    expect(shown({}, ['x'.repeat(200)])[1]).toBe(`  caution: ${'x'.repeat(88)}…`);
    expect(shown({}, ['x'.repeat(88)])[1]).toBe(`  caution: ${'x'.repeat(88)}`);
  });

  it('keeps hostile ids in their line', () => {
    const text = inspect(
      tractorPlan({
        article: 'a\nb\u001b[2J\u202e\u2028',
        tieDowns: ['😀'.repeat(500), '\uD83D'.repeat(99)],
        anchored: false,
      }),
    );
    expectOneScreen(text.split('\n'));
    expect(text).not.toMatch(/(?!\n)\p{Cc}|[\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
    expect(text).toContain('a\uFFFDb\uFFFD[2J\uFFFD\uFFFD');
  });

  it('fits one screen whatever the answer', () => {
    fc.assert(
      fc.property(
        fc.dictionary(fc.string({ unit: 'binary' }), fc.jsonValue({ maxDepth: 4 })),
        fc.array(fc.string({ unit: 'binary' })),
        (fields, cautions) => {
          const { result: _r, verdict: _v, checks: _c, ...answer } = fields;
          expectOneScreen(shown(answer, cautions));
        },
      ),
    );
  });
});
