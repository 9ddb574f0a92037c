// Ratings of single chains. The expected figures are a second list, typed from the table printed in
// 49 CFR 393.108 and not from reference-tables/.
import { type ChainRating, chainRating, us49cfr393_108_2024, usWeldedChain_2003 } from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

const law = us49cfr393_108_2024;
const welded = usWeldedChain_2003;

/** A call as plain JavaScript makes it: any size, any grade. */
const rate = chainRating as unknown as (input: Record<string, unknown>) => ChainRating;

const codes = (notes: readonly { code: string }[]) => notes.map(({ code }) => code);

// 49 CFR 393.108, table for chain: size, then lb and kg of grades 30, 43, 70, 80, 100. A dash is a blank cell.
const PRINTED = `
  1/4     1300 580    2600 1180    3150 1430    3500 1570    4300 1950
  5/16    1900 860    3900 1770    4700 2130    4500 2000    5700 2600
  3/8     2650 1200   5400 2450    6600 2990    7100 3200    8800 4000
  7/16    3700 1680   7200 3270    8750 3970       -    -       -    -
  1/2     4500 2030   9200 4170   11300 5130   12000 5400   15000 6800
  5/8     6900 3130  13000 5910   15800 7170   18100 8200   22600 10300
`;
const GRADES = [30, 43, 70, 80, 100];
interface Cell {
  readonly size: string;
  readonly grade: number;
  readonly lb: number;
  readonly kg: number;
}
const cells = PRINTED.trim()
  .split('\n')
  .flatMap((line): Cell[] => {
    const [size = '', ...figures] = line.trim().split(/\s+/);
    return GRADES.map((grade, at) => ({ size, grade, lb: Number(figures[2 * at]), kg: Number(figures[2 * at + 1]) }));
  });
const listed = cells.filter(({ lb }) => !Number.isNaN(lb));
const blank = cells.filter(({ lb }) => Number.isNaN(lb));

describe('every cell of 393.108', () => {
  it('has 28 values and 2 blanks', () => {
    expect([listed.length, blank.length]).toEqual([28, 2]); // 6 sizes × 5 grades = 30, less 7/16 in 80 and 100
  });

  test.each(listed)('$size grade $grade: $lb lb, printed beside it $kg kg', ({ size, grade, lb, kg }) => {
    const result = rate({ ratings: law, size, grade });
    expect(result.workingLoadLimit).toEqual({ value: lb, unit: 'lb' });
    expect(result).toMatchObject({ basis: 'table', size, grade, ratings: 'us-49cfr393-108-2024' });
    expect(rate({ ratings: law, size, grade, units: 'us' }).workingLoadLimit).toEqual({ value: lb, unit: 'lb' });
    // The kg column was rounded on its own: it is printed, never converted.
    expect(rate({ ratings: law, size, grade, units: 'si' }).workingLoadLimit).toEqual({ value: kg, unit: 'kg' });
  });

  test.each(blank)('$size grade $grade is blank: NO_VALUE_IN_TABLE', ({ size, grade }) => {
    const issue = issueOf(() => rate({ ratings: law, size, grade }));
    expect(issue).toMatchObject({ code: 'NO_VALUE_IN_TABLE', path: 'grade', received: String(grade) });
    expect(issue.remedy).toContain('markedWll');
  });

  it('cites the regulation, its edition and its table', () => {
    const { sources, steps } = chainRating({ ratings: law, size: '5/16', grade: 70 });
    expect(sources).toEqual([expect.objectContaining({ edition: '2024', provenance: 'read' })]);
    expect(sources[0]?.document).toContain('49 CFR Part 393');
    expect(sources[0]?.clause).toContain('393.108');
    expect(steps).toHaveLength(1);
    expect(steps[0]).toMatchObject({ symbol: 'WLL', result: { value: 4700, unit: 'lb' } });
    expect(steps[0]?.clause).toContain('393.108');
  });

  it('does not take a higher grade for a stronger chain: 5/16 grade 80 is below grade 70', () => {
    const seventy = chainRating({ ratings: law, size: '5/16', grade: 70 }).workingLoadLimit.value;
    const eighty = chainRating({ ratings: law, size: '5/16', grade: 80 }).workingLoadLimit.value;
    expect([seventy, eighty]).toEqual([4700, 4500]);
  });

  it('uses the federal 8,800 lb for 3/8 grade 100, where a state manual prints 8,600', () => {
    expect(chainRating({ ratings: law, size: '3/8', grade: 100 }).workingLoadLimit.value).toBe(8800);
  });
});

