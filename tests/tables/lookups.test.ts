// Looking a value up: the first row, the last, an exact one, between two, outside, and keys that are no keys. Nothing
// is interpolated and nothing is extrapolated, in any table of 49 CFR 393.108 or of the chain specification.
import {
  assemblyRating,
  chainRating,
  type Part,
  type RatingTable,
  us49cfr393_108_2024,
  usWeldedChain_2003,
} from 'chain-rigging';
import { describe, expect, it, test } from 'vitest';
import { chainCell, printedRating, rowOf, sourceOfCell } from '../../src/tables/rating-table.js';
import { issueOf } from '../quantities/issue-of.js';

const law = us49cfr393_108_2024;
const welded = usWeldedChain_2003;

/** Keys that name no row of any table; each must be refused, never coerced into a row. */
const NO_KEYS: readonly unknown[] = [
  Number.NaN,
  Number.POSITIVE_INFINITY,
  -1,
  '',
  ' ',
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  null,
  true,
  {},
  [],
  Symbol('1/4'),
];

describe('rowOf', () => {
  const rows = { '1/4': 1, '5/16': 2 };
  it('finds a row by its own key', () => {
    expect([rowOf(rows, '1/4'), rowOf(rows, '5/16')]).toEqual([1, 2]);
  });
  it('finds nothing under a name that objects inherit', () => {
    for (const key of NO_KEYS) expect(rowOf(rows, key as string), String(key)).toBeUndefined();
    for (const key of ['0.25', '1/4 ', '1/4 in', '9/32']) expect(rowOf(rows, key)).toBeUndefined();
  });
});

