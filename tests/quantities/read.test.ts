import { describe, expect, it, test } from 'vitest';
import type { RiggingErrorCode } from '../../src/errors.js';
import { ft, lb } from '../../src/quantities/constructors.js';
import { Quantity, quantity } from '../../src/quantities/quantity.js';
import { readAny, readPositive, readQuantity } from '../../src/quantities/read.js';
import type { Unit } from '../../src/quantities/units.js';
import { issueOf } from './issue-of.js';

const at = 'articles[0].mass';

const FORM = /^Write 1000\.5 lb, one space, no separators; units: lb, short-ton, long-ton, kg, t\.$/;

const throwing = (field: string) =>
  Object.defineProperty({ value: 5, unit: 'lb' }, field, {
    get() {
      throw new Error('not yours');
    },
  });
const { proxy: revoked, revoke } = Proxy.revocable({}, {});
revoke();
const hostile = new Proxy(
  {},
  {
    get() {
      throw new TypeError('no');
    },
    getPrototypeOf() {
      throw new TypeError('no');
    },
    has() {
      throw new TypeError('no');
    },
  },
);

describe('a mass field', () => {
  it.each([
    ['a quantity', lb(5)],
    ['a bare object', { value: 5, unit: 'lb' }],
    ['an object with more in it', { value: 5, unit: 'lb', note: 'scale ticket' }],
    ['an object without prototype', Object.assign(Object.create(null), { value: 5, unit: 'lb' })],
    ['an object through JSON', JSON.parse('{"value":5,"unit":"lb","__proto__":{"unit":"kg"}}')],
    ['text', '5 lb'],
  ])('takes %s', (_, input) => {
    const read = readQuantity(input, 'mass', at);
    expect(read).toBeInstanceOf(Quantity);
    expect(JSON.stringify(read)).toBe('{"value":5,"unit":"lb"}');
  });

  const refused: [what: string, input: unknown, code: RiggingErrorCode, remedy: RegExp][] = [
    ['nothing', undefined, 'MISSING_FIELD', FORM],
    ['null', null, 'NOT_A_QUANTITY', FORM],
    ['a bare number', 3940, 'NOT_A_QUANTITY', FORM],
    ['a bigint', 3940n, 'NOT_A_QUANTITY', FORM],
    ['a symbol', Symbol('5 lb'), 'NOT_A_QUANTITY', FORM],
    ['a boolean', true, 'NOT_A_QUANTITY', FORM],
    ['a function', () => lb(5), 'NOT_A_QUANTITY', FORM],
    ['a list', [5, 'lb'], 'NOT_A_QUANTITY', FORM],
    ['an empty list', [], 'NOT_A_QUANTITY', FORM],
    ['an empty object', {}, 'NOT_A_QUANTITY', FORM],
    ['a date', new Date(0), 'NOT_A_QUANTITY', FORM],
    ['a map', new Map([['value', 5]]), 'NOT_A_QUANTITY', FORM],
    ['a boxed text', Object('5 lb'), 'NOT_A_QUANTITY', FORM],
    ['text in value', { value: '5', unit: 'lb' }, 'NOT_A_QUANTITY', FORM],
    ['a bigint in value', { value: 5n, unit: 'lb' }, 'NOT_A_QUANTITY', FORM],
    ['a symbol in unit', { value: 5, unit: Symbol('lb') }, 'NOT_A_QUANTITY', FORM],
    ['a list in unit', { value: 5, unit: ['lb'] }, 'NOT_A_QUANTITY', FORM],
    ['a getter that throws in value', throwing('value'), 'NOT_A_QUANTITY', FORM],
    ['a getter that throws in unit', throwing('unit'), 'NOT_A_QUANTITY', FORM],
    ['a proxy that throws', hostile, 'NOT_A_QUANTITY', FORM],
    ['a revoked proxy', revoked, 'NOT_A_QUANTITY', FORM],
    ['NaN', { value: Number.NaN, unit: 'lb' }, 'NOT_FINITE', /Leave it out/],
    ['infinity', { value: Number.POSITIVE_INFINITY, unit: 'lb' }, 'NOT_FINITE', /Leave it out/],
    ['minus infinity', { value: Number.NEGATIVE_INFINITY, unit: 'lb' }, 'NOT_FINITE', /Leave it out/],
    ['an unknown unit', { value: 5, unit: 'stone' }, 'UNKNOWN_UNIT', FORM],
    ['a plural unit', { value: 5, unit: 'lbs' }, 'UNKNOWN_UNIT', FORM],
    ['the unit __proto__', { value: 5, unit: '__proto__' }, 'UNKNOWN_UNIT', FORM],
    ['the unit constructor', { value: 5, unit: 'constructor' }, 'UNKNOWN_UNIT', FORM],
    ['the unit toString', { value: 5, unit: 'toString' }, 'UNKNOWN_UNIT', FORM],
    ['a unit of a mebibyte', { value: 5, unit: 'lb'.repeat(2 ** 19) }, 'UNKNOWN_UNIT', FORM],
    ['a length', ft(20), 'WRONG_KIND', FORM],
    ['a force', { value: 20, unit: 'kN' }, 'WRONG_KIND', /weightOf\(mass\)/],
    ['a negative mass', { value: -5, unit: 'kg' }, 'NEGATIVE', /Check the sign/],
  ];
  test.each(refused)('refuses %s', (_, input, code, remedy) => {
    const issue = issueOf(() => readQuantity(input, 'mass', at));
    expect(issue).toMatchObject({ code, path: at });
    expect(issue.remedy).toMatch(remedy);
    expect(issue.received.length).toBeLessThan(80);
  });

  it('reads each field once, so that a changing object cannot slip past the check', () => {
    let reads = 0;
    const shifty = {
      get value() {
        return reads++ === 0 ? 5 : Number.NaN;
      },
      unit: 'lb',
    };
    expect(readQuantity(shifty, 'mass', at)).toEqual({ value: 5, unit: 'lb' });
    expect(reads).toBe(1);
  });

  it('copies, so that changing the input afterwards changes no result', () => {
    const input = { value: 5, unit: 'lb' };
    const read = readQuantity(input, 'mass', at);
    input.value = 6;
    expect(read.value).toBe(5);
  });

  it('refuses a quantity that was tampered with', () => {
    expect(issueOf(() => readQuantity(Object.assign(lb(5), { value: Number.NaN }), 'mass', at)).code).toBe(
      'NOT_FINITE',
    );
  });
});

