import type { QuantityLike } from '../quantities/quantity.js';
import { readQuantity } from '../quantities/read.js';

/** A size or a figure as printed: `1-3/32` is 1.09375 in. */
export function inches(printed: string | number): QuantityLike {
  if (typeof printed === 'number') return { value: printed, unit: 'in' };
  return readQuantity(`${printed.replace('-', ' ')} in`, 'length', 'size');
}
