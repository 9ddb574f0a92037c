import { fail, mapAt, within } from '../errors.js';
import { checkObject } from '../input-checks.js';
import { inUnit } from '../quantities/convert.js';
import { type Point, readPoint } from '../quantities/point.js';
import type { QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { readPositive, readQuantity } from '../quantities/read.js';
import { sharedUnits } from '../quantities/shared-units.js';
import type { UnitSystem } from '../quantities/units.js';
import { type ArticleLayout, type Run, readLayout } from '../securement/layout.js';
import type { Article, Plan, TieDown } from '../securement/plan.js';
import type { Vec3 } from '../statics/vector.js';

/** What of a plan can be drawn, in meters; axes x forward, y left, z up, origin in the middle of the deck's front edge. */
export interface Scene {
  readonly units: UnitSystem;
  readonly deck?: Box;
  readonly articles: readonly SceneArticle[];
  readonly tieDowns: readonly SceneTieDown[];
}

/** Two opposite corners: the least and the greatest of each coordinate. */
export interface Box {
  readonly low: Vec3;
  readonly high: Vec3;
}

export interface SceneArticle {
  readonly id: string;
  readonly box?: Box;
  /** The box is the length of the article about its contacts, because the plan gives no outline. */
  readonly approximate: boolean;
  readonly centerOfGravity?: Vec3;
  readonly contacts: readonly Vec3[];
}

export interface SceneTieDown {
  readonly id: string;
  readonly holds: string;
  /** From anchor to anchor, or to the point on the cargo where it ends; empty where the plan gives no points. */
  readonly path: readonly Vec3[];
  /** Where it is fixed on the vehicle. */
  readonly anchors: readonly Vec3[];
}

/** Farther out than any vehicle is long, a point is a slip of the unit. */
export const FARTHEST = 1000;

/** Reads what can be drawn of a plan; nothing at all is an error. */
export function readScene(plan: Plan, asked: UnitSystem | undefined): Scene {
  const layout = readLayout(plan);
  const runs = new Map(layout.flatMap(({ tieDowns }) => tieDowns).map(({ tieDown, runs }) => [tieDown.id, runs]));
  const deck = readDeck(plan);
  const articles = mapAt(layout, 'articles', sceneArticle);
  const scene = {
    units: readUnits(plan, asked),
    ...(deck !== undefined && { deck }),
    articles,
    tieDowns: plan.tieDowns.map((tieDown) => sceneTieDown(tieDown, runs.get(tieDown.id) ?? [])),
  };
  if (!scene.articles.some(isDrawn) && !scene.tieDowns.some(({ path }) => path.length > 0)) {
    fail(
      'MISSING_FIELD',
      'articles',
      'a place of an article or a tie-down',
      'no points',
      'Give an article its outline, contacts or centerOfGravity, or a tie-down its anchor and attachment.',
    );
  }
  return scene;
}

const isDrawn = ({ box, centerOfGravity }: SceneArticle): boolean => box !== undefined || centerOfGravity !== undefined;

function readDeck({ vehicle }: Plan): Box | undefined {
  const deck = vehicle?.deck;
  if (deck === undefined) return undefined;
  return within('vehicle.deck', () => {
    checkObject(deck, '', '{ length, width }');
    const length = inUnit(readPositive(deck.length, 'length', 'length'), 'm').value;
    const half = inUnit(readPositive(deck.width, 'length', 'width'), 'm').value / 2;
    return { low: [-length, -half, 0], high: [0, half, 0] };
  });
}

function sceneArticle({ article, centerOfGravity, contacts }: ArticleLayout): SceneArticle {
  const points = contacts.map(({ at }) => at);
  const outline = readOutline(article);
  const box = outline ?? (points.length > 0 ? boxAbout(points, article, centerOfGravity) : undefined);
  return {
    id: article.id,
    ...(box !== undefined && { box }),
    approximate: outline === undefined,
    ...(centerOfGravity !== undefined && { centerOfGravity }),
    contacts: points,
  };
}

function readOutline({ outline }: Article): Box | undefined {
  if (outline === undefined) return undefined;
  if (!Array.isArray(outline) || outline.length !== 2) {
    fail('MISSING_FIELD', 'outline', 'two opposite corners', outline, "Write [['0 ft', '3 ft', '0 ft'], ...].");
  }
  return boxOf([readPoint(outline[0], 'outline[0]'), readPoint(outline[1], 'outline[1]')]);
}

/** The smallest box around points. */
export function boxOf(points: readonly Vec3[]): Box {
  const least = (axis: 0 | 1 | 2) =>
    points.reduce((low, point) => Math.min(low, point[axis]), Number.POSITIVE_INFINITY);
  const most = (axis: 0 | 1 | 2) =>
    points.reduce((high, point) => Math.max(high, point[axis]), Number.NEGATIVE_INFINITY);
  return { low: [least(0), least(1), least(2)], high: [most(0), most(1), most(2)] };
}

/** The overall length, centered on the contacts, as high as the center of gravity: no more is known. */
function boxAbout(contacts: readonly Vec3[], article: Article, centerOfGravity: Vec3 | undefined): Box {
  const { low, high } = boxOf(contacts);
  const half = inUnit(readPositive(article.length, 'length', 'length'), 'm').value / 2;
  const middle = (low[0] + high[0]) / 2;
  return {
    low: [Math.min(low[0], middle - half), low[1], low[2]],
    high: [Math.max(high[0], middle + half), high[1], Math.max(high[2], centerOfGravity?.[2] ?? high[2])],
  };
}

function sceneTieDown({ id, holds }: TieDown, runs: readonly Run[]): SceneTieDown {
  const [first, other] = runs;
  return {
    id,
    holds,
    path: [
      ...(first === undefined ? [] : [first.anchor, first.attachment]),
      ...(other === undefined ? [] : [other.attachment, other.anchor]),
    ],
    anchors: runs.map(({ anchor }) => anchor),
  };
}

/** The system of units that everything drawn shares, unless the caller asks for one. */
function readUnits(plan: Plan, asked: UnitSystem | undefined): UnitSystem {
  const lengths = lengthsOf(plan).map(({ path, input }): QuantityLike => {
    const length = readQuantity(input, 'length', path);
    if (Math.abs(inUnit(length, 'm').value) > FARTHEST) {
      fail('IMPOSSIBLE_GEOMETRY', path, `at most ${FARTHEST} m`, `${length}`, 'Check the number and its unit.');
    }
    return length;
  });
  return sharedUnits(asked, lengths);
}

interface Length {
  readonly path: string;
  readonly input: QuantityInput<'length'>;
}

/** Every length that is drawn, as the caller wrote it. */
function lengthsOf({ vehicle, articles, tieDowns }: Plan): Length[] {
  const deck = vehicle?.deck;
  return [
    ...(deck === undefined
      ? []
      : [
          { path: 'vehicle.deck.length', input: deck.length },
          { path: 'vehicle.deck.width', input: deck.width },
        ]),
    ...articles.flatMap((article, index) => {
      const { outline, centerOfGravity, contacts = [], length } = article;
      const at = `articles[${index}]`;
      return [
        ...(outline === undefined && contacts.length > 0 ? [{ path: `${at}.length`, input: length }] : []),
        ...coordinates(`${at}.centerOfGravity`, centerOfGravity),
        ...(outline ?? []).flatMap((corner, which) => coordinates(`${at}.outline[${which}]`, corner)),
        ...contacts.flatMap((contact, which) => coordinates(`${at}.contacts[${which}].at`, contact.at)),
      ];
    }),
    ...tieDowns.flatMap(({ anchor, attachment, otherAnchor, otherAttachment }, index) =>
      Object.entries({ anchor, attachment, otherAnchor, otherAttachment }).flatMap(([name, point]) =>
        coordinates(`tieDowns[${index}].${name}`, point),
      ),
    ),
  ];
}

const coordinates = (path: string, point: Point | undefined): Length[] =>
  (point ?? []).map((input, axis) => ({ path: `${path}[${axis}]`, input }));
