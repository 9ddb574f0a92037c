/**
 * The one error class of the library. It is thrown when something cannot be computed; a check that was
 * computed and whose answer is "no" is returned as a verdict instead.
 *
 * Codes are public: renaming one is a breaking change.
 */
export type RiggingErrorCode =
  // text and quantities
  | 'TEXT_NOT_A_QUANTITY'
  | 'TEXT_TOO_LONG'
  | 'TEXT_TOO_PRECISE'
  | 'AMBIGUOUS_NUMBER'
  | 'AMBIGUOUS_UNIT'
  | 'UNKNOWN_UNIT'
  | 'WRONG_KIND'
  | 'NOT_A_QUANTITY'
  | 'NOT_FINITE'
  | 'NOT_POSITIVE'
  | 'NEGATIVE'
  | 'NOT_A_WHOLE_NUMBER'
  | 'NOT_A_DATE'
  | 'OPERATOR_ON_QUANTITY'
  | 'UNITS_REQUIRED'
  // tables
  | 'UNKNOWN_SIZE'
  | 'UNKNOWN_GRADE'
  | 'NO_VALUE_IN_TABLE'
  // plans and parts
  | 'MISSING_FIELD'
  | 'UNKNOWN_FIELD'
  | 'UNKNOWN_VALUE'
  | 'UNKNOWN_REFERENCE'
  | 'UNKNOWN_RULE_SET'
  | 'UNKNOWN_RATING_TABLE'
  | 'UNKNOWN_CRITERIA_SET'
  | 'EMPTY_LIST'
  | 'NOT_ITERABLE'
  | 'DUPLICATE_ID'
  | 'TOO_LARGE'
  | 'CONFLICTING_FIELDS'
  | 'IMPOSSIBLE_GEOMETRY';

/** What a {@link RiggingError} says, as plain data. */
export interface RiggingIssue {
  readonly code: RiggingErrorCode;
  /** Where the fault is, such as `tieDowns[2].parts[0].size`; empty when the whole argument is meant. */
  readonly path: string;
  readonly expected: string;
  readonly received: string;
  /** What to do about it. */
  readonly remedy: string;
}

/**
 * Thrown when the library cannot compute: misuse, impossible input, a value that no table holds.
 *
 * @example
 * try { parseQuantity('1,000 lb', 'mass') } catch (error) { error.code }
 * // => 'AMBIGUOUS_NUMBER'
 */
export class RiggingError extends Error implements RiggingIssue {
  declare readonly code: RiggingErrorCode;
  declare readonly path: string;
  declare readonly expected: string;
  declare readonly received: string;
  declare readonly remedy: string;

  constructor(issue: RiggingIssue) {
    const { path, expected, received, remedy } = issue;
    super(`${path && `${path}: `}expected ${expected}, got ${received}. ${remedy}`);
    this.name = 'RiggingError';
    Object.assign(this, issue);
  }

  /** The five fields of {@link RiggingIssue}, for logs and for answers to a web form. */
  toJSON(): RiggingIssue {
    const { code, path, expected, received, remedy } = this;
    return { code, path, expected, received, remedy };
  }
}

/** Throws a {@link RiggingError}; written as an expression so that it can stand after `??`. */
export function fail(code: RiggingErrorCode, path: string, expected: string, received: unknown, remedy: string): never {
  // what was expected may list the caller's own ids
  throw new RiggingError({ code, path, expected: clip(expected, 400), received: describe(received), remedy });
}

/**
 * Passes an error on with the place it came from put before its path. Code that reads one item names the field
 * alone; the list that holds the item adds where it stands, and only once something is wrong.
 */
export function failAt(place: string, error: unknown): never {
  if (!(error instanceof RiggingError)) throw error;
  const path = error.path === '' ? place : `${place}.${error.path}`;
  throw new RiggingError({ ...error.toJSON(), path: path.replace('.[', '[') });
}

/** Reads one field that holds others; an error says which. */
export function within<Read>(place: string, read: () => Read): Read {
  try {
    return read();
  } catch (error) {
    return failAt(place, error);
  }
}

/** Reads a list item by item; an error says which item it came from. */
export function mapAt<Item, Read>(
  list: readonly Item[],
  name: string,
  read: (item: Item, index: number) => Read,
): Read[] {
  const all = new Array<Read>(list.length);
  let index = 0;
  try {
    for (; index < list.length; index++) all[index] = read(list[index] as Item, index);
  } catch (error) {
    failAt(`${name}[${index}]`, error);
  }
  return all;
}

/** A short, safe description of any value: never throws, bounded in length, no control characters. */
export function describe(value: unknown): string {
  if (typeof value === 'string') return `'${clip(value, 60)}'`;
  if (value === null || ['number', 'boolean', 'undefined'].includes(typeof value)) return String(value);
  if (typeof value !== 'object') return `a ${typeof value}`;
  try {
    if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : 'a list';
  } catch {
    // a proxy that refuses to be looked at
  }
  return 'an object';
}

/** Any text in one line: at most so long, no control characters. */
export function clip(text: string, most: number): string {
  const line = text.slice(0, most).replace(/[\p{C}\p{Zl}\p{Zp}]/gu, '\uFFFD');
  return text.length > most ? `${line}…` : line;
}
