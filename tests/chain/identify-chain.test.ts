import { describe, expect, it } from 'vitest';
import { chainRating } from '../../src/chain/chain-rating.js';
import { identifyChain } from '../../src/chain/identify-chain.js';
import { inWords } from '../../src/explain/in-words.js';
import type { RatingTable } from '../../src/tables/rating-table.js';
import { us49cfr393_108_2024 } from '../../src/tables/us-49cfr393-108-2024.js';
import { usWeldedChain_2003 } from '../../src/tables/us-welded-chain-2003.js';
import { issueOf } from '../quantities/issue-of.js';

const ratings = us49cfr393_108_2024;
const mm = (value: number) => ({ value, unit: 'mm' }) as const;
const sizes = (identity: { candidates: readonly { size?: string }[] }) => identity.candidates.map(({ size }) => size);
const cautions = (identity: { cautions: readonly { code: string }[] }) => identity.cautions.map(({ code }) => code);

describe('the size of a measured wire', () => {
  it.each([
    // facts of the trade: wire runs over the trade size, so the nearest fraction is the wrong rule
    ['0.27 in', '1/4'],
    ['0.35 in', '5/16'],
    ['0.395 in', '3/8'],
    ['0.40 in', '3/8'],
  ] as const)('takes a worn sample of %s for %s chain', (wireDiameter, size) => {
    const identity = identifyChain({ ratings, wireDiameter, worn: true });
    expect(identity.countAs).toEqual({ size, grade: 30 });
    expect(identity.candidates[0]).toMatchObject({ size, confidence: 'measured' });
  });

  it.each([
    // bands of new wire: at each bound, just outside it
    [3.76, '1/8'],
    [4.08, '1/8'],
    [4.09, '1/8'], // between bands: the lower size
    [5.16, '1/8'],
    [5.17, '3/16'],
    [5.61, '3/16'],
    [6, '3/16'], // no size of North America
    [6.57, '3/16'],
    [6.58, '1/4'],
    [7.14, '1/4'],
    [7.15, '1/4'],
    [7.51, '1/4'],
    [7.52, '5/16'],
    [8.16, '5/16'],
    [8.17, '5/16'],
    [8.18, '5/16'],
    [8.87, '5/16'],
    [9.39, '5/16'],
    [9.4, '3/8'],
    [10.2, '3/8'],
    [11.18, '3/8'],
    [11.19, '7/16'],
    [12.14, '7/16'],
    [12.21, '7/16'],
    [12.22, '1/2'],
    [13.26, '1/2'],
    [15.03, '1/2'],
    [15.04, '5/8'],
    [16.32, '5/8'],
    [18.99, '5/8'],
    [19, '3/4'],
    [20.89, '3/4'],
    [20.9, '3/4'], // overlap: the smaller
    [21, '3/4'],
    [21.01, '7/8'],
    [23.1, '7/8'],
    [24.69, '7/8'],
    [24.7, '1'],
    [30.39, '1'],
    [30.4, '1-1/4'],
    [33.6, '1-1/4'],
  ])('reads %d mm as %s', (wire, size) => {
    expect(sizes(identifyChain({ ratings, wireDiameter: mm(wire) }))[0]).toBe(size);
  });

  it('knows no size below the smallest band', () => {
    const identity = identifyChain({ ratings, wireDiameter: mm(3.759) });
    expect(identity).toMatchObject({ candidates: [], countAs: 'no credit', because: { code: 'TOO_THIN' } });
    expect(identifyChain({ ratings, mark: '70', wireDiameter: mm(3.759) })).toMatchObject({
      candidates: [{ grade: 70, confidence: 'marked' }],
      countAs: 'no credit',
    });
  });

  it('refuses wire above the largest band instead of extrapolating', () => {
    expect(issueOf(() => identifyChain({ ratings, wireDiameter: mm(33.601) }))).toMatchObject({
      code: 'UNKNOWN_SIZE',
      path: 'wireDiameter',
    });
  });

  it('decides exactly in inches too: 6.58 mm is 0.259055... in', () => {
    // 0.25906 in = 6.580124 mm; 0.25905 in = 6.57987 mm
    expect(sizes(identifyChain({ ratings, wireDiameter: '0.25906 in' }))[0]).toBe('1/4');
    expect(sizes(identifyChain({ ratings, wireDiameter: '0.25905 in' }))[0]).toBe('3/16');
  });

  it('lists both sizes of an overlap and says which counts', () => {
    const identity = identifyChain({ ratings: usWeldedChain_2003, mark: '43', wireDiameter: mm(20.95) });
    expect(sizes(identity)).toEqual(['3/4', '7/8']);
    expect(identity.countAs).toEqual({ size: '3/4', grade: 43 });
    expect(cautions(identity)).toContain('OVERLAP');
  });

  it('lists the next larger size of a worn chain, and counts the smaller', () => {
    const fresh = identifyChain({ ratings, mark: '70', wireDiameter: mm(10) });
    expect(sizes(fresh)).toEqual(['3/8']);
    const worn = identifyChain({ ratings, mark: '70', wireDiameter: mm(10), worn: true });
    expect(worn.candidates).toMatchObject([
      { size: '3/8', grade: 70, confidence: 'marked' },
      { size: '7/16', grade: 70, because: { code: 'MAYBE_WORN' } },
    ]);
    expect(worn.countAs).toEqual({ size: '3/8', grade: 70 });
    // 8.0 and 8.7 mm are one trade size: the next larger one is 3/8
    expect(sizes(identifyChain({ ratings, mark: '70', wireDiameter: mm(8), worn: true }))).toEqual(['5/16', '3/8']);
    // nothing is larger than the largest
    expect(sizes(identifyChain({ ratings, wireDiameter: mm(32), worn: true }))).toEqual(['1-1/4']);
  });

  it('warns between bands once the 5 percent band is left too', () => {
    // 7 mm: new to 7.14, 5 percent to 7.35
    const codes = (wire: number) => cautions(identifyChain({ ratings, wireDiameter: mm(wire) }));
    expect(codes(7.35)).not.toContain('BETWEEN_BANDS');
    expect(codes(7.36)).toContain('BETWEEN_BANDS');
    expect(sizes(identifyChain({ ratings, wireDiameter: mm(7.36) }))).toEqual(['1/4', '9/32', '5/16']);
  });

  it('only warns with the 5 percent band: 12.4 mm is new 1/2, and within 5 percent of 7/16', () => {
    const identity = identifyChain({ ratings, wireDiameter: mm(12.4) });
    expect(identity.countAs).toEqual({ size: '1/2', grade: 30 });
    expect(cautions(identity)).toContain('IN_WIDE_BAND');
    // 11.9 mm: 5 percent ends at 12.5
    expect(cautions(identifyChain({ ratings, wireDiameter: mm(12.5) }))).toContain('IN_WIDE_BAND');
    expect(cautions(identifyChain({ ratings, wireDiameter: mm(12.51) }))).not.toContain('IN_WIDE_BAND');
    // 8.3 mm lies in the bands of 8 and of 8.7 mm: one trade size, no warning
    expect(cautions(identifyChain({ ratings, wireDiameter: mm(8.3) }))).not.toContain('IN_WIDE_BAND');
  });
});

