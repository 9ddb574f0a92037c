import { TEXT_SIZE, textLine, wrapped } from './svg.js';

/** The page, in units that are pixels on a telephone 360 px wide. */
export const PAGE = { width: 360, margin: 12 } as const;

/** From one line of text to the next: its size and a quarter. */
export const ROW = 15;

/** A piece of the page, and where it ends. */
export interface Piece {
  readonly markup: string;
  readonly bottom: number;
}

/** Pieces one below the other. */
export function stack(top: number, draws: readonly ((top: number) => Piece)[]): Piece {
  return draws.reduce<Piece>(
    ({ markup, bottom }, draw) => {
      const next = draw(bottom);
      return { markup: markup + next.markup, bottom: next.bottom };
    },
    { markup: '', bottom: top },
  );
}

/** A text over as many lines as it needs, from `x` to the margin. */
export function paragraph(text: string, top: number, heading = false, x: number = PAGE.margin): Piece {
  const size = heading ? TEXT_SIZE + 3 : TEXT_SIZE;
  const row = size + 3;
  const lines = wrapped(text, PAGE.width - PAGE.margin - x, size, heading);
  return {
    markup: lines.map((line, index) => textLine(x, top + index * row + size, line, { size, bold: heading })).join(''),
    bottom: top + lines.length * row,
  };
}
