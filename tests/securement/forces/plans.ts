// A load on contacts of any shape, in meters.

import type { Point } from '../../../src/quantities/point.js';
import { type ArticleLayout, type Run, readLayout, readRuns } from '../../../src/securement/layout.js';
import type { Article } from '../../../src/securement/plan.js';
import { machine, rated } from '../plans.js';

export const at = (x: number, y: number, z: number): Point => [
  { value: x, unit: 'm' },
  { value: y, unit: 'm' },
  { value: z, unit: 'm' },
];

export const run = (attachment: Point, anchor: Point): Run =>
  readRuns({ path: 'vehicle-to-cargo', attachment, anchor })[0] as Run;

export const layoutOf = (more: Partial<Article>): ArticleLayout =>
  readLayout({ articles: [machine(more)], tieDowns: [rated('chain', '4700 lb')] })[0]!;

/** A load with its center of gravity at a point and contacts at others. */
export const standing = (
  centerOfGravity: readonly [number, number, number],
  ...contacts: readonly (readonly [number, number, number])[]
): ArticleLayout =>
  layoutOf({ centerOfGravity: at(...centerOfGravity), contacts: contacts.map((point) => ({ at: at(...point) })) });
