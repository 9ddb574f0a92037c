// The weakest link: WLL = min(WLL of every part). Ratings of single parts are in part-kinds.test.ts.
import {
  type AssemblyRating,
  assemblyRating,
  type Part,
  type QuantityInput,
  us49cfr393_108_2024,
  usWeldedChain_2003,
} from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

const law = us49cfr393_108_2024;
const rate = (...parts: Part[]) => assemblyRating({ ratings: law, parts });
/** A call as plain JavaScript makes it. */
const rateLoosely = assemblyRating as unknown as (input: Record<string, unknown> | undefined) => AssemblyRating;
const codes = (notes: readonly { code: string }[]) => notes.map(({ code }) => code);

// 3/8 grade 70: 6,600 lb; 5/16 grade 70: 4,700 lb; 3/8 grade 43: 5,400 lb (393.108, table for chain).
const chain: Part = { id: 'chain', kind: 'chain', size: '3/8', grade: 70 };
const hook: Part = { id: 'hook', kind: 'grab-hook', size: '3/8', grade: 70 };
const binder: Part = { id: 'binder', kind: 'binder', markedWll: '5400 lb' };
const marked = (id: string, markedWll: QuantityInput<'ratedLoad'>): Part => ({ id, kind: 'shackle', markedWll });

describe('the weakest part', () => {
  it('gives the assembly its limit', () => {
    const result = rate(chain, hook, binder);
    expect(result).toMatchObject({
      verdict: 'pass',
      workingLoadLimit: { value: 5400, unit: 'lb' },
      weakest: ['binder'],
    });
    expect(result.parts).toMatchObject([
      { id: 'chain', workingLoadLimit: { value: 6600, unit: 'lb' }, basis: 'table' },
      { id: 'hook', workingLoadLimit: { value: 6600, unit: 'lb' }, basis: 'as chain of its grade and size' },
      { id: 'binder', workingLoadLimit: { value: 5400, unit: 'lb' }, basis: 'marked' },
    ]);
    expect(result.missing).toEqual([]);
    expect(result).not.toHaveProperty('atMost');
    expect(result).not.toHaveProperty('utilization');
  });

  it('is found wherever it stands', () => {
    const parts = [chain, hook, binder];
    for (const order of [
      [0, 1, 2],
      [0, 2, 1],
      [1, 0, 2],
      [1, 2, 0],
      [2, 0, 1],
      [2, 1, 0],
    ]) {
      const result = rate(...order.map((at) => parts[at] as Part));
      expect(result.workingLoadLimit).toEqual({ value: 5400, unit: 'lb' });
      expect(result.weakest).toEqual(['binder']);
    }
  });

  it('may be several that tie', () => {
    const result = rate(chain, { ...binder, markedWll: '9200 lb' }, hook);
    expect(result.workingLoadLimit).toEqual({ value: 6600, unit: 'lb' });
    expect(result.weakest).toEqual(['chain', 'hook']);
  });

  it('may be a single part', () => {
    expect(rate(chain)).toMatchObject({
      workingLoadLimit: { value: 6600, unit: 'lb' },
      weakest: ['chain'],
      verdict: 'pass',
    });
  });

  it('is the grade 80 chain of a 5/16 pair: the higher grade is the weaker one', () => {
    const result = rate(
      { id: 'transport', kind: 'chain', size: '5/16', grade: 70 }, // 4,700 lb
      { id: 'alloy', kind: 'chain', size: '5/16', grade: 80 }, // 4,500 lb
    );
    expect(result).toMatchObject({ workingLoadLimit: { value: 4500, unit: 'lb' }, weakest: ['alloy'] });
  });

  it('is an unmarked chain at its grade 30 figure', () => {
    // 3/8 grade 30: 2,650 lb, 393.108(d).
    const result = rate({ id: 'old', kind: 'chain', size: '3/8' }, hook, binder);
    expect(result).toMatchObject({ workingLoadLimit: { value: 2650, unit: 'lb' }, weakest: ['old'] });
    expect(codes(result.assumptions)).toContain('UNMARKED_PART');
    expect(result.assumptions.find(({ code }) => code === 'UNMARKED_PART')?.text).toMatch(
      /grade 30.*49 CFR 393\.108\(d\)/,
    );
  });
});

