import * as z from 'zod';
import { describe, RiggingError, type RiggingErrorCode, type RiggingIssue } from '../errors.js';

/**
 * The shapes that the schemas are made of. Each says in the library's own codes what is wrong with a value, so
 * that zod's issues carry them as `params`; zod's own wording is replaced where it stood.
 */

/** A fault of one value; `at` leads from that value to where the fault is. */
export interface Fault extends Omit<RiggingIssue, 'path'> {
  readonly at?: readonly PropertyKey[];
}

/** One of zod's issues while it can still be replaced. */
export type OpenIssue = z.core.$ZodRawIssue;

/**
 * Calls a function that makes a schema. Module level may hold only calls marked as pure, or every schema would
 * stay in every bundle, and a schema is a tree of calls.
 */
export function build<T>(make: () => T): T {
  return make();
}

export function fault(
  code: RiggingErrorCode,
  expected: string,
  received: unknown,
  remedy: string,
  at?: readonly PropertyKey[],
): Fault {
  return { code, expected, received: describe(received), remedy, ...(at === undefined ? {} : { at }) };
}

/** What the library's own reader says of a value; nothing where it reads it. */
export function faultOf(read: () => unknown): readonly Fault[] {
  try {
    read();
    return [];
  } catch (error) {
    if (!(error instanceof RiggingError)) throw error;
    const { code, expected, received, remedy } = error;
    return [{ code, expected, received, remedy }];
  }
}

/** Nobody reads more, and a hostile list could have any number. */
const MOST_ISSUES = 1000;

/**
 * A schema that says its faults in the library's own codes.
 *
 * @param say the faults that stand for an issue that zod found on the value itself; `undefined` keeps zod's
 * @param more faults that zod does not see; it is asked whatever zod found
 */
export function withFaults<S extends z.ZodType>(
  schema: S,
  say: (value: unknown, issue: OpenIssue) => readonly Fault[] | undefined,
  more: (value: unknown) => readonly Fault[] = () => [],
): S {
  return schema.superRefine(
    (value, { issues }) => {
      const told = issues.flatMap((issue) => {
        const own = (issue.path ?? []).length === 0 || 'discriminator' in issue;
        const said = own && !isFault(issue) ? say(value, issue) : undefined;
        return said === undefined ? [issue] : said.map((each) => issueOf(value, each));
      });
      for (const each of more(value)) told.push(issueOf(value, each));
      issues.length = 0;
      for (const issue of told.slice(0, MOST_ISSUES)) issues.push(issue);
    },
    { when: () => true },
  );
}

/** The fault that an issue of zod carries. */
export function isFault(issue: object): issue is { readonly params: Omit<RiggingIssue, 'path'> } {
  return 'params' in issue && typeof issue.params === 'object' && issue.params !== null && 'remedy' in issue.params;
}

function issueOf(input: unknown, { at = [], ...params }: Fault): OpenIssue {
  const message = `Expected ${params.expected}, got ${params.received}. ${params.remedy}`;
  return { code: 'custom', input, path: [...at], message, params };
}

/** One of several shapes. What is wrong is said of the shape that `pick` takes the value for, or is what `pick` says. */
export function oneOf<const Shapes extends readonly [z.ZodType, ...z.ZodType[]]>(
  shapes: Shapes,
  pick: (value: unknown) => z.ZodType | readonly Fault[],
): z.ZodUnion<Shapes> {
  return withFaults(z.union(shapes), (value) => {
    const picked = pick(value);
    if (!('safeParse' in picked)) return picked;
    return (picked.safeParse(value).error?.issues ?? []).flatMap((issue) =>
      isFault(issue) ? [{ ...(issue.params as Omit<RiggingIssue, 'path'>), at: issue.path }] : [],
    );
  });
}

/**
 * One of several objects, each known by a field of its own.
 *
 * @param usual the one that is meant where none of these fields is given, where the library takes one for it
 */
