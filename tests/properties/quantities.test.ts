import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describe as describeValue, RiggingError } from '../../src/errors.js';
import { add, compare, scale, subtract, weightOf } from '../../src/quantities/arithmetic.js';
import { convert } from '../../src/quantities/convert.js';
import { compareExact } from '../../src/quantities/exact.js';
import { formatQuantity } from '../../src/quantities/format.js';
import { parseQuantity } from '../../src/quantities/parse.js';
import { Quantity, quantity } from '../../src/quantities/quantity.js';
import { readPositive, readQuantity } from '../../src/quantities/read.js';
import { type Kind, kinds as kindNames, UNITS, type Unit, unitFitsKind } from '../../src/quantities/units.js';
import { ulpsBetween } from '../quantities/doubles.js';

const kinds = kindNames();
const units = Object.keys(UNITS) as Unit[];
const unit = fc.constantFrom(...units);
const kind = fc.constantFrom(...kinds);

/** Positive numbers of every magnitude that the text form promises to carry. */
const magnitude = fc.oneof(
  fc.double({ min: 1e-30, max: 1e45, noNaN: true }),
  fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
  fc.tuple(fc.nat(), fc.integer({ min: -9, max: 9 })).map(([digits, power]) => Number(`${digits + 1}e${power}`)),
);
const anyQuantity = fc.tuple(magnitude, unit).map(([value, name]) => quantity(value, name));

/** Two units of one dimension whose factor is a number: no offset scales and no trigonometry. */
const unitPair = fc
  .tuple(unit, unit)
  .filter(([a, b]) => UNITS[a].dimension === UNITS[b].dimension && UNITS[a].dimension !== 'temperature')
  .filter(([a, b]) => a !== 'percent-grade' && b !== 'percent-grade');

/** A call gives a quantity, or throws a RiggingError with all its fields; anything else fails. */
function givesQuantityOrIssue(call: () => unknown): void {
  let result: unknown;
  try {
    result = call();
  } catch (error) {
    if (!(error instanceof RiggingError)) throw error;
    const { path: _, ...filled } = error.toJSON();
    for (const field of Object.values(filled)) expect(field).not.toBe('');
    expect(error.message.length).toBeLessThan(600);
    return;
  }
  expect(result).toBeInstanceOf(Quantity);
  const { value, unit: name } = result as Quantity;
  expect(Number.isFinite(value)).toBe(true);
  expect(units).toContain(name);
}

describe('text', () => {
  it('of a quantity reads back as the same quantity, through every kind it fits', () => {
    fc.assert(
      fc.property(anyQuantity, fc.boolean(), (amount, negative) => {
        for (const wanted of kinds.filter((each) => unitFitsKind(amount.unit, each))) {
          expect(parseQuantity(String(amount), wanted)).toEqual(amount);
        }
        if (negative && UNITS[amount.unit].dimension === 'length') {
          const below = quantity(-amount.value, amount.unit);
          expect(parseQuantity(String(below), 'length')).toEqual(below);
        }
      }),
      { numRuns: 3000 },
    );
  });

  it('as formatted reads back within its digits', () => {
    fc.assert(
      fc.property(magnitude, fc.integer({ min: 1, max: 15 }), (value, digits) => {
        const text = formatQuantity(quantity(value, 'm'), { digits });
        const back = parseQuantity(text, 'length').value;
        expect(Math.abs(back - value)).toBeLessThanOrEqual(value * 0.5 * 10 ** (1 - digits) * (1 + 1e-9));
        expect(formatQuantity(quantity(back, 'm'), { digits })).toBe(text);
      }),
    );
  });

  it('of a decimal means that decimal, as the language reads it', () => {
    const digits = (maxLength: number) =>
      fc.array(fc.constantFrom(...'0123456789'), { minLength: 1, maxLength }).map((list) => list.join(''));
    fc.assert(
      fc.property(digits(9), fc.option(digits(6)), (whole, decimals) => {
        const number = decimals === null ? whole : `${whole}.${decimals}`;
        expect(parseQuantity(`${number} m`, 'length').value).toBe(Number(number));
      }),
      { numRuns: 2000 },
    );
  });

  it('in fractions and in feet and inches means whole sixty-fourths', () => {
    fc.assert(
      fc.property(fc.nat({ max: 999_999 }), fc.nat({ max: 11 }), fc.nat({ max: 63 }), (feet, inches, part) => {
        const sixtyFourths = (feet * 12 + inches) * 64 + part;
        const text = part === 0 ? `${feet} ft ${inches} in` : `${feet} ft ${inches} ${part}/64 in`;
        expect(parseQuantity(text, 'length').value * 64).toBe(sixtyFourths);
        if (part > 0) expect(parseQuantity(`${feet} ${part}/64 ft`, 'length').value * 64).toBe(feet * 64 + part);
      }),
    );
  });

  it('longer than 64 characters is refused for its length alone, so that reading is linear with a small bound', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 65, maxLength: 5000 }), kind, (text, wanted) => {
        expect(() => parseQuantity(text, wanted)).toThrow(expect.objectContaining({ code: 'TEXT_TOO_LONG' }));
      }),
    );
  });
});

