// Every kind of part by mark, by table and by the default of its document. The figures are a second list, typed
// from the tables printed in 49 CFR 393.108 and not from reference-tables/; synthetic rope and strapping are
// from memory in both.
import {
  type AssemblyRating,
  assemblyRating,
  euEn12195_3_2001,
  type Part,
  us49cfr393_108_2024,
  us49cfr393_108_chain_2024,
  usWeldedChain_2003,
} from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { issueOf } from '../quantities/issue-of.js';

const law = us49cfr393_108_2024;
const loosely = assemblyRating as unknown as (input: { ratings: unknown; parts: unknown[] }) => AssemblyRating;
const one = (part: Omit<Part, 'id'> | Record<string, unknown>, ratings: unknown = law) => {
  const [rating] = loosely({ ratings, parts: [{ id: 'part', ...part }] }).parts;
  if (rating === undefined) throw new Error('no part');
  return rating;
};

describe('by the mark', () => {
  const kinds = [
    'chain',
    'webbing',
    'wire-rope',
    'fiber-rope',
    'strapping',
    'grab-hook',
    'slip-hook',
    'connecting-link',
    'master-link',
    'clevis',
    'binder',
    'shackle',
    'turnbuckle',
    'winch',
    'anchor',
  ];
  test.each(kinds)('%s', (kind) => {
    const more = kind === 'chain' ? { size: '3/8', grade: 70 } : kind === 'anchor' ? { at: 'vehicle' } : {};
    for (const part of [
      { kind, ...more, markedWll: '3333 lb' },
      { kind, ...more, capacities: { workingLoadLimit: '3333 lb' } },
      { kind, ...more, capacities: { workingLoadLimit: { value: 3333, unit: 'lb' }, lashingCapacity: '9999 daN' } },
    ]) {
      expect(one(part)).toEqual({ id: 'part', kind, workingLoadLimit: { value: 3333, unit: 'lb' }, basis: 'marked' });
    }
  });

  it('governs over the row, up and down', () => {
    // 393.108(b): the marked limit, where it differs from the table.
    expect(one({ kind: 'webbing', width: '2', markedWll: '3335 lb' }).workingLoadLimit).toEqual({
      value: 3335,
      unit: 'lb',
    }); // table 2,000
    expect(one({ kind: 'wire-rope', size: '3/8', markedWll: '2500 lb' }).workingLoadLimit).toEqual({
      value: 2500,
      unit: 'lb',
    }); // table 3,000
    expect(one({ kind: 'grab-hook', size: '3/8', grade: 70, markedWll: '5400 lb' }).workingLoadLimit).toEqual({
      value: 5400,
      unit: 'lb',
    });
    expect(one({ kind: 'fiber-rope', size: '1/2', markedWll: '200 lb' }).workingLoadLimit).toEqual({
      value: 200,
      unit: 'lb',
    }); // default 625
  });

  it('rates chain that the table does not list', () => {
    expect(one({ kind: 'chain', size: '3/4', grade: 70, markedWll: '24700 lb' }).workingLoadLimit?.value).toBe(24700);
    expect(one({ kind: 'chain', size: '9/32', grade: 100, markedWll: '4300 lb' }).workingLoadLimit?.value).toBe(4300);
    expect(one({ kind: 'chain', size: '3/8', grade: 120, markedWll: '10600 lb' }).workingLoadLimit?.value).toBe(10600);
  });
});

describe('webbing', () => {
  test.each([
    ['1-3/4', 1750],
    ['2', 2000],
    ['3', 3000],
    ['4', 4000],
  ] as const)('%s in: %d lb', (width, lb) => {
    expect(one({ kind: 'webbing', width })).toMatchObject({
      workingLoadLimit: { value: lb, unit: 'lb' },
      basis: 'table',
      provenance: 'read',
    });
  });
  it('of another width, or of none, is unknown', () => {
    expect(one({ kind: 'webbing', width: '2-1/2' })).toMatchObject({
      workingLoadLimit: null,
      basis: 'unknown',
      missing: { code: 'NOT_IN_TABLE' },
    });
    expect(one({ kind: 'webbing' })).toMatchObject({ workingLoadLimit: null, missing: { code: 'PART_NOT_MARKED' } });
  });
});

