import { fail, mapAt } from '../errors.js';
import { checkList, checkObject, checkOneOf } from '../input-checks.js';
import { rowOf } from '../tables/rating-table.js';
import { type Note, note, type Words } from '../working/note.js';
import type { Provenance } from '../working/source.js';
import { exactly, type Span } from './force-checks.js';
import { MOST_FRICTION, readFriction } from './layout.js';
import type { Article, Surfaces } from './plan.js';

/** A friction factor as far as it is known. */
export interface FrictionFactor extends Span {
  /** Where it comes from, in words for a step. */
  readonly basis: string;
  /** What would settle it; empty where it is known. */
  readonly missing: readonly Note[];
}

/** A pair of surfaces in a friction table. A wet factor that is left out is not given, which is not the same as dry. */
export interface FrictionCell {
  readonly mu_dry: number;
  readonly mu_wet?: number;
  readonly provenance?: Provenance;
  readonly mu_dry_provenance?: Provenance;
}

type FrictionRows = { readonly [surface: string]: { readonly [against: string]: FrictionCell } };

const CONDITIONS = [undefined, 'dry', 'wet', 'frost'];

/** Checks the surfaces of an article. */
export function checkSurfaces(surfaces: Surfaces): void {
  checkObject(surfaces, 'surfaces', '{ load, deck, condition }');
  checkOneOf(surfaces.condition, CONDITIONS, 'surfaces.condition');
  for (const side of ['load', 'deck'] as const) {
    if (typeof surfaces[side] === 'string') continue;
    fail('MISSING_FIELD', `surfaces.${side}`, 'a surface by name', surfaces[side], 'Leave surfaces out.');
  }
}

/** A pair of surfaces in a table, whichever of the two lies on top. */
export function listedPair(rows: FrictionRows, { load, deck }: Surfaces): FrictionCell | undefined {
  return pairIn(rows, load, deck) ?? pairIn(rows, deck, load);
}

function pairIn(rows: FrictionRows, surface: string, against: string): FrictionCell | undefined {
  const row = rowOf(rows, surface);
  return row && rowOf(row, against);
}

/** The factor of a listed pair in its condition. Where the table gives none, it lies between nothing and the dry one. */
export function frictionOfPair({ mu_dry, mu_wet }: FrictionCell, surfaces: Surfaces): FrictionFactor {
  const { load, deck, condition } = surfaces;
  const pair = `${load} on ${deck}`;
  const basis = condition === undefined ? pair : `${pair}, ${condition}`;
  if (condition === 'dry') return { ...exactly(mu_dry), basis, missing: [] };
  if (condition === 'wet' && mu_wet !== undefined) return { ...exactly(mu_wet), basis, missing: [] };
  if (condition === undefined && mu_wet === mu_dry) return { ...exactly(mu_dry), basis, missing: [] };
  const fact =
    condition === undefined ? note(CONDITION_NOT_STATED, { pair }) : note(NO_FACTOR_IN_TABLE, { pair, condition });
  return { least: condition === undefined ? (mu_wet ?? 0) : 0, most: mu_dry, basis, missing: [fact] };
}

/** A factor of which nothing is known but that it is no more than anybody measures. */
export function unknownFriction(fact: Note): FrictionFactor {
  return { least: 0, most: MOST_FRICTION, basis: 'not known', missing: [fact] };
}

const notStated = (article: string): FrictionFactor => unknownFriction(note(FRICTION_NOT_STATED, { article }));

/**
 * The friction factor of an article: as the caller states it, the lowest where contacts differ; else as its surfaces
 * say, and never more than one stated for a contact.
 */
export function frictionOf(article: Article, ofSurfaces: (surfaces: Surfaces) => FrictionFactor): FrictionFactor {
  const { contacts = [], surfaces } = article;
  const ofArticle = readFriction(article.friction, 'friction');
  if (article.contacts !== undefined) checkList(contacts, 'contacts');
  const stated = mapAt(contacts, 'contacts', (contact) => {
    checkObject(contact, '', 'a contact { at }');
    return readFriction(contact.friction, 'friction') ?? ofArticle;
  });
  const known = stated.filter((mu) => mu !== undefined);
  if (known.length === 0 && ofArticle !== undefined) return asStated(ofArticle);
  const lowest = Math.min(...known);
  if (known.length > 0 && known.length === stated.length) return asStated(lowest);
  return atMost(surfaces === undefined ? notStated(article.id) : ofSurfaces(surfaces), lowest);
}

const asStated = (mu: number): FrictionFactor => ({ ...exactly(mu), basis: 'as stated', missing: [] });

/** A factor that counts up to a cap. */
export function atMost(factor: FrictionFactor, cap: number): FrictionFactor {
  const least = Math.min(factor.least, cap);
  const most = Math.min(factor.most, cap);
  return { ...factor, least, most, missing: least === most ? [] : factor.missing };
}

/** Said where a requirement is stated before the friction is known. */
export const LEAST_FRICTION_COUNTED: Note = /* @__PURE__ */ note([
  'LEAST_FRICTION_COUNTED',
  'As long as that is not stated, only friction that is certain counts.',
]);
const FRICTION_NOT_STATED: Words = [
  'FRICTION_NOT_STATED',
  'The friction factor of {article}, or its surfaces: load, deck, condition.',
];
const CONDITION_NOT_STATED: Words = ['SURFACE_CONDITION_NOT_STATED', 'Whether {pair} is dry or wet.'];
const NO_FACTOR_IN_TABLE: Words = [
  'FRICTION_NOT_IN_TABLE',
  'A friction factor for {pair} when {condition}: the table gives none, which is not the same as dry. Measure it and state it.',
];