describe('mixed units', () => {
  // 1 lb = 0.453 592 37 kg and 1 lbf = 4.448 221 615 260 5 N, both exact: these are all 1,000 lb.
  const pounds = marked('pounds', '1000 lb');
  const kilograms = marked('kilograms', '453.59237 kg');
  const kilonewtons = marked('kilonewtons', '4.4482216152605 kN');
  const tons = marked('tons', '0.5 short-ton');
  const poundsForce = marked('pounds-force', '1 kip');

  it('tie exactly', () => {
    const all = [pounds, kilograms, kilonewtons, tons, poundsForce];
    expect(rate(...all).weakest).toEqual(['pounds', 'kilograms', 'kilonewtons', 'tons', 'pounds-force']);
    expect(rate(...[...all].reverse()).weakest).toEqual(['pounds-force', 'tons', 'kilonewtons', 'kilograms', 'pounds']);
  });

  it('are told apart in the last digit', () => {
    expect(rate(pounds, marked('below', '453.59236999 kg'), kilonewtons).weakest).toEqual(['below']);
    expect(rate(pounds, marked('above', '453.59237001 kg'), kilonewtons).weakest).toEqual(['pounds', 'kilonewtons']);
    expect(rate(pounds, kilograms, marked('below', '4.4482216152604 kN')).weakest).toEqual(['below']);
    expect(rate(pounds, kilograms, marked('above', '4.4482216152606 kN')).weakest).toEqual(['pounds', 'kilograms']);
  });

  it('do not take a daN for a kilogram-force', () => {
    // 2,000 daN is 20,000 N; 2,000 kgf is 19,613.3 N: the kgf figure is the lower one.
    expect(rate(marked('daN', '2000 daN'), marked('kgf', '2000 kgf')).weakest).toEqual(['kgf']);
  });

  it('show the crossing from force to mass as a step', () => {
    const { steps } = rate(chain, kilonewtons);
    const crossing = steps.find(({ expression }) => expression === 'F / g');
    expect(crossing?.subject).toContain('kilonewtons');
    expect(crossing?.values).toContainEqual(['g', { value: 9.80665, unit: 'm/s2' }]);
    expect((crossing?.result as { value: number } | undefined)?.value).toBeCloseTo(1000, 9);
  });
});

describe('a part whose rating is not known', () => {
  const shackle: Part = { id: 'shackle', kind: 'shackle' };

  it('leaves the whole undetermined, with a ceiling', () => {
    const result = rate(chain, shackle, binder);
    expect(result).toMatchObject({
      verdict: 'undetermined',
      workingLoadLimit: null,
      weakest: [],
      atMost: { value: 5400, unit: 'lb' }, // the least of the parts that are known
    });
    expect(codes(result.missing)).toEqual(['PART_NOT_MARKED']);
    expect(result.missing[0]?.text).toContain('shackle');
  });

  it('names every part that is missing', () => {
    const result = rate(
      chain,
      shackle,
      { id: 'ring', kind: 'anchor', at: 'vehicle' },
      { id: 'lug', kind: 'anchor', at: 'cargo' },
    );
    expect(codes(result.missing)).toEqual(['PART_NOT_MARKED', 'ANCHOR_NOT_RATED', 'ANCHOR_NOT_RATED']);
  });

  it('has no ceiling where nothing is known', () => {
    const result = rate(shackle);
    expect(result).toMatchObject({ verdict: 'undetermined', workingLoadLimit: null });
    expect(result).not.toHaveProperty('atMost');
  });

  it('does not hide that the load is too much for a known part', () => {
    const ask = (load: '5400 lb' | '5401 lb') =>
      assemblyRating({ ratings: law, parts: [chain, shackle, binder], load });
    expect(ask('5401 lb').verdict).toBe('fail');
    expect(ask('5400 lb').verdict).toBe('undetermined');
    expect(ask('5400 lb')).not.toHaveProperty('utilization');
  });
});

