import { fail } from '../errors.js';
import { PAGE, type Piece } from './paper.js';
import { contentName, element, escaped, TEXT_SIZE } from './svg.js';
import { INK, PAPER } from './symbols.js';

/** The start of the ids of a drawing, as the caller names it. */
export function checkName(id: unknown): void {
  if (id === undefined || (typeof id === 'string' && /^[A-Za-z][\w-]{0,63}$/.test(id))) return;
  fail('UNKNOWN_VALUE', 'id', 'a letter, then at most 63 letters, digits, - or _', id, 'Leave it out, or shorten it.');
}

/** A page as an SVG that stands alone, with its paper, its title and its description; `start` names it, with its content where `unique`. */
export function standalone(start: string, unique: boolean, title: string, description: string, page: Piece): string {
  const name = unique ? contentName(start, title + description + page.markup) : start;
  const [width, height] = [PAGE.width, Math.ceil(page.bottom)];
  const edge = { rx: 4, fill: PAPER, stroke: '#8a8a8a' };
  const paper = element('rect', { x: 0.5, y: 0.5, width: width - 1, height: height - 1, ...edge });
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      'aria-labelledby': `${name}-title ${name}-desc`,
    },
    element('title', { id: `${name}-title` }, escaped(title)) +
      element('desc', { id: `${name}-desc` }, escaped(description)) +
      // one step in, so that what a page says of every svg does not reach the letters
      element('g', { 'font-family': 'sans-serif', 'font-size': TEXT_SIZE, fill: INK }, paper + page.markup),
  );
}