describe('wire rope', () => {
  const rows = [
    ['1/4', 1400],
    ['5/16', 2100],
    ['3/8', 3000],
    ['7/16', 4100],
    ['1/2', 5300],
    ['5/8', 8300],
    ['3/4', 10900],
    ['7/8', 16100],
    ['1', 20900],
  ] as const;
  test.each(rows)('%s in of unknown construction counts as 6x37 fiber core: %d lb', (size, lb) => {
    expect(one({ kind: 'wire-rope', size }).workingLoadLimit).toEqual({ value: lb, unit: 'lb' });
  });
  it('keeps memory visible: the two largest rows were not read', () => {
    expect(one({ kind: 'wire-rope', size: '3/4' }).provenance).toBe('read');
    expect(one({ kind: 'wire-rope', size: '7/8' }).provenance).toBe('memory');
    expect(one({ kind: 'wire-rope', size: '1' }).provenance).toBe('memory');
  });
  it('of known strength counts a quarter of it', () => {
    // 393.108(e)(1).
    expect(one({ kind: 'wire-rope', size: '1/2', nominalStrength: '26600 lbf' })).toMatchObject({
      workingLoadLimit: { value: 6650, unit: 'lbf' },
      basis: 'share of nominal strength',
    });
    // 40 kN / 4 = 10 kN = 10,000 / 4.448 221 615 260 5 lbf = 2,248.089 43 lb.
    const result = loosely({ ratings: law, parts: [{ id: 'rope', kind: 'wire-rope', nominalStrength: '40 kN' }] });
    expect(result.workingLoadLimit?.unit).toBe('lb');
    expect(result.workingLoadLimit?.value).toBeCloseTo(2248.08943, 5);
  });
  it('keeps its mark above its strength', () => {
    expect(one({ kind: 'wire-rope', nominalStrength: '26600 lbf', markedWll: '5000 lb' })).toMatchObject({
      workingLoadLimit: { value: 5000, unit: 'lb' },
      basis: 'marked',
    });
  });
});

describe('fiber rope', () => {
  const SIZES = ['3/8', '7/16', '1/2', '5/8', '3/4', '1'];
  const rows: [material: string, ...pounds: number[]][] = [
    ['manila', 205, 265, 315, 465, 640, 1050],
    ['polypropylene', 400, 525, 625, 925, 1275, 2100],
    ['polyester', 555, 750, 960, 1500, 1880, 3300],
    ['nylon', 278, 410, 525, 935, 1420, 2520],
    ['double-braided-nylon', 336, 502, 655, 1130, 1840, 3250],
  ];
  test.each(rows)('%s', (material, ...pounds) => {
    expect(SIZES.map((size) => one({ kind: 'fiber-rope', material, size }).workingLoadLimit?.value)).toEqual(pounds);
  });
  it('of unknown composition counts as polypropylene, 393.108(c)', () => {
    for (const [at, size] of SIZES.entries()) {
      expect(one({ kind: 'fiber-rope', size })).toMatchObject({
        workingLoadLimit: { value: rows[1]?.[at + 1], unit: 'lb' },
        basis: 'unmarked default',
      });
    }
    const { assumptions } = loosely({ ratings: law, parts: [{ id: 'rope', kind: 'fiber-rope', size: '1/2' }] });
    expect(assumptions.find(({ code }) => code === 'UNMARKED_PART')?.text).toMatch(
      /polypropylene.*49 CFR 393\.108\(c\)/,
    );
  });
  it('of unknown composition is not the lowest row: at 1/2 in it is above nylon', () => {
    expect(one({ kind: 'fiber-rope', size: '1/2' }).workingLoadLimit?.value).toBe(625);
    expect(one({ kind: 'fiber-rope', size: '1/2', material: 'nylon' }).workingLoadLimit?.value).toBe(525);
  });
  it('keeps memory visible: only manila was read', () => {
    expect(one({ kind: 'fiber-rope', material: 'manila', size: '1/2' }).provenance).toBe('read');
    for (const material of ['polypropylene', 'polyester', 'nylon', 'double-braided-nylon', undefined]) {
      expect(one({ kind: 'fiber-rope', material, size: '1/2' }).provenance, material).toBe('memory');
    }
  });
  it('of an unknown material is refused', () => {
    const issue = issueOf(() => one({ kind: 'fiber-rope', material: 'hemp', size: '1/2' }));
    expect(issue).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'parts[0].material' });
  });
});

