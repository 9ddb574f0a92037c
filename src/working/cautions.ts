import { type Note, note } from './note.js';

/** The usual cautions of the trade, as ready sentences. Literals, so that unused ones leave the bundle. */

export const STRAIGHT_PULL: Note = /* @__PURE__ */ note('STRAIGHT_PULL');

export const FOLLOW_THE_MARK: Note = /* @__PURE__ */ note('FOLLOW_THE_MARK');

export const STAND_CLEAR: Note = /* @__PURE__ */ note('STAND_CLEAR');

export const NOT_FOR_LIFTING: Note = /* @__PURE__ */ note('NOT_FOR_LIFTING');
