import { type Note, plainNote } from './note.js';

/** The usual cautions of the trade, as ready sentences. Literals, so that unused ones leave the bundle. */

export const STRAIGHT_PULL: Note = /* @__PURE__ */ plainNote(
  'STRAIGHT_PULL',
  'For a straight, even pull on sound chain: no knots, twists, side or tip loads, no shock.',
);

export const FOLLOW_THE_MARK: Note = /* @__PURE__ */ plainNote(
  'FOLLOW_THE_MARK',
  "The maker's marking and instructions govern; local codes and a qualified person decide.",
);

export const STAND_CLEAR: Note = /* @__PURE__ */ plainNote(
  'STAND_CLEAR',
  'Stay clear of a loaded chain and out of its line; take up slack gently.',
);

export const NOT_FOR_LIFTING: Note = /* @__PURE__ */ plainNote('NOT_FOR_LIFTING', 'Not a rating for overhead lifting.');
