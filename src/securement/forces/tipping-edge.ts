import { dot, type Vec3 } from '../../statics/vector.js';
import { type Note, note } from '../../working/note.js';
import type { ArticleLayout, Run } from '../layout.js';
import { ALONG, type Heading, holdingBack, pressingDown } from './directions.js';

/** An edge over which a load would tip, and its levers about it, in meters. */
export interface TippingEdge {
  readonly heading: Heading;
  /** From the center of gravity to the edge, along the heading; below zero the center of gravity is beyond it. */
  readonly b: number;
  /** Height of the center of gravity above the edge. */
  readonly d: number;
  /** Where the edge lies along the heading, and how high, straight before the center of gravity. */
  readonly at: number;
  readonly height: number;
  /** The place of the center of gravity across the heading, to the left of it. */
  readonly across: number;
  /** How far the edge runs along the heading, and how far it rises, for each meter across: both 0 for a square level one. */
  readonly skew: number;
  readonly rise: number;
}

/**
 * The edges over which a load would tip first in a heading; undefined while contacts or center of gravity are not known.
 *
 * A load stands on the convex hull of its contacts and tips over a side of it that faces the heading. In axes u along
 * the heading and v to the left of it, a side faces the heading when, run through with the hull on its left, it goes
 * toward +v. It crosses the vertical plane through the center of gravity along the heading at u = at, b = at − u of the
 * center of gravity, and lies d below it there.
 *
 * Take moments about the side, direction e = (k, 1, m), k its skew and m its rise, from that crossing. The weight W at
 * (−b, 0, d) with the force (c · W, 0, −cz · W) gives e · (r × F) = W · (c · d − cz · b): whatever k and m are, the load
 * stands while b / d > c / cz. Of the sides that face the heading, that with the least b gives way first; for a center
 * of gravity within the hull it is the one that the line from it along the heading leaves the hull through. Where that
 * is a corner, such as a single front wheel, both sides that meet there are edges, and the load must hold about each.
 *
 * About an oblique edge the moment is taken about the edge itself and against the same heading. It is the cautious
 * reading: the outermost contact lies farther out, and one beside the line carries nothing until the load has turned.
 * A side that lies farther along the heading is not looked at, even where tie-downs hold less about it.
 *
 * The edge of a rectangle is its side. Contacts in one line along the heading have no side that faces it: their
 * outermost one is a square edge.
 */
export function tippingEdges(
  { centerOfGravity, contacts }: ArticleLayout,
  heading: Heading,
): readonly [TippingEdge, ...TippingEdge[]] | undefined {
  if (centerOfGravity === undefined || contacts.length === 0) return undefined;
  const inFrame = ([x, y, z]: Vec3): Vec3 => {
    const [ux, uy] = ALONG[heading];
    return [x * ux + y * uy, y * ux - x * uy, z];
  };
  const [u, v, z] = inFrame(centerOfGravity);
  const edgeAt = (point: Vec3, skew: number, rise: number): TippingEdge => {
    const aside = v - point[1];
    const at = point[0] + skew * aside;
    const height = point[2] + rise * aside;
    return { heading, b: at - u, d: z - height, at, height, across: v, skew, rise };
  };
  const hull = hullOf(contacts.map((contact) => inFrame(contact.at)));
  const edges = hull.flatMap((from, index): TippingEdge[] => {
    const to = hull[(index + 1) % hull.length] as Vec3;
    const width = to[1] - from[1];
    if (!(width > 0)) return [];
    // from the nearer of its ends, so that two sides that meet before the center of gravity meet in the same number
    const near = Math.abs(v - from[1]) <= Math.abs(v - to[1]) ? from : to;
    return [edgeAt(near, (to[0] - from[0]) / width, (to[2] - from[2]) / width)];
  });
  const least = Math.min(...edges.map(({ b }) => b));
  const [first, ...others] = edges.filter(({ b }) => b === least);
  if (first !== undefined) return [first, ...others];
  return [
    edgeAt(
      hull.reduce((best, point) => (point[0] > best[0] ? point : best)),
      0,
      0,
    ),
  ];
}

/** The corners of the convex hull in plan, with the hull on the left from one to the next: Andrew's monotone chain. */
function hullOf(points: readonly Vec3[]): readonly Vec3[] {
  const sorted = [...points].sort(([ax, ay], [bx, by]) => ax - bx || ay - by);
  const half = (along: readonly Vec3[]): readonly Vec3[] => {
    const corners: Vec3[] = [];
    for (const point of along) {
      while (corners.length > 1 && !turnsLeft(corners.at(-2) as Vec3, corners.at(-1) as Vec3, point)) corners.pop();
      corners.push(point);
    }
    return corners.slice(0, -1);
  };
  return points.length === 1 ? points : [...half(sorted), ...half(sorted.reverse())];
}

const turnsLeft = ([ax, ay]: Vec3, [bx, by]: Vec3, [cx, cy]: Vec3): boolean =>
  (bx - ax) * (cy - ay) > (by - ay) * (cx - ax);

/** Levers of a run about an edge beside it: h of its holding back, s of its pressing down (negative beyond the edge). */
export function leversOf({ attachment }: Run, edge: TippingEdge): { readonly h: number; readonly s: number } {
  const { heading, at, height, skew, rise } = edge;
  const aside = asideOf(attachment, edge);
  return { h: attachment[2] - (height + rise * aside), s: at + skew * aside - dot(attachment, ALONG[heading]) };
}

/**
 * The moment of a run about an edge for each newton of it: h · cos α · cos β + s · sin α, and about an oblique edge
 * q · (h · skew + s · rise) more, q the share with which it pulls to the left of the heading.
 */
export function momentOf(run: Run, edge: TippingEdge): number {
  const { h, s } = leversOf(run, edge);
  const { heading, skew, rise } = edge;
  const square = h * holdingBack(run, heading) + s * pressingDown(run);
  return skew === 0 && rise === 0 ? square : square + leftOf(run.pull, heading) * (h * skew + s * rise);
}

const asideOf = (point: Vec3, { heading, across }: TippingEdge): number => leftOf(point, heading) - across;

/** The part of a vector to the left of a heading. */
function leftOf([x, y]: Vec3, heading: Heading): number {
  const [ux, uy] = ALONG[heading];
  return y * ux - x * uy;
}

/** Whether nothing tips a load over an edge: its center of gravity lies no higher than that, and not beyond it. */
export const isLow = ({ b, d }: TippingEdge): boolean => d <= 0 && b >= 0;

/** What must be known before a load can be held against tipping. */
export function missingStance({ article, centerOfGravity, contacts }: ArticleLayout): readonly Note[] {
  const missing: Note[] = [];
  if (centerOfGravity === undefined) missing.push(note('CENTER_OF_GRAVITY_NOT_STATED', { article: article.id }));
  if (contacts.length === 0) missing.push(note('CONTACTS_NOT_STATED', { article: article.id }));
  return missing;
}