describe('the table for chain', () => {
  const pounds = (table: RatingTable, size: unknown, grade: unknown) =>
    printedRating(chainCell(table, size as string, grade as number), 'us').value;

  it('of 393.108: first, last and a middle cell', () => {
    expect(pounds(law, '1/4', 30)).toBe(1300);
    expect(pounds(law, '5/8', 100)).toBe(22600);
    expect(pounds(law, '7/16', 70)).toBe(8750);
  });
  it('of the specification: first, last and a middle cell', () => {
    expect(pounds(welded, '1/8', 30)).toBe(400);
    expect(pounds(welded, '1-1/4', 80)).toBe(72300);
    expect(pounds(welded, '7/8', 43)).toBe(24500);
  });
  test.each([
    ['9/32', 'between 1/4 and 5/16'],
    ['3/16', 'below the first'],
    ['3/4', 'above the last'],
  ])('of 393.108 has no %s: %s', (size) => {
    expect(issueOf(() => pounds(law, size, 70))).toMatchObject({ code: 'UNKNOWN_SIZE', path: 'size' });
  });
  test.each([
    ['1/4', 80], // printed there under 9/32
    ['9/32', 70],
    ['7/16', 80],
    ['7/8', 70],
    ['1', 43],
    ['1-1/4', 100],
  ])('of the specification has no %s grade %d', (size, grade) => {
    expect(issueOf(() => pounds(welded, size, grade))).toMatchObject({ code: 'NO_VALUE_IN_TABLE', path: 'grade' });
  });
  // The table knows what it lists; which grades there are at all is asked before it, of the whole chain.
  const rate = (size: unknown, grade: unknown) => chainRating({ ratings: law, size, grade } as never);
  const part = (size: unknown, grade: unknown) =>
    assemblyRating({ ratings: law, parts: [{ id: 'chain', kind: 'chain', size, grade } as Part] });
  test.each([42, 44, 29, 101, 75])('has no grade %d, which nobody makes', (grade) => {
    expect(issueOf(() => pounds(law, '3/8', grade))).toMatchObject({ code: 'NO_VALUE_IN_TABLE', path: 'grade' });
    expect(issueOf(() => rate('3/8', grade))).toMatchObject({ code: 'UNKNOWN_GRADE', path: 'grade' });
    expect(issueOf(() => part('3/8', grade))).toMatchObject({ code: 'UNKNOWN_GRADE', path: 'parts[0].grade' });
  });
  it('refuses keys that are no keys', () => {
    for (const key of NO_KEYS) {
      expect(
        issueOf(() => pounds(law, key, 70)),
        String(key),
      ).toMatchObject({ code: 'UNKNOWN_SIZE', path: 'size' });
      expect(
        issueOf(() => pounds(law, '3/8', key)),
        String(key),
      ).toMatchObject({ code: 'NO_VALUE_IN_TABLE', path: 'grade' });
      expect(
        issueOf(() => rate('3/8', key)),
        String(key),
      ).toMatchObject({ code: 'UNKNOWN_GRADE', path: 'grade' });
    }
    expect(issueOf(() => pounds(law, Object.create(null), 70)).code).toBe('UNKNOWN_SIZE');
    expect(issueOf(() => pounds(law, '3/8', Object.create(null))).code).toBe('NO_VALUE_IN_TABLE');
    expect(issueOf(() => rate('3/8', Object.create(null))).code).toBe('UNKNOWN_GRADE');
  });
  it('takes no list and no text for a key that it would turn into', () => {
    // String(['3/8']) is '3/8', and String(70) is '70': a key of another type is a mistake in the input.
    expect(issueOf(() => pounds(law, ['3/8'], 70)).code).toBe('UNKNOWN_SIZE');
    expect(issueOf(() => pounds(law, '3/8', [70])).code).toBe('NO_VALUE_IN_TABLE');
    for (const call of [rate, part]) {
      expect(issueOf(() => call(['3/8'], 70)).code).toBe('UNKNOWN_SIZE');
      expect(issueOf(() => call('3/8', '70')).code).toBe('UNKNOWN_GRADE');
      expect(issueOf(() => call('3/8', [70])).code).toBe('UNKNOWN_GRADE');
    }
  });
  it('keeps both printed columns apart', () => {
    const cell = chainCell(law, '5/16', 80);
    expect(printedRating(cell, 'us')).toEqual({ value: 4500, unit: 'lb' });
    expect(printedRating(cell, 'si')).toEqual({ value: 2000, unit: 'kg' });
  });
  it('says where a cell stands on other ground than its table', () => {
    expect(sourceOfCell(welded.chain, chainCell(welded, '3/4', 43), 'us').provenance).toBe('memory');
    expect(sourceOfCell(welded.chain, chainCell(welded, '3/8', 43), 'us').provenance).toBe('read');
    expect(sourceOfCell(law.chain, chainCell(law, '3/8', 43), 'us')).toEqual(law.chain.source);
  });
});