describe('a chain that carries no readable mark', () => {
  // 393.108(d): grade 30 proof coil of its size.
  test.each(listed.filter(({ grade }) => grade === 30))('$size counts as grade 30: $lb lb', ({ size, lb, kg }) => {
    const result = rate({ ratings: law, size });
    expect(result).toMatchObject({ workingLoadLimit: { value: lb, unit: 'lb' }, basis: 'unmarked', grade: 30 });
    expect(result.assumptions).toEqual([expect.objectContaining({ code: 'UNMARKED_CHAIN' })]);
    expect(result.assumptions[0]?.text).toContain('49 CFR 393.108(d)');
    expect(rate({ ratings: law, size, units: 'si' }).workingLoadLimit).toEqual({ value: kg, unit: 'kg' });
  });

  it('has no rating in a product specification, which is no road rule', () => {
    expect(issueOf(() => chainRating({ ratings: welded, size: '3/8' }))).toMatchObject({
      code: 'MISSING_FIELD',
      path: 'grade',
    });
  });

  it('has no default for a size the table lacks', () => {
    for (const size of ['3/16', '7/32', '9/32', '3/4']) {
      expect(issueOf(() => rate({ ratings: law, size }))).toMatchObject({ code: 'UNKNOWN_SIZE', path: 'size' });
    }
  });
});

