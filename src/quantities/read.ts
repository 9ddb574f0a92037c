import { fail } from '../errors.js';
import { checkSign, parseQuantity, wrongKind } from './parse.js';
import { Quantity } from './quantity.js';
import { isUnit, type Kind, type Unit, type UnitOfKind, unitFitsKind, unitsOfKind } from './units.js';

/**
 * Reads a field of a kind: text through the parser, objects after a check. Each field of an object is read
 * once and copied, so that an object that changes afterwards changes no result.
 */
export function readQuantity<K extends Kind>(input: unknown, kind: K, path: string): Quantity<UnitOfKind[K]> {
  if (typeof input === 'string') return parseQuantity(input, kind, path);
  if (input === undefined) {
    return fail('MISSING_FIELD', path, `a quantity of kind ${kind}`, input, giveQuantity(kind));
  }
  const quantity = readAny(input, path, kind);
  if (!unitFitsKind(quantity.unit, kind)) return wrongKind(quantity.value, quantity.unit, kind, path);
  checkSign(quantity.value, kind, path);
  return quantity as Quantity<UnitOfKind[K]>;
}

/** Reads a field whose value must be above zero. */
export function readPositive<K extends Kind>(input: unknown, kind: K, path: string): Quantity<UnitOfKind[K]> {
  const quantity = readQuantity(input, kind, path);
  if (!(quantity.value > 0)) {
    fail(
      'NOT_POSITIVE',
      path,
      `${kind} above zero`,
      `${quantity}`,
      'Give the real value, or leave the field out if it is optional.',
    );
  }
  return quantity;
}

/** Reads a quantity object of any kind; `kind` only helps the message. */
export function readAny<U extends Unit = Unit>(input: unknown, path: string, kind?: Kind): Quantity<U> {
  let value: unknown;
  let unit: unknown;
  try {
    ({ value, unit } = input as { value: unknown; unit: unknown });
  } catch {
    // null, undefined, or an object whose fields cannot be read: refused below
  }
  if (typeof value !== 'number' || typeof unit !== 'string') {
    return fail('NOT_A_QUANTITY', path, '{ value: number, unit: text }', input, giveQuantity(kind));
  }
  if (!isUnit(unit)) {
    return fail(
      'UNKNOWN_UNIT',
      path,
      kind === undefined ? 'a unit of this library' : `a unit of kind ${kind}`,
      unit,
      `Write one of: ${unitsOfKind(kind)}.`,
    );
  }
  if (!Number.isFinite(value)) {
    return fail('NOT_FINITE', path, 'a finite number', value, 'Leave the field out when the value is not known.');
  }
  return new Quantity(value, unit as U);
}

function giveQuantity(kind?: Kind): string {
  return kind === undefined
    ? 'Give { value, unit }; text goes through parseQuantity(text, kind) first.'
    : `Give { value, unit } or text with a unit: ${unitsOfKind(kind)}.`;
}
