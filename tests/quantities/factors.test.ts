import { unit as mathUnit } from 'mathjs';
import { describe, expect, it, test } from 'vitest';
import { convert } from '../../src/quantities/convert.js';
import { quantity } from '../../src/quantities/quantity.js';
import { UNITS, type Unit } from '../../src/quantities/units.js';
import { ulpsBetween } from './doubles.js';

/** A decimal as a whole number over a power of ten. */
function fraction(decimal: string): [numerator: bigint, denominator: bigint] {
  const [whole = '', decimals = ''] = decimal.replaceAll(' ', '').split('.');
  return [BigInt(whole + decimals), 10n ** BigInt(decimals.length)];
}

/**
 * NIST Handbook 44, Appendix C (General Tables of Units of Measurement) and NIST Special Publication 811
 * (2008), Appendix B (Conversion Factors): only factors those print as exact, typed without looking at src.
 */
const exactFactors: [unit: Unit, factor: string, base: Unit][] = [
  ['mm', '0.001', 'm'], // SI prefix
  ['cm', '0.01', 'm'], // SI prefix
  ['km', '1000', 'm'], // SI prefix
  ['in', '0.0254', 'm'], // from memory: HB 44 C, 1 inch = 2.54 centimeters (exactly)
  ['ft', '0.3048', 'm'], // from memory: HB 44 C, 1 foot = 0.3048 meter (exactly)
  ['yd', '0.9144', 'm'], // from memory: HB 44 C, 1 yard = 0.9144 meter (exactly)
  ['mi', '1609.344', 'm'], // from memory: HB 44 C, 1 mile (5280 international feet) = 1.609 344 kilometers
  ['t', '1000', 'kg'], // from memory: HB 44 C, 1 metric ton = 1000 kilograms
  ['lb', '0.453 592 37', 'kg'], // from memory: HB 44 C, 1 avoirdupois pound = 453.592 37 grams (exactly)
  ['short-ton', '907.184 74', 'kg'], // from memory: HB 44 C, 1 ton, net or short = 0.907 184 74 metric ton (exactly)
  ['long-ton', '1016.046 908 8', 'kg'], // from memory: HB 44 C, 1 ton, gross or long = 1.016 046 908 8 metric tons (exactly)
  ['daN', '10', 'N'], // SI prefix
  ['kN', '1000', 'N'], // SI prefix
  ['kgf', '9.806 65', 'N'], // from memory: SP 811 B.8, kilogram-force
  ['lbf', '4.448 221 615 260 5', 'N'], // from memory: SP 811 B.8, footnote to pound-force, the exact value
  ['kip', '4448.221 615 260 5', 'N'], // from memory: 1000 lbf
  ['mph', '0.447 04', 'm/s'], // from memory: SP 811 B.8, mile per hour
  ['ft/s', '0.3048', 'm/s'], // from memory: SP 811 B.8, foot per second
  ['g', '9.806 65', 'm/s2'], // from memory: SP 811 B.8, acceleration of free fall, standard
  ['min', '60', 's'], // from memory: SP 811 table 6
  ['h', '3600', 's'], // from memory: SP 811 table 6
];

/** The factors that do not end, as SP 811 prints them: seven digits, so each within half of the last. */
const roundedFactors: [unit: Unit, printed: number, halfDigit: number, base: Unit][] = [
  ['km/h', 0.2777778, 0.5e-7, 'm/s'], // from memory: SP 811 B.8, kilometer per hour, 2.777 778 E-01
  ['lb/ft', 1.488164, 0.5e-6, 'kg/m'], // from memory: SP 811 B.8, pound per foot, 1.488 164 E+00
  ['lb/ft3', 16.01846, 0.5e-5, 'kg/m3'], // from memory: SP 811 B.8, pound per cubic foot, 1.601 846 E+01
  ['deg', 0.01745329, 0.5e-8, 'rad'], // from memory: SP 811 B.8, degree, 1.745 329 E-02
];

describe('against the handbooks', () => {
  test.each(exactFactors)('1 %s = %s %s exactly', (unit, factor, base) => {
    const [numerator, denominator] = fraction(factor);
    // as whole numbers: steps(unit) / steps(base) = numerator / denominator
    expect(BigInt(UNITS[unit].steps) * denominator).toBe(BigInt(UNITS[base].steps) * numerator);
    expect(convert(quantity(1, unit), base).value).toBe(Number(factor.replaceAll(' ', '')));
  });

  test.each(roundedFactors)('1 %s = %d %s', (unit, printed, halfDigit, base) => {
    expect(Math.abs(convert(quantity(1, unit), base).value - printed)).toBeLessThanOrEqual(halfDigit);
  });

  it('leaves out no unit', () => {
    const listed = [
      ...exactFactors.map(([unit, , base]) => [unit, base]),
      ...roundedFactors.map((row) => [row[0], row[3]]),
    ];
    const elsewhere: Unit[] = ['percent-grade', 'C', 'F']; // no factors; see below
    expect(new Set([...listed.flat(), ...elsewhere])).toEqual(new Set(Object.keys(UNITS)));
  });
});