describe('a damaged part', () => {
  it('counts zero', () => {
    const result = rate(chain, { ...hook, condition: 'damaged' }, binder);
    expect(result).toMatchObject({ verdict: 'fail', weakest: ['hook'] });
    expect(result.workingLoadLimit?.value).toBe(0);
    expect(result.parts[1]).toMatchObject({ basis: 'damaged, counts zero', workingLoadLimit: { value: 0 } });
  });

  it('counts zero whatever is unknown beside it', () => {
    const result = rate({ id: 'shackle', kind: 'shackle' }, { ...chain, condition: 'damaged' });
    expect(result).toMatchObject({ verdict: 'fail', weakest: ['chain'] });
    expect(result.workingLoadLimit?.value).toBe(0);
  });

  it('counts zero with its mark still on it', () => {
    expect(rate(chain, { ...binder, condition: 'damaged' }).workingLoadLimit?.value).toBe(0);
  });

  it('carries no load at all', () => {
    const result = assemblyRating({ ratings: law, parts: [{ ...chain, condition: 'damaged' }], load: '1 lb' });
    expect(result).toMatchObject({ verdict: 'fail', utilization: null });
  });

  it('is zero in either system', () => {
    const result = assemblyRating({ ratings: law, parts: [{ ...chain, condition: 'damaged' }], units: 'si' });
    expect(result.workingLoadLimit).toEqual({ value: 0, unit: 'kg' });
  });
});

describe('an inspection result as the condition', () => {
  test.each([
    ['fit', 'pass', 5400],
    ['remove', 'fail', 0],
    ['undetermined', 'undetermined', null],
  ] as const)('%s: %s', (verdict, expected, limit) => {
    const result = rate({ ...chain, condition: { verdict } }, hook, binder);
    expect(result.verdict).toBe(expected);
    expect(result.workingLoadLimit?.value ?? null).toBe(limit);
  });

  it('that is undetermined says so', () => {
    const result = rate({ ...chain, condition: { verdict: 'undetermined' } }, binder);
    expect(codes(result.missing)).toEqual(['CONDITION_UNDETERMINED']);
    expect(result.atMost).toEqual({ value: 5400, unit: 'lb' });
  });

  it('may be a whole result that went through JSON', () => {
    const inspection = JSON.parse('{"result":"inspectChain","verdict":"fit","checks":[]}');
    expect(rate({ ...chain, condition: inspection }).verdict).toBe('pass');
  });

  it('is refused when it is none', () => {
    for (const condition of ['worn', 'ok', true, {}, { verdict: 'pass' }, 1]) {
      const issue = issueOf(() => rateLoosely({ ratings: law, parts: [{ ...chain, condition }] }));
      expect(issue, JSON.stringify(condition)).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'parts[0].condition' });
    }
  });

  it('is taken as sound when it is not stated, and the result says so', () => {
    expect(codes(rate(chain).assumptions)).toContain('TAKEN_AS_SOUND');
    expect(codes(rate({ ...chain, condition: 'sound' }).assumptions)).not.toContain('TAKEN_AS_SOUND');
    expect(codes(rate({ ...chain, condition: { verdict: 'fit' } }).assumptions)).not.toContain('TAKEN_AS_SOUND');
  });
});

describe('a load', () => {
  const ask = (load: NonNullable<Parameters<typeof assemblyRating>[0]['load']>) =>
    assemblyRating({ ratings: law, parts: [chain, hook, binder], load });

  // The assembly carries 5,400 lb = 2,449.398 798 kg = 24.020 396 722 406 7 kN, each exact.
  const at = ['5400 lb', '2449.398798 kg', '24.0203967224067 kN', '2.7 short-ton', '5.4 kip'] as const;
  const below = ['5399.999999 lb', '2449.398797 kg', '24.0203967224066 kN', '2.69999999 short-ton'] as const;
  const above = ['5400.000001 lb', '2449.398799 kg', '24.0203967224068 kN', '2.70000001 short-ton'] as const;

  test.each(at)('%s is carried, to the full', (load) => {
    expect(ask(load)).toMatchObject({ verdict: 'pass', utilization: 1 });
  });
  test.each(below)('%s is carried', (load) => {
    const { verdict, utilization } = ask(load);
    expect(verdict).toBe('pass');
    expect(utilization).toBeLessThan(1);
  });
  test.each(above)('%s is too much', (load) => {
    const { verdict, utilization } = ask(load);
    expect(verdict).toBe('fail');
    expect(utilization).toBeGreaterThan(1);
  });
  it('gives load over limit, unrounded', () => {
    expect(ask('2700 lb').utilization).toBe(0.5);
    expect(ask('1800 lb').utilization).toBe(1800 / 5400);
  });
  it('must be a load above zero', () => {
    expect(issueOf(() => ask('0 lb'))).toMatchObject({ code: 'NOT_POSITIVE', path: 'load' });
    expect(issueOf(() => ask('3 ft' as never))).toMatchObject({ code: 'WRONG_KIND', path: 'load' });
  });
});

