import { formatNumber } from '../quantities/format.js';
import type { QuantityLike } from '../quantities/quantity.js';
import type { NoteCode, NoteWith, PlacesOfNote } from '../words/words.js';

/** A value that fills a place in a sentence. */
export type NoteParam = string | number | QuantityLike;

/** Something a result has to say: a stable code and the values in it. */
export interface Note<Code extends string = string> {
  readonly code: Code;
  readonly params: Readonly<Record<string, NoteParam>>;
  /** The code and the values written out, so that it can be read without the words of a language. */
  readonly text: string;
}

export type { NoteCode, NoteWith };

/** A note with the values of its places, each by its name; a sentence without places has none. */
export function note<Code extends NoteCode>(
  code: Code,
  ...given: [PlacesOfNote<Code>] extends [never] ? [] : [params: { readonly [Place in PlacesOfNote<Code>]: NoteParam }]
): Note {
  const params: Note['params'] = given[0] ?? {};
  let text = code.toLowerCase().replaceAll('_', ' ');
  let sign = ': ';
  for (const [name, value] of Object.entries(params)) {
    text += `${sign}${name} ${sayParam(value)}`;
    sign = ', ';
  }
  return { code, params, text };
}

export function sayParam(value: NoteParam): string {
  if (typeof value === 'object') return `${formatNumber(value.value, 10)} ${value.unit}`;
  return typeof value === 'number' ? formatNumber(value) : value;
}