describe('the mark', () => {
  it.each([
    ['3', 30],
    ['300', 30],
    ['PC', 30],
    ['43', 43],
    ['430', 43],
    ['HT', 43],
    ['7', 70],
    ['70', 70],
    ['G70', 70],
    ['g7', 70],
    ['Grade 70', 70],
    ['G-70', 70],
    [' 70 ', 70],
    ['8', 80],
    ['T', 80],
    ['G80', 80],
    ['10', 100],
    ['V', 100],
    ['1000', 100],
  ] as const)('reads %j as grade %d', (mark, grade) => {
    const identity = identifyChain({ ratings, mark, wireDiameter: '10 mm' });
    expect(identity.countAs).toEqual({ size: '3/8', grade });
    expect(identity.candidates).toMatchObject([{ size: '3/8', grade, confidence: 'marked' }]);
    expect(identity.assumptions).toEqual([]);
  });

  it('warns that 4 is another grade in Europe', () => {
    const identity = identifyChain({ ratings, mark: '4', wireDiameter: '10 mm' });
    expect(identity.countAs).toEqual({ size: '3/8', grade: 43 });
    expect(cautions(identity)).toContain('AMBIGUOUS_MARK');
    const [caution] = inWords(identity.cautions).filter(({ code }) => code === 'AMBIGUOUS_MARK');
    expect(caution?.text).toMatch(/^The mark 4 counts as grade 43: .*Europe/);
    expect(cautions(identifyChain({ ratings, mark: '43', wireDiameter: '10 mm' }))).not.toContain('AMBIGUOUS_MARK');
  });

  it('keeps the provenance of marks that are from memory', () => {
    const provenance = (mark: string) => identifyChain({ ratings, mark }).sources[0]?.provenance;
    expect(provenance('70')).toBe('read');
    expect(provenance('G70')).toBe('memory');
  });

  it('counts a mark that names no grade as no mark', () => {
    const identity = identifyChain({ ratings, mark: 'XYZ', wireDiameter: '10 mm' });
    expect(identity.countAs).toEqual({ size: '3/8', grade: 30 });
    expect(cautions(identity)).toContain('UNKNOWN_MARK');
    expect(identifyChain({ ratings: usWeldedChain_2003, mark: 'constructor', wireDiameter: '10 mm' }).countAs).toBe(
      'no credit',
    );
  });

  it('needs the wire before a marked chain counts', () => {
    const identity = identifyChain({ ratings, mark: '70' });
    expect(identity).toMatchObject({
      candidates: [{ grade: 70, confidence: 'marked' }],
      countAs: 'undetermined',
      because: { code: 'MEASURE_THE_WIRE' },
    });
    expect(identity.candidates[0]?.size).toBeUndefined();
  });

  it('decides between sizes of one wire: 7 mm is 1/4 or 9/32, 5.5 mm is 3/16 or 7/32', () => {
    const inAssociation = (mark: string, wire: number) =>
      identifyChain({ ratings: usWeldedChain_2003, mark, wireDiameter: mm(wire) }).countAs;
    expect(inAssociation('70', 7)).toEqual({ size: '1/4', grade: 70 });
    expect(inAssociation('80', 7)).toEqual({ size: '9/32', grade: 80 });
    expect(inAssociation('30', 5.5)).toEqual({ size: '3/16', grade: 30 });
    expect(inAssociation('100', 5.5)).toEqual({ size: '7/32', grade: 100 });
  });

  it('counts 9/32 alloy on the 1/4 in line, where 49 CFR 393.108 rates it', () => {
    const identity = identifyChain({ ratings, mark: '80', wireDiameter: '7 mm' });
    expect(identity.candidates).toMatchObject([{ size: '9/32', grade: 80 }]);
    expect(identity.countAs).toEqual({ size: '1/4', grade: 80 });
    expect(identity.because.code).toBe('SAME_WIRE');
  });

  it('warns when a marked chain is thinner than its grade is made: a worn 8.7 mm link looks like new 8 mm alloy', () => {
    expect(cautions(identifyChain({ ratings, mark: '70', wireDiameter: mm(8.17) }))).toContain('THIN_FOR_GRADE');
    expect(cautions(identifyChain({ ratings, mark: '70', wireDiameter: mm(8.18) }))).not.toContain('THIN_FOR_GRADE');
    expect(cautions(identifyChain({ ratings, mark: '80', wireDiameter: mm(8) }))).not.toContain('THIN_FOR_GRADE');
  });

  it.each([
    // grade 120 has no table; no default under 1/4, above 5/8, or for 7/16 alloy in 49 CFR 393.108
    ['120', 10, 'NO_DEFAULT_FOR_GRADE'],
    ['80', 5.5, 'NOT_LISTED'],
    ['70', 5.5, 'NOT_LISTED'],
    ['70', 20, 'NOT_LISTED'],
    ['80', 11.9, 'NOT_LISTED'],
    ['100', 11.9, 'NOT_LISTED'],
  ])('gives mark %s on %d mm wire no credit', (mark, wire, code) => {
    const identity = identifyChain({ ratings, mark, wireDiameter: mm(wire) });
    expect(identity.countAs).toBe('no credit');
    expect(identity.because.code).toBe(code);
  });
});

