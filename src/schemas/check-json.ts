import type * as z from 'zod';
import { describe, RiggingError, type RiggingIssue } from '../errors.js';
import { isFault } from './fields.js';

/** What {@link checkJson} says: the value, or everything that is wrong with it. */
export type JsonCheck<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly issues: readonly [RiggingIssue, ...RiggingIssue[]] };

/** A plan whose parts lie side by side sixteen times over stays within it; a cycle does not. */
const MAX_DEPTH = 64;
/** A plan of a thousand tie-downs has some fifty thousand values. */
const MAX_VALUES = 100_000;

/**
 * Holds data from outside against a schema and reports everything that is wrong with it at once, each with the
 * code, the path and the remedy that the library's own functions give.
 *
 * The data may be anything: it is copied first, as JSON would, so that no getter, cycle or prototype reaches the
 * schema or the result. It throws nothing.
 *
 * @param schema a schema of this module, or one made with them
 * @param data what `JSON.parse` gave, or any other value
 * @example
 * const check = checkJson(partSchema, { id: 'binder', kind: 'binder', markedWll: '5,400 lb', stile: 'lever' });
 * if (!check.ok) for (const { path, code } of check.issues) console.log(`${path}: ${code}`);
 * // => markedWll: AMBIGUOUS_NUMBER
 * //    stile: UNKNOWN_FIELD
 */
export function checkJson<S extends z.ZodType>(schema: S, data: unknown): JsonCheck<z.output<S>> {
  const issues: RiggingIssue[] = [];
  try {
    const parsed = schema.safeParse(new Copier(issues).copy(data, []));
    if (parsed.success && issues.length === 0) return { ok: true, value: parsed.data };
    issues.push(...(parsed.error?.issues ?? []).map(issueFrom));
  } catch (error) {
    if (!(error instanceof RiggingError)) throw error;
    issues.push(error.toJSON());
  }
  return { ok: false, issues: issues as [RiggingIssue, ...RiggingIssue[]] };
}

/**
 * Reads data from outside by a schema: the value, ready for the library's functions.
 *
 * @param schema a schema of this module, or one made with them
 * @param data what `JSON.parse` gave, or any other value
 * @throws RiggingError for the first thing that is wrong; {@link checkJson} says all of them
 * @example
 * try {
 *   readJson(articleSchema, { id: 'tractor', kind: 'machinery', mass: '2 ton', length: '10 ft' });
 * } catch (error) {
 *   if (error instanceof RiggingError) console.log(error.path, error.code);
 * }
 * // => mass AMBIGUOUS_UNIT
 */
export function readJson<S extends z.ZodType>(schema: S, data: unknown): z.output<S> {
  const check = checkJson(schema, data);
  if (!check.ok) throw new RiggingError(check.issues[0]);
  return check.value;
}

/** Copies plain data; every property is read once, and one that cannot be read is left out. */
class Copier {
  private readonly issues: RiggingIssue[];
  private values = 0;

  constructor(issues: RiggingIssue[]) {
    this.issues = issues;
  }

  copy(value: unknown, path: readonly PropertyKey[]): unknown {
    if (++this.values > MAX_VALUES) this.refuse(path, `at most ${MAX_VALUES} values`, 'more', 'Send less at once.');
    if (typeof value !== 'object' || value === null) return value;
    if (path.length > MAX_DEPTH) {
      this.refuse(
        path,
        `data nested at most ${MAX_DEPTH} deep`,
        'data nested deeper, or around in a circle',
        'List parts side by side in one parallel, not in parallels of parallels.',
      );
    }
    const { isList, keys } = keysOf(value);
    const copy: Record<PropertyKey, unknown> = isList ? ([] as unknown as Record<PropertyKey, unknown>) : {};
    for (const key of keys) {
      const item = this.copy(valueAt(value, key), [...path, key]);
      if (key === '__proto__') {
        this.issues.push({
          code: 'UNKNOWN_FIELD',
          path: pathText([...path, key]),
          expected: 'a field of the schema',
          received: "'__proto__'",
          remedy: 'Leave it out.',
        });
      } else if (isList || item !== undefined) copy[key] = item;
    }
    return copy;
  }

  private refuse(path: readonly PropertyKey[], expected: string, received: string, remedy: string): never {
    throw new RiggingError({ code: 'TOO_LARGE', path: pathText(path), expected, received, remedy });
  }
}

/** The keys to copy; none where the object refuses to be looked at. */
function keysOf(value: object): { isList: boolean; keys: Iterable<string | number> } {
  try {
    return Array.isArray(value)
      ? { isList: true, keys: indices(value.length) }
      : { isList: false, keys: Object.keys(value) };
  } catch {
    return { isList: false, keys: [] };
  }
}

function* indices(length: number): Iterable<number> {
  for (let index = 0; index < length; index++) yield index;
}

function valueAt(holder: object, key: string | number): unknown {
  try {
    return (holder as Record<string | number, unknown>)[key];
  } catch {
    return undefined;
  }
}

function issueFrom(issue: z.core.$ZodIssue): RiggingIssue {
  const path = pathText(issue.path);
  if (isFault(issue)) return { ...issue.params, path };
  // a schema that the application added itself
  return {
    code: 'UNKNOWN_VALUE',
    path,
    expected: 'a value that the schema accepts',
    received: describe(issue.input),
    remedy: issue.message,
  };
}

/** `tieDowns[2].parts[0].size` */
function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}[${key}]`;
    const plain = /^[A-Za-z_]\w{0,59}$/.test(String(key));
    if (!plain) return `${text}[${describe(String(key))}]`;
    return text === '' ? String(key) : `${text}.${String(key)}`;
  }, '');
}
