import type { Capacities, Part } from '../assembly/part.js';
import { fail, mapAt } from '../errors.js';
import { checkFlag, checkIds, checkList, checkObject, checkOneOf } from '../input-checks.js';
import type { Point } from '../quantities/point.js';
import type { QuantityInput, QuantityLike } from '../quantities/quantity.js';
import { readPositive } from '../quantities/read.js';
import type { LengthUnit, MassUnit } from '../quantities/units.js';

/** One unit of the vehicle or combination. */
export interface VehicleUnit {
  readonly id: string;
  readonly kind: 'power' | 'towed';
  /** The maker's gross weight rating (GVWR). */
  readonly grossWeightRating?: QuantityInput<'mass'>;
  /** What the unit weighs as it goes on the road, load included. */
  readonly grossWeight?: QuantityInput<'mass'>;
}

/** The deck that the load stands on: a flat rectangle. */
export interface Deck {
  readonly length: QuantityInput<'length'>;
  readonly width: QuantityInput<'length'>;
}

/** The vehicle or combination that carries the load; decides only whether a rule applies. */
export interface Vehicle {
  readonly units: readonly VehicleUnit[];
  /** Its deck, for a drawing. */
  readonly deck?: Deck;
  /** Combination rating (GCWR), only where the power unit's certification label shows it. */
  readonly combinationRatingOnLabel?: QuantityInput<'mass'>;
  /** True when the trip is interstate commerce. */
  readonly interstateCommerce?: boolean;
}

/** Equipment that stays mounted on a machine: loader arms with bucket, backhoe, mower deck, blade. */
export interface Accessory {
  readonly id: string;
  /** Completely lowered for the haul. */
  readonly lowered?: boolean;
  /** Held by pins, locks or the like so that it cannot move. */
  readonly locked?: boolean;
}

/** A place where an article stands on the deck: a tire, a corner of a track, a pad. It pushes and never pulls. */
export interface ContactPoint {
  readonly at: Point;
  /** Friction factor here, where it is not that of the article. */
  readonly friction?: number;
  /** How far it gives under a force, as a tire or a pad does: '1 in' under '600 lbf'. Omitted: rigid. */
  readonly gives?: Gives;
}

/** A spring, told by one point of its line. */
export interface Gives {
  readonly by: QuantityInput<'length'>;
  readonly under: QuantityInput<'force'>;
}

/** What the cargo is. `machinery` runs on wheels or tracks; `light-vehicle` is a car, light truck or van. */
export type ArticleKind = 'machinery' | 'light-vehicle' | 'general';

/** One thing on the deck that must be held. An attachment taken off a machine is an article of its own. */
export interface Article {
  readonly id: string;
  readonly kind: ArticleKind;
  /** As carried: fuel, ballast, loaded tires and mounted attachments included. */
  readonly mass: QuantityInput<'mass'>;
  /** Overall length as carried. */
  readonly length: QuantityInput<'length'>;
  /** Stopped from moving forward by a headboard, bulkhead or other cargo. Omitted: not blocked. */
  readonly blockedForward?: boolean;
  /** Mounted equipment. */
  readonly accessories?: readonly Accessory[];
  /** Steers or swings at a joint in its frame. Omitted: it does not. */
  readonly articulated?: boolean;
  /** The joint is locked or pinned for the haul. */
  readonly articulationLocked?: boolean;
  /** The rule to secure it under, where the rule set leaves a choice; omitted: the least demanding lawful one. */
  readonly securedUnder?: string;
  /** Must be fastened by special methods for its design, size, shape or weight; frees it from the count by length where the rule set says so. */
  readonly specialMethods?: boolean;
  /** A friction mat under it. */
  readonly frictionMat?: FrictionMat;
  /** As carried, raised equipment included. Needed where forces are looked at, as are `contacts`. */
  readonly centerOfGravity?: Point;
  /** Where it stands on the deck. */
  readonly contacts?: readonly ContactPoint[];
  /** Friction factor between it and the deck, measured or from a table that the caller answers for. */
  readonly friction?: number;
  /** What rests on what, for a rule set with a friction table of its own; `friction` stands before it. */
  readonly surfaces?: Surfaces;
  /** How far a headboard stops it, for a rule set that tells them apart; omitted: as `blockedForward` says. */
  readonly headboard?: 'none' | 'partial' | 'adequate';
  /** The forces of the ship's motion on it, for a rule set of the sea that leaves them to the caller. */
  readonly shipForces?: ShipForces;
  /** The box it fills, as two opposite corners, for a drawing. */
  readonly outline?: readonly [Point, Point];
}

/** A pair of surfaces, in the words of the rule set's friction table. */
export interface Surfaces {
  readonly load: string;
  readonly deck: string;
  /** Omitted: not stated, and a table that tells them apart asks. */
  readonly condition?: 'dry' | 'wet' | 'frost';
}

/** External forces from a ship's motion, each by itself. */
export interface ShipForces {
  readonly longitudinal?: QuantityInput<'force'>;
  readonly transverse?: QuantityInput<'force'>;
}

export interface FrictionMat {
  /** The part of the article's mass that rests on the mat. */
  readonly massOnMat: QuantityInput<'mass'>;
  /** Horizontal resistance the maker marks, if it does. */
  readonly ratedResistance?: QuantityInput<'ratedLoad'>;
}

/**
 * The way a tie-down runs.
 * `vehicle-to-cargo`: from the vehicle to an attachment point on the cargo;
 * `over-same-side`: through, over or around the cargo and back to the same side of the vehicle;
 * `over-other-side`: through, over or around the cargo to the other side.
 */
