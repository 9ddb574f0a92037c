import { inspect } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeResult } from '../../src/working/result.js';
import { Working } from '../../src/working/step.js';
import { RESULTS, tractorPlan } from '../explain/results.js';

const caution = (text: string) => ({ code: 'C', params: {}, text });

/** What a console shows of a result with this answer. */
function shown(answer: object, cautions: readonly string[] = []): string[] {
  const working = new Working(true);
  working.cautions.push(...cautions.map(caution));
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
    expect(lines.at(-1)).toMatch(/^ {2}\d+ steps?, \d+ sources?: explain\(result\)$/);
    expect(lines.join('\n')).not.toMatch(/null|undefined|\[object/);
  });

  it('shows the fields of the answer', () => {
    expect(
      shown({
        limit: { value: 4700, unit: 'lb' },
        grade: 70,
        atMost: null,
        weakest: ['a', 'b'],
        none: [],
        gone: undefined,
      }),
    ).toEqual([
      'someResult',
      '  limit: 4700 lb',
      '  grade: 70',
      '  atMost: —',
      '  weakest: a, b',
      '  none: none',
      '  0 steps, 0 sources: explain(result)',
    ]);
  });

  it('shows a list of things with id and verdict line by line', () => {
    expect(
      shown({
        parts: [
          { id: 'hook', verdict: 'pass', limit: null, at: [1, 2, 3] },
          { id: 'bare' },
          { rule: '393.110', options: [{ count: 2 }, { count: 4 }] },
        ],
      }).slice(1, -1),
    ).toEqual([
      '  parts:',
      '    hook: pass, limit —, at (1, 2, 3)',
      '    bare',
      '    rule 393.110, options count 2; count 4',
    ]);
  });

  // 13 checks: 12 pass, 1 undetermined
  const passes = Array.from({ length: 12 }, (_, index) => ({
    id: `check ${index}`,
    title: 'Title',
    clause: 'clause',
    subject: 'tractor',
    weight: 'requirement',
    verdict: 'pass',
    demand: { value: 1970, unit: 'lb' },
    capacity: { value: 9400, unit: 'lb' },
    utilization: 1970 / 9400,
  }));
  const open = { ...passes[0], id: 'open', verdict: 'undetermined', missing: [caution('The rating of the anchor.')] };
  const { demand: _d, capacity: _c, utilization: _u, ...undetermined } = open;

  it('counts the checks and shows what is not passed', () => {
    expect(shown({ governing: 'open', checks: [...passes, undetermined] }).slice(1, -1)).toEqual([
      '  13 checks: 12 pass, 1 undetermined',
      '  governing: undetermined open: missing The rating of the anchor.',
    ]);
  });

  it('shows the check that decides with its figures', () => {
    expect(shown({ governing: 'check 3', checks: passes }).slice(1, -1)).toEqual([
      '  12 checks: 12 pass',
      '  governing: pass check 3: demand 1970 lb, capacity 9400 lb, utilization 20.96 %',
    ]);
  });

  it('puts failed requirements first and failed practice last', () => {
    const because = caution('Because.');
    const base = { title: 'T', clause: 'c', subject: 's', because };
    expect(
      shown({
        checks: [
          { ...base, id: 'habit', weight: 'practice', verdict: 'fail' },
          { ...base, id: 'kept habit', weight: 'practice', verdict: 'pass' },
          { ...base, id: 'far', weight: 'requirement', verdict: 'not-applicable' },
          { ...base, id: 'unsure', weight: 'requirement', verdict: 'undetermined' },
          { ...base, id: 'bad', weight: 'requirement', verdict: 'fail' },
        ],
      }).slice(1, -1),
    ).toEqual([
      '  5 checks: 2 fail, 1 pass, 1 not-applicable, 1 undetermined',
      '  fail bad: because Because.',
      '  undetermined unsure: because Because.',
      '  not-applicable far: because Because.',
      '  fail habit: because Because.',
    ]);
  });

  it('keeps the screen with many failed checks and a long answer', () => {
    const fails = Array.from({ length: 40 }, (_, index) => ({ ...passes[0], id: `fail ${index}`, verdict: 'fail' }));
    const answer = Object.fromEntries(Array.from({ length: 40 }, (_, index) => [`field ${index}`, index]));
    const lines = shown({ ...answer, governing: 'fail 0', checks: fails }, ['one', 'two', 'three', 'four']);
    expect(lines).toHaveLength(24);
    expect(lines).toContain('  40 checks: 40 fail');
    expect(lines.some((line) => line.startsWith('  governing: fail fail 0'))).toBe(true);
    // 9 lines for the checks: count, governing, 6 of the 39 others, and that 33 more are left out
    expect(lines).toContain('    … 33 more');
    // 22 lines less 3 cautions and 9 checks leave 10 for the answer: 9 of 40 fields, 31 left out
    expect(lines).toContain('    … 31 more');
    expect(lines.slice(-4)).toEqual(['  ! one', '  ! two', '    … 2 more', '  0 steps, 0 sources: explain(result)']);
  });

  it('shows the first items of a very long list', () => {
    const lines = shown({
      tieDowns: Array.from({ length: 1000 }, (_, index) => ({ id: `chain ${index}`, credit: 0.5 })),
    });
    expect(lines.slice(1, -1)).toEqual([
      '  tieDowns:',
      '    chain 0: credit 0.5',
      '    chain 1: credit 0.5',
      '    chain 2: credit 0.5',
      '    chain 3: credit 0.5',
      '    … 996 more',
    ]);
  });

  it('clips long cautions at 100 columns', () => {
    const [, line] = shown({}, ['x'.repeat(200)]);
    expect(line).toBe(`  ! ${'x'.repeat(95)}…`);
    expect(shown({}, ['x'.repeat(96)])[1]).toBe(`  ! ${'x'.repeat(96)}`);
  });

  it('keeps hostile ids in their line', () => {
    const lines = inspect(
      tractorPlan({
        article: 'a\nb\u001b[2J\u202e',
        tieDowns: ['😀'.repeat(500), '\uD83D'.repeat(99)],
        anchored: false,
      }),
    ).split('\n');
    expectOneScreen(lines);
    expect(lines.join('\n')).not.toMatch(/(?!\n)\p{Cc}|[\p{Cf}\p{Cs}]/u);
    expect(lines.join('\n')).toContain('a\\u{a}b\\u{1b}[2J\\u{202e}');
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