describe('steel strapping', () => {
  const rows = [
    ['1-1/4', '0.029', 1190],
    ['1-1/4', '0.031', 1190],
    ['1-1/4', '0.035', 1190],
    ['1-1/4', '0.044', 1690],
    ['1-1/4', '0.050', 1690],
    ['1-1/4', '0.057', 1925],
    ['2', '0.044', 2650],
    ['2', '0.050', 2650],
  ] as const;
  test.each(rows)('%s × %s in: %d lb', (width, thickness, lb) => {
    expect(one({ kind: 'strapping', width, thickness }).workingLoadLimit).toEqual({ value: lb, unit: 'lb' });
  });
  it('keeps memory visible', () => {
    expect(one({ kind: 'strapping', width: '2', thickness: '0.050' }).provenance).toBe('memory');
  });
  it('of another size is unknown', () => {
    for (const part of [{ width: '2', thickness: '0.029' }, { width: '3', thickness: '0.044' }, { width: '2' }, {}]) {
      expect(one({ kind: 'strapping', ...part }).basis).toBe('unknown');
    }
  });
});

describe('chain', () => {
  it('by its row, or as grade 30', () => {
    expect(one({ kind: 'chain', size: '5/16', grade: 43 })).toMatchObject({
      workingLoadLimit: { value: 3900, unit: 'lb' },
      basis: 'table',
    });
    expect(one({ kind: 'chain', size: '5/16' })).toMatchObject({
      workingLoadLimit: { value: 1900, unit: 'lb' },
      basis: 'unmarked default',
    });
  });
  it('that exists but is not listed needs its mark', () => {
    const missing = [
      { size: '7/16', grade: 80 },
      { size: '7/16', grade: 100 },
      { size: '3/8', grade: 120 },
      { size: '9/32', grade: 80 },
      { size: '3/4', grade: 70 },
      { size: '8 mm', grade: 80 },
      { size: '3/4' },
      { size: '3/16' },
    ];
    for (const part of missing) {
      expect(one({ kind: 'chain', ...part }), JSON.stringify(part)).toMatchObject({
        workingLoadLimit: null,
        basis: 'unknown',
        missing: { code: 'NOT_IN_TABLE' },
      });
    }
  });
  it('of a size or a grade that nobody makes, or of no size, is refused whatever is marked', () => {
    for (const ratings of [law, usWeldedChain_2003]) {
      for (const more of [{}, { markedWll: '5000 lb' }, { condition: 'damaged' }]) {
        const ask = (part: object) => issueOf(() => one({ kind: 'chain', ...more, ...part }, ratings));
        expect(ask({ size: '5/17' }), JSON.stringify(more)).toMatchObject({
          code: 'UNKNOWN_SIZE',
          path: 'parts[0].size',
        });
        expect(ask({ grade: 70 }).path, JSON.stringify(more)).toBe('parts[0].size');
        for (const grade of [75, '70', null, [70], Symbol('70'), { toString: null }]) {
          expect(ask({ size: '3/8', grade })).toMatchObject({ code: 'UNKNOWN_GRADE', path: 'parts[0].grade' });
        }
      }
    }
  });
  it('unmarked counts as nothing known in a product specification', () => {
    expect(one({ kind: 'chain', size: '3/8' }, usWeldedChain_2003)).toMatchObject({
      workingLoadLimit: null,
      missing: { code: 'PART_NOT_MARKED' },
    });
  });
});