describe("the maker's mark governs", () => {
  // The table has 6,600 lb for 3/8 grade 70.
  it.each(['5000 lb', '6599 lb', '6600 lb', '6601 lb', '8000 lb'] as const)('%s, up or down', (markedWll) => {
    const result = chainRating({ ratings: law, size: '3/8', grade: 70, markedWll });
    expect(`${result.workingLoadLimit}`).toBe(markedWll);
    expect(result).toMatchObject({ basis: 'marked', grade: 70 });
    expect(result.steps[0]?.values).toContainEqual(['table WLL, not used', { value: 6600, unit: 'lb' }]);
    expect(result.sources).toEqual([expect.objectContaining({ document: expect.stringContaining("maker's mark") })]);
  });

  it('rates what the table does not list', () => {
    expect(chainRating({ ratings: law, size: '9/32', grade: 80, markedWll: '3500 lb' })).toMatchObject({
      workingLoadLimit: { value: 3500, unit: 'lb' },
      basis: 'marked',
      size: '9/32',
      grade: 80,
    });
    expect(chainRating({ ratings: law, size: '7/16', grade: 80, markedWll: '9000 lb' }).workingLoadLimit.value).toBe(
      9000,
    );
    expect(chainRating({ ratings: law, size: '3/8', grade: 120, markedWll: '10600 lb' })).toMatchObject({
      workingLoadLimit: { value: 10600, unit: 'lb' },
      grade: 120,
    });
    expect(chainRating({ ratings: law, size: '8 mm', markedWll: '2000 kg' }).basis).toBe('marked');
  });

  it('needs no grade', () => {
    const result = chainRating({ ratings: law, size: '3/8', markedWll: '6600 lb' });
    expect(result).toMatchObject({ basis: 'marked', workingLoadLimit: { value: 6600, unit: 'lb' } });
    expect(result).not.toHaveProperty('grade');
    expect(result.assumptions).toEqual([]);
  });

  it('crosses from force to mass with standard gravity, and shows it', () => {
    // 1 lbf = 0.453 592 37 kg × 9.806 65 m/s² = 4.448 221 615 260 5 N exactly, so this is 1,000 lbf: 1,000 lb.
    const result = chainRating({ ratings: law, size: '3/8', markedWll: '4.4482216152605 kN' });
    expect(result.workingLoadLimit.unit).toBe('lb');
    expect(result.workingLoadLimit.value).toBeCloseTo(1000, 10);
    expect(result.steps[0]?.expression).toBe('marked WLL / g');
    expect(result.steps[0]?.values).toContainEqual(['g', { value: 9.80665, unit: 'm/s2' }]);
    // 9.80665 kN = 1,000 kg · g exactly.
    const si = chainRating({ ratings: law, size: '3/8', markedWll: '9.80665 kN', units: 'si' });
    expect(si.workingLoadLimit).toEqual({ value: 1000, unit: 'kg' });
    // 20 kN = 20,000 / 4.448 221 615 260 5 lbf = 4,496.178 86 lbf.
    expect(chainRating({ ratings: law, size: '3/8', markedWll: '20 kN' }).workingLoadLimit.value).toBeCloseTo(
      4496.17886,
      4,
    );
    // A kilogram-force is a kilogram under standard gravity; a daN is not one (2 % less).
    expect(chainRating({ ratings: law, size: '3/8', markedWll: '2000 kgf', units: 'si' }).workingLoadLimit.value).toBe(
      2000,
    );
    // 2,000 daN = 20,000 N / 9.806 65 = 2,039.432 43 kg.
    expect(
      chainRating({ ratings: law, size: '3/8', markedWll: '2000 daN', units: 'si' }).workingLoadLimit.value,
    ).toBeCloseTo(2039.43243, 4);
  });

  it('converts a mark in kilograms exactly', () => {
    // 1 lb = 0.453 592 37 kg exactly: 2,993.709 642 kg = 6,600 lb.
    const result = chainRating({ ratings: law, size: '3/8', markedWll: '2993.709642 kg' });
    expect(result.workingLoadLimit.value).toBeCloseTo(6600, 9);
    expect(result.steps[0]?.expression).toBe('marked WLL');
    // A mark in kg read in kg is left alone: it is not the printed kg column and not a round trip through lb.
    const si = chainRating({ ratings: law, size: '3/8', grade: 70, markedWll: '2995 kg', units: 'si' });
    expect(si.workingLoadLimit).toEqual({ value: 2995, unit: 'kg' });
  });

  it('is refused when it is no load', () => {
    const mark = (markedWll: unknown) => issueOf(() => rate({ ratings: law, size: '3/8', markedWll }));
    expect(mark('0 lb')).toMatchObject({ code: 'NOT_POSITIVE', path: 'markedWll' });
    expect(mark('-1 lb')).toMatchObject({ code: 'NEGATIVE', path: 'markedWll' });
    expect(mark('6 ft')).toMatchObject({ code: 'WRONG_KIND', path: 'markedWll' });
    expect(mark('6,600 lb')).toMatchObject({ code: 'AMBIGUOUS_NUMBER', path: 'markedWll' });
    expect(mark('3 ton')).toMatchObject({ code: 'AMBIGUOUS_UNIT', path: 'markedWll' });
    expect(mark({ value: Number.NaN, unit: 'lb' })).toMatchObject({ code: 'NOT_FINITE', path: 'markedWll' });
    expect(mark(6600)).toMatchObject({ code: 'NOT_A_QUANTITY', path: 'markedWll' });
    expect(mark(null)).toMatchObject({ code: 'NOT_A_QUANTITY', path: 'markedWll' });
  });

  it('still needs a grade of chain, where one is given', () => {
    for (const grade of [75, Number.NaN, 'seventy', null, {}]) {
      expect(
        issueOf(() => rate({ ratings: law, size: '3/8', grade, markedWll: '6600 lb' })),
        String(grade),
      ).toMatchObject({
        code: 'UNKNOWN_GRADE',
        path: 'grade',
      });
    }
  });

  it('still needs a trade size', () => {
    expect(issueOf(() => rate({ ratings: law, size: '1/3', markedWll: '6600 lb' })).code).toBe('UNKNOWN_SIZE');
    expect(issueOf(() => rate({ ratings: law, markedWll: '6600 lb' })).code).toBe('UNKNOWN_SIZE');
  });
});

