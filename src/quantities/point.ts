import { fail } from '../errors.js';
import { inUnit } from './convert.js';
import type { QuantityInput } from './quantity.js';
import { readQuantity } from './read.js';

/**
 * A point on a load or a vehicle: x forward, y left, z up. In a plan it is measured from the middle of the front edge
 * of the deck, so that everything on the deck has an x below zero; in a lift from any point of the load.
 */
export type Point = readonly [x: QuantityInput<'length'>, y: QuantityInput<'length'>, z: QuantityInput<'length'>];

/** A point in meters. */
export function readPoint(point: unknown, path: string): readonly [x: number, y: number, z: number] {
  if (!Array.isArray(point) || point.length !== 3) {
    fail('MISSING_FIELD', path, 'a point [x, y, z] of three lengths', point, "Write ['-6 ft', '40 in', '0 in'].");
  }
  const meters = (index: number) =>
    inUnit(readQuantity((point as unknown[])[index], 'length', `${path}[${index}]`), 'm').value;
  return [meters(0), meters(1), meters(2)];
}
