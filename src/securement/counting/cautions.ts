import { type Note, note } from '../../working/note.js';

/** What rules that count and add up do not look at. */
export const NOT_LOOKED_AT: readonly Note[] = [
  /* @__PURE__ */ note('DIRECTION_NOT_CHECKED'),
  /* @__PURE__ */ note('COUNTING_NOT_LOOKED_AT'),
];