describe('what no table answers', () => {
  it('names the sizes it has for a size it lacks, and does not interpolate', () => {
    for (const size of ['9/32', '3/16', '7/32', '3/4', '7/8', '1', '8 mm', '0.3125', '5/16 in', '', 'constructor']) {
      const issue = issueOf(() => rate({ ratings: law, size, grade: 70 }));
      expect(issue, size).toMatchObject({ code: 'UNKNOWN_SIZE', path: 'size' });
      expect(issue.expected).toContain('1/4, 5/16, 3/8, 7/16, 1/2, 5/8');
    }
  });

  it('has no value for grade 120: only its mark rates it', () => {
    for (const ratings of [law, welded]) {
      const issue = issueOf(() => rate({ ratings, size: '3/8', grade: 120 }));
      expect(issue).toMatchObject({ code: 'NO_VALUE_IN_TABLE', path: 'grade' });
      expect(issue.remedy).toContain('markedWll');
    }
  });

  it('refuses a grade that does not exist', () => {
    for (const grade of [0, 7, 40, 63, 75, -70, 70.5, Number.NaN, Number.POSITIVE_INFINITY, 'seventy', null]) {
      const issue = issueOf(() => rate({ ratings: law, size: '3/8', grade }));
      expect(issue, String(grade)).toMatchObject({ code: 'UNKNOWN_GRADE', path: 'grade' });
    }
  });

  it('wants a rating table', () => {
    for (const ratings of [undefined, null, 'us-49cfr393-108-2024', {}, 108]) {
      expect(issueOf(() => rate({ ratings, size: '3/8', grade: 70 }))).toMatchObject({
        code: 'UNKNOWN_RATING_TABLE',
        path: 'ratings',
      });
    }
  });

  it('refuses units it does not have', () => {
    // The pound and the kilogram figure of a cell differ by a factor of two: a wrong word here must not pass.
    for (const units of ['SI', 'metric', 'kg', null, 1]) {
      expect(
        issueOf(() => rate({ ratings: law, size: '5/16', grade: 70, units })),
        String(units),
      ).toMatchObject({
        code: 'UNKNOWN_VALUE',
        path: 'units',
      });
    }
  });

  it('wants an argument', () => {
    for (const input of [undefined, null]) {
      expect(() => rate(input as never)).toThrowError(expect.objectContaining({ name: 'RiggingError' }));
    }
  });
});

describe('welded chain by grade, specification of 2003', () => {
  // Typed from the dossier's table of North American chain; MBF = design factor × WLL, 3 for grade 43, else 4.
  const table: [size: string, grade: number, lb: number, factor: number, mbf: number][] = [
    ['1/8', 30, 400, 4, 1600],
    ['3/16', 30, 800, 4, 3200],
    ['1/4', 30, 1300, 4, 5200],
    ['3/4', 30, 10600, 4, 42400],
    ['1', 30, 17900, 4, 71600],
    ['1/4', 43, 2600, 3, 7800],
    ['5/16', 43, 3900, 3, 11700],
    ['3/8', 43, 5400, 3, 16200],
    ['1/2', 43, 9200, 3, 27600],
    ['7/8', 43, 24500, 3, 73500],
    ['1/4', 70, 3150, 4, 12600],
    ['5/16', 70, 4700, 4, 18800],
    ['3/8', 70, 6600, 4, 26400],
    ['7/16', 70, 8750, 4, 35000],
    ['3/4', 70, 24700, 4, 98800],
    ['7/32', 80, 2100, 4, 8400],
    ['9/32', 80, 3500, 4, 14000],
    ['5/16', 80, 4500, 4, 18000],
    ['1', 80, 47700, 4, 190800],
    ['1-1/4', 80, 72300, 4, 289200],
    ['7/32', 100, 2700, 4, 10800],
    ['9/32', 100, 4300, 4, 17200],
    ['3/8', 100, 8800, 4, 35200],
    ['7/8', 100, 42700, 4, 170800],
  ];
  test.each(table)('%s grade %d: %d lb, design factor %d, breaking force %d lbf', (size, grade, lb, factor, mbf) => {
    const result = rate({ ratings: welded, size, grade });
    expect(result).toMatchObject({
      workingLoadLimit: { value: lb, unit: 'lb' },
      designFactor: factor,
      minimumBreakingForce: { value: mbf, unit: 'lbf' },
      basis: 'table',
      ratings: 'us-welded-chain-2003',
    });
    expect(factor * lb).toBe(mbf);
  });

  it('gives the breaking force in kilonewtons for si', () => {
    // 26,400 lbf × 4.448 221 615 260 5 N = 117,433.05 N.
    const { minimumBreakingForce, workingLoadLimit } = chainRating({
      ratings: welded,
      size: '3/8',
      grade: 70,
      units: 'si',
    });
    expect(minimumBreakingForce?.unit).toBe('kN');
    expect(minimumBreakingForce?.value).toBeCloseTo(117.43305, 5);
    expect(workingLoadLimit).toEqual({ value: 2990, unit: 'kg' });
  });

  it('keeps memory visible: 3/4 grade 70 was not read', () => {
    expect(chainRating({ ratings: welded, size: '3/4', grade: 70 }).sources[0]?.provenance).toBe('memory');
    expect(chainRating({ ratings: welded, size: '3/8', grade: 70 }).sources[0]?.provenance).toBe('read');
    // 7/8 grade 80: pounds read in the OSHA tables, kilograms from memory.
    expect(chainRating({ ratings: welded, size: '7/8', grade: 80 }).sources[0]?.provenance).toBe('read');
    expect(chainRating({ ratings: welded, size: '7/8', grade: 80, units: 'si' }).sources[0]?.provenance).toBe('memory');
  });

  it('has no breaking force in the table of the regulation, nor for a marked chain', () => {
    expect(chainRating({ ratings: law, size: '3/8', grade: 70 })).not.toHaveProperty('minimumBreakingForce');
    const marked = chainRating({ ratings: welded, size: '3/8', grade: 70, markedWll: '6000 lb' });
    expect(marked).not.toHaveProperty('minimumBreakingForce');
    expect(marked).not.toHaveProperty('designFactor');
  });
});