describe('a length field', () => {
  it('takes negative values: a coordinate is a length', () => {
    expect(readQuantity({ value: -2, unit: 'm' }, 'length', at).value).toBe(-2);
  });
});

describe('a field above zero', () => {
  it('takes the least number and refuses zero and below', () => {
    expect(readPositive({ value: Number.MIN_VALUE, unit: 'm' }, 'length', at).value).toBe(Number.MIN_VALUE);
    for (const input of ['0 m', { value: 0, unit: 'm' }, { value: -0, unit: 'm' }, '-1 m']) {
      expect(issueOf(() => readPositive(input, 'length', at))).toMatchObject({ code: 'NOT_POSITIVE', path: at });
    }
  });
});

describe('a quantity of any kind', () => {
  it('is an object, not text', () => {
    expect(readAny({ value: 5, unit: 'g' }, at)).toEqual({ value: 5, unit: 'g' });
    const issue = issueOf(() => readAny('5 g', at));
    expect(issue).toMatchObject({ code: 'NOT_A_QUANTITY', path: at });
    expect(issue.remedy).toMatch(/parseQuantity\(text, kind\)/);
  });
});

describe('making a quantity', () => {
  it('refuses what is no number', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, '5', 5n, null, undefined, Symbol('5'), {}]) {
      expect(issueOf(() => lb(value as number))).toMatchObject({ code: 'NOT_FINITE', path: 'value' });
    }
  });

  it('refuses what is no unit', () => {
    for (const unit of [
      'lbs',
      '__proto__',
      'constructor',
      '',
      null,
      undefined,
      ['lb'],
      Symbol('lb'),
      { toString: () => 'lb' },
    ]) {
      expect(issueOf(() => quantity(5, unit as Unit))).toMatchObject({ code: 'UNKNOWN_UNIT', path: 'unit' });
    }
  });
});