export function choice<const Shapes extends Readonly<Record<string, z.ZodType>>>(
  what: string,
  shapes: Shapes,
  usual?: keyof Shapes & string,
): z.ZodUnion<readonly Shapes[keyof Shapes][]> {
  const names = Object.keys(shapes);
  const pick = (value: unknown): z.ZodType | readonly Fault[] => {
    const given = names.filter((each) => fieldOf(value, each) !== undefined);
    const isObject = typeof value === 'object' && value !== null;
    const one = given.length === 0 && isObject ? usual : given.length === 1 ? given[0] : undefined;
    if (one !== undefined) return shapes[one] as z.ZodType;
    return [
      given.length === 0
        ? fault('MISSING_FIELD', what, value, 'Give one of them.')
        : fault('CONFLICTING_FIELDS', what, given.join(' and '), 'Give one of them.'),
    ];
  };
  return oneOf(Object.values(shapes) as [z.ZodType, ...z.ZodType[]], pick) as unknown as z.ZodUnion<
    readonly Shapes[keyof Shapes][]
  >;
}

/** An object with these fields and no others. */
export function fields<const Shape extends z.core.$ZodLooseShape>(
  what: string,
  shape: Shape,
): z.ZodObject<Shape, z.core.$strict> {
  return withFaults(z.strictObject(shape), (value, issue) => {
    if (issue.code !== 'unrecognized_keys')
      return [fault('MISSING_FIELD', what, value, 'Give the object with its fields.')];
    const known = `a field of ${what}: ${Object.keys(shape).join(', ')}`;
    return (issue.keys as string[]).map((key) =>
      fault('UNKNOWN_FIELD', known, key, 'Check the spelling, or leave it out.', [key]),
    );
  });
}

/** A field that may be left out. In the type it is absent or has a value; `undefined` is taken as absent, as JSON does. */
export function optional<S extends z.ZodType>(schema: S): z.ZodExactOptional<S> {
  return z.optional(schema) as unknown as z.ZodExactOptional<S>;
}

/** One of a few words. */
export function word<const Word extends string>(words: readonly Word[], code: RiggingErrorCode = 'UNKNOWN_VALUE') {
  return withFaults(z.enum(words), (value) => [wrongWord(words.join(', '), code, value)]);
}

/** The fault of a field that takes one of a few values. */
export function wrongWord(expected: string, code: RiggingErrorCode, value: unknown): Fault {
  return value === undefined
    ? fault('MISSING_FIELD', expected, value, 'Say which.')
    : fault(code, expected, value, 'Write one of them as it stands here.');
}

export function flag() {
  return withFaults(z.boolean(), (value) => [
    fault('UNKNOWN_VALUE', 'true or false', value, 'Leave it out where it is not known.'),
  ]);
}

/** A whole number from least to most. zod's own integer ends the check of a value before its fault can be said. */
export function wholeNumber(least: number, most: number, expected: string, remedy: string) {
  return withFaults(z.number().multipleOf(1).min(least).max(most), (value) => [
    fault('NOT_A_WHOLE_NUMBER', expected, value, remedy),
  ]);
}

/** The name of a thing, by which results name it. */
export function name() {
  return withFaults(z.string().min(1), (value) => [
    fault('MISSING_FIELD', 'a name', value, 'Results name it by its id.'),
  ]);
}

/** Text that only a table or a rule set can judge. */
export function text(expected: string) {
  return withFaults(z.string(), (value) => [
    fault('UNKNOWN_VALUE', expected, value, 'Write it as text, or leave it out when it is not known.'),
  ]);
}

/** A list of at least so many items. */
export function list<Item extends z.ZodType>(
  item: Item,
  least: number,
  expected: string,
  more?: (value: unknown) => readonly Fault[],
) {
  const items = least === 0 ? z.array(item) : z.array(item).min(least);
  return withFaults(
    items,
    (value) => [fault('EMPTY_LIST', expected, value, 'Give a list with everything in it.')],
    more,
  );
}

/** Claims ids one by one and says which was taken before. */
export function claimIds(remedy: string): (holder: unknown, at: readonly PropertyKey[]) => readonly Fault[] {
  const taken = new Set<unknown>();
  return (holder, at) => {
    const id = fieldOf(holder, 'id');
    if (typeof id !== 'string' || id === '') return [];
    if (taken.has(id)) return [fault('DUPLICATE_ID', 'an id used once in its list', id, remedy, [...at, 'id'])];
    taken.add(id);
    return [];
  };
}

/** A field of whatever may be an object. */
export function fieldOf(holder: unknown, key: string): unknown {
  return typeof holder === 'object' && holder !== null ? (holder as Record<string, unknown>)[key] : undefined;
}

/** A list, or an empty one for whatever is none. */
export function itemsOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}