describe('hooks and links of a European class', () => {
  // ASTM A952 sizes North American fittings by their chain; European ones are made to standards of their own
  test.each(['grab-hook', 'slip-hook', 'connecting-link', 'master-link', 'clevis'] as const)(
    '%s marked with class and size alone needs its capacity marked',
    (kind) => {
      const rated = (more: object) =>
        loosely({ ratings: euEn12195_3_2001, parts: [{ id: 'part', kind, size: '10 mm', grade: '8', ...more }] });
      expect(rated({}).parts[0]).toMatchObject({
        workingLoadLimit: null,
        basis: 'unknown',
        missing: { code: 'PART_NOT_MARKED', params: { capacity: 'lashing capacity' } },
      });
      expect(rated({}).assumptions.map(({ code }) => code)).not.toContain('FITTINGS_RATED_AS_CHAIN');
      expect(rated({}).sources.some(({ document }) => document.startsWith('ASTM'))).toBe(false);
      expect(rated({ capacities: { lashingCapacity: '63 kN' } }).parts[0]).toMatchObject({
        workingLoadLimit: { value: 63, unit: 'kN' },
        basis: 'marked',
      });
      // the chain of that class and size is in the table all the same: 63 kN
      expect(rated({ kind: 'chain' }).parts[0]).toMatchObject({ workingLoadLimit: { value: 63 }, basis: 'table' });
    },
  );
});

describe('hooks and links', () => {
  test.each(['grab-hook', 'slip-hook', 'connecting-link', 'master-link', 'clevis'])(
    '%s marked with grade and size counts as that chain',
    (kind) => {
      expect(one({ kind, size: '3/8', grade: 70 })).toEqual({
        id: 'part',
        kind,
        workingLoadLimit: { value: 6600, unit: 'lb' },
        basis: 'as chain of its grade and size',
        provenance: 'derived',
      });
      const { assumptions } = loosely({ ratings: law, parts: [{ id: 'part', kind, size: '3/8', grade: 70 }] });
      expect(assumptions.map(({ code }) => code)).toContain('FITTINGS_RATED_AS_CHAIN');
    },
  );
  test.each(['grab-hook', 'slip-hook', 'connecting-link', 'master-link', 'clevis'])(
    '%s without a mark is unknown: no default is grade 30 for a fitting',
    (kind) => {
      // 393.108(d) speaks of chain.
      for (const part of [{}, { size: '3/8' }, { grade: 70 }]) {
        expect(one({ kind, ...part })).toMatchObject({
          workingLoadLimit: null,
          basis: 'unknown',
          missing: { code: 'PART_NOT_MARKED' },
        });
      }
      expect(one({ kind, size: '7/16', grade: 80 }).missing?.code).toBe('NOT_IN_TABLE');
    },
  );
});

describe('parts that no table rates', () => {
  test.each(['binder', 'shackle', 'turnbuckle', 'winch'])('%s without a mark is unknown', (kind) => {
    expect(one({ kind, size: '3/8' })).toMatchObject({
      workingLoadLimit: null,
      basis: 'unknown',
      missing: { code: 'PART_NOT_MARKED' },
    });
  });
  it('an anchor without a rating is unknown, not unlimited', () => {
    expect(one({ kind: 'anchor', at: 'vehicle' })).toMatchObject({
      workingLoadLimit: null,
      missing: { code: 'ANCHOR_NOT_RATED' },
    });
    expect(one({ kind: 'anchor', at: 'cargo' })).toMatchObject({
      workingLoadLimit: null,
      missing: { code: 'ANCHOR_NOT_RATED' },
    });
  });
  it('an anchor is on the vehicle or on the cargo', () => {
    for (const at of [undefined, 'deck', 1]) {
      expect(
        issueOf(() => one({ kind: 'anchor', at, markedWll: '5000 lb' })),
        String(at),
      ).toMatchObject({
        code: at === undefined ? 'MISSING_FIELD' : 'UNKNOWN_VALUE',
        path: 'parts[0].at',
      });
    }
  });
});

