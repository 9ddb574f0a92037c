import type { UnitSystem } from '../quantities/units.js';
import { PAGE, type Piece, ROW } from './paper.js';
import { element, rounded, textLine } from './svg.js';
import { INK } from './symbols.js';

type Bar = readonly [text: string, meters: number];

const BARS: Readonly<Record<UnitSystem, readonly [Bar, ...Bar[]]>> = {
  // 1 in = 0.0254 m, 1 ft = 0.3048 m
  us: [
    ['3 in', 0.0762],
    ['6 in', 0.1524],
    ['1 ft', 0.3048],
    ['2 ft', 0.6096],
    ['5 ft', 1.524],
    ['10 ft', 3.048],
    ['20 ft', 6.096],
    ['50 ft', 15.24],
    ['100 ft', 30.48],
    ['200 ft', 60.96],
    ['500 ft', 152.4],
    ['1000 ft', 304.8],
  ],
  si: [
    ['100 mm', 0.1],
    ['200 mm', 0.2],
    ['500 mm', 0.5],
    ['1 m', 1],
    ['2 m', 2],
    ['5 m', 5],
    ['10 m', 10],
    ['20 m', 20],
    ['50 m', 50],
    ['100 m', 100],
    ['200 m', 200],
    ['500 m', 500],
  ],
};

const LONGEST_BAR = 110;

/** The longest bar of a round length that is not too long to stand in a corner. */
function scaleBar(scale: number, units: UnitSystem): { readonly text: string; readonly length: number } {
  const [shortest, ...longer] = BARS[units];
  const [text, meters] = longer.filter(([, each]) => each * scale <= LONGEST_BAR).at(-1) ?? shortest;
  return { text, length: meters * scale };
}

/** A bar of a round length, and what it is the scale of. */
export function drawScaleBar(scale: number, units: UnitSystem, of: string, top: number): Piece {
  const { text, length } = scaleBar(scale, units);
  const x = PAGE.margin + 6;
  const y = top + 5;
  const bar = {
    d: `M${x} ${rounded(y - 4)}v8m0 -4h${rounded(length)}m0 -4v8`,
    fill: 'none',
    stroke: INK,
    'stroke-width': 1.5,
  };
  return {
    markup: element('path', { 'data-scale': text, ...bar }) + textLine(x + length + 6, y + 4, `${text}, ${of}`),
    bottom: top + ROW,
  };
}
