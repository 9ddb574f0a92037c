import { english } from '../words/en.js';
import type { Words } from '../words/words.js';
import type { Note } from '../working/note.js';
import { sayParam } from '../working/note.js';

const MOST_DEPTH = 32;

/**
 * The same result with every note said in a language: its `text` becomes the sentence that belongs to its code, with its
 * values in their places. Figures, verdicts, codes and values stay as they are.
 *
 * A result by itself names each note by its code and values, so that an application carries only the sentences it shows.
 *
 * @param value a result, or any part of one, such as its `cautions`; it may have gone through JSON or `structuredClone`
 * @param words the words of a language; omitted: `english` of `chain-rigging/words/en`
 * @throws nothing: what is no note is left as it is, and so is a note whose code the words do not know
 * @validity notes up to 32 levels deep
 * @source none of its own
 * @example
 * inWords(chainRating({ ratings: us49cfr393_108_2024, size: '5/16', grade: 70 }).cautions)[0]?.text
 * // => 'For a straight, even pull on sound chain: no knots, twists, side or tip loads, no shock.'
 */
export function inWords<Value>(value: Value, words: Words = english): Value {
  return sayAll(value, words, 0, new Map()) as Value;
}

/** What has no note in it stays the same object; what was met before is not gone through again. */
function sayAll(value: unknown, words: Words, depth: number, met: Map<object, unknown>): unknown {
  if (typeof value !== 'object' || value === null || depth > MOST_DEPTH) return value;
  const known = met.get(value);
  if (known !== undefined) return known;
  const said = sayObject(value, words, depth, met);
  met.set(value, said);
  return said;
}

function sayObject(value: object, words: Words, depth: number, met: Map<object, unknown>): unknown {
  if (Array.isArray(value)) {
    const items = value.map((item) => sayAll(item, words, depth + 1, met));
    return items.some((item, index) => item !== value[index]) ? items : value;
  }
  if (isNote(value)) return { ...value, text: sayNote(value, words) };
  const fields: Record<string, unknown> = { ...value };
  let changed = false;
  for (const [key, item] of Object.entries(fields)) {
    const said = sayAll(item, words, depth + 1, met);
    if (said === item) continue;
    changed = true;
    Object.defineProperty(fields, key, { value: said, enumerable: true, writable: true, configurable: true });
  }
  return changed ? Object.create(Object.getPrototypeOf(value), Object.getOwnPropertyDescriptors(fields)) : value;
}

/** A note of the library, or one that looks the same: its values are quantities, numbers and words. */
function isNote(value: object): value is Note {
  const { code, params, text } = value as Readonly<Record<string, unknown>>;
  return (
    typeof code === 'string' &&
    typeof text === 'string' &&
    typeof params === 'object' &&
    params !== null &&
    Object.values(params).every(isSayable)
  );
}

function isSayable(param: unknown): boolean {
  if (typeof param !== 'object' || param === null) return typeof param === 'string' || typeof param === 'number';
  const { value, unit } = param as Readonly<Record<string, unknown>>;
  return typeof value === 'number' && typeof unit === 'string';
}

/** The sentence of a note; one about a tie-down that does not name it is said of it. */
function sayNote({ code, params, text }: Note, { notes, sheet }: Words): string {
  if (!Object.hasOwn(notes, code)) return text;
  const sentence = notes[code as keyof typeof notes];
  const said = fillPlaces(sentence, params);
  return 'tieDown' in params && !sentence.includes('{tieDown}')
    ? fillPlaces(sheet.ofTieDown, { ...params, said })
    : said;
}

function fillPlaces(sentence: string, params: Note['params']): string {
  return sentence.replace(/\{(\w+)\}/g, (place, name: string) => {
    const value = Object.hasOwn(params, name) ? params[name] : undefined;
    return value === undefined ? place : sayParam(value);
  });
}
