import { describe, expect, it, test } from 'vitest';
import type { RiggingErrorCode } from '../../src/errors.js';
import { parseQuantity } from '../../src/quantities/parse.js';
import { readQuantity } from '../../src/quantities/read.js';
import type { Kind } from '../../src/quantities/units.js';
import { issueOf } from './issue-of.js';

const at = 'tieDowns[2].parts[0].size';

describe('every form of the grammar', () => {
  const accepted: [text: string, kind: Kind, value: number, unit: string][] = [
    // decimal
    ['3940 lb', 'mass', 3940, 'lb'],
    ['0 lb', 'mass', 0, 'lb'],
    ['0.435 g', 'acceleration', 0.435, 'g'],
    ['2.50 m', 'length', 2.5, 'm'],
    ['007 lb', 'mass', 7, 'lb'],
    ['-3 m', 'length', -3, 'm'],
    ['-0.5 deg', 'angle', -0.5, 'deg'],
    ['-40 F', 'temperature', -40, 'F'],
    ['1.000 kg', 'mass', 1, 'kg'], // a point is a decimal point everywhere
    // fraction: halves to sixty-fourths
    ['1/2 in', 'length', 0.5, 'in'],
    ['3/4 in', 'length', 0.75, 'in'],
    ['3/8 in', 'length', 0.375, 'in'],
    ['5/16 in', 'length', 0.3125, 'in'],
    ['9/32 in', 'length', 0.28125, 'in'],
    ['1/64 in', 'length', 0.015625, 'in'],
    ['9/8 in', 'length', 1.125, 'in'],
    ['0/2 in', 'length', 0, 'in'],
    ['1/2 lb', 'mass', 0.5, 'lb'],
    // whole number and fraction
    ['3 3/8 in', 'length', 3.375, 'in'],
    ['0 3/8 in', 'length', 0.375, 'in'],
    ['2 1/2 lb', 'mass', 2.5, 'lb'],
    // feet and inches: 16 × 12 + 6 = 198
    ['16 ft 6 in', 'length', 198, 'in'],
    ['16 ft 6.25 in', 'length', 198.25, 'in'],
    ['16 ft 6 1/2 in', 'length', 198.5, 'in'],
    ['16 ft 3/4 in', 'length', 192.75, 'in'],
    ['0 ft 11 63/64 in', 'length', 11.984375, 'in'],
    ['10 ft 0 in', 'length', 120, 'in'],
    // decimal inches give the decimal that was written: 10 × 12 + 0.1 = 120.1
    ['10 ft 0.1 in', 'length', 120.1, 'in'],
    // 15 digits are held exactly; more only in a number's own shortest form
    ['123456789.012345 lb', 'mass', 123456789.012345, 'lb'],
    ['000000000000000000005 lb', 'mass', 5, 'lb'],
    ['5.00000000000000000000 lb', 'mass', 5, 'lb'],
    ['3.0480000000000005 m', 'length', 3.0480000000000005, 'm'],
    ['0.0000000000000002220446049250313 m', 'length', 2 ** -52, 'm'],
    // the rated-load kind takes both dimensions
    ['4700 lb', 'ratedLoad', 4700, 'lb'],
    ['20.9 kN', 'ratedLoad', 20.9, 'kN'],
    ['2000 daN', 'ratedLoad', 2000, 'daN'],
  ];
  test.each(accepted)('%s', (text, kind, value, unit) => {
    const quantity = parseQuantity(text, kind);
    expect(quantity.value).toBe(value);
    expect(quantity.unit).toBe(unit);
    expect(readQuantity(text, kind, '')).toEqual(quantity);
  });

  it.each([
    ['length', 'mm cm m in ft yd'],
    ['mass', 'kg t lb short-ton long-ton'],
    ['force', 'N daN kN kgf lbf kip'],
    ['ratedLoad', 'kg t lb short-ton long-ton N daN kN kgf lbf kip'],
    ['speed', 'm/s km/h mph ft/s'],
    ['acceleration', 'm/s2 g'],
    ['angle', 'deg rad percent-grade'],
    ['temperature', 'C F'],
    ['duration', 's min h'],
    ['massPerLength', 'kg/m lb/ft'],
    ['density', 'kg/m3 lb/ft3'],
  ] as [Kind, string][])('%s takes %s', (kind, units) => {
    for (const unit of units.split(' ')) expect(parseQuantity(`1.5 ${unit}`, kind)).toEqual({ value: 1.5, unit });
  });

  it('reads minus zero as zero', () => {
    expect(Object.is(parseQuantity('-0 kg', 'mass').value, 0)).toBe(true);
  });
});

