import { visible } from '../explain/say.js';

// SVG as text: elements, escaping, and how much room words take. Nothing here knows what is drawn.

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element; `content` is markup already, the values of the attributes are not. One that is undefined is left out. */
export function element(name: string, attributes: Attributes, content = ''): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? rounded(value) : escaped(String(value))}"`)
    .join('');
  return content === '' ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}

/** A number as SVG reads it everywhere: two decimals, no exponent. A hundredth of a pixel is nothing to see. */
export function rounded(value: number): string {
  return String(Math.round(value * 100) / 100 + 0); // minus zero becomes zero
}

/** `'12,30 40,50'`, for a polyline. */
export function pointList(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y]) => `${rounded(x)},${rounded(y)}`).join(' ');
}

/** Text that stays text, between tags and in an attribute. */
export function escaped(text: string): string {
  return text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/'/g, '&#39;');
}

/** The caller's text in one line of at most so many signs; what XML cannot hold is written out, as `\u{1b}`. */
export function lineOf(text: string, most: number): string {
  const start = text.slice(0, 4 * most); // enough of it: most signs are one or two units
  const signs = [...visible(start)];
  return signs.length > most || start !== text ? `${signs.slice(0, most - 1).join('')}…` : signs.join('');
}

/** Ids of the caller are shown at most this long. */
export const MOST_OF_ID = 60;

export const TEXT_SIZE = 12;

export interface TextStyle {
  readonly size?: number;
  readonly bold?: boolean;
  readonly anchor?: 'start' | 'middle' | 'end';
}

/** One line of text; `y` is its baseline. */
export function textLine(x: number, y: number, text: string, style: TextStyle = {}): string {
  const { size = TEXT_SIZE, bold = false, anchor = 'start' } = style;
  return element(
    'text',
    {
      x,
      y,
      'font-size': size === TEXT_SIZE ? undefined : size,
      'font-weight': bold ? 'bold' : undefined,
      'text-anchor': anchor === 'start' ? undefined : anchor,
    },
    escaped(text),
  );
}

/**
 * About how wide a text is: no font is known here, so each sign counts as much as it takes in a wide sans-serif face.
 */
export function textWidth(text: string, size = TEXT_SIZE, bold = false): number {
  let ems = 0;
  for (const sign of text) ems += emsOf(sign);
  return ems * size * (bold ? 1.1 : 1);
}

function emsOf(sign: string): number {
  if (/[ .,:;'!|iljtfr()[\]/-]/.test(sign)) return 0.36;
  if (/[mwMW@%…]/.test(sign) || sign > '\u1100') return 1;
  return /[A-Z]/.test(sign) ? 0.72 : 0.6;
}

/** As much of a text as fits, with an ellipsis for the rest. */
export function fitted(text: string, width: number, size = TEXT_SIZE): string {
  if (textWidth(text, size) <= width) return text;
  let fits = '';
  for (const sign of text) {
    if (textWidth(`${fits}${sign}…`, size) > width) break;
    fits += sign;
  }
  return `${fits}…`;
}

/** A text in lines that fit; a word that does not fit is broken. */
export function wrapped(text: string, width: number, size = TEXT_SIZE, bold = false): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (textWidth(longer, size, bold) <= width) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const sign of word) {
      if (textWidth(line + sign, size, bold) > width) {
        lines.push(line);
        line = '';
      }
      line += sign;
    }
  }
  return [...lines, line];
}

/**
 * A name for the ids of a drawing, from its content: the 64 bits of two FNV-1a hashes with different starts. Two
 * drawings that differ get different names without a counter or chance.
 */
export function contentName(prefix: string, content: string): string {
  return `${prefix}-${fnv1a(content, 0x811c9dc5)}${fnv1a(content, 0x01234567)}`;
}

function fnv1a(text: string, start: number): string {
  let hash = start;
  for (let index = 0; index < text.length; index++) hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, '0');
}
