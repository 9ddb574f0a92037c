import { type Note, plainNote } from '../../working/note.js';

/** What rules that count and add up do not look at. */
export const NOT_LOOKED_AT: readonly Note[] = [
  /* @__PURE__ */ plainNote(
    'DIRECTION_NOT_CHECKED',
    'Directions are not checked: of four direct chains only two resist forward movement.',
  ),
  /* @__PURE__ */ plainNote(
    'NOT_LOOKED_AT',
    'Nor are chocks, brakes, edge protection, cargo side by side, front-end structure, adjustability.',
  ),
];
