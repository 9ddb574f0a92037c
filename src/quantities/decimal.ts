import { fail } from '../errors.js';

/** A decimal number: digits · 10^exponent. */
export interface Decimal {
  /** A whole number as text, with a minus sign where it is negative. */
  readonly digits: string;
  readonly exponent: number;
}

/** The shortest decimal that names a number, which is what its text shows: 3.048, not the binary fraction beside it. */
export function decimalOf(value: number): Decimal {
  if (!Number.isFinite(value)) return fail('NOT_FINITE', '', 'a finite number', value, 'Check the numbers.');
  const [whole, decimals = ''] = plainDecimal(value).split('.') as [string, string?];
  return { digits: whole + decimals, exponent: -decimals.length };
}

/** The same decimal written out, without an exponent: 0.0000001, where JavaScript writes 1e-7. */
export function plainDecimal(value: number): string {
  return String(value).replace(
    /^(-?)(\d)\.?(\d*)e(.+)$/,
    (_, sign: string, first: string, rest: string, power: string) => {
      const zeros = Number(power) - rest.length;
      return sign + (zeros < 0 ? `0.${(first + rest).padStart(-zeros, '0')}` : first + rest + '0'.repeat(zeros));
    },
  );
}

/** The product of two numbers as the decimals they show: 0.7 · 3 is 2.1, not the double beside it. */
export function decimalProduct(one: number, other: number): number {
  const product = one * other;
  if (Number.isSafeInteger(product)) return product;
  const a = decimalOf(one);
  const b = decimalOf(other);
  return Number(`${BigInt(a.digits) * BigInt(b.digits)}e${a.exponent + b.exponent}`);
}
