import { PAGE, type Piece, paragraph, ROW } from './paper.js';
import { element } from './svg.js';
import { type LineStyle, strokeOf } from './symbols.js';

/** What a line stands for, in words behind a piece of it. */
export function lineRow(text: string, line: LineStyle | undefined, top: number): Piece {
  const { margin } = PAGE;
  const y = top + ROW / 2;
  const sample = line && element('line', { x1: margin, y1: y, x2: margin + 28, y2: y, ...strokeOf(line) });
  const { markup, bottom } = paragraph(text, top, false, margin + 36);
  return { markup: (sample ?? '') + markup, bottom };
}
