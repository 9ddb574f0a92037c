// A schema of a quantity says what the reader of the library says, and its pattern accepts what the parser does.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { RiggingError } from '../../src/errors.js';
import { lb } from '../../src/quantities/constructors.js';
import { parseQuantity } from '../../src/quantities/parse.js';
import { readPositive, readQuantity } from '../../src/quantities/read.js';
import { type Kind, kinds as kindNames, UNITS } from '../../src/quantities/units.js';
import { checkJson, quantitySchema } from '../../src/schemas/index.js';
import { issueOf } from '../quantities/issue-of.js';

const KINDS = kindNames();

interface TextSchema {
  readonly maxLength: number;
  readonly pattern: string;
}

/** The text side of a quantity as other validators see it. */
function accepts(kind: Kind, positive: boolean): (text: string) => boolean {
  const { anyOf } = z.toJSONSchema(quantitySchema(kind, { positive }), { io: 'input' });
  const { maxLength, pattern } = anyOf![1] as TextSchema;
  const regex = new RegExp(pattern, 'u');
  return (text) => text.length <= maxLength && regex.test(text);
}

/** What the library does with a text: `'accepted'`, or the code of its refusal. */
function verdictOf(read: () => unknown): string {
  try {
    read();
    return 'accepted';
  } catch (error) {
    if (error instanceof RiggingError) return error.code;
    throw error;
  }
}

/** Pieces that make texts on both sides of every rule of the grammar. */
const digits = fc.stringMatching(/^[0-9]{1,3}$/);
const longDigits = fc.stringMatching(/^(0{0,9}[0-9]{1,10}|[0-9]{1,20})$/);
const denominator = fc.constantFrom('2', '4', '8', '16', '32', '64', '3', '10', '128');
const fraction = fc
  .tuple(fc.oneof(digits, longDigits), denominator)
  .map(([numerator, below]) => `${numerator}/${below}`);
const decimal = fc
  .tuple(fc.constantFrom('', '-', '+'), fc.oneof(digits, longDigits), fc.option(digits, { nil: undefined }))
  .map(([sign, whole, part]) => `${sign}${whole}${part === undefined ? '' : `.${part}`}`);
const mixed = fc.tuple(fc.oneof(digits, longDigits), fraction).map((both) => both.join(' '));
const feetAndInches = fc
  .tuple(fc.oneof(digits, longDigits), fc.oneof(decimal, fraction, mixed))
  .map(([feet, inches]) => `${feet} ft ${inches} in`);
const unit = fc.constantFrom(...Object.keys(UNITS), 'lbs', 'ton');
const text = fc.oneof(
  fc.tuple(fc.oneof(decimal, fraction, mixed), fc.constantFrom(' ', '  ', ''), unit).map((all) => all.join('')),
  fc.tuple(fc.constantFrom('0', '-0', '0.0', '0/2', '0 0/4', '00', '10', '0.01'), unit).map((both) => both.join(' ')),
  feetAndInches,
  fc.constantFrom('0 ft 0 in', '0 ft 0.0 in', '0 ft 0/2 in', '0 ft 0 0/8 in', '0 ft 11 63/64 in', '0 ft 767/64 in'),
);

