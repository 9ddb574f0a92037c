import type { english } from './en.js';

/** The code of a note. */
export type NoteCode = keyof typeof english.notes;

/** The words of one language: what `english` says, in other words. */
export type Words = {
  readonly [Part in keyof typeof english]: (typeof english)[Part] extends string
    ? string
    : { readonly [Key in keyof (typeof english)[Part]]: string };
};

/** The names of the places in a sentence: `'size' | 'grade'` of `'{size} grade {grade}'`. */
type PlacesOf<Sentence extends string> = Sentence extends `${string}{${infer Place}}${infer Rest}`
  ? Place | PlacesOf<Rest>
  : never;

/** The names of the values that a note of a code carries. */
export type PlacesOfNote<Code extends NoteCode> = PlacesOf<(typeof english.notes)[Code]>;

/** The codes of the notes that have exactly these places. */
export type NoteWith<Place extends string> = {
  [Code in NoteCode]: [PlacesOfNote<Code>, Place] extends [Place, PlacesOfNote<Code>] ? Code : never;
}[NoteCode];