export type TieDownPath = 'vehicle-to-cargo' | 'over-same-side' | 'over-other-side';

export const TIE_DOWN_PATHS = [
  'vehicle-to-cargo',
  'over-same-side',
  'over-other-side',
] as const satisfies readonly TieDownPath[];

interface TieDownBase {
  readonly id: string;
  /** The id of the article it holds, or of an accessory mounted on one. */
  readonly holds: string;
  readonly path: TieDownPath;
  /** The end of the cargo it holds. Needed where a rule asks for restraint at both ends. */
  readonly end?: 'front' | 'rear';
  /** Where it is fixed on the vehicle. */
  readonly anchor?: Point;
  /** Where it meets the cargo: the point it is fixed to, or the edge it bends over. */
  readonly attachment?: Point;
  /** Of one that runs over the cargo: where it leaves the cargo again. */
  readonly otherAttachment?: Point;
  /** Of one that runs over the cargo: where its other end is fixed on the vehicle. */
  readonly otherAnchor?: Point;
  /** The tension the tensioner leaves in it, on the tensioner's side. Nothing guesses it. */
  readonly pretension?: QuantityInput<'force'>;
  /** E · A: the force that would stretch it by its own length, were it to stay elastic. */
  readonly axialStiffness?: QuantityInput<'force'>;
}

/** A tie-down given part by part, its anchor points among them. */
export interface TieDownOfParts extends TieDownBase {
  readonly parts: readonly Part[];
  readonly capacities?: undefined;
}

/** A tie-down given as a whole: the caller answers for every part of it and for both anchor points. */
export interface TieDownAsWhole extends TieDownBase {
  readonly capacities: Capacities;
  readonly parts?: undefined;
}

export type TieDown = TieDownOfParts | TieDownAsWhole;

/** The load on its vehicle: one object for every function that looks at it. */
export interface Plan {
  readonly vehicle?: Vehicle;
  /** The waters of a ferry or ship leg, for a rule set that tells them apart; omitted: by road alone. */
  readonly seaArea?: 'A' | 'B' | 'C';
  readonly articles: readonly Article[];
  readonly tieDowns: readonly TieDown[];
}

/** An article with its quantities read. */
export interface ReadArticle {
  readonly article: Article;
  readonly mass: QuantityLike<MassUnit>;
  readonly length: QuantityLike<LengthUnit>;
}

const ENDS = ['front', 'rear'];
const ARTICLE_KINDS: readonly ArticleKind[] = ['machinery', 'light-vehicle', 'general'];

/** Reads one article; every field that a rule may look at is checked here, once. */
export function readArticle(article: Article): ReadArticle {
  checkObject(article, '', 'an article { id, kind, mass, length }');
  const { kind, blockedForward, articulated, articulationLocked, specialMethods, accessories } = article;
  checkOneOf(kind, ARTICLE_KINDS, 'kind');
  checkFlag(blockedForward, 'blockedForward');
  checkFlag(articulated, 'articulated');
  checkFlag(articulationLocked, 'articulationLocked');
  checkFlag(specialMethods, 'specialMethods');
  if (accessories !== undefined) readAccessories(accessories);
  if (article.frictionMat !== undefined) checkObject(article.frictionMat, 'frictionMat', '{ massOnMat }');
  return {
    article,
    mass: readPositive(article.mass, 'mass', 'mass'),
    length: readPositive(article.length, 'length', 'length'),
  };
}

function readAccessories(accessories: readonly Accessory[]): void {
  checkList(accessories, 'accessories', 0);
  checkIds(accessories, 'accessories');
  accessories.forEach(({ lowered, locked }, index) => {
    checkFlag(lowered, `accessories[${index}].lowered`);
    checkFlag(locked, `accessories[${index}].locked`);
  });
}

/** Checks the shape of a plan: lists that are not empty, ids used once, tie-downs that hold something that exists. */
export function readPlan({ articles, tieDowns }: Plan): readonly ReadArticle[] {
  checkList(articles, 'articles');
  checkList(tieDowns, 'tieDowns');
  checkIds(articles, 'articles');
  checkIds(tieDowns, 'tieDowns');
  const read = mapAt(articles, 'articles', readArticle);
  const cargo = articles.map(({ id }) => id); // what a tie-down may hold
  for (let index = 0; index < articles.length; index++) {
    articles[index]?.accessories?.forEach(({ id }, at) => {
      if (cargo.includes(id)) usedTwice(`articles[${index}].accessories[${at}].id`, id);
      cargo.push(id);
    });
  }
  mapAt(tieDowns, 'tieDowns', (tieDown) => readTieDown(tieDown, cargo));
  return read;
}

function readTieDown({ id, holds, path, end, parts, capacities }: TieDown, cargo: readonly string[]): void {
  if (cargo.includes(id)) usedTwice('id', id);
  if (!cargo.includes(holds)) {
    const code = holds === undefined ? 'MISSING_FIELD' : 'UNKNOWN_REFERENCE';
    fail(code, 'holds', `the id of an article or accessory: ${cargo.join(', ')}`, holds, 'Name what it holds.');
  }
  checkOneOf(path, TIE_DOWN_PATHS, 'path');
  if (end !== undefined) checkOneOf(end, ENDS, 'end');
  if ((parts === undefined) === (capacities === undefined)) {
    fail(
      'CONFLICTING_FIELDS',
      '',
      'parts or capacities',
      parts === undefined ? 'neither' : 'both',
      'Give one of them.',
    );
  }
}

function usedTwice(path: string, id: string): never {
  return fail('DUPLICATE_ID', path, 'an id used once', id, 'Rename one of the two.');
}
