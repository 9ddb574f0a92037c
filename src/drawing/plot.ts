import { formatNumber } from '../quantities/format.js';
import { PAGE, type Piece, ROW } from './paper.js';
import { element, pointList, TEXT_SIZE, textLine, textWidth } from './svg.js';
import { endSign, INK, type LineStyle, type Spot, strokeOf, textOnPaper } from './symbols.js';

/** Curves over an axis from zero, in the units that its axes name. */
export interface Plot {
  readonly across: Axis;
  readonly up: Axis;
  readonly curves: readonly Curve[];
  /** Levels that the curves are held against. */
  readonly levels: readonly Level[];
  /** Points of the curves to mark: `full` or open. */
  readonly marks: readonly { readonly at: readonly [number, number]; readonly full: boolean }[];
}

interface Axis {
  readonly title: string;
  /** What it must show; it ends at the next round number. */
  readonly most: number;
}

interface Curve {
  readonly name: string;
  readonly line: LineStyle;
  readonly points: readonly (readonly [number, number])[];
}

export interface Level {
  readonly name: string;
  readonly line: LineStyle;
  readonly value: number;
}

const HEIGHT = 220;
/** Intervals of an axis, at most. */
const MOST_STEPS = 5;

/** Axes with their numbers, the levels with their names, and the curves over them. */
export function drawPlot({ across, up, curves, levels, marks }: Plot, top: number): Piece {
  const [columns, rows] = [ticksTo(across.most), ticksTo(up.most)];
  const left = PAGE.margin + 6 + Math.max(...rows.map((tick) => textWidth(formatNumber(tick))));
  const right = PAGE.width - PAGE.margin - 8;
  const upper = top + ROW + 8;
  const lower = upper + HEIGHT;
  const [width, height] = [columns.at(-1) as number, rows.at(-1) as number];
  const spot = ([x, y]: readonly [number, number]): Spot => [
    left + (x / width) * (right - left),
    lower - (y / height) * HEIGHT,
  ];
  const grid = { stroke: '#cfcfcf', 'stroke-width': 0.75 };
  const axis = {
    points: pointList([
      [left, upper],
      [left, lower],
      [right, lower],
    ]),
    fill: 'none',
    stroke: INK,
  };
  const markup = [
    textLine(PAGE.margin, top + TEXT_SIZE, up.title, { bold: true }),
    ...rows.map((tick) => {
      const [, y] = spot([0, tick]);
      const line = element('line', { x1: left, y1: y, x2: right, y2: y, ...grid });
      return line + textLine(left - 5, y + 4, formatNumber(tick), { anchor: 'end' });
    }),
    ...columns.map((tick) => {
      const [x] = spot([tick, 0]);
      const line = element('line', { x1: x, y1: upper, x2: x, y2: lower, ...grid });
      return line + textLine(x, lower + TEXT_SIZE + 2, formatNumber(tick), { anchor: 'middle' });
    }),
    element('polyline', { ...axis, 'stroke-width': 1.5 }),
    ...levels.map(({ name, line, value }) => {
      const y = spot([0, value])[1];
      return element('line', { 'data-level': name, x1: left, y1: y, x2: right, y2: y, ...strokeOf(line) });
    }),
    ...curves.map(({ name, line, points }) =>
      element('polyline', { 'data-curve': name, points: pointList(points.map(spot)), ...strokeOf(line) }),
    ),
    ...tagsOf(levels, (value) => spot([0, value])[1], upper).map(({ name, y }) =>
      textOnPaper(right - 4 - textWidth(name, TEXT_SIZE, true) / 2, y, name),
    ),
    ...marks.map(({ at, full }) => endSign(spot(at), full)),
    textLine((left + right) / 2, lower + 2 * TEXT_SIZE + 6, across.title, { bold: true, anchor: 'middle' }),
  ].join('');
  return { markup: element('g', { 'data-view': 'plot' }, markup), bottom: lower + 2 * TEXT_SIZE + 10 };
}

/** Names above their lines, each moved up as far as the one below it asks; inside the plot while there is room. */
function tagsOf(levels: readonly Level[], yOf: (value: number) => number, upper: number) {
  let least = Number.POSITIVE_INFINITY;
  const placed = [...levels]
    .sort((a, b) => a.value - b.value)
    .map(({ name, value }) => {
      const y = Math.min(yOf(value) - 6, least);
      least = y - ROW;
      return { name, y };
    });
  const over = Math.max(0, upper + TEXT_SIZE - (placed.at(-1)?.y ?? Number.POSITIVE_INFINITY));
  return placed.map(({ name, y }) => ({ name, y: y + over }));
}

/** Zero and round numbers up to the first that is enough: steps of 1, 2 or 5 times a power of ten. */
export function ticksTo(most: number): number[] {
  const power = 10 ** Math.floor(Math.log10(most / MOST_STEPS));
  const step = ([1, 2, 5, 10] as const).map((each) => each * power).find((each) => each * MOST_STEPS >= most) as number;
  const steps = Math.ceil(most / step - 1e-9);
  // counted, not added up, so that 0.3 stays 0.3
  return Array.from({ length: steps + 1 }, (_, index) => Number((index * step).toPrecision(12)));
}
