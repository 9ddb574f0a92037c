import { formatNumber } from '../quantities/format.js';
import type { QuantityLike } from '../quantities/quantity.js';

/** A value that fills a place in a sentence. */
export type NoteParam = string | number | QuantityLike;

/** A sentence with a stable code and the values in it, so that it can be said in another language. */
export interface Note<Code extends string = string> {
  readonly code: Code;
  readonly params: Readonly<Record<string, NoteParam>>;
  readonly text: string;
}

/** A code, and its sentence with named places: `['TOO_FEW', '{count} of {needed}']`. */
export type Words = readonly [code: string, text: string];

/** A sentence without places. */
export function plainNote(code: string, text: string): Note {
  return { code, params: {}, text };
}

/** Fills the places of a sentence; without values it has none. */
export function note([code, sentence]: Words, params?: Note['params']): Note {
  if (params === undefined) return plainNote(code, sentence);
  const text = sentence.replace(/\{(\w+)\}/g, (place, name: string) => {
    const value = params[name];
    return value === undefined ? place : sayValue(value);
  });
  return { code, params, text };
}

function sayValue(value: NoteParam): string {
  if (typeof value === 'object') return `${formatNumber(value.value, 10)} ${value.unit}`;
  return typeof value === 'number' ? formatNumber(value) : value;
}
