import { fail } from '../errors.js';
import { plainDecimal } from './decimal.js';
import { Quantity, type QuantityLike } from './quantity.js';
import { readAny } from './read.js';

/**
 * A quantity as text for people, rounded to significant digits; no thousands separators and no exponent, so
 * that it can be read back by {@link parseQuantity}.
 *
 * @param quantity any quantity
 * @param options `digits`: significant digits, 1 to 15, 5 when omitted; whole numbers keep all their digits
 * @throws RiggingError `NOT_A_QUANTITY`, `NOT_A_WHOLE_NUMBER` for `digits`
 * @example
 * formatQuantity(convert(lb(3150), 'kg'))
 * // => '1428.8 kg'
 */
export function formatQuantity(quantity: QuantityLike, options?: { readonly digits?: number }): string {
  const { digits = 5 } = options ?? {};
  const { value, unit } = readAny(quantity, 'quantity');
  if (!Number.isInteger(digits) || digits < 1 || digits > 15) {
    fail('NOT_A_WHOLE_NUMBER', 'digits', 'a whole number from 1 to 15', digits, 'Leave digits out for 5.');
  }
  return String(new Quantity(round(value, digits), unit));
}

/** A number to so many significant digits, without trailing zeros; whole numbers up to 15 digits stay whole. */
export function formatNumber(value: number, digits = 5): string {
  return plainDecimal(round(value, digits));
}

function round(value: number, digits: number): number {
  return Number.isInteger(value) && Math.abs(value) < 1e15 ? value : Number(value.toPrecision(digits));
}
