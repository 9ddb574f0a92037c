import { fail } from '../errors.js';
import type { UnitSystem } from '../quantities/units.js';
import { PAGE, type Piece } from './paper.js';
import { contentName, element, escaped, lineOf, TEXT_SIZE } from './svg.js';
import { INK, PAPER } from './symbols.js';

/** How a drawing is made. */
export interface DrawingOptions {
  /** The system of what the drawing measures itself, such as its scale bar; omitted: the one that the input shares. */
  readonly units?: UnitSystem;
  /** The start of the ids in the drawing; omitted: made from its content. Give one to draw the same twice on one page. */
  readonly id?: string;
}

/** The options of a drawing; an id that is no name of an element is refused. */
export function readOptions(options: DrawingOptions | undefined): DrawingOptions {
  const { id } = options ?? {};
  if (id !== undefined && !(typeof id === 'string' && /^[A-Za-z][\w-]{0,63}$/.test(id))) {
    fail(
      'UNKNOWN_VALUE',
      'id',
      'a letter, then at most 63 letters, digits, - or _',
      id,
      'Leave it out, or shorten it.',
    );
  }
  return options ?? {};
}

interface Page {
  readonly title: string;
  /** All of it in sentences, for who does not see it. */
  readonly description: string;
  readonly page: Piece;
  readonly id: string | undefined;
}

/** A page as an SVG that stands alone, on paper of its own; `prefix` begins the ids that are made from the content. */
export function standalone(prefix: string, { title, description, page: { markup, bottom }, id }: Page): string {
  const [heading, told] = [lineOf(title, 300), lineOf(description, 3000)];
  const name = id ?? contentName(prefix, heading + told + markup);
  const [width, height] = [PAGE.width, Math.ceil(bottom)];
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
    element('title', { id: `${name}-title` }, escaped(heading)) +
      element('desc', { id: `${name}-desc` }, escaped(told)) +
      // one step in, so that what a page says of every svg does not reach the letters
      element('g', { 'font-family': 'sans-serif', 'font-size': TEXT_SIZE, fill: INK }, paper + markup),
  );
}