describe('fuzz', () => {
  const pieces = fc.oneof(
    {
      weight: 3,
      arbitrary: fc.constantFrom(...units, ...'0123456789', ' ', '.', '-', '/', ' ft ', ' in', '1/2', '12', 'ton'),
    },
    {
      weight: 1,
      arbitrary: fc.constantFrom(
        'e',
        '+',
        ',',
        "'",
        '"',
        '\n',
        '\t',
        '\u00a0',
        '_',
        'x',
        '%',
        '__proto__',
        '½',
        '٣',
        '\ud800',
      ),
    },
  );
  const nearlyText = fc.array(pieces, { maxLength: 8 }).map((list) => list.join(''));

  it('any text gives a quantity of the kind or a RiggingError', () => {
    fc.assert(
      fc.property(fc.oneof(nearlyText, fc.string({ unit: 'binary' }), fc.string()), kind, (text, wanted) => {
        givesQuantityOrIssue(() => {
          const read = parseQuantity(text, wanted);
          expect(unitFitsKind(read.unit, wanted)).toBe(true);
          expect(text.length).toBeLessThanOrEqual(64);
          expect(text).toMatch(/^-?\d.* \S+$/);
          return read;
        });
      }),
      { numRuns: 20_000 },
    );
  });

  const odd = fc.anything({
    withBigInt: true,
    withBoxedValues: true,
    withDate: true,
    withMap: true,
    withNullPrototype: true,
    withObjectString: true,
    withSet: true,
    withSparseArray: true,
    withTypedArray: true,
    withUnicodeString: true,
  });
  const oddUnit = fc.oneof(
    unit as fc.Arbitrary<unknown>,
    fc.constantFrom('__proto__', 'constructor', 'toString', 'valueOf', 'lbs', ''),
    odd,
  );
  const oddNumber = fc.oneof(
    fc.double() as fc.Arbitrary<unknown>,
    fc.integer(),
    fc.constantFrom(Number.NaN, Number.MAX_VALUE, 5e-324, -0, '5', 5n, null),
    odd,
  );
  const oddQuantity = fc.oneof(
    fc.record({ value: oddNumber, unit: oddUnit }),
    fc.tuple(fc.double(), unit).map(([value, name]) => ({ value, unit: name })),
    odd,
  );

  it('any value gives a quantity of the kind or a RiggingError', () => {
    fc.assert(
      fc.property(oddQuantity, kind, (input, wanted) => {
        givesQuantityOrIssue(() => readQuantity(input, wanted, 'field'));
        givesQuantityOrIssue(() => readPositive(input, wanted, 'field'));
        givesQuantityOrIssue(() => parseQuantity(input as string, wanted));
        givesQuantityOrIssue(() => parseQuantity('5 lb', input as Kind));
      }),
      { numRuns: 5000 },
    );
  });

  it('any values give every function a quantity or a RiggingError', () => {
    fc.assert(
      fc.property(oddQuantity, oddQuantity, oddUnit, oddNumber, (a, b, name, factor) => {
        const [first, second] = [a, b] as [Quantity<'lb'>, Quantity<'lb'>];
        givesQuantityOrIssue(() => quantity(factor as number, name as Unit));
        givesQuantityOrIssue(() => convert(first, name as Unit));
        givesQuantityOrIssue(() => add(first, second));
        givesQuantityOrIssue(() => subtract(first, second));
        givesQuantityOrIssue(() => scale(first, factor as number));
        givesQuantityOrIssue(() => weightOf(first));
        givesQuantityOrIssue(() => {
          expect([-1, 0, 1]).toContain(compare(first, second));
          return quantity(1, 'm');
        });
        givesQuantityOrIssue(() => {
          expect(formatQuantity(first)).toMatch(/^-?\d+(\.\d+)? \S+$/);
          return quantity(1, 'm');
        });
      }),
      { numRuns: 5000 },
    );
  });

  it('any value can be described in a message, briefly', () => {
    fc.assert(
      fc.property(odd, (value) => {
        expect(describeValue(value).length).toBeLessThan(80);
      }),
    );
  });
});

