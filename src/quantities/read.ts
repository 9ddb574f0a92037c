import { fail } from '../errors.js';
import { parseQuantity, quantityOfKind, refuse } from './parse.js';
import { knownUnit, Quantity } from './quantity.js';
import type { Kind, Unit, UnitOfKind } from './units.js';

/**
 * Reads a field of a kind: text through the parser, objects after a check. Each field of an object is read
 * once and copied, so that an object that changes afterwards changes no result.
 */
export function readQuantity<K extends Kind>(input: unknown, kind: K, path: string): Quantity<UnitOfKind[K]> {
  if (typeof input === 'string') return parseQuantity(input, kind, path);
  const { value, unit } = fieldsOf(input);
  if (typeof value === 'number' && typeof unit === 'string') return quantityOfKind(value, unit, kind, path);
  return refuse(input === undefined ? 'MISSING_FIELD' : 'NOT_A_QUANTITY', path, kind, input);
}

/** Reads a field whose value must be above zero. */
export function readPositive<K extends Kind>(input: unknown, kind: K, path: string): Quantity<UnitOfKind[K]> {
  const quantity = readQuantity(input, kind, path);
  if (quantity.value > 0) return quantity;
  return refuse('NOT_POSITIVE', path, kind, `${quantity}`, 'Give a value above zero.');
}

/** Reads a field that may be left out; given, its value may be zero and not below. */
export function readFromZero<K extends Kind>(
  input: unknown,
  kind: K,
  path: string,
): Quantity<UnitOfKind[K]> | undefined {
  if (input === undefined) return undefined;
  const quantity = readQuantity(input, kind, path);
  return quantity.value < 0 ? refuse('NEGATIVE', path, kind, `${quantity}`, 'Check the sign.') : quantity;
}

/** Reads a field that may be left out; given, its value must be above zero. */
export function readOptional<K extends Kind>(
  input: unknown,
  kind: K,
  path: string,
): Quantity<UnitOfKind[K]> | undefined {
  return input === undefined ? undefined : readPositive(input, kind, path);
}

/** Reads a quantity object of any kind. */
export function readAny<U extends Unit = Unit>(input: unknown, path: string): Quantity<U> {
  const { value, unit } = fieldsOf(input);
  if (typeof value === 'number' && typeof unit === 'string')
    return new Quantity(value, knownUnit(unit as U, path), path);
  return fail(
    'NOT_A_QUANTITY',
    path,
    '{ value: number, unit: text }',
    input,
    'Text goes through parseQuantity(text, kind).',
  );
}

/** Null, and an object whose fields cannot be read, have none. */
function fieldsOf(input: unknown): { readonly value?: unknown; readonly unit?: unknown } {
  try {
    const { value, unit } = input as { value: unknown; unit: unknown };
    return { value, unit };
  } catch {
    return {};
  }
}