describe('a chain without a mark', () => {
  it('counts as grade 30 of its size under 49 CFR 393.108, as an assumption with the clause', () => {
    const identity = identifyChain({ ratings, wireDiameter: '7 mm' });
    expect(identity.countAs).toEqual({ size: '1/4', grade: 30 });
    expect(identity.because.text).toContain('393.108(d)');
    expect(identity.assumptions.map(({ code }) => code)).toEqual(['UNMARKED_CHAIN']);
    // 1,300 lb, and not the 3,500 lb of 9/32 alloy
    expect(sizes(identity)).toEqual(['1/4', '9/32']);
    expect(identity.candidates.every(({ grade }) => grade === undefined)).toBe(true);
  });

  it.each([5.5, 6])('has no default at %d mm: 3/16 is not in 49 CFR 393.108', (wire) => {
    const identity = identifyChain({ ratings, wireDiameter: mm(wire) });
    expect(sizes(identity)[0]).toBe('3/16');
    expect(identity.countAs).toBe('no credit');
    expect(identity.because).toMatchObject({ code: 'NOT_LISTED', params: { size: '3/16', grade: 30 } });
  });

  it.each([4, 20, 32])('has no default at %d mm either', (wire) => {
    expect(identifyChain({ ratings, wireDiameter: mm(wire) }).countAs).toBe('no credit');
  });

  it('counts as nothing under a table that gives it nothing, measured or not', () => {
    for (const wireDiameter of [undefined, '10 mm'] as const) {
      const identity = identifyChain({
        ratings: usWeldedChain_2003,
        finish: 'yellow',
        ...(wireDiameter === undefined ? {} : { wireDiameter }),
      });
      expect(identity).toMatchObject({ countAs: 'no credit', because: { code: 'UNMARKED_NOT_CREDITED' } });
    }
  });

  it('feeds chainRating with what it counts as', () => {
    const { countAs } = identifyChain({ ratings, wireDiameter: '0.27 in' });
    if (typeof countAs !== 'object') return expect.unreachable();
    // 49 CFR 393.108, grade 30, 1/4 in: 1,300 lb
    expect(chainRating({ ratings, ...countAs }).workingLoadLimit.value).toBe(1300);
  });
});