describe('capacities of another system', () => {
  test.each([
    { lashingCapacity: '20 kN' },
    { maximumSecuringLoad: '20 kN' },
    { standardTensionForce: '500 daN' },
    { ratedStrength: '20 kN' },
  ])('%o is no working load limit', (capacities) => {
    expect(one({ kind: 'binder', capacities })).toMatchObject({
      workingLoadLimit: null,
      basis: 'unknown',
      missing: { code: 'OTHER_CAPACITY_SYSTEM' },
    });
    expect(one({ kind: 'anchor', at: 'vehicle', capacities })).toMatchObject({
      workingLoadLimit: null,
      basis: 'unknown',
    });
  });
  it('beside a mark change nothing', () => {
    expect(
      one({ kind: 'binder', markedWll: '5400 lb', capacities: { lashingCapacity: '20 kN' } }).workingLoadLimit,
    ).toEqual({ value: 5400, unit: 'lb' });
  });
  it('do not take away the row: grade and size still identify a chain, and a width a strap', () => {
    // 393.108(b): the table applies where the maker marked no working load limit; a lashing capacity is none.
    expect(
      one({ kind: 'chain', size: '3/8', grade: 80, capacities: { lashingCapacity: '63 kN' } }).workingLoadLimit,
    ).toEqual({ value: 7100, unit: 'lb' });
    expect(one({ kind: 'webbing', width: '2', capacities: { lashingCapacity: '2500 daN' } }).workingLoadLimit).toEqual({
      value: 2000,
      unit: 'lb',
    });
  });
  it('that contradict the mark are refused', () => {
    // markedWll is short for capacities.workingLoadLimit: one part does not carry two.
    const issue = issueOf(() =>
      one({ kind: 'binder', markedWll: '9200 lb', capacities: { workingLoadLimit: '5400 lb' } }),
    );
    expect(issue.code).toBe('CONFLICTING_FIELDS');
    expect(
      one({ kind: 'binder', markedWll: '5400 lb', capacities: { workingLoadLimit: '5400 lb' } }).workingLoadLimit
        ?.value,
    ).toBe(5400);
  });
});

describe('under the chain of 393.108 alone', () => {
  const chainOnly = us49cfr393_108_chain_2024;
  it.each([
    { kind: 'chain', size: '3/8', grade: 70 },
    { kind: 'chain', size: '1/2' },
    { kind: 'chain', size: '7/16', grade: 100, markedWll: '9000 lb' },
    { kind: 'grab-hook', size: '5/16', grade: 43 },
    { kind: 'master-link', size: '1/2' },
    { kind: 'webbing', width: '2', markedWll: '3335 lb' },
    { kind: 'binder' },
    { kind: 'chain', size: '3/8', grade: 70, condition: 'damaged' },
  ])('%j is rated as under the whole', (part) => {
    expect(one(part, chainOnly)).toEqual(one(part));
  });
  it('counts an unmarked chain as grade 30, under the same clause', () => {
    // 393.108(d); table for chain: 3/8 in grade 30 is 2,650 lb.
    const { workingLoadLimit, assumptions } = assemblyRating({
      ratings: chainOnly,
      parts: [{ id: 'chain', kind: 'chain', size: '3/8' }],
    });
    expect(workingLoadLimit).toEqual({ value: 2650, unit: 'lb' });
    expect(assumptions.map(({ code, params }) => [code, params.clause])).toContainEqual([
      'UNMARKED_PART',
      '49 CFR 393.108(d)',
    ]);
  });
  it.each([
    { kind: 'webbing', width: '2' },
    { kind: 'wire-rope', size: '3/8' },
    { kind: 'wire-rope', nominalStrength: '40000 lbf' },
    { kind: 'fiber-rope', size: '1/2' },
    { kind: 'fiber-rope', size: '1/2', material: 'manila' },
    { kind: 'strapping', width: '2', thickness: '0.044' },
  ])('%j needs its mark', (part) => {
    expect(one(part, chainOnly)).toMatchObject({
      workingLoadLimit: null,
      basis: 'unknown',
      missing: { code: 'PART_NOT_MARKED' },
    });
  });
});
