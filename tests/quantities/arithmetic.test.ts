import { describe, expect, it, test } from 'vitest';
import { add, compare, scale, subtract, weightOf } from '../../src/quantities/arithmetic.js';
import {
  cm,
  daN,
  deg,
  ft,
  inches,
  kg,
  kgf,
  kN,
  lb,
  lbf,
  longTon,
  m,
  mm,
  N,
  shortTon,
  t,
  yd,
} from '../../src/quantities/constructors.js';
import { convert } from '../../src/quantities/convert.js';
import { formatQuantity } from '../../src/quantities/format.js';
import { parseQuantity } from '../../src/quantities/parse.js';
import { type QuantityLike, quantity } from '../../src/quantities/quantity.js';
import { ratedLoadIn } from '../../src/quantities/rated.js';
import type { Unit } from '../../src/quantities/units.js';
import { ulpsBetween } from './doubles.js';
import { issueOf } from './issue-of.js';

/** Values that plain JavaScript can pass where a quantity is meant, and the code each deserves. */
const notQuantities: [what: string, value: unknown, code: string][] = [
  ['null', null, 'NOT_A_QUANTITY'],
  ['a number', 5, 'NOT_A_QUANTITY'],
  ['text', '5 lb', 'NOT_A_QUANTITY'],
  ['a symbol', Symbol('5 lb'), 'NOT_A_QUANTITY'],
  ['a list', [5, 'lb'], 'NOT_A_QUANTITY'],
  ['a list as unit', { value: 5, unit: ['lb'] }, 'NOT_A_QUANTITY'],
  ['the unit constructor', { value: 5, unit: 'constructor' }, 'UNKNOWN_UNIT'],
  ['the unit __proto__', { value: 5, unit: '__proto__' }, 'UNKNOWN_UNIT'],
  ['NaN', { value: Number.NaN, unit: 'lb' }, 'NOT_FINITE'],
  ['infinity', { value: Number.POSITIVE_INFINITY, unit: 'lb' }, 'NOT_FINITE'],
];

describe('add and subtract', () => {
  it('answer in the unit of the first', () => {
    expect(add(ft(10), inches(6))).toEqual(ft(10.5));
    expect(add(inches(6), ft(10))).toEqual(inches(126));
    expect(add(lb(1), lb(2), lb(3))).toEqual(lb(6));
    expect(add(lb(5))).toEqual(lb(5));
    expect(add(shortTon(1), lb(500))).toEqual(shortTon(1.25));
    expect(add(kN(1), daN(50), N(500))).toEqual(kN(2));
    expect(subtract(ft(10), inches(6))).toEqual(ft(9.5));
    expect(subtract(m(1), mm(1500))).toEqual(m(-0.5));
    expect(subtract({ value: 3, unit: 'yd' }, ft(3))).toEqual(yd(2));
  });

  it('do not mix kinds', () => {
    expect(issueOf(() => add(ft(1), lb(1)))).toMatchObject({ code: 'WRONG_KIND', path: 'others[0]' });
    expect(issueOf(() => add(ft(1), ft(1), deg(1)))).toMatchObject({ code: 'WRONG_KIND', path: 'others[1]' });
    expect(issueOf(() => subtract(lb(1), lbf(1)))).toMatchObject({ code: 'WRONG_KIND', path: 'amount' });
    expect(issueOf(() => subtract(lb(1), lbf(1))).remedy).toMatch(/weightOf\(mass\)/);
  });

  it('refuse temperatures, whose zero is a convention', () => {
    const twenty = quantity(20, 'C');
    expect(issueOf(() => add(twenty, twenty)).code).toBe('WRONG_KIND');
    expect(issueOf(() => subtract(twenty, twenty)).code).toBe('WRONG_KIND');
    expect(issueOf(() => scale(twenty, 2)).code).toBe('WRONG_KIND');
  });

  it('refuse an empty sum', () => {
    expect(issueOf(() => (add as () => unknown)()).code).toBe('EMPTY_LIST');
  });

  it('refuse a sum that overflows', () => {
    expect(issueOf(() => add(m(1.7e308), m(1.7e308))).code).toBe('NOT_FINITE');
    expect(issueOf(() => subtract(m(-1.7e308), m(1.7e308))).code).toBe('NOT_FINITE');
  });
});

describe('scale', () => {
  it('multiplies the number and keeps the unit', () => {
    expect(scale(lb(3150), 4)).toEqual(lb(12600));
    expect(scale(ft(10), 0)).toEqual(ft(0));
    expect(scale(ft(10), -0.5)).toEqual(ft(-5));
  });

  it('takes a plain number only', () => {
    for (const factor of [Number.NaN, Number.POSITIVE_INFINITY, '2', 2n, null, undefined, lb(2)]) {
      expect(issueOf(() => scale(lb(1), factor as number))).toMatchObject({ code: 'NOT_FINITE', path: 'factor' });
    }
    expect(issueOf(() => scale(m(1e200), 1e200)).code).toBe('NOT_FINITE');
  });
});