describe('the finish', () => {
  it('suggests grade 70 by yellow chromate, and counts as nothing', () => {
    for (const finish of ['yellow', 'yellow-chromate'] as const) {
      const identity = identifyChain({ ratings, wireDiameter: '10 mm', finish });
      expect(identity.candidates.at(-1)).toMatchObject({ size: '3/8', grade: 70, confidence: 'suggested' });
      expect(identity.countAs).toEqual({ size: '3/8', grade: 30 });
      expect(cautions(identity)).toContain('FINISH_IS_NO_PROOF');
      expect(identity.sources.some(({ provenance }) => provenance === 'common practice')).toBe(true);
    }
  });

  it('suggests a grade even alone, and never decides', () => {
    const identity = identifyChain({ ratings, finish: 'plain' });
    expect(identity.candidates).toMatchObject([
      { grade: 30, confidence: 'suggested' },
      { grade: 43, confidence: 'suggested' },
    ]);
    expect(identity.countAs).toBe('undetermined');
  });

  it('gives way to the mark', () => {
    const identity = identifyChain({ ratings, mark: '43', wireDiameter: '10 mm', finish: 'yellow' });
    expect(identity.candidates).toHaveLength(1);
    expect(identity.countAs).toEqual({ size: '3/8', grade: 43 });
    expect(cautions(identity)).toContain('FINISH_IGNORED');
    expect(cautions(identifyChain({ ratings, mark: '70', finish: 'yellow' }))).not.toContain('FINISH_IGNORED');
  });
});