describe('the pattern of a text', () => {
  it.each(KINDS.flatMap((kind) => [[kind, false] as const, [kind, true] as const]))(
    '%s, above zero %s',
    (kind, positive) => {
      const accept = accepts(kind, positive);
      fc.assert(
        fc.property(text, (written) => {
          const said = verdictOf(() => (positive ? readPositive(written, kind, '') : parseQuantity(written, kind)));
          // No pattern can tell whether a long number is its own shortest form.
          if (said !== 'TEXT_TOO_PRECISE') expect([written, accept(written)]).toEqual([written, said === 'accepted']);
        }),
        { numRuns: 1000 },
      );
    },
  );

  // every numerator of every denominator, whole numbers from 0 to 12 beside it: 0 to 63 halves to sixty-fourths
  it('knows a proper fraction from an improper one', () => {
    const accept = accepts('length', false);
    for (const below of [2, 4, 8, 16, 32, 64]) {
      for (let numerator = 0; numerator < 13 * below; numerator++) {
        expect([numerator, below, accept(`${numerator}/${below} in`)]).toEqual([numerator, below, true]);
        expect([numerator, below, accept(`3 ${numerator}/${below} in`)]).toEqual([numerator, below, numerator < below]);
        expect([numerator, below, accept(`3 ft ${numerator}/${below} in`)]).toEqual([
          numerator,
          below,
          numerator < 12 * below,
        ]);
        expect([numerator, below, accept(`3 ft 11 ${numerator}/${below} in`)]).toEqual([
          numerator,
          below,
          numerator < below,
        ]);
      }
    }
    for (const inches of [9, 10, 11, 12, 13, 99]) expect(accept(`3 ft ${inches} in`)).toBe(inches < 12);
  });

  it.each([
    ['3940 lb', 'mass', true],
    ['3,940 lb', 'mass', false],
    ['2 ton', 'mass', false],
    ['-1 lb', 'mass', false],
    ['-0 lb', 'mass', true],
    ['10 ft', 'mass', false],
    ['-2.5 m', 'length', true],
    ['5/16 in', 'length', true],
    ['3 3/8 in', 'length', true],
    ['3 8/8 in', 'length', false],
    ['16 ft 6 in', 'length', true],
    ['16 ft 12 in', 'length', false],
    ['16 ft 6 in', 'mass', false],
    ['20.9 kN', 'ratedLoad', true],
    ['5 lb\n', 'mass', false],
    [`${'0'.repeat(61)} lb`, 'mass', true],
    [`${'0'.repeat(62)} lb`, 'mass', false],
  ] as [string, Kind, boolean][])('%j as %s: %s', (written, kind, accepted) => {
    expect(accepts(kind, false)(written)).toBe(accepted);
  });
});

describe('a schema of a quantity', () => {
  const values: unknown[] = [
    ...[undefined, null, 5, 5n, true, Symbol('5 lb'), () => lb(5), [], [5, 'lb'], {}, new Date(0)],
    ...['', '5', '5 lb', '0 lb', '-0 lb', '-5 lb', '5 ft', '1,000 lb', '2 ton', '5lb', '5 LB', '1e3 lb', '½ in'],
    ...['1.234567890123456789 lb', `${'0'.repeat(1 << 20)} lb`, '16 ft 6 in', '5/16 in', '\u202e5 lb'],
    ...[
      { value: 5 },
      { unit: 'lb' },
      { value: '5', unit: 'lb' },
      { value: 5, unit: ['lb'] },
      { value: 5n, unit: 'lb' },
    ],
    ...[5, -5, 0, -0, Number.NaN, Number.POSITIVE_INFINITY, Number.MIN_VALUE].map((value) => ({ value, unit: 'lb' })),
    ...['lb', 'ft', 'lbs', 'stone', '__proto__', 'constructor', 'kN'].map((unit) => ({ value: 5, unit })),
    lb(5),
  ];

  it.each([false, true])('says what the reader says, above zero %s', (positive) => {
    for (const kind of ['mass', 'length', 'ratedLoad'] as const) {
      for (const value of values) {
        const check = checkJson(quantitySchema(kind, { positive }), value);
        const reader = () => (positive ? readPositive(value, kind, '') : readQuantity(value, kind, ''));
        if (check.ok) {
          expect(check.value).toEqual(value);
          reader();
        } else expect(check.issues).toEqual([issueOf(reader)]);
      }
    }
  });

  it('takes no more than value and unit, where the reader would', () => {
    const check = checkJson(quantitySchema('mass'), { value: -5, unit: 'lb', note: 'scale ticket' });
    expect(check.ok ? [] : check.issues.map(({ code, path }) => [path, code]).sort()).toEqual([
      ['', 'NEGATIVE'],
      ['note', 'UNKNOWN_FIELD'],
    ]);
  });

  it('has a kind', () => {
    expect(issueOf(() => quantitySchema('weight' as Kind))).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'kind' });
    expect(issueOf(() => quantitySchema('__proto__' as Kind))).toMatchObject({ code: 'UNKNOWN_VALUE', path: 'kind' });
  });
});
