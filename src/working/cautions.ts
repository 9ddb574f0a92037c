import type { Note } from './note.js';

/** The usual cautions of the trade, as ready sentences. Literals, so that unused ones leave the bundle. */

const NO_PARAMS = {};

export const STRAIGHT_PULL: Note = {
  code: 'STRAIGHT_PULL',
  params: NO_PARAMS,
  text: 'For a straight, even pull on sound chain: no knots, twists, side or tip loads, no shock.',
};

export const FOLLOW_THE_MARK: Note = {
  code: 'FOLLOW_THE_MARK',
  params: NO_PARAMS,
  text: "The maker's marking and instructions govern; local codes and a qualified person decide.",
};

export const STAND_CLEAR: Note = {
  code: 'STAND_CLEAR',
  params: NO_PARAMS,
  text: 'Stay clear of a loaded chain and out of its line; take up slack gently.',
};

export const NOT_FOR_LIFTING: Note = {
  code: 'NOT_FOR_LIFTING',
  params: NO_PARAMS,
  text: 'Not a rating for overhead lifting.',
};
