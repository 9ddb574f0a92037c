import { dot, type Vec3 } from '../../statics/vector.js';
import type { Run } from '../layout.js';

/** The ways a load may go on its deck. */
export type Heading = 'forward' | 'rearward' | 'left' | 'right';

export const HEADINGS = ['forward', 'rearward', 'left', 'right'] as const satisfies readonly Heading[];

/** Unit vectors of the headings, and upward: x forward, y left, z up. */
export const ALONG: Readonly<Record<Heading | 'up', Vec3>> = {
  forward: [1, 0, 0],
  rearward: [-1, 0, 0],
  left: [0, 1, 0],
  right: [0, -1, 0],
  up: [0, 0, 1],
};

/** A heading as the codes tell them apart: both sides are one. */
export const SIDE = {
  forward: 'forward',
  rearward: 'rearward',
  left: 'sideways',
  right: 'sideways',
} as const satisfies Record<Heading, string>;

/** A heading in the title of a check: sliding forward, tipping to the left. */
export const toward = (heading: Heading): string => (SIDE[heading] === 'sideways' ? `to the ${heading}` : heading);

/**
 * The share of its tension with which a run holds the load back from a heading: cos α · cos β, where α is its angle
 * to the deck and β that of its plan to the heading. Below zero it would pull the load along.
 */
export const holdingBack = ({ pull }: Run, heading: Heading): number => -dot(pull, ALONG[heading]);

/** The share of its tension with which a run presses the load on the deck: sin α. */
export const pressingDown = ({ pull }: Run): number => -pull[2];

/** Angles of a run as the codes write them, in degrees: α to the deck, β between its plan and the heading. */
export function anglesOf(
  { pull: [x, y, z] }: Run,
  heading: Heading,
): { readonly alpha: number; readonly beta: number } {
  const degrees = 180 / Math.PI;
  const [ux, uy] = ALONG[heading];
  const flat = Math.hypot(x, y);
  const alpha = Math.atan2(-z, flat) * degrees;
  const beta = flat === 0 ? 90 : Math.acos(Math.min(1, Math.abs(x * ux + y * uy) / flat)) * degrees;
  return { alpha, beta };
}