describe('compare', () => {
  it.each([
    [m(3.048), ft(10), 0],
    [m(3.0479), ft(10), -1],
    [m(3.0481), ft(10), 1],
    [lb(2000), shortTon(1), 0],
    [lb(2240), longTon(1), 0],
    [kg(1000), t(1), 0],
    [kgf(1), N(9.80665), 0],
    [lbf(1), N(4.4482216152605), 0],
    [inches(36), yd(1), 0],
    [cm(2.54), inches(1), 0],
    [lb(3), lb(2), 1],
    [deg(45), deg(45.1), -1],
    // rad and percent-grade, in degrees: a 100 percent grade is 45 degrees
    [quantity(100, 'percent-grade'), deg(45), 0],
    [quantity(1, 'rad'), deg(57), 1],
    [quantity(1, 'rad'), deg(58), -1],
    // C = (F − 32) × 5/9, exactly: 99.86 F is 37.7 C
    [quantity(37.7, 'C'), quantity(99.86, 'F'), 0],
    [quantity(-40, 'C'), quantity(-40, 'F'), 0],
    [quantity(100, 'C'), quantity(212, 'F'), 0],
    [quantity(0, 'C'), quantity(31.999, 'F'), 1],
    [quantity(0, 'C'), quantity(32.001, 'F'), -1],
  ] as [QuantityLike, QuantityLike, number][])('%o with %o: %d', (first, second, order) => {
    expect(compare(first, second)).toBe(order);
    expect(compare(second, first)).toBe(order === 0 ? 0 : -order);
  });

  it('does not mix kinds', () => {
    expect(issueOf(() => compare(ft(1), lb(1)))).toMatchObject({ code: 'WRONG_KIND', path: 'second' });
    expect(issueOf(() => compare(lb(1), lbf(1)))).toMatchObject({ code: 'WRONG_KIND', path: 'second' });
  });
});

describe('weightOf', () => {
  it.each([
    [kg(1), N(9.80665)],
    [kg(100), N(980.665)],
    [t(1), N(9806.65)],
    [lb(4000), lbf(4000)],
    [lb(0.1), lbf(0.1)],
    [shortTon(2), lbf(4000)],
    [longTon(1), lbf(2240)],
    [kg(0), N(0)],
  ])('%o weighs %o', (mass, weight) => {
    expect(weightOf(mass)).toEqual(weight);
  });

  it('takes a mass only', () => {
    const weigh = weightOf as (mass: unknown) => unknown;
    expect(issueOf(() => weigh(lbf(1)))).toMatchObject({ code: 'WRONG_KIND', path: 'mass' });
    expect(issueOf(() => weigh(m(1)))).toMatchObject({ code: 'WRONG_KIND', path: 'mass' });
  });
});

describe('a rated load in mass or force', () => {
  it.each([
    [lb(4000), 'lbf', 4000],
    [lbf(4000), 'lb', 4000],
    [kg(1000), 'N', 9806.65],
    [kg(1000), 'kN', 9.80665],
    [kg(1000), 'daN', 980.665],
    [N(9806.65), 'kg', 1000],
    [shortTon(1), 'lbf', 2000],
    [lb(1), 'N', 4.4482216152605],
    [lb(2000), 'kg', 907.18474],
    [kN(20), 'daN', 2000],
  ] as [QuantityLike, 'lb' | 'kg' | 'lbf' | 'N' | 'kN' | 'daN', number][])('%o in %s', (rated, unit, value) => {
    const { value: converted, unit: shown } = ratedLoadIn(rated, unit);
    expect(shown).toBe(unit);
    expect(ulpsBetween(converted, value)).toBeLessThanOrEqual(1);
  });

  it('a pound is a pound-force and a kilogram a kilogram-force, to the last digit', () => {
    for (let tenths = 1; tenths <= 5000; tenths++) {
      expect(ratedLoadIn(lb(tenths / 10), 'lbf').value).toBe(tenths / 10);
      expect(ratedLoadIn(lbf(tenths / 10), 'lb').value).toBe(tenths / 10);
      expect(ratedLoadIn(kgf(tenths / 10), 'kg').value).toBe(tenths / 10);
    }
  });
});

