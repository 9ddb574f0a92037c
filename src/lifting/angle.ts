import { fail } from '../errors.js';
import { checkObject } from '../input-checks.js';
import { compare } from '../quantities/arithmetic.js';
import { valueIn } from '../quantities/convert.js';
import type { QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { readQuantity } from '../quantities/read.js';

/**
 * The angle of a sling leg, with the way it is counted: from the horizontal (United States), from the vertical (Europe),
 * or between two legs that lean alike, twice that from the vertical (Australia).
 */
export type Angle =
  | { readonly fromHorizontal: QuantityInput<'angle'> }
  | { readonly fromVertical: QuantityInput<'angle'> }
  | { readonly included: QuantityInput<'angle'> };

/** An angle as it was stated. */
export interface ReadAngle {
  readonly kind: 'fromHorizontal' | 'fromVertical' | 'included';
  readonly stated: QuantityLike;
  /** From the vertical, in degrees; for comparing with a limit there is {@link compareLean}. */
  readonly fromVertical: number;
}

/** Reads an angle; a leg hangs from plumb to short of level. */
export function readAngle(angle: unknown, path: string): ReadAngle {
  checkObject(angle, path, "an angle such as { fromHorizontal: '60 deg' }");
  const stated = KINDS.filter((kind) => (angle as Partial<Record<string, unknown>>)[kind] !== undefined);
  const [kind] = stated;
  if (kind === undefined || stated.length > 1) {
    const wanted = 'one of fromHorizontal, fromVertical, included';
    const code = kind === undefined ? 'MISSING_FIELD' : 'CONFLICTING_FIELDS';
    return fail(code, path, wanted, kind === undefined ? undefined : stated.join(' and '), 'Say how it is counted.');
  }
  const quantity = readQuantity((angle as Record<string, unknown>)[kind], 'angle', `${path}.${kind}`);
  const degrees = valueIn(quantity, 'deg');
  const fromVertical = kind === 'fromHorizontal' ? 90 - degrees : kind === 'included' ? degrees / 2 : degrees;
  if (!(fromVertical >= 0 && fromVertical < 90)) {
    const range = { fromHorizontal: 'over 0 to 90', fromVertical: '0 to under 90', included: '0 to under 180' };
    fail('IMPOSSIBLE_GEOMETRY', `${path}.${kind}`, `${range[kind]} deg`, `${quantity}`, 'A leg pulls upward.');
  }
  return { kind, stated: quantity, fromVertical };
}

const KINDS = ['fromHorizontal', 'fromVertical', 'included'] as const;

/** -1, 0 or 1 as a leg leans less than, just, or more than so many degrees from the vertical: exactly, as the angle was stated. */
export function compareLean({ kind, stated }: ReadAngle, degrees: number): -1 | 0 | 1 {
  if (kind === 'fromHorizontal') return compare({ value: 90 - degrees, unit: 'deg' }, stated);
  return compare(stated, { value: kind === 'included' ? 2 * degrees : degrees, unit: 'deg' });
}