describe('a table of metric sizes', () => {
  // a made-up table, to see that nothing depends on inches
  const metric = {
    ...usWeldedChain_2003,
    id: 'made-up',
    chain: {
      ...usWeldedChain_2003.chain,
      rows: { '6 mm': { 80: { wll_lb: 2, wll_kg: 1 } }, '8 mm': { 80: { wll_lb: 2, wll_kg: 1 } } },
    },
  } satisfies RatingTable;

  it('places the wire among metric sizes only', () => {
    const countAs = (wire: number) => identifyChain({ ratings: metric, mark: '8', wireDiameter: mm(wire) }).countAs;
    expect(countAs(6)).toEqual({ size: '6 mm', grade: 80 });
    expect(countAs(8.7)).toEqual({ size: '8 mm', grade: 80 });
    expect(countAs(7)).toBe('no credit');
  });
});

describe('misuse', () => {
  it.each([
    [undefined, 'UNKNOWN_RATING_TABLE'],
    [{ ratings }, 'MISSING_FIELD'],
    [{ ratings, worn: true }, 'MISSING_FIELD'],
    [{ ratings: 'us-49cfr393-108-2024', mark: '70' }, 'UNKNOWN_RATING_TABLE'],
    [{ ratings, finish: 'purple' }, 'UNKNOWN_VALUE'],
    [{ ratings, finish: 'constructor' }, 'UNKNOWN_VALUE'],
    [{ ratings, mark: 70 }, 'UNKNOWN_VALUE'],
    [{ ratings, mark: ' ' }, 'UNKNOWN_VALUE'],
    [{ ratings, mark: '7'.repeat(25) }, 'UNKNOWN_VALUE'],
    [{ ratings, wireDiameter: '0 mm' }, 'NOT_POSITIVE'],
    [{ ratings, wireDiameter: '' }, 'TEXT_NOT_A_QUANTITY'],
    [{ ratings, mark: '70', wireDiameter: null }, 'NOT_A_QUANTITY'],
    [{ ratings, mark: '70', wireDiameter: 0 }, 'NOT_A_QUANTITY'],
    [{ ratings, wireDiameter: '3/8' }, 'TEXT_NOT_A_QUANTITY'],
    [{ ratings, wireDiameter: '3 lb' }, 'WRONG_KIND'],
    [{ ratings, wireDiameter: { value: Number.NaN, unit: 'mm' } }, 'NOT_FINITE'],
  ])('%#: gives %s', (input, code) => {
    expect(issueOf(() => identifyChain(input as never)).code).toBe(code);
  });

  it('gives plain data: the same through JSON', () => {
    const identity = identifyChain({ ratings, mark: '70', wireDiameter: '0.35 in', finish: 'yellow' });
    const again = identifyChain({ ratings, mark: '70', wireDiameter: '0.35 in', finish: 'yellow' });
    expect(JSON.stringify(identity)).toBe(JSON.stringify(again));
    expect(JSON.parse(JSON.stringify(identity))).toMatchObject({
      inputs: { ratings: 'us-49cfr393-108-2024' },
      countAs: { size: '5/16', grade: 70 },
    });
  });
});