describe('convert', () => {
  const percent = (value: number) => quantity(value, 'percent-grade');

  it('gives the same quantity in another unit', () => {
    expect(convert(lb(3150), 'kg')).toEqual(kg(1428.8159655)); // 3150 × 0.45359237
    expect(convert(ft(10), 'm')).toEqual(m(3.048));
    expect(convert(lb(5), 'lb')).toEqual(lb(5));
    expect(convert({ value: 60, unit: 'mph' }, 'ft/s')).toEqual({ value: 88, unit: 'ft/s' });
  });

  it.each([
    [0, 32],
    [100, 212],
    [-40, -40],
    [37, 98.6],
    [200, 392],
    [-273.15, -459.67],
  ])('%d C = %d F', (celsius, fahrenheit) => {
    expect(convert(quantity(celsius, 'C'), 'F').value).toBeCloseTo(fahrenheit, 12);
    expect(convert(quantity(fahrenheit, 'F'), 'C').value).toBeCloseTo(celsius, 12);
  });

  it.each([
    [0, 0],
    [100, 45], // tan 45° = 1
    [-100, -45],
    [100 / Math.sqrt(3), 30], // tan 30° = 1/√3
    [100 * Math.sqrt(3), 60], // tan 60° = √3
    [6, 3.4336303624505], // arctan 0.06 = 0.06 − 0.06³/3 + 0.06⁵/5 − … = 0.059 928 155 12 rad
  ])('a grade of %d percent is %d degrees', (grade, degrees) => {
    expect(convert(percent(grade), 'deg').value).toBeCloseTo(degrees, 10);
    expect(convert(deg(degrees), 'percent-grade').value).toBeCloseTo(grade, 10);
    expect(convert(convert(percent(grade), 'rad'), 'percent-grade').value).toBeCloseTo(grade, 10);
  });

  it.each([90, -90, 91, 180, 270, 450])('%d degrees has no percent grade', (degrees) => {
    expect(issueOf(() => convert(deg(degrees), 'percent-grade')).code).toBe('IMPOSSIBLE_GEOMETRY');
  });

  it('takes a slope just short of vertical', () => {
    // tan(90° − 0.001°) = 1 / tan(0.001°) = 57 295.78, so 5.7e6 percent
    expect(convert(deg(89.999), 'percent-grade').value).toBeCloseTo(5729577.95, 0);
  });

  it('does not cross kinds, and says how mass becomes force', () => {
    const issue = issueOf(() => convert(lb(1), 'N'));
    expect(issue.code).toBe('WRONG_KIND');
    expect(issue.remedy).toMatch(/weightOf\(mass\)/);
  });

  it('refuses an unknown unit', () => {
    for (const unit of ['lbs', '__proto__', 'constructor', 'toString', '', null, undefined, ['kg'], Symbol('kg')]) {
      expect(issueOf(() => convert(lb(1), unit as Unit))).toMatchObject({ code: 'UNKNOWN_UNIT', path: 'unit' });
    }
  });

  it('refuses a result beyond the largest number', () => {
    expect(issueOf(() => convert(quantity(1e308, 'kip'), 'N')).code).toBe('NOT_FINITE');
  });
});

describe('formatQuantity', () => {
  it.each([
    [convert(lb(3150), 'kg'), {}, '1428.8 kg'],
    [lb(3150), {}, '3150 lb'],
    [lb(123456789), {}, '123456789 lb'], // whole numbers keep all their digits
    [m(3.048), { digits: 2 }, '3 m'],
    [m(3.048), { digits: 15 }, '3.048 m'],
    [m(0.1 + 0.2), {}, '0.3 m'],
    [m(-2.34567), { digits: 3 }, '-2.35 m'],
    [m(1.23456e-8), { digits: 3 }, '0.0000000123 m'],
    [m(0), {}, '0 m'],
  ] as [QuantityLike, { digits?: number }, string][])('%o %o: %s', (amount, options, text) => {
    expect(formatQuantity(amount, options)).toBe(text);
    const kind = amount.unit === 'm' ? 'length' : 'mass';
    expect(String(parseQuantity(text, kind))).toBe(text);
  });

  it('takes 1 to 15 digits', () => {
    for (const digits of [0, 16, 2.5, -1, Number.NaN, Number.POSITIVE_INFINITY, '5', null]) {
      expect(issueOf(() => formatQuantity(m(1.5), { digits: digits as number }))).toMatchObject({
        code: 'NOT_A_WHOLE_NUMBER',
        path: 'digits',
      });
    }
    expect(formatQuantity(m(1.55), { digits: 1 })).toBe('2 m');
  });

  it('takes 5 without options, also where they are null', () => {
    for (const options of [undefined, null, {}]) {
      expect(formatQuantity(m(1.23456), options as never)).toBe('1.2346 m');
    }
  });
});

describe('what is no quantity', () => {
  test.each(notQuantities)('%s is refused by every function, which says where it stood', (_, value, code) => {
    const bad = value as QuantityLike<'lb'>;
    const calls: [path: string, call: () => unknown][] = [
      ['first', () => add(bad, lb(1))],
      ['others[1]', () => add(lb(1), lb(1), bad)],
      ['from', () => subtract(bad, lb(1))],
      ['amount', () => subtract(lb(1), bad)],
      ['amount', () => scale(bad, 2)],
      ['first', () => compare(bad, lb(1))],
      ['second', () => compare(lb(1), bad)],
      ['mass', () => weightOf(bad)],
      ['from', () => convert(bad, 'kg')],
      ['quantity', () => formatQuantity(bad)],
    ];
    for (const [path, call] of calls) expect(issueOf(call)).toMatchObject({ code, path });
  });
});