describe('against mathjs', () => {
  const names: { readonly [U in Unit]?: string } = {
    mm: 'mm',
    cm: 'cm',
    m: 'm',
    in: 'inch',
    ft: 'ft',
    yd: 'yd',
    km: 'km',
    mi: 'mi',
    kg: 'kg',
    t: 'tonne',
    lb: 'lbm',
    'short-ton': 'ton',
    N: 'N',
    daN: 'daN',
    kN: 'kN',
    kgf: 'kgf',
    lbf: 'lbf',
    kip: 'kip',
    'm/s': 'm/s',
    'km/h': 'km/hour',
    mph: 'mi/hour',
    'ft/s': 'ft/s',
    deg: 'deg',
    rad: 'rad',
    C: 'degC',
    F: 'degF',
    s: 's',
    min: 'minute',
    h: 'hour',
    'kg/m': 'kg/m',
    'lb/ft': 'lbm/ft',
    'kg/m3': 'kg/m^3',
    'lb/ft3': 'lbm/ft^3',
  };
  const units = Object.entries(names) as [Unit, string][];
  const pairs = units.flatMap(([from, theirFrom]) =>
    units
      .filter(([to]) => UNITS[to].dimension === UNITS[from].dimension && to !== from)
      .map(([to, theirTo]): [Unit, Unit, string, string] => [from, to, theirFrom, theirTo]),
  );
  test.each(pairs)('%s to %s', (from, to, theirFrom, theirTo) => {
    for (const value of [1, 3940, 0.435, 12345.678]) {
      const theirs = mathUnit(value, theirFrom).toNumber(theirTo);
      // mathjs rounds the kip to 4448.2216 N, 3.4e-9 below 1000 lbf; its other factors are these
      const tolerance = from === 'kip' || to === 'kip' ? 4e-9 : 1e-14;
      const { value: ours } = convert(quantity(value, from), to);
      expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(tolerance * Math.max(Math.abs(ours), 100));
    }
  });
});

describe('against each other', () => {
  it.each([
    [1, 'kip', 1000, 'lbf'],
    [1, 'yd', 3, 'ft'],
    [1, 'ft', 12, 'in'],
    [1, 'mi', 5280, 'ft'],
    [1, 'short-ton', 2000, 'lb'],
    [1, 'long-ton', 2240, 'lb'],
    [1, 't', 1000, 'kg'],
    [1, 'kN', 100, 'daN'],
    [1, 'm', 1000, 'mm'],
    [1, 'h', 60, 'min'],
    [15, 'mph', 22, 'ft/s'], // 15 × 5280 / 3600
    [36, 'km/h', 10, 'm/s'],
    [1, 'in', 25.4, 'mm'],
  ] as [number, Unit, number, Unit][])('%d %s = %d %s', (value, unit, same, other) => {
    expect(convert(quantity(value, unit), other).value).toBe(same);
    expect(convert(quantity(same, other), unit).value).toBe(value);
  });

  const steps = (unit: Unit) => BigInt(UNITS[unit].steps);

  it('a pound-force is a pound times standard gravity, a kilogram-force a kilogram times it', () => {
    expect(steps('lbf') * steps('kg') * steps('m/s2')).toBe(steps('lb') * steps('g') * steps('N'));
    expect(steps('kgf') * steps('m/s2')).toBe(steps('g') * steps('N'));
  });

  it('mass per length is mass over length, and density mass over length cubed', () => {
    expect(steps('lb/ft') * steps('kg') * steps('ft')).toBe(steps('kg/m') * steps('lb') * steps('m'));
    expect(steps('lb/ft3') * steps('kg') * steps('ft') ** 3n).toBe(steps('kg/m3') * steps('lb') * steps('m') ** 3n);
  });

  it('speed is length over time', () => {
    expect(steps('mph') * steps('m') * steps('h')).toBe(steps('m/s') * steps('mi') * steps('s'));
    expect(steps('km/h') * steps('m') * steps('h')).toBe(steps('m/s') * steps('km') * steps('s'));
    expect(steps('ft/s') * steps('m')).toBe(steps('m/s') * steps('ft'));
  });

  it('every factor is a whole number that a double holds', () => {
    for (const { steps } of Object.values(UNITS)) {
      expect(Number.isInteger(steps)).toBe(true);
      expect(BigInt(steps).toString().replace(/0+$/, '').length).toBeLessThan(16);
    }
  });
});

describe('there and back', () => {
  const units = Object.keys(UNITS) as Unit[];
  const pairs = units.flatMap((from) =>
    units
      .filter((to) => UNITS[to].dimension === UNITS[from].dimension && UNITS[to].steps > 0 && UNITS[from].steps > 0)
      .filter((to) => to !== from && UNITS[to].dimension !== 'temperature')
      .map((to): [Unit, Unit] => [from, to]),
  );
  // two multiplications and two divisions, each at most half an ulp off: within 2 ulp, nearly always within 1
  test.each(pairs)('%s to %s', (from, to) => {
    for (const value of [1, 3, 7, 0.1, 3940, 4700, 3.048, 21.336, 4535.9237, 1234.56789, 1e-6, 1e9]) {
      const back = convert(convert(quantity(value, from), to), from).value;
      expect(ulpsBetween(back, value)).toBeLessThanOrEqual(2);
    }
  });
});
