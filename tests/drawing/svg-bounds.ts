// How far the elements of a drawing reach: a line of text as wide as the library takes it to be.
import { textWidth } from '../../src/drawing/svg.js';
import { everyElement, named, numberOf, pointsOf, type SvgElement } from './read-svg.js';

export type Bounds = readonly [left: number, top: number, right: number, bottom: number];

/** Of every shape and text but the paths, whose steps are relative. */
export function boundsOf(svg: SvgElement): Bounds[] {
  return [...everyElement(svg).flatMap(shapeBounds), ...textBoxes(svg)];
}

function shapeBounds(element: SvgElement): Bounds[] {
  const at = (name: string) => numberOf(element, name);
  switch (element.name) {
    case 'rect':
      return [[at('x'), at('y'), at('x') + at('width'), at('y') + at('height')]];
    case 'circle':
      return [[at('cx') - at('r'), at('cy') - at('r'), at('cx') + at('r'), at('cy') + at('r')]];
    case 'line':
      return [
        [
          Math.min(at('x1'), at('x2')),
          Math.min(at('y1'), at('y2')),
          Math.max(at('x1'), at('x2')),
          Math.max(at('y1'), at('y2')),
        ],
      ];
    case 'polygon':
    case 'polyline': {
      const points = pointsOf(element);
      const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
      return [[Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]];
    }
    default:
      return [];
  }
}

export function textBoxes(svg: SvgElement): Bounds[] {
  return named(svg, 'text').map((line) => {
    const size = Number(line.attributes['font-size'] ?? 12);
    const width = textWidth(line.text, size, line.attributes['font-weight'] === 'bold');
    const anchor = line.attributes['text-anchor'] ?? 'start';
    const left = numberOf(line, 'x') - (anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0);
    const baseline = numberOf(line, 'y');
    return [left, baseline - size * 0.8, left + width, baseline + size * 0.2];
  });
}
