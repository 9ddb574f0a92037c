import { element, pointList, rounded, TEXT_SIZE, textLine, textWidth } from './svg.js';

// What the signs of a drawing look like. Every difference of meaning is one of width, dashes, shape or words; color
// only repeats it, so that a gray print says the same.

export const INK = '#1a1a1a';
export const PAPER = '#ffffff';
const QUIET = '#555555';

/** A place in the picture. */
export type Spot = readonly [x: number, y: number];

export interface LineStyle {
  readonly color: string;
  readonly width: number;
  readonly dash?: string;
}

/** The line of a tie-down: thicker the more of its capacity it carries, long dashes at capacity, dots when slack. */
export function styleOfShare(share: number): LineStyle {
  if (share >= 1) return { color: '#b00020', width: 4.5, dash: '10 3' };
  if (share >= 0.5) return { color: '#8a4b00', width: 3 };
  return share > 0 ? { color: '#0b4f8a', width: 1.5 } : { color: QUIET, width: 1.75, dash: '1.5 3' };
}

export const PLAIN_LINE: LineStyle = { color: INK, width: 2 };
export const UNKNOWN_LINE: LineStyle = { color: QUIET, width: 2, dash: '7 3 1.5 3' };

export function strokeOf({ color, width, dash }: LineStyle) {
  return { fill: 'none', stroke: color, 'stroke-width': width, 'stroke-dasharray': dash };
}

/** The quartered circle of a center of gravity. */
export function centerOfGravitySign([x, y]: Spot): string {
  const disc = element('circle', { cx: x, cy: y, r: 6, fill: PAPER, stroke: INK, 'stroke-width': 1.25 });
  const center = `M${rounded(x)} ${rounded(y)}`;
  return disc + element('path', { d: `${center}v-6a6 6 0 0 1 6 6z${center}v6a6 6 0 0 1 -6 -6z`, fill: INK });
}

/** A piece of the thick edge that marks the front of the deck. */
export function frontSign([x, y]: Spot): string {
  return frontEdge([x, y - 6], [x, y + 6]);
}

/** The thick edge that marks the front of the deck. */
export function frontEdge([x1, y1]: Spot, [x2, y2]: Spot): string {
  return element('line', { x1, y1, x2, y2, stroke: INK, 'stroke-width': 4 });
}

/** A place where an article stands. */
export function contactSign([x, y]: Spot): string {
  return element('rect', { x: x - 3.5, y: y - 3.5, width: 7, height: 7, fill: '#d9d9d9', stroke: INK });
}

/** A tie-down is fixed to the vehicle at a full dot and meets the cargo at an open one. */
export function endSign([x, y]: Spot, onVehicle: boolean): string {
  return element('circle', { cx: x, cy: y, r: 2.75, fill: onVehicle ? INK : PAPER, stroke: INK });
}

/** An arrow with a broad head; `way` is a unit step in the picture. */
export function arrow([x, y]: Spot, [dx, dy]: Spot, length: number): string {
  const head = 11;
  const tip: Spot = [x + dx * length, y + dy * length];
  const neck: Spot = [tip[0] - dx * head, tip[1] - dy * head];
  const side = 6.5;
  const shaft = element('line', { x1: x, y1: y, x2: neck[0], y2: neck[1], stroke: INK, 'stroke-width': 4 });
  const points = pointList([
    tip,
    [neck[0] - dy * side, neck[1] + dx * side],
    [neck[0] + dy * side, neck[1] - dx * side],
  ]);
  return shaft + element('polygon', { points, fill: INK });
}

/** Bold text on a piece of paper of its own, so that it reads over lines; `x` is its middle. */
export function textOnPaper(x: number, y: number, text: string): string {
  const width = textWidth(text, TEXT_SIZE, true) + 4;
  const paper = { x: x - width / 2, y: y - TEXT_SIZE + 1, width, height: TEXT_SIZE + 3, fill: PAPER };
  return element('rect', { ...paper, 'fill-opacity': 0.85 }) + textLine(x, y, text, { bold: true, anchor: 'middle' });
}
