import type { UnitSystem } from '../quantities/units.js';
import type { Vec3 } from '../statics/vector.js';
import type { Box } from './scene.js';

/**
 * The two views of one load, one above the other as a drawing office lays them: the front is at the left in both,
 * and the left side, which the lower view shows, is the lower edge of the upper one.
 */
export type ViewName = 'above' | 'left';

/** How meters become units of the drawing: the same scale and the same place along the vehicle in both views. */
export interface Frame {
  /** Units of the drawing in a meter. */
  readonly scale: number;
  /** Where the frontmost point of all stands. */
  readonly left: number;
  readonly extent: Box;
}

/** A view with its upper edge at `top`. */
export interface View {
  readonly name: ViewName;
  readonly frame: Frame;
  readonly top: number;
}

/** Smaller than this, a load is drawn as if it were this large, in meters: the scale has to end somewhere. */
const LEAST_SPAN = 0.5;
const MOST_TALL = 240;

/** The largest scale that shows everything in a width. */
export function frameOf(extent: Box, left: number, width: number): Frame {
  const span = (axis: 0 | 1 | 2) => extent.high[axis] - extent.low[axis];
  const scale = Math.min(width / Math.max(span(0), LEAST_SPAN), MOST_TALL / Math.max(span(1), span(2), LEAST_SPAN));
  return { scale, left: left + (width - span(0) * scale) / 2, extent };
}

/** Which coordinate runs down the picture, and from where it is counted: y, the left side, down; z down from the top. */
export function project({ name, frame, top }: View, [x, y, z]: Vec3): [number, number] {
  const { scale, left, extent } = frame;
  const down = name === 'above' ? y - extent.low[1] : extent.high[2] - z;
  return [left + (extent.high[0] - x) * scale, top + down * scale];
}

/** How tall a view is. */
export function heightOf({ scale, extent: { low, high } }: Frame, name: ViewName): number {
  const axis = name === 'above' ? 1 : 2;
  return (high[axis] - low[axis]) * scale;
}

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
export function scaleBar(scale: number, units: UnitSystem): { readonly text: string; readonly length: number } {
  const [shortest, ...longer] = BARS[units];
  const [text, meters] = longer.filter(([, each]) => each * scale <= LONGEST_BAR).at(-1) ?? shortest;
  return { text, length: meters * scale };
}