describe('legs side by side', () => {
  const leg = (id: string, size: '3/8' | '5/16'): Part[] => [{ id, kind: 'chain', size, grade: 70 }];
  const legs = (loadSharing: 'equal' | 'one-leg', ...each: Part[][]): Part => ({
    id: 'bridle',
    kind: 'parallel',
    loadSharing,
    legs: each,
  });

  it('that share alike carry n times the weakest', () => {
    expect(rate(legs('equal', leg('a', '3/8'), leg('b', '3/8'))).workingLoadLimit).toEqual({
      value: 13200,
      unit: 'lb',
    }); // 2 × 6,600
    expect(rate(legs('equal', leg('a', '3/8'), leg('b', '5/16'))).workingLoadLimit).toEqual({
      value: 9400,
      unit: 'lb',
    }); // 2 × 4,700
    expect(rate(legs('equal', leg('a', '3/8'), leg('b', '5/16'), leg('c', '3/8'))).workingLoadLimit).toEqual({
      value: 14100, // 3 × 4,700
      unit: 'lb',
    });
  });

  it('that nothing makes share carry what the weakest one does', () => {
    const result = rate(legs('one-leg', leg('a', '3/8'), leg('b', '5/16')));
    expect(result).toMatchObject({ workingLoadLimit: { value: 4700, unit: 'lb' }, weakest: ['bridle'] });
    expect(result.parts[0]?.basis).toBe('weakest leg');
  });

  it('are one part of the series', () => {
    expect(rate(legs('equal', leg('a', '3/8'), leg('b', '3/8')), binder)).toMatchObject({
      workingLoadLimit: { value: 5400, unit: 'lb' },
      weakest: ['binder'],
    });
    expect(rate(legs('equal', leg('a', '3/8'), leg('b', '3/8')), { ...binder, markedWll: '15000 lb' })).toMatchObject({
      workingLoadLimit: { value: 13200, unit: 'lb' },
      weakest: ['bridle'],
    });
  });

  it('are series of their own', () => {
    // Each leg: min(6,600 chain, 3,500 shackle) = 3,500; two alike 7,000.
    const series = (id: string): Part[] => [...leg(id, '3/8'), marked(`${id}-shackle`, '3500 lb')];
    expect(rate(legs('equal', series('a'), series('b'))).workingLoadLimit).toEqual({ value: 7000, unit: 'lb' });
  });

  it('may nest', () => {
    // Inner: one-leg of 6,600 and 4,700 = 4,700. Outer equal: least of (4,700; 6,600) × 2 = 9,400.
    const inner: Part = {
      id: 'inner',
      kind: 'parallel',
      loadSharing: 'one-leg',
      legs: [leg('a', '3/8'), leg('b', '5/16')],
    };
    expect(rate(legs('equal', [inner], leg('c', '3/8'))).workingLoadLimit).toEqual({ value: 9400, unit: 'lb' });
    // Inner: equal of 4,700 and 4,700 = 9,400. Outer one-leg: least of (9,400; 6,600) = 6,600.
    const pair: Part = {
      id: 'pair',
      kind: 'parallel',
      loadSharing: 'equal',
      legs: [leg('a', '5/16'), leg('b', '5/16')],
    };
    expect(rate(legs('one-leg', [pair], leg('c', '3/8'))).workingLoadLimit).toEqual({ value: 6600, unit: 'lb' });
  });

  it('compare exactly across units, and multiply exactly', () => {
    // 453.59237 kg = 1,000 lb; two alike 2,000 lb.
    const result = assemblyRating({
      ratings: law,
      parts: [legs('equal', [marked('a', '453.59237 kg')], [marked('b', '1000 lb')])],
      load: '2000 lb',
    });
    expect(result).toMatchObject({ verdict: 'pass', utilization: 1 });
    // 3 × 0.7 t = 2.1 t to the last digit; in doubles 0.7 * 3 is 2.0999999999999996.
    const three = assemblyRating({
      ratings: law,
      parts: [legs('equal', [marked('a', '0.7 t')], [marked('b', '0.7 t')], [marked('c', '0.7 t')])],
      load: '2.1 t',
    });
    expect(three).toMatchObject({ verdict: 'pass', utilization: 1 });
  });

  it('are unknown with an unknown leg, and zero with a damaged one', () => {
    const unknown = rate(legs('equal', leg('a', '3/8'), [{ id: 'b', kind: 'shackle' }]), binder);
    expect(unknown).toMatchObject({
      verdict: 'undetermined',
      workingLoadLimit: null,
      atMost: { value: 5400, unit: 'lb' },
    });
    expect(codes(unknown.missing)).toEqual(['PART_NOT_MARKED']);
    for (const sharing of ['equal', 'one-leg'] as const) {
      const damaged = rate(
        legs(sharing, leg('a', '3/8'), [{ id: 'b', kind: 'chain', size: '3/8', grade: 70, condition: 'damaged' }]),
      );
      expect(damaged.verdict).toBe('fail');
      expect(damaged.workingLoadLimit?.value).toBe(0);
    }
  });

  it('keep the assumptions about their parts', () => {
    const result = rate(
      legs('one-leg', [{ id: 'a', kind: 'chain', size: '3/8' }], [{ id: 'b', kind: 'chain', size: '3/8' }]),
    );
    expect(result.workingLoadLimit).toEqual({ value: 2650, unit: 'lb' }); // unmarked: grade 30
    expect(codes(result.assumptions)).toContain('UNMARKED_PART');
    expect(codes(result.assumptions)).toContain('TAKEN_AS_SOUND');
  });

  it('are at least two lists of parts', () => {
    const ask = (part: unknown) => issueOf(() => rateLoosely({ ratings: law, parts: [part] }));
    const parallel = { id: 'bridle', kind: 'parallel', loadSharing: 'equal' };
    expect(ask({ ...parallel, legs: [leg('a', '3/8')] })).toMatchObject({ code: 'EMPTY_LIST', path: 'parts[0].legs' });
    expect(ask({ ...parallel })).toMatchObject({ code: 'EMPTY_LIST', path: 'parts[0].legs' });
    expect(ask({ ...parallel, legs: [leg('a', '3/8'), []] })).toMatchObject({
      code: 'EMPTY_LIST',
      path: 'parts[0].legs[1]',
    });
    for (const loadSharing of ['half', undefined]) {
      expect(ask({ ...parallel, loadSharing, legs: [leg('a', '3/8'), leg('b', '3/8')] })).toMatchObject({
        code: loadSharing === undefined ? 'MISSING_FIELD' : 'UNKNOWN_VALUE',
        path: 'parts[0].loadSharing',
      });
    }
  });

  it('may lie within each other sixteen deep, not seventeen', () => {
    const nested = (depth: number): Part =>
      depth === 0 ? chain : legs('one-leg', [nested(depth - 1)], leg('other', '3/8'));
    expect(rate(nested(16)).workingLoadLimit).toEqual({ value: 6600, unit: 'lb' });
    expect(issueOf(() => rate(nested(17)))).toMatchObject({
      code: 'TOO_LARGE',
      path: expect.stringMatching(/^parts\[0\](\.legs\[0\]\[0\]){16}\.legs$/),
    });
    // Side by side they are not deep.
    expect(rate(legs('one-leg', ...Array.from({ length: 40 }, () => [nested(15)]))).verdict).toBe('pass');
    const circle = { id: 'circle', kind: 'parallel', loadSharing: 'equal', legs: [] as unknown[] };
    circle.legs.push([circle], [circle]);
    expect(issueOf(() => rateLoosely({ ratings: law, parts: [circle] })).code).toBe('TOO_LARGE');
  });

  it('say where in them a mistake is', () => {
    // A leg is a list of parts, so the path is that of the data: legs[1][0].
    const issue = issueOf(() =>
      rateLoosely({
        ratings: law,
        parts: [
          {
            id: 'bridle',
            kind: 'parallel',
            loadSharing: 'equal',
            legs: [leg('a', '3/8'), [{ id: 'b', kind: 'rope' }]],
          },
        ],
      }),
    );
    expect(issue).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'parts[0].legs[1][0].kind' });
  });
});

