// A drawing read by a strict XML parser, which refuses what a browser would repair.
import { SaxesParser } from 'saxes';

export interface SvgElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly SvgElement[];
  /** Its own text, without that of its children. */
  readonly text: string;
}

interface Open extends SvgElement {
  readonly children: SvgElement[];
  text: string;
}

/** The tree of an SVG; text that is not well-formed XML throws. */
export function readSvg(svg: string): SvgElement {
  const parser = new SaxesParser({ xmlns: true });
  const top: Open = { name: '', attributes: {}, children: [], text: '' };
  const open = [top];
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const values = Object.entries(attributes).map(([key, { value }]) => [key, value]);
    const element: Open = { name, attributes: Object.fromEntries(values), children: [], text: '' };
    open.at(-1)?.children.push(element);
    open.push(element);
  });
  parser.on('text', (text) => {
    const element = open.at(-1);
    if (element !== undefined) element.text += text;
  });
  parser.on('closetag', () => void open.pop());
  parser.write(svg).close();
  if (top.children.length !== 1) throw new Error('one element at the top is asked for');
  return top.children[0] as SvgElement;
}

/** An element and all below it. */
export function everyElement(element: SvgElement): SvgElement[] {
  return [element, ...element.children.flatMap(everyElement)];
}

export const withAttribute = (element: SvgElement, name: string): SvgElement[] =>
  everyElement(element).filter(({ attributes }) => name in attributes);

export const named = (element: SvgElement, name: string): SvgElement[] =>
  everyElement(element).filter((each) => each.name === name);

/** Every line of text, top to bottom as it stands in the file. */
export const textsOf = (element: SvgElement): string[] => named(element, 'text').map(({ text }) => text);

export function viewOf(svg: SvgElement, name: 'above' | 'left'): SvgElement {
  const view = withAttribute(svg, 'data-view').find(({ attributes }) => attributes['data-view'] === name);
  if (view === undefined) throw new Error(`no view ${name}`);
  return view;
}

export const numberOf = (element: SvgElement, name: string): number => Number(element.attributes[name]);

/** The points of a polyline. */
export const pointsOf = ({ attributes }: SvgElement): [number, number][] =>
  (attributes.points ?? '').split(' ').map((pair) => pair.split(',').map(Number) as [number, number]);

/** The line of a tie-down in a view. */
export function lineOf(view: SvgElement, id: string): SvgElement {
  const line = withAttribute(view, 'data-tie-down').find(({ attributes }) => attributes['data-tie-down'] === id);
  if (line === undefined) throw new Error(`no line ${id}`);
  return line;
}
