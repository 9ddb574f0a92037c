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