describe('the other tables of 393.108', () => {
  type Row = {
    readonly first: Part;
    readonly last: Part;
    readonly exact: Part;
    readonly values: readonly [number, number, number];
    readonly none: readonly Part[];
  };
  const webbing = (width: string): Part => ({ id: 'part', kind: 'webbing', width });
  const wire = (size: string): Part => ({ id: 'part', kind: 'wire-rope', size });
  const rope = (material: string, size: string): Part => ({ id: 'part', kind: 'fiber-rope', material, size });
  const strap = (width: string, thickness: string): Part => ({ id: 'part', kind: 'strapping', width, thickness });
  const rows: [name: string, row: Row][] = [
    [
      'webbing',
      {
        first: webbing('1-3/4'),
        last: webbing('4'),
        exact: webbing('3'),
        values: [1750, 4000, 3000],
        none: [webbing('2-1/2'), webbing('1'), webbing('5'), webbing('2 in'), webbing('1.75')],
      },
    ],
    [
      'wire rope',
      {
        first: wire('1/4'),
        last: wire('1'),
        exact: wire('1/2'),
        values: [1400, 20900, 5300],
        none: [wire('9/16'), wire('3/16'), wire('1-1/8'), wire('0.5')],
      },
    ],
    [
      'manila',
      {
        first: rope('manila', '3/8'),
        last: rope('manila', '1'),
        exact: rope('manila', '5/8'),
        values: [205, 1050, 465],
        none: [rope('manila', '9/16'), rope('manila', '1/4'), rope('manila', '1-1/4')],
      },
    ],
    [
      'nylon',
      {
        first: rope('nylon', '3/8'),
        last: rope('nylon', '1'),
        exact: rope('nylon', '5/8'),
        values: [278, 2520, 935],
        none: [rope('nylon', '7/8'), rope('nylon', '1/4'), rope('nylon', '2')],
      },
    ],
    [
      'strapping',
      {
        first: strap('1-1/4', '0.029'),
        last: strap('2', '0.050'),
        exact: strap('1-1/4', '0.057'),
        values: [1190, 2650, 1925],
        none: [
          strap('1-1/4', '0.040'),
          strap('2', '0.029'),
          strap('1-1/2', '0.044'),
          strap('3', '0.050'),
          strap('2', '0.05'),
        ],
      },
    ],
  ];
  const pounds = (part: Part) =>
    assemblyRating({ ratings: law, parts: [part] }).parts[0]?.workingLoadLimit?.value ?? null;

  test.each(rows)('%s: first, last, exact', (_, { first, last, exact, values }) => {
    expect([pounds(first), pounds(last), pounds(exact)]).toEqual(values);
  });
  test.each(rows)('%s: between and outside there is no value', (_, { none }) => {
    for (const part of none) {
      const { verdict, workingLoadLimit, missing } = assemblyRating({ ratings: law, parts: [part] });
      expect([verdict, workingLoadLimit], JSON.stringify(part)).toEqual(['undetermined', null]);
      expect(missing).toHaveLength(1);
    }
  });
  it('has no row under a key that is no key: unknown, or refused', () => {
    for (const key of NO_KEYS) {
      for (const part of [
        webbing(key as string),
        wire(key as string),
        rope('nylon', key as string),
        rope(key as string, '1/2'),
        strap('2', key as string),
        strap(key as string, '0.044'),
      ]) {
        let rating: number | null = null;
        try {
          rating = pounds(part);
        } catch (error) {
          expect((error as Error).name, `${part.kind} ${String(key)}`).toBe('RiggingError');
        }
        expect(rating, `${part.kind} ${String(key)}`).toBeNull();
      }
    }
  });
});

describe('the constants', () => {
  it('say which column decides and how old they are', () => {
    expect([law.units, law.asOf, law.unmarkedChain.grade, law.unmarkedChain.clause]).toEqual([
      'us',
      '2024',
      30,
      '49 CFR 393.108(d)',
    ]);
    expect([welded.units, welded.asOf, welded.unmarkedChain]).toEqual(['us', '2003', null]);
  });
  it('answer the same at every call: nothing is kept from one lookup to the next', () => {
    const ask = () =>
      [
        chainRating({ ratings: law, size: '3/8', grade: 70 }),
        chainRating({ ratings: welded, size: '3/8', grade: 70 }),
      ].map(({ workingLoadLimit, ratings }) => [workingLoadLimit.value, ratings]);
    expect(ask()).toEqual(ask());
    // One rater under another table must not see what the first looked up.
    const chain: Part = { id: 'chain', kind: 'chain', size: '3/8' };
    const under = (ratings: RatingTable) => assemblyRating({ ratings, parts: [chain] }).workingLoadLimit?.value ?? null;
    expect([under(law), under(welded), under(law)]).toEqual([2650, null, 2650]);
    const two = assemblyRating({
      ratings: law,
      parts: [
        { id: 'a', kind: 'chain', size: '3/8', grade: 70 },
        { id: 'b', kind: 'chain', size: '3/8' },
        { id: 'c', kind: 'chain', size: '3/8', grade: 70 },
      ],
    });
    expect(two.parts.map(({ workingLoadLimit }) => workingLoadLimit?.value)).toEqual([6600, 2650, 6600]);
  });
});
