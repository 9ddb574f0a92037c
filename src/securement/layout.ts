import { fail, mapAt, within } from '../errors.js';
import { checkList, checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { type Point, readPoint } from '../quantities/point.js';
import type { QuantityLike } from '../quantities/quantity.js';
import { STANDARD_GRAVITY } from '../quantities/rated.js';
import { readOptional, readPositive } from '../quantities/read.js';
import { lengthOf, subtract, type Vec3 } from '../statics/vector.js';
import {
  type Article,
  type ContactPoint,
  type Gives,
  type Plan,
  type ReadArticle,
  readPlan,
  type TieDown,
} from './plan.js';

/**
 * Where everything stands and pulls, in meters and newtons; axes x forward, y left, z up, origin on the deck in the
 * middle of its front edge (ISO 8855). What the plan does not say is absent here: each reader decides whether that
 * is an error or a missing fact.
 */
export interface ArticleLayout {
  readonly article: Article;
  readonly mass: ReadArticle['mass'];
  /** N. */
  readonly weight: number;
  readonly centerOfGravity?: Vec3;
  readonly contacts: readonly ContactLayout[];
  /** The tie-downs that hold it, in the order of the plan. */
  readonly tieDowns: readonly TieDownLayout[];
}

/** A place where an article stands. */
interface ContactLayout {
  readonly at: Vec3;
  readonly friction?: number;
  /** N/m; absent: rigid. */
  readonly stiffness?: number;
}

/** One tie-down with its straight runs: one of a direct tie-down, two of one that runs over the cargo. */
export interface TieDownLayout {
  readonly tieDown: TieDown;
  /** Empty where the plan gives no points for it. */
  readonly runs: readonly Run[];
  /** N. */
  readonly pretension?: number;
  /** E · A in N. */
  readonly axialStiffness?: number;
}

/** A straight run from the cargo to the vehicle. */
export interface Run {
  readonly attachment: Vec3;
  readonly anchor: Vec3;
  /** m. */
  readonly length: number;
  /** Unit vector from cargo to vehicle: the way it pulls the cargo. */
  readonly pull: Vec3;
}

/** Reads a plan with its geometry. Tie-downs that hold an accessory belong to the article that carries it. */
export function readLayout(plan: Plan): readonly ArticleLayout[] {
  const articles = readPlan(plan);
  const tieDowns = mapAt(plan.tieDowns, 'tieDowns', readTieDownLayout);
  return mapAt(articles, 'articles', (read) => layoutOfArticle(read, tieDowns));
}

/** One article with the tie-downs that hold it. */
export function layoutOfArticle({ article, mass }: ReadArticle, tieDowns: readonly TieDownLayout[]): ArticleLayout {
  const { centerOfGravity, contacts = [] } = article;
  const friction = readFriction(article.friction, 'friction');
  if (article.contacts !== undefined) checkList(contacts, 'contacts');
  const held = [article.id, ...(article.accessories ?? []).map(({ id }) => id)];
  return {
    article,
    mass,
    weight: inUnit(mass, 'kg').value * STANDARD_GRAVITY,
    ...(centerOfGravity !== undefined && { centerOfGravity: readPoint(centerOfGravity, 'centerOfGravity') }),
    contacts: mapAt(contacts, 'contacts', (contact) => readContact(contact, friction)),
    tieDowns: tieDowns.filter(({ tieDown }) => held.includes(tieDown.holds)),
  };
}

function readContact(contact: ContactPoint, ofArticle: number | undefined): ContactLayout {
  checkObject(contact, '', 'a contact { at }');
  const { gives } = contact;
  const friction = readFriction(contact.friction, 'friction') ?? ofArticle;
  return {
    at: readPoint(contact.at, 'at'),
    ...(friction !== undefined && { friction }),
    ...(gives !== undefined && { stiffness: within('gives', () => stiffnessOf(gives)) }),
  };
}

/** k = force / way. */
function stiffnessOf(gives: Gives): number {
  checkObject(gives, '', '{ by, under }');
  const by = inUnit(readPositive(gives.by, 'length', 'by'), 'm').value;
  return inUnit(readPositive(gives.under, 'force', 'under'), 'N').value / by;
}

/** The greatest friction factor anybody measures between a load and a deck is well below this. */
export const MOST_FRICTION = 2;

/** A friction factor, if there is one. */
export function readFriction(friction: unknown, path: string): number | undefined {
  if (friction === undefined) return undefined;
  if (typeof friction !== 'number' || !(friction >= 0 && friction <= MOST_FRICTION)) {
    const code = typeof friction === 'number' && friction < 0 ? 'NEGATIVE' : 'NOT_FINITE';
    fail(code, path, `a friction factor from 0 to ${MOST_FRICTION}`, friction, 'Give the number, such as 0.3.');
  }
  return friction as number;
}

function readTieDownLayout(tieDown: TieDown): TieDownLayout {
  const pretension = newtons(readOptional(tieDown.pretension, 'force', 'pretension'));
  const axialStiffness = newtons(readOptional(tieDown.axialStiffness, 'force', 'axialStiffness'));
  return {
    tieDown,
    runs: readRuns(tieDown),
    ...(pretension !== undefined && { pretension }),
    ...(axialStiffness !== undefined && { axialStiffness }),
  };
}

/** The points of a tie-down. */
export type TieDownPoints = Pick<TieDown, 'path' | 'anchor' | 'attachment' | 'otherAnchor' | 'otherAttachment'>;

/** The straight runs of a tie-down; none where it has no points. */
export function readRuns({ path, anchor, attachment, otherAnchor, otherAttachment }: TieDownPoints): readonly Run[] {
  const first = readRun(anchor, attachment, 'anchor', 'attachment');
  const other = readRun(otherAnchor, otherAttachment, 'otherAnchor', 'otherAttachment');
  if (first === undefined) {
    if (other !== undefined) fail('MISSING_FIELD', 'anchor', 'the first end too', undefined, 'Give both ends.');
    return [];
  }
  if (other === undefined) return [first];
  if (path === 'vehicle-to-cargo') {
    fail('CONFLICTING_FIELDS', 'otherAnchor', 'none: a direct tie-down ends on the cargo', 'a point', 'Leave it out.');
  }
  checkSides(path, first, other);
  return [first, other];
}

const newtons = (force: QuantityLike | undefined): number | undefined => force && inUnit(force, 'N').value;

function readRun(
  anchor: Point | undefined,
  attachment: Point | undefined,
  anchorName: string,
  attachmentName: string,
): Run | undefined {
  if (anchor === undefined && attachment === undefined) return undefined;
  const from = readPoint(attachment, attachmentName);
  const to = readPoint(anchor, anchorName);
  const line = subtract(to, from);
  const length = lengthOf(line);
  if (!(length > 0)) {
    fail(
      'IMPOSSIBLE_GEOMETRY',
      anchorName,
      'a point apart from where it meets the cargo',
      'the same point',
      'Check it.',
    );
  }
  // divided, so that a run along an axis pulls with exactly 1 and one of 3-4-5 with exactly 0.6 and 0.8
  const pull: Vec3 = [line[0] / length, line[1] / length, line[2] / length];
  return { attachment: from, anchor: to, length, pull };
}

/** The path is stated, because the law counts by it; where the points contradict it, one of the two is wrong. */
function checkSides(path: TieDown['path'], { anchor: one }: Run, { anchor: other }: Run): void {
  const sameSide = one[1] * other[1] > 0;
  if (sameSide === (path === 'over-same-side')) return;
  fail(
    'CONFLICTING_FIELDS',
    'path',
    sameSide ? 'over-same-side: both anchors are on one side' : 'over-other-side: the anchors are on two sides',
    path,
    'Correct the path or the points.',
  );
}
