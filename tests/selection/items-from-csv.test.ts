import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { itemsFromCsv } from '../../src/index.js';
import { recordsOf } from '../../src/selection/csv.js';
import { issueOf } from '../quantities/issue-of.js';
import { random } from './random-kits.js';

const HEADER = 'id,kind,size,grade,chainSizes,markedWll,length,includes,mass,price,currency,count';
const read = (text: string, source: 'catalog' | 'stock' = 'catalog') => {
  const { items, faults } = itemsFromCsv({ text, source });
  return { items, faults: faults.map(({ row, path, code }) => `${row} ${path}: ${code}`) };
};

describe('a catalog in order', () => {
  it('is read with its types', () => {
    const text = [
      HEADER,
      '"chain, 5/16",chain,5/16,70,,,20 ft,grab-hook;grab-hook,21 lb,52,USD,4',
      'binder,binder,,,5/16; 3/8,5400 lb,,,9.5 lb,34.95,USD,',
      'european,chain,8 mm,8,,,6 m,,9 kg,80.5,USD,0',
    ].join('\r\n');
    const { items, faults } = read(`\ufeff${text}\r\n`);
    expect(faults).toEqual([]);
    expect(items).toEqual([
      {
        id: 'chain, 5/16',
        kind: 'chain',
        size: '5/16',
        grade: 70,
        length: '20 ft',
        includes: ['grab-hook', 'grab-hook'],
        mass: '21 lb',
        price: 52,
        currency: 'USD',
        count: 4,
      },
      {
        id: 'binder',
        kind: 'binder',
        chainSizes: ['5/16', '3/8'],
        markedWll: '5400 lb',
        mass: '9.5 lb',
        price: 34.95,
        currency: 'USD',
      },
      {
        id: 'european',
        kind: 'chain',
        size: '8 mm',
        grade: '8',
        length: '6 m',
        mass: '9 kg',
        price: 80.5,
        currency: 'USD',
        count: 0,
      },
    ]);
  });
});

describe('faults', () => {
  it('are all listed, with the rows that a spreadsheet shows', () => {
    const { items, faults } = read(
      [
        'id,kind,mass,price,color',
        'a,shackle,1 lb,"1,234.50",red',
        '"a note',
        'over two lines",shackle,1 lb,2,red',
        '',
        'b,shackle,1 lb',
        'c,sha"ckle,1 lb,2,red',
        'd,strap,1 lbs,-2,red',
        'e,shackle,1 lb,2,red',
        'e,shackle,1 lb,2,red',
      ].join('\n'),
    );
    expect(faults).toEqual([
      '1 color: UNKNOWN_FIELD',
      '2 price: AMBIGUOUS_NUMBER',
      '5 : CONFLICTING_FIELDS',
      '6 : UNKNOWN_VALUE',
      '7 kind: UNKNOWN_VALUE',
      '7 mass: UNKNOWN_UNIT',
      '7 price: NEGATIVE',
      '9 id: DUPLICATE_ID',
    ]);
    expect(items.map(({ id }) => id)).toEqual(['a note\nover two lines', 'e']);
  });

  it.each([
    ['', ['1 : EMPTY_LIST']],
    ['id,kind', ['1 mass: MISSING_FIELD']],
    ['id,kind,mass,id\n1,shackle,1 lb,2', ['1 id: DUPLICATE_ID']],
    ['id,kind,mass\n1,shackle,"1 lb', ['2 : UNKNOWN_VALUE']],
    ['id,kind,mass,grade,size\n1,grab-hook,1 lb,7O,1/4', ['2 grade: UNKNOWN_GRADE']],
    ['id,kind,mass,price,currency\n1,shackle,1 lb,2,USD\n2,shackle,1 lb,2,EUR', ['3 currency: CONFLICTING_FIELDS']],
  ])('of %j', (text, expected) => {
    expect(read(text).faults).toEqual(expected);
  });

  it('of stock without a count', () => {
    expect(read('id,kind,mass\n1,shackle,1 lb', 'stock').faults).toEqual(['2 count: MISSING_FIELD']);
  });

  it('of what is no text is an error', () => {
    expect(issueOf(() => itemsFromCsv({ source: 'catalog' } as never))).toMatchObject({
      code: 'MISSING_FIELD',
      path: 'text',
    });
    expect(issueOf(() => itemsFromCsv({ text: ',', source: 'shop' as never }))).toMatchObject({ path: 'source' });
    const long = ' '.repeat(20_000_001);
    expect(issueOf(() => itemsFromCsv({ text: long, source: 'stock' }))).toMatchObject({ code: 'TEXT_TOO_LONG' });
  });
});

describe('records', () => {
  it('are those of an independent reader, for any text that is well formed', () => {
    const next = random(8);
    const signs = ['a', ' ', '"', ',', '\n', '\r\n', '\u00e9'];
    for (let index = 0; index < 500; index++) {
      const table = Array.from({ length: 1 + Math.floor(next() * 4) }, () =>
        Array.from({ length: 3 }, () =>
          Array.from({ length: Math.floor(next() * 5) }, () => signs[Math.floor(next() * signs.length)]).join(''),
        ),
      );
      const text = table
        .map((row) => row.map((cell) => (/["\n\r,]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join(','))
        .join(next() < 0.5 ? '\n' : '\r\n');
      const records = [...recordsOf(text)];
      expect(
        records.map(({ cells }) => cells),
        text,
      ).toEqual(table);
      expect(
        records.some(({ malformed }) => malformed),
        text,
      ).toBe(false);
      expect(
        records.map(({ cells }) => cells),
        text,
      ).toEqual(parse(text, { record_delimiter: ['\r\n', '\n'], skip_empty_lines: false }));
    }
  });
});
