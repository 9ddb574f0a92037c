import { dot, type Vec3 } from '../statics/vector.js';
import type { ArticleLayout, Run } from './layout.js';

/** The ways a load may go on its deck. */
export type Heading = 'forward' | 'rearward' | 'left' | 'right';

export const HEADINGS = ['forward', 'rearward', 'left', 'right'] as const satisfies readonly Heading[];

/** Unit vectors of the headings: x forward, y left. */
export const ALONG: Readonly<Record<Heading, Vec3>> = {
  forward: [1, 0, 0],
  rearward: [-1, 0, 0],
  left: [0, 1, 0],
  right: [0, -1, 0],
};

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

/** A run with the force it is counted on for, in newtons. */
export interface CountedRun {
  readonly run: Run;
  readonly force: number;
}

/**
 * What direct tie-downs hold against sliding in a heading: sum(F · (cos α · cos β + μ · sin α)) over the runs that
 * hold back. One that would pull the load along is left out.
 */
export function heldDirectly(runs: readonly CountedRun[], heading: Heading, mu: number): number {
  let held = 0;
  for (const { run, force } of runs) {
    const back = holdingBack(run, heading);
    if (back > 0) held += force * (back + mu * pressingDown(run));
  }
  return held;
}

/** What tie-downs over the load hold against sliding, whichever the heading: sum(μ · F · sin α), F the pretension. */
export function heldByFriction(runs: readonly CountedRun[], mu: number): number {
  return runs.reduce((held, { run, force }) => held + mu * force * pressingDown(run), 0);
}

/** What direct tie-downs hold against tipping: sum(F · (h · cos α · cos β + s · sin α)) over the runs that hold back, in N m. */
export function heldAgainstTipping(runs: readonly CountedRun[], edge: TippingEdge, heading: Heading): number {
  let held = 0;
  for (const { run, force } of runs) {
    const back = holdingBack(run, heading);
    const { h, s } = leversOf(run, edge, heading);
    if (back > 0) held += force * (h * back + s * pressingDown(run));
  }
  return held;
}

/** The edge over which a load would tip, and the levers about it, in meters. */
export interface TippingEdge {
  /** From the center of gravity to the edge, along the heading. */
  readonly b: number;
  /** Height of the center of gravity above the edge. */
  readonly d: number;
  /** Where the edge lies along the heading, and how high. */
  readonly at: number;
  readonly height: number;
}

/** The outermost contacts in a heading; undefined while contacts or center of gravity are not known. */
export function tippingEdge({ centerOfGravity, contacts }: ArticleLayout, heading: Heading): TippingEdge | undefined {
  if (centerOfGravity === undefined || contacts.length === 0) return undefined;
  const along = ALONG[heading];
  const outermost = contacts.reduce((best, contact) => (dot(contact.at, along) > dot(best.at, along) ? contact : best));
  const at = dot(outermost.at, along);
  const height = outermost.at[2];
  return { b: at - dot(centerOfGravity, along), d: centerOfGravity[2] - height, at, height };
}

/** Levers of a run about a tipping edge: h of its holding back, s of its pressing down (negative beyond the edge). */
export function leversOf(
  { attachment }: Run,
  edge: TippingEdge,
  heading: Heading,
): { readonly h: number; readonly s: number } {
  return { h: attachment[2] - edge.height, s: edge.at - dot(attachment, ALONG[heading]) };
}