describe('mistakes in the list', () => {
  const ask = (parts: unknown, more: Record<string, unknown> = {}) =>
    issueOf(() => rateLoosely({ ratings: law, parts, ...more }));

  it('no parts', () => {
    for (const parts of [[], undefined, null, {}, 'chain']) {
      expect(ask(parts)).toMatchObject({ code: 'EMPTY_LIST', path: 'parts' });
    }
  });
  it('a part that is none', () => {
    for (const part of [null, undefined, 'chain', 5]) {
      expect(ask([chain, part])).toMatchObject({ code: 'MISSING_FIELD', path: expect.stringMatching(/^parts\[1\]/) });
    }
  });
  it('a part without a name', () => {
    for (const id of [undefined, '', 5, null])
      expect(ask([{ ...chain, id }])).toMatchObject({ code: 'MISSING_FIELD', path: 'parts[0].id' });
  });
  it('two parts of one name', () => {
    expect(ask([chain, binder, { ...hook, id: 'chain' }])).toMatchObject({
      code: 'DUPLICATE_ID',
      path: 'parts[2].id',
      received: "'chain'",
    });
  });
  it('an unknown kind', () => {
    for (const kind of ['rope', 'hook', null, 'constructor', '__proto__']) {
      expect(ask([{ ...chain, kind }])).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'parts[0].kind' });
    }
    expect(ask([{ ...chain, kind: undefined }])).toMatchObject({ code: 'MISSING_FIELD', path: 'parts[0].kind' });
  });
  it('an unknown kind, whatever mark it carries or however damaged it is', () => {
    for (const more of [{ markedWll: '5000 lb' }, { condition: 'damaged' }, { capacities: {} }]) {
      expect(
        () => rateLoosely({ ratings: law, parts: [{ id: 'a', kind: 'rope', ...more }] }),
        JSON.stringify(more),
      ).toThrowError(expect.objectContaining({ code: 'UNKNOWN_VALUE', path: 'parts[0].kind' }));
    }
  });
  it('a size or grade that nobody makes, on a marked chain as on any', () => {
    // As chainRating refuses it.
    expect(() => rateLoosely({ ratings: law, parts: [{ ...chain, size: '5/17', markedWll: '5000 lb' }] })).toThrowError(
      expect.objectContaining({ code: 'UNKNOWN_SIZE', path: 'parts[0].size' }),
    );
  });
  it('a size or a width that is no text', () => {
    for (const size of [null, 5, {}, [], { value: 2, unit: 'in' }]) {
      for (const part of [
        { kind: 'webbing', width: size },
        { kind: 'wire-rope', size },
        { kind: 'fiber-rope', size },
        { kind: 'grab-hook', size, grade: 70 },
        { kind: 'strapping', width: '2', thickness: size },
      ]) {
        try {
          expect(rateLoosely({ ratings: law, parts: [{ id: 'a', ...part }] }).workingLoadLimit).toBeNull();
        } catch (error) {
          expect((error as Error).name, JSON.stringify(part)).toBe('RiggingError');
        }
      }
    }
  });
  it('a size or grade that nobody makes', () => {
    expect(ask([{ ...chain, size: '5/17' }])).toMatchObject({ code: 'UNKNOWN_SIZE', path: 'parts[0].size' });
    expect(ask([chain, { ...chain, id: 'b', grade: 75 }])).toMatchObject({
      code: 'UNKNOWN_GRADE',
      path: 'parts[1].grade',
    });
  });
  it('a mark that is no load, with the field it stands in', () => {
    expect(ask([{ ...binder, markedWll: '0 lb' }])).toMatchObject({ code: 'NOT_POSITIVE', path: 'parts[0].markedWll' });
    expect(ask([{ id: 'b', kind: 'binder', capacities: { workingLoadLimit: '0 lb' } }])).toMatchObject({
      code: 'NOT_POSITIVE',
      path: 'parts[0].capacities.workingLoadLimit',
    });
    expect(ask([{ id: 'r', kind: 'wire-rope', nominalStrength: '20000 lb' }])).toMatchObject({
      code: 'WRONG_KIND',
      path: 'parts[0].nominalStrength',
    });
  });
  it('no table', () => {
    expect(issueOf(() => rateLoosely({ parts: [chain] }))).toMatchObject({
      code: 'UNKNOWN_RATING_TABLE',
      path: 'ratings',
    });
  });
  it('no argument', () => {
    expect(() => rateLoosely(undefined)).toThrowError(expect.objectContaining({ name: 'RiggingError' }));
  });
  it('units it does not have', () => {
    expect(ask([chain], { units: 'metric' })).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'units' });
  });
});

