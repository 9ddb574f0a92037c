import { fail } from '../errors.js';

/** A decimal number: digits · 10^exponent. */
export interface Decimal {
  /** A whole number as text, with a minus sign where it is negative. */
  readonly digits: string;
  readonly exponent: number;
}

/** The shortest decimal that names a number, which is what its text shows: 3.048, not the binary fraction beside it. */
export function decimalOf(value: number): Decimal {
  if (!Number.isFinite(value)) return fail('NOT_FINITE', '', 'a finite number', value, 'Check the numbers given.');
  const [mantissa, power = '0'] = String(value).split('e') as [string, string?];
  const point = mantissa.indexOf('.');
  const decimals = point < 0 ? 0 : mantissa.length - point - 1;
  return { digits: mantissa.replace('.', ''), exponent: Number(power) - decimals };
}

/** The same decimal written out, without an exponent: 0.0000001, where JavaScript writes 1e-7. */
export function plainDecimal(value: number): string {
  const text = String(value);
  if (!text.includes('e')) return text;
  const { digits, exponent } = decimalOf(value);
  const sign = value < 0 ? '-' : '';
  const figures = digits.replace('-', '');
  return exponent < 0 ? `${sign}0.${figures.padStart(-exponent, '0')}` : sign + figures + '0'.repeat(exponent);
}

/** The product of two numbers as the decimals they show: 0.7 · 3 is 2.1, not the double beside it. */
export function decimalProduct(one: number, other: number): number {
  const product = one * other;
  if (Number.isSafeInteger(product)) return product;
  const a = decimalOf(one);
  const b = decimalOf(other);
  return Number(`${BigInt(a.digits) * BigInt(b.digits)}e${a.exponent + b.exponent}`);
}