/** What a message says where there is nothing better to say: the form, and the units of the kind. */
const FORM = {
  mass: /^Write 1000\.5 lb, one space, no separators; units: lb, short-ton, long-ton, kg, t\.$/,
  length:
    /^Write 1000\.5 ft, one space, no separators, 3 3\/8 in \(halves to sixty-fourths\) or 16 ft 6 in \(inches below 12\); units: ft, in, yd, mi, mm, cm, m, km\.$/,
  ratedLoad: /^Write 1000\.5 lb, .*; units: lb, short-ton, long-ton, kg, t, lbf, kip, N, daN, kN, kgf\.$/,
  speed: /^Write 1000\.5 mph, .*; units: mph, ft\/s, m\/s, km\/h\.$/,
  acceleration: /^Write 1000\.5 g, .*; units: g, m\/s2\.$/,
  angle: /^Write 1000\.5 deg, .*; units: deg, rad, percent-grade\.$/,
  temperature: /^Write 1000\.5 F, .*; units: F, C\.$/,
};

describe('every misuse, with its code, its path and what to do', () => {
  const misuses: [text: string, kind: Kind, code: RiggingErrorCode, remedy: RegExp][] = [
    ['1,000 lb', 'mass', 'AMBIGUOUS_NUMBER', FORM.mass],
    ['2,5 kg', 'mass', 'AMBIGUOUS_NUMBER', FORM.mass],
    ['1.000.000 kg', 'mass', 'AMBIGUOUS_NUMBER', FORM.mass],
    ["1'000 kg", 'mass', 'AMBIGUOUS_NUMBER', FORM.mass],
    ['1 000 kg', 'mass', 'AMBIGUOUS_NUMBER', FORM.mass],
    ['1\u00a0000 kg', 'mass', 'AMBIGUOUS_NUMBER', FORM.mass],
    ['1_000 kg', 'mass', 'AMBIGUOUS_NUMBER', FORM.mass],

    ['2 ton', 'mass', 'AMBIGUOUS_UNIT', /short-ton \(2000 lb\), long-ton \(2240 lb\) or t \(1000 kg\)/],
    ['2 Tons', 'mass', 'AMBIGUOUS_UNIT', /Say which ton/],
    ['2ton', 'mass', 'AMBIGUOUS_UNIT', /Say which ton/],
    ['2 metric tons', 'mass', 'AMBIGUOUS_UNIT', /Say which ton/],
    ['2 short ton', 'mass', 'AMBIGUOUS_UNIT', /Say which ton/],
    ['2 T', 'mass', 'AMBIGUOUS_UNIT', /Say which ton/],
    ['ton', 'mass', 'AMBIGUOUS_UNIT', /Say which ton/],

    ['5 lbs', 'mass', 'UNKNOWN_UNIT', /Write lb, not lbs/],
    ['5 LB', 'mass', 'UNKNOWN_UNIT', /Write lb, not LB/],
    ['5 lb.', 'mass', 'UNKNOWN_UNIT', /Write lb, not lb\./],
    ['5 #', 'mass', 'UNKNOWN_UNIT', /Write lb, not #/],
    ['5 tonnes', 'mass', 'UNKNOWN_UNIT', /Write t, not tonnes/],
    ['5 stone', 'mass', 'UNKNOWN_UNIT', FORM.mass],
    ['6 feet', 'length', 'UNKNOWN_UNIT', /Write ft, not feet/],
    ["6'", 'length', 'UNKNOWN_UNIT', /Write ft, not '/],
    ['6"', 'length', 'UNKNOWN_UNIT', /Write in, not "/],
    ['3/8 inch', 'length', 'UNKNOWN_UNIT', /Write in, not inch/],
    ['3 3/8"', 'length', 'UNKNOWN_UNIT', /Write in, not "/],
    ['12 KN', 'force', 'UNKNOWN_UNIT', /Write kN, not KN/],
    ['60 km/hr', 'speed', 'UNKNOWN_UNIT', FORM.speed],
    ['60 knots', 'speed', 'UNKNOWN_UNIT', FORM.speed],
    ['6 inches', 'length', 'UNKNOWN_UNIT', /Write in, not inches/],
    ['6 yards', 'length', 'UNKNOWN_UNIT', FORM.length],
    ['9.8 m/s²', 'acceleration', 'UNKNOWN_UNIT', FORM.acceleration],
    ['45°', 'angle', 'UNKNOWN_UNIT', FORM.angle],
    ['400 °F', 'temperature', 'UNKNOWN_UNIT', FORM.temperature],
    ['5 __proto__', 'mass', 'UNKNOWN_UNIT', FORM.mass],
    ['5 constructor', 'mass', 'UNKNOWN_UNIT', FORM.mass],
    ['5 toString', 'mass', 'UNKNOWN_UNIT', FORM.mass],
    ['5 hasOwnProperty', 'mass', 'UNKNOWN_UNIT', FORM.mass],

    ['20 lb', 'length', 'WRONG_KIND', FORM.length],
    ['20 ft', 'mass', 'WRONG_KIND', FORM.mass],
    ['16 ft 6 in', 'mass', 'WRONG_KIND', FORM.mass],
    ['3/8 in', 'ratedLoad', 'WRONG_KIND', FORM.ratedLoad],
    ['20 lb', 'force', 'WRONG_KIND', /lbf.*weightOf\(mass\)/],
    ['20 kN', 'mass', 'WRONG_KIND', /lbf.*weightOf\(mass\)/],

    ['-5 kg', 'mass', 'NEGATIVE', /Check the sign/],
    ['-5 kN', 'ratedLoad', 'NEGATIVE', /Check the sign/],
    ['-1 s', 'duration', 'NEGATIVE', /Check the sign/],
    ['-1 lb/ft', 'massPerLength', 'NEGATIVE', /Check the sign/],
    ['-1 kg/m3', 'density', 'NEGATIVE', /Check the sign/],

    ['', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    [' 5 lb', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['5 lb ', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['5  lb', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['5 lb\n', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['3940lb', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['3/8in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['1e3 lb', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['0x10 kg', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['3940', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['lb', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['lb 5', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['NaN lb', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['Infinity lb', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['five lb', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['+5 lb', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['--5 lb', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['- 5 m', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['\u22125 m', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length], // a typographic minus
    ['.5 in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['5. in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['5/3 in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['1/128 in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['5/0 in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['3 9/8 in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['3 8/8 in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['-1/2 in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['½ in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['10 ft 14 in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['10 ft 12 in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['10 ft 11 8/8 in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['10 ft 24/2 in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['10.5 ft 6 in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['10 ft -6 in', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['5\' 6"', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['5\'6"', 'length', 'TEXT_NOT_A_QUANTITY', FORM.length],
    ['5 lb 3 oz', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['5 lb; 6 lb', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass],
    ['٥ kg', 'mass', 'TEXT_NOT_A_QUANTITY', FORM.mass], // digits of another script

    ['0.1234567890123456789 m', 'length', 'TEXT_TOO_PRECISE', /Round it/],
    ['12345678901234567 lb', 'mass', 'TEXT_TOO_PRECISE', /Round it/],
    ['10 ft 0.1234567890123456 in', 'length', 'TEXT_TOO_PRECISE', /Round it/],
  ];
  test.each(misuses)('%j as %s: %s', (text, kind, code, remedy) => {
    const issue = issueOf(() => parseQuantity(text, kind, at));
    expect(issue).toMatchObject({ code, path: at });
    expect(issue.remedy).toMatch(remedy);
    expect(issueOf(() => readQuantity(text, kind, at))).toEqual(issue);
  });

  it('accepts 64 characters and refuses 65, and a mebibyte of digits, without looking at them', () => {
    expect(parseQuantity(`${'0'.repeat(60)}5 lb`, 'mass').value).toBe(5);
    for (const length of [62, 2 ** 20]) {
      const issue = issueOf(() => parseQuantity(`${'9'.repeat(length)} lb`, 'mass', at));
      expect(issue).toMatchObject({ code: 'TEXT_TOO_LONG', path: at });
      expect(issue.received.length).toBeLessThan(80);
    }
  });

  it.each([
    ['a number', 5],
    ['null', null],
    ['undefined', undefined],
    ['a list', ['5 lb']],
    ['a boxed text', Object('5 lb')],
    ['a symbol', Symbol('5 lb')],
    ['a bigint', 5n],
    ['a function', () => '5 lb'],
    ['an object that prints as text', { toString: () => '5 lb' }],
  ])('refuses %s where text is meant', (_, value) => {
    expect(issueOf(() => parseQuantity(value as string, 'mass', at))).toMatchObject({
      code: 'NOT_A_QUANTITY',
      path: at,
      expected: 'mass as text or { value, unit }',
    });
  });

  it.each(['weight', '__proto__', 'toString', '', undefined, null, Symbol('mass'), 5])(
    'refuses the kind %s',
    (kind) => {
      for (const text of ['5 lb', 'nonsense']) {
        const code = kind === undefined ? 'MISSING_FIELD' : 'UNKNOWN_VALUE';
        expect(issueOf(() => parseQuantity(text, kind as Kind))).toMatchObject({ code, path: 'kind' });
      }
    },
  );

  it('says where, what was expected and what came', () => {
    expect(() => parseQuantity('20 lb', 'length', 'length')).toThrow(
      /^length: expected length as text or \{ value, unit \}, got '20 lb'\. Write 1000\.5 ft, .*; units: ft, in, .*\.$/,
    );
  });

  it('keeps control characters and line breaks of hostile text out of the message', () => {
    const { received } = issueOf(() => parseQuantity('5 \u001b[31m\r\n\u2028\u202elb', 'mass'));
    expect(received).toBe("'5 \uFFFD[31m\uFFFD\uFFFD\uFFFD\uFFFDlb'");
  });
});