describe('the result', () => {
  it('decides in pounds and shows kilograms for si', () => {
    const result = assemblyRating({ ratings: law, parts: [chain, hook, binder], units: 'si' });
    // 5,400 lb × 0.453 592 37 = 2,449.398 798 kg.
    expect(result.workingLoadLimit?.unit).toBe('kg');
    expect(result.workingLoadLimit?.value).toBeCloseTo(2449.398798, 9);
  });

  it('lists a step with every part, and one with the least', () => {
    const { steps } = rate(chain, hook, binder);
    const least = steps.at(-1);
    expect(least).toMatchObject({ expression: 'min(WLL of every part)', result: { value: 5400, unit: 'lb' } });
    expect(least?.values.map(([name]) => name)).toEqual(['chain', 'hook', 'binder']);
  });

  it('cites the table that each part was read in', () => {
    // A strap is not in the table for chain.
    const { sources } = rate({ id: 'strap', kind: 'webbing', width: '4' });
    expect(sources.some(({ clause }) => clause?.includes('webbing'))).toBe(true);
    expect(sources.some(({ clause }) => clause?.includes('chain'))).toBe(false);
  });

  it('cites the table for a fitting rated as chain', () => {
    const { sources } = rate(hook);
    expect(sources.some(({ clause }) => clause?.includes('393.108, table for chain'))).toBe(true);
  });

  it('keeps memory visible in its sources', () => {
    // Nylon rope was not read in the regulation.
    const { sources, parts } = rate({ id: 'rope', kind: 'fiber-rope', material: 'nylon', size: '1/2' });
    expect(parts[0]?.provenance).toBe('memory');
    expect(sources.map(({ provenance }) => provenance)).toContain('memory');
    // Grade 70 chain of 3/4 in: from memory in the specification.
    const big = assemblyRating({
      ratings: usWeldedChain_2003,
      parts: [{ id: 'big', kind: 'chain', size: '3/4', grade: 70 }],
    });
    expect(big.parts[0]?.provenance).toBe('memory');
    expect(big.sources.map(({ provenance }) => provenance)).toContain('memory');
  });

  it('does not change with working: false, save for the steps', () => {
    const full = rate(chain, { id: 'old', kind: 'chain', size: '3/8' }, { id: 'shackle', kind: 'shackle' });
    const bare = assemblyRating({
      ratings: law,
      parts: [chain, { id: 'old', kind: 'chain', size: '3/8' }, { id: 'shackle', kind: 'shackle' }],
      working: false,
    });
    expect(bare.steps).toEqual([]);
    expect(JSON.parse(JSON.stringify({ ...bare, steps: full.steps }))).toEqual(JSON.parse(JSON.stringify(full)));
  });

  it('does not carry the name of a part into a prototype', () => {
    const result = rate({ ...chain, id: '__proto__' }, { ...binder, id: 'constructor' });
    expect(result.weakest).toEqual(['constructor']);
    expect(result.steps.at(-1)?.values.map(([name]) => name)).toEqual(['__proto__', 'constructor']);
    expect(({} as { value?: unknown }).value).toBeUndefined();
  });
});
