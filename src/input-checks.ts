import { fail } from './errors.js';

// What every reader of input asks first. Each throws a RiggingError; none returns anything.

/** Refuses a value that is not one of a few. */
export function checkOneOf(value: unknown, allowed: readonly unknown[], path: string): void {
  for (const one of allowed) if (value === one) return; // quicker than includes, for lists as short as these
  const code = value === undefined ? 'MISSING_FIELD' : 'UNKNOWN_VALUE';
  fail(code, path, `one of ${allowed.join(', ')}`, value, 'Give one of these.');
}

/** Refuses a flag that is neither true nor false; it may be left out. */
export function checkFlag(value: unknown, path: string): void {
  if (value !== undefined) checkOneOf(value, [true, false], path);
}

/** Refuses what is not a list, or one with too few items. */
export function checkList(list: unknown, path: string, least = 1): void {
  if (!Array.isArray(list) || list.length < least) {
    const expected = `a list${least ? ` of at least ${least}` : ''}`;
    fail('EMPTY_LIST', path, expected, list, 'Give a list of what is meant.');
  }
}

/** Refuses what is not an object whose fields can be read. */
export function checkObject(value: unknown, path: string, expected: string): void {
  if (typeof value !== 'object' || value === null) fail('MISSING_FIELD', path, expected, value, 'Give the object.');
}

/** Every item of a list is an object with an id, used once in that list. */
export function checkIds(list: readonly ({ readonly id?: unknown } | null | undefined)[], name: string): void {
  const seen = list.length > 16 ? new Set() : undefined; // a short list is compared one by one
  for (let index = 0; index < list.length; index++) {
    const id = list[index]?.id;
    if (typeof id !== 'string' || id === '') {
      fail('MISSING_FIELD', `${name}[${index}].id`, 'a name', id, 'Results name it by its id.');
    }
    let twice = seen?.has(id);
    if (seen === undefined)
      for (let earlier = 0; earlier < index; earlier++) if (list[earlier]?.id === id) twice = true;
    if (twice) fail('DUPLICATE_ID', `${name}[${index}].id`, 'an id used once', id, 'Rename one of the two.');
    seen?.add(id);
  }
}

/** The fields that have a value, as options that may be left out want them. */
export function defined<Fields extends object>(
  fields: Fields,
): { [Key in keyof Fields]?: Exclude<Fields[Key], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as never;
}