describe('the result', () => {
  it('says what the chain is not for', () => {
    // Only alloy chain, grade 80 and up, is for overhead lifting (ASTM A391, A973; A413 excludes it for 30, 43, 70).
    for (const grade of [30, 43, 70]) {
      expect(codes(rate({ ratings: law, size: '3/8', grade }).cautions)).toContain('NOT_FOR_LIFTING');
    }
    expect(codes(rate({ ratings: law, size: '3/8' }).cautions)).toContain('NOT_FOR_LIFTING');
    expect(codes(rate({ ratings: law, size: '3/8', markedWll: '6600 lb' }).cautions)).toContain('NOT_FOR_LIFTING');
    for (const grade of [80, 100]) {
      expect(codes(rate({ ratings: law, size: '3/8', grade }).cautions)).not.toContain('NOT_FOR_LIFTING');
    }
    expect(codes(rate({ ratings: law, size: '3/8', grade: 80 }).cautions)).toEqual(
      expect.arrayContaining(['STRAIGHT_PULL', 'FOLLOW_THE_MARK']),
    );
  });

  it('leaves the steps out, and nothing else, without working', () => {
    const full = chainRating({ ratings: law, size: '3/8', grade: 70 });
    const bare = chainRating({ ratings: law, size: '3/8', grade: 70, working: false });
    expect(bare.steps).toEqual([]);
    expect({ ...bare, steps: full.steps }).toEqual({ ...full });
  });

  it('keeps the assumption of an unmarked chain without working', () => {
    expect(codes(chainRating({ ratings: law, size: '3/8', working: false }).assumptions)).toEqual(['UNMARKED_CHAIN']);
  });

  it('echoes its input with the table as its id', () => {
    expect(chainRating({ ratings: law, size: '3/8', grade: 70, units: 'us' }).inputs).toEqual({
      ratings: 'us-49cfr393-108-2024',
      size: '3/8',
      grade: 70,
      units: 'us',
    });
  });

  it('is plain data, the same on every call', () => {
    const once = chainRating({ ratings: law, size: '3/8', markedWll: '20 kN' });
    const again = chainRating({ ratings: law, size: '3/8', markedWll: '20 kN' });
    expect(JSON.stringify(again)).toBe(JSON.stringify(once));
    expect(JSON.parse(JSON.stringify(once))).toEqual({ ...once });
    expect(structuredClone({ ...once })).toEqual(JSON.parse(JSON.stringify(once)));
  });
});