describe('units', () => {
  // two products and two quotients, each rounded: half an ulp, and a whole one where a power of two is crossed
  it('there and back is the same number within 4 ulp', () => {
    fc.assert(
      fc.property(magnitude, unitPair, (value, [from, to]) => {
        expect(ulpsBetween(convert(convert(quantity(value, from), to), from).value, value)).toBeLessThanOrEqual(4);
      }),
      { numRuns: 3000 },
    );
  });

  it('there and back in temperature and slope', () => {
    fc.assert(
      fc.property(fc.double({ min: -1000, max: 1000, noNaN: true }), (value) => {
        for (const [from, to] of [
          ['C', 'F'],
          ['F', 'C'],
          ['percent-grade', 'deg'],
          ['percent-grade', 'rad'],
        ] as [Unit, Unit][]) {
          const back = convert(convert(quantity(value, from), to), from).value;
          expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-12 * Math.max(100, Math.abs(value)));
        }
      }),
    );
  });

  it('do not change a sum, a difference, a multiple or a weight', () => {
    const close = (a: number, b: number, size: number) => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-14 * size);
    fc.assert(
      fc.property(
        magnitude,
        magnitude,
        unitPair,
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (x, y, [one, other], factor) => {
          const [a, b] = [quantity(x, one), quantity(y, one)];
          const [a2, b2] = [convert(a, other), convert(b, other)];
          close(convert(add(a2, b2), one).value, add(a, b).value, x + y);
          close(convert(subtract(a2, b2), one).value, subtract(a, b).value, x + y);
          close(convert(scale(a2, factor), one).value, scale(a, factor).value, x * factor);
          if (UNITS[one].dimension === 'mass') {
            close(convert(weightOf(a2 as never), 'N').value / convert(weightOf(a as never), 'N').value, 1, 1);
          }
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('do not change an order: whole inches, feet and yards, and the same in millimeters', () => {
    fc.assert(
      fc.property(fc.nat({ max: 1e6 }), fc.integer({ min: -1, max: 1 }), (count, nudge) => {
        // 1 yd = 3 ft = 36 in = 914.4 mm, in tenths of a millimeter
        const yards = quantity(count, 'yd');
        for (const [same, perYard] of [
          ['ft', 3],
          ['in', 36],
        ] as [Unit, number][]) {
          expect(compare(quantity(count * perYard + nudge, same), yards)).toBe(nudge);
        }
        expect(compare(quantity(Number(`${count * 9144 + nudge}e-1`), 'mm'), yards)).toBe(nudge);
      }),
    );
  });
});

describe('order', () => {
  it('is total: antisymmetric, and what doubles say where they are clear of each other', () => {
    fc.assert(
      fc.property(magnitude, magnitude, fc.tuple(unit, unit), (x, y, [one, other]) => {
        fc.pre(UNITS[one].dimension === UNITS[other].dimension);
        const [a, b] = [quantity(x, one), quantity(y, other)];
        const order = compare(a, b);
        expect(compare(b, a)).toBe(order === 0 ? 0 : -order);
        expect(compare(a, a)).toBe(0);
        if (one === 'percent-grade' || other === 'percent-grade') return;
        const gap = x - convert(b, one).value;
        if (Math.abs(gap) > 1e-12 * Math.max(x, 1000)) expect(order).toBe(Math.sign(gap));
      }),
      { numRuns: 3000 },
    );
  });

  it('is transitive across units', () => {
    const length = fc
      .tuple(fc.nat({ max: 300 }), fc.constantFrom<Unit>('mm', 'cm', 'in', 'ft'))
      .map(([tenths, name]) => quantity(tenths / 10, name));
    fc.assert(
      fc.property(length, length, length, (a, b, c) => {
        if (compareExact(a, b) <= 0 && compareExact(b, c) <= 0) expect(compareExact(a, c)).toBeLessThanOrEqual(0);
      }),
    );
  });
});
